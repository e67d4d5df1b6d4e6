package nest

import (
	"cmp"
	"math"
	"math/big"
	"slices"

	"slingloft/outline/geom"
)

// This file holds exact predicates: every sign is that of the exact value for the
// coordinates as given. A quick evaluation with an error bound decides nearly
// always, rational numbers the rest (Shewchuk 1997, "Adaptive precision
// floating-point arithmetic and fast robust geometric predicates").

// mid is the point half way between u and v, which need not be representable.
type mid struct{ u, v geom.Point }

// at returns p as a mid.
func at(p geom.Point) mid { return mid{p, p} }

// orient returns 1 where m lies left of a→b, −1 right of it, 0 on its line.
func orient(a, b geom.Point, m mid) int {
	dx, dy := b.X-a.X, b.Y-a.Y
	ex, ey := (m.u.X-a.X)+(m.v.X-a.X), (m.u.Y-a.Y)+(m.v.Y-a.Y)
	l, r := float64(dx*ey), float64(dy*ex)
	det := l - r
	// Each difference is off by half a unit in the last place, e by three of
	// them at most; sixteen units of the products cover all of it unless terms
	// of e cancel, which the sums of magnitudes take into account.
	mag := float64(math.Abs(dx)*(math.Abs(m.u.Y-a.Y)+math.Abs(m.v.Y-a.Y))) +
		float64(math.Abs(dy)*(math.Abs(m.u.X-a.X)+math.Abs(m.v.X-a.X)))
	if math.Abs(det) > 16*0x1p-53*mag {
		return sign(det)
	}
	return orientRat(a, b, m)
}

func orientRat(a, b geom.Point, m mid) int {
	ax, ay := rat(a.X), rat(a.Y)
	dx, dy := minus(rat(b.X), ax), minus(rat(b.Y), ay)
	ex := plus(minus(rat(m.u.X), ax), minus(rat(m.v.X), ax))
	ey := plus(minus(rat(m.u.Y), ay), minus(rat(m.v.Y), ay))
	return dx.Mul(dx, ey).Cmp(dy.Mul(dy, ex))
}

func rat(x float64) *big.Rat       { return new(big.Rat).SetFloat64(x) }
func plus(a, b *big.Rat) *big.Rat  { return new(big.Rat).Add(a, b) }
func minus(a, b *big.Rat) *big.Rat { return new(big.Rat).Sub(a, b) }
func sign(x float64) int           { return btoi(x > 0) - btoi(x < 0) }

func btoi(b bool) int {
	if b {
		return 1
	}
	return 0
}

// compareSum returns the sign of (u + v) − 2a.
func compareSum(u, v, a float64) int {
	d := (u - a) + (v - a)
	if math.Abs(d) > 4*0x1p-53*(math.Abs(u-a)+math.Abs(v-a)) {
		return sign(d)
	}
	return plus(rat(u), rat(v)).Cmp(plus(rat(a), rat(a)))
}

// within reports whether m lies in the closed box of a and b.
func within(a, b geom.Point, m mid) bool {
	return compareSum(m.u.X, m.v.X, a.X)*compareSum(m.u.X, m.v.X, b.X) <= 0 &&
		compareSum(m.u.Y, m.v.Y, a.Y)*compareSum(m.u.Y, m.v.Y, b.Y) <= 0
}

// onEdge reports whether m lies on the closed segment ab.
func onEdge(a, b geom.Point, m mid) bool { return within(a, b, m) && orient(a, b, m) == 0 }

// place is where a point lies with respect to a region.
type place int

const (
	outside place = iota
	boundary
	inside
)

// locate returns where m lies in the region that rings bound by the crossing
// rule and, on the boundary, the edge it lies on.
func locate(m mid, rings []geom.Ring) (p place, a, b geom.Point) {
	in := false
	for _, r := range rings {
		for i := range r {
			a, b := r[i], r[(i+1)%len(r)]
			ya, yb := compareSum(m.u.Y, m.v.Y, a.Y), compareSum(m.u.Y, m.v.Y, b.Y)
			if ya*yb > 0 {
				continue
			}
			if onEdge(a, b, m) {
				return boundary, a, b
			}
			if (ya >= 0) != (yb >= 0) && (orient(a, b, m) > 0) == (ya >= 0) {
				in = !in
			}
		}
	}
	if in {
		return inside, a, b
	}
	return outside, a, b
}

