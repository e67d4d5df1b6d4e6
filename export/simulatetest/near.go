package simulatetest

import (
	"math"

	"slingloft/outline/geom"
)

// Near answers how near the nearest of many segments is.
type Near struct {
	cell  float64
	cells map[[2]int][]segment
}

type segment struct{ a, b geom.Point }

// NewNear returns an empty index; questions reach as far as a cell is wide, mm.
func NewNear(cell float64) *Near { return &Near{cell: cell, cells: map[[2]int][]segment{}} }

func (n *Near) key(p geom.Point) [2]int {
	return [2]int{int(math.Floor(p.X / n.cell)), int(math.Floor(p.Y / n.cell))}
}

// Add takes a segment up.
func (n *Near) Add(a, b geom.Point) {
	box := geom.BoxOf(a, b).Expanded(n.cell)
	lo, hi := n.key(box.Min), n.key(box.Max)
	for x := lo[0]; x <= hi[0]; x++ {
		for y := lo[1]; y <= hi[1]; y++ {
			middle := geom.Pt((float64(x)+0.5)*n.cell, (float64(y)+0.5)*n.cell)
			if middle.DistToSegment(a, b) < 1.8*n.cell { // half a diagonal and a cell
				n.cells[[2]int{x, y}] = append(n.cells[[2]int{x, y}], segment{a, b})
			}
		}
	}
}

// AddLine takes a line up.
func (n *Near) AddLine(pts geom.Polyline, closed bool) {
	for i := 1; i < len(pts); i++ {
		n.Add(pts[i-1], pts[i])
	}
	if closed && len(pts) > 2 {
		n.Add(pts[len(pts)-1], pts[0])
	}
}

// Dist returns the distance from p to the nearest segment, infinite where none is
// within a cell's width.
func (n *Near) Dist(p geom.Point) float64 {
	best := math.Inf(1)
	for _, s := range n.cells[n.key(p)] {
		best = math.Min(best, p.DistToSegment(s.a, s.b))
	}
	return best
}
