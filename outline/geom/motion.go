package geom

import "math"

// Motion is a rigid motion: mirror in the x axis if asked, then turn
// counter-clockwise about the origin by Turn radians, then shift. The zero
// value leaves everything in place.
type Motion struct {
	Mirror bool
	Turn   float64
	Shift  Point
}

// Apply returns p after the motion. Turns by whole quarters are exact.
func (m Motion) Apply(p Point) Point {
	if m.Mirror {
		p.Y = -p.Y
	}
	return turnExact(p, m.Turn).Plus(m.Shift)
}

// Direction returns the angle that the direction angle has after the motion.
func (m Motion) Direction(angle float64) float64 {
	if m.Mirror {
		angle = -angle
	}
	return angle + m.Turn
}

// turnExact turns p, free of rounding for whole quarter turns.
func turnExact(p Point, angle float64) Point {
	quarters := angle / (math.Pi / 2)
	whole := math.Round(quarters)
	if math.Abs(quarters-whole) > 1e-12 {
		return p.Turned(angle)
	}
	for range ((int(whole) % 4) + 4) % 4 {
		p = p.Left()
	}
	return p
}
