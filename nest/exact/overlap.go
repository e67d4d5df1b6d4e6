package exact

import (
	"cmp"
	"slices"

	"slingloft/outline/geom"
)

// Overlap reports whether two regions, interiors to the left of their rings,
// share an interior point. Regions that only touch do not.
//
// If no two edges cross, boundaries meet at vertices and along edges only, and
// between such meetings a boundary stays on one side. So the regions overlap if
// some such part of one lies inside the other, or runs along the other's
// boundary in the same direction.
func Overlap(a, b []geom.Ring) bool {
	if crossing(a, b) {
		return true
	}
	return reachesInto(a, b) || reachesInto(b, a)
}

// crossing reports whether an edge of a properly crosses one of b.
func crossing(a, b []geom.Ring) bool {
	common := a[0].Bounds().Common(b[0].Bounds())
	eb, boxes := edgesIn(b, common)
	ea, own := edgesIn(a, common)
	for i, e := range ea {
		for j := range boxes {
			if meet(&own[i], &boxes[j]) && cross(e, eb[j]) {
				return true
			}
		}
	}
	return false
}

// meet reports whether two closed boxes have a point in common.
func meet(a, b *geom.Box) bool {
	return a.Min.X <= b.Max.X && b.Min.X <= a.Max.X && a.Min.Y <= b.Max.Y && b.Min.Y <= a.Max.Y
}

// cross reports whether two edges properly cross: each has the ends of the other
// on different sides.
func cross(e, f edge) bool {
	if e[0] == f[0] || e[0] == f[1] || e[1] == f[0] || e[1] == f[1] {
		return false // known without asking rational numbers about a zero
	}
	return orient(e[0], e[1], at(f[0]))*orient(e[0], e[1], at(f[1])) < 0 &&
		orient(f[0], f[1], at(e[0]))*orient(f[0], f[1], at(e[1])) < 0
}

// reachesInto reports whether a part of a's boundary between its meetings with
// b's lies inside b, or along b's boundary in the same direction. a and b do
// not cross, so one look is enough until the next meeting.
func reachesInto(a, b []geom.Ring) bool {
	common := a[0].Bounds().Common(b[0].Bounds())
	near, _ := edgesIn(b, common)
	for _, r := range a {
		looked := false
		for i, u := range r {
			v := r[(i+1)%len(r)]
			if looked && !common.Contains(u) && common.Common(geom.BoxOf(u, v)).Empty() {
				continue
			}
			looked = looked && !touches(u, near)
			stops := stopsOn(u, v, near)
			for k := 1; k < len(stops); k++ {
				if looked && k == 1 {
					continue
				}
				looked = true
				where, p, q := locate(mid{stops[k-1], stops[k]}, b)
				if where == inside || where == boundary && q.Minus(p).Dot(v.Minus(u)) > 0 {
					return true
				}
			}
		}
	}
	return false
}

// touches reports whether p lies on one of the edges.
func touches(p geom.Point, edges []edge) bool {
	for _, e := range edges {
		if e.box().Contains(p) && orient(e[0], e[1], at(p)) == 0 {
			return true
		}
	}
	return false
}

// stopsOn returns u, v and the starts of edges that lie on the open segment
// between, in order.
func stopsOn(u, v geom.Point, edges []edge) []geom.Point {
	stops := []geom.Point{u, v}
	box := geom.BoxOf(u, v)
	for _, e := range edges {
		if p := e[0]; box.Contains(p) && p != u && p != v && orient(u, v, at(p)) == 0 {
			stops = append(stops, p)
		}
	}
	d := v.Minus(u)
	slices.SortFunc(stops, func(p, q geom.Point) int {
		return cmp.Compare(p.Minus(u).Dot(d), q.Minus(u).Dot(d))
	})
	return stops
}

// edge is a side of a boundary.
type edge [2]geom.Point

func (e edge) box() geom.Box { return geom.BoxOf(e[0], e[1]) }

// edgesIn returns the edges of rings whose boxes meet the closed box, and those boxes.
func edgesIn(rings []geom.Ring, box geom.Box) (out []edge, boxes []geom.Box) {
	for _, r := range rings {
		for i, u := range r {
			v := r[(i+1)%len(r)]
			if own := geom.BoxOf(u, v); meet(&own, &box) {
				out, boxes = append(out, edge{u, v}), append(boxes, own)
			}
		}
	}
	return out, boxes
}
