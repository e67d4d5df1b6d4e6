package finished

import "math"

// Vec is a place or a force in space.
type Vec struct{ X, Y, Z float64 }

// Plus returns a + k b.
func (a Vec) Plus(b Vec, k float64) Vec {
	return Vec{a.X + float64(k*b.X), a.Y + float64(k*b.Y), a.Z + float64(k*b.Z)}
}

// Dot returns the scalar product of a and b.
func (a Vec) Dot(b Vec) float64 { return float64(a.X*b.X) + float64(a.Y*b.Y) + float64(a.Z*b.Z) }

// Len returns the length of a.
func (a Vec) Len() float64 { return math.Sqrt(a.Dot(a)) }

// Unit returns a scaled to length 1.
func (a Vec) Unit() Vec { return Vec{}.Plus(a, 1/a.Len()) }
