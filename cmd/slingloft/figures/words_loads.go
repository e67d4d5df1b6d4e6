package figures

// MarginWords says what belongs to loads and capacities.
type MarginWords struct {
	Title   string
	Columns [5]string
	AtMost  string // a capacity that may be less
	Case    string // load case, how its loads are found
	Governs string // over the parts, each in the case that loads it most
	Every   string // over all checks
	Least   string // over what has to be bought
	Buy     string // thing, strength, what it follows from
	States  string // over the states of the made bed
	State   [10]string
	Bounded string // a state of which no rest is found
	Extreme string // one that no check looks at
}

func englishMargins() MarginWords {
	return MarginWords{
		Title:   "Margins: capacity over load",
		Columns: [5]string{"check", "load", "capacity", "times the load", "needed"},
		AtMost:  "at most %s",
		Case:    "case %s: %s",
		Governs: "each part in the case that loads it most:",
		Every:   "every check:",
		Least:   "least strengths to buy, by the data sheet, whether or not the design gives any:",
		Buy:     "%s: %s; %s",
		States:  "the made bed in every state, loads at rest of the side and the end that carry more (%s, %s, %s):",
		State:   [10]string{"state", "weight at", "aside", "lines", "legs", "side cord", "bars", "cloth", "turn", "fuller cord"},
		Bounded: "%s, bounded", Extreme: "%s, extreme",
	}
}

// placeFigure is a figure of the hang points that each end has.
type placeFigure int

const (
	placeHook placeFigure = iota
	placeLine
	placeApex
	placeAngle
	placePull
	placeMost
	placeFigures
)

// HangingWords says what belongs to the hammock between its supports.
type HangingWords struct {
	Title            string
	Overall          string // length
	Between          string // distance, lowest point, edge
	Figures          [placeFigures]string
	Pull             string // a force, and in kgf
	Beyond           string // by how much
	Anchors          string // what is said of the anchors, and of the apexes afterwards
	Anchor, Apex     string // end of which it stands higher, by how much
	AnchorsLevel     string // where they stand equally high
	ApexesLevel      string
	Guessed          string // length of the hang lines, and likewise, where it is not known how long the hang lines are
	LevelIs          string // what "level" was asked of: anchors
	ApexLevelIs      string // and apexes
	Roll             string // height on the back, on the side
	Turn             string // how far aside, how far the bed turns, what the lower cord carries, verdict
	Over             string // how far aside, how far it turned before it turns over
	Steady           string // the verdicts
	Rocks, NotSteady string
	Shelter          string // what is needed
	ShelterOf        string // and what it has
	Sweep            string // unit
	Columns          [5]string
}

func englishHanging() HangingWords {
	return HangingWords{
		Title:   "Hanging",
		Overall: "overall length from apex to apex %s",
		Between: "between anchors %s apart, lowest point %s above ground, edge to climb in over %s",
		Figures: [placeFigures]string{
			placeHook: "anchor above ground", placeLine: "hang line, apex to anchor", placeApex: "apex above ground, to check afterwards",
			placeAngle: "angle of the line", placePull: "pull on the anchor, lying", placeMost: "largest pull on the anchor, any state",
		},
		Pull:    "%s, %s kgf",
		Beyond:  "the higher anchor stands %s above the height that the design gives",
		Anchors: "set the anchors: %s. To check afterwards: %s",
		Anchor:  "the %s one stands %s higher than the other", Apex: "the %s apex then stands %s higher than the other",
		AnchorsLevel: "both stand equally high", ApexesLevel: "both apexes then stand equally high",
		Guessed: "the design does not say where it hangs. With hang lines of %s, own choice, set the anchors: %s. To check afterwards: %s. " +
			"Other lines make another difference of the anchors",
		LevelIs:     "level anchors were asked for (bed.level_anchors)",
		ApexLevelIs: "level apexes were asked for (bed.level_apexes): the anchors differ",
		Roll:        "line through the apexes above the sleeper's centre of mass: %s on the back, %s on the side",
		Turn:        "with the weight %s aside, on the back, the bed turns by %s, the lower cord carries %s of it: %s",
		Over:        "with the weight less than %s aside, on the back, the bed turned by %s, it turns over: NOT stable",
		Steady:      "stable", Rocks: "it rocks", NotSteady: "NOT stable",
		Shelter:   "shelter: the ridge needs %s",
		ShelterOf: "shelter: the ridge needs %s, has %s",
		Sweep:     "distance of the anchors against their height (%s), the bed's lowest point as the design has it:",
		Columns:   [5]string{"distance", "head anchor", "foot anchor", "head line", "foot line"},
	}
}

// AccuracyWords says what belongs to working errors.
type AccuracyWords struct {
	Title   string
	Columns [4]string
	Cannot  string // why they cannot be followed through
}

func englishAccuracy() AccuracyWords {
	return AccuracyWords{
		Title:   "Working errors: how level the bed comes out",
		Columns: [4]string{"measure", "worst case", "root sum square", "allowed"},
		Cannot:  "the working errors cannot be followed through: %s",
	}
}

// MaterialWords says what belongs to the list of what to buy.
type MaterialWords struct {
	Title       string
	Columns     [7]string
	Cost        string // of what has a price
	Part, Mass  string // columns of the masses, the second with a unit
	Total       string
	Open        string // what a row or a part lacks
	Strength    string // a least strength, what it follows from
	KeyNotGiven string // key of a value without which a mass is not known
}

func englishMaterials() MaterialWords {
	return MaterialWords{
		Title:   "Materials",
		Columns: [7]string{"kind", "what", "quantity", "unit", "price of one", "cost", "note"},
		Cost:    "cost of what has a price: %s",
		Part:    "part", Mass: "mass %s",
		Total:       "together, of what is known",
		Open:        "not given: %s",
		Strength:    "%s; %s",
		KeyNotGiven: "%s is not given",
	}
}
