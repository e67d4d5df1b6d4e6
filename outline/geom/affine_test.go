package geom

import (
	"math"
	"testing"
)

// The nested transforms of the specification's own example, SVG 1.1 section 7.6.
func TestAffineComposesAsSVGDoes(t *testing.T) {
	got := Translation(Pt(50, 90)).After(Rotation(-math.Pi / 4)).After(Translation(Pt(130, 160)))
	want := Affine{0.707, -0.707, 0.707, 0.707, 255.03, 111.21}
	for i, d := range [6]float64{got.A - want.A, got.B - want.B, got.C - want.C, got.D - want.D, got.E - want.E, got.F - want.F} {
		// The specification reckons with 0.707 for √½, 1.1e-4 less, times 130 + 160 mm.
		if math.Abs(d) > 0.035 {
			t.Errorf("number %d of %v, want %v", i+1, got, want)
		}
	}
	m, n, p := Affine{2, 3, -5, 7, 11, 13}, Affine{-1, 4, 6, 0.5, -3, 8}, Pt(17, -19)
	if a, b := m.After(n).Apply(p), m.Apply(n.Apply(p)); a != b {
		t.Errorf("both at once %v, one after the other %v", a, b)
	}
	if got := Identity().Apply(p); got != p {
		t.Errorf("identity takes %v to %v", p, got)
	}
	if got := (Affine{}).Apply(p); got != (Point{}) {
		t.Errorf("the zero map takes %v to %v", p, got)
	}
	if got := Rotation(1).After(Scaling(2, -3)).Gain(); math.Abs(got-3) > 1e-11 {
		t.Errorf("a scale of 2 and −3, turned, lengthens by %v", got)
	}
}
