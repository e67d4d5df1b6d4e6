package accuracy_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"slingloft/outline/accuracy"
	"slingloft/outline/cord"
	"slingloft/outline/finished"
)

// working is a maker's ordinary work on the sample.
var working = accuracy.Working{Marking: 1, Scatter: 0.015, Set: 0.004, Bar: 1, Sewing: 1.5}

// squares returns the root of the sum of squares of one part's errors and their sum.
func squares(stack []accuracy.Component, p finished.Part) (rss, worst float64) {
	for _, c := range stack {
		rss += c.Off[p] * c.Off[p]
		worst += math.Abs(c.Off[p])
	}
	return math.Sqrt(rss), worst
}

// The stack of each cord is that of [accuracy.Lengths]; bars and girth, worked by
// hand, join it.
func TestStackLengths(t *testing.T) {
	d, s, sp, _ := sample(t)
	for _, whole := range []bool{false, true} {
		d.Splice.Whole = whole
		stack := accuracy.Stack(&s, d, sp, working)
		l := accuracy.Lengths(&s, d, sp, working)
		for i, p := range []finished.Part{finished.RightSide, finished.HeadLeftLeg, finished.FootRightLeg} {
			rss, worst := squares(stack, p)
			near(t, p.String()+", rss", rss, l[i].RSS, 1e-9)
			near(t, p.String()+", worst", worst, l[i].Worst, 1e-9)
		}
		bar, _ := squares(stack, finished.FootBar)
		near(t, "bar", bar, 1, 0)
		girth, _ := squares(stack, finished.Cloth)
		near(t, "girth", girth, math.Sqrt(2*1+2*1.5*1.5), 1e-12)
		line, _ := squares(stack, finished.HeadLine)
		near(t, "line", line, 0, 0)
	}
}

// What is done about the set leaves part of it; nodes that are read need no marks and
// no contraction; test pieces bring in the error of their mean, the same in every
// splice.
func TestStackPractice(t *testing.T) {
	d, s, sp, _ := sample(t)
	set := func(taken accuracy.Taken) float64 {
		w := accuracy.Working{Set: 0.004, Taken: taken}
		rss, _ := squares(accuracy.Stack(&s, d, sp, w), finished.HeadLeftLeg)
		return rss
	}
	near(t, "left", set(accuracy.Left), 0.004*820, 1e-9)
	if !(set(accuracy.Preload) < set(accuracy.CutOff) && set(accuracy.CutOff) < set(accuracy.Left)) {
		t.Errorf("set left %g, cut off %g, after a pre-load %g: want less each time",
			set(accuracy.Left), set(accuracy.CutOff), set(accuracy.Preload))
	}
	read := working
	read.Tape, read.Set = 0.5, 0
	rss, _ := squares(accuracy.Stack(&s, d, sp, read), finished.HeadLeftLeg)
	near(t, "read", rss, math.Sqrt(2*0.25), 1e-12)

	e := cord.Estimate{Kappa: cord.Measured{Value: 0.16, Error: 0.004}, Loss: cord.Measured{Value: 5, Error: 1},
		LossAlone: 1, Scatter: 0.01, Pieces: 6}
	w := accuracy.WorkingOf(d.Accuracy, e)
	rss, _ = squares(accuracy.Stack(&s, d, sp, w), finished.HeadLeftLeg)
	bury := 180.0
	// Whole eyes of one bury say what an eye loses, whatever its κ: only the bury in the
	// side cord is in doubt with it.
	together := e
	together.LossAlone, together.Balance, together.Kappa.Error = 0, 180, 0.03
	one, _ := squares(accuracy.Stack(&s, d, sp, accuracy.WorkingOf(d.Accuracy, together)), finished.HeadLeftLeg)
	near(t, "whole eyes", one, math.Sqrt(2.25+2*math.Pow(0.01*180, 2)+math.Pow(0.03*180, 2)+math.Pow(0.004*820, 2)), 1e-9)
	// Without a test piece the contraction is as much in doubt as it was stated to be.
	causes := map[accuracy.Cause]bool{}
	untested := accuracy.WorkingOf(d.Accuracy, cord.Estimate{Kappa: cord.Measured{Value: 0.15, Error: 0.02}})
	for _, c := range accuracy.Stack(&s, d, sp, untested) {
		causes[c.Cause] = true
	}
	if !causes[accuracy.Untested] || causes[accuracy.Contraction] {
		t.Errorf("causes without a test piece: %v", causes)
	}
	near(t, "tried", rss, math.Sqrt(2.25+2*math.Pow(0.01*bury, 2)+math.Pow(0.004*2*bury, 2)+1+math.Pow(0.004*820, 2)), 1e-9)
}

