package numeric_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/numeric"
	_ "slingloft/outline/rapidtest"
)

// even returns n differences of the same size.
func even(n int, h float64) []float64 {
	s := make([]float64, n)
	for i := range s {
		s[i] = h
	}
	return s
}

// known wraps residuals that exist everywhere.
func known(f func(x []float64) []float64) numeric.System {
	return func(x []float64) ([]float64, error) { return f(x), nil }
}

// helical is problem 7 of Moré, Garbow and Hillstrom.
func helical(x []float64) []float64 {
	turn := math.Atan(x[1]/x[0]) / (2 * math.Pi)
	if x[0] < 0 {
		turn += 0.5
	}
	return []float64{10 * (x[2] - 10*turn), 10 * (math.Hypot(x[0], x[1]) - 1), x[2]}
}

// The systems by which solvers are judged, with their usual starts and their known
// solutions: J. J. Moré, B. S. Garbow, K. E. Hillstrom, Testing Unconstrained
// Optimization Software, ACM Transactions on Mathematical Software 7 (1981), 17–41.
func TestSolve(t *testing.T) {
	for _, r := range []struct {
		name        string
		f           func(x []float64) []float64
		start, want []float64
		tol, within float64
	}{
		{"one line", func(x []float64) []float64 { return []float64{4*x[0] - 2} }, []float64{100}, []float64{0.5}, 1e-9, 1e-12},
		{"two planes", func(x []float64) []float64 { return []float64{x[0] + 2*x[1] - 5, 3*x[0] - x[1] - 1} },
			[]float64{0, 0}, []float64{1, 2}, 1e-9, 1e-12},
		{"1, Rosenbrock", func(x []float64) []float64 { return []float64{10 * (x[1] - x[0]*x[0]), 1 - x[0]} },
			[]float64{-1.2, 1}, []float64{1, 1}, 1e-9, 1e-9},
		{"3, Powell, badly scaled", func(x []float64) []float64 {
			return []float64{1e4*x[0]*x[1] - 1, math.Exp(-x[0]) + math.Exp(-x[1]) - 1.0001}
		}, []float64{0, 1}, []float64{1.098159e-5, 9.106147}, 1e-11, 1e-5},
		{"7, helical valley", helical, []float64{-1, 0, 0}, []float64{1, 0, 0}, 1e-9, 1e-9},
		// The Jacobian has rank 2 at the solution, so that x is known to √tol only.
		{"13, Powell, singular", func(x []float64) []float64 {
			return []float64{x[0] + 10*x[1], math.Sqrt(5) * (x[2] - x[3]),
				(x[1] - 2*x[2]) * (x[1] - 2*x[2]), math.Sqrt(10) * (x[0] - x[3]) * (x[0] - x[3])}
		}, []float64{3, -1, 0, 1}, []float64{0, 0, 0, 0}, 1e-10, 1e-4},
	} {
		got, err := numeric.Solve(known(r.f), r.start, even(len(r.start), 1e-7), r.tol)
		if err != nil {
			t.Errorf("%s: %v", r.name, err)
			continue
		}
		for i := range got {
			close(t, r.name, got[i], r.want[i], r.within)
		}
		if left := numeric.Largest(r.f(got)); left > r.tol {
			t.Errorf("%s: residual %g, want at most %g", r.name, left, r.tol)
		}
	}
}

// Problem 30 of the same source, Broyden's tridiagonal system: of its solution only
// the residual is known, and that it is the same from the usual start and another.
func TestSolveTridiagonal(t *testing.T) {
	const n = 12
	f := known(func(x []float64) []float64 {
		r := make([]float64, n)
		for i, v := range x {
			r[i] = (3-2*v)*v + 1
			if i > 0 {
				r[i] -= x[i-1]
			}
			if i < n-1 {
				r[i] -= 2 * x[i+1]
			}
		}
		return r
	})
	one, err := numeric.Solve(f, even(n, -1), even(n, 1e-7), 1e-9)
	if err != nil {
		t.Fatal(err)
	}
	other, err := numeric.Solve(f, even(n, -0.7), even(n, 1e-7), 1e-9)
	if err != nil {
		t.Fatal(err)
	}
	for i := range one {
		close(t, "one start and another", one[i], other[i], 1e-12)
	}
	if r, _ := f(one); numeric.Largest(r) > 1e-9 {
		t.Errorf("residual %g", numeric.Largest(r))
	}
}

// A solution is taken one step further than asked, which doubles its digits: what
// is left does not hang on the tolerance.
func TestSolvePolishes(t *testing.T) {
	f := known(func(x []float64) []float64 { return []float64{x[0]*x[0] - 2} })
	got, err := numeric.Solve(f, []float64{1.5}, []float64{1e-7}, 1e-4)
	if err != nil {
		t.Fatal(err)
	}
	close(t, "√2", got[0], math.Sqrt2, 1e-10)
}

// The start is returned as a slice of its own and stays as it was.
func TestSolveKeepsItsArguments(t *testing.T) {
	start, step := []float64{3, 4}, []float64{1e-6, 1e-6}
	f := known(func(x []float64) []float64 { return []float64{x[0] - 1, x[1] - 2} })
	got, err := numeric.Solve(f, start, step, 1e-9)
	if err != nil {
		t.Fatal(err)
	}
	got[0] = 99
	if start[0] != 3 || start[1] != 4 || step[0] != 1e-6 {
		t.Errorf("start %v, step %v", start, step)
	}
}

