package cord_test

import (
	"errors"
	"math"
	"testing"

	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// fault returns the limit that an error names for a key.
func fault(t *testing.T, what string, key design.Key, err error) float64 {
	t.Helper()
	var bad *hung.Impossible
	if !errors.As(err, &bad) || bad.Key != key {
		t.Fatalf("%s: %v, want a fault of %s", what, err, key)
	}
	return bad.Limit
}

// elastic is the sample with stiff cords, hooks and tips that count, so that no part
// of a sum is nothing.
func elastic(t *testing.T) (design.Design, hung.Shape, cord.Options) {
	t.Helper()
	d, s := sample(t)
	d.Side.Stiffness, d.Leg.Stiffness, d.Hang.Line.Stiffness = 1.2e5, 0.9e5, 1.5e5
	return d, s, cord.Options{Hook: 12, Tip: 6}
}

// The longest bury that a fault names does, 2 mm more does not: in a side cord, in a
// loop, in a hang line's eyes.
func TestLongestBury(t *testing.T) {
	for _, r := range []struct {
		name   string
		key    design.Key
		change func(*design.Design, *cord.Options)
		set    func(*design.Design, float64)
	}{
		{"side cord", "splice.bury", func(d *design.Design, _ *cord.Options) { d.Splice.EyeBury = 10 }, func(d *design.Design, v float64) { d.Splice.Bury = v }},
		{"loop", "splice.bury", func(d *design.Design, _ *cord.Options) { d.Splice.Whole = true }, func(d *design.Design, v float64) { d.Splice.Bury = v }},
		{"line", "splice.eye_bury", func(d *design.Design, o *cord.Options) {
			o.Lines[1], d.Splice.Whole, d.Splice.Bury = 700, true, 100
		},
			func(d *design.Design, v float64) { d.Splice.EyeBury = v }},
	} {
		d, s, o := elastic(t)
		r.change(&d, &o)
		try := func(v float64) error {
			r.set(&d, v)
			_, err := cord.Of(&s, d, o)
			return err
		}
		limit := fault(t, r.name, r.key, try(1500))
		// Legs of a side cord are full before its own buries meet.
		var bad *hung.Impossible
		if err := try(limit); errors.As(err, &bad) && bad.Key == r.key {
			t.Errorf("%s: a bury of %g was to do: %v", r.name, limit, err)
		}
		if err := try(limit + 2); err == nil {
			t.Errorf("%s: 2 mm more than %g do as well", r.name, limit)
		} else if errors.As(err, &bad) && bad.Key != r.key {
			t.Errorf("%s: 2 mm more than %g: %v", r.name, limit, err)
		}
	}
}

// The shortest leg that a fault names does, 2 mm less does not. The bed is solved
// anew with it.
func TestShortestLeg(t *testing.T) {
	d, _, o := elastic(t)
	d.Splice.EyeBury = 420
	try := func(leg float64) error {
		d.Bed.HeadLeg = leg
		s, err := hung.Solve(hung.ProblemOf(d))
		if err != nil {
			t.Fatal(err)
		}
		_, err = cord.Of(&s, d, o)
		return err
	}
	least := fault(t, "leg", "bed.head_leg", try(620))
	if err := try(least + 1); err != nil { // the stretch changes a little with the leg
		t.Errorf("a leg of %g: %v", least+1, err)
	}
	if try(least-2) == nil {
		t.Errorf("a leg of %g does as well", least-2)
	}
}

// A line too short for any useful bury asks for a greater distance, of which half
// goes to either end. Lines that rise grow by more than that, which makes up for
// their stretch.
func TestShortestDistance(t *testing.T) {
	d, s, o := elastic(t)
	d.Hang.Line.Stiffness = 0
	d.Hang.Distance, o.Lines[0] = 3600, 120
	_, err := cord.Of(&s, d, o)
	least := fault(t, "distance", "hang.distance", err)
	for _, r := range []struct {
		more float64
		does bool
	}{{0, true}, {-4, false}} {
		longer := o
		longer.Lines[0] += (least + r.more - d.Hang.Distance) / 2
		if _, err := cord.Of(&s, d, longer); (err == nil) != r.does {
			t.Errorf("%g mm apart: %v", least+r.more, err)
		}
	}
	// Where no distance is given, or the bury that would do is a useful one, it is the
	// bury that is told.
	d.Hang.Distance = 0
	_, err = cord.Of(&s, d, o)
	fault(t, "no distance given", "splice.eye_bury", err)
	d.Hang.Distance, d.Splice.EyeBury, o.Lines[0] = 3600, 500, 800
	_, err = cord.Of(&s, d, o)
	fault(t, "a useful bury", "splice.eye_bury", err)
}

// Each fastening's longest bury does, 2 mm more does not.
func TestLongestBuryOfHangLines(t *testing.T) {
	for f := cord.FixedEye; f <= cord.Hitched; f++ {
		d, _, o := elastic(t)
		try := func(bury float64) (cord.HangLine, error) {
			d.Splice.EyeBury = bury
			sp, err := cord.Resolve(d, o)
			if err != nil {
				t.Fatal(err)
			}
			return cord.HangLineOf(d, sp, cord.Hanging{Part: cord.FootLine, Long: 900, Tension: 600, Fastening: f, Travel: 60, Strap: 50})
		}
		_, err := try(1500)
		limit := fault(t, f.String(), "splice.eye_bury", err)
		if _, err := try(limit); err != nil {
			t.Errorf("%s: a bury of %g: %v", f, limit, err)
		}
		if _, err := try(limit + 2); err == nil {
			t.Errorf("%s: 2 mm more than %g do as well", f, limit)
		}
	}
}

// The sliding eye as it is at each end of its travel, by the tangent-and-arc length
// of a loop: at its shortest it is as small as the fixed one, and let out to its
// longest a tail of 100 mm still stands out.
func TestSlidingEye(t *testing.T) {
	d, _, o := elastic(t)
	sp := splicing(t, d.Splice, o)
	fixed, reach, err := sp.Eye(4)
	if err != nil {
		t.Fatal(err)
	}
	const travel, pin = 80.0, (12.0 + 4) / 2
	loop := func(r float64) float64 { return 2 * (math.Sqrt(r*r-pin*pin) + pin*(math.Pi-math.Acos(pin/r))) }
	near(t, "the fixed eye", fixed, loop(reach), 1e-6)
	l, err := cord.HangLineOf(d, sp, cord.Hanging{Part: cord.HeadLine, Long: 1600, Tension: 500, Fastening: cord.SlidingEye, Travel: travel})
	if err != nil {
		t.Fatal(err)
	}
	terms := map[cord.TermKind]float64{}
	for _, term := range l.Terms {
		terms[term.Kind] = term.Length
	}
	near(t, "loop at the middle setting", terms[cord.SlidingLoop], loop(reach+travel), 1e-6)
	near(t, "tail", terms[cord.SlidingTail], 100+loop(reach+2*travel)-loop(reach+travel), 1e-6)
	near(t, "less both reaches", terms[cord.LessEyesReach], -2*reach-travel, 1e-9)
	near(t, "less stretch", terms[cord.LessStretch], -(500-cord.LightPull)*1600/1.5e5, 1e-9)
}
