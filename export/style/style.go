// Package style says with which stroke each kind of work is drawn: colour,
// width and dashes. A machine that tells jobs apart by colour is matched by
// changing the scheme; no shop's or program's scheme is kept here.
package style

import (
	"fmt"
	"strconv"

	"slingloft/outline/piece"
)

// Colour is a colour of the sRGB space.
type Colour struct{ R, G, B uint8 }

// String returns the colour as "#rrggbb".
func (c Colour) String() string { return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B) }

// ParseColour reads "#rrggbb" and reports whether that is what it is.
func ParseColour(text string) (Colour, bool) {
	if len(text) == 7 && text[0] == '#' {
		if v, err := strconv.ParseUint(text[1:], 16, 32); err == nil {
			return Colour{uint8(v >> 16), uint8(v >> 8), uint8(v)}, true
		}
	}
	return Colour{}, false
}

// Stroke is how one kind of work is drawn on paper. Width and dashes are those
// of the drawn line, whatever the scale.
type Stroke struct {
	Colour Colour
	Width  float64   // mm
	Dash   []float64 // mm of line and gap in turn; none for a continuous line
}

// Scheme holds the stroke of every kind of work, in the order of
// [piece.Works]. The zero value stands for [Default].
type Scheme struct{ strokes []Stroke }

// The palette of Okabe and Ito, which colour-blind people can tell apart
// (jfly.uni-koeln.de/color), without its yellow, too faint for a thin line.
var (
	black     = Colour{0, 0, 0}
	orange    = Colour{230, 159, 0}
	skyBlue   = Colour{86, 180, 233}
	green     = Colour{0, 158, 115}
	blue      = Colour{0, 114, 178}
	vermilion = Colour{213, 94, 0}
	purple    = Colour{204, 121, 167}
)

// Widths and line types of ISO 128-2:2020, from memory: 02 dashed 12d and 3d, 04
// long-dash dot 24d, 3d, 0.5d, 3d, with d the width.
const (
	thin   = 0.25 // mm
	medium = 0.35 // mm
)

func dashed(d float64) []float64      { return []float64{12 * d, 3 * d} }
func longDashDot(d float64) []float64 { return []float64{24 * d, 3 * d, 0.5 * d, 3 * d} }

// Default returns the scheme that is used unless another is asked for.
func Default() Scheme {
	strokes := make([]Stroke, len(piece.Works()))
	strokes[piece.Register] = Stroke{purple, thin, nil}
	strokes[piece.Lettering] = Stroke{black, thin, nil}
	strokes[piece.Mark] = Stroke{blue, thin, nil}
	strokes[piece.Stitch] = Stroke{green, thin, longDashDot(thin)}
	strokes[piece.Score] = Stroke{skyBlue, thin, dashed(thin)}
	strokes[piece.CutInside] = Stroke{orange, medium, nil}
	strokes[piece.CutOut] = Stroke{vermilion, medium, nil}
	return Scheme{strokes}
}

// Of returns the stroke for work w.
func (s Scheme) Of(w piece.Work) Stroke {
	if s.strokes == nil {
		s = Default()
	}
	if w < 0 || int(w) >= len(s.strokes) {
		return Stroke{black, thin, nil}
	}
	return s.strokes[w]
}

// With returns the scheme with the stroke of work w replaced.
func (s Scheme) With(w piece.Work, stroke Stroke) Scheme {
	if s.strokes == nil {
		s = Default()
	}
	out := Scheme{append([]Stroke(nil), s.strokes...)}
	if w >= 0 && int(w) < len(out.strokes) {
		out.strokes[w] = stroke
	}
	return out
}
