package work

import (
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
)

// Curve is a curve that is marked by hand or cut as a template.
type Curve struct {
	Name string
	Line geom.Polyline // mm, in the piece's coordinates
}

// Pieces returns every piece of the plan, cloth first.
func (p *Plan) Pieces() []piece.Piece {
	return append(append([]piece.Piece(nil), p.Sewn.Pieces...), p.Templates...)
}

// Curves returns the seam curves by which the body can be marked: its side in
// the bay, the sides of both tails and both end seams from the centre line to the
// corner. They run so that a hollow edge has positive depths.
func (p *Plan) Curves() []Curve {
	side := p.Sewn.SideNet.Flat
	arc := geom.NewArc(side)
	head, foot := p.Sewn.BarRuns()
	out := []Curve{
		{"side of the bay", arc.Between(head, foot)},
		{"side of the head tail", arc.Between(0, head)},
		{"side of the foot tail", arc.Between(foot, arc.Length())},
	}
	for _, e := range []hung.End{hung.Head, hung.Foot} {
		line := geom.NewArc(p.Sewn.EndNets[e].Flat)
		half := line.Between(line.Length()/2, line.Length())
		if e == hung.Head {
			half = half.Reversed()
		}
		out = append(out, Curve{e.String() + " end, centre line to corner", half})
	}
	return out
}
