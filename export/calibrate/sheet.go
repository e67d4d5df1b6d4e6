// Package calibrate draws what a machine is tried with before the first real
// sheet: a sheet of long bars, whose measured lengths give the corrections of both
// axes, and a comb that tells the width of the cut.
package calibrate

import (
	"fmt"
	"math"

	"slingloft/export"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/words"
)

// Bars are the lengths of the long bars of a sheet, in mm.
type Bars struct {
	X, Y     float64 // along the axes
	Diagonal float64 // from corner to corner, both ways the same if the axes are square
}

// step is what the lengths of the bars are multiples of, mm: long rulers are read
// off at such places.
const step = 50.0

// Sheet draws the calibration sheet in the frame: a rectangle of bars along both
// axes, as long as fit in whole steps of 50 mm, and its diagonals by their ends.
// Plot it without correction, measure, and give nominal and measured length of the
// bars to [export.Correction]. What to measure stands on it in the words given. The error for a frame too small for it is an
// *[export.BedError].
func Sheet(f export.Frame, b export.Block, say words.Sheets) (export.Drawing, Bars, error) {
	const room, tick, textHeight = 12.0, 4.0, 5.0
	x := math.Floor((f.Lay.Width()-2*room)/step) * step
	y := math.Floor((f.Lay.Height()-2*room)/step) * step
	if least := step + 2*room; !(x >= step && y >= step) {
		return export.Drawing{}, Bars{}, &export.BedError{Width: f.Width, Height: f.Height,
			NeedWidth: f.Width - f.Lay.Width() + least, NeedHeight: f.Height - f.Lay.Height() + least}
	}
	bars := Bars{x, y, math.Hypot(x, y)}
	s := export.Sheet{Name: "calibration", Title: say.Calibration, Frame: f, Block: b, Words: &say}
	low := geom.Pt(room, room)
	corners := [4]geom.Point{low, low.Plus(geom.Pt(x, 0)), low.Plus(geom.Pt(x, y)), low.Plus(geom.Pt(0, y))}
	names := [4]string{"long bar x low", "long bar y right", "long bar x high", "long bar y left"}
	for i, from := range corners {
		to := corners[(i+1)%4]
		along := to.Minus(from).Unit()
		s.Lines = append(s.Lines,
			mark(names[i], from, to),
			mark(names[i]+"/start", from.Minus(along.Left().Times(tick)), from.Plus(along.Left().Times(tick))),
			mark(names[i]+"/end", to.Minus(along.Left().Times(tick)), to.Plus(along.Left().Times(tick))))
		s.Labels = append(s.Labels, piece.Label{
			Text: fmt.Sprintf("%.0f mm", from.Dist(to)), At: from.Towards(to, 0.5).Plus(along.Left().Times(textHeight * 1.5)),
			Height: textHeight, Turn: upright(along.Angle()), Anchor: piece.Centre,
		})
	}
	for i, text := range []string{
		say.Bars,
		fmt.Sprintf(say.Diagonals, bars.Diagonal),
	} {
		at := low.Plus(geom.Pt(x/2, y/2-float64(i)*10))
		height := math.Min(textHeight, x/70) // 65 letters of about a height each
		s.Labels = append(s.Labels, piece.Label{Text: text, At: at, Height: height, Anchor: piece.Centre})
	}
	d, err := export.Compose(s)
	return d, bars, err
}

func mark(name string, pts ...geom.Point) piece.Line {
	return piece.Line{Name: name, Work: piece.Mark, Points: pts}
}

// upright turns a writing direction that would stand on its head.
func upright(angle float64) float64 {
	if angle > math.Pi/2+1e-9 || angle < -math.Pi/2+1e-9 {
		return angle + math.Pi
	}
	return angle
}
