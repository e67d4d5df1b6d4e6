package numeric_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/numeric"
)

// close fails where a figure is further than tol from the wanted one.
func close(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %.17g, want %.17g within %g", what, got, want, tol)
	}
}

// counted returns f with a counter of its calls.
func counted(f func(float64) float64) (func(float64) float64, *int) {
	n := new(int)
	return func(x float64) float64 { *n++; return f(x) }, n
}

// Roots known in closed form or to 16 digits from elsewhere. Most is how often f
// may be asked: a line is met by the first interpolation, smooth functions take a
// quarter of the 42 calls of bisection, which a step takes.
func TestRoot(t *testing.T) {
	kepler := func(eccentricity, anomaly float64) func(float64) float64 {
		mean := anomaly - eccentricity*math.Sin(anomaly)
		return func(e float64) float64 { return e - eccentricity*math.Sin(e) - mean }
	}
	for _, r := range []struct {
		name  string
		f     func(float64) float64
		a, b  float64
		want  float64
		limit int
	}{
		{"straight line", func(x float64) float64 { return 3*x - 1 }, 0, 1, 1. / 3, 3},
		{"line, ends swapped", func(x float64) float64 { return 3*x - 1 }, 1, 0, 1. / 3, 3},
		{"falling line", func(x float64) float64 { return 1 - 3*x }, 0, 1, 1. / 3, 3},
		{"√2", func(x float64) float64 { return x*x - 2 }, 0, 2, math.Sqrt2, 10},
		// J. Wallis's example for Newton's method, 1685.
		{"x³ − 2x − 5", func(x float64) float64 { return x*x*x - 2*x - 5 }, 2, 3, 2.0945514815423265, 10},
		{"x³ − 2x − 5, wide", func(x float64) float64 { return x*x*x - 2*x - 5 }, -100, 100, 2.0945514815423265, 24},
		// The fixed point of the cosine, OEIS A003957.
		{"cos x = x", func(x float64) float64 { return math.Cos(x) - x }, 0, 1, 0.7390851332151607, 10},
		// Lambert's Ω with Ω exp Ω = 1, OEIS A030178.
		{"x exp x = 1", func(x float64) float64 { return x*math.Exp(x) - 1 }, 0, 1, 0.5671432904097838, 10},
		// tan x = x, the column fixed at one end: 4.493409458 in all handbooks.
		{"tan x = x", func(x float64) float64 { return math.Sin(x) - x*math.Cos(x) }, 4, 5, 4.493409457909064, 10},
		{"Kepler, e 0.1", kepler(0.1, 2), 0, math.Pi, 2, 10},
		{"Kepler, e 0.99", kepler(0.99, 0.05), 0, math.Pi, 0.05, 10},
		{"far from zero", func(x float64) float64 { return x - 1e9 }, 0, 3e9, 1e9, 3},
		{"a step", func(x float64) float64 { return math.Copysign(1, x-0.3) }, 0, 1, 0.3, 44},
		{"infinite at an end", func(x float64) float64 { return math.Log(x) + 1 }, 0, 1, 1 / math.E, 12},
		{"flat, of ninth degree", func(x float64) float64 { return math.Pow(x-0.7, 9) }, 0, 2, 0.7, 120},
	} {
		const tol = 1e-12
		f, n := counted(r.f)
		got, err := numeric.Root(f, r.a, r.b, tol)
		if err != nil {
			t.Errorf("%s: %v", r.name, err)
			continue
		}
		close(t, r.name, got, r.want, tol+4e-16*math.Abs(r.want))
		if *n > r.limit {
			t.Errorf("%s: asked %d times, want at most %d", r.name, *n, r.limit)
		}
	}
}

