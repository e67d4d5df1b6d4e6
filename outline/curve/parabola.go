package curve

import "math"

// Parabola is the curve of a cord under a load even along its chord.
type Parabola struct{ chord, sag float64 }

// NewParabola returns the parabola of a chord and sag, both mm and positive.
func NewParabola(chord, sag float64) (Parabola, error) {
	return Parabola{chord, sag}, check(chord, sag)
}

// Depth returns the depth below the chord, s (1 − (2x/L)²).
func (p Parabola) Depth(x float64) float64 {
	t := 2 * x / p.chord
	return p.sag * (1 - float64(t*t))
}

// Length returns (L/2) [√(1+u²) + asinh(u)/u] with u = 4s/L.
func (p Parabola) Length() float64 {
	u := 4 * p.sag / p.chord
	return p.chord / 2 * (math.Sqrt(1+float64(u*u)) + math.Asinh(u)/u)
}

// EndSlope returns atan(4s/L).
func (p Parabola) EndSlope() float64 { return math.Atan(4 * p.sag / p.chord) }
