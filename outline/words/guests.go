package words

import (
	"fmt"

	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/margin"
	"slingloft/outline/quantity"
)

// Guests says what belongs to other sleepers in the bed.
type Guests struct {
	Columns [10]string
	Cannot  string // guest, why the bed does not rest
	Least   string // guest, check that is nearest to what it requires, its margin, required
	AtMost  string // likewise where a value is missing, so that the margin may be less
	Unmet   string // likewise of one that is not met
	Unknown string // guest, of whom no margin is known
	How     string // what the figures mean
}

func englishGuests() Guests {
	return Guests{
		Columns: [10]string{"guest", "head above foot", "sag", "higher than designed", "over ground", "head line", "foot line",
			"pull at the head", "pull at the foot", "side cord"},
		Cannot: "%s: the bed is not found at rest: %s",
		Least:  "%s: least margin: %s, %s times the load (%s needed)",
		AtMost: "%s: least margin of what is known: %s, at most %s times the load (%s needed)",
		Unmet:  "%s: not met: %s carries %s times the load (%s needed)", Unknown: "%s: no margin is known",
		How: "head above foot is the bed bottom at the head bar less that at the foot bar. Sag is that of mid-bay below both. " +
			"Across, the bed lies level under one in the middle. Hang lines and anchors stay as they were set for the sleeper",
	}
}

// Why says why a bed is not found at rest.
func (n Names) Why(err error) string { return n.Faults.Found(design.FindingOf(err)) }

// GuestMargin says which part has least in hand under a guest; unmet says so of one that
// has too little.
func (n Names) GuestMargin(guest string, c margin.Check, unmet string) string {
	text := n.Guests.Least
	switch {
	case c.Capacity == 0:
		return fmt.Sprintf(n.Guests.Unknown, guest)
	case c.Unmet():
		text = unmet
	case c.Bound:
		text = n.Guests.AtMost
	}
	return fmt.Sprintf(text, guest, n.Margins.CheckName(c), quantity.Decimal(c.Ratio, 2), quantity.Decimal(c.Required, 2))
}

// Tips says what belongs to the bar tips of a bed that was measured as it hung.
type Tips struct {
	Columns [5]string
	Tip     [2]string // end, by [bed.Side]
	Known   string    // a length that is either way
}

func englishTips() Tips {
	return Tips{
		Columns: [5]string{"bar tip", "measured", "stands off", "known to", "to read after"},
		Tip:     [2]string{bed.Left: "%s left", bed.Right: "%s right"},
		Known:   "± %s",
	}
}
