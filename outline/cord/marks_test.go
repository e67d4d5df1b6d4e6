package cord_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

// drawnSet draws splices and hardware and returns all the cord of the sample with
// them.
func drawnSet(t *rapid.T, d design.Design, s *hung.Shape) cord.Set {
	f := func(lo, hi float64, label string) float64 { return rapid.Float64Range(lo, hi).Draw(t, label) }
	d.Side.Diameter, d.Leg.Diameter = f(1.5, 3, "side"), f(1.5, 3, "leg")
	ea := func(label string) quantity.Newtons { return quantity.Newtons(f(5e4, 4e5, label)) }
	d.Side.Stiffness, d.Leg.Stiffness, d.Hang.Line.Stiffness = ea("ea"), ea("ea leg"), ea("ea line")
	d.Splice = design.Splice{TipGap: f(35, 80, "gap"), Contraction: f(0, 0.35, "kappa"), Eye: f(60, 200, "eye"), EyeLoss: f(0, 20, "loss"),
		Whole: rapid.Bool().Draw(t, "whole")}
	set, err := cord.Of(s, d, cord.Options{Hook: f(4, 12, "hook"), Tip: f(0, 6, "tip"), Lines: [2]float64{2000, 1800}, Ridge: 3400})
	if err != nil {
		t.Fatal(err)
	}
	return set
}

// On every cord: a tail begins to taper where the design has it, short of its end, and
// marks that are buried are those that a partner covers. Splices take length and never
// give it.
func TestMarksOfTails(t *testing.T) {
	d0, s := sample(t)
	rapid.Check(t, func(t *rapid.T) {
		set := drawnSet(t, d0, &s)
		for _, c := range set.Cords {
			sp := set.Splicing
			for _, m := range c.Marks {
				if m.FromStart < -1e-9 || m.FromEnd < -1e-9 {
					t.Fatalf("%s: %s lies off the cord: %+v", c.Part, m.Spot, m)
				}
				if m.Buried != (m.Spot.Kind == cord.Taper) {
					t.Fatalf("%s: %s buried %v", c.Part, m.Spot, m.Buried)
				}
				if m.Spot.Kind == cord.Taper {
					bury := sp.EyeBury(c.Kind.Diameter)
					near(t, c.Part.String()+", taper", min(m.FromStart, m.FromEnd), sp.Taper(bury), 1e-9)
				}
			}
			for i, a := range c.Marks {
				for _, b := range c.Marks[:i] {
					if cut, spliced := math.Abs(a.FromStart-b.FromStart), math.Abs(a.Spliced-b.Spliced); spliced > cut+1e-9 {
						t.Fatalf("%s: %s and %s lie %g apart, %g after splicing", c.Part, a.Spot, b.Spot, cut, spliced)
					}
				}
			}
			lost := 0.0
			for _, term := range c.Terms {
				switch term.Kind {
				case cord.OverLegsBuries, cord.OverSideBury, cord.OverEyeOwnBury, cord.OverEyesBuries, cord.OverBuries, cord.EyeCrossing, cord.EyesCrossings:
					lost += term.Length
				}
			}
			first, last := c.Marks[0], c.Marks[len(c.Marks)-1]
			near(t, c.Part.String()+", lost", last.FromStart-first.FromStart-(last.Spliced-first.Spliced), lost, 1e-6)
		}
	})
}

// What a tape reads after the last step is how far the marks then lie apart, and each
// step takes what it takes from the reading before it. To a hook it is the eye's reach
// more than to its throat.
func TestReadings(t *testing.T) {
	d0, s := sample(t)
	rapid.Check(t, func(t *rapid.T) {
		set := drawnSet(t, d0, &s)
		for _, c := range set.Cords {
			_, reach, err := set.Splicing.Eye(c.Kind.Diameter)
			if err != nil {
				t.Fatal(err)
			}
			m := marks(c)
			for i, step := range c.Steps {
				for k, r := range step.Reads {
					what := c.Part.String() + ", " + r.From.String() + " to " + r.To.String()
					if r.To.Kind == cord.Hook && c.Part != cord.SideLoop {
						// It follows the reading to its throat.
						throat := step.Reads[k-1]
						near(t, what, r.After, throat.After+reach, 1e-9)
						if r.Before != 0 {
							near(t, what+", before", r.Before, throat.Before+reach, 1e-9)
						}
						continue
					}
					if r.After > r.Before+1e-9 {
						t.Fatalf("%s: %g mm before, %g after a splice", what, r.Before, r.After)
					}
					if i == len(c.Steps)-1 {
						near(t, what, r.After, m[r.To].Spliced-m[r.From].Spliced, 1e-6)
					}
				}
			}
		}
	})
}

