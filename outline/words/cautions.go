package words

import "fmt"

// Signal is how grave a hazard is.
type Signal int

// The signals and what they stand for, after the ANSI Z535 series.
const (
	Danger      Signal = iota // will kill or gravely injure
	Warning                   // could kill or gravely injure
	Care                      // could injure
	Notice                    // no injury
	SignalCount               // how many signals there are
)

// String returns the signal's word as documents have it.
func (s Signal) String() string {
	return [SignalCount]string{"DANGER", "WARNING", "CAUTION", "NOTICE"}[s]
}

// Hazard is a danger of the hammock.
type Hazard int

// The hazards, the gravest first.
const (
	UntriedHazard  Hazard = iota // hung high, over hard ground, not tried out
	MasonryHazard                // that stands by itself
	ChildrenHazard               // alone
	TooMuchHazard                // mass, or no rest
	NewHazard                    // not loaded with the proof load
	UnsoundHazard                // trees, posts, walls
	EyeboltHazard                // pulled aslant
	StandHazard                  // overloaded
	WornHazard                   // parts
	DaylightHazard               // on cord
	HeatHazard                   // and steady load, on cord
	KnotHazard                   // in smooth braid
	BarEndHazard                 // near the face
	HotToolHazard                // on cloth
	BarkHazard                   // of trees
	ComputedHazard               // figures
	HazardCount                  // how many there are
)

// Signal returns how grave a hazard is.
func (h Hazard) Signal() Signal {
	switch h {
	case BarEndHazard, HotToolHazard:
		return Care
	case BarkHazard, ComputedHazard:
		return Notice
	}
	return Warning
}

// Caution is what is said of a hazard: what it is, what may come of it, how it is
// avoided, in this order. In the table it holds verbs.
type Caution struct{ Hazard, Consequence, Avoidance string }

// CautionFigures are what cautions are filled in with, as people read them.
type CautionFigures struct {
	Mass  string  // largest that the bed is made for
	Proof string  // mass of the proof load
	LowAt float64 // [CautionFigures.Low], mm
	Low   string  // how far above the ground the proof is hung at most
	Seat  string  // length over which its second part lies
	Bag   string  // least and largest mass of a bag
	Strap string  // least breadth of a strap round a tree
	High  string  // largest height of the bed above the ground
}

// CautionFor fills the caution of a hazard in.
func (n Names) CautionFor(h Hazard, f CautionFigures) Caution {
	c := n.Cautions[h]
	switch h {
	case UntriedHazard:
		c.Avoidance = fmt.Sprintf(c.Avoidance, f.High)
	case TooMuchHazard:
		c.Hazard, c.Avoidance = fmt.Sprintf(c.Hazard, f.Mass), fmt.Sprintf(c.Avoidance, f.Mass)
	case NewHazard:
		c.Avoidance = fmt.Sprintf(c.Avoidance, f.Proof, f.Bag, f.Seat, f.Low)
	case BarkHazard:
		c.Avoidance = fmt.Sprintf(c.Avoidance, f.Strap)
	}
	return c
}

// CautionLine writes a caution in a line.
func (n Names) CautionLine(h Hazard, c Caution) string {
	return fmt.Sprintf(n.Caution, n.Signals[h.Signal()], c.Hazard, c.Consequence, c.Avoidance)
}

// englishCautions has, where no source is named, what is common practice.
//
// Masonry: inquests and press on deaths in 2009, 2016, 2020. Light: a fibre maker's
// figures in Practical Sailor. Heat: a rigging supplier's warning sheet. Creep: discard
// rules for moorings. Knots: Yachting Monthly, Nov 2017. Straps: rules of parks. Eyebolts:
// suppliers' tables. Cords and necks: US CPSC release 96-183.
func englishCautions() map[Hazard]Caution {
	return map[Hazard]Caution{
		UntriedHazard: {"Hung high, over hard ground, or not tried out.", "A fall can kill or cripple.",
			"Hang its lowest point %s above soft ground at most. Load it little by little, a hand on something firm."},
		MasonryHazard: {"Brick pillars and other masonry that stands by itself.", "It has fallen on children and killed them.",
			"Never hang it from them, however thick they are."},
		ChildrenHazard: {"Children alone near cords and loose cloth.", "A cord or cloth round the neck kills within minutes.",
			"Never leave a child alone in or near it. Take it down when it is not in use."},
		TooMuchHazard: {"More than %s, a second person, jumping, swinging, lifting or climbing.", "Cords, bars, seams or hooks break under it.",
			"One resting person of %s at most. It is no gear for lifting, climbing or rescue."},
		NewHazard: {"A new bed, or one that was changed.", "A splice or seam that was made wrong gives way under the first sleeper.",
			"Before the first night load it with %s in smooth bags of %s, over a blanket: first along the bed, then over %s at " +
				"mid-bay. Its lowest point hangs %s above soft ground at most, nobody is beneath it or in line with its lines. Wait 15 " +
				"minutes, unload, look at every part, measure again."},
		UnsoundHazard: {"Trees, posts and walls that are not sound, and hooks in them.", "They break or pull out all at once.",
			"Use living trees and sound posts. For anchors in a building ask a qualified person and keep to the local rules."},
		EyeboltHazard: {"An eyebolt pulled at an angle.",
			"It holds 80 % of its rating at 15°, 65 % at 30°, 30 % at 45°, 25 % at 90°; without a shoulder only a pull in line counts.",
			"Turn it into the pull, or count on what is left."},
		StandHazard: {"A stand that is loaded beyond what its maker rates.", "It folds or tips over.",
			"Keep to the mass, distance and height that its maker states, and compare the pulls of this hammock."},
		WornHazard: {"Cord and cloth that are cut, fuzzed, faded, melted or stretched; bars that are bent.",
			"They break under a load that they once held.",
			"Look over cords, splices, seams, bars and hooks before each use. Retire any part that is cut, badly fuzzed, glazed, bent or " +
				"permanently stretched."},
		DaylightHazard: {"Years of daylight on cord.", "It loses some 40 % of its strength in four to five years, thin cord sooner.",
			"Keep it dark when it is not in use. Renew cords after five seasons, or as soon as they fade or stiffen."},
		HeatHazard: {"Heat, and load that stays on for weeks.", "HMPE cord weakens above 65 °C and grows longer under a steady load.",
			"Keep it from fire, stoves and hot cars. Take it down between uses. Renew a cord that has grown by a tenth."},
		KnotHazard: {"Knots in smooth braid such as HMPE.", "They slip, and keep a third to a half of its strength.",
			"Splice it. Where a cord is tied, buy the strength stated for knots."},
		BarEndHazard: {"Bar ends, tips and hooks near face and eyes; a bar that springs out.", "Bruises, broken teeth, hurt eyes.",
			"Plug and round the ends. Get in at mid-bay, and keep the face away from bars under load."},
		HotToolHazard: {"Lasers and hot knives on cloth and cord.", "Molten edges burn skin; some materials give off poison.",
			"Cut only what is known to be safe for it, with fume extraction, and never leave the machine alone."},
		BarkHazard: {"Narrow lines round trees.", "They cut the bark.",
			"Use straps %s wide or wider."},
		ComputedHazard: {"Figures that were computed from the design and from data sheets.",
			"They replace no test of your own splices and seams.",
			"Test a splice and a seam of each kind."},
	}
}
