// Package geom holds the shapes that every other package speaks in: in the plane
// points, open polylines and closed rings, all in millimetres, with the maps, arcs,
// offsets and crossings that they need; in space points alone.
//
// Conventions: x to the right, y up, angles in radians counter-clockwise from
// the x axis. A [Ring] is closed without repeating its first vertex and, unless
// a function says otherwise, runs counter-clockwise. Shapes are values: no
// function here changes its argument, and the zero value of each type is a
// legal, empty shape.
package geom

import (
	"fmt"
	"math"
)

// Point is a place or a displacement in the plane, in mm.
type Point struct{ X, Y float64 }

// Pt returns the point (x, y), both in mm.
func Pt(x, y float64) Point { return Point{x, y} }

// Plus returns p + q.
func (p Point) Plus(q Point) Point { return Point{p.X + q.X, p.Y + q.Y} }

// Minus returns p − q, the displacement from q to p.
func (p Point) Minus(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }

// Times returns p scaled by k.
func (p Point) Times(k float64) Point { return Point{float64(p.X * k), float64(p.Y * k)} }

// Dot returns the scalar product of p and q, in mm².
func (p Point) Dot(q Point) float64 { return float64(p.X*q.X) + float64(p.Y*q.Y) }

// Cross returns the z component of p × q, in mm²: positive where q lies to the
// left of p. The products are rounded before they are subtracted, so that no
// processor fuses them and every machine finds the same sign.
func (p Point) Cross(q Point) float64 { return float64(p.X*q.Y) - float64(p.Y*q.X) }

// Len returns the length of p, in mm.
func (p Point) Len() float64 { return math.Sqrt(p.Dot(p)) }

// Dist returns the distance between p and q, in mm.
func (p Point) Dist(q Point) float64 { return p.Minus(q).Len() }

// Unit returns p scaled to length 1; the zero point stays zero.
func (p Point) Unit() Point {
	l := p.Len()
	if l == 0 {
		return Point{}
	}
	return p.Times(1 / l)
}

// Left returns p turned a quarter counter-clockwise.
func (p Point) Left() Point { return Point{-p.Y, p.X} }

// Turned returns p turned counter-clockwise about the origin by angle radians.
func (p Point) Turned(angle float64) Point {
	d := Direction(angle)
	s, c := d.Y, d.X
	return Point{float64(p.X*c) - float64(p.Y*s), float64(p.X*s) + float64(p.Y*c)}
}

// Direction returns the point at distance 1 in the direction angle, in radians. Its
// coordinates are rounded to 2⁻⁴⁰, less than a billionth of a millimetre in a metre,
// because processors differ in the last bits of a sine.
func Direction(angle float64) Point {
	const steps = 1 << 40
	s, c := math.Sincos(angle)
	return Point{math.Round(c*steps) / steps, math.Round(s*steps) / steps}
}

// Angle returns the direction of p in radians, in (−π, π].
func (p Point) Angle() float64 { return math.Atan2(p.Y, p.X) }

// AngleTo returns by how much p has to turn to have the direction of q, in (−π, π],
// positive counter-clockwise.
func (p Point) AngleTo(q Point) float64 { return math.Atan2(p.Cross(q), p.Dot(q)) }

// Towards returns the point at fraction t of the way from p to q.
func (p Point) Towards(q Point, t float64) Point {
	return Point{p.X + float64(t*(q.X-p.X)), p.Y + float64(t*(q.Y-p.Y))}
}

// Finite reports whether both coordinates are finite numbers.
func (p Point) Finite() bool {
	s := p.X + p.Y
	return !math.IsNaN(s) && !math.IsInf(s, 0)
}

// String returns the point as "(x y)" with four decimals.
func (p Point) String() string { return fmt.Sprintf("(%.4f %.4f)", p.X, p.Y) }