var errOutside = errors.New("outside")

// Where residuals exist only in a region, steps are cut until they stay inside, and
// a difference that leads out of it is taken to the other side.
func TestSolveInARegion(t *testing.T) {
	// ln x = −3 from 1: the full step leads to x = −3.
	log := func(x []float64) ([]float64, error) {
		if x[0] <= 0 {
			return nil, errOutside
		}
		return []float64{math.Log(x[0]) + 3}, nil
	}
	got, err := numeric.Solve(log, []float64{1}, []float64{1e-8}, 1e-10)
	if err != nil {
		t.Fatal(err)
	}
	close(t, "exp −3", got[0], math.Exp(-3), 1e-11)
	// √(1 − x) = 1/2 from the very edge of its region.
	root := func(x []float64) ([]float64, error) {
		if x[0] > 1 {
			return nil, errOutside
		}
		return []float64{math.Sqrt(1-x[0]) - 0.5}, nil
	}
	if got, err = numeric.Solve(root, []float64{1}, []float64{1e-4}, 1e-10); err != nil {
		t.Fatal(err)
	}
	close(t, "¾", got[0], 0.75, 1e-9)
}

func TestSolveFaults(t *testing.T) {
	point := func(x []float64) ([]float64, error) {
		if x[0] != 2 {
			return nil, errOutside
		}
		return []float64{1}, nil
	}
	for _, r := range []struct {
		name  string
		f     numeric.System
		start []float64
		want  error
	}{
		{"start outside", point, []float64{1}, errOutside},
		{"nothing beside the start", point, []float64{2}, errOutside},
		{"no solution", known(func(x []float64) []float64 { return []float64{x[0]*x[0] + 1} }), []float64{3}, numeric.ErrNoConvergence},
		{"nothing depends on x", known(func([]float64) []float64 { return []float64{1, 1} }), []float64{0, 0}, numeric.ErrNoConvergence},
		{"same equation twice", known(func(x []float64) []float64 { return []float64{x[0] + x[1] - 1, x[0] + x[1] - 2} }),
			[]float64{0, 0}, numeric.ErrNoConvergence},
		{"no number", known(func([]float64) []float64 { return []float64{math.NaN()} }), []float64{0}, numeric.ErrNoConvergence},
	} {
		if x, err := numeric.Solve(r.f, r.start, even(len(r.start), 1e-6), 1e-9); !errors.Is(err, r.want) {
			t.Errorf("%s: %v, %v; want %v", r.name, x, err, r.want)
		}
	}
}

// A start that solves the system already is returned as good as it was.
func TestSolveFromTheSolution(t *testing.T) {
	f := known(func(x []float64) []float64 { return []float64{x[0] - 1, x[1]*x[1] - 4} })
	got, err := numeric.Solve(f, []float64{1, 2}, even(2, 1e-7), 1e-9)
	if err != nil || got[0] != 1 || got[1] != 2 {
		t.Errorf("%v, %v", got, err)
	}
}

// Equations of very unlike size, here a condition number of 1e17, are solved as far
// as they can be: it is the residual that decides.
func TestSolveUnlikeSizes(t *testing.T) {
	f := known(func(x []float64) []float64 { return []float64{x[0] - 1, 1e17 * (x[1] - 1)} })
	got, err := numeric.Solve(f, []float64{0, 0}, even(2, 1), 1e-9)
	if err != nil || got[0] != 1 || got[1] != 1 {
		t.Errorf("%v, %v; want 1 and 1", got, err)
	}
}

// Any well-conditioned straight system with a bent part small against it is solved.
func TestSolveRandomSystems(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 6).Draw(t, "n")
		draw := func(lo, hi float64, name string) []float64 {
			return rapid.SliceOfN(rapid.Float64Range(lo, hi), n, n).Draw(t, name)
		}
		want, off := draw(-10, 10, "solution"), draw(-1, 1, "off")
		rows := make([][]float64, n)
		for i := range rows {
			rows[i] = draw(-1, 1, "row")
			rows[i][i] += 2 * float64(n) // diagonally dominant
		}
		f := known(func(x []float64) []float64 {
			r := make([]float64, n)
			for i := range r {
				for j := range x {
					r[i] += rows[i][j] * (x[j] - want[j])
				}
				r[i] += 0.3 * math.Sin(x[i]-want[i])
			}
			return r
		})
		start := make([]float64, n)
		for i := range start {
			start[i] = want[i] + 5*off[i]
		}
		got, err := numeric.Solve(f, start, even(n, 1e-6), 1e-9)
		if err != nil {
			t.Fatal(err)
		}
		for i := range got {
			if math.Abs(got[i]-want[i]) > 1e-9 {
				t.Fatalf("%v, want %v", got, want)
			}
		}
	})
}

func TestLargest(t *testing.T) {
	for _, r := range []struct {
		in   []float64
		want float64
	}{
		{nil, 0}, {[]float64{0}, 0}, {[]float64{1, -3, 2}, 3}, {[]float64{-0.5}, 0.5},
		{[]float64{1, math.NaN(), 5}, math.Inf(1)}, {[]float64{math.Inf(-1)}, math.Inf(1)},
	} {
		if got := numeric.Largest(r.in); got != r.want {
			t.Errorf("Largest(%v) = %g, want %g", r.in, got, r.want)
		}
	}
}
