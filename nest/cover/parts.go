// Package cover replaces outlines by few convex polygons that cover them: first by
// outlines with fewer vertices, then by their convex parts.
package cover

import "slingloft/outline/geom"

// Parts returns convex counter-clockwise polygons that cover the region of rings, an
// outline counter-clockwise and its holes clockwise, in mm, and little beside it.
// It reports false where they miss some of the region, as they
// do for an outline that crosses itself.
func Parts(rings []geom.Ring) ([]geom.Ring, bool) {
	parts := convexParts(simplified(rings))
	return parts, area(parts) >= area(rings)*(1-1e-9)
}

func area(rings []geom.Ring) float64 {
	sum := 0.0
	for _, r := range rings {
		sum += r.Area()
	}
	return sum
}
