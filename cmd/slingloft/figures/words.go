package figures

import "slingloft/outline/words"

// Words is all that [Text] and the remarks of a document say in one language: what
// things are called, and a table for each section. Texts with verbs are filled in by
// the section that they are named for, in the order in which the verbs stand unless a
// verb says otherwise.
type Words struct {
	Names words.Names

	Head     string // name of the design, its digest, the mark of its shapes
	Caution  string // a caution
	Careful  string // stands beside every group of loads
	Note     string // a remark
	NotGiven string // a value that the design does not give

	Faults    FaultWords
	Shape     ShapeWords
	Ends      EndWords
	Stations  StationWords
	Body      BodyWords
	Cords     CordWords
	Seams     SeamWords
	Offsets   OffsetWords
	Pieces    PieceWords
	Lay       LayWords
	Margins   MarginWords
	Hanging   HangingWords
	Accuracy  AccuracyWords
	Hung      HungWords
	Guests    GuestWords
	Materials MaterialWords
	Vary      VaryWords
	Room      RoomWords
	Cloth     ClothWords
	Further   FurtherWords
	Tarp      TarpWords
	Cover     CoverWords
	Lining    LiningWords
	Leveled   LeveledWords
}

// English returns the words in English.
func English() Words {
	return Words{
		Names:    words.English(),
		Head:     "%s · design %s · shape %s",
		Caution:  "! %s",
		Careful:  "! One resting person only; low at first, over soft ground. Read the cautions above.",
		Note:     "note: %s",
		NotGiven: "not given",
		Faults:   englishFaults(),
		Shape:    englishShape(), Ends: englishEnds(), Stations: englishStations(), Body: englishBody(),
		Cords: englishCords(), Seams: englishSeams(), Offsets: englishOffsets(), Pieces: englishPieces(), Lay: englishLay(),
		Margins: englishMargins(), Hanging: englishHanging(), Accuracy: englishAccuracy(), Hung: englishHung(), Guests: englishGuests(),
		Materials: englishMaterials(),
		Vary:      englishVary(), Room: englishRoom(), Cloth: englishCloth(), Further: englishFurther(), Tarp: englishTarp(),
		Cover:   englishCover(),
		Lining:  englishLining(),
		Leveled: englishLeveled(),
	}
}

// FaultWords says what fails and what is unusual, before anything else.
type FaultWords struct {
	Title    string // over the cautions
	NotMet   string // word for a check that is not met
	Waived   string // and for one that is waived in the design
	Margin   string // that word, check, margin, required, what would do
	Seam     string // out of tolerance: seam, what remains
	Warning  string
	Unproven string // times, parts that do not hold the proof load
	Standing StandingWords
}

// StandingWords says how a check stands.
type StandingWords struct {
	Met, NotMet, Waived string
	Missing             string // names of values that are needed
}

func englishFaults() FaultWords {
	return FaultWords{
		Title:    "Cautions",
		NotMet:   "NOT MET",
		Waived:   "not met, accepted in the design",
		Margin:   "%s: %s carries %s times the load (%s needed); %s",
		Seam:     "OUT OF TOLERANCE: seam %s, %s remain",
		Warning:  "warning: %s",
		Unproven: "! The proof load is more than these parts are known to hold %s times over: %s.",
		Standing: StandingWords{
			Met: "met", NotMet: "NOT MET", Waived: "not met, accepted", Missing: "missing %s",
		},
	}
}