// A root at an end is that end, to the last digit and without a search.
func TestRootAtAnEnd(t *testing.T) {
	for _, ends := range [][2]float64{{0.25, 3}, {-3, 0.25}, {0.25, 0.25}} {
		f, n := counted(func(x float64) float64 { return x - 0.25 })
		got, err := numeric.Root(f, ends[0], ends[1], 1e-9)
		if got != 0.25 || err != nil || *n != 2 {
			t.Errorf("Root(x − ¼, %g, %g) = %g, %v after %d calls", ends[0], ends[1], got, err, *n)
		}
	}
}

// The tolerance is one of x: a coarse one ends sooner, further from the root by no
// more than it.
func TestRootTolerance(t *testing.T) {
	calls := math.MaxInt
	for _, tol := range []float64{0, 1e-12, 1e-6, 1e-2, 1} {
		f, n := counted(func(x float64) float64 { return math.Exp(x) - 20 })
		got, err := numeric.Root(f, 0, 10, tol)
		if err != nil {
			t.Fatal(err)
		}
		close(t, "ln 20", got, math.Log(20), tol+4e-16*math.Log(20))
		if *n > calls {
			t.Errorf("a tolerance of %g took %d calls, a finer one %d", tol, *n, calls)
		}
		calls = *n
	}
	if calls > 8 {
		t.Errorf("a tolerance of a tenth of the interval took %d calls", calls)
	}
	// A step lies somewhere in the last interval: its width is the tolerance.
	for at := 0.013; at < 10; at += 0.37 {
		for _, tol := range []float64{1, 0.3, 1e-3} {
			got, err := numeric.Root(func(x float64) float64 { return math.Copysign(1, x-at) }, 0, 10, tol)
			if err != nil {
				t.Fatal(err)
			}
			close(t, "a step", got, at, tol)
		}
	}
}

func TestRootFaults(t *testing.T) {
	nan := math.NaN()
	for _, r := range []struct {
		name string
		f    func(float64) float64
		want error
	}{
		{"both above zero", func(x float64) float64 { return 1 + x*x }, numeric.ErrNoBracket},
		{"both below zero", func(x float64) float64 { return -1 - x*x }, numeric.ErrNoBracket},
		{"no number at the start", func(x float64) float64 { return math.Log(x) }, numeric.ErrNotFinite},
		{"no number at the end", func(x float64) float64 { return math.Log(-x) }, numeric.ErrNotFinite},
		{"no number between", func(x float64) float64 {
			if math.Abs(x) < 1 {
				return nan
			}
			return x
		}, numeric.ErrNotFinite},
	} {
		if x, err := numeric.Root(r.f, -1, 1, 1e-9); !errors.Is(err, r.want) {
			t.Errorf("%s: %g, %v; want %v", r.name, x, err, r.want)
		}
	}
}

// Whatever rising cubic and interval: the root is found to the tolerance, which the
// signs on both sides of it prove, and it never lies outside the interval.
func TestRootOfCubics(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := rapid.Float64Range(-1e3, 1e3).Draw(t, "root")
		slope := rapid.Float64Range(1e-3, 1e3).Draw(t, "slope")
		bend := rapid.Float64Range(0, 10).Draw(t, "bend")
		f := func(x float64) float64 { d := x - at; return d * (slope + bend*d*d) }
		a, b := at-rapid.Float64Range(1e-3, 1e3).Draw(t, "left"), at+rapid.Float64Range(1e-3, 1e3).Draw(t, "right")
		if rapid.Bool().Draw(t, "swapped") {
			a, b = b, a
		}
		tol := math.Pow(10, rapid.Float64Range(-12, -1).Draw(t, "digits"))
		x, err := numeric.Root(f, a, b, tol)
		if err != nil {
			t.Fatal(err)
		}
		if x < min(a, b) || x > max(a, b) {
			t.Fatalf("%g outside %g to %g", x, a, b)
		}
		if off := tol + 4e-16*math.Abs(x); f(x-off) > 0 || f(x+off) < 0 {
			t.Fatalf("%.17g, want %.17g within %g", x, at, tol)
		}
	})
}
