package cover

import (
	"cmp"
	"math"
	"slices"

	"slingloft/outline/geom"
)

// convexParts cuts a region, an outline counter-clockwise with its holes
// clockwise, into convex counter-clockwise polygons: holes are bridged to the
// outline, ears clipped off, and triangles merged across diagonals as long as
// the result stays convex (Hertel & Mehlhorn 1983, "Fast triangulation of
// simple polygons": at most four times the least number of parts).
func convexParts(rings []geom.Ring) []geom.Ring {
	return merged(triangles(bridged(rings)))
}

// bridged returns one ring that runs around the outline and, over a bridge each,
// around every hole.
func bridged(rings []geom.Ring) geom.Ring {
	out := slices.Clone(rings[0])
	holes := slices.Clone(rings[1:])
	slices.SortStableFunc(holes, func(a, b geom.Ring) int {
		return cmp.Compare(b.Bounds().Max.X, a.Bounds().Max.X)
	})
	for k, h := range holes {
		at, start := bridge(out, h, holes[k:])
		out = slices.Concat(out[:at+1], from(h, start), geom.Ring{h[start]}, out[at:])
	}
	return out
}

// bridge returns the pair of vertices of out and hole, closest together, whose
// link crosses neither out nor any hole.
func bridge(out, hole geom.Ring, all []geom.Ring) (at, start int) {
	all = append([]geom.Ring{out}, all...)
	best := math.Inf(1)
	for i, p := range out {
		for j, q := range hole {
			if d := p.Dist(q); d < best && !blocked(p, q, all) {
				best, at, start = d, i, j
			}
		}
	}
	return at, start
}

// blocked reports whether the open link from p to q crosses an edge of rings.
func blocked(p, q geom.Point, rings []geom.Ring) bool {
	for _, r := range rings {
		for i := range r {
			a, b := r[i], r[(i+1)%len(r)]
			if a == p || a == q || b == p || b == q {
				continue
			}
			if geom.Straddle(p, q, a, b) {
				return true
			}
		}
	}
	return false
}

// triangles clips ears off r. Where rounding leaves no proper ear, the flattest
// corner is dropped, so that it always ends.
func triangles(r geom.Ring) []geom.Ring {
	r = slices.Clone(r)
	var out []geom.Ring
	for n := len(r); n > 2; n-- {
		at := findEar(r)
		if a, b, c := r[(at+n-1)%n], r[at], r[(at+1)%n]; geom.Side(a, b, c) > 0 {
			out = append(out, geom.Ring{a, b, c})
		}
		r = slices.Delete(r, at, at+1)
	}
	return out
}

// findEar returns the index of the corner to clip: flat ones first, else the ear
// with the shortest diagonal, which keeps triangles fat.
func findEar(r geom.Ring) int {
	n := len(r)
	ear, flattest := -1, 0
	shortest, flat := math.Inf(1), math.Inf(1)
	for i, b := range r {
		a, c := r[(i+n-1)%n], r[(i+1)%n]
		area := geom.Side(a, b, c)
		if area == 0 {
			return i
		}
		if math.Abs(area) < flat {
			flattest, flat = i, math.Abs(area)
		}
		if d := a.Dist(c); area > 0 && d < shortest && holdsNone(r, a, b, c) {
			ear, shortest = i, d
		}
	}
	if ear < 0 {
		return flattest
	}
	return ear
}

// holdsNone reports whether no other vertex of r lies in the triangle abc.
func holdsNone(r geom.Ring, a, b, c geom.Point) bool {
	return !slices.ContainsFunc(r, func(p geom.Point) bool {
		return p != a && p != b && p != c && inTriangle(a, b, c, p)
	})
}

// merged joins parts over shared edges while the union stays convex.
func merged(parts []geom.Ring) []geom.Ring {
	for again := true; again; {
		again = false
		for i := 0; i < len(parts); i++ {
			for j := i + 1; j < len(parts); j++ {
				if u, ok := union(parts[i], parts[j]); ok {
					parts[i] = u
					parts = slices.Delete(parts, j, j+1)
					again = true
					j--
				}
			}
		}
	}
	return parts
}

// union joins two convex rings along a shared edge if the result is convex.
func union(p, q geom.Ring) (geom.Ring, bool) {
	for i := range p {
		a, b := p[i], p[(i+1)%len(p)]
		for j := range q {
			if q[j] != b || q[(j+1)%len(q)] != a {
				continue
			}
			before, after := p[(i+len(p)-1)%len(p)], p[(i+2)%len(p)]
			qa, qb := q[(j+2)%len(q)], q[(j+len(q)-1)%len(q)]
			if geom.Side(before, a, qa) < 0 || geom.Side(qb, b, after) < 0 {
				return nil, false
			}
			out := from(p, i+1)
			return append(out, from(q, j+2)[:len(q)-2]...), true
		}
	}
	return nil, false
}

// from returns r started at vertex i.
func from(r geom.Ring, i int) geom.Ring { return slices.Concat(r[i%len(r):], r[:i%len(r)]) }

// inTriangle reports whether p lies in the counter-clockwise triangle abc or on its
// edge.
func inTriangle(a, b, c, p geom.Point) bool {
	return geom.Side(a, b, p) >= 0 && geom.Side(b, c, p) >= 0 && geom.Side(c, a, p) >= 0
}
