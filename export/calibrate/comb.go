package calibrate

import (
	"fmt"
	"math"

	"slingloft/export"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
)

// Comb is a test piece of the board itself. Its slots are narrower than the board
// is thick, each by some more; cut on the line, without regard to the kerf, a slot
// comes out wider by the kerf. Where the board's edge fits snugly, the number at
// the slot is the kerf. So every tenth of a millimetre that the board is thinner or
// thicker than it was taken for is a tenth in the number.
type Comb struct {
	Thickness float64 // of the board, mm, measured
	First     float64 // number of the first slot: the least kerf to try, mm
	Step      float64 // from slot to slot, mm
	Slots     int
	Inches    bool // numbers are in inches
}

// Sizes of the comb, mm.
const (
	slotDepth = 15.0
	backbone  = 14.0
	tooth     = 12.0
	combHigh  = backbone + slotDepth
	between   = 8.0 // of two combs
)

// CombFor returns the comb for a board and a tool's cut: round the diameter of a
// cutter, or from almost nothing where there is none. A board that is no thicker than
// the cut has no comb: its slots are 0.
func CombFor(thickness, cutter float64, inches bool) Comb {
	c := Comb{Thickness: thickness, First: 0.05, Step: 0.05, Slots: 12, Inches: inches}
	if inches {
		c.First, c.Step = 0.002*quantity.Inch, 0.002*quantity.Inch
	}
	if cutter > 0 {
		c.First = (math.Floor(cutter/c.Step) - 5) * c.Step
	}
	for c.Slots > 0 && !c.fits() {
		c.Slots--
	}
	if c.Slots > 0 && c.last() < cutter {
		c.Slots = 0 // the number that is looked for is not there
	}
	return c
}

// fits reports whether even the narrowest slot is wide enough to be followed.
func (c Comb) fits() bool { return c.last() < c.Thickness-0.1 }

// last returns the number of the last slot, mm.
func (c Comb) last() float64 { return c.First + float64(c.Step*float64(c.Slots-1)) }

// Kerf returns the number of slot i, from 0, in the unit of the comb.
func (c Comb) Kerf(i int) string { return c.written(c.First + float64(c.Step*float64(i))) }

// written returns a length in the unit of the comb, as callipers show it.
func (c Comb) written(mm float64) string {
	if c.Inches {
		return export.Fixed(mm/quantity.Inch, 3)
	}
	return export.Fixed(mm, 2)
}

// Piece returns the comb as a piece to be cut once, slots upwards.
func (c Comb) Piece() (piece.Piece, error) {
	switch {
	case c.Slots < 1 || c.Slots > 100:
		return piece.Piece{}, export.Refuse(export.CombSlots, c.Slots)
	case !export.Inside(c.Thickness, 0.2, 50):
		return piece.Piece{}, export.Refuse(export.CombBoard, c.Thickness)
	case !export.Inside(c.First, 0, 20) || !export.Inside(c.Step, 0.01, 5) || !(c.last() < c.Thickness-0.05):
		return piece.Piece{}, export.Refuse(export.CombKerfs,
			c.First, c.last(), c.Thickness)
	}
	p := piece.Piece{ID: "kerf-comb", Stock: piece.Board, Count: 1}
	x := tooth
	var top geom.Ring // from left to right
	for i := range c.Slots {
		width := c.Thickness - c.First - float64(c.Step*float64(i))
		top = append(top, geom.Pt(x, combHigh), geom.Pt(x, backbone), geom.Pt(x+width, backbone), geom.Pt(x+width, combHigh))
		p.Labels = append(p.Labels, piece.Label{
			Text: c.Kerf(i), At: geom.Pt(x+width/2, backbone/2), Height: 2.5, Anchor: piece.Centre,
		})
		x += width + tooth
	}
	p.Cut = geom.Ring{geom.Pt(0, 0), geom.Pt(x, 0), geom.Pt(x, combHigh)}
	p.Cut = append(append(p.Cut, top.Reversed()...), geom.Pt(0, combHigh))
	return p, nil
}

// rows divides the comb into such as are no wider than a length, mm, of which so many
// as a height has room for; slots for which there is none are left out.
func (c Comb) rows(width, height float64) []Comb {
	each := max(1, int((width-tooth)/(c.Thickness-c.First+tooth)))
	most := max(1, int((height+between)/(combHigh+between)))
	var out []Comb
	for at := 0; at < c.Slots && len(out) < most; at += each {
		part := c
		part.First, part.Slots = c.First+float64(c.Step*float64(at)), min(each, c.Slots-at)
		out = append(out, part)
	}
	return out
}

// CombSheet draws the comb, in several pieces where there is little room, with what to
// do with it above. It returns the combs that were drawn.
func CombSheet(c Comb, t Trial) (export.Drawing, []Comb, error) {
	const notesHigh = 30.0
	// What is above the combs may be small, but not nothing.
	rows := c.rows(t.Room[0]-2*room, t.Room[1]-2*room-notesHigh/2)
	var items []export.Item
	box, y := geom.EmptyBox(), room
	for i := range rows {
		p, err := rows[i].Piece()
		if err != nil {
			return export.Drawing{}, nil, err
		}
		at := geom.Pt(room, y+float64(float64(len(rows)-1-i)*(combHigh+between)))
		items = append(items, export.Item{Piece: p, Copy: i + 1, Motion: geom.Motion{Shift: at}})
		own := p.Cut.Bounds()
		box = box.Union(geom.Box{Min: own.Min.Plus(at), Max: own.Max.Plus(at)})
	}
	title := fmt.Sprintf(t.Words.Comb, c.written(c.Thickness)+" "+t.style().LengthUnit())
	notes := []string{title, t.Block.Design + ", " + t.Block.Marks, t.Words.CombNotes[0], t.Words.CombNotes[1],
		fmt.Sprintf(t.Words.CombNotes[2], t.style().LengthUnit())}
	width := math.Min(t.Room[0], math.Max(box.Max.X+room, 200))
	above := geom.Box{Min: geom.Pt(room, box.Max.Y+3), Max: geom.Pt(width-room, math.Min(box.Max.Y+notesHigh, t.Room[1]-room))}
	d, err := export.Compose(export.Sheet{
		Name: "kerf-comb", Stock: t.Stock, Title: title, Words: &t.Words, Block: t.Block,
		Frame: export.Empty(width, above.Max.Y+room), Items: items, Labels: lettered(above, notes...),
	})
	return d, rows, err
}
