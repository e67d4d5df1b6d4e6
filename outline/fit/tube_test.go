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
