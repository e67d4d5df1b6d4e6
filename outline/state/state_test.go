package state_test

import (
	"math"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
	"slingloft/outline/state"
)

// bed returns a bed of the ordinary kind, made of what stretches.
func bed(t testing.TB, change func(*design.Design)) (finished.Hammock, state.Person) {
	t.Helper()
	var d design.Design
	d.Sleeper = design.Sleeper{Stature: 1680, Mass: 74, Crown: -60, Shoulders: 455}
	d.Bed = design.Bed{
		Span: 1500, HeadBar: 900, FootBar: 820, HeadValue: 410, ControlValue: 205,
		HeadTail: 160, FootTail: 180, HeadLeg: 880, FootLeg: 840,
		HeadRadius: 140, SeatRadius: 140, FootRadius: 140,
	}
	d.Bar = design.Bar{Outer: 20, Wall: 1.5, Density: 2700}
	d.Cloth.ArealDensity = 70
	if change != nil {
		change(&d)
	}
	s, err := hung.Solve(hung.ProblemOf(d))
	if err != nil {
		t.Fatal(err)
	}
	h := finished.Make(finished.Made{Shape: &s, Lines: [2]float64{900, 900}, SideEA: 240e3, LegEA: 240e3, LineEA: 150e3, Weft: 60})
	return h, state.PersonOf(d.Sleeper, s.Problem.Load)
}

// beds are five ordinary ones.
func beds() map[string]func(*design.Design) {
	return map[string]func(*design.Design){
		"paddler": nil,
		"long":    func(d *design.Design) { d.Bed.Span, d.Bed.ControlValue, d.Sleeper.Stature = 1640, 235, 1850 },
		"wide":    func(d *design.Design) { d.Bed.HeadBar, d.Bed.FootBar, d.Sleeper.Mass = 1000, 920, 95 },
		"alike":   func(d *design.Design) { d.Bed.HeadBar, d.Bed.FootBar, d.Bed.FootLeg = 900, 900, 880 },
		"deep":    func(d *design.Design) { d.Bed.HeadValue = 450 },
	}
}

func near(t testing.TB, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %.9g, want %.9g", what, got, want)
	}
}

// In every state of rest the hang lines hold the weight: pull times the sine of
// their angle, both ends together (W/(2 sin α) where they are alike).
func TestLinesHoldTheWeight(t *testing.T) {
	h, p := bed(t, nil)
	for _, s := range state.Of(h, p) {
		if s.Bound != nil {
			t.Errorf("%v at %.0f mm: %v", s.Kind, s.X, s.Bound)
		}
		if s.Kind == state.GettingIn {
			continue
		}
		up := 0.0
		for e := range 2 {
			up += s.Loads.Line[e] * math.Sin(s.Hang[e])
		}
		near(t, s.Kind.String(), up, p.Weight, 0.02*p.Weight)
		if s.Share < 0.5-1e-6 || s.Share > 1 {
			t.Errorf("%v: the fuller cord carries %g", s.Kind, s.Share)
		}
	}
}

// governs returns the state that loads each member most, extremes left out. There has
// to be one that is none.
func governs(states []state.State) [state.Members]state.State {
	var out [state.Members]state.State
	var found [state.Members]bool
	for _, s := range states {
		if s.Extreme {
			continue
		}
		for m := range state.Members {
			if !found[m] || state.Member(m).Load(s.Loads) > state.Member(m).Load(out[m].Loads) {
				out[m], found[m] = s, true
			}
		}
	}
	return out
}

// Sitting up pulls the lines of ordinary beds by some per cent more than lying, 3 to
// 15, and one who gets in pulls one cord more than any other state: less than all
// the weight of a bed without bars would.
func TestWhatGoverns(t *testing.T) {
	for name, change := range beds() {
		h, p := bed(t, change)
		states := state.Of(h, p)
		g := governs(states)
		for _, m := range []state.Member{state.HeadLine, state.FootLine} {
			if g[m].Kind != state.Sitting {
				t.Errorf("%s: member %d governed by %v", name, m, g[m].Kind)
			}
			more := m.Load(g[m].Loads) / m.Load(states[0].Loads)
			if more < 1.03 || more > 1.15 {
				t.Errorf("%s: sitting pulls line %d by %.3f of lying", name, m, more)
			}
		}
		for _, m := range []state.Member{state.SideCord, state.Cloth} {
			if g[m].Kind != state.GettingIn {
				t.Errorf("%s: member %d governed by %v", name, m, g[m].Kind)
			}
		}
		if r := state.SideCord.Load(g[state.SideCord].Loads) / states[0].Loads.Line[0]; r > 1.1 {
			t.Errorf("%s: the side cord getting in carries %.2f of a hang line", name, r)
		}
	}
}

