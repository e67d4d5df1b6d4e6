package level

import (
	"math"
	"sort"

	"slingloft/outline/drape"
	"slingloft/outline/flat"
	"slingloft/outline/geom"
)

// Recut is by how much the sides of a pattern move. The zero value moves nothing.
type Recut struct {
	Side  []geom.Point // as they were, from the head end's corner to the foot end's
	Start float64      // flat place of the first knot, mm
	Knot  float64      // from knot to knot, mm
	Out   []float64    // control values at the knots: outwards, mm
}

// At returns by how much the side moves outwards at a flat place, mm: a cubic spline of the
// control values, level past its ends, so that the cut stays smooth.
func (r Recut) At(u float64) float64 {
	if len(r.Out) == 0 {
		return 0
	}
	k, parts := r.basis(u)
	sum := 0.0
	for i, p := range parts {
		sum += float64(p * r.Out[min(max(k+i, 0), len(r.Out)-1)])
	}
	return sum
}

// basis returns the first of the four knots that count at a place, and how much each does:
// the uniform cubic B-spline (I. J. Schoenberg, 1946).
func (r Recut) basis(u float64) (first int, parts [4]float64) {
	t := (u - r.Start) / r.Knot
	t = min(max(t, 0), float64(len(r.Out)-1))
	i := math.Floor(t)
	f := t - i
	g := 1 - f
	return int(i) - 1, [4]float64{
		float64(g*g) * g / 6,
		(float64(float64(3*f*f)*f) - float64(6*f*f) + 4) / 6,
		(float64(float64(3*g*g)*g) - float64(6*g*g) + 4) / 6,
		float64(f*f) * f / 6,
	}
}

// Most returns by how much the sides move at most inwards, negative, and outwards, mm.
func (r Recut) Most() (in, out float64) {
	for _, q := range r.Side {
		at := r.At(q.X)
		in, out = min(in, at), max(out, at)
	}
	return in, out
}

// Times returns how many times as wide the cloth becomes at a flat place: what lies within
// moves along the weft by its share of what the side moves.
func (r Recut) Times(u float64) float64 {
	if len(r.Out) == 0 {
		return 1
	}
	return 1 + r.At(u)/HalfAt(r.Side, u)
}

// HalfAt returns half the width of a pattern at a flat place, mm, from its side. Past the
// corners it is theirs.
func HalfAt(side []geom.Point, u float64) float64 {
	i := sort.Search(len(side), func(i int) bool { return side[i].X >= u })
	if i == 0 || i == len(side) {
		return side[min(i, len(side)-1)].Y
	}
	a, b := side[i-1], side[i]
	return a.Towards(b, (u-a.X)/(b.X-a.X)).Y
}

// Cut returns the recut pattern.
func (r Recut) Cut(p *drape.Pattern) drape.Pattern {
	side, tips := flat.Widened(flat.Edge{Flat: p.Side, Hung: p.Cord}, p.Tips, r.Times)
	out := drape.Pattern{Side: side.Flat, Cord: side.Hung, Tips: tips}
	for e, end := range p.Ends {
		for _, q := range end {
			out.Ends[e] = append(out.Ends[e], geom.Pt(q.X, float64(q.Y*r.Times(q.X))))
		}
	}
	return out
}
