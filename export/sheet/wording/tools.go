package wording

// Tool is what lies at hand in a step, beside templates and gauges.
type Tool int

// The tools, in the order in which they are needed.
const (
	MeasuringTools Tool = iota
	TapeMeasure
	CardTools
	LongRule
	SetSquare
	Chalk
	TracingTools
	Awl
	Shears
	Iron
	SewingMachine
	Needles
	TestWeight
	SeamThread
	Clips
	Ripper
	Posts
	Tackle
	Fid
	CordPen
	CordTape
	CordPins
	Clamps
	StrongThread
	BarTools
	LevelTools
	ProofBags
	DeadWeight
	LoopTools
	Sealer
	GuyLines
	ToolCount // how many there are
)

func englishTools() map[Tool]string {
	return map[Tool]string{
		TapeMeasure:    "tape measure",
		MeasuringTools: "callipers, steel rule",
		CardTools:      "card, glue, knife, sandpaper",
		LongRule:       "long straight-edge",
		SetSquare:      "large set square",
		Chalk:          "chalk",
		TracingTools:   "tracing wheel and chalk paper",
		Awl:            "awl",
		Shears:         "shears",
		Iron:           "iron",
		SewingMachine:  "sewing machine",
		Needles:        "needles, thread",
		TestWeight:     "weight for the test",
		SeamThread:     "needle and thread as tested",
		Clips:          "clips or pins",
		Ripper:         "seam ripper",
		Posts:          "smooth post, loose round bar",
		Tackle:         "tackle with a hanging scale, or weight and pulley",
		Fid:            "fid",
		CordPen:        "cord pen, adhesive tape, sharp scissors",
		CordTape:       "steel tape",
		CordPins:       "pins for eyes and gaps",
		Clamps:         "four small boards, four clamps",
		StrongThread:   "strong thread, blunt hand needle",
		BarTools:       "saw, file, tips, glue",
		LevelTools:     "tape, long level or a hose with water",
		ProofBags:      "bags, blanket",
		DeadWeight:     "dead weight",
		LoopTools:      "a flame to melt ends of tape",
		Sealer:         "seam sealer for the tarp's cloth, and its brush",
		GuyLines:       "lines for ridge and corners, pegs, drip strings, something bright",
	}
}
