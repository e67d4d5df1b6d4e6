package fit_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/design"
	"slingloft/outline/fit"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
	"slingloft/outline/rig"
	"slingloft/outline/room"
)

func solve(t rapid.TB, p fit.Person) (fit.Proposal, hung.Shape) {
	t.Helper()
	got, err := fit.Propose(p)
	if err != nil {
		t.Fatalf("%+v: %v", p, err)
	}
	d := design.Design{Sleeper: got.Sleeper, Bed: got.Bed}
	s, err := hung.Solve(hung.ProblemOf(d))
	if err != nil {
		t.Fatalf("%+v: %v", p, err)
	}
	return got, s
}

// hasRoom holds what is said of the room beside elbows or knees against the shape, and the
// bar against a hand's breadth where it is not as long or short as bars are proposed.
func hasRoom(t *rapid.T, p fit.Person, got fit.Proposal, s *hung.Shape) {
	part, lies := room.Elbows, design.OnBack
	if p.OnSide {
		part, lies = room.Knees, design.OnSide
	}
	for _, r := range got.Reasons {
		if r.Why != fit.BarForElbows && r.Why != fit.BarForKnees {
			continue
		}
		x, body := room.Place(part, lies, got.Sleeper, got.Bed)
		if spare := 2*s.At(x).Y - body.Breadth; math.Abs(spare-r.Part) > 1e-6 {
			t.Fatalf("%+v: %g mm to spare, said to be %g", p, spare, r.Part)
		}
		part := r.Value / got.Sleeper.Shoulders
		if r.Part < 80 && part < 2.39 || r.Part > 95 && part > 1.73 {
			t.Fatalf("%+v: %g mm to spare with a bar of %g shoulders", p, r.Part, part)
		}
	}
}

// A bed is proposed for everyone, hangs, carries the whole sleeper on its cloth,
// keeps steady and rises at both hooks.
func TestEveryoneHangs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := fit.Person{
			Stature: rapid.Float64Range(1400, 2050).Draw(t, "stature"),
			Mass:    quantity.Kilograms(rapid.Float64Range(40, 150).Draw(t, "mass")),
			OnSide:  rapid.Bool().Draw(t, "on side"),
		}
		if rapid.Bool().Draw(t, "measured") {
			p.Shoulders = p.Stature * rapid.Float64Range(0.21, 0.38).Draw(t, "shoulders")
		}
		got, s := solve(t, p)
		hasRoom(t, p, got, &s)
		up := s.Ends[hung.Head].Vertical + s.Ends[hung.Foot].Vertical
		if math.Abs(up-float64(p.Mass.Weight())) > 1e-3*up {
			t.Fatalf("%+v: hooks carry %g N of %g", p, up, float64(p.Mass.Weight()))
		}
		if r := rig.Steadiness(&s, got.Sleeper); r.Back <= 0 || r.Side <= 0 {
			t.Fatalf("%+v: the centre of mass lies above the line through the apexes: %+v", p, r)
		}
		for e, end := range s.Ends {
			if deg := math.Atan(end.Slope) * 180 / math.Pi; deg < 10 || deg > 45 {
				t.Fatalf("%+v: end %d hangs at %.0f°", p, e, deg)
			}
			if wall := end.Section.Wall * 180 / math.Pi; wall < 30 || wall > 65 {
				t.Fatalf("%+v: walls at %.0f°", p, wall)
			}
		}
	})
}

// The corners of the range, and the figures in plain sight.
func TestCorners(t *testing.T) {
	for _, p := range []fit.Person{
		{Stature: 1400, Mass: 40}, {Stature: 1400, Mass: 150}, {Stature: 2050, Mass: 40}, {Stature: 2050, Mass: 150, OnSide: true},
		{Stature: 1200, Mass: 25}, {Stature: 2300, Mass: 300}, {Stature: 1200, Mass: 300, OnSide: true}, {Stature: 1756, Mass: 85.5},
		{Stature: 1628, Mass: 67.8, OnSide: true},
	} {
		got, s := solve(t, p)
		e := s.Ends[hung.Head]
		t.Logf("%.0f mm %.0f kg: span %.0f bars %.0f %.0f drop %.0f depth %.0f R %.0f tails %.0f legs %.0f | "+
			"wall %.0f° hang %.0f° girth %.0f mid %.0f H %.0f bar %.0f N",
			p.Stature, p.Mass, got.Bed.Span, got.Bed.HeadBar, got.Bed.FootBar,
			got.Bed.HeadValue, got.Bed.ControlValue, got.Bed.HeadRadius, got.Bed.HeadTail, got.Bed.HeadLeg,
			e.Section.Wall*180/math.Pi, math.Atan(e.Slope)*180/math.Pi, e.Section.Girth(), s.At(0).Section.Girth(), s.Thrust, e.BarCompression)
		for _, r := range got.Reasons {
			if r.Key == "" || math.Mod(r.Value, 10) != 0 {
				t.Errorf("reason %+v", r)
			}
		}
	}
}

// The survey's mean body gets the survey's mean shoulders.
func TestMeanBody(t *testing.T) {
	got, err := fit.Propose(fit.Person{Stature: (1756.2 + 1628.5) / 2, Mass: (85.52 + 67.76) / 2, Step: 0.01})
	if err != nil {
		t.Fatal(err)
	}
	if want := (510.4 + 450.3) / 2; math.Abs(got.Sleeper.Shoulders-want) > 0.01 {
		t.Errorf("shoulders %g, want %g", got.Sleeper.Shoulders, want)
	}
	given, err := fit.Propose(fit.Person{Stature: 1700, Mass: 70, Shoulders: 437.5})
	if err != nil || given.Sleeper.Shoulders != 437.5 || given.Reasons[0].Source != fit.Given {
		t.Errorf("a given breadth becomes %g, %v", given.Sleeper.Shoulders, err)
	}
}

func TestOutOfRange(t *testing.T) {
	for key, p := range map[design.Key]fit.Person{
		"sleeper.stature":   {Stature: 900, Mass: 70},
		"sleeper.mass":      {Stature: 1700, Mass: 310},
		"sleeper.shoulders": {Stature: 1700, Mass: 70, Shoulders: 900},
	} {
		_, err := fit.Propose(p)
		var bad *hung.Impossible
		if !errors.As(err, &bad) || bad.Key != key {
			t.Errorf("%+v: %v", p, err)
		}
	}
	if _, err := fit.Propose(fit.Person{Stature: math.NaN(), Mass: 70}); err == nil {
		t.Error("no fault of a stature that is not a number")
	}
}

// One who is either as light or as small as a child may be one.
func TestChild(t *testing.T) {
	for p, want := range map[fit.Person]bool{
		{Stature: 1700, Mass: 39.9}: true, {Stature: 1399, Mass: 70}: true, {Stature: 1300, Mass: 30}: true, {Stature: 1400, Mass: 40}: false,
	} {
		if p.Child() != want {
			t.Errorf("%+v: %v", p, p.Child())
		}
	}
}
