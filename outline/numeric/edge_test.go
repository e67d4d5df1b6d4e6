package numeric_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"slingloft/outline/numeric"
)

// A band matrix with some unknowns held solves as the full one without their rows and
// columns does, by Gauss's elimination; the held stay 0. Entries may be given on either
// side of the diagonal, in parts.
func TestBandHolds(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 1))
	for n := 1; n <= 14; n++ {
		for width := range min(n, 5) {
			b := numeric.NewBand(n, width)
			full := make([][]float64, n)
			for i := range full {
				full[i] = make([]float64, n)
			}
			for i := range n {
				for j := max(0, i-width); j <= i; j++ {
					v := rng.Float64() - 0.5
					if i == j {
						v = 0.3 + float64(width)
					}
					full[i][j], full[j][i] = v, v
					if rng.IntN(2) == 0 {
						i, j := j, i
						b.Add(i, j, v/4)
						v -= v / 4
					}
					b.Add(i, j, v)
				}
			}
			held := make([]bool, n)
			for i := range n {
				if held[i] = rng.IntN(3) == 0; held[i] {
					b.Hold(i)
				}
			}
			whole := b.Clone()
			if !b.Factor() {
				t.Fatalf("%d rows, width %d: not positive definite", n, width)
			}
			right := make([]float64, n)
			for i := range right {
				if !held[i] {
					right[i] = rng.Float64()*20 - 10
				}
			}
			want := eliminated(full, right, held)
			x := append([]float64(nil), right...)
			b.Solve(x)
			for i := range x {
				close(t, "unknown", x[i], want[i], 1e-10)
				if held[i] && x[i] != 0 {
					t.Errorf("%d rows, width %d: held unknown %d is %g", n, width, i, x[i])
				}
			}
			// The copy is as it was before: it factors and solves alike.
			again := append([]float64(nil), right...)
			if !whole.Factor() {
				t.Fatal("the copy went with what it was made of")
			}
			whole.Solve(again)
			for i := range x {
				close(t, "solved by the copy", again[i], x[i], 0)
			}
		}
	}
}

// eliminated solves a full system without its held unknowns by Gauss's elimination.
func eliminated(full [][]float64, right []float64, held []bool) []float64 {
	var free []int
	for i, h := range held {
		if !h {
			free = append(free, i)
		}
	}
	m := make([][]float64, len(free))
	for i, p := range free {
		for _, q := range free {
			m[i] = append(m[i], full[p][q])
		}
		m[i] = append(m[i], right[p])
	}
	for i := range m {
		for k := range m {
			if k == i {
				continue
			}
			f := m[k][i] / m[i][i]
			for c := i; c < len(m[k]); c++ {
				m[k][c] -= f * m[i][c]
			}
		}
	}
	out := make([]float64, len(full))
	for i, p := range free {
		out[p] = m[i][len(m)] / m[i][i]
	}
	return out
}

// Just positive definite, and just not: a pivot of less than one is one, a pivot of nothing
// is none.
func TestBandDefinite(t *testing.T) {
	for off, want := range map[float64]bool{0.24: true, 0.25: false, 0.26: false, -0.24: true, -0.25: false} {
		b := numeric.NewBand(2, 1)
		b.Add(0, 0, 0.25)
		b.Add(0, 1, off)
		b.Add(1, 1, 0.25)
		if got := b.Factor(); got != want {
			t.Errorf("¼ on the diagonal, %g beside it: definite %v", off, got)
		}
	}
}

// followed counts how often [numeric.Follow] asks a system of one unknown.
func followed(f func(float64) float64, start float64, near numeric.Jacobian) (x float64, asked int, jac numeric.Jacobian, err error) {
	got, jac, err := numeric.Follow(func(x []float64) ([]float64, error) {
		asked++
		return []float64{f(x[0])}, nil
	}, []float64{start}, []float64{1e-6}, near, 1e-9)
	if err == nil {
		x = got[0]
	}
	return x, asked, jac, err
}

