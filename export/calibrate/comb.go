package calibrate

import (
	"fmt"

	"slingloft/export"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Comb is a test piece of the board itself. Its slots are narrower than the board
// is thick, each by some more; cut on the line, without regard to the kerf, a slot
// comes out wider by the kerf. Where the board's edge fits snugly, the number at
// the slot is the kerf.
type Comb struct {
	Thickness float64 // of the board, mm, measured
	First     float64 // number of the first slot: the least kerf to try, mm
	Step      float64 // from slot to slot, mm
	Slots     int
}

// Sizes of the comb, mm.
const (
	slotDepth = 15.0
	backbone  = 14.0
	tooth     = 12.0
)

// Piece returns the comb as a piece to be cut once, slots upwards.
func (c Comb) Piece() (piece.Piece, error) {
	last := c.First + c.Step*float64(c.Slots-1)
	switch {
	case c.Slots < 1 || c.Slots > 100:
		return piece.Piece{}, fmt.Errorf("comb of %d slots: want 1 to 100", c.Slots)
	case !export.Inside(c.Thickness, 0.2, 50):
		return piece.Piece{}, fmt.Errorf("comb of a board %g mm thick: want 0.2 to 50 mm", c.Thickness)
	case !export.Inside(c.First, 0, 20) || !export.Inside(c.Step, 0.01, 5) || !(last < c.Thickness-0.05):
		return piece.Piece{}, fmt.Errorf("comb for kerfs of %g to %g mm: want less than the board's thickness of %g mm",
			c.First, last, c.Thickness)
	}
	const height = backbone + slotDepth
	p := piece.Piece{ID: "kerf-comb", Stock: piece.Board, Count: 1}
	x := tooth
	var top geom.Ring // from left to right
	for i := range c.Slots {
		kerf := c.First + c.Step*float64(i)
		width := c.Thickness - kerf
		top = append(top, geom.Pt(x, height), geom.Pt(x, backbone), geom.Pt(x+width, backbone), geom.Pt(x+width, height))
		p.Labels = append(p.Labels, piece.Label{
			Text: export.Fixed(kerf, 2), At: geom.Pt(x+width/2, backbone/2), Height: 2.5, Anchor: piece.Centre,
		})
		x += width + tooth
	}
	p.Cut = geom.Ring{geom.Pt(0, 0), geom.Pt(x, 0), geom.Pt(x, height)}
	p.Cut = append(append(p.Cut, top.Reversed()...), geom.Pt(0, height))
	return p, nil
}
