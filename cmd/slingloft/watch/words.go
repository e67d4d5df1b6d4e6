package watch

import "slingloft/outline/design"

// Words is what the page says beside the sheet that it shows, in one language.
type Words struct {
	Fields map[design.Key]string // of dimensions that can be tried
	Wrong  string                // of a field: its name, what is wrong
	Unread string                // file, why

	OtherAddress string // why the page is not served at its address
	TooManyPages string // open
	TooMuch      string // to try
	Nothing      string // to try
	AddressOnly  string // the page is served under
	PageOnly     string // may ask this
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
		Wrong: "%s: %v", Unread: "%s: %v",
		OtherAddress: "%w; another address can be named with --addr, and 127.0.0.1:0 takes any free port",
		TooManyPages: "too many pages are open", TooMuch: "too much to try", Nothing: "nothing to try",
		AddressOnly: "this page is served under its address only", PageOnly: "only the page itself may ask this",
	}
}
