package wording

// Loads says what belongs to forces and margins.
type Loads struct {
	Title                             string
	Forces                            string
	Level, Upright, Leg, Side, Thrust string

	Case                string // case, how its loads are found
	Columns             [8]string
	Met, NotMet, Waived string
	Source              string // number, what it is

	Governs, Least, States string // captions

	GovernColumns    [7]string
	LeastColumns     [8]string
	StateColumns     [10]string
	NoKnots          string
	Assumed          string // a part that is counted on
	Bounded, Extreme string // a state of which no rest is found, one that no check looks at
}

func englishLoads() Loads {
	return Loads{
		Title:   "Loads and margins",
		Forces:  "Forces under the sleeper lying still",
		Level:   "pull at the apex, horizontal",
		Upright: "pull at the apex, vertical",
		Leg:     "leg tension at the bar tip, each",
		Side:    "side cord tension at the bar tip, each",
		Thrust:  "thrust along the bar",
		Case:    "%s: %s",
		Columns: [8]string{"part", "load", "dynamic factor", "capacity", "times the load", "needed", "verdict", "source"},
		Met:     "met", NotMet: "not met", Waived: "accepted",
		Source:        "Source %d: %s.",
		Governs:       "What loads each part most",
		GovernColumns: [7]string{"part", "when", "load", "capacity", "times the load", "needed", "verdict"},
		Least:         "Least breaking strengths to buy, by the data sheet: not working loads",
		LeastColumns: [8]string{"for", "strength", "if it is tied", "load", "needed", "part counted on", "most loaded",
			"the design gives"},
		States:       "The made bed in every state; loads at rest, of the side and the end that carry more",
		StateColumns: [10]string{"state", "weight at", "aside", "hang lines", "legs", "side cord", "bars", "cloth", "turn", "fuller cord"},
		NoKnots:      "No cord of the bed itself is tied: a knot in smooth braid keeps a third to a half of its strength.",
		Assumed:      "%s, assumed", Bounded: "%s (bounded)", Extreme: "%s (extreme, not judged)",
	}
}

// Accuracy says what belongs to the maker's working errors.
type Accuracy struct {
	Lengths       string // unit
	LengthColumns [5]string
	Level         string // unit
	LevelColumns  [4]string
}

func englishAccuracy() Accuracy {
	return Accuracy{
		Lengths:       "How far each spliced cord may be off, from node to node, in %s",
		LengthColumns: [5]string{"cord", "length", "permanent first-load stretch", "worst case", "root sum square"},
		Level:         "What that does to the bed's level, in %s",
		LevelColumns:  [4]string{"departure", "worst case", "root sum square", "allowed"},
	}
}

// Corrected says what belongs to a bed that was measured as it hung.
type Corrected struct {
	Tips       string // unit
	Set        string
	SetColumns [2]string
}

func englishCorrected() Corrected {
	return Corrected{
		Tips:       "The bar tips as they hang, in %s; left and right of one who lies on the back",
		Set:        "What levels it",
		SetColumns: [2]string{"do", "its tips are then level to"},
	}
}

// Guests says what belongs to other sleepers.
type Guests struct {
	Caption string // unit
}

func englishGuests() Guests {
	return Guests{Caption: "Other sleepers in the bed as it is made, lying still; lengths in %s"}
}

// Effects says what one cord too long does.
type Effects struct {
	Caption string // how much too long, unit
	Columns [6]string
}

func englishEffects() Effects {
	return Effects{
		Caption: "What %s too long does, in %s; a cord of the left side stands for both",
		Columns: [6]string{"cord", "its corner drops", "bed along, head against foot", "across at the head bar", "across at the foot bar",
			"sag at mid-bay"},
	}
}

// Materials says what belongs to what is bought and what it weighs.
type Materials struct {
	Title      string
	Caption    string
	Columns    [5]string
	Row        string // kind, thing
	Pieces     string // number, unit
	Each       string // price, unit
	Cost       string // of what has a price
	Masses     string
	Part, Mass string // columns
	Total      string // of what is known
	Stock      string // number of a stock length, parts, what is over
	Bar        string // bar, length
	Together   string // for how many hammocks the list is
	Open       string // what is not given
}

func englishMaterials() Materials {
	return Materials{
		Title:   "Materials and cost",
		Caption: "To buy; prices are those of the design, in its own currency",
		Columns: [5]string{"item", "amount", "note", "price", "cost"},
		Row:     "%s: %s",
		Pieces:  "%s × %s",
		Each:    "%s per %s",
		Cost:    "together, of what has a price",
		Masses:  "What the finished hammock weighs",
		Part:    "part", Mass: "mass",
		Total:    "together, of what is known",
		Stock:    "Bar stock %d: %s; %s over.",
		Bar:      "%s %s",
		Together: "For all %d beds that are laid together; what it weighs is one of them.",
		Open:     "Not given: %s.",
	}
}
