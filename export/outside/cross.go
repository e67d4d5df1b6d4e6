package outside

import (
	"cmp"
	"slices"

	"slingloft/export"
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
		return export.Refuse(export.EdgesTooMany, len(edges), maxEdges)
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
		if at, ok := eight(a.ring); ok {
			return crossed(a.path, at)
		}
		return export.Refuse(export.PathTouches, a.fault(), at.X, at.Y)
	}
	return export.Refuse(export.PathsCross, a.fault(), b.fault(), at.X, at.Y)
}

// crossed is the fault of a path that runs across itself.
func crossed(p path, at geom.Point) error {
	return export.Refuse(export.PathCrosses, p.fault(), at.X, at.Y)
}

// eight returns where two edges of a ring run across each other, if any do.
func eight(r geom.Ring) (geom.Point, bool) {
	if len(r) > maxPoints {
		return geom.Point{}, false
	}
	apart := func(a, b, p, q geom.Point) bool { // on either side of the line ab
		u, v := b.Minus(a).Cross(p.Minus(a)), b.Minus(a).Cross(q.Minus(a))
		return u < 0 && v > 0 || u > 0 && v < 0
	}
	for i, a := range r {
		b := r[(i+1)%len(r)]
		box := geom.BoxOf(a, b)
		for k := i + 2; k < len(r) && (i > 0 || k < len(r)-1); k++ {
			c, d := r[k], r[(k+1)%len(r)]
			if max(c.X, d.X) < box.Min.X || min(c.X, d.X) > box.Max.X || max(c.Y, d.Y) < box.Min.Y || min(c.Y, d.Y) > box.Max.Y {
				continue
			}
			if apart(a, b, c, d) && apart(c, d, a, b) {
				if at, ok := geom.Crossing(a, b, c, d); ok {
					return at, true
				}
			}
		}
	}
	return geom.Point{}, false
}
