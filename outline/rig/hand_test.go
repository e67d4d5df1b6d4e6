package rig_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
	"slingloft/outline/rig"
)

// A seat is as long as hips are broad, by the survey's mean body, C. C. Gordon et al.,
// NATICK/TR-15/007, and never shorter than 330 mm.
func TestSeatLength(t *testing.T) {
	const hips = (379.3 + 399.0) / 2
	for _, r := range []struct {
		name       string
		mass, tall float64
		want       float64
	}{
		{"the mean body", 1, 1, hips}, {"four times the mass", 4, 1, 2 * hips}, {"nine times the stature", 9, 4, 1.5 * hips},
		{"half the mass", 0.5, 1, 330}, {"just above the least", 0.75, 1, hips * math.Sqrt(0.75)}, {"twice the stature", 1, 2, 330},
	} {
		s := mean()
		s.Mass *= quantity.Kilograms(r.mass)
		s.Stature *= r.tall
		near(t, r.name, rig.SeatLength(s), r.want, 1e-9)
	}
}

// At the bounds of what can be hung: hooks right at the apexes leave no hang line; hooks
// as low as the higher apex leave none either.
func TestRigAtItsBounds(t *testing.T) {
	b := bed()
	b.Lift = 0.02
	s := solve(t, b, hung.EvenLoad(700, -720, 720))
	p, err := rig.Between(&s, rig.Overall(&s), 450, 0.5)
	if err != nil {
		t.Fatal(err)
	}
	top := math.Max(p.Ends[0].Apex, p.Ends[1].Apex)
	for _, e := range p.Ends {
		near(t, "no run", e.Run, 0, 0)
		near(t, "no line", e.Line, 0, 0)
		near(t, "hook at the apex", e.Hook, e.Apex, 0)
	}
	p, err = rig.Under(&s, top+1e-9, 450)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "as high as the apex", p.Distance, rig.Overall(&s), 1e-6)
	if _, err = rig.Under(&s, top-0.1, 450); err == nil {
		t.Error("hooks below the higher apex were accepted")
	}
	for _, height := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		if _, err := rig.Under(&s, height, 450); err == nil {
			t.Errorf("a height of %g was accepted", height)
		}
	}
}

// Less than a millimetre is a distance and a height like any other: given, and refused for
// what it is; a lack of less than a millionth of a millimetre is rounding.
func TestSmallDistances(t *testing.T) {
	s := solve(t, bed(), hung.EvenLoad(700, -720, 720))
	for _, h := range []design.Hang{{Bed: 450, Distance: 0.5}, {Bed: 450, Height: 0.5}} {
		if _, ok, err := rig.Of(&s, h); ok || err == nil {
			t.Errorf("%+v: %v, %v", h, ok, err)
		}
	}
	free, _, err := rig.Of(&s, design.Hang{Bed: 450, Distance: 4800})
	if err != nil {
		t.Fatal(err)
	}
	top := math.Max(free.Ends[0].Hook, free.Ends[1].Hook)
	for lack, want := range map[float64]float64{5e-7: 0, 5e-6: 5e-6, -1: 0} {
		p, _, err := rig.Of(&s, design.Hang{Bed: 450, Distance: 4800, Height: top - lack})
		if err != nil {
			t.Fatal(err)
		}
		near(t, "beyond", p.Beyond, want, 1e-9)
		if (p.Beyond == 0) != (want == 0) {
			t.Errorf("a lack of %g mm is said to be %g", lack, p.Beyond)
		}
	}
	// Beds of less than a metre hang from hooks less than a metre high, with a height of 0.8.
	low, _, err := rig.Of(&s, design.Hang{Bed: -900, Distance: 4800, Height: 0.8})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "hooks at ground level", low.Beyond, math.Max(0, low.Ends[0].Hook-0.8), 1e-9)
}