// Ordinary beds turn by 12 to 22° for a weight on the back 100 mm aside, and by less
// than twice that on the side; a shallow one with short legs is not steady.
func TestRoll(t *testing.T) {
	for name, change := range beds() {
		h, p := bed(t, change)
		r, err := state.RollOf(h, p)
		if err != nil {
			t.Fatal(err)
		}
		deg := r.Turn * 180 / math.Pi
		t.Logf("%s: %.1f°, %.3f of the weight", name, deg, r.Share)
		if deg < 12 || deg > 22 || r.Over {
			t.Errorf("%s: turns by %.1f°", name, deg)
		}
		if want := deg < 20; want != (r.How == state.Stable) {
			t.Errorf("%s: %.1f° is %v", name, deg, r.How)
		}
	}
	h, p := bed(t, func(d *design.Design) { d.Bed.HeadValue, d.Bed.HeadLeg, d.Bed.FootLeg = 270, 700, 700 })
	if r, err := state.RollOf(h, p); err != nil || r.How != state.Unsteady {
		t.Errorf("a shallow bed: %+v, %v", r, err)
	}
}

// Another sleeper finds another bed; heavier is not lower everywhere.
func TestGuests(t *testing.T) {
	h, _ := bed(t, nil)
	for _, who := range []design.Sleeper{{Stature: 1500, Mass: 45, Crown: -40}, {Stature: 1830, Mass: 120, Crown: -100, Lies: design.OnSide}} {
		s, err := state.Lie(h, state.PersonOf(who, hung.LyingLoad(h.Shape.Problem.Bed, who)))
		if err != nil {
			t.Fatal(err)
		}
		if s.Level.Worst() < 0.5 || s.Level.Worst() > 80 {
			t.Errorf("%+v finds %+v", who, s.Level)
		}
		near(t, "turn", s.Turn, 0, 1e-6)
	}
}

// What is not found is bounded: never below what is.
func TestBounds(t *testing.T) {
	for name, change := range beds() {
		h, p := bed(t, change)
		for i, s := range state.Of(h, p) {
			b := state.BoundOf(h, p, i)
			for m := range state.Member(state.Members) {
				// A bed turns more than a rigid one would, which the edge's bound takes it for.
				slack := 1.001
				if s.Kind == state.Edge {
					slack = 1.3
				}
				if got, most := m.Load(s.Loads), m.Load(b.Loads); got > slack*most {
					t.Errorf("%s, %v at %.0f: member %d carries %.1f, the bound is %.1f", name, s.Kind, s.X, m, got, most)
				}
			}
		}
	}
}

func BenchmarkOf(b *testing.B) {
	h, p := bed(b, nil)
	for b.Loop() {
		state.Of(h, p)
	}
}

// Two cords drawn straight from the apexes to a weight hold it: where the apexes are
// level and the weight is midway each pulls W L / (2 h) with h = √(L² − a²); elsewhere
// both pulls together are the weight, at the place that both lengths leave it.
func TestStraightToTheSeat(t *testing.T) {
	const weight = 700
	h, _ := bed(t, beds()["alike"])
	alike := func(d *design.Design) {
		beds()["alike"](d)
		d.Bed.HeadTail, d.Bed.FootTail, d.Load.Model = 170, 170, design.Even
	}
	h, _ = bed(t, alike)
	s := h.Shape
	a := (s.Ends[hung.Foot].ApexX - s.Ends[hung.Head].ApexX) / 2
	long := s.Ends[hung.Head].Leg + s.SideArc/2
	for e, pull := range state.StraightTo(h, 0, weight) {
		near(t, hung.End(e).String()+" pull", pull, weight*long/(2*math.Sqrt(long*long-a*a)), 1e-4)
	}
	for name, change := range beds() {
		h, _ := bed(t, change)
		s := h.Shape
		half := s.Problem.Bed.Span / 2
		for _, x := range []float64{-half / 2, 0, half / 3} {
			head, foot := s.Ends[hung.Head], s.Ends[hung.Foot]
			left, right := head.Leg+s.Arc(-half, x), foot.Leg+s.Arc(x, half)
			// The place by halving the angle at which the left cord leaves its apex.
			place := func(angle float64) (dx, dz float64) { return left * math.Cos(angle), -left * math.Sin(angle) }
			steep, flat := math.Pi/2, math.Atan2(head.ApexZ-foot.ApexZ, foot.ApexX-head.ApexX)
			for range 100 {
				mid := (steep + flat) / 2
				dx, dz := place(mid)
				if math.Hypot(foot.ApexX-head.ApexX-dx, foot.ApexZ-head.ApexZ-dz) > right {
					steep = mid
				} else {
					flat = mid
				}
			}
			dx, dz := place(steep)
			pull := state.StraightTo(h, x, weight)
			ux, uz := (foot.ApexX-head.ApexX-dx)/right, (foot.ApexZ-head.ApexZ-dz)/right
			near(t, name+", sideways", -pull[0]*dx/left+pull[1]*ux, 0, 1e-6)
			near(t, name+", upwards", -pull[0]*dz/left+pull[1]*uz, weight, 1e-6)
		}
	}
}

// One who sits weighs on a seat's length about the place.
func TestSeat(t *testing.T) {
	_, p := bed(t, nil)
	force, middle := p.Seated(120).Total()
	near(t, "force", force, p.Weight, 1e-9)
	near(t, "middle", middle, 120, 1e-9)
	near(t, "just inside", p.Seated(120).At(120-p.Seat/2+1), p.Weight/p.Seat, 1e-9)
	near(t, "just outside", p.Seated(120).At(120-p.Seat/2-1), 0, 0)
}
