package accuracy_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"slingloft/outline/accuracy"
	"slingloft/outline/finished"
)

// ordinary returns the sample's bed under its sleeper, who stands for a weight too.
func ordinary(t *testing.T) specimen {
	t.Helper()
	d, s, sp, on := sample(t)
	b := specimen{hammock: finished.Make(finished.Made{Shape: &s, Lines: on.Lines})}
	b.sleeper.weight = on.Weight
	var err error
	if b.sleeper.designed, err = b.hammock.Hang(finished.Change{}, on.Weight); err != nil {
		t.Fatal(err)
	}
	b.weight = b.sleeper
	b.made = accuracy.Bed{Bars: [2]float64{d.Bed.HeadBar, d.Bed.FootBar}, Stack: accuracy.Stack(&s, d, sp, shop), Knobs: knobs()}
	return b
}

func advise(t *testing.T, b accuracy.Bed, s accuracy.Survey) accuracy.Advice {
	t.Helper()
	a, err := b.Advise(s)
	if err != nil {
		t.Fatal(err)
	}
	return a
}

// What a maker meets: a body 10 mm off the middle makes the tips differ by some 27 mm,
// a leg 4 mm long by 3 to 5, and by more at the other end than at its own: the old
// advice, to take in the leg of the bar that stands askew, sends to the wrong end.
func TestWhatTipsShow(t *testing.T) {
	b := ordinary(t)
	aside := b.hang(t, b.sleeper, accuracy.Off{}, 10)
	for e := range 2 {
		if d := aside.Tips[e][1] - aside.Tips[e][0]; d < 22 || d > 32 {
			t.Errorf("body 10 mm to the left: tips of end %d differ by %.1f mm", e, d)
		}
	}
	for _, p := range finished.Legs() {
		var o accuracy.Off
		o[p] = 4
		h := b.hang(t, b.sleeper, o, 0)
		own := math.Abs(h.Tips[p/2][0] - h.Tips[p/2][1])
		other := math.Abs(h.Tips[1-p/2][0] - h.Tips[1-p/2][1])
		if greatest := max(own, other); greatest < 3 || greatest > 5.5 || other < 1.3*own {
			t.Errorf("%s 4 mm long: tips differ by %.1f at its own bar, by %.1f at the other", p.String(), own, other)
		}
	}
}

// Four heights cannot tell which part is wrong, however well they are read: what both
// legs of an end have in common moves tips against each other by pitch alone, and that
// little. An outside Monte Carlo gave 0.72 of a leg's spread.
func TestDoubt(t *testing.T) {
	b := ordinary(t)
	d, s, sp, _ := sample(t)
	b.made.Stack = accuracy.Stack(&s, d, sp, accuracy.Working{Marking: 1, Scatter: 0.02, Line: 5})
	exact := accuracy.Survey{Heights: b.weight.designed.Heights(), Error: 0.05, Aside: 0.01}
	a, usual := advise(t, b.under(t, b.weight), exact), advise(t, b.under(t, b.weight), accuracy.Survey{Heights: exact.Heights})
	for _, p := range finished.Legs() {
		t.Logf("%s: %.2f of its spread is left, %.2f with usual readings", p.String(), a.Doubt[p], usual.Doubt[p])
		near(t, p.String()+", spread left", usual.Doubt[p], 0.72, 0.1)
		if a.Doubt[p] < 0.5 {
			t.Errorf("%s: %.2f of its spread is left after heights without error", p.String(), a.Doubt[p])
		}
	}
}

// One leg far too long, heights without error: the bed is level afterwards to what
// whole steps leave, the tips read what was predicted, and no leg is let out.
func TestOneLeg(t *testing.T) {
	b := ordinary(t)
	bed := b.under(t, b.weight)
	for _, p := range finished.Legs() {
		var o accuracy.Off
		o[p] = 15
		s := accuracy.Survey{Heights: b.hang(t, b.weight, o, 0), Error: 0.2, Aside: 0.05}
		a := advise(t, bed, s)
		right := put(o, a)
		if before, after := b.uneven(t, o), b.uneven(t, right); a.Level || after > 2 || before < 8 {
			t.Errorf("%s 15 mm long: %.1f mm uneven, %.1f after %+v", p.String(), before, after, a.Adjustments)
		}
		again := b.hang(t, b.weight, right, 0)
		for e := range again.Tips {
			for side := range again.Tips[e] {
				near(t, p.String()+" put right, tip", again.Tips[e][side], a.After[e][side], 1.5)
			}
		}
		for _, k := range a.Adjustments {
			if k.Part <= finished.FootRightLeg && k.Change > 0 {
				t.Errorf("%s: %s let out by %g", p.String(), k.Part, k.Change)
			}
			if k.Change != math.Round(k.Change) || k.Change == 0 || !(k.Uncertainty > 0) {
				t.Errorf("%s: %+v", p.String(), k)
			}
		}
	}
}

// A bed that hangs as designed is left alone, and so is one that is off by less than
// can be told.
func TestLeftAlone(t *testing.T) {
	b := ordinary(t)
	bed := b.under(t, b.weight)
	for _, mm := range []float64{0, 2} {
		var o accuracy.Off
		o[finished.FootLeftLeg] = mm
		h := b.hang(t, b.weight, o, 0)
		a := advise(t, bed, accuracy.Survey{Heights: h})
		if !a.Level || len(a.Adjustments) != 0 {
			t.Errorf("a leg %g mm long: %+v", mm, a)
		}
	}
}

