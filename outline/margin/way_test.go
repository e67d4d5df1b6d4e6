package margin_test

import (
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/margin"
	"slingloft/outline/quantity"
)

// sets puts a value of a way into a design.
func sets(t *testing.T, d *design.Design, in *margin.Input, w margin.Way) {
	t.Helper()
	at := map[design.Key]*float64{
		"cord.side.strength": (*float64)(&d.Side.Strength), "cord.leg.strength": (*float64)(&d.Leg.Strength),
		"hang.line.strength": (*float64)(&d.Hang.Line.Strength), "hang.hook_strength": (*float64)(&in.Hook),
		"bar.outer_diameter": &d.Bar.Outer, "cloth.strip_strength": (*float64)(&d.Cloth.StripStrength),
		"seam.thread_strength": (*float64)(&d.Seam.ThreadStrength),
	}[w.Key]
	switch {
	case w.Key == "seam.rows":
		d.Seam.Rows = int(w.Least)
	case at == nil:
		t.Fatalf("a way by %s, which holds no strength", w.Key)
	default:
		*at = w.Least
	}
}

// What is said to meet a margin meets it, and one per cent less does not.
func TestWays(t *testing.T) {
	weak := sample()
	weak.Sleeper.Mass = 110
	weak.Side.Strength, weak.Leg.Strength, weak.Hang.Line.Strength = 3000, 3000, 3000
	weak.Bar.Outer, weak.Bar.Wall, weak.Bar.Yield = 14, 0.6, 60
	weak.Cloth.StripStrength, weak.Seam.ThreadStrength = 2, 90
	s := solve(t, weak)
	in := joined(hooked(hangs(&s, weak), 3000))
	kinds := map[design.Key]bool{}
	try := func(in margin.Input) {
		for _, c := range margin.Of(in).Checks {
			if !c.Unmet() {
				if len(c.Ways) > 0 {
					t.Errorf("%s is met, but has ways %v", c.Name(), c.Ways)
				}
				continue
			}
			if len(c.Ways) == 0 || c.Ways[0].Least == 0 {
				t.Errorf("%s: no value that would do among %v", c.Name(), c.Ways)
			}
			for _, w := range c.Ways {
				if w.Least == 0 {
					continue
				}
				kinds[w.Key] = true
				does(t, in, c, w)
			}
		}
	}
	try(in)
	// Seams: the thread gives, far from what is wanted and near to it.
	need := 0.0
	for _, c := range margin.Of(in).Checks {
		if c.Part == margin.SideSeam {
			need = max(need, c.Load*c.Required)
		}
	}
	in.Design.Cloth.StripStrength = 100
	in.Design.Seam.ThreadStrength = 6
	try(in)
	in.Design.Seam = design.Seam{StitchLength: 1, ThreadStrength: quantity.Newtons(need * 0.95), SeamFactor: 1, Rows: 1}
	try(in)
	for _, key := range []design.Key{"cord.side.strength", "cord.leg.strength", "hang.line.strength", "hang.hook_strength",
		"bar.outer_diameter", "cloth.strip_strength", "seam.thread_strength", "seam.rows"} {
		if !kinds[key] {
			t.Errorf("no failing check named %s", key)
		}
	}
}

// does tries a way: it meets its check, and one per cent less does not. Of rows there
// is no less than one more.
func does(t *testing.T, in margin.Input, c margin.Check, w margin.Way) {
	t.Helper()
	for _, part := range []float64{1 + 1e-9, 0.99} {
		d, with, way := in.Design, in, w
		way.Least *= part
		sets(t, &d, &with, way)
		with.Design = d
		if got := check(t, margin.Of(with), c.Name()); got.Unmet() != (part < 1) {
			t.Errorf("%s: %s of %g gives %.4f of %g", c.Name(), w.Key, way.Least, got.Ratio, got.Required)
		}
	}
}

// A seam whose thread and cloth are both too weak has no single way out, and says so.
func TestSeamOfTwoWeaknesses(t *testing.T) {
	weak := sample()
	weak.Cloth.StripStrength, weak.Seam.ThreadStrength = 1, 1
	s := solve(t, weak)
	c := check(t, margin.Of(hangs(&s, weak)), "side seam, getting-in")
	if len(c.Ways) != 2 || c.Ways[0] != (margin.Way{Key: "cloth.strip_strength"}) || c.Ways[1] != (margin.Way{Key: "seam.thread_strength"}) {
		t.Errorf("ways %+v", c.Ways)
	}
}

// The values of which only the direction is known do move the margin that way.
func TestWaysWithoutValue(t *testing.T) {
	weak := sample()
	weak.Side.Strength, weak.Leg.Strength, weak.Bar.Outer, weak.Bar.Wall, weak.Cloth.StripStrength = 2500, 2500, 14, 0.6, 1
	s := solve(t, weak)
	tried := 0
	for _, c := range margin.Of(hangs(&s, weak)).Unmet() {
		for _, w := range c.Ways {
			if w.Least > 0 {
				continue
			}
			d := weak
			switch w.Key {
			case "bed.side_depth":
				d.Bed.ControlValue *= 1.1
			case "bed.head_drop":
				d.Bed.HeadValue *= 1.1
			case "bed.head_leg":
				d.Bed.HeadLeg *= 1.1
			case "bed.foot_leg":
				d.Bed.FootLeg *= 1.1
			default:
				t.Fatalf("%s: %+v", c.Name(), w)
			}
			tried++
			more := solve(t, d)
			if got := check(t, margin.Of(hangs(&more, d)), c.Name()); got.Ratio <= c.Ratio {
				t.Errorf("%s: %s larger, margin %.4f after %.4f", c.Name(), w.Key, got.Ratio, c.Ratio)
			}
		}
	}
	if tried < 6 {
		t.Errorf("only %d ways tried", tried)
	}
}
