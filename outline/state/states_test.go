package state_test

import (
	"math"
	"reflect"
	"testing"

	"slingloft/outline/finished"
	"slingloft/outline/hung"
	"slingloft/outline/state"
)

// A member carries what its own end and, of two, the fuller side does.
func TestMemberLoads(t *testing.T) {
	l := finished.Loads{Line: [2]float64{1, 2}, Leg: [2][2]float64{{3, 4}, {6, 5}}, Side: [2]float64{7, 8}, Bar: [2]float64{9, 10}, Cloth: 11}
	for m, want := range map[state.Member]float64{
		state.HeadLine: 1, state.FootLine: 2, state.HeadLeg: 4, state.FootLeg: 6, state.SideCord: 8,
		state.HeadBar: 9, state.FootBar: 10, state.Cloth: 11,
	} {
		near(t, memberName(m), m.Load(l), want, 0)
	}
	l.Leg, l.Side = [2][2]float64{{4, 3}, {5, 6}}, [2]float64{8, 7}
	for m, want := range map[state.Member]float64{state.HeadLeg: 4, state.FootLeg: 6, state.SideCord: 8} {
		near(t, memberName(m)+", the other side", m.Load(l), want, 0)
	}
	for e, want := range map[hung.End][3]state.Member{
		hung.Head: {state.HeadLine, state.HeadLeg, state.HeadBar}, hung.Foot: {state.FootLine, state.FootLeg, state.FootBar},
	} {
		if got := [3]state.Member{state.LineOf(e), state.LegOf(e), state.BarOf(e)}; got != want {
			t.Errorf("%v: %v, want %v", e, got, want)
		}
	}
}

// The states are those that are named, in that order, each with its own weight at its own
// place: hung by itself it is found to carry the same.
func TestStatesOneByOne(t *testing.T) {
	h, p := bed(t, nil)
	quarter := h.Shape.Problem.Bed.Span / 4
	_, lies := p.Load.Total()
	sits := func(x float64) finished.Weight { return finished.Weight{Load: p.Seated(x), Centre: p.Back} }
	aside := func(a float64) finished.Weight { return finished.Weight{Load: p.Load, Centre: p.Side, Aside: a} }
	states := state.Of(h, p)
	want := []struct {
		kind    state.Kind
		x, seat float64
		weight  finished.Weight
	}{
		{state.Lying, lies, 0, finished.Weight{Load: p.Load, Centre: p.Back}},
		{state.Sitting, 0, p.Seat, sits(0)}, {state.Sitting, -quarter, p.Seat, sits(-quarter)}, {state.Sitting, quarter, p.Seat, sits(quarter)},
		{state.GettingIn, 0, p.Seat, finished.Weight{}},
		{state.Edge, lies, 0, aside(state.AtEdge)}, {state.Edge, lies, 0, aside(p.Side)},
	}
	if len(states) != len(want) {
		t.Fatalf("%d states, want %d", len(states), len(want))
	}
	for i, w := range want {
		s := states[i]
		if s.Kind != w.kind || s.Seat != w.seat || s.Aside != w.weight.Aside || s.Extreme != (i == len(want)-1) || s.Bound != nil {
			t.Errorf("state %d: %+v, want %+v", i, s, w)
		}
		near(t, "place", s.X, w.x, 1e-9)
		if s.Kind == state.GettingIn {
			if s.Share != 1 || s.Loads.Cloth < p.Weight/p.Seat {
				t.Errorf("getting in one cord carries %g, the cloth %g N/mm", s.Share, s.Loads.Cloth)
			}
			continue
		}
		pose, err := h.Hang(finished.Change{}, w.weight)
		if err != nil {
			t.Fatal(err)
		}
		for m := range state.Member(state.Members) {
			near(t, s.Kind.String()+", "+memberName(m), m.Load(s.Loads), m.Load(pose.Loads()), 1e-5*m.Load(pose.Loads()))
		}
		near(t, "turn", s.Turn, pose.Turn, 1e-6)
		near(t, "share", s.Share, pose.Share, 1e-6)
		near(t, "floor", s.Level.Height, pose.Level.Height, 1e-4)
		for e := range s.Hang {
			near(t, "hang", s.Hang[e], pose.Hang(hung.End(e)), 1e-6)
		}
	}
	if judged := state.Judged(h, p); !reflect.DeepEqual(judged, states[:len(states)-1]) {
		t.Errorf("judged: %+v", judged)
	}
	if up := state.SitUp(h, p); !reflect.DeepEqual(up, states[1]) {
		t.Errorf("sitting up %+v, among all %+v", up, states[1])
	}
}

