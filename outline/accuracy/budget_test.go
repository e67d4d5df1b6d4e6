package accuracy_test

import (
	"math"
	"testing"

	"slingloft/outline/accuracy"
	"slingloft/outline/cord"
	"slingloft/outline/finished"
)

// A whole loop has no splice but the one at its join: by hand, with marks of 1 mm
// and a scatter of 0.015 over a bury of 180 mm, half of which lies on either side.
func TestLengthsOfALoop(t *testing.T) {
	d, s, sp, _ := sample(t)
	d.Splice.Whole = true
	l := accuracy.Lengths(&s, d, sp, working)
	set := 0.004 * s.SideArc
	near(t, "side, worst", l[0].Worst, 2*1+2*1.35+set, 1e-9)
	near(t, "side, rss", l[0].RSS, math.Sqrt(2*1+2*1.35*1.35+set*set), 1e-9)
	near(t, "head leg, worst", l[1].Worst, 1+0.004*820, 1e-9)
	near(t, "foot leg, rss", l[2].RSS, math.Hypot(1, 0.004*760), 1e-9)
	for i, want := range []struct {
		part    cord.Part
		nominal float64
	}{{cord.SideCord, s.SideArc}, {cord.HeadLeg, 820}, {cord.FootLeg, 760}} {
		if l[i].Part != want.part || math.Abs(l[i].Nominal-want.nominal) > 1e-9 {
			t.Errorf("length %d: %s of %g, want %s of %g", i, l[i].Part, l[i].Nominal, want.part, want.nominal)
		}
	}
}

// Buries of cords unlike in thickness count where they lie: a leg is buried in the
// side cord at its tip and in itself at its eye.
func TestLengthsOfUnlikeCords(t *testing.T) {
	d, s, _, _ := sample(t)
	d.Side.Diameter, d.Leg.Diameter = 3, 5
	d.Splice.Bury = 0 // by diameters
	sp, err := cord.Resolve(d, cord.Options{})
	if err != nil {
		t.Fatal(err)
	}
	l := accuracy.Lengths(&s, d, sp, working)
	side, leg, eye := 0.015*sp.Bury(3), 0.015*sp.Bury(5), 0.015*sp.EyeBury(5)
	if !(leg > side) {
		t.Fatalf("buries of %g and %g mm: the sample is meant to tell them apart", sp.Bury(3), sp.Bury(5))
	}
	near(t, "side cord", l[0].Worst, 2+2*leg+l[0].Set, 1e-9)
	near(t, "leg", l[1].Worst, 2.5+side+eye+l[1].Set, 1e-9)
}

// Each measure of level, cord by cord and source by source: six cords, of which the
// right ones work the other way across, their set all at once; and the cloth.
func TestMeasures(t *testing.T) {
	d, s, sp, on := sample(t)
	h := finished.Make(finished.Made{Shape: &s, Lines: on.Lines})
	r, err := accuracy.Of(h, d, sp, on.Weight)
	if err != nil {
		t.Fatal(err)
	}
	designed, err := h.Hang(finished.Change{}, on.Weight)
	if err != nil {
		t.Fatal(err)
	}
	rates, err := accuracy.LevelRates(h, designed, on.Weight)
	if err != nil {
		t.Fatal(err)
	}
	byPart := map[cord.Part]accuracy.Effect{}
	for _, e := range r.Effects {
		byPart[e.Part] = e
	}
	for m, read := range []func(e accuracy.Effect, right bool) float64{
		func(e accuracy.Effect, _ bool) float64 { return e.Level.Along },
		func(e accuracy.Effect, right bool) float64 { return turned(e.Level.Across[0], right) },
		func(e accuracy.Effect, right bool) float64 { return turned(e.Level.Across[1], right) },
		func(e accuracy.Effect, _ bool) float64 { return e.Level.Sag },
	} {
		cloth := read(accuracy.Effect{Level: rates[finished.Cloth]}, false) // both edges are cut to a mark
		worst, squares, set := 2*math.Abs(cloth), 2*cloth*cloth, 0.0
		// Untested, a contraction of 0.15 is good to the stated scatter, over two buries of 180
		// mm in every cord, and a crossing in each leg's eye to 3 mm.
		kappa, loss := 0.0, 0.0
		for _, l := range r.Lengths {
			for _, right := range []bool{false, true} {
				per := read(byPart[l.Part], right)
				set += per * l.Set
				kappa += per * 0.015 * 360
				if l.Part != cord.SideCord {
					loss += per * 3
				}
				for _, c := range l.Sources {
					for range c.Count {
						worst += math.Abs(per) * c.Error
						squares += per * per * c.Error * c.Error
					}
				}
			}
		}
		near(t, r.Outcomes[m].Kind.String()+", worst", r.Outcomes[m].Worst, worst+math.Abs(set)+math.Abs(kappa)+math.Abs(loss), 1e-9)
		near(t, r.Outcomes[m].Kind.String()+", rss", r.Outcomes[m].RSS, math.Sqrt(squares+set*set+kappa*kappa+loss*loss), 1e-9)
		near(t, r.Outcomes[m].Kind.String()+", allowed", r.Outcomes[m].Allowed, 12, 0)
	}
	if len(r.Outcomes) != 4 || len(r.Lengths) != 3 || len(r.Effects) != 5 || len(r.Notes) == 0 {
		t.Errorf("%d measures, %d lengths, %d effects, %d notes", len(r.Outcomes), len(r.Lengths), len(r.Effects), len(r.Notes))
	}
	// A set that is the same in both sides' cords tilts no end across.
	for _, m := range r.Outcomes[1:3] {
		if m.Worst > r.Outcomes[0].Worst*10 || m.RSS > m.Worst {
			t.Errorf("%+v", m)
		}
	}
}

func turned(v float64, right bool) float64 {
	if right {
		return -v
	}
	return v
}

// The verdict follows from what is allowed: all of it, the likely part, or neither.
func TestVerdict(t *testing.T) {
	d, s, sp, on := sample(t)
	said := map[accuracy.Verdict]int{}
	for _, allowed := range []float64{12, 5, 1, 1000} {
		d.Accuracy.Level = allowed
		got, err := accuracy.Of(finished.Make(finished.Made{Shape: &s, Lines: on.Lines}), d, sp, on.Weight)
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range got.Outcomes {
			want := accuracy.LikelyMore
			switch {
			case m.Worst <= allowed:
				want = accuracy.Within
			case m.RSS <= allowed:
				want = accuracy.LikelyMet
			}
			if m.Verdict() != want || m.Sure != (m.Worst <= allowed) || m.Likely != (m.RSS <= allowed) {
				t.Errorf("%s, %g allowed of %g at worst, %g likely: %v, want %v", m.Kind, allowed, m.Worst, m.RSS, m.Verdict(), want)
			}
			said[want]++
		}
	}
	if len(said) != 3 {
		t.Errorf("not every verdict was met: %v", said)
	}
}
