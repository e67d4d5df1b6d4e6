package geom

import "math"

// Affine is the map x' = A x + C y + E, y' = B x + D y + F, its six numbers in the
// order in which SVG (1.1, section 7.4) and PDF (ISO 32000-1, 8.3.4) write them. The
// zero value takes every point to the origin; [Identity] leaves all in place.
type Affine struct{ A, B, C, D, E, F float64 }

// Identity returns the map that leaves every point where it is.
func Identity() Affine { return Affine{A: 1, D: 1} }

// Translation returns the shift by d.
func Translation(d Point) Affine { return Affine{1, 0, 0, 1, d.X, d.Y} }

// Scaling returns the map that lengthens by x along x and by y along y, about the
// origin.
func Scaling(x, y float64) Affine { return Affine{A: x, D: y} }

// Rotation returns the turn about the origin by angle radians, counter-clockwise
// where y points up. Sine and cosine are rounded as in [Direction].
func Rotation(angle float64) Affine {
	d := Direction(angle)
	return Affine{A: d.X, B: d.Y, C: -d.Y, D: d.X}
}

// Apply returns the image of p.
func (m Affine) Apply(p Point) Point {
	return Point{float64(m.A*p.X) + float64(m.C*p.Y) + m.E, float64(m.B*p.X) + float64(m.D*p.Y) + m.F}
}

// After returns the map that does n first and then m.
func (m Affine) After(n Affine) Affine {
	return Affine{
		float64(m.A*n.A) + float64(m.C*n.B), float64(m.B*n.A) + float64(m.D*n.B),
		float64(m.A*n.C) + float64(m.C*n.D), float64(m.B*n.C) + float64(m.D*n.D),
		float64(m.A*n.E) + float64(m.C*n.F) + m.E, float64(m.B*n.E) + float64(m.D*n.F) + m.F,
	}
}

// Gain returns by how much m lengthens a line along either axis, the larger of the
// two. A line in another direction is lengthened by at most √2 times as much.
func (m Affine) Gain() float64 {
	return math.Max(math.Hypot(m.A, m.B), math.Hypot(m.C, m.D))
}
