package wording

// Assumed says what the figures take for granted.
type Assumed struct {
	Title                          string
	Mechanics                      []string
	Reach                          string // from cord centre to stitch line
	Shear                          string // angle, from mid-bay, off the centre line
	ShearOf                        string // angle, locking angle, from mid-bay, off the centre line
	Straight                       string
	Stretch, OneStretch, NoStretch string
	Strengths                      []string
}

func englishAssumed() Assumed {
	return Assumed{
		Title: "Assumptions",
		Mechanics: []string{
			"The sleeper is a load along the bed's middle, straight down, at rest; the cloth's own mass and the bars' are added.",
			"The cloth carries across the bed only, by its weft, and lies on the sleeper without friction. Along the bed it carries nothing.",
			"Each side's cord, from apex to apex, is one curve in balance. Bars push outwards only, so that the horizontal pull of a side is " +
				"the same all along.",
			"The cord keeps its place in its channel. Its tension is therefore some per cent larger at the bars than in the middle.",
			"Tail ends are tacked to the legs, and how far the weft leans in the tails is left out.",
			"Woven cloth does not stretch along its threads but shears; the body is laid flat on a net of such threads.",
		},
		Reach: "Seam and cord lie apart by the channel's reach: %s from cord centre to stitch line.",
		Shear: "The largest shear in the hung body is %s; it lies %s from mid-bay and %s off the centre line.",
		ShearOf: "The largest shear in the hung body is %s, against %s at which this cloth locks and wrinkles; " +
			"it lies %s from mid-bay and %s off the centre line.",
		Straight: "Tails are cut straight and do not hang quite level; the chart of straight against true cut says by how much.",
		Stretch: "Cords are cut shorter by what they stretch under the sleeper beyond the light pull, from the stiffness in the design; " +
			"the cut lengths show it as a term of its own.",
		OneStretch: "Stretch is taken off only for the cord whose stiffness the design gives.",
		NoStretch:  "The design gives no stiffness of the cords: their stretch under the sleeper is not taken off.",
		Strengths: []string{
			"All strengths are those of the design file, from the maker's data sheets; where one is missing, the margin is not given.",
			"No figure here replaces a test of your own splices, seams and hooks.",
		},
	}
}

// Sources names the published figures and methods that stand behind the sheet.
type Sources struct {
	Title string
	List  []string
}

func englishSources() Sources {
	return Sources{
		Title: "Sources",
		List: []string{
			"P. L. Chebyshev, On the cutting of garments, 1878: nets of threads that keep their lengths.",
			"D. A. Winter, Biomechanics and Motor Control of Human Movement, table 4.1: masses of body parts, after Dempster.",
			"C. C. Gordon et al., 2012 Anthropometric Survey of U.S. Army Personnel, NATICK/TR-15/007: places along the body.",
			"Cordage Institute CI 1401: breaking strength over working load for fibre rope, 5 to 12.",
			"Cables under a load along the level: handbook formula of the parabola, 2H = wS²/8f.",
			"Bars: Euler and Johnson columns and the secant formula, as in handbooks of machine design.",
			"M. Okabe and K. Ito, Color Universal Design: colours of the drawings. ISO 128: line types and widths, from memory.",
			"ISO 4915, numbers of stitches: 301 lockstitch, 304 zigzag. ISO 4916, classes of seams. US Navy manual 14218: SSa and LSc.",
			"Stitches, needles and trials of seams: sewing handbooks and shop practice.",
			"Buries of 63 cord diameters where the design gives none, tapers, fids, press lines, tacking of the tails: common practice, no source.",
		},
	}
}