// With errors drawn at random the beds hung by the model spread as the outcomes say,
// to within 15 %: 300 draws know a spread to 4 %, and the model bends.
func TestOutcomes(t *testing.T) {
	d, s, sp, on := sample(t)
	h := finished.Make(finished.Made{Shape: &s, Lines: on.Lines})
	designed, err := h.Hang(finished.Change{}, on.Weight)
	if err != nil {
		t.Fatal(err)
	}
	rates, err := accuracy.LevelRates(h, designed, on.Weight)
	if err != nil {
		t.Fatal(err)
	}
	stack := accuracy.Stack(&s, d, sp, working)
	outcomes := accuracy.Outcomes(stack, rates, 12)
	rng := rand.New(rand.NewPCG(4, 9))
	const draws = 300
	var sums [4]float64
	for range draws {
		p, err := h.HangFrom(designed, changed(drawn(stack, rng)), on.Weight)
		if err != nil {
			t.Fatal(err)
		}
		off := p.Level.Minus(designed.Level)
		for i, v := range []float64{off.Along, off.Across[0], off.Across[1], off.Sag} {
			sums[i] += v * v / draws
		}
	}
	for i, o := range outcomes {
		near(t, o.Kind.String(), math.Sqrt(sums[i]), o.RSS, 0.15*o.RSS)
		total := 0.0
		for _, s := range o.Shares {
			total += s.Part
		}
		near(t, o.Kind.String()+", shares", total, 1, 1e-9)
		largest, ok := o.Largest()
		if !ok || o.Halved() >= o.RSS || o.Worst < o.RSS {
			t.Errorf("%s: %+v", o.Kind, o)
		}
		t.Logf("%s: rss %.1f, most of it (%.0f %%) %s", o.Kind, o.RSS, 100*largest.Part, largest.Cause)
	}
}

// Halving the largest cause's own measure halves what it does.
func TestHalve(t *testing.T) {
	d, s, sp, on := sample(t)
	h := finished.Make(finished.Made{Shape: &s, Lines: on.Lines})
	designed, err := h.Hang(finished.Change{}, on.Weight)
	if err != nil {
		t.Fatal(err)
	}
	rates, err := accuracy.LevelRates(h, designed, on.Weight)
	if err != nil {
		t.Fatal(err)
	}
	before := accuracy.Outcomes(accuracy.Stack(&s, d, sp, working), rates, 12)[1]
	largest, _ := before.Largest()
	if largest.Cause != accuracy.Splices {
		t.Fatalf("across at the head bar: most by %s, want the splices", largest.Cause)
	}
	w := working
	w.Scatter = w.Half(accuracy.Splices)
	after := accuracy.Outcomes(accuracy.Stack(&s, d, sp, w), rates, 12)[1]
	near(t, "halved", after.RSS, before.Halved(), 1e-9)
}

// drawn returns one bed's errors, every component normal.
func drawn(stack []accuracy.Component, rng *rand.Rand) accuracy.Off {
	var o accuracy.Off
	for _, c := range stack {
		z := rng.NormFloat64()
		for k, mm := range c.Off {
			o[k] += z * mm
		}
	}
	return o
}
