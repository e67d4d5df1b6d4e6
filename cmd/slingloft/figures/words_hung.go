package figures

import "slingloft/outline/bed"

// HungWords says what belongs to a bed that was measured as it hung.
type HungWords struct {
	Title   string
	Columns [5]string
	Tip     string    // end, side
	Sides   [2]string // by [bed.Side]
	Known   string    // a length that is either way
	Do      string    // an adjustment, how level its tips then are
	Cannot  string    // why the heights tell nothing
}

func englishHung() HungWords {
	return HungWords{
		Title:   "Put right: what levels the bed that hangs",
		Columns: [5]string{"bar tip", "measured", "stands off", "known to", "to read after"},
		Tip:     "%s %s",
		Sides:   [2]string{bed.Left: "left", bed.Right: "right"},
		Known:   "± %s",
		Do:      "%s; its tips are then level to ± %s",
		Cannot:  "the heights tell nothing: %s",
	}
}
