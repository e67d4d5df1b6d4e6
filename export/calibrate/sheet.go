// Package calibrate draws what a machine is tried with before the first real
// sheet: a sheet of long bars, whose measured lengths give the corrections of both
// axes, and a comb that tells the width of the cut.
package calibrate

import (
	"fmt"
	"math"

	"slingloft/export"
	"slingloft/export/lettering"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
	"slingloft/outline/words"
)

// Bars are the lengths of the long bars of a sheet, in mm.
type Bars struct {
	X, Y     float64 // along the axes
	Diagonal float64 // from corner to corner, both ways the same if the axes are square
}

// Trial is what a machine is tried on and how.
type Trial struct {
	Stock  piece.Stock // that the machine is tried on
	Room   [2]float64  // that there is at most along x and y, mm
	Inches bool        // lengths are whole inches, or halves, and lettered so
	Cut    bool        // the tool only cuts what it is tried on: the bars are the edges of a rectangle
	Block  export.Block
	Words  words.Sheets
}

// room is what is kept free around bars and combs, mm: a tick, a way in, the edge of a
// stock that does not lie quite square.
const room = 10.0

// Longest is the longest bar, mm, and in inches: what a steel tape is read to half a
// millimetre over by one person (own choice).
const (
	Longest       = 3000.0
	LongestInches = 120 * quantity.Inch
)

// BarsFor returns the bars of a trial: as long as there is room for, in whole steps that
// rulers are read off at, shorter where there is little room.
func BarsFor(t Trial) Bars {
	x, y := t.barIn(t.Room[0]), t.barIn(t.Room[1])
	return Bars{x, y, math.Hypot(x, y)}
}

// barIn returns the longest bar for a length of room, mm.
func (t Trial) barIn(length float64) float64 {
	coarse, fine, longest := 50.0, 10.0, Longest
	if t.Inches {
		coarse, fine, longest = 2*quantity.Inch, quantity.Inch/2, LongestInches
	}
	// Rounding of what was given in inches takes nothing off.
	length = math.Min(length-2*room, longest) + 1e-9
	step := coarse
	if length < 4*coarse {
		step = fine
	}
	return math.Floor(length/step) * step
}

// style is that of lettered lengths.
func (t Trial) style() quantity.Style { return quantity.Style{Inches: t.Inches, Fraction: 32} }

// Sheet draws the calibration sheet: a rectangle of bars along both axes. It is to be
// made without correction; nominal and measured length of the bars go to
// [export.Correction]. What to measure stands on it.
func Sheet(t Trial) (export.Drawing, Bars, error) {
	const tick, textHeight = 4.0, 5.0
	bars := BarsFor(t)
	x, y := bars.X, bars.Y
	s := export.Sheet{Name: "calibration", Stock: t.Stock, Title: t.Words.Calibration, Frame: export.Empty(x+2*room, y+2*room),
		Block: t.Block, Words: &t.Words}
	low := geom.Pt(room, room)
	corners := [4]geom.Point{low, low.Plus(geom.Pt(x, 0)), low.Plus(geom.Pt(x, y)), low.Plus(geom.Pt(0, y))}
	if t.Cut {
		s.Lines = append(s.Lines, piece.Line{Name: "long bars", Work: piece.CutOut, Points: corners[:], Closed: true})
	}
	names := [4]string{"long bar x low", "long bar y right", "long bar x high", "long bar y left"}
	for i, from := range corners {
		to := corners[(i+1)%4]
		along := to.Minus(from).Unit()
		if !t.Cut {
			across := along.Left().Times(tick)
			s.Lines = append(s.Lines, mark(names[i], from, to), mark(names[i]+"/start", from.Minus(across), from.Plus(across)),
				mark(names[i]+"/end", to.Minus(across), to.Plus(across)))
		}
		s.Labels = append(s.Labels, piece.Label{
			Text: t.style().Length(from.Dist(to)), At: from.Towards(to, 0.5).Plus(along.Left().Times(textHeight * 1.5)),
			Height: textHeight, Turn: upright(along.Angle()), Anchor: piece.Centre,
		})
	}
	fine := t.style()
	fine.Decimals = 2
	s.Labels = append(s.Labels, lettered(geom.BoxOf(low, low.Plus(geom.Pt(x, y))).Expanded(-15),
		t.Block.Design, t.Block.Marks, t.Words.Bars, fmt.Sprintf(t.Words.Diagonals, fine.Length(bars.Diagonal)))...)
	d, err := export.Compose(s)
	return d, bars, err
}

// lettered returns lines of text in the middle of a box, as large as there is room for.
func lettered(in geom.Box, rows ...string) []piece.Label {
	const most, step = 5.0, 2.0 // mm; from row to row over the height
	height := math.Min(most, in.Height()/(step*float64(len(rows))))
	for _, text := range rows {
		height = math.Min(height, in.Width()/math.Max(lettering.Width(text, 1), 1))
	}
	var out []piece.Label
	for i, text := range rows {
		if text != "" {
			at := in.Center().Plus(geom.Pt(0, (float64(len(rows)-1)/2-float64(i))*step*height))
			out = append(out, piece.Label{Text: text, At: at, Height: height, Anchor: piece.Centre})
		}
	}
	return out
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