// What is not found at rest is bounded, and what is said of it besides is only its kind,
// place and seat: of one who sits or lies so heavily that no bed hangs, or who lies so
// high that it turns over.
func TestWhatIsNotFoundIsBounded(t *testing.T) {
	h, p := bed(t, nil)
	heavy, high, heap := p, p, p
	heavy.Weight = 1e8
	high.Side = 900
	heap.Load = hung.EvenLoad(1e8, -500, 500)
	for name, r := range map[string]struct {
		who     state.Person
		bounded [7]bool
	}{
		"heavy": {heavy, [7]bool{1: true, 2: true, 3: true, 4: true}}, "high": {high, [7]bool{5: true}},
		"a heap": {heap, [7]bool{0: true, 5: true}},
	} {
		for i, s := range state.Judged(h, r.who) {
			if (s.Bound != nil) != r.bounded[i] {
				t.Errorf("%s, %v at %g: bound %v", name, s.Kind, s.X, s.Bound)
			}
			if s.Bound == nil {
				continue
			}
			want := state.BoundOf(h, r.who, i)
			want.Bound = s.Bound
			if i > 0 && i < 5 {
				want.Seat = r.who.Seat
			}
			if !reflect.DeepEqual(s, want) {
				t.Errorf("%s: %+v, want %+v", name, s, want)
			}
		}
	}
	want := state.BoundOf(h, heavy, 1)
	want.Seat = p.Seat
	if up := state.SitUp(h, heavy); up.Bound == nil || up.Seat != p.Seat || up.Loads != want.Loads || up.Kind != want.Kind {
		t.Errorf("sitting up: %+v, want %+v", up, want)
	}
}

// How steady a bed is goes by its turn: stable below 20°, rocking below 30°, unsteady
// from there on, and where it turns over or is not even at rest before. A higher centre
// of mass turns it further.
func TestDegreesOfSteadiness(t *testing.T) {
	h, p := bed(t, nil)
	seen := map[state.Steadiness]int{}
	last := 0.0
	for _, height := range []float64{60, 120, 150, 180, 250, 300} {
		p.Back = height
		r, err := state.RollOf(h, p)
		if err != nil {
			t.Fatal(err)
		}
		deg := r.Turn * 180 / math.Pi
		want := state.Stable
		if deg >= 30 {
			want = state.Unsteady
		} else if deg >= 20 {
			want = state.Rocks
		}
		if r.How != want || r.Over || r.Aside != 100 || r.Turn <= last || r.Share <= 0.5 || r.Share > 1 {
			t.Errorf("%g mm high: %+v, want %v and more than %g", height, r, want, last)
		}
		last = r.Turn
		seen[r.How]++
	}
	if len(seen) != 3 {
		t.Errorf("degrees seen: %v", seen)
	}
	p.Back = 350
	if r, err := state.RollOf(h, p); err != nil || !r.Over || r.How != state.Unsteady || r.Turn <= 0 || r.Share != 0 || r.Aside != 100 {
		t.Errorf("turns over: %+v, %v", r, err)
	}
	p.Back = 600
	if r, err := state.RollOf(h, p); err == nil {
		t.Errorf("over before anybody moves: %+v", r)
	}
}

// What a bed gives is the rise of its bottom for less weight on the same seat, whatever
// little that is.
func TestGiveOverTheSeat(t *testing.T) {
	h, p := bed(t, nil)
	give := state.GiveOf(h, p).Length
	for _, part := range []float64{0.02, 0.05} {
		var sinks [2]float64
		for i, times := range [2]float64{1 - part, 1 + part} {
			pose, err := h.Hang(finished.Change{}, finished.Weight{Load: hung.EvenLoad(times*p.Weight, -p.Seat/2, p.Seat/2), Centre: p.Back})
			if err != nil {
				t.Fatal(err)
			}
			sinks[i] = pose.Level.Height
		}
		near(t, "gives", give, (sinks[0]-sinks[1])/2/part, 2e-3*give)
	}
}
