package rig_test

import (
	"errors"
	"math"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
	"slingloft/outline/rig"
)

func bed() design.Bed {
	return design.Bed{
		Span: 1440, HeadBar: 980, FootBar: 980, HeadValue: 420, ControlValue: 210,
		HeadTail: 150, FootTail: 150, HeadLeg: 820, FootLeg: 820,
		HeadRadius: 125, SeatRadius: 125, FootRadius: 125,
	}
}

func solve(t *testing.T, b design.Bed, l hung.Load) hung.Shape {
	t.Helper()
	s, err := hung.Solve(hung.Problem{Bed: b, Load: l})
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %.9g, want %.9g", what, got, want)
	}
}

// A load hung by two lines at α above the level pulls each with W / (2 sin α): the
// table of statics, T/W by angle, for 981 N.
func TestPullByAngle(t *testing.T) {
	for deg, want := range map[float64]float64{20: 1.461902, 25: 1.183101, 30: 1, 35: 0.8717234} {
		b := bed()
		b.Control, b.ControlValue = design.HeadAngle, design.ControlMeasure(deg*math.Pi/180)
		s := solve(t, b, hung.EvenLoad(981, -720, 720))
		p, err := rig.Between(&s, 5000, 450, 0.5)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "pull", p.Ends[hung.Head].Pull.N/981, want, 1e-6)
		near(t, "angle", p.Ends[hung.Foot].Angle*180/math.Pi, deg, 1e-6)
	}
	// 1 kgf is 9.80665 N, 1 lbf 4.4482216152605 N, both exact.
	p := rig.PullOf(4448.2216152605)
	near(t, "lbf", p.Lbf, 1000, 1e-9)
	near(t, "kgf", p.Kgf, 453.59237, 1e-9)
}

// The same table's level pulls, H/W = 1 / (2 tan α), at both hooks, and every height
// above the ground that stands under the bed's lowest point.
func TestHeights(t *testing.T) {
	for deg, want := range map[float64]float64{20: 1.373739, 25: 1.072253, 30: 0.8660254, 35: 0.7140740} {
		b := bed()
		b.Control, b.ControlValue = design.HeadAngle, design.ControlMeasure(deg*math.Pi/180)
		s := solve(t, b, hung.EvenLoad(981, -720, 720))
		p, err := rig.Between(&s, 5000, 450, 0.5)
		if err != nil {
			t.Fatal(err)
		}
		for e, end := range p.Ends {
			near(t, "level pull", end.Pull.N*math.Cos(end.Angle)/981, want, 1e-6)
			near(t, "apex", end.Apex, 450+s.Ends[e].ApexZ-rig.Lowest(&s), 1e-9)
			near(t, "hook", end.Hook, end.Apex+end.Run*math.Tan(deg*math.Pi/180), 1e-5)
		}
		near(t, "lowest", p.Lowest, 450, 0)
		near(t, "edge", p.Edge, 450+s.At(0).Z-rig.Lowest(&s), 1e-9)
	}
}

// One share of what the distance leaves over goes to the head, the rest to the foot.
func TestShare(t *testing.T) {
	s := solve(t, bed(), hung.EvenLoad(700, -720, 720))
	spare := 5000 - rig.Overall(&s)
	for _, share := range []float64{0, 0.3, 1} {
		p, err := rig.Between(&s, 5000, 450, share)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "head run", p.Ends[hung.Head].Run, share*spare, 1e-9)
		near(t, "foot run", p.Ends[hung.Foot].Run, (1-share)*spare, 1e-9)
	}
	// Hooks so unlike in height that no share levels them.
	b := bed()
	b.Lift = 0.2
	s = solve(t, b, hung.EvenLoad(700, -720, 720))
	if share, ok := level(&s, rig.Overall(&s)+100); ok {
		t.Errorf("a lifted head is levelled by a share of %g", share)
	}
}