// A leg's eye has no hook before it is made, and has one in the step after.
func TestHookReadings(t *testing.T) {
	d, s := sample(t)
	set, err := cord.Of(&s, d, cord.Options{})
	if err != nil {
		t.Fatal(err)
	}
	leg := find(t, set, cord.HeadLeg)
	made, next := leg.Steps[0].Reads[1], leg.Steps[1].Reads[1]
	if made.To.Kind != cord.Hook || made.Before != 0 || next.To.Kind != cord.Hook || next.Before == 0 {
		t.Errorf("hook read %+v, then %+v", made, next)
	}
}

// A loop's two runs under the light pull, with cords that stretch and hooks and tips that are
// thick, at ends that differ: each node is where half the cord under half the pull
// leaves it.
func TestLoopNodes(t *testing.T) {
	d0, s := sample(t)
	rapid.Check(t, func(t *rapid.T) {
		f := func(lo, hi float64, label string) float64 { return rapid.Float64Range(lo, hi).Draw(t, label) }
		d := d0
		d.Side.Diameter, d.Side.Stiffness = f(1.5, 3, "side"), quantity.Newtons(f(4e4, 4e5, "ea"))
		d.Splice = design.Splice{Whole: true, TipGap: f(35, 80, "gap"), Contraction: f(0, 0.35, "kappa")}
		o := cord.Options{Hook: f(4, 16, "hook"), Tip: f(1, 6, "tip")}
		set, err := cord.Of(&s, d, o)
		if err != nil {
			t.Fatal(err)
		}
		spread, err := set.Splicing.Spread(d.Side.Diameter)
		if err != nil {
			t.Fatal(err)
		}
		ea, q := 2*d.Side.Stiffness, (o.Hook+d.Side.Diameter)/2
		var tip, hook [2]float64 // from the join
		for e, end := range s.Ends {
			out := 720 * hung.End(e).Sign()
			side := math.Abs(s.Arc(0, out)) - cord.Stretch(&s, min(0, out), max(0, out), ea, 2*cord.LightPull)
			leg := math.Sqrt(end.Leg*end.Leg-q*q) + q*(math.Pi-math.Acos(q/end.Leg)) // round half the hook
			leg -= cord.Stretch(&s, min(end.ApexX, out), max(end.ApexX, out), ea, 2*cord.LightPull)
			tip[e] = side + spread/2
			hook[e] = tip[e] + leg + spread/2
		}
		round := 2 * (hook[0] + hook[1])
		c := find(t, set, cord.SideLoop)
		m := marks(c)
		for spot, want := range map[cord.Spot]float64{
			{Kind: cord.Tip, On: cord.AtFoot}:               tip[1],
			{Kind: cord.Hook, On: cord.AtFoot}:              hook[1],
			{Kind: cord.Tip, On: cord.AtFoot, Second: true}: 2*hook[1] - tip[1],
			{Kind: cord.Middle, Second: true}:               2 * hook[1],
			{Kind: cord.Tip, On: cord.AtHead, Second: true}: 2*hook[1] + tip[0],
			{Kind: cord.Hook, On: cord.AtHead}:              2*hook[1] + hook[0],
			{Kind: cord.Tip, On: cord.AtHead}:               round - tip[0],
			{Kind: cord.Shoulder, On: cord.AtEnd}:           round,
		} {
			near(t, spot.String(), m[spot].Spliced, want, 1e-6)
		}
		bury := set.Splicing.Bury(d.Side.Diameter)
		near(t, "cut", c.Cut, round+2*bury*(1+set.Splicing.Kappa), 1e-6)
	})
}
