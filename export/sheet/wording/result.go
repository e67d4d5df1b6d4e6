package wording

import (
	"slingloft/export/sheet"
	"slingloft/outline/design"
)

// Verdict says the outcome of the checks in one word and one line.
type Verdict struct {
	Grades    map[sheet.Grade]string
	Unmet     Count // required margins
	Off       Count // seams
	Unchecked string
	Waived    string // number of checks
	Warned    string
	Unknown   Count // checks
	Met       string
}

func englishVerdict() Verdict {
	return Verdict{
		Grades: map[sheet.Grade]string{sheet.Good: "Checks met", sheet.Careful: "Take care", sheet.Bad: "Not fit to use"},
		Unmet: Count{
			One:  "1 required margin is not met. Do not hang anybody in it before that is mended.",
			Many: "%d required margins are not met. Do not hang anybody in it before that is mended.",
		},
		Off:       Count{One: "1 seam is out of tolerance.", Many: "%d seams are out of tolerance."},
		Unchecked: "Strength was not checked: see what is missing below.",
		Waived:    "Checks that fail and were accepted by name: %d. Everything else that is known is met.",
		Warned:    "Every required margin is met and every seam is in tolerance; read what to know before cutting.",
		Unknown: Count{
			One:  "Every margin that can be worked out is met; for 1 check a data sheet value is missing.",
			Many: "Every margin that can be worked out is met; for %d checks a data sheet value is missing.",
		},
		Met: "Every required margin is met and every seam is in tolerance.",
	}
}

// Result says what fails and what to know, before anything else.
type Result struct {
	Title                                 string
	Unmet, Off, Waived, Unknown, Warnings string // titles of notices
	Check                                 string // name, load, what it holds, margin, required
	AtMost                                string // what a part holds at most
	Seam                                  string // out of tolerance: seam, what remains, what is allowed
	Unproven                              string // times, parts that do not hold the proof load
	Cautions                              string // title
	Careful                               string // title of the cautions
}

func englishResult() Result {
	return Result{
		Title:    "Checks and cautions",
		Unmet:    "Required margins that are not met",
		Off:      "Seams out of tolerance",
		Waived:   "Checks that fail and were accepted by name",
		Unknown:  "Not known for want of values from data sheets",
		Warnings: "Know this before cutting",
		Check:    "%s: load %s, capacity %s: %s times the load (%s needed)",
		AtMost:   "at most %s",
		Seam:     "%s: %s remain beyond the planned ease, %s are allowed",
		Unproven: "The proof load is more than these parts are known to carry %s times over: %s.",
		Cautions: "Before anybody lies in it",
		Careful: "One resting person only; low at first, over soft ground. What stands at the top of this sheet under “%s” " +
			"goes with every load.",
	}
}

// Summary says what belongs to the table of the main measures.
type Summary struct {
	Caption string
	Columns [2]string

	Span, Bars, Drops, Depth, Tails, Overall, Angles string
	Higher                                           string // names of the ends, that of the higher anchor first
	HigherApex                                       string // likewise, of the apexes
	Tension, Ends, Cut, Load                         string

	Caps         map[design.CapKind]string
	Cuts         map[design.Cut]string
	Even         string // mass
	Inside, Past string // a sleeper by the place of the head: mass, how far from the head bar
}

func englishSummary() Summary {
	return Summary{
		Caption:    "The bed at a glance",
		Columns:    [2]string{"measure", "value"},
		Span:       "span between the bars",
		Bars:       "bars, head and foot, between cord centres",
		Drops:      "drop at the bars, head and foot",
		Depth:      "side depth, flat, at the cord line",
		Tails:      "tails past the bars, head and foot",
		Overall:    "overall length, apex to apex",
		Angles:     "hang angles, head and foot",
		Higher:     "%s anchor above the %s one",
		HigherApex: "%s apex above the %s one; what is set are the anchors, see where it hangs",
		Tension:    "largest cord tension",
		Ends:       "ends",
		Cut:        "cut of the body",
		Load:       "load",
		Caps: map[design.CapKind]string{
			design.Upright: "upright caps", design.Leaning: "caps square to the rising cords", design.Gathered: "gathered by a drawstring",
		},
		Cuts:   map[design.Cut]string{design.Net: "shaped on a net of threads that do not stretch", design.Straight: "straight tails"},
		Even:   "%s spread evenly",
		Inside: "a sleeper of %s, top of the head %s inside the head bar",
		Past:   "a sleeper of %s, top of the head %s past the head bar, over the tail",
	}
}
