package column

import (
	"math"

	"slingloft/outline/numeric"
)

// Bow is by how much of its length a bar is taken to be bowed before it is loaded, since
// straight ones do not exist: own choice.
const Bow = 1.0 / 500

// Crooked returns the thrust, N, at which a bar with pinned ends yields whose axis is
// bowed by bow mm at mid-length and whose thrust acts e mm off the axis at both
// ends, both to one side: with σ = P/A, Euler's load Pe and W = I/c,
//
//	σ + P bow / (W (1 − P/Pe)) + P e / (W cos(π/2 √(P/Pe))) = yield
//
// which is the Perry formula (fy − σ)(σe − σ) = η σ σe, η = bow A / W, for e = 0 and
// the secant formula for bow = 0.
func Crooked(s Section, modulus, yield, l, bow, e float64) float64 {
	critical := Euler(s, modulus, l)
	w := s.Inertia / s.Edge
	upper := min(critical, yield*s.Area)
	over := func(p float64) float64 {
		part := p / critical
		if part >= 1 {
			return 1
		}
		bend := float64(p*bow)/(w*(1-part)) + float64(p*e)/(w*math.Cos(math.Pi/2*math.Sqrt(part)))
		// Scaled so that it stays finite up to Euler's load.
		return ((p/s.Area+bend)/yield - 1) * (1 - part)
	}
	p, err := numeric.Root(over, 0, upper, 1e-12*upper)
	if err != nil {
		return upper
	}
	return p
}
