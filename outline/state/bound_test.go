package state_test

import (
	"math"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
	"slingloft/outline/state"
)

// unlike are beds whose ends differ in bars, legs, tails and height.
func unlike() map[string]func(*design.Design) {
	out := beds()
	out["lifted"] = func(d *design.Design) { d.Bed.Lift, d.Bed.HeadLeg, d.Bed.FootTail = 0.03, 760, 250 }
	out["narrow feet"] = func(d *design.Design) { d.Bed.FootBar, d.Bed.FootLeg, d.Bed.HeadTail = 620, 600, 220 }
	out["even load"] = func(d *design.Design) { d.Load.Model = design.Even }
	return out
}

// steep is a bed whose cords, drawn straight to a seat, pull more than the lines of one who
// lies, and the more along its tails than at the tips and apexes.
func steep(d *design.Design) { d.Bed.ControlValue, d.Bed.HeadLeg, d.Bed.FootLeg = 300, 1500, 1500 }

// rigid returns a bed of what does not stretch, which lies as it is designed.
func rigid(t *testing.T, change func(*design.Design)) (finished.Hammock, state.Person) {
	t.Helper()
	h, p := bed(t, change)
	return finished.Make(finished.Made{Shape: h.Shape, Lines: h.Lines}), p
}

// What stands for lying where the made bed is not found is what a bed that keeps its
// lengths is found to carry, part by part, and as it hangs.
func TestDesignedIsLying(t *testing.T) {
	for name, change := range unlike() {
		h, p := rigid(t, change)
		want, err := state.Lie(h, p)
		if err != nil {
			t.Fatal(err)
		}
		got := state.BoundOf(h, p, 0)
		for m := range state.Member(state.Members) {
			near(t, name+", "+memberName(m), m.Load(got.Loads), m.Load(want.Loads), 2e-3*m.Load(want.Loads))
		}
		if got.Bound == nil || got.Kind != state.Lying || got.Share != 0.5 {
			t.Errorf("%s: %+v", name, got)
		}
		near(t, name+", place", got.X, want.X, 1e-9)
		for e := range 2 {
			near(t, name+", hang", got.Hang[e], want.Hang[e], 1e-4)
			near(t, name+", both legs alike", got.Loads.Leg[e][0], got.Loads.Leg[e][1], 0)
		}
		near(t, name+", both cords alike", got.Loads.Side[0], got.Loads.Side[1], 0)
	}
}

// Legs are held to the largest pull anywhere from the tip to the apex, side cords to that
// anywhere between the tips: found here at a thousand places each.
func TestDesignedCords(t *testing.T) {
	all := unlike()
	all["steep, long legs"] = steep
	for name, change := range all {
		h, p := rigid(t, change)
		s := h.Shape
		half := s.Problem.Bed.Span / 2
		most := func(from, to float64) float64 {
			out := 0.0
			for i := 1; i < 1000; i++ {
				out = max(out, s.At(from+(to-from)*float64(i)/1000).Tension)
			}
			return out
		}
		got := state.BoundOf(h, p, 0).Loads
		near(t, name+", side cord", got.Side[0], most(-half, half), 2e-3*got.Side[0])
		near(t, name+", head leg", got.Leg[0][0], most(s.Ends[hung.Head].ApexX, -half), 2e-3*got.Leg[0][0])
		near(t, name+", foot leg", got.Leg[1][0], most(half, s.Ends[hung.Foot].ApexX), 2e-3*got.Leg[1][0])
	}
}

func memberName(m state.Member) string {
	return [state.Members]string{"head line", "foot line", "head leg", "foot leg", "side cord", "head bar", "foot bar", "cloth"}[m]
}

// An evenly loaded bed of like ends in closed form: H = w S²/8f with w half the weight per
// span, pulls H √(1 + (4f/S)²) at the bar, lines W/(2 sin α).
func TestDesignedInClosedForm(t *testing.T) {
	h, p := rigid(t, func(d *design.Design) {
		beds()["alike"](d)
		d.Bed.FootTail, d.Load.Model = d.Bed.HeadTail, design.Even
		d.Cloth.ArealDensity, d.Bar.Density = 0, 0
	})
	s := h.Shape
	span := s.Problem.Bed.Span
	got := state.BoundOf(h, p, 0)
	weight := s.Ends[hung.Head].Vertical + s.Ends[hung.Foot].Vertical
	// The cord runs in a plane of its own, as deep as it falls and comes nearer.
	mid, tip := s.At(0), s.At(-span/2)
	thrust := weight / 2 / span * span * span / 8 / (tip.Z - mid.Z)
	fall := 4 * math.Hypot(tip.Z-mid.Z, tip.Y-mid.Y) / span
	near(t, "side cord", got.Loads.Side[0], thrust*math.Sqrt(1+fall*fall), 1e-3*thrust)
	for e := range 2 {
		near(t, "line", got.Loads.Line[e], weight/2/math.Sin(got.Hang[e]), 1e-6*weight)
	}
	wall := s.At(0).Section.Wall
	near(t, "cloth", got.Loads.Cloth, weight/span/(2*math.Sin(wall)), 1e-3)
}

