package outside

import (
	"cmp"
	"fmt"
	"slices"

	"slingloft/outline/geom"
)

// edge is one side of a ring.
type edge struct {
	ring, index int
	a, b        geom.Point
	box         geom.Box
}

// checkRings refuses outlines that cross themselves or each other. Edges are
// swept from the left, so that only those beside each other are compared.
func checkRings(rings []ring) error {
	var edges []edge
	for i, r := range rings {
		for k, a := range r.ring {
			b := r.ring[(k+1)%len(r.ring)]
			edges = append(edges, edge{i, k, a, b, geom.BoxOf(a, b)})
		}
	}
	if len(edges) > maxEdges {
		return fmt.Errorf("outlines of %d points: at most %d are read", len(edges), maxEdges)
	}
	slices.SortStableFunc(edges, func(a, b edge) int { return cmp.Compare(a.box.Min.X, b.box.Min.X) })
	var beside []edge
	for _, e := range edges {
		still := beside[:0]
		for _, f := range beside {
			if f.box.Max.X < e.box.Min.X {
				continue
			}
			still = append(still, f)
			if f.box.Min.Y > e.box.Max.Y || f.box.Max.Y < e.box.Min.Y || neighbours(e, f, rings) {
				continue
			}
			if at, ok := geom.Crossing(e.a, e.b, f.a, f.b); ok {
				return crossing(rings[e.ring], rings[f.ring], at)
			}
		}
		beside = append(still, e)
	}
	return nil
}

// neighbours reports whether two edges of a ring share a corner.
func neighbours(e, f edge, rings []ring) bool {
	n := len(rings[e.ring].ring)
	return e.ring == f.ring && ((e.index+1)%n == f.index || (f.index+1)%n == e.index)
}

func crossing(a, b ring, at geom.Point) error {
	if a.number == b.number {
		return fmt.Errorf("%s crosses or touches itself at %.1f, %.1f", a, at.X, at.Y)
	}
	return fmt.Errorf("%s and %s cross or touch at %.1f, %.1f", a, b, at.X, at.Y)
}
