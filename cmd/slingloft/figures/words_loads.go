package figures

// MarginWords says what belongs to loads and capacities.
type MarginWords struct {
	Title   string
	Columns [5]string
	AtMost  string // a capacity that may be less
	Case    string // load case, how its loads are found
}

func englishMargins() MarginWords {
	return MarginWords{
		Title:   "Margins: capacity over load",
		Columns: [5]string{"check", "load", "capacity", "margin", "required"},
		AtMost:  "at most %s",
		Case:    "case %s: %s",
	}
}

// placeFigure is a figure of the hang points that each end has.
type placeFigure int

const (
	placeHook placeFigure = iota
	placeLine
	placeAngle
	placePull
	placeFigures
)

// HangingWords says what belongs to the hammock between its supports.
type HangingWords struct {
	Title             string
	Overall           string // length
	Between           string // distance, lowest point, edge
	Figures           [placeFigures]string
	Pull              string // a force, and in kgf
	Beyond            string // by how much
	Roll              string // height on the back, on the side, verdict
	Steady, NotSteady string // the verdicts
	Shelter           string // what is needed
	ShelterOf         string // and what it has
	Sweep             string // unit
	Columns           [5]string
}

func englishHanging() HangingWords {
	return HangingWords{
		Title:   "Hanging",
		Overall: "overall length from hook to hook %s",
		Between: "between supports %s apart, lowest point %s above ground, edge to climb in over %s",
		Figures: [placeFigures]string{
			placeHook: "hook on the support", placeLine: "hang line", placeAngle: "angle of the line", placePull: "pull on the support",
		},
		Pull:   "%s, %s kgf",
		Beyond: "the higher hook stands %s above the height that the design gives",
		Roll:   "line through the hooks above the sleeper's centre of mass: %s on the back, %s on the side: %s",
		Steady: "steady", NotSteady: "NOT steady",
		Shelter:   "shelter: the ridge needs %s",
		ShelterOf: "shelter: the ridge needs %s, has %s",
		Sweep:     "support distance against the height of the hooks (%s), the bed's lowest point as the design has it:",
		Columns:   [5]string{"distance", "head hook", "foot hook", "head line", "foot line"},
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
		KeyNotGiven: "%s is not given",
	}
}
