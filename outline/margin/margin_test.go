package margin_test

import (
	"math"
	"reflect"
	"strings"
	"testing"

	"slingloft/outline/column"
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/rig"
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
	t.Fatalf("no check named %q among %q", name, r.Names())
	return margin.Check{}
}

// Each line worked by hand from the shape's own forces.
func TestLying(t *testing.T) {
	d := sample()
	s := solve(t, d)
	r := margin.Of(margin.Input{Shape: &s, Design: d, Hook: 12e3})
	e := s.Ends[hung.Head]
	near(t, "leg", check(t, r, "head leg, lying").Ratio, 10e3*0.9/e.LegTension, 1e-9)
	near(t, "side", check(t, r, "side cord, lying").Load, e.TipTension, 1e-9)
	near(t, "line", check(t, r, "head hang line, lying").Ratio, 16e3*0.9/math.Hypot(e.Horizontal, e.Vertical), 1e-9)
	near(t, "hook", check(t, r, "head hook, lying").Capacity, 12e3, 1e-12)
	tube := column.Tube(25, 1.5)
	near(t, "bar", check(t, r, "head bar buckling, lying").Capacity, column.Euler(tube, 68900, 980), 1e-9)
	near(t, "bar load", check(t, r, "head bar buckling, lying").Load, 2*e.BarCompression, 1e-9)
	stress, _ := column.Secant(tube, 68900, 980, check(t, r, "head bar yield, lying").Capacity, 2)
	near(t, "yield", stress, 241, 1e-6)
	near(t, "bearing", check(t, r, "foot bar tip bearing, lying").Capacity, tube.Area*241, 1e-9)
	// Bay alone, walls at one angle: w / (2 sin θ), the largest where the load is.
	w := 80 * hung.Gravity / 1440
	near(t, "cloth", check(t, r, "cloth strip, lying").Load, 2*w/(2*math.Sin(e.Section.Wall)), 1e-9)
	near(t, "seam", check(t, r, "side seam, lying").Capacity, 2/2.5*30*0.7, 1e-12)
	if unmet := r.Unmet(); len(unmet) > 0 {
		t.Errorf("unmet %+v", unmet)
	}
	if unknown := r.Unknown(); len(unknown) > 0 {
		t.Errorf("unknown %+v", unknown)
	}
	near(t, "cut length of a bar", margin.BarLength(d.Bar, 980), 966, 0)
}

// Alike ends: one cord in a straight line from hook to load pulls with W / (2 sin
// φ), cos φ the half distance over the half cord; or with the whole thrust of both
// cords if the lines are long.
func TestSeatedClosedForm(t *testing.T) {
	d := sample()
	s := solve(t, d)
	r := margin.Of(margin.Input{Shape: &s, Design: d})
	w := 80 * hung.Gravity
	half := s.SideArc/2 + 820
	cos := s.Ends[hung.Foot].ApexX / half
	short := w / (2 * math.Sqrt(1-cos*cos))
	e := s.Ends[hung.Head]
	long := math.Hypot(e.Horizontal, e.Vertical)
	near(t, "side", check(t, r, "side cord, seated").Load, max(short, long), 1e-9)
	near(t, "leg", check(t, r, "foot leg, seated").Load, max(short, long), 1e-9)
	near(t, "cloth", check(t, r, "cloth strip, seated").Load, 2*w/margin.SeatBreadth, 1e-9)
	for _, c := range r.Checks {
		if c.Case == margin.Seated && strings.Contains(c.Name(), "bar") {
			t.Errorf("bars carry %g N although the other side is slack", c.Load)
		}
	}
	t.Logf("seated %.0f N (short lines %.0f, long %.0f), lying leg %.0f", check(t, r, "side cord, seated").Load, short, long, e.LegTension)
}

