package fit_test

import (
	"fmt"
	"math"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/fit"
	"slingloft/outline/hung"
	"slingloft/outline/room"
)

// reasonOf returns the reason for the value of a key.
func reasonOf(t *testing.T, got fit.Proposal, key design.Key) fit.Reason {
	t.Helper()
	for _, r := range got.Reasons {
		if r.Key == key {
			return r
		}
	}
	t.Fatalf("no reason for %s among %+v", key, got.Reasons)
	return fit.Reason{}
}

// withBar returns the proposed bed with another head bar, and what goes by it.
func withBar(p fit.Person, got fit.Proposal, bar float64) design.Bed {
	b := got.Bed
	foot := 0.9
	if p.OnSide {
		foot = 1
	}
	whole := func(v float64) float64 { return math.Round(v/p.Step) * p.Step }
	b.HeadBar, b.FootBar = bar, whole(foot*bar)
	b.HeadLeg, b.FootLeg = whole(0.98*b.HeadBar), whole(0.98*b.FootBar)
	return b
}

// besideArms returns what a bed leaves beside elbows, or knees, between its cords.
func besideArms(t *testing.T, p fit.Person, got fit.Proposal, b design.Bed) float64 {
	t.Helper()
	s, err := hung.Solve(hung.ProblemOf(design.Design{Sleeper: got.Sleeper, Bed: b}))
	if err != nil {
		t.Fatal(err)
	}
	part, lies := room.Elbows, design.OnBack
	if p.OnSide {
		part, lies = room.Knees, design.OnSide
	}
	x, body := room.Place(part, lies, got.Sleeper, b)
	return 2*s.At(x).Y - body.Breadth
}

// The head bar leaves a hand's breadth, 80 mm, beside elbows or knees, within 1.7 and 2.4
// shoulder breadths, and is at most one step longer than need be: two steps less leave less
// or are too short, and only at the upper bound is there less.
func TestHeadBarIsTheShortestWithRoom(t *testing.T) {
	const hand, shortest, longest = 80, 1.7, 2.4
	bounded := map[string]int{}
	for _, p := range []fit.Person{
		{Stature: 1700, Mass: 70, Step: 10}, {Stature: 1700, Mass: 70, Step: 10, OnSide: true}, {Stature: 1700, Mass: 70, Step: 1},
		{Stature: 1850, Mass: 95, Step: 25.4}, {Stature: 1580, Mass: 52, Step: 5, OnSide: true}, {Stature: 1930, Mass: 80, Step: 1, OnSide: true},
		{Stature: 1500, Mass: 45, Step: 1}, {Stature: 2000, Mass: 60, Shoulders: 420, Step: 1, OnSide: true},
		{Stature: 1200, Mass: 300, Shoulders: 540, Step: 1}, {Stature: 2300, Mass: 25, Shoulders: 460, Step: 1, OnSide: true},
	} {
		name := fmt.Sprintf("%+v", p)
		got, err := fit.Propose(p)
		if err != nil {
			t.Fatal(err)
		}
		bar, sh := got.Bed.HeadBar, got.Sleeper.Shoulders
		if b := withBar(p, got, bar); b != got.Bed {
			t.Errorf("%s: foot bar and legs do not go by the head bar: %+v, want %+v", name, got.Bed, b)
		}
		r := reasonOf(t, got, design.KeyBedHeadBar)
		if want := map[bool]fit.Why{false: fit.BarForElbows, true: fit.BarForKnees}[p.OnSide]; r.Why != want || r.Source != fit.Survey {
			t.Errorf("%s: %+v, want reason %v", name, r, want)
		}
		if spare := besideArms(t, p, got, got.Bed); math.Abs(spare-r.Part) > 1e-6 {
			t.Errorf("%s: %g mm beside the arms, said to be %g", name, spare, r.Part)
		}
		switch less := bar - 2*p.Step; {
		case r.Part < hand:
			bounded["longest"]++
			if bar < longest*sh-1e-6 || bar >= longest*sh+p.Step {
				t.Errorf("%s: only %g mm to spare with a bar of %g, which is not the longest of %g", name, r.Part, bar, longest*sh)
			}
		case less < shortest*sh:
			bounded["shortest"]++
			if bar < shortest*sh-1e-6 {
				t.Errorf("%s: bar of %g, the shortest is %g", name, bar, shortest*sh)
			}
		default:
			bounded["room"]++
			if spare := besideArms(t, p, got, withBar(p, got, less)); spare >= hand {
				t.Errorf("%s: a bar of %g leaves %g mm, %g was proposed", name, less, spare, bar)
			}
		}
	}
	for _, by := range []string{"longest", "shortest", "room"} {
		if bounded[by] == 0 {
			t.Errorf("no bar is bounded by %s", by)
		}
	}
}