// overlap reports whether two regions, interiors to the left of their rings,
// share an interior point. Regions that only touch do not.
//
// If no two edges cross, boundaries meet at vertices and along edges only, and
// between such meetings a boundary stays on one side. So the regions overlap if
// some such stretch of one lies inside the other, or runs along the other's
// boundary in the same direction.
func overlap(a, b []geom.Ring) bool {
	if crossing(a, b) {
		return true
	}
	return reachesInto(a, b) || reachesInto(b, a)
}

// crossing reports whether an edge of a properly crosses one of b.
func crossing(a, b []geom.Ring) bool {
	common := meet(bounds(a), bounds(b))
	eb := edgesIn(b, common)
	for _, e := range edgesIn(a, common) {
		box := boxOf(e[0], e[1])
		for _, f := range eb {
			if !meet(box, boxOf(f[0], f[1])).Empty() && cross(e, f) {
				return true
			}
		}
	}
	return false
}

// cross reports whether two edges properly cross: each has the ends of the other
// on different sides.
func cross(e, f [2]geom.Point) bool {
	if e[0] == f[0] || e[0] == f[1] || e[1] == f[0] || e[1] == f[1] {
		return false // known without asking rational numbers about a zero
	}
	return orient(e[0], e[1], at(f[0]))*orient(e[0], e[1], at(f[1])) < 0 &&
		orient(f[0], f[1], at(e[0]))*orient(f[0], f[1], at(e[1])) < 0
}

// reachesInto reports whether a stretch of a's boundary between its meetings with
// b's lies inside b, or along b's boundary in the same direction. a and b do
// not cross, so one look is enough until the next meeting.
func reachesInto(a, b []geom.Ring) bool {
	common := meet(bounds(a), bounds(b))
	near := edgesIn(b, common)
	for _, r := range a {
		looked := false
		for i, u := range r {
			v := r[(i+1)%len(r)]
			if looked && !common.Contains(u) && meet(common, boxOf(u, v)).Empty() {
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
func touches(p geom.Point, edges [][2]geom.Point) bool {
	for _, e := range edges {
		if boxOf(e[0], e[1]).Contains(p) && orient(e[0], e[1], at(p)) == 0 {
			return true
		}
	}
	return false
}

// stopsOn returns u, v and the starts of edges that lie on the open segment
// between, in order.
func stopsOn(u, v geom.Point, edges [][2]geom.Point) []geom.Point {
	stops := []geom.Point{u, v}
	box := boxOf(u, v)
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

// boxOf returns the box of a segment.
func boxOf(a, b geom.Point) geom.Box {
	return geom.Box{Min: geom.Pt(min(a.X, b.X), min(a.Y, b.Y)), Max: geom.Pt(max(a.X, b.X), max(a.Y, b.Y))}
}

// edgesIn returns the edges of rings whose boxes meet the closed box.
func edgesIn(rings []geom.Ring, box geom.Box) [][2]geom.Point {
	var out [][2]geom.Point
	for _, r := range rings {
		for i, u := range r {
			v := r[(i+1)%len(r)]
			if !meet(boxOf(u, v), box).Empty() {
				out = append(out, [2]geom.Point{u, v})
			}
		}
	}
	return out
}

// meet returns the common part of two boxes.
func meet(a, b geom.Box) geom.Box {
	return geom.Box{
		Min: geom.Pt(max(a.Min.X, b.Min.X), max(a.Min.Y, b.Min.Y)),
		Max: geom.Pt(min(a.Max.X, b.Max.X), min(a.Max.Y, b.Max.Y)),
	}
}

// bounds returns the box around rings, the first of which is the outline.
func bounds(rings []geom.Ring) geom.Box { return rings[0].Bounds() }
