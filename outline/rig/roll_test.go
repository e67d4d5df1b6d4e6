package rig_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
	_ "slingloft/outline/rapidtest"
	"slingloft/outline/rig"
)

// mean is the mean of the survey's men and women in stature and mass: C. C. Gordon
// et al., NATICK/TR-15/007.
func mean() design.Sleeper {
	return design.Sleeper{Stature: (1756.2 + 1628.5) / 2, Mass: (85.52 + 67.76) / 2}
}

// Bodies as cylinders of like density: the breadth goes with √(mass / stature), and
// a given shoulder breadth replaces the estimated one alone.
func TestCentreHeight(t *testing.T) {
	const depth, breadth = (253.8 + 247.4 + 245.8 + 232.9) / 4, (510.4 + 450.3) / 2
	for _, r := range []struct {
		name                     string
		mass, stature, shoulders float64
		back, side               float64
	}{
		{"the mean body", 1, 1, 0, depth / 2, breadth / 2},
		{"four times the mass", 4, 1, 0, depth, breadth},
		{"four times the stature", 1, 4, 0, depth / 4, breadth / 4},
		{"twice both", 2, 2, 0, depth / 2, breadth / 2},
		{"shoulders given", 4, 1, 500, depth, 250},
	} {
		s := mean()
		s.Mass *= quantity.Kilograms(r.mass)
		s.Stature *= r.stature
		s.Shoulders = r.shoulders
		back, side := rig.CentreHeight(s)
		near(t, r.name+", back", back, r.back, 1e-9)
		near(t, r.name+", side", side, r.side, 1e-9)
	}
}

// The apexes' line over the weight by the two-point equation of a line, for beds
// whose ends differ in bars, legs and height.
func TestSteadinessOfUnlikeEnds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := bed()
		b.FootBar = rapid.Float64Range(800, 1100).Draw(t, "foot bar")
		b.FootLeg = b.FootBar * rapid.Float64Range(0.7, 1.1).Draw(t, "foot leg")
		b.Lift = quantity.Radians(rapid.Float64Range(-0.04, 0.04).Draw(t, "lift"))
		from := rapid.Float64Range(-720, 0).Draw(t, "load from")
		to := rapid.Float64Range(300, 720).Draw(t, "load to")
		s, err := hung.Solve(hung.Problem{Bed: b, Load: hung.EvenLoad(700, from, to)})
		if err != nil {
			t.Skip("does not hang")
		}
		r := rig.Steadiness(&s, mean())
		head, foot := s.Ends[hung.Head], s.Ends[hung.Foot]
		x := (from + to) / 2 // an even load's middle
		line := (head.ApexZ*(foot.ApexX-x) + foot.ApexZ*(x-head.ApexX)) / (foot.ApexX - head.ApexX)
		if math.Abs(r.X-x) > 1e-6 || math.Abs(r.Hooks-(line-s.Problem.Bottom(x))) > 1e-6 {
			t.Fatalf("%+v, want %g mm above the bottom line at %g", r, line-s.Problem.Bottom(x), x)
		}
		if math.Abs(r.Hooks-r.Back-244.975/2) > 1e-6 || math.Abs(r.Hooks-r.Side-480.35/2) > 1e-6 {
			t.Fatalf("%+v: centre of mass elsewhere than in the middle of the body", r)
		}
	})
}