// Where a distance and a height are both given, what is missing is told by the
// higher hook, whichever end it is at, and nothing where the height does.
func TestBeyond(t *testing.T) {
	for _, lift := range []quantity.Radians{-0.03, 0.03} {
		b := bed()
		b.Lift = lift
		s := solve(t, b, hung.EvenLoad(700, -720, 720))
		bare, ok, err := rig.Of(&s, design.Hang{Bed: 450, Distance: 4800})
		if !ok || err != nil {
			t.Fatal(err)
		}
		near(t, "no height given", bare.Beyond, 0, 0)
		head, foot := bare.Ends[hung.Head].Hook, bare.Ends[hung.Foot].Hook
		if (head > foot) != (lift > 0) {
			t.Fatalf("lift %g: hooks at %g and %g", lift, head, foot)
		}
		for _, over := range []float64{-100, 0, 5, 250} {
			p, _, err := rig.Of(&s, design.Hang{Bed: 450, Distance: 4800, Height: max(head, foot) - over})
			if err != nil {
				t.Fatal(err)
			}
			near(t, "beyond", p.Beyond, max(0, over), 1e-9)
		}
	}
	s := solve(t, bed(), hung.EvenLoad(700, -720, 720))
	if p, ok, err := rig.Of(&s, design.Hang{Bed: 450, Distance: 1000, Height: 100}); ok || err == nil || p.Beyond != 0 {
		t.Errorf("%+v, %v, %v", p, ok, err)
	}
	for _, distance := range []float64{math.NaN(), math.Inf(1), rig.Overall(&s) - 1e-6} {
		if _, err := rig.Between(&s, distance, 450, 0.5); err == nil {
			t.Errorf("a distance of %g was accepted", distance)
		}
	}
}

// The hang line reaches the hook along its own slope; by height and by distance
// give the same place.
func TestPlace(t *testing.T) {
	b := bed()
	b.FootBar, b.FootLeg, b.Lift = 880, 700, 0.02
	s := solve(t, b, hung.SleeperLoad(design.Sleeper{Stature: 1700, Mass: 80}, -840))
	p, err := rig.Between(&s, 4800, 430, 0.5)
	if err != nil {
		t.Fatal(err)
	}
	runs := 0.0
	for _, e := range p.Ends {
		near(t, "rise", e.Hook-e.Apex, e.Line*math.Sin(e.Angle), 1e-9)
		runs += e.Run
	}
	near(t, "sum", runs+rig.Overall(&s), 4800, 1e-9)
	near(t, "head above foot", p.HeadAbove, p.Ends[0].Hook-p.Ends[1].Hook, 0)
	top := max(p.Ends[0].Hook, p.Ends[1].Hook)
	q, err := rig.Under(&s, top, 430)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "distance from height", q.Distance, 4800, 1e-6)
	share, ok := level(&s, 4800)
	if p, err = rig.Between(&s, 4800, 430, share); err != nil || !ok {
		t.Fatal(share, ok, err)
	}
	near(t, "level hooks", p.HeadAbove, 0, 1e-9)
	// Vertical equilibrium: both pulls carry the sleeper.
	v := p.Ends[0].Pull.N*math.Sin(p.Ends[0].Angle) + p.Ends[1].Pull.N*math.Sin(p.Ends[1].Angle)
	near(t, "weight", v, 80*hung.Gravity, 1e-6)
	// With the foot end lower, the lowest point is the foot tail's end.
	_, foot := s.TailEnds()
	near(t, "lowest", rig.Lowest(&s), -foot*math.Tan(0.02), 1e-12)
}

func TestOf(t *testing.T) {
	s := solve(t, bed(), hung.EvenLoad(700, -720, 720))
	if _, ok, err := rig.Of(&s, design.Hang{Bed: 450}); ok || err != nil {
		t.Errorf("neither given: ok %v, %v", ok, err)
	}
	p, ok, err := rig.Of(&s, design.Hang{Bed: 450, Distance: 4800, Height: 1200})
	if !ok || err != nil {
		t.Fatal(err)
	}
	near(t, "beyond", p.Beyond, p.Ends[0].Hook-1200, 1e-9)
	for key, h := range map[design.Key]design.Hang{
		"hang.distance": {Bed: 450, Distance: 2000}, "hang.height": {Bed: 450, Height: 700},
	} {
		_, ok, err := rig.Of(&s, h)
		var bad *hung.Impossible
		if ok || !errors.As(err, &bad) || bad.Key != key {
			t.Errorf("%+v: ok %v, %v", h, ok, err)
			continue
		}
		if key == "hang.distance" {
			h.Distance = bad.Limit
		} else {
			h.Height = bad.Limit
		}
		if _, ok, err := rig.Of(&s, h); !ok {
			t.Errorf("the limit of %s does not do: %v", key, err)
		}
	}
}

