package state_test

import (
	"testing"

	"slingloft/outline/state"
)

func TestSudden(t *testing.T) {
	for _, row := range []struct{ ratio, want float64 }{
		{0, 2}, {0.5, 2.41421356}, {1, 2.73205081}, {2.5, 3.44948974}, {5, 4.31662479}, {7.5, 5}, {10, 5.58257569},
	} {
		near(t, "factor", state.Sudden(row.ratio*40, 40), row.want, 1e-8)
	}
	// Gere, problem 2.8-1: 150 lb slides 2 in down a rod of 48 in, 0.75 in², 30e6 psi:
	// printed 0.0361 in and 22600 psi.
	give := 150.0 * 48 / (30e6 * 0.75)
	near(t, "stretch", give*state.Sudden(2, give), 0.0361, 5e-5)
	near(t, "stress", 150/0.75*state.Sudden(2, give), 22600, 50)
}
