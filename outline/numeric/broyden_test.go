package numeric_test

import (
	"errors"
	"testing"

	"slingloft/outline/numeric"
)

// A path of solutions is followed to the same places as [numeric.Solve] finds, with a
// fraction of the evaluations; a start from which no solution is near is refused.
func TestFollow(t *testing.T) {
	calls := 0
	at := func(turn float64) numeric.System {
		return func(x []float64) ([]float64, error) {
			calls++
			r := helical(x)
			r[2] -= turn
			return r, nil
		}
	}
	step := even(3, 1e-7)
	x, jac := []float64{1, 0, 0}, numeric.Jacobian(nil)
	solved := 0
	for turn := 0.1; turn < 1.05; turn += 0.1 {
		before := calls
		want, err := numeric.Solve(at(turn), x, step, 1e-10)
		if err != nil {
			t.Fatal(err)
		}
		solved += calls - before
		calls = before
		if x, jac, err = numeric.Follow(at(turn), x, step, jac, 1e-10); err != nil {
			t.Fatalf("%g: %v", turn, err)
		}
		for i := range x {
			close(t, "place", x[i], want[i], 1e-9)
		}
	}
	if calls > solved*2/3 {
		t.Errorf("%d evaluations, against %d from anew", calls, solved)
	}
	far := func(x []float64) ([]float64, error) { return []float64{x[0]*x[0] + 1}, nil }
	if _, _, err := numeric.Follow(far, []float64{3}, even(1, 1e-7), nil, 1e-9); !errors.Is(err, numeric.ErrNoConvergence) {
		t.Errorf("no solution: %v", err)
	}
}
