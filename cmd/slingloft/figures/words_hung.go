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
}

func englishHung() HungWords {
	return HungWords{
		Title:   "Put right: what levels the bed that hangs",
		Columns: [5]string{"bar tip", "measured", "stands off", "known to", "to read after"},
		Tip:     "%s %s",
		Sides:   [2]string{bed.Left: "left", bed.Right: "right"},
		Known:   "± %s",
		Do:      "%s; its tips are then level to ± %s",
	}
}

// GuestWords says what belongs to other sleepers.
type GuestWords struct {
	Title   string
	Columns [10]string
	Cannot  string // guest, why the bed does not rest
	Least   string // guest, check that is nearest to what it requires, its margin, required
	AtMost  string // likewise where a value is missing, so that the margin may be less
	Unmet   string // likewise of one that is not met
	Unknown string // guest, of whom no margin is known
	How     string // what the figures mean
}

func englishGuests() GuestWords {
	return GuestWords{
		Title: "Other sleepers in the bed as it is made",
		Columns: [10]string{"guest", "head above foot", "sag", "higher than designed", "over ground", "head line", "foot line",
			"pull at the head", "pull at the foot", "side cord"},
		Cannot: "%s: the bed is not found at rest: %s",
		Least:  "%s: least margin: %s, %s times the load (%s needed)",
		AtMost: "%s: least margin of what is known: %s, at most %s times the load (%s needed)",
		Unmet:  "%s: NOT MET: %s carries %s times the load (%s needed)", Unknown: "%s: no margin is known",
		How: "head above foot is the bed bottom at the head bar less that at the foot bar. Sag is that of mid-bay below both. " +
			"Across, the bed lies level under one in the middle. Hang lines and anchors stay as they were set for the sleeper",
	}
}
