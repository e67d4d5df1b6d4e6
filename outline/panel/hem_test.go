package panel

import (
	"errors"
	"math"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
)

// arcLine returns an arc of a circle, from its lowest point outwards either way.
func arcLine(radius, long float64) geom.Polyline {
	var l geom.Polyline
	const n = 200
	for i := range n + 1 {
		a := long / radius * (float64(i)/n - 0.5)
		l = append(l, geom.Pt(radius*math.Sin(a), -radius*math.Cos(a)))
	}
	return l
}

// The sharpest bend of a circle is one over its radius; of the parabola y = f (2x/c)²
// at its foot 8 f/c²; of a straight line none.
func TestSharpest(t *testing.T) {
	const c, f = 820.0, 35.0
	var parabola geom.Polyline
	for i := range 121 {
		x := c * (float64(i)/120 - 0.5)
		parabola = append(parabola, geom.Pt(x, f*4*x*x/(c*c)))
	}
	for _, tc := range []struct {
		name string
		line geom.Polyline
		want float64
	}{
		{"circle of 500", arcLine(500, 700), 1.0 / 500},
		{"circle of 2500", arcLine(2500, 900), 1.0 / 2500},
		{"short", arcLine(300, 60), 1.0 / 300},
		{"parabola", parabola, 8 * f / (c * c)},
		{"straight", geom.Polyline{{X: 0, Y: 0}, {X: 900, Y: 1}}, 0},
	} {
		// Chords of a few mm stand off an arc by less than a thousandth of its bend.
		if got := sharpest(tc.line, hemReach); math.Abs(got-tc.want) > 0.01*tc.want+1e-12 {
			t.Errorf("%s: %g, want %g", tc.name, got, tc.want)
		}
	}
}

// The outer fold of a hem on an arc is cut on radius ρ − h and comes to lie on ρ + h:
// the widest hem that is taken is as much off as it may be, and no wider one is.
func TestHemLies(t *testing.T) {
	const radius = 600.0
	edge := arcLine(radius, 800)
	m := pattern{}
	m.d.Cap.Hem = 40
	var no *hung.Impossible
	if err := m.hemLies(edge); !errors.As(err, &no) || no.Key != design.KeyCapHem || no.Bound != design.AtMost {
		t.Fatalf("a hem of 40 mm: %v", err)
	}
	if cut, lies := radius-no.Limit, radius+no.Limit; math.Abs((lies-cut)/radius-piece.HemGives) > 0.01*piece.HemGives {
		t.Errorf("%g mm would do, which give %g of the length, want %g", no.Limit, (lies-cut)/radius, piece.HemGives)
	}
	m.d.Cap.Hem = no.Limit
	if err := m.hemLies(edge); err != nil {
		t.Errorf("%g mm, which would do: %v", no.Limit, err)
	}
}
