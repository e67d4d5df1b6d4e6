// Package exact judges regions of the plane without rounding: whether two of them
// overlap, whether an outline crosses itself, how far apart two are. It is the
// packing's independent check and shares no code with the search.
//
// A region is a list of rings in mm, its interior to their left: the outline
// counter-clockwise, holes clockwise.
package exact

import (
	"math"
	"math/big"

	"slingloft/outline/geom"
)

// The predicates are exact: every sign is that of the exact value for the
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

// sign returns −1, 0 or 1.
func sign(x float64) int {
	switch {
	case x > 0:
		return 1
	case x < 0:
		return -1
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
