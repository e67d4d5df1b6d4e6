package panel

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
)

// A hem is folded two times, so that what lies a hem's width outside its edge comes to
// lie as far inside. On a curve of radius ρ the two differ in length by 2 h/ρ of it.

// hemReach is the stretch over which a hem's curve is measured, mm: the spacing of
// pins.
const hemReach = 100.0

// hemLies refuses a hem, folded two times, that is too wide for the curve of its edge.
func (m *pattern) hemLies(edge geom.Polyline) error {
	sharp := sharpest(edge, hemReach)
	if 2*m.d.Cap.Hem*sharp <= piece.HemGives {
		return nil
	}
	return &hung.Impossible{Key: design.KeyCapHem,
		Found: design.Found(design.HemGives, 200*m.d.Cap.Hem*sharp),
		Bound: design.AtMost, Limit: piece.HemGives / (2 * sharp)}
}

// sharpest returns the greatest curvature of a line, 1/mm, each by the circle through
// three of its points within reach mm; 0 for a straight one.
func sharpest(l geom.Polyline, reach float64) float64 {
	arc := geom.NewArc(l)
	reach = min(reach, arc.Length())
	steps := max(1, int(math.Ceil(4*(arc.Length()-reach)/reach)))
	most := 0.0
	for i := range steps + 1 {
		from := (arc.Length() - reach) * float64(i) / float64(steps)
		a, _ := arc.At(from)
		b, _ := arc.At(from + reach/2)
		c, _ := arc.At(from + reach)
		most = max(most, curvature(a, b, c))
	}
	return most
}

// curvature returns one over the radius of the circle through three points, 1/mm: four
// times the area of their triangle over the product of its sides.
func curvature(a, b, c geom.Point) float64 {
	sides := a.Dist(b) * b.Dist(c) * c.Dist(a)
	if sides == 0 {
		return 0
	}
	return 2 * math.Abs(b.Minus(a).Cross(c.Minus(a))) / sides
}
