package panel

import (
	"fmt"

	"slingloft/outline/piece"
)

// sideNotches returns the notches of a body side: quarters, middle and both
// bars, numbered from the head with the side's letter. The left side has single
// strokes, the right side double ones, so that neither can be taken for the other.
func sideNotches(letter string, long float64, bars [2]float64, double bool) []piece.Notch {
	at := []piece.Notch{{At: long / 4}, {At: long / 2}, {At: 3 * long / 4}}
	for _, b := range bars {
		at = insertNotch(at, piece.Notch{At: b, Bar: true})
	}
	for i := range at {
		at[i].Number, at[i].Double = i+1, double
		at[i].Name = fmt.Sprintf("%s%d", letter, at[i].Number)
	}
	return at
}

// insertNotch puts n in its place; a quarter point within a finger's breadth of
// a bar gives way to it.
func insertNotch(at []piece.Notch, n piece.Notch) []piece.Notch {
	const finger = 15.0
	out := make([]piece.Notch, 0, len(at)+1)
	done := false
	for _, m := range at {
		if !done && n.At < m.At {
			out = append(out, n)
			done = true
		}
		if m.Bar || m.At < n.At-finger || m.At > n.At+finger {
			out = append(out, m)
		}
	}
	if !done {
		out = append(out, n)
	}
	return out
}

// endNotches returns the notches of an end seam, run from the right side to the
// left: quarters and middle. The left quarter has one stroke and the right one
// two; the middle has one at the head and two at the foot.
func endNotches(letter string, long float64, foot bool) []piece.Notch {
	return []piece.Notch{
		{Name: letter + "1", Number: 1, At: long / 4, Double: true},
		{Name: letter + "2", Number: 2, At: long / 2, Double: foot},
		{Name: letter + "3", Number: 3, At: 3 * long / 4},
	}
}
