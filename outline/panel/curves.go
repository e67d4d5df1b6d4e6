package panel

import (
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
)

// Curves returns the seam curves by which the body can be marked: its side in
// the bay, the sides of both tails and both end seams from the centre line to the
// corner. They run so that a hollow edge has positive depths.
func (s Sewn) Curves() []piece.Curve {
	side := s.SideNet.Flat
	arc := geom.NewArc(side)
	head, foot := s.BarRuns()
	out := []piece.Curve{
		{Kind: piece.BaySide, Line: arc.Between(head, foot)},
		{Kind: piece.HeadTailSide, Line: arc.Between(0, head)},
		{Kind: piece.FootTailSide, Line: arc.Between(foot, arc.Length())},
	}
	for _, e := range hung.Ends() {
		line := geom.NewArc(s.EndNets[e].Flat)
		half := line.Between(line.Length()/2, line.Length())
		if e == hung.Head {
			half = half.Reversed()
		}
		out = append(out, piece.Curve{Kind: piece.EndCurve(e), Line: half})
	}
	return out
}
