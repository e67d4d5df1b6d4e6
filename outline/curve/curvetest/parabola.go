// Package curvetest holds the curve of a cord under a load even along its chord, which
// others are held against.
package curvetest

import "math"

// Parabola is the parabola of a chord and sag, both mm and positive.
type Parabola struct{ Chord, Sag float64 }

// Depth returns the depth below the chord, s (1 − (2x/L)²).
func (p Parabola) Depth(x float64) float64 {
	t := 2 * x / p.Chord
	return p.Sag * (1 - t*t)
}

// Length returns (L/2) [√(1+u²) + asinh(u)/u] with u = 4s/L.
func (p Parabola) Length() float64 {
	u := 4 * p.Sag / p.Chord
	return p.Chord / 2 * (math.Sqrt(1+u*u) + math.Asinh(u)/u)
}

// EndSlope returns atan(4s/L).
func (p Parabola) EndSlope() float64 { return math.Atan(4 * p.Sag / p.Chord) }
