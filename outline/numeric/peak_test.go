package numeric_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/numeric"
)

// Peaks in closed form. A flat top hides the place: with 16 digits of the value it
// is known to the root of that, some 1e-8 of the width.
func TestPeak(t *testing.T) {
	for _, r := range []struct {
		name        string
		f           func(float64) float64
		a, b        float64
		x, value    float64
		place, tops float64
	}{
		{"sine", math.Sin, 0, math.Pi, math.Pi / 2, 1, 1e-6, 1e-12},
		{"parabola off the middle", func(x float64) float64 { return 5 - (x-1)*(x-1) }, -10, 2, 1, 5, 2e-6, 1e-11},
		{"x exp −x", func(x float64) float64 { return x * math.Exp(-x) }, 0, 10, 1, 1 / math.E, 2e-6, 1e-12},
		{"a kink", func(x float64) float64 { return -math.Abs(x - 0.3) }, 0, 1, 0.3, 0, 1e-7, 1e-7},
		{"largest at the start", func(x float64) float64 { return -x }, 2, 4, 2, -2, 2e-7, 2e-7},
		{"largest at the end", func(x float64) float64 { return x }, 2, 4, 4, 4, 2e-7, 2e-7},
		{"nothing beside the top", func(x float64) float64 {
			if math.Abs(x-0.55) > 0.3 {
				return math.Inf(-1)
			}
			return -(x - 0.6) * (x - 0.6)
		}, 0, 1, 0.6, 0, 1e-7, 1e-13},
	} {
		x, v := numeric.Peak(r.f, r.a, r.b)
		close(t, r.name+", place", x, r.x, r.place)
		close(t, r.name+", value", v, r.value, r.tops)
		if v != r.f(x) {
			t.Errorf("%s: value %g, but %g at its place", r.name, v, r.f(x))
		}
	}
}

// Nothing tried at random lies above the peak of a function that has one.
func TestNothingAbovePeak(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.Float64Range(-100, 100).Draw(t, "from")
		b := a + rapid.Float64Range(0.1, 100).Draw(t, "long")
		top := rapid.Float64Range(a-10, b+10).Draw(t, "top")
		sharp := rapid.Float64Range(0.5, 3).Draw(t, "sharp")
		f := func(x float64) float64 { return -math.Pow(math.Abs(x-top), sharp) }
		x, v := numeric.Peak(f, a, b)
		if x < a || x > b {
			t.Fatalf("%g outside %g to %g", x, a, b)
		}
		// The best place, to the search's share of the interval, and so much lower
		// than the best value as f falls within that share.
		best, share := min(max(top, a), b), 1e-7*(b-a)
		if math.Abs(x-best) > share {
			t.Fatalf("peak at %g, want %g", x, best)
		}
		far := math.Abs(best - top)
		loss := math.Pow(far+share, sharp) - math.Pow(far, sharp)
		if w := f(rapid.Float64Range(a, b).Draw(t, "other")); w > v+loss+1e-9 {
			t.Fatalf("%g lies above %g", w, v)
		}
	})
}
