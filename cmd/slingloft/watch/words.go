package watch

import "slingloft/outline/design"

// Words is what the page says beside the sheet that it shows, in one language.
type Words struct {
	Fields map[design.Key]string // of dimensions that can be tried
	Wrong  string                // of a field: its name, what is wrong
}

// English returns the words in English.
func English() Words {
	return Words{
		Fields: map[design.Key]string{
			design.KeySleeperStature:   "stature",
			design.KeySleeperMass:      "mass",
			design.KeyBedSpan:          "span",
			design.KeyBedHeadBar:       "head bar",
			design.KeyBedFootBar:       "foot bar",
			design.KeyBedHeadDrop:      "drop at the head bar",
			design.KeyBedHeadGirth:     "girth at the head bar",
			design.KeyBedSideDepth:     "side depth",
			design.KeyBedHangAngle:     "head hang angle",
			design.KeyBedFootHangAngle: "foot hang angle",
			design.KeyBedThrust:        "thrust of one side",
			design.KeyBedHeadTail:      "head tail",
			design.KeyBedFootTail:      "foot tail",
			design.KeyBedHeadLeg:       "head leg",
			design.KeyBedFootLeg:       "foot leg",
		},
		Wrong: "%s: %v",
	}
}
