// Package cover replaces outlines by few convex polygons that cover them: first by
// outlines with fewer vertices, then by their convex parts.
package cover

import (
	"slices"

	"slingloft/outline/geom"
)

// Most is the greatest number of vertices of a region that is cut into convex parts.
const Most = 200

// Parts returns convex counter-clockwise polygons that cover the region of rings, an
// outline counter-clockwise and its holes clockwise, in mm, and little beside it, unless
// that would take more than most vertices: then they cover as much more as it takes.
// It reports false where they miss some of the region, as they
// do for an outline that crosses itself.
func Parts(rings []geom.Ring, most int) ([]geom.Ring, bool) {
	parts := convexParts(Simplified(rings, most))
	return parts, area(parts) >= area(rings)*(1-1e-9)
}

// Convex returns the convex parts of a simplified region, and reports whether they are as
// large as it is.
func Convex(simple []geom.Ring) ([]geom.Ring, bool) {
	parts := convexParts(simple)
	return parts, area(parts) >= area(simple)*(1-1e-9)
}

// Within returns convex parts cut off at the sides of a box that holds all that they are
// to cover.
func Within(parts []geom.Ring, box geom.Box) []geom.Ring {
	var out []geom.Ring
	for _, r := range parts {
		if r = cutAt(r, box); len(r) > 2 && r.Area() > 0 {
			out = append(out, r)
		}
	}
	return out
}

// cutAt returns the part of a convex ring in a box; one that reaches past it by rounding
// alone stays as it is.
func cutAt(r geom.Ring, box geom.Box) geom.Ring {
	if box.Expanded(1e-9 * (box.Width() + box.Height())).ContainsBox(r.Bounds()) {
		return r
	}
	for _, side := range [...]struct{ n, at geom.Point }{
		{geom.Pt(1, 0), box.Min}, {geom.Pt(0, 1), box.Min}, {geom.Pt(-1, 0), box.Max}, {geom.Pt(0, -1), box.Max},
	} {
		var kept geom.Ring
		for i, a := range r {
			b := r[(i+1)%len(r)]
			u, v := side.n.Dot(a.Minus(side.at)), side.n.Dot(b.Minus(side.at))
			if u >= 0 {
				kept = append(kept, a)
			}
			if u > 0 && v < 0 || u < 0 && v > 0 {
				kept = append(kept, a.Towards(b, u/(u-v)))
			}
		}
		r = kept
	}
	near := 1e-9 * (box.Width() + box.Height())
	return slices.DeleteFunc(slices.Clone(r), func(v geom.Point) bool {
		k := slices.Index(r, v)
		return v.Dist(r[(k+len(r)-1)%len(r)]) < near
	})
}

func area(rings []geom.Ring) float64 {
	sum := 0.0
	for _, r := range rings {
		sum += r.Area()
	}
	return sum
}
