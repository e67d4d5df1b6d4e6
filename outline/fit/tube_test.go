package fit_test

import (
	"math"
	"testing"

	"slingloft/outline/fit"
)

// Each tube of the list is stiffer and has the larger section modulus than the one
// before, so that the first that holds is the least: I = π (D⁴ − d⁴) / 64.
func TestTubesGrow(t *testing.T) {
	for _, inches := range []bool{false, true} {
		lastI, lastW := 0.0, 0.0
		for _, q := range fit.Tubes(inches) {
			inner := q.Outer - 2*q.Wall
			i := math.Pi * (math.Pow(q.Outer, 4) - math.Pow(inner, 4)) / 64
			w := i / (q.Outer / 2)
			if inner <= 0 || i <= lastI || w <= lastW {
				t.Errorf("%g x %g is no stronger than the one before it", q.Outer, q.Wall)
			}
			lastI, lastW = i, w
		}
	}
}

// Tubes are sold by whole millimetres of diameter, or by eighths of an inch and walls by
// gauge: in either list the first and the last, in mm.
func TestTubesAsSold(t *testing.T) {
	for _, r := range []struct {
		inches      bool
		unit        float64
		first, last fit.Tube
	}{
		{false, 1, fit.Tube{Outer: 18, Wall: 1.5}, fit.Tube{Outer: 70, Wall: 3}},
		{true, 25.4 / 8, fit.Tube{Outer: 19.05, Wall: 1.651}, fit.Tube{Outer: 76.2, Wall: 3.175}},
	} {
		tubes := fit.Tubes(r.inches)
		for _, q := range tubes {
			if n := q.Outer / r.unit; math.Abs(n-math.Round(n)) > 1e-9 || q.Wall < 1 || q.Wall > q.Outer/6 {
				t.Errorf("inches %v: %+v is sold nowhere", r.inches, q)
			}
		}
		for _, p := range [2][2]fit.Tube{{tubes[0], r.first}, {tubes[len(tubes)-1], r.last}} {
			if got, want := p[0], p[1]; math.Abs(got.Outer-want.Outer) > 1e-9 || math.Abs(got.Wall-want.Wall) > 1e-9 {
				t.Errorf("inches %v: %+v, want %+v", r.inches, got, want)
			}
		}
	}
}