// A sweep has both ends of its range and even steps between them, and leaves out what is
// too short.
func TestSweepEnds(t *testing.T) {
	s := solve(t, bed(), hung.EvenLoad(700, -720, 720))
	over := rig.Overall(&s)
	for n := 1; n <= 7; n++ {
		rows := rig.Sweep(&s, over+100, over+1500, 450, n)
		if len(rows) != n+1 {
			t.Fatalf("%d steps give %d places", n, len(rows))
		}
		for i, p := range rows {
			near(t, "distance", p.Distance, over+100+1400*float64(i)/float64(n), 1e-9)
			near(t, "shared evenly", p.Ends[0].Run, p.Ends[1].Run, 1e-9)
			near(t, "lowest", p.Lowest, 450, 0)
		}
	}
	if rows := rig.Sweep(&s, over-300, over+300, 450, 6); len(rows) != 4 || math.Abs(rows[0].Distance-over) > 1e-9 {
		t.Errorf("%d places from %g", len(rows), rows[0].Distance)
	}
	if rows := rig.Sweep(&s, over-300, over-100, 450, 6); rows != nil {
		t.Errorf("hooks too close for any: %+v", rows)
	}
}

// Whatever bed, distance and share: runs fill what the distance leaves over, lines are the
// straight way from apex to hook at their angle, raising the bed raises everything, and
// both pulls hold the weight and each other.
func TestPlaceOfAnyBed(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := bed()
		b.FootBar = rapid.Float64Range(800, 1100).Draw(t, "foot bar")
		b.FootLeg = b.FootBar * rapid.Float64Range(0.7, 1.1).Draw(t, "foot leg")
		b.Lift = quantity.Radians(rapid.Float64Range(-0.04, 0.04).Draw(t, "lift"))
		weight := rapid.Float64Range(300, 1500).Draw(t, "weight")
		s, err := hung.Solve(hung.Problem{Bed: b, Load: hung.EvenLoad(weight, rapid.Float64Range(-720, -1).Draw(t, "from"), 600)})
		if err != nil {
			t.Skip("does not hang")
		}
		over := rig.Overall(&s)
		spare := rapid.Float64Range(0, 3000).Draw(t, "spare")
		share := rapid.Float64Range(0, 1).Draw(t, "share")
		p, err := rig.Between(&s, over+spare, 400, share)
		if err != nil {
			t.Fatal(err)
		}
		higher, err := rig.Between(&s, over+spare, 437, share)
		if err != nil {
			t.Fatal(err)
		}
		off := func(what string, got, want, tol float64) {
			if !(math.Abs(got-want) <= tol) {
				t.Fatalf("%s = %.9g, want %.9g", what, got, want)
			}
		}
		off("runs", p.Ends[0].Run+p.Ends[1].Run, spare, 1e-9)
		off("head's share", p.Ends[0].Run, share*spare, 1e-9)
		up, along := 0.0, 0.0
		for e, end := range p.Ends {
			off("line", end.Line, math.Hypot(end.Run, end.Hook-end.Apex), 1e-8)
			off("angle", end.Line*math.Cos(end.Angle), end.Run, 1e-8)
			off("apex raised", higher.Ends[e].Apex-end.Apex, 37, 1e-9)
			off("hook raised", higher.Ends[e].Hook-end.Hook, 37, 1e-9)
			off("same pull", higher.Ends[e].Pull.N, end.Pull.N, 0)
			up += end.Pull.N * math.Sin(end.Angle)
			along += float64(2*e-1) * end.Pull.N * math.Cos(end.Angle)
		}
		off("weight", up, weight, 1e-6*weight)
		off("level pulls", along, 0, 1e-6*weight)
		off("edge raised", higher.Edge-p.Edge, 37, 1e-9)
		off("head above foot", p.HeadAbove, p.Ends[0].Hook-p.Ends[1].Hook, 0)
	})
}

// A shelter covers what reaches past both apexes by 200 mm.
func TestCover(t *testing.T) {
	s := solve(t, bed(), hung.EvenLoad(700, -720, 720))
	for _, ridge := range []float64{0, 2500, 3300} {
		c := rig.Cover(&s, ridge)
		near(t, "needed", c.Needed, rig.Overall(&s)+400, 1e-9)
		near(t, "spare", c.Spare, ridge-rig.Overall(&s)-400, 1e-9)
		near(t, "ridge", c.Ridge, ridge, 0)
	}
}
