package cover

import (
	"cmp"
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
		at, from := bridge(out, h, holes[k:])
		joined := slices.Clone(out[:at+1])
		for i := range h {
			joined = append(joined, h[(from+i)%len(h)])
		}
		out = append(append(joined, h[from]), out[at:]...)
	}
	return out
}

// bridge returns the pair of vertices of out and hole, closest together, whose
// link crosses neither out nor any hole.
func bridge(out, hole geom.Ring, all []geom.Ring) (at, from int) {
	best := -1.0
	for i, p := range out {
		for j, q := range hole {
			d := p.Dist(q)
			if best >= 0 && d >= best {
				continue
			}
			if !blocked(p, q, append([]geom.Ring{out}, all...)) {
				best, at, from = d, i, j
			}
		}
	}
	return at, from
}

// blocked reports whether the open link from p to q crosses an edge of rings.
func blocked(p, q geom.Point, rings []geom.Ring) bool {
	for _, r := range rings {
		for i := range r {
			a, b := r[i], r[(i+1)%len(r)]
			if a == p || a == q || b == p || b == q {
				continue
			}
			if side(p, q, a)*side(p, q, b) <= 0 && side(a, b, p)*side(a, b, q) <= 0 {
				return true
			}
		}
	}
	return false
}

// triangles clips ears off r. Where rounding leaves no proper ear, the flattest
// corner is dropped, so that it always ends.
func triangles(r geom.Ring) []geom.Ring {
	idx := make([]int, len(r))
	for i := range idx {
		idx[i] = i
	}
	var out []geom.Ring
	for len(idx) > 2 {
		at := findEar(r, idx)
		n := len(idx)
		a, b, c := r[idx[(at+n-1)%n]], r[idx[at]], r[idx[(at+1)%n]]
		if b.Minus(a).Cross(c.Minus(a)) > 0 {
			out = append(out, geom.Ring{a, b, c})
		}
		idx = slices.Delete(idx, at, at+1)
	}
	return out
}

// findEar returns the position in idx of the corner to clip: flat ones first,
// else the ear with the shortest diagonal, which keeps triangles fat.
func findEar(r geom.Ring, idx []int) int {
	n := len(idx)
	best, bestLen, flattest, flat := -1, 0.0, 0, 0.0
	for i := range idx {
		a, b, c := r[idx[(i+n-1)%n]], r[idx[i]], r[idx[(i+1)%n]]
		area := b.Minus(a).Cross(c.Minus(a))
		if area == 0 {
			return i
		}
		if flat == 0 || max(area, -area) < flat {
			flattest, flat = i, max(area, -area)
		}
		if area < 0 || (best >= 0 && a.Dist(c) >= bestLen) || !bare(r, idx, a, b, c) {
			continue
		}
		best, bestLen = i, a.Dist(c)
	}
	if best < 0 {
		return flattest
	}
	return best
}

// bare reports whether no other vertex of the remaining ring lies in the
// triangle abc.
func bare(r geom.Ring, idx []int, a, b, c geom.Point) bool {
	for _, k := range idx {
		p := r[k]
		if p == a || p == b || p == c {
			continue
		}
		if side(a, b, p) >= 0 && side(b, c, p) >= 0 && side(c, a, p) >= 0 {
			return false
		}
	}
	return true
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
			if side(before, a, qa) < 0 || side(qb, b, after) < 0 {
				return nil, false
			}
			out := make(geom.Ring, 0, len(p)+len(q)-2)
			for k := range p {
				out = append(out, p[(i+1+k)%len(p)])
			}
			for k := 2; k < len(q); k++ {
				out = append(out, q[(j+k)%len(q)])
			}
			return out, true
		}
	}
	return nil, false
}

// side is positive where p lies to the left of a→b.
func side(a, b, p geom.Point) float64 { return b.Minus(a).Cross(p.Minus(a)) }
