package hung_test

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	_ "slingloft/outline/rapidtest"
)

// A load is the sum of its parts, each with its start and without its end.
func TestLoadAt(t *testing.T) {
	l := hung.Load{{From: 0, To: 10, Start: 1, End: 3}, {From: 5, To: 15, Start: 10, End: 10}}
	for x, want := range map[float64]float64{-0.1: 0, 0: 1, 2.5: 1.5, 5: 12, 9.999999: 13, 10: 10, 14: 10, 15: 0, 20: 0} {
		near(t, "load", l.At(x), want, 1e-6)
	}
	if got := l.Breaks(); !slices.Equal(got, []float64{0, 5, 10, 15}) {
		t.Errorf("breaks at %v", got)
	}
	force, x := l.Total()
	// A trapezium of 20 N whose middle lies 10 (1 + 2·3) / 3 (1 + 3) = 35/6 in, and 100 N
	// at 10.
	near(t, "force", force, 120, 1e-12)
	near(t, "its place", x, (20*35/6.+100*10)/120, 1e-12)
	if force, x = (hung.Load{}).Total(); force != 0 || x != 0 {
		t.Errorf("no load of %g at %g", force, x)
	}
}

// Force and place by adding up thin slices.
func TestLoadTotalBySlices(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var l hung.Load
		for range rapid.IntRange(1, 4).Draw(t, "parts") {
			from := rapid.Float64Range(-900, 900).Draw(t, "from")
			l = append(l, hung.LinearLoad{From: from, To: from + rapid.Float64Range(10, 500).Draw(t, "long"),
				Start: rapid.Float64Range(0.1, 2).Draw(t, "start"), End: rapid.Float64Range(0.1, 2).Draw(t, "end")})
		}
		force, x := l.Total()
		// Between two breaks the load is straight: one slice with its middle, and its moment
		// by Simpson's rule, which is exact for a square.
		b := l.Breaks()
		sum, moment := 0.0, 0.0
		for i := 1; i < len(b); i++ {
			long := b[i] - b[i-1]
			mid := (b[i] + b[i-1]) / 2
			low, high := mid-long/4, mid+long/4
			w := func(x float64) float64 { return l.At(mid) + (l.At(high)-l.At(low))*(x-mid)/(long/2) }
			if long == 0 {
				continue
			}
			sum += long * l.At(mid)
			moment += long / 6 * (w(b[i-1])*b[i-1] + 4*l.At(mid)*mid + w(b[i])*b[i])
		}
		if math.Abs(force-sum) > 1e-9*sum || math.Abs(x*force-moment) > 1e-9*(math.Abs(moment)+1e3*sum) {
			t.Fatalf("%+v: %g N at %g, by slices %g N at %g", l, force, x, sum, moment/sum)
		}
	})
}

// Masses of body parts after Dempster, D. A. Winter, Biomechanics and Motor Control of
// Human Movement, table 4.1: head and neck 0.081, trunk and arms 0.497 + 2 · 0.05, legs
// 2 · 0.161; places from the survey's mean lengths, NATICK/TR-15/007.
func TestSleeperParts(t *testing.T) {
	l := hung.SleeperLoad(design.Sleeper{Stature: 2000, Mass: 100}, 50)
	weight := 100 * hung.Gravity
	const mean = (1756.2 + 1628.5) / 2
	for i, want := range []struct{ part, from, to float64 }{
		{0.081, 50, 50 + 2000*(199.5+189.8)/2/mean},
		{0.597, 50 + 2000*(199.5+189.8)/2/mean, 50 + 2000*(1-(845.9+782.3)/2/mean)},
		{0.322, 50 + 2000*(1-(845.9+782.3)/2/mean), 2050},
	} {
		force, _ := l[i : i+1].Total()
		near(t, "part of the weight", force/weight, want.part, 1e-12)
		near(t, "from", l[i].From, want.from, 1e-12)
		near(t, "to", l[i].To, want.to, 1e-12)
	}
	// The legs' centre lies 0.447 of the way from hip to ankle (lateral malleolus): 370.1 mm
	// below the hip of men 1756.2 mm tall, 349.8 of women 1628.5.
	_, x := l[2:].Total()
	hip := 50 + 2000*(1-(900.9+845.4)/2/mean)
	near(t, "legs' centre below the hip", x-hip, 2000*(370.1+349.8)/2/mean, 0.1)
	if len(l) != 3 || l[2].End < 0 || l[2].End >= l[2].Start {
		t.Errorf("legs weigh from %g to %g N/mm", l[2].Start, l[2].End)
	}
}

// A tube of 25 × 1.5 mm of 2710 kg/m³ weighs 0.3001 kg a metre: π/4 (25² − 22²) mm² of
// it. Tips reach beyond the bar.
func TestBarMass(t *testing.T) {
	tube := design.Bar{Outer: 25, Wall: 1.5, Density: 2710}
	for _, r := range []struct {
		name string
		bar  design.Bar
		long float64
		area float64
		mass float64
	}{
		{"tube", tube, 1000, 110.7411, 110.7411 * 2710e-6},
		{"with tips", design.Bar{Outer: 25, Wall: 1.5, Density: 2710, TipReach: 7}, 1000, 110.7411, 110.7411 * 2710e-6 * 0.986},
		{"rod", design.Bar{Outer: 20, Density: 700}, 500, 314.15927, 314.15927 * 700e-6 * 0.5},
		{"wall of half the diameter", design.Bar{Outer: 20, Wall: 10, Density: 700}, 500, 314.15927, 314.15927 * 700e-6 * 0.5},
		{"density not given", design.Bar{Outer: 25, Wall: 1.5}, 1000, 110.7411, 0},
		{"shorter than its tips", design.Bar{Outer: 25, Wall: 1.5, Density: 2710, TipReach: 60}, 100, 110.7411, 0},
	} {
		near(t, r.name+", area", hung.BarArea(r.bar), r.area, 1e-6)
		near(t, r.name+", mass", float64(hung.BarMass(r.bar, r.long)), r.mass, 1e-6)
	}
}
