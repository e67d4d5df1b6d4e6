package margin_test

import (
	"math"
	"reflect"
	"slices"
	"testing"

	"slingloft/outline/column"
	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/quantity"
	"slingloft/outline/state"
)

func sample() design.Design {
	var d design.Design
	d.Sleeper = design.Sleeper{Stature: 1740, Mass: 80, Crown: -60, Shoulders: 480}
	d.Bed = design.Bed{
		Span: 1440, HeadBar: 980, FootBar: 980, HeadValue: 420, ControlValue: 210,
		HeadTail: 150, FootTail: 150, HeadLeg: 820, FootLeg: 820,
		HeadRadius: 125, SeatRadius: 125, FootRadius: 125,
	}
	d.Load.Model = design.Even
	d.Side = design.Cord{Strength: 10e3, Diameter: 2.8}
	d.Leg, d.Hang.Line = d.Side, design.Cord{Strength: 16e3}
	d.Splice.Efficiency = 0.9
	d.Bar = design.Bar{Material: "6061-T6", Outer: 25, Wall: 1.5, Modulus: 68900, Yield: 241, TipReach: 7, Eccentricity: 2}
	d.Cloth.StripStrength = 12
	d.Seam = design.Seam{StitchLength: 2.5, Rows: 2, ThreadStrength: 30, SeamFactor: 0.7}
	return d
}

// hangs returns a bed of a shape, of what does not stretch, on lines of a metre, with
// all its states, which are found once for each bed and sleeper: loads are even here.
func hangs(s *hung.Shape, d design.Design) margin.Input {
	made := bedAndSleeper{d.Bed, d.Sleeper}
	states, ok := found[made]
	if !ok {
		h := finished.Make(finished.Made{Shape: s, Lines: [2]float64{1000, 1000}})
		states = state.Of(h, state.PersonOf(d.Sleeper, s.Problem.Load))
		found[made] = states
	}
	return margin.Input{Shape: s, Design: d, States: states}
}

type bedAndSleeper struct {
	bed     design.Bed
	sleeper design.Sleeper
}

var found = map[bedAndSleeper][]state.State{}

func hooked(in margin.Input, strength quantity.Newtons) margin.Input {
	in.Hook = strength
	return in
}

func joined(in margin.Input) margin.Input {
	in.Joined = true
	return in
}

