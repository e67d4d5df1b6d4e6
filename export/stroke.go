package export

import (
	"slingloft/export/style"
	"slingloft/outline/piece"
)

// Limits of what a stroke may be: thinner than a hundredth or wider than ten
// millimetres no machine draws; four pairs of dashes are more than any line type
// of ISO 128 has.
const (
	minWidth, maxWidth = 0.01, 10.0
	maxDash            = 100.0
	maxDashes          = 8
)

// checkStrokes reports the first stroke that cannot be drawn.
func checkStrokes(s style.Scheme) error {
	for _, w := range piece.Works() {
		if err := checkStroke(s.Of(w)); err != nil {
			return Refuse(AtStroke, w, err)
		}
	}
	return nil
}

func checkStroke(s style.Stroke) error {
	if !Inside(s.Width, minWidth, maxWidth) {
		return Refuse(WidthOff, s.Width, minWidth, maxWidth)
	}
	if len(s.Dash) > maxDashes || len(s.Dash)%2 != 0 {
		return Refuse(DashesOff, len(s.Dash), maxDashes)
	}
	for _, d := range s.Dash {
		if !(d > 0 && d <= maxDash) {
			return Refuse(DashOff, d, maxDash)
		}
	}
	return nil
}
