package accuracy_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"slingloft/outline/accuracy"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
)

// hanging is the place and the sleeper of the sample.
type hanging struct {
	Lines  [2]float64
	Weight finished.Weight
}

func sample(t testing.TB) (design.Design, hung.Shape, cord.Splicing, hanging) {
	t.Helper()
	var d design.Design
	d.Sleeper = design.Sleeper{Stature: 1680, Mass: 74, Crown: -80}
	d.Bed = design.Bed{
		Span: 1440, HeadBar: 960, FootBar: 900, HeadValue: 420, ControlValue: 205,
		HeadTail: 150, FootTail: 170, HeadLeg: 820, FootLeg: 760,
		HeadRadius: 125, SeatRadius: 150, FootRadius: 110,
	}
	d.Side = design.Cord{Diameter: 3}
	d.Leg = d.Side
	d.Splice = design.Splice{TipGap: 24, Contraction: 0.15, Eye: 110, Bury: 180}
	d.Accuracy = design.Accuracy{Marking: 1, Scatter: 0.015, Set: 0.004, Level: 12}
	s, err := hung.Solve(hung.ProblemOf(d))
	if err != nil {
		t.Fatal(err)
	}
	sp, err := cord.Resolve(d, cord.Options{})
	if err != nil {
		t.Fatal(err)
	}
	w := finished.Weight{Load: s.Problem.Load, Centre: 120}
	return d, s, sp, hanging{Lines: [2]float64{1100, 900}, Weight: w}
}

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %.9g, want %.9g", what, got, want)
	}
}

// Worked by hand: marks of 1 mm, a scatter of 0.015 over buries of 180 mm, a set of
// 0.4 %.
func TestLengths(t *testing.T) {
	d, s, sp, _ := sample(t)
	w := accuracy.WorkingOf(d.Accuracy, sp.Shown.Estimate)
	l := accuracy.Lengths(&s, d, sp, w)
	set := 0.004 * s.SideArc
	near(t, "side, worst", l[0].Worst, 2*1+2*2.7+set, 1e-9)
	near(t, "side, rss", l[0].RSS, math.Sqrt(2*1+2*2.7*2.7+set*set), 1e-9)
	near(t, "leg, worst", l[1].Worst, 1+1+0.5+2*2.7+0.004*820, 1e-9)
	near(t, "leg, rss", l[1].RSS, math.Sqrt(1+1+0.25+2*2.7*2.7+3.28*3.28), 1e-9)
	// The scatter that test splices show rules.
	sp.Shown.Scatter = 0.03
	w = accuracy.WorkingOf(d.Accuracy, sp.Shown.Estimate)
	near(t, "wide scatter", accuracy.Lengths(&s, d, sp, w)[1].Worst, 1+1+0.5+2*5.4+3.28, 1e-9)
}

// draw returns one hammock's errors: every source normal with its error as standard
// deviation, the set of all cords together.
func draw(r accuracy.Report, rng *rand.Rand) finished.Change {
	var c finished.Change
	set := rng.NormFloat64()
	one := func(l accuracy.Length) float64 {
		v := l.Set * set
		for _, s := range l.Sources {
			for range s.Count {
				v += s.Error * rng.NormFloat64()
			}
		}
		return v
	}
	for s := range 2 {
		c.Side[s] = one(r.Lengths[0])
		c.Leg[0][s], c.Leg[1][s] = one(r.Lengths[1]), one(r.Lengths[2])
	}
	return c
}

// total adds up the linear effects of a change.
func total(r accuracy.Report, c finished.Change) finished.Level {
	var sum finished.Level
	add := func(l finished.Level, left, right float64) {
		sum.Along += l.Along * (left + right)
		sum.Sag += l.Sag * (left + right)
		for e := range 2 {
			sum.Across[e] += l.Across[e] * (left - right)
		}
	}
	add(r.Effects[0].Level, c.Leg[0][0], c.Leg[0][1])
	add(r.Effects[1].Level, c.Leg[1][0], c.Leg[1][1])
	add(r.Effects[2].Level, c.Side[0], c.Side[1])
	return sum
}

// The linear effects foretell the pose of hammocks drawn at random.
func TestEffectsForetell(t *testing.T) {
	d, s, sp, on := sample(t)
	r, err := accuracy.Of(finished.Make(finished.Made{Shape: &s, Lines: on.Lines}), d, sp, on.Weight)
	if err != nil {
		t.Fatal(err)
	}
	h := finished.Make(finished.Made{Shape: &s, Lines: on.Lines})
	rng := rand.New(rand.NewPCG(3, 5))
	for range 12 {
		c := draw(r, rng)
		p, err := h.Hang(c, on.Weight)
		if err != nil {
			t.Fatal(err)
		}
		want := total(r, c)
		near(t, "along", p.Level.Along, want.Along, 0.5)
		near(t, "across, head", p.Level.Across[0], want.Across[0], 0.5)
		near(t, "across, foot", p.Level.Across[1], want.Across[1], 0.5)
		near(t, "sag", p.Level.Sag, want.Sag, 0.5)
	}
	for _, e := range r.Effects {
		if e.Corner < 0.2 || e.Corner > 3 {
			t.Errorf("%s: its corner drops by %g mm for 1 mm", e.Part, e.Corner)
		}
		t.Logf("%s: corner %.2f, %+v", e.Part, e.Corner, e.Level)
	}
}

func BenchmarkOf(b *testing.B) {
	d, s, sp, on := sample(b)
	for b.Loop() {
		if _, err := accuracy.Of(finished.Make(finished.Made{Shape: &s, Lines: on.Lines}), d, sp, on.Weight); err != nil {
			b.Fatal(err)
		}
	}
}