func solve(t testing.TB, d design.Design) hung.Shape {
	t.Helper()
	s, err := hung.Solve(hung.ProblemOf(d))
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func near(t *testing.T, what string, got, want, rel float64) {
	t.Helper()
	if !(math.Abs(got-want) <= rel*math.Abs(want)) {
		t.Errorf("%s = %.9g, want %.9g", what, got, want)
	}
}

func check(t *testing.T, r margin.Report, name string) margin.Check {
	t.Helper()
	for _, c := range r.Checks {
		if c.Name() == name {
			return c
		}
	}
	t.Fatalf("no check named %q", name)
	return margin.Check{}
}

// Each line worked by hand from the shape's own forces.
func TestLying(t *testing.T) {
	d := sample()
	s := solve(t, d)
	r := margin.Of(hooked(hangs(&s, d), 12e3))
	e := s.Ends[hung.Head]
	near(t, "leg", check(t, r, "head leg, lying").Ratio, 10e3*0.9/e.LegTension, 1e-6)
	near(t, "side", check(t, r, "side cord, lying").Load, e.TipTension, 1e-6)
	near(t, "line", check(t, r, "head hang line, lying").Ratio, 16e3*0.9/math.Hypot(e.Horizontal, e.Vertical), 1e-6)
	near(t, "hook", check(t, r, "head hook, lying").Capacity, 12e3, 1e-12)
	tube := column.Tube(25, 1.5)
	near(t, "bar", check(t, r, "head bar buckling, lying").Capacity, column.Euler(tube, 68900, 980), 1e-9)
	near(t, "bar load", check(t, r, "head bar buckling, lying").Load, 2*e.BarCompression, 1e-6)
	strut := column.Strut{Section: tube, Modulus: 68900, Length: 980, Bow: 980. / 500, Off: 2}
	near(t, "yield", check(t, r, "head bar yield, lying").Capacity, column.Weakened(strut, tube, 241), 1e-9)
	// Bay alone, walls at one angle: w / (2 sin θ), the largest where the load is.
	w := 80 * hung.Gravity / 1440
	near(t, "cloth", check(t, r, "cloth strip, lying").Load, 2*w/(2*math.Sin(e.Section.Wall)), 1e-6)
	near(t, "seam", check(t, r, "side seam, lying").Capacity, 1.1/2.5*30*0.7, 1e-12)
	if unmet := r.Unmet(); len(unmet) > 0 {
		t.Errorf("unmet %+v", unmet)
	}
	if unknown := r.Unknown(); len(unknown) > 0 {
		t.Errorf("unknown %+v", unknown)
	}
	near(t, "cut length of a bar", d.Bar.CutFor(980), 966, 0)
}

// What a data sheet does not give is named, and nothing is taken in its place; an
// upper bound that is too little fails all the same.
func TestMissing(t *testing.T) {
	d := sample()
	d.Side.Strength, d.Leg.Strength, d.Splice.Efficiency, d.Bar.Yield, d.Seam.SeamFactor, d.Cloth.StripStrength = 0, 0, 0, 0, 0, 0
	d.Hang.Line.Strength = 1500
	s := solve(t, d)
	r := margin.Of(hangs(&s, d))
	for name, want := range map[string][]design.Key{
		"side cord, lying":         {"cord.side.strength", "splice.efficiency"},
		"foot leg, getting-in":     {"cord.leg.strength", "splice.efficiency"},
		"head hang line, lying":    {"splice.efficiency"},
		"head hook, lying":         {"hang.hook_strength"},
		"head bar buckling, lying": {"bar.yield"},
		"foot bar yield, edge":     {"bar.yield"},
		"cloth strip, getting-in":  {"cloth.strip_strength"},
		"side seam, edge":          {"seam.factor", "cloth.strip_strength"},
	} {
		c := check(t, r, name)
		if !reflect.DeepEqual(c.Missing, want) || c.Met {
			t.Errorf("%s: missing %q, met %v; want %q and not met", name, c.Missing, c.Met, want)
		}
		if bound := name == "head hang line, lying" || name == "head bar buckling, lying"; c.Bound != bound || (c.Capacity > 0) != bound {
			t.Errorf("%s: capacity %g, bound %v", name, c.Capacity, c.Bound)
		}
	}
	if c := check(t, r, "head hang line, lying"); !c.Unmet() {
		t.Errorf("bare line holds %g for %g: want unmet", c.Capacity, c.Load)
	}
}

func TestWaiver(t *testing.T) {
	d := sample()
	d.Side.Strength = 2000
	d.Margins.Waived = []string{"side cord, seated", "side cords"} // as the case was called formerly
	s := solve(t, d)
	r := margin.Of(hangs(&s, d))
	if c := check(t, r, "side cord, getting-in"); !c.Unmet() || !c.Waived {
		t.Errorf("%+v", c)
	}
	for _, c := range r.Unmet() {
		if c.Name() == "side cord, getting-in" {
			t.Error("a waived check is listed as unmet")
		}
	}
	if len(r.Unmet()) != 3 || len(r.Waived()) != 1 { // lying, sitting, edge
		t.Errorf("unmet %+v, waived %+v", r.Unmet(), r.Waived())
	}
	if !reflect.DeepEqual(margin.Strangers(d.Margins.Waived, false, false), []string{"side cords"}) {
		t.Errorf("strangers %q", margin.Strangers(d.Margins.Waived, false, false))
	}
	g, ok := r.Governing()
	for _, c := range r.Checks {
		if c.Capacity > 0 && c.Ratio/c.Required < g.Ratio/g.Required-1e-12 {
			t.Errorf("%s is nearer its limit than %s", c.Name(), g.Name())
		}
	}
	if !ok || g.Case != state.GettingIn {
		t.Errorf("governing %+v", g)
	}
}

// Two runs share the pull of a whole loop.
func TestLoop(t *testing.T) {
	d := sample()
	d.Splice.Whole = true
	d.Leg.Strength = 1
	s := solve(t, d)
	r := margin.Of(hangs(&s, d))
	near(t, "leg", check(t, r, "head leg, lying").Capacity, 2*10e3*0.9, 1e-12)
}

// Every check has one of the names that a waiver may use, and no two the same.
func TestNamesAreUnique(t *testing.T) {
	d := sample()
	s := solve(t, d)
	seen := map[string]bool{}
	for _, c := range margin.Of(joined(hangs(&s, d))).Checks {
		if seen[c.Name()] {
			t.Errorf("%q twice", c.Name())
		}
		seen[c.Name()] = true
		if !slices.Contains(margin.Names(true, false), c.Name()) {
			t.Errorf("%q is no name", c.Name())
		}
	}
	if !seen["join seam, lying"] || slices.Contains(margin.Names(false, false), "join seam, lying") {
		t.Error("the join is checked where there is one, and not elsewhere")
	}
}

// What a seam holds is said to come from its thread or from the cloth beside it, whichever
// is the less: 1.1 × 30 N × 0.7 / 2.5 mm = 9.24 N/mm of thread against 0.8 × 12 N/mm of
// cloth, and twice as strong a thread.
func TestWhatASeamHolds(t *testing.T) {
	for thread, want := range map[quantity.Newtons]margin.SourceKind{30: margin.SeamFormula, 60: margin.Perforated} {
		d := sample()
		d.Seam.ThreadStrength = thread
		s := solve(t, d)
		if c := check(t, margin.Of(hangs(&s, d)), "side seam, lying"); c.Source.Kind != want {
			t.Errorf("thread of %g N: %.2f N/mm by %v, want %v", thread, c.Capacity, c.Source.Kind, want)
		}
	}
}
