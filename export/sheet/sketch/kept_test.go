package sketch

import (
	"math"
	"strings"
	"testing"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/giventest"
	"slingloft/outline/geom"
)

func TestWithin(t *testing.T) {
	square := func(x, y, side float64) geom.Ring {
		return geom.BoxOf(geom.Pt(x, y), geom.Pt(x+side, y+side)).Ring()
	}
	for _, row := range []struct {
		what string
		ring geom.Ring
		area float64
	}{
		{"inside", square(10, 10, 20), 400},
		{"over an edge", square(90, 10, 20), 200},
		{"over a corner", square(-10, -10, 20), 100},
		{"larger than the stock", square(-10, -10, 200), 100 * 50},
		{"past the end", square(100.5, 0, 20), 0},
	} {
		got := within(row.ring, 100, 50)
		if a := math.Abs(got.Area()); math.Abs(a-row.area) > 1e-9 {
			t.Errorf("%s: area %g, want %g", row.what, a, row.area)
		}
	}
}

// What is kept clear and lies on the drawn stock is hatched, and the legend counts it.
func TestKeptIsDrawn(t *testing.T) {
	d := giventest.Hung(t)
	l := given.Lay{Width: 2000, Height: 1500, Roll: true, Kept: []given.Kept{
		{Flaw: true, Outline: geom.BoxOf(geom.Pt(100, 100), geom.Pt(200, 150)).Ring()},
		{Flaw: true, Outline: geom.BoxOf(geom.Pt(2500, 100), geom.Pt(2600, 150)).Ring()},
		{Outline: geom.BoxOf(geom.Pt(1900, 900), geom.Pt(2100, 1000)).Ring()},
	}}
	d.Lays = []given.Lay{l}
	p := Lay(&d, 0)
	if want := "kept clear: 1 flaw of the cloth and 1 keep-out."; !strings.Contains(p.Desc, want) {
		t.Errorf("no %q in %q", want, p.Desc)
	}
	d.Lays[0].Kept = nil
	if q := Lay(&d, 0); strings.Contains(q.Desc, "kept clear") || len(q.Items) >= len(p.Items) {
		t.Errorf("%d items with nothing kept clear, %d with it: %q", len(q.Items), len(p.Items), q.Desc)
	}
}
