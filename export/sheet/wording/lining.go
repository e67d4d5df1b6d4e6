package wording

import (
	"slingloft/outline/design"
)

// Lining says what belongs to the lining.
type Lining struct {
	Title   string
	Lead    [2]string // by where it lies
	Careful string    // title of what to mind
	Mind    []string
	Higher  string    // of a lining that one lies on
	Caption string    // of the table, with the unit
	Figure  string    // its column
	Columns [3]string // of the other one

	Pad, Wide, AsRound, Long, FromHead, FromFoot string
	Play, Lower, Opens, Between, OpenLong        string
	At                                           [3]string // where its girth is told
	Girths                                       string    // caption of a table, with the unit

	Across, Along, Flat, Baste, Hem Picture
	// Beside the pictures and in the figures of the steps.
	BodyName, LiningName, PadName, OpeningName string
	BasteRow, HemEach, Midway                  string
	Longer                                     [2]string // between two notches: the body, the lining
	Stretch                                    string    // seam, notches
	HemUp                                      string    // which face is up
	BarToBar, CentreLong                       string
	FoldBack                                   string    // sentence of the caps' step
	KeepOut                                    string    // likewise of the channels'
	Feel                                       [2]string // sentence of the pad's step, by where the lining lies
	LayBelow, LayAbove                         string    // sentences of the basting
	Edges                                      map[design.LiningOpening]string
}

func englishLining() Lining {
	return Lining{
		Title: "The lining",
		Lead: [2]string{
			design.BelowBody: "The lining is a second layer under the body. It holds a pad, and both layers are sewn into the same seams. " +
				"You lie on the body, which alone carries.",
			design.AboveBody: "The lining is a second layer over the body. A pad lies between them, and both layers are sewn into the same " +
				"seams. You lie on the lining; the body alone carries.",
		},
		Careful: "Before you use it (common practice, no source)",
		Mind: []string{
			"Nobody lies between the layers: cloth over a face stops the breath. Keep children out of them.",
			"The lining carries nobody. No strength of it is asked for, and none is promised.",
			"A pad thicker than planned draws the lining tight, and it then takes load.",
			"Look over the body under the lining before each use: what is worn there is hidden.",
			"The pad's own weight is not counted: add it to the sleeper's mass where it is over a kilogram.",
		},
		Higher:  "You lie as much higher as the pad is thick: the bed is a little less stable, and the figures count that.",
		Caption: "The lining and its pad, in %s",
		Figure:  "figure",
		Columns: [3]string{"body", "lining", "lining less body"},
		Pad:     "pad, thick under load", Wide: "pad, wide", AsRound: "as far as the bed is round", Long: "pad, long",
		FromHead: "its head end from the head bar line, along the centre line", FromFoot: "its foot end from the foot bar line",
		Play: "room beyond its thickness", Lower: "lining below the body in the middle", Opens: "open at", Between: "between the notches",
		OpenLong: "opening, long",
		At:       [3]string{"head end of the pad", "middle of the pad", "foot end of the pad"},
		Girths:   "Across from cord to cord, where the pad lies, in %s",

		Across: Picture{
			Caption: "Seen from the head, in the middle of the pad, to scale: body, pad and lining hang between the same cords.",
			Title:   "The layers, across", Desc: "Section of the bed: between the body and the lining lies a pad %s thick; the lining is %s longer across.",
		},
		Along: Picture{
			Caption: "Seen from the side, along the centre line, heights four times as large: past the pad the lining comes up to the body.",
			Title:   "The layers, along", Desc: "Along the bed the pad, %s long, lies between both layers, which meet at the ends of the cloth.",
		},
		Flat: Picture{
			Caption: "The lining as it lies flat, lettered face up; dashed: the body. Heavy: the edge that is hemmed and open.",
			Title:   "The lining, flat", Desc: "Net line of the lining over that of the body; open between the notches %s and %s.",
		},
		Baste: Picture{
			Caption: "Section of both layers as they are basted. Thick edge: right side. Thin edge: lettered face. To scale across the seam.",
			Title:   "Section of both layers, basted", Desc: "Lining and body lie on each other, edges together, and are basted within the allowance of %s.",
		},
		Hem: Picture{
			Caption: "Section of the hem at the opening: a double-fold hem. Stitch 301, an edge finish, class 6. Thick edge: right side. Thin edge: " +
				"lettered face. To scale across the seam.",
			Title: "Section of the hem at the opening",
			Desc:  "The edge is folded under twice, %s each time, its raw edge in the fold, and stitched beside the inner fold.",
		},
		BodyName: "body", LiningName: "lining", PadName: "pad", OpeningName: "opening",
		BasteRow: "basting, from the raw edge", HemEach: "hem, each fold", Midway: "allowance",
		Longer:   [2]string{"body %s longer", "lining %s longer"},
		Stretch:  "%s, %s to %s",
		HemUp:    "lettered face up",
		BarToBar: "lining, bar to bar", CentreLong: "lining, centre line",
		FoldBack: "At the opening fold the hemmed edge of the lining back: the cap is sewn to the body alone there.",
		KeepOut:  "At the opening fold the hemmed edge of the lining back: the channel takes the body alone there.",
		Feel: [2]string{
			design.BelowBody: "Get in and lie down, and have somebody feel the lining from below: it gives under a finger.",
			design.AboveBody: "Get in and lie down, and feel the lining beside the pad: it gives under a finger.",
		},
		LayBelow: "Lay the body down, its letters down, and the lining on it, letters down too.",
		LayAbove: "Lay the body down, its letters up, and the lining on it, letters up too.",
		Edges: map[design.LiningOpening]string{
			design.HeadOpening: "the head end", design.FootOpening: "the foot end", design.LeftOpening: "the left side",
			design.RightOpening: "the right side",
		},
	}
}