// Under a sleeper the roll of both bars is nobody's fault: one who lies 10 mm aside
// gets no advice, and what twists the bed is taken out without turning it as a whole.
func TestSleeper(t *testing.T) {
	b := ordinary(t)
	bed := b.under(t, b.sleeper)
	a := advise(t, bed, accuracy.Survey{Under: accuracy.Sleeper, Heights: b.hang(t, b.sleeper, accuracy.Off{}, 10)})
	if !a.Level || math.Abs(a.Off[0][0]) > 2 {
		t.Errorf("10 mm aside: %+v", a)
	}
	var o accuracy.Off
	o[finished.HeadLeftLeg], o[finished.FootRightLeg] = 16, 12
	slopes := func(o accuracy.Off) (roll, twist float64) {
		h := b.hang(t, b.sleeper, o, 0)
		head, foot := (h.Tips[0][0]-h.Tips[0][1])/bed.Bars[0], (h.Tips[1][0]-h.Tips[1][1])/bed.Bars[1]
		return (head + foot) / 2 * 930, (head - foot) * 930
	}
	a = advise(t, bed, accuracy.Survey{Under: accuracy.Sleeper, Heights: b.hang(t, b.sleeper, o, 0), Error: 1})
	roll, twist := slopes(o)
	rollAfter, twistAfter := slopes(put(o, a))
	if math.Abs(twist) < 10 || math.Abs(twistAfter) > math.Abs(twist)/3 || math.Abs(rollAfter-roll) > 2 {
		t.Errorf("twist %.1f to %.1f, roll %.1f to %.1f mm: want the twist taken out and the roll kept; %+v",
			twist, twistAfter, roll, rollAfter, a.Adjustments)
	}
}

// Apexes and the bottom, measured too, leave no tip less sure.
func TestMoreHeights(t *testing.T) {
	b := ordinary(t)
	bed := b.under(t, b.weight)
	h := b.hang(t, b.weight, drawn(b.made.Stack, rand.New(rand.NewPCG(6, 6))), 0.5)
	few, more := advise(t, bed, accuracy.Survey{Heights: h}), advise(t, bed, accuracy.Survey{Heights: h, Middle: true, Apexes: true})
	for e := range few.Uncertainty {
		for s := range few.Uncertainty[e] {
			if more.Uncertainty[e][s] > few.Uncertainty[e][s]+1e-9 {
				t.Errorf("tip %d %d: ±%.2f mm with more heights, ±%.2f without", e, s, more.Uncertainty[e][s], few.Uncertainty[e][s])
			}
		}
	}
	if more.Doubt[finished.HeadLine] > few.Doubt[finished.HeadLine] {
		t.Errorf("head line: doubt %.3f with more heights, %.3f without", more.Doubt[finished.HeadLine], few.Doubt[finished.HeadLine])
	}
}

// Without anything to set there is no advice, and what stays uneven is said; a height
// that is none is refused.
func TestNothingToSet(t *testing.T) {
	b := ordinary(t)
	bed := b.under(t, b.weight)
	bed.Knobs = nil
	var o accuracy.Off
	o[finished.LeftSide] = 30
	h := b.hang(t, b.weight, o, 0)
	a := advise(t, bed, accuracy.Survey{Heights: h})
	if a.Level || len(a.Adjustments) != 0 || a.OffAfter != a.Off || math.Abs(a.OffAfter[0][0]) < 4 {
		t.Errorf("%+v", a)
	}
	h.Tips[1][0] = math.NaN()
	if _, err := bed.Advise(accuracy.Survey{Heights: h}); !errors.Is(err, accuracy.ErrNoHeight) {
		t.Errorf("a height that is not a number: %v", err)
	}
	bed.Rates.Aside.Tips[1][0], bed.Rates.Aside.Tips[1][1] = 0.4, -0.4
	if _, err := bed.Advise(accuracy.Survey{}); !errors.Is(err, accuracy.ErrUnsteady) {
		t.Errorf("a bar that rises where the weight goes: %v", err)
	}
	// At 980 mm of bar the tips part by 7.7 mm for each mm aside where it rolls by 45° for 100.
	for parts, want := range map[float64]error{7.4: nil, 8: accuracy.ErrUnsteady} {
		for e := range bed.Bars {
			bed.Bars[e] = 980
			bed.Rates.Aside.Tips[e] = [2]float64{-parts / 2, parts / 2}
		}
		if _, err := bed.Advise(accuracy.Survey{}); !errors.Is(err, want) {
			t.Errorf("tips that part by %g mm for each aside: %v, want %v", parts, err, want)
		}
	}
}

// An adjustment says what is done to what.
func TestHow(t *testing.T) {
	for want, a := range map[accuracy.Way]accuracy.Adjustment{
		accuracy.TakeIn:   {Part: finished.FootRightLeg, Change: -3},
		accuracy.LetOut:   {Part: finished.HeadLeftLeg, Change: 2},
		accuracy.Shorten:  {Part: finished.LeftSide, Change: -1},
		accuracy.Lengthen: {Part: finished.HeadLine, Change: 12},
		accuracy.Lower:    {Part: finished.FootAnchor, Change: -5},
		accuracy.Raise:    {Part: finished.HeadAnchor, Change: 5},
	} {
		if got := a.How(); got != want {
			t.Errorf("%+v: %v, want %v", a, got, want)
		}
	}
}
