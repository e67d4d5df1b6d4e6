package series

import (
	"cmp"
	"math"
	"slices"
	"testing"

	"slingloft/export/sheet/chart"
	"slingloft/export/sheet/giventest"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

// hungBed returns the built-in bed, some lines of its design replaced.
func hungBed(t *testing.T, lines ...string) bed {
	t.Helper()
	d := giventest.Hung(t, lines...)
	return bed{&d}
}

// ids returns the charts that a bed has.
func ids(b bed) []string {
	var out []string
	for _, c := range All(b.Data) {
		out = append(out, c.ID)
	}
	return out
}

// A chart without curves is left out: of how a bed hangs whose side is in balance.
func TestAll(t *testing.T) {
	want := []string{"chart-side", "chart-girth", "chart-cord", "chart-cloth", "chart-straight", "chart-angles", "chart-forces"}
	if got := ids(hungBed(t)); !slices.Equal(got, want) {
		t.Errorf("charts %q, want %q", got, want)
	}
	for _, c := range All(hungBed(t).Data) {
		if _, err := chart.Draw(c.Chart); err != nil || c.Caption == "" || c.Title == "" || c.Desc == "" {
			t.Errorf("%s: %v, caption %q, title %q, desc %q", c.ID, err, c.Caption, c.Title, c.Desc)
		}
	}
}

// The side is measured against a parabola of its own depth, so that both meet at the bars
// and in the middle of a symmetric bed; an arc of that depth lies deeper between.
func TestSideChart(t *testing.T) {
	b := hungBed(t, `head_bar = "900 mm"`, `head_bar = "820 mm"`)
	c, ok := b.sideChart()
	if !ok {
		t.Fatal("no chart")
	}
	for _, l := range c.Lines {
		last := len(l.Y) - 1
		if math.Abs(l.Y[0]) > 1e-6 || math.Abs(l.Y[last]) > 1e-6 {
			t.Errorf("%s: %g and %g off at the bars", l.Name, l.Y[0], l.Y[last])
		}
	}
	arc := c.Lines[1]
	for i, y := range arc.Y {
		if y < -1e-9 {
			t.Fatalf("the arc lies %g over the parabola at %g", -y, arc.X[i])
		}
	}
}

// Girth and opening are told along the bed: girth is the longer everywhere, and at a bar
// it is that of the section there.
func TestGirthChart(t *testing.T) {
	b := hungBed(t)
	c, _ := b.girthChart()
	girth, opening := c.Lines[0], c.Lines[1]
	for i := range girth.Y {
		if girth.Y[i] <= opening.Y[i] {
			t.Fatalf("at %g the cloth is %g long and the cords are %g apart", girth.X[i], girth.Y[i], opening.Y[i])
		}
	}
	near := math.Inf(1)
	at := 0
	for i, x := range girth.X {
		if d := math.Abs(x - c.At[0]); d < near {
			near, at = d, i
		}
	}
	if want := b.Shape.Ends[hung.Head].Section.Girth(); near > 1e-6 || math.Abs(girth.Y[at]-want) > 1e-6 {
		t.Errorf("%g off the head bar the girth is %g, want %g", near, girth.Y[at], want)
	}
}

// In inches lengths are divided by 25.4 and forces by that of a pound.
func TestChartsInInches(t *testing.T) {
	mm, in := hungBed(t), hungBed(t)
	in.Style = quantity.Style{Inches: true, Fraction: 16}
	for name, row := range map[string]struct {
		of   func(bed) (Captioned, bool)
		x, y float64
	}{
		"side": {bed.sideChart, 25.4, 25.4}, "girth": {bed.girthChart, 25.4, 25.4}, "straight": {bed.straightChart, 25.4, 25.4},
		"cord": {bed.cordChart, 25.4, 4.4482216152605}, "cloth": {bed.clothChart, 25.4, 4448.2216152605 / 25.4}, // N/m and lbf/in
	} {
		a, _ := row.of(mm)
		z, _ := row.of(in)
		for k, l := range a.Lines {
			for i := range l.X {
				if x, y := z.Lines[k].X[i]*row.x, z.Lines[k].Y[i]*row.y; math.Abs(x-l.X[i]) > 1e-9*(1+math.Abs(x)) ||
					math.Abs(y-l.Y[i]) > 1e-9*(1+math.Abs(y)) {
					t.Fatalf("%s, %s: %g, %g in inches, %g, %g in mm", name, l.Name, x, y, l.X[i], l.Y[i])
				}
			}
		}
	}
}

// Straight tails give up nothing in the bay.
func TestStraightChart(t *testing.T) {
	c, ok := hungBed(t).straightChart()
	if !ok {
		t.Fatal("no chart")
	}
	worst := 0.0
	for i, x := range c.Lines[0].X {
		y := c.Lines[0].Y[i]
		if x > c.At[0]+1e-6 && x < c.At[1]-1e-6 && math.Abs(y) > 0.5 {
			t.Errorf("%g too long at %g, in the bay", y, x)
		}
		worst = max(worst, math.Abs(y))
	}
	if worst < 1 {
		t.Errorf("straight tails depart by no more than %g", worst)
	}
}

// Each shape of the sweep is solved for its own value of the control, the middle one for
// that of the design; a deeper side takes less pull.
func TestSweep(t *testing.T) {
	b := hungBed(t)
	w := b.sweep()
	if i := slices.Index(w.x, w.own); len(w.x) != 9 || i != 4 || w.shapes[i].Thrust != b.Shape.Thrust {
		t.Fatalf("own value %g of %v", w.own, w.x)
	}
	c, ok := b.forceChart(w)
	if !ok || !slices.IsSortedFunc(c.Lines[0].Y, func(a, b float64) int { return cmp.Compare(b, a) }) {
		t.Errorf("tension %v against the side depth %v", c.Lines[0].Y, c.Lines[0].X)
	}
	if _, ok := b.forceChart(swept{x: w.x[:1], shapes: w.shapes[:1]}); ok {
		t.Error("a chart of one point")
	}
	if _, ok := b.angleChart(swept{}); ok {
		t.Error("a chart of nothing")
	}
}