// How often a system is asked: a line once at the start, once for its slope and once at the
// solution; with the slope known twice; with a slope that misleads once more than anew, and
// perhaps once for what differences leave. A start that solves it is asked once.
func TestFollowAsksLittle(t *testing.T) {
	line := func(slope float64) func(float64) float64 { return func(x float64) float64 { return slope * (x - 3) } }
	x, asked, slope, err := followed(line(2), 0, nil)
	if err != nil || asked != 3 {
		t.Errorf("anew: %g after %d calls, %v", x, asked, err)
	}
	close(t, "its slope", slope.At(0, 0), 2, 1e-6)
	if x, asked, _, err = followed(line(2), 10, slope); err != nil || asked != 2 {
		t.Errorf("with its slope: %g after %d calls, %v", x, asked, err)
	}
	if x, asked, _, err = followed(line(-2), 10, slope); err != nil || asked > 5 {
		t.Errorf("with another's slope: %g after %d calls, %v", x, asked, err)
	}
	close(t, "with another's slope", x, 3, 1e-9)
	if x, asked, _, err = followed(line(2), 3, nil); err != nil || asked != 1 || x != 3 {
		t.Errorf("from the solution: %g after %d calls, %v", x, asked, err)
	}
	// A slope half as steep again ends where it should by Broyden's own corrections, without
	// a difference more.
	x, asked, slope, err = followed(func(x float64) float64 { return 2*(x-3) + 0.2*math.Sin(x-3) }, 4, slope)
	if err != nil || asked > 6 {
		t.Errorf("bent: %g after %d calls, %v", x, asked, err)
	}
	close(t, "bent", x, 3, 1e-9)
	close(t, "slope after it", slope.At(0, 0), 2.2, 0.05)
}

// The slope is found by differences where a step does not halve the residual, twice at most.
// A curve that gets flatter by kinks needs that once for each: one kink is followed, two are
// not.
func TestFollowFindsSlopesTwice(t *testing.T) {
	one := func(x float64) float64 {
		if x < 5 {
			return x - 7
		}
		return -2 + 0.1*(x-5)
	}
	x, _, _, err := followed(one, 0, nil)
	if err != nil {
		t.Fatal(err)
	}
	close(t, "behind a kink", x, 25, 1e-7)
	two := func(x float64) float64 {
		if x < 15 {
			return one(x)
		}
		return -1 + 0.01*(x-15)
	}
	if x, asked, _, err := followed(two, 0, nil); !errors.Is(err, numeric.ErrNoConvergence) || asked > 8 {
		t.Errorf("behind two: %g after %d calls, %v", x, asked, err)
	}
	// A step that a slope of its own does not bring nearer ends it at once.
	_, asked, _, err := followed(func(x float64) float64 { return x*x + 1 }, 1, nil)
	if !errors.Is(err, numeric.ErrNoConvergence) || asked > 5 {
		t.Errorf("no solution: %d calls, %v", asked, err)
	}
}

// A system that is not there where a step leads is not taken for solved there.
func TestOutsideIsNoSolution(t *testing.T) {
	short := func(x []float64) ([]float64, error) { // solved at 1, where it ends
		if x[0] >= 1 {
			return nil, errOutside
		}
		return []float64{x[0] - 1}, nil
	}
	// Near enough, the step that polishes would lead to 1.
	got, err := numeric.Solve(short, []float64{0.9995}, []float64{1e-5}, 1e-3)
	if err != nil || got[0] != 0.9995 {
		t.Errorf("polished to %v, %v", got, err)
	}
	if x, _, err := numeric.Follow(short, []float64{0.5}, []float64{1e-5}, nil, 1e-3); err == nil {
		t.Errorf("followed to %v", x)
	}
	if _, _, err := numeric.Follow(short, []float64{1}, []float64{1e-5}, nil, 1e-3); !errors.Is(err, errOutside) {
		t.Errorf("a start outside: %v", err)
	}
}

// An interval without a root has none to return.
func TestNoRootIsZero(t *testing.T) {
	for _, f := range []func(float64) float64{
		func(x float64) float64 { return 1 + x*x }, math.Log,
		func(x float64) float64 {
			if math.Abs(x) < 1 {
				return math.NaN()
			}
			return x
		},
	} {
		if x, err := numeric.Root(f, -1, 2, 1e-9); err == nil || x != 0 {
			t.Errorf("%g, %v", x, err)
		}
	}
}