// One who sits is bounded by two extremes: lines that keep their angle, loaded by the
// whole weight in place of what lies on the cloth, and cords drawn straight to the seat.
// Lines are held to a quarter and bars to half more than so lying. The scale of a weight
// is the scale of its loads.
func TestSittingBound(t *testing.T) {
	governs, all := map[bool]int{}, unlike()
	all["steep, long legs"] = steep
	for name, change := range all {
		h, p := rigid(t, change)
		s := h.Shape
		lying := state.BoundOf(h, p, 0)
		hangs := s.Ends[hung.Head].Vertical + s.Ends[hung.Foot].Vertical
		for _, times := range []float64{0.5, 1, 1.7, 2.5} {
			who := p
			who.Weight = times * p.Weight
			if times > 2 {
				who.Seat = 3000 // so that the cloth as it lies carries more than over the seat
			}
			more := max(1, who.Weight/hangs)
			for i := 1; i <= 4; i++ {
				b := state.BoundOf(h, who, i)
				x := [5]float64{2: -s.Problem.Bed.Span / 4, 3: s.Problem.Bed.Span / 4}[i]
				near(t, name+", place", b.X, x, 0)
				if want := map[bool]state.Kind{true: state.GettingIn, false: state.Sitting}[i == 4]; b.Kind != want {
					t.Errorf("%s: bound %d is of %v, want %v", name, i, b.Kind, want)
				}
				straight := state.StraightTo(h, x, more*hangs)
				most := more * lying.Loads.Side[0]
				for e := range 2 {
					pull := max(more*lying.Loads.Line[e], straight[e])
					governs[straight[e] == pull]++
					near(t, name+", line", b.Loads.Line[e], max(pull, 1.25*more*lying.Loads.Line[e]), 1e-9*pull)
					near(t, name+", bar", b.Loads.Bar[e], 1.5*more*lying.Loads.Bar[e], 1e-9*pull)
					for side := range 2 {
						near(t, name+", leg", b.Loads.Leg[e][side], pull, 1e-9*pull)
						if b.Loads.Side[side] < pull || b.Loads.Side[side] < lying.Loads.Side[side] {
							t.Errorf("%s: side cord %g, legs %g, lying %g", name, b.Loads.Side[side], pull, lying.Loads.Side[side])
						}
					}
					most = max(most, pull)
				}
				for side := range 2 {
					if b.Loads.Side[side] > most*(1+1e-9) {
						t.Errorf("%s: side cord %g, nothing pulls it by more than %g", name, b.Loads.Side[side], most)
					}
				}
				near(t, name+", cloth", b.Loads.Cloth, max(more*lying.Loads.Cloth, who.Weight/who.Seat), 1e-9)
				if b.Level != (finished.Level{}) || b.Hang != [2]float64{} || b.Share != 0 || b.Turn != 0 || b.Bound == nil {
					t.Errorf("%s: a bound says how the bed lies: %+v", name, b)
				}
			}
		}
	}
	if governs[true] == 0 || governs[false] == 0 {
		t.Errorf("straight cords govern, or lines: %v", governs)
	}
}

// turned returns a point of a section turned about its origin by an angle.
func turned(y, z, angle float64) (float64, float64) {
	s, c := math.Sincos(angle)
	return y*c - z*s, y*s + z*c
}

// One who lies aside is bounded by a rigid bed: turned about the line through its apexes
// until the centre of mass hangs under it, found here by halving the angle. The share of
// the lower cord follows from the moments about the other, and everything but the lines
// carries that much more than lying, at least as much and at most twice.
func TestEdgeBound(t *testing.T) {
	shares := map[bool]int{}
	for name, change := range unlike() {
		h, p := rigid(t, change)
		s := h.Shape
		lying := state.BoundOf(h, p, 0)
		for _, who := range []struct{ centre float64 }{{p.Side}, {90}, {450}, {900}} {
			p.Side = who.centre
			for i, aside := range map[int]float64{5: state.AtEdge, 6: p.Side} {
				b := state.BoundOf(h, p, i)
				times := share(s, lying.X, p.Side, aside)
				shares[times == 2]++
				for m := range state.Member(state.Members) {
					want := times * m.Load(lying.Loads)
					if m == state.HeadLine || m == state.FootLine {
						want = m.Load(lying.Loads)
					}
					near(t, name+", "+memberName(m), m.Load(b.Loads), want, 1e-6*want)
				}
				for e := range 2 {
					near(t, name+", both legs", b.Loads.Leg[e][0], b.Loads.Leg[e][1], 0)
				}
				near(t, name+", both cords", b.Loads.Side[0], b.Loads.Side[1], 0)
				if b.Kind != state.Edge || b.Aside != aside || b.X != lying.X || b.Share != 0 || b.Hang != [2]float64{} {
					t.Errorf("%s: %+v", name, b)
				}
			}
		}
	}
	if shares[true] == 0 || shares[false] == 0 {
		t.Errorf("twice as much or less: %v times", shares)
	}
}

// share returns how many times what it carries lying the lower cord of a rigid bed carries
// with the weight aside, its centre so high over the bottom at a station.
func share(s *hung.Shape, x, centre, aside float64) float64 {
	head, foot := s.Ends[hung.Head], s.Ends[hung.Foot]
	axis := (head.ApexZ*(foot.ApexX-x) + foot.ApexZ*(x-head.ApexX)) / (foot.ApexX - head.ApexX)
	q := s.At(x)
	mass := q.Bottom + centre - axis // below the axis where negative
	if mass >= 0 {
		return 2
	}
	low, high := 0.0, math.Pi/2
	for range 80 {
		mid := (low + high) / 2
		if y, _ := turned(aside, mass, -mid); y > 0 {
			low = mid
		} else {
			high = mid
		}
	}
	y, _ := turned(aside, mass, -low)
	other, _ := turned(-q.Y, q.Z-axis, -low)
	// Moments about the other cord: the lower one pulls across the opening, 2 y.
	return max(1, min(2, (y-other)/(2*q.Y)*2))
}
