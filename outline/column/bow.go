package column

import (
	"math"

	"gonum.org/v1/gonum/integrate/quad"

	"slingloft/outline/numeric"
)

// Bow is by how much of its length a bar is taken to be bowed before it is loaded, since
// straight ones do not exist: own choice.
const Bow = 1.0 / 500

// Strut is a bar with pinned ends under a thrust along it.
type Strut struct {
	Section
	Modulus float64 // E, N/mm²
	Length  float64 // mm
	Bow     float64 // of its axis at mid-length, mm
	Off     float64 // of the thrust from the axis at both ends, to the side of the bow, mm
}

// Weakened returns the thrust, N, at which a strut yields, of which at mid-length no
// more is left than a weaker section, or the whole: with σ = P/A, Euler's load Pe and
// W = I/c,
//
//	σ + P bow / (W (1 − P/Pe)) + P e / (W cos(π/2 √(P/Pe))) = yield
//
// which is the Perry formula (fy − σ)(σe − σ) = η σ σe, η = bow A / W, for no thrust off
// the axis and the secant formula for no bow. A and W are those of what is left, Euler's
// load that of the whole, since a short weakness makes it hardly softer.
func Weakened(t Strut, left Section, yield float64) float64 {
	critical := Euler(t.Section, t.Modulus, t.Length)
	w := left.Inertia / left.Edge
	upper := min(critical, yield*left.Area)
	over := func(p float64) float64 {
		part := p / critical
		if part >= 1 {
			return 1
		}
		bend := float64(p*t.Bow)/(w*(1-part)) + float64(p*t.Off)/(w*math.Cos(math.Pi/2*math.Sqrt(part)))
		// Scaled so that it stays finite up to Euler's load.
		return ((p/left.Area+bend)/yield - 1) * (1 - part)
	}
	p, err := numeric.Root(over, 0, upper, 1e-12*upper)
	if err != nil {
		return upper
	}
	return p
}

// Kink returns the bow, mm, that a joint with a play between its parts' diameters gives
// a bar of length l at mid-length, where they reach into each other by lap, all mm: the
// parts stand at an angle of play/lap, and the middle lies off the straight line by a
// quarter of the length times that.
func Kink(l, play, lap float64) float64 { return l / 4 * play / lap }

// Drilled returns what a hole across a tube leaves of its section, mm, where the hole
// takes most: along the fibres that bend most. A wall of 0 makes it a rod; a hole is
// narrower than the outer diameter.
func Drilled(outer, wall, hole float64) Section {
	s, inner := Tube(outer, wall), outer-2*wall
	if wall == 0 || inner <= 0 {
		s, inner = Rod(outer), 0
	}
	// Half the height of a circle of diameter d over y.
	high := func(d, y float64) float64 { return math.Sqrt(max(0, float64(d*d/4)-float64(y*y))) }
	taken := func(power float64) float64 {
		return quad.Fixed(func(y float64) float64 {
			return math.Pow(high(outer, y), power) - math.Pow(high(inner, y), power)
		}, -hole/2, hole/2, 64, quad.Legendre{}, 0)
	}
	s.Area -= 2 * taken(1)
	s.Inertia -= 2.0 / 3 * taken(3)
	return s
}
