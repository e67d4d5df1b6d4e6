// Package curve holds the plane curves that a side edge may be asked to follow:
// parabola, catenary and circular arc over a level chord, by chord and sag.
//
// Depths are measured from the chord, mm, at a place x mm along it from its
// middle; all three curves are deepest there.
package curve

import (
	"fmt"
	"math"

	"slingloft/outline/numeric"
)

// Curve is a curve over a chord.
type Curve interface {
	Depth(x float64) float64 // below the chord at x from its middle, mm
	Length() float64         // along the curve from end to end, mm
	EndSlope() float64       // angle between chord and curve at an end, rad
}

// None is the error that no curve has a chord and a sag.
type None struct {
	Chord, Sag float64 // mm
	Most       float64 // the greatest sag that an arc can have over the chord, mm; 0 where no sag would do
}

// Error gives the figures. What a person reads says who asked for the curve.
func (n *None) Error() string {
	return fmt.Sprintf("curve: chord %g mm, sag %g mm, at most %g mm", n.Chord, n.Sag, n.Most)
}

// check refuses chords and sags that make no curve.
func check(chord, sag float64) error {
	if !(chord > 0) || !(sag > 0) || math.IsInf(chord+sag, 0) {
		return &None{Chord: chord, Sag: sag}
	}
	return nil
}

// Catenary is the curve of a cord under a load even along itself.
type Catenary struct{ chord, a float64 }

// NewCatenary returns the catenary of a chord and sag, both mm and positive: its
// parameter a solves a (cosh(L/2a) − 1) = s.
func NewCatenary(chord, sag float64) (Catenary, error) {
	if err := check(chord, sag); err != nil {
		return Catenary{}, err
	}
	// The sag falls as a grows. Near a = L²/8s + s/6 (two terms of the series) it is
	// about right; twice and a twentieth of that lie on either side.
	guess := chord*chord/(8*sag) + sag/6
	miss := func(a float64) float64 {
		s := math.Sinh(chord / (4 * a))
		return 2*a*s*s - sag // cosh t − 1 = 2 sinh²(t/2), without cancellation
	}
	a, err := numeric.Root(miss, guess/20, 2*guess, 1e-13*guess)
	return Catenary{chord, a}, err
}

// Parameter returns a, the radius at the deepest point, mm.
func (c Catenary) Parameter() float64 { return c.a }

// Depth returns the depth below the chord, a (cosh(L/2a) − cosh(x/a)).
func (c Catenary) Depth(x float64) float64 {
	return c.a * (math.Cosh(c.chord/(2*c.a)) - math.Cosh(x/c.a))
}

// Length returns 2a sinh(L/2a).
func (c Catenary) Length() float64 { return 2 * c.a * math.Sinh(c.chord/(2*c.a)) }

// EndSlope returns atan(sinh(L/2a)).
func (c Catenary) EndSlope() float64 { return math.Atan(math.Sinh(c.chord / (2 * c.a))) }

// Arc is a circular arc of at most half a circle.
type Arc struct{ chord, sag, radius float64 }

// NewArc returns the arc of a chord and sag, both mm and positive, the sag at most
// half the chord: R = (L²/4 + s²)/(2s).
func NewArc(chord, sag float64) (Arc, error) {
	if err := check(chord, sag); err != nil {
		return Arc{}, err
	}
	if sag > chord/2 {
		return Arc{}, &None{chord, sag, chord / 2}
	}
	return Arc{chord, sag, (chord*chord/4 + sag*sag) / (2 * sag)}, nil
}

// Radius returns the arc's radius, mm.
func (a Arc) Radius() float64 { return a.radius }

// Depth returns the depth below the chord, √(R²−x²) − (R−s).
func (a Arc) Depth(x float64) float64 {
	return math.Sqrt(max(a.radius*a.radius-x*x, 0)) - (a.radius - a.sag)
}

// Length returns R·4 atan(2s/L).
func (a Arc) Length() float64 { return a.radius * 4 * math.Atan(2*a.sag/a.chord) }

// EndSlope returns half the arc's angle, 2 atan(2s/L).
func (a Arc) EndSlope() float64 { return 2 * math.Atan(2*a.sag/a.chord) }