// The share of the lower side by balance of moments about the upper cord, worked in
// the level frame from the places of cords and weight.
func TestRolling(t *testing.T) {
	d := sample()
	s := solve(t, d)
	r := margin.Of(margin.Input{Shape: &s, Design: d})
	st := rig.Steadiness(&s, d.Sleeper)
	q := s.At(st.X)
	rho := math.Atan(240 / st.Side)
	turn := func(y, z float64) (float64, float64) { // about the apexes' line, shifted side down
		z -= s.Ends[hung.Head].ApexZ
		return y*math.Cos(rho) + z*math.Sin(rho), z*math.Cos(rho) - y*math.Sin(rho)
	}
	low, lowZ := turn(q.Y, q.Z)
	high, highZ := turn(-q.Y, q.Z)
	weight, _ := turn(240, 240)
	near(t, "the weight hangs below the apexes", weight+1, 1, 1e-9)
	// Moments about the upper cord of the lower one's pull square to the line between
	// them.
	v := (weight - high) / math.Hypot(low-high, lowZ-highZ)
	share := v / 0.5
	got := check(t, r, "side cord, rolling").Load / check(t, r, "side cord, lying").Load
	near(t, "share", got, share, 1e-9)
	near(t, "bar", check(t, r, "head bar yield, rolling").Load/check(t, r, "head bar yield, lying").Load, share, 1e-9)
	// A bed whose ends hang low turns over with one who lies on the side.
	d.Sleeper.Shoulders = 1400
	r = margin.Of(margin.Input{Shape: &s, Design: d})
	if c := r.Cases[2]; c.Cannot.Kind == margin.NoObstacle || c.Kind != margin.Rolling {
		t.Errorf("case %+v: want no loads", c)
	}
}

// What a data sheet does not give is named, and nothing is taken in its place; an
// upper bound that is too little fails all the same.
func TestMissing(t *testing.T) {
	d := sample()
	d.Side.Strength, d.Leg.Strength, d.Splice.Efficiency, d.Bar.Yield, d.Seam.SeamFactor, d.Cloth.StripStrength = 0, 0, 0, 0, 0, 0
	d.Hang.Line.Strength = 1500
	s := solve(t, d)
	r := margin.Of(margin.Input{Shape: &s, Design: d})
	for name, want := range map[string][]design.Key{
		"side cord, lying":            {"cord.side.strength", "splice.efficiency"},
		"foot leg, seated":            {"cord.leg.strength", "splice.efficiency"},
		"head hang line, lying":       {"splice.efficiency"},
		"head hook, lying":            {"hang.hook_strength"},
		"head bar buckling, lying":    {"bar.yield"},
		"foot bar yield, rolling":     {"bar.yield"},
		"head bar tip bearing, lying": {"bar.yield"},
		"cloth strip, seated":         {"cloth.strip_strength"},
		"side seam, rolling":          {"seam.factor"},
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
	d.Margins.Waived = []string{"side cord, seated", "side cords"}
	s := solve(t, d)
	r := margin.Of(margin.Input{Shape: &s, Design: d})
	if c := check(t, r, "side cord, seated"); !c.Unmet() || !c.Waived {
		t.Errorf("%+v", c)
	}
	for _, c := range r.Unmet() {
		if c.Name() == "side cord, seated" {
			t.Error("a waived check is listed as unmet")
		}
	}
	if len(r.Unmet()) != 2 || len(r.Waived()) != 1 { // lying and rolling
		t.Errorf("unmet %+v, waived %+v", r.Unmet(), r.Waived())
	}
	if !reflect.DeepEqual(r.Strangers, []string{"side cords"}) {
		t.Errorf("strangers %q", r.Strangers)
	}
	g, ok := r.Governing()
	for _, c := range r.Checks {
		if c.Capacity > 0 && c.Ratio/c.Required < g.Ratio/g.Required-1e-12 {
			t.Errorf("%s is nearer its limit than %s", c.Name(), g.Name())
		}
	}
	if !ok || g.Case != margin.Seated {
		t.Errorf("governing %+v", g)
	}
}

// Two runs share the pull of a whole loop.
func TestLoop(t *testing.T) {
	d := sample()
	d.Splice.Whole = true
	d.Leg.Strength = 1
	s := solve(t, d)
	r := margin.Of(margin.Input{Shape: &s, Design: d})
	near(t, "leg", check(t, r, "head leg, lying").Capacity, 2*10e3*0.9, 1e-12)
}

func TestNamesAreUnique(t *testing.T) {
	d := sample()
	s := solve(t, d)
	seen := map[string]bool{}
	for _, n := range margin.Of(margin.Input{Shape: &s, Design: d, Joined: true}).Names() {
		if seen[n] {
			t.Errorf("%q twice", n)
		}
		seen[n] = true
	}
	if !seen["join seam, lying"] {
		t.Error("no check of the join")
	}
}