func TestSweep(t *testing.T) {
	s := solve(t, bed(), hung.EvenLoad(700, -720, 720))
	rows := rig.Sweep(&s, 2000, 6000, 450, 8)
	if len(rows) < 6 || rows[0].Distance < rig.Overall(&s) {
		t.Fatalf("%d rows from %g", len(rows), rows[0].Distance)
	}
	for i := 1; i < len(rows); i++ {
		rise := rows[i].Ends[0].Hook - rows[i-1].Ends[0].Hook
		near(t, "step", rise, 250*s.Ends[0].Slope, 1e-9)
	}
	c := rig.Cover(&s, 3300)
	near(t, "shelter", c.Spare, 3300-rig.Overall(&s)-2*rig.Overhang, 1e-9)
}

// The mean of the survey's men and women lies half its depth up; the line through
// two level apexes is as high as they are.
func TestSteadiness(t *testing.T) {
	back, side := rig.CentreHeight(design.Sleeper{Stature: 1692.35, Mass: 76.64})
	near(t, "back", back, 244.975/2, 1e-6)
	near(t, "side", side, 480.35/2, 1e-6)
	if _, side = rig.CentreHeight(design.Sleeper{Stature: 1700, Mass: 80, Shoulders: 500}); side != 250 {
		t.Errorf("side %g, want half the given breadth", side)
	}
	s := solve(t, bed(), hung.EvenLoad(700, -720, 720))
	r := rig.Steadiness(&s, design.Sleeper{Stature: 1692.35, Mass: 76.64})
	near(t, "hooks", r.Hooks, s.Ends[0].ApexZ, 1e-9)
	near(t, "on the back", r.Back, s.Ends[0].ApexZ-244.975/2, 1e-6)
}

// Level anchors can be asked for where their distance is given; level apexes are
// another bed, whose anchors differ.
func TestLevelAnchors(t *testing.T) {
	d := design.Design{Sleeper: design.Sleeper{Stature: 1680, Mass: 74, Crown: -80}}
	d.Bed = design.Bed{
		Span: 1440, HeadBar: 960, FootBar: 860, HeadValue: 420, ControlValue: 205, Second: design.LevelHooks,
		HeadTail: 150, FootTail: 170, HeadLeg: 820, FootLeg: 760,
		HeadRadius: 125, SeatRadius: 125, FootRadius: 125,
	}
	const distance = 4600
	for _, row := range []struct{ anchors float64 }{{0}, {distance}} {
		p := hung.ProblemOf(d)
		p.Anchors = row.anchors
		s, err := hung.Solve(p)
		if err != nil {
			t.Fatal(err)
		}
		place, err := rig.Between(&s, distance, 400, 0.5)
		if err != nil {
			t.Fatal(err)
		}
		anchors, apexes := place.HeadAbove, place.ApexAbove()
		if level := anchors; row.anchors > 0 && math.Abs(level) > 1e-6 {
			t.Errorf("anchors asked level differ by %g mm", level)
		}
		if level := apexes; row.anchors == 0 && math.Abs(level) > 1e-6 {
			t.Errorf("apexes asked level differ by %g mm", level)
		}
		if math.Abs(anchors-apexes) < 1 {
			t.Errorf("anchors differ by %g mm and apexes by %g: no difference to be told", anchors, apexes)
		}
	}
}

// level returns the share for [rig.Between] with which both hooks stand at the same
// height, and whether there is one between 0 and 1.
func level(s *hung.Shape, distance float64) (share float64, ok bool) {
	spare := distance - rig.Overall(s)
	h, f := s.Ends[hung.Head], s.Ends[hung.Foot]
	share = (f.ApexZ - h.ApexZ + spare*f.Slope) / (spare * (h.Slope + f.Slope))
	return share, share >= 0 && share <= 1
}