// A bar that is at hand is taken where it is shorter than what would be proposed, in whole
// steps and no longer than it is, and everything that goes by the bar with it.
func TestBarAtHand(t *testing.T) {
	for _, side := range []bool{false, true} {
		p := fit.Person{Stature: 1700, Mass: 70, Step: 10, OnSide: side}
		free, err := fit.Propose(p)
		if err != nil {
			t.Fatal(err)
		}
		own := free.Bed.HeadBar
		for _, r := range []struct{ longest, want float64 }{
			{own + 500, own}, {own + 9, own}, {own, own}, {own - 1, own - 10}, {own - 10, own - 10}, {own - 95, own - 100},
		} {
			p.Longest = r.longest
			got, err := fit.Propose(p)
			if err != nil {
				t.Fatal(err)
			}
			if b := withBar(p, got, r.want); got.Bed != b {
				t.Errorf("%g mm at hand of %g: %+v, want %+v", r.longest, own, got.Bed, b)
			}
			why := reasonOf(t, got, design.KeyBedHeadBar)
			if taken := r.want < own; taken != (why.Why == fit.LongestAtHand) || taken != (why.Source == fit.Given) {
				t.Errorf("%g mm at hand of %g: reason %+v", r.longest, own, why)
			}
		}
	}
}

// What does not go by the bar: the round part, alike everywhere, from the shoulders; drop
// and side depth by how one sleeps, side depth from the span.
func TestSectionOfAPerson(t *testing.T) {
	for _, r := range []struct {
		side              bool
		drop, depth       float64
		dropWhy, footWhy  fit.Why
		shoulders, radius float64
	}{
		{false, 0.88, 0.137, fit.DropOnBack, fit.FootNarrower, 450, 135},
		{true, 0.82, 0.12, fit.DropOnSide, fit.FootAsHead, 500, 150},
	} {
		got, err := fit.Propose(fit.Person{Stature: 1750, Mass: 75, Shoulders: r.shoulders, OnSide: r.side, Step: 1})
		if err != nil {
			t.Fatal(err)
		}
		b := got.Bed
		if b.Head != design.Drop || b.Control != design.SideDepth || b.Second != design.SameWall {
			t.Errorf("the section is given by %v, %v and %v", b.Head, b.Control, b.Second)
		}
		for what, v := range map[string][2]float64{
			"drop": {b.HeadValue, r.drop * r.shoulders}, "side depth": {float64(b.ControlValue), r.depth * b.Span},
			"head radius": {b.HeadRadius, r.radius}, "seat radius": {b.SeatRadius, r.radius}, "foot radius": {b.FootRadius, r.radius},
		} {
			if math.Abs(v[0]-v[1]) > 0.5 {
				t.Errorf("on the side %v: %s %g, want %g", r.side, what, v[0], v[1])
			}
		}
		drop, foot := reasonOf(t, got, design.KeyBedHeadDrop).Why, reasonOf(t, got, design.KeyBedFootBar).Why
		if drop != r.dropWhy || foot != r.footWhy {
			t.Errorf("on the side %v: reasons %v and %v", r.side, drop, foot)
		}
	}
}
