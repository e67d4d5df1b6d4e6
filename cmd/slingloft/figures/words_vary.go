package figures

// VaryWords says what belongs to a design with several values of a key.
type VaryWords struct {
	Title   string // name of the design
	Columns [TraitCount]string
	Check   string // column: the check with the least margin
	Now     string // marks the design as it stands
	Why     string // column: why there is no such bed
	Cannot  string // keys with their values, why there is no such bed
	How     string // what the figures mean
	Charts  string // over the curves
	Lies    string // caption of the table of how it lies
	Carries string // and of that of the rest
	Compare string // stands where the build sheet has its verdict
	Careful string // what to mind before any of it is made
	Chart   string // caption of one: measure, key
	Desc    string // the same for those who cannot see it: measure, key, least, most
}

func englishVary() VaryWords {
	return VaryWords{
		Title: "What buys what: %s",
		Columns: [TraitCount]string{
			ShoulderTrait: "shoulders", ArmTrait: "elbows or knees", SqueezeTrait: "squeeze",
			SagTrait: "sag", AlongTrait: "head above foot", TurnTrait: "turns", HeadHangTrait: "head line", FootHangTrait: "foot line",
			LineTrait: "hang line", SideTrait: "side cord", BarTrait: "bar", MarginTrait: "least margin", LengthTrait: "length",
			MassTrait: "mass", ClothTrait: "cloth",
		},
		Check: "least margin of", Now: "as it stands", Why: "why not", Cannot: "no bed with %s: %s",
		How: "Shoulders is what the opening between the cords has beyond their breadth, as the sleeper lies; likewise elbows on the back, " +
			"or knees drawn up on the side. Squeeze is the largest push on shoulders, elbows or hips from one side. " +
			"Sag is that of mid-bay below both bars, head above foot is the bed bottom at the head bar less that at the foot bar, both lying. " +
			"Turns says by how much the bed turns with the sleeper 100 mm aside. Head line and foot line are their angles above the level, lying. " +
			"Hang line, side cord and bar are the largest loads of all states. Least margin is that over what is required: under " +
			"1.00 it is not met. " +
			"Length runs from apex to apex. Mass is that of what is known, cloth the area of the pieces.",
		Charts: "Curves and tables", Lies: "How it lies and hangs", Carries: "What it carries, and what it takes", Compare: "To compare",
		Careful: "One resting person only; low at first, over soft ground. Read the cautions of the build sheet before any of it is made.",
		Chart:   "%s over %s", Desc: "%s over %s: from %s to %s",
	}
}
