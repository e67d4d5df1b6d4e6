package exact

import "slingloft/outline/geom"

// CrossesItself reports whether two edges of r properly cross.
func CrossesItself(r geom.Ring) bool {
	edges, boxes := edgesIn([]geom.Ring{r}, r.Bounds())
	for i, e := range edges {
		for j := range i {
			if meet(&boxes[i], &boxes[j]) && cross(e, edges[j]) {
				return true
			}
		}
	}
	return false
}

// Distance returns the least distance in mm between the boundaries of two regions
// that do not cross, as far as it is below reach, reach otherwise. It is subject to
// rounding.
func Distance(a, b []geom.Ring, reach float64) float64 {
	common := a[0].Bounds().Expanded(reach).Common(b[0].Bounds().Expanded(reach))
	least := reach
	eb, boxes := edgesIn(b, common)
	ea, own := edgesIn(a, common)
	for i, e := range ea {
		box := own[i].Expanded(reach)
		for j, f := range eb {
			if meet(&box, &boxes[j]) {
				least = min(least, toSegment(e[0], f), toSegment(e[1], f), toSegment(f[0], e), toSegment(f[1], e))
			}
		}
	}
	return least
}

// toSegment returns the distance of p from the segment e.
func toSegment(p geom.Point, e edge) float64 {
	d := e[1].Minus(e[0])
	t := 0.0
	if n := d.Dot(d); n > 0 {
		t = min(max(p.Minus(e[0]).Dot(d)/n, 0), 1)
	}
	return p.Dist(e[0].Plus(d.Times(t)))
}
