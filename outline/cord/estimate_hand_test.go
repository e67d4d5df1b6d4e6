package cord_test

import (
	"math"
	"testing"

	"slingloft/outline/cord"
)

// sure is a maker whose splices do not scatter: every piece is off by two readings of
// the tape alone, v = 2 r².
var sure = cord.Stated{Kappa: 0.15, Loss: 5, Reading: 0.5}

// piece is a test piece that lost so much.
func piece(lost, buried float64, crossing bool) cord.TestPiece {
	return cord.TestPiece{Before: 500, After: 500 - lost, Buried: buried, Crossing: crossing}
}

// Standard errors worked by hand from v = 0.5 mm²: the slope through n equal buries,
// the mean of n crossings, and the line through eyes of two lengths.
func TestEstimateErrors(t *testing.T) {
	v := 2 * 0.5 * 0.5
	e := estimate(t, []cord.TestPiece{piece(30, 200, false), piece(34, 200, false), piece(32, 200, false)}, sure)
	near(t, "three buries", e.Kappa.Value, 0.16, 1e-9)
	near(t, "their error", e.Kappa.Error, math.Sqrt(v/3)/200, 1e-8)
	near(t, "no crossing tried", e.Loss.Value, 5, 0)
	near(t, "a loss that may be off by itself", e.Loss.Error, 5, 0)

	e = estimate(t, []cord.TestPiece{piece(7, 0, true), piece(9, 0, true)}, sure)
	near(t, "two crossings", e.Loss.Value, 8, 1e-9)
	near(t, "their error", e.Loss.Error, math.Sqrt(v/2), 1e-6)

	// 37 = 200 κ + k and 21 = 100 κ + k: κ 0.16, k 5.
	e = estimate(t, []cord.TestPiece{piece(37, 200, true), piece(21, 100, true)}, sure)
	near(t, "κ of two eyes", e.Kappa.Value, 0.16, 1e-9)
	near(t, "k of two eyes", e.Loss.Value, 5, 1e-7)
	near(t, "error of κ", e.Kappa.Error, math.Sqrt(2*v)/100, 1e-8)
	// k = 2·21 − 37.
	near(t, "error of k", e.Loss.Error, math.Sqrt(4*v+v), 1e-5)
	near(t, "a whole eye of the mean bury", e.Whole.Value, 29, 1e-9)
	near(t, "its bury", e.WholeBuried, 150, 0)
	near(t, "its error", e.Whole.Error, math.Sqrt(2*v)/2, 1e-6)
}

// Eyes of one length show what bury and crossing lose together. κ then holds with the
// stated loss and is as unsure as that, at least 3 mm.
func TestEstimateHeldLoss(t *testing.T) {
	v := 2 * 0.5 * 0.5
	set := []cord.TestPiece{piece(33, 200, true), piece(33, 200, true)}
	for _, r := range []struct{ loss, doubt float64 }{{5, 5}, {1, 3}, {0, 3}} {
		s := sure
		s.Loss = r.loss
		e := estimate(t, set, s)
		near(t, "κ", e.Kappa.Value, (33-r.loss)/200, 1e-9)
		near(t, "its error", e.Kappa.Error, math.Hypot(math.Sqrt(v/2)/200, r.doubt/200), 1e-8)
		near(t, "k", e.Loss.Value, r.loss, 0)
		near(t, "its error", e.Loss.Error, r.doubt, 0)
		if !e.Together {
			t.Errorf("loss %g: told apart", r.loss)
		}
	}
}

// A single splice is off by its own scatter and by what κ is off.
func TestEstimateOfOne(t *testing.T) {
	e := cord.Estimate{Kappa: cord.Measured{Value: 0.15, Error: 0.03}, Scatter: 0.04}
	near(t, "of 200 mm", e.Of(200), 10, 1e-12)
	near(t, "of nothing", e.Of(0), 0, 0)
}

// Long pieces scatter more, v = 2 r² + (s b)², and so count less for k than short
// ones: two of each, those of a length far apart, weighed by hand.
func TestEstimateWeights(t *testing.T) {
	// All lie on κ 0.16 and k 5 but for one long piece, 6 mm off.
	set := []cord.TestPiece{piece(5+0.16*300+6, 300, true), piece(5+0.16*60, 60, true), piece(5+0.16*60, 60, true)}
	s := cord.Stated{Kappa: 0.15, Loss: 5, Scatter: 0.02, Reading: 0.5}
	e := estimate(t, set, s)
	// Two lengths, two unknowns: the line goes through both means whatever the weights.
	near(t, "k", e.Loss.Value, 5-6*60/240.0, 1e-6)
	near(t, "κ", e.Kappa.Value, 0.16+6/240.0, 1e-8)
	v := func(b float64) float64 { return 2*0.25 + e.Scatter*e.Scatter*b*b }
	near(t, "error of κ", e.Kappa.Error, math.Sqrt(v(300)+v(60)/2)/240, 1e-6)
	near(t, "error of k", e.Loss.Error, math.Sqrt(60*60*v(300)+300*300*v(60)/2)/240, 1e-4)
}

// One piece among two cannot be called odd: there is nothing to hold it against.
func TestOddNeedsOthers(t *testing.T) {
	set := []cord.TestPiece{piece(32, 200, false), piece(80, 200, false)}
	if odd, err := cord.Odd(set, stated); err != nil || len(odd) != 0 {
		t.Errorf("%v, %v", odd, err)
	}
	set = append(set, piece(32, 200, false), piece(32.5, 200, false), piece(31.5, 200, false), piece(32, 200, false))
	if odd, err := cord.Odd(set, stated); err != nil || len(odd) != 1 || odd[0] != 1 {
		t.Errorf("one piece that lost 80 of 200: odd %v, %v", odd, err)
	}
	// One that lost too little is as odd.
	set[1] = piece(0, 200, false)
	if odd, err := cord.Odd(set, stated); err != nil || len(odd) != 1 || odd[0] != 1 {
		t.Errorf("one piece that lost nothing: odd %v, %v", odd, err)
	}
	set[2] = piece(-1, 200, false)
	if _, err := cord.Odd(set, stated); err == nil {
		t.Error("a host that grew was accepted")
	}
}

// What is asked for is at most five pieces, of half the bury but a millimetre at least,
// and nothing where bury and crossing are told apart already.
func TestApart(t *testing.T) {
	for _, r := range []struct {
		name   string
		set    []cord.TestPiece
		buried float64
		some   bool
	}{
		{"eyes of one length", []cord.TestPiece{piece(37, 201, true), piece(37, 201, true)}, 101, true},
		{"tiny eyes", []cord.TestPiece{piece(5.2, 1, true)}, 1, true},
		{"told apart", []cord.TestPiece{piece(37, 200, true), piece(37, 200, true), piece(13, 50, true), piece(13, 50, true)}, 0, false},
		{"buries alone", []cord.TestPiece{piece(32, 200, false)}, 0, false},
		{"nothing", nil, 0, false},
	} {
		f := estimate(t, r.set, stated).Apart(r.set, stated)
		if f.Buried != r.buried || (f.Count > 0) != r.some || f.Count > 5 || f.Count == 1 {
			t.Errorf("%s: %+v, want some %v of %g mm", r.name, f, r.some, r.buried)
		}
	}
}
