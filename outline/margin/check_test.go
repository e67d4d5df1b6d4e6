package margin_test

import (
	"reflect"
	"slices"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/margin"
)

// A check fails where its capacity is known and too little for its load, no more.
func TestUnmet(t *testing.T) {
	for _, r := range []struct {
		name string
		c    margin.Check
		want bool
	}{
		{"enough", margin.Check{Capacity: 10, Ratio: 5, Required: 5}, false},
		{"too little", margin.Check{Capacity: 10, Ratio: 4.99, Required: 5}, true},
		{"nothing known", margin.Check{Required: 5}, false},
		{"a bound that is too little", margin.Check{Capacity: 10, Ratio: 1, Required: 5,
			Bound: true, Missing: []design.Key{"splice.efficiency"}}, true},
		{"a bound that would do", margin.Check{Capacity: 10, Ratio: 9, Required: 5,
			Bound: true, Missing: []design.Key{"splice.efficiency"}}, false},
	} {
		if got := r.c.Unmet(); got != r.want {
			t.Errorf("%s: unmet %v, want %v", r.name, got, r.want)
		}
	}
}

// Checks are sorted into those that fail, that fail and are allowed to, and those
// with a value missing; the nearest to its own requirement governs.
func TestReportLists(t *testing.T) {
	const ample, unknown, short, half, small, waived = margin.SideCord, margin.HeadLeg, margin.FootLeg,
		margin.HeadYield, margin.ClothStrip, margin.SideSeam
	r := margin.Report{Checks: []margin.Check{
		{Part: ample, Capacity: 100, Ratio: 20, Required: 5},
		{Part: unknown, Required: 5, Missing: []design.Key{"cord.leg.strength"}},
		{Part: short, Capacity: 100, Ratio: 4.5, Required: 5},
		{Part: half, Capacity: 100, Ratio: 1, Required: 2, Waived: true},
		{Part: small, Capacity: 100, Ratio: 1.6, Required: 1.5},
		{Part: waived, Capacity: 100, Ratio: 3, Required: 2, Waived: true},
	}}
	parts := func(checks []margin.Check) []margin.Part {
		var out []margin.Part
		for _, c := range checks {
			out = append(out, c.Part)
		}
		return out
	}
	for what, row := range map[string]struct{ got, want []margin.Part }{
		"unmet":   {parts(r.Unmet()), []margin.Part{short}},
		"waived":  {parts(r.Waived()), []margin.Part{half}},
		"unknown": {parts(r.Unknown()), []margin.Part{unknown}},
	} {
		if !reflect.DeepEqual(row.got, row.want) {
			t.Errorf("%s: %v, want %v", what, row.got, row.want)
		}
	}
	// Whatever the order they stand in.
	for range 2 {
		if g, ok := r.Governing(); !ok || g.Part != half {
			t.Errorf("governing %+v, %v", g, ok)
		}
		slices.Reverse(r.Checks)
	}
	r.Checks = []margin.Check{{Part: unknown, Required: 5}}
	if g, ok := r.Governing(); ok {
		t.Errorf("%+v governs with nothing known", g)
	}
}

// In every report: the margin is capacity over load, met is what is known and
// enough, a bound is a capacity with something missing, cloth and seams are judged
// by width.
func TestChecksAreComplete(t *testing.T) {
	for name, change := range map[string]func(in *margin.Input){
		"all known":     func(*margin.Input) {},
		"weak":          func(in *margin.Input) { in.Design.Side.Strength, in.Design.Bar.Yield = 900, 12 },
		"much missing":  func(in *margin.Input) { in.Design.Splice.Efficiency, in.Design.Cloth.StripStrength = 0, 0 },
		"no data sheet": func(in *margin.Input) { in.Design.Bar.Modulus, in.Design.Side.Strength, in.Hook = 0, 0, 0 },
	} {
		d := sample()
		s := solve(t, d)
		in := joined(hooked(hangs(&s, d), 12e3))
		change(&in)
		met := 0
		for _, c := range margin.Of(in).Checks {
			if want := c.Capacity / c.Load; c.Ratio != want {
				t.Errorf("%s, %s: margin %g, want %g", name, c.Name(), c.Ratio, want)
			}
			if want := c.Capacity > 0 && len(c.Missing) == 0 && c.Ratio >= c.Required; c.Met != want {
				t.Errorf("%s, %s: met %v, want %v: %+v", name, c.Name(), c.Met, want, c)
			}
			if want := c.Capacity > 0 && len(c.Missing) > 0; c.Bound != want {
				t.Errorf("%s, %s: bound %v, want %v", name, c.Name(), c.Bound, want)
			}
			if c.Capacity == 0 && len(c.Missing) == 0 {
				t.Errorf("%s, %s: no capacity, and nothing is said to be missing", name, c.Name())
			}
			if perWidth := c.Part >= margin.ClothStrip; perWidth != (c.Unit == margin.PerWidth) {
				t.Errorf("%s, %s: in %v", name, c.Name(), c.Unit)
			}
			if c.Met {
				met++
			}
		}
		if met == 0 {
			t.Errorf("%s: no check is met", name)
		}
	}
}
