package work

import (
	"slingloft/export"
	"slingloft/nest"
	"slingloft/outline/design"
	"slingloft/outline/words"
)

// Words is all that a plan says in one language: the lettering on what is cut,
// warnings, and what would meet a margin.
type Words struct {
	words.Lettering
	Warnings map[Warning]string // texts with verbs, see [Plan.Warnings]
	Design   design.Words       // what is wrong with a design
	Files    export.Words       // what is wrong with files that are brought in
	Mend     MendWords
	Proposal ProposalWords
	Keeping  KeepingWords
	Bed      string // lettered on the pieces of some of several beds: their numbers
}

// KeepingWords says what is wrong with places that were kept; see [Plan.Restore].
type KeepingWords struct {
	Cloth, Boards string // what is wrong on it
	OneRoll       string
	Unknown       string // name of a piece
	EmptyBed      string // its number, how many there are
	Some          string // a piece without a name
	Copy          string // piece, number
	Breach        string // piece, what it does
	Between       string // piece, another, what they do
	Breaches      map[nest.Breach]string
}

// MendWords says what would meet a margin; see [Plan.Mend].
type MendWords struct {
	Value           string // key, least value
	Or              string // between values of which each would do
	WouldDo         string // values
	Smaller, Larger string // key
	OrElse          string // between changes
	Helps           string // changes
	Both            string // what would do, what helps
}

// Joins names so many joins in the body, 0 to 2.
func (w Words) Joins(n int) string { return w.Design.Phrase(design.JoinsAllowed(n)) }

// English returns the words in English.
func English() Words {
	return Words{
		Lettering: words.EnglishLettering(),
		Bed:       "bed %s",
		Warnings: map[Warning]string{
			Wrinkles: "the cloth shears by %s at %s from mid-bay, more than the cloth's locking angle: " +
				"it will wrinkle there; longer legs or shorter tails shear it less",
			MayWrinkle: "the cloth shears by %s at %s from mid-bay, more than 30°, from memory, where cloth.locking_angle is not given: " +
				"it will wrinkle there; longer legs or shorter tails shear it less",
			LongTails: "a tail of %s is long: without friction its cloth slides inwards and its end hangs some 5 mm low or " +
				"more; up to %s it stays within that, and level = \"hung\" levels longer ones",
			Gathers: "cut again from the cloth as it hangs, %s more of the centre line lies in gathers over the %s tail, %s in all: " +
				"let them fall between the notches of its end seam",
			StraightTails: "the straight cut departs from the level girth by up to %s in the tails; cut = \"net\" hangs level",
			DrawnSide: "the side curve is drawn: the bed stands up to %s high and %s low of level; side_curve = \"sleeper\" " +
				"hangs level",
			TurnsOver: "the bed turns over as soon as the sleeper moves aside; deeper drops (bed.head_drop), a steeper hang or wider bars help",
			RollsOver: "the bed turns over before the sleeper's weight is %s aside, having turned by %s; deeper drops (bed.head_drop), a " +
				"steeper hang or wider bars help",
			RollsFar: "the bed turns by %s with the sleeper's weight %s aside, on the back, %s of it on the lower cord: it is not stable; " +
				"deeper drops (bed.head_drop), a steeper hang or wider bars help",
			Rocks: "the bed turns by %s with the sleeper's weight %s aside, on the back, %s of it on the lower cord: more than most like, " +
				"no danger; deeper drops (bed.head_drop), a steeper hang or wider bars make it more stable",
			HookTooLow:   "the higher anchor has to stand %s higher than hang.height; bring the anchors closer or hang the bed lower",
			ShortShelter: "the shelter's ridge is %s too short to cover the hammock",
			RainReaches: "the tarp keeps off rain driven up to %s from the plumb line, not the %s that tarp.rain asks for; use a ridge of %s " +
				"with a width of %s",
			RainReachesAll: "the tarp keeps off rain driven up to %s from the plumb line, not the %s that tarp.rain asks for; no ridge or " +
				"width of this shape would: a smaller tarp.rise, a rectangle or a longer tarp.side may",
			TarpTouches:  "the tarp comes within %s of bars, cords or hang lines; with tarp.rise = %s it stays 100 mm off them",
			TarpInGround: "the side edges of the tarp would lie %s below the ground; a tarp.width of at most %s, or a smaller tarp.pitch, does",
			LiningEased: "%s: from %s to %s one layer is %.1f %% longer than the other, more than can be eased in well; a shorter lining.pad_length, a " +
				"thinner pad or longer legs bring them nearer",
			CoverNearFace: "the cover or the head bar lies %s from a face; %s is well",
			CoverCoarse:   "from hole to hole the cover's net is %s: %s holes per square inch, and mosquito nets have 156 and more; midges take finer net",
			CoverTravels:  "the apexes move by %s when somebody sits up or leaves the bed, but cover.travel lets the ridge give %s",
			CoverGaps:     "between two of its ties the cover's loose edge stands up to %s off the bed: net that hangs below closes that, if nothing pushes it",
			GuestUnmet:    "this bed does not carry %s: %s carries %s times the load (%s needed)",
			GuestHeavy: "%s weighs %s, more than the %s that the bed is lettered with and tried out for; give the largest mass as sleeper.mass, " +
				"so that strengths, lettering and proof load go by it",
			Waived:     "accepted in the design: %s carries %s times the load (%s needed)",
			NotChecked: "%d strength checks cannot be made without the %s; the least strengths to buy stand in the build sheet, with the materials",
		},
		Design: design.English(), Files: export.English(),
		Mend: MendWords{
			Value: "%s of %s", Or: ", or ", WouldDo: "use %s or more",
			Smaller: "a smaller %s", Larger: "a larger %s", OrElse: " or ", Helps: "%s helps",
			Both: "%s; %s",
		},
		Proposal: englishProposal(),
		Keeping: KeepingWords{
			Cloth: "cloth: %w", Boards: "templates: %w", OneRoll: "there is one roll, no other bed",
			Unknown: "there is no piece %.40q", EmptyBed: "nothing lies on bed %d, although there are %d",
			Some: "a piece", Copy: "%s, copy %d", Breach: "%s: %s", Between: "%s and %s: %s",
			Breaches: map[nest.Breach]string{
				nest.NotAsked: "not asked for, or placed twice", nest.NotPlaced: "not placed", nest.NotFinite: "not at a finite place",
				nest.Mirrored: "mirrored although it may not be, or the reverse", nest.Turned: "turned by an angle that is not allowed",
				nest.PastEdge: "reaches past the edge", nest.OnKeepOut: "covers a keep-out area", nest.Overlapping: "overlap",
				nest.TooClose: "closer than the gap",
			},
		},
	}
}