// englishLiningSteps says how the lining is marked and sewn in.
func englishLiningSteps() map[Task]Step {
	return map[Task]Step{
		MarkLining: {"Mark the lining by hand", []string{
			"Skip this step if the lining is plotted, or cut by a machine.",
			"Draw its centre line along the grain, and mark on it where both bar lines begin.",
			"Lay the lining's own templates as their pictures show; those of the body do not fit it.",
			"Draw the net line, and the cut line outside it, as far off as on the body.",
			"Mark the notches with their names: they are those of the body.",
			"Mark the opening between its two notches.",
			"Letter the lining.",
		}, "The lining has its net line, cut line, bar lines, notches and its name."},
		JoinLining: {"Join the panels of the lining", []string{
			"Lay two panels right sides together, letters outside, and match notches.",
			"Stitch on the net line.",
			"Trim the allowance of the outer panel to its trim line.",
			"Fold the allowance of the inner panel over it, and stitch it down along its fold.",
		}, "No raw edge shows, and the lining lies flat."},
		HemLining: {"Hem the lining's opening", []string{
			"Clip the allowance at both notches of the opening, to 2 mm from the net line.",
			"Between them fold the edge half its allowance wide towards the letters, and press it.",
			"Fold it once more, on the net line, and press it.",
			"Stitch beside the inner fold, backstitched at both ends.",
		}, "The edge of the opening is the net line, and no raw edge shows."},
		BasteLining: {"Baste the lining to the body", []string{
			"Match the corners, then the notches, each with that of its name.",
			"Clip both edges together from the notches outwards, the longer one eased in.",
			"Baste all around within the allowance, but not at the opening.",
			"From here on sew both layers as one.",
		}, "All notches lie on each other, and the lining lies loose in the middle."},
		PadIn: {"Put the pad in", []string{
			"Let the air out of a pad that holds some.",
			"Roll it up, push it in at the opening, and unroll it between the layers.",
			"Set its head end as far from the head bar line as stated.",
			"Blow it up in the bed until it is as thick as planned under you.",
		}, "The pad lies flat between the layers, and the lining is not drawn tight: the body carries."},
	}
}
