package finished

import (
	"math"
	"slingloft/outline/geom"
	"testing"
)

// A bar between two lines from two anchors, its centre of mass below it and a little
// aside, tilts by x / (c + ab/4h + hb²/(a−b)²): the closed form for anchors a apart, a
// bar b, a drop h, a centre c below the bar. (A centre above the bar would turn the bar
// about its own length, which the plane formula leaves out.)
func TestTilt(t *testing.T) {
	for _, row := range []struct{ a, b, h, c, perWeight float64 }{
		{0, 900, 450, 100, 550},
		{0, 900, 600, 100, 700},
		{300, 900, 450, 100, 1262.5},
		{600, 900, 450, 100, 4450},
	} {
		const aside = 1.0
		long := math.Hypot((row.b-row.a)/2, row.h)
		w := web{
			at:      []geom.Point3{geom.Pt3(0, -row.b/2, -row.h), geom.Pt3(0, row.b/2, -row.h), geom.Pt3(0, aside, -row.h-row.c), geom.Pt3(200, 0, -row.h)},
			anchors: [2]geom.Point3{geom.Pt3(0, -row.a/2, 0), geom.Pt3(0, row.a/2, 0)},
			weight:  []float64{0, 0, 1000, 0},
		}
		const stiff = 1e9
		join := func(a, b int) {
			w.lines = append(w.lines, line{a, b, w.place(b).Minus(w.place(a)).Len(), stiff, true})
		}
		w.lines = []line{{-1, 0, long, stiff, false}, {-2, 1, long, stiff, false}}
		// The bar and its weight are one stiff body.
		for i := range w.at {
			for k := range i {
				join(k, i)
			}
		}
		if err := w.rest(); err != nil {
			t.Fatal(row, err)
		}
		d := w.at[1].Minus(w.at[0])
		got := math.Abs(math.Atan2(d.Z, d.Y))
		want := aside / row.perWeight
		if math.Abs(got-want) > 2e-3*want {
			t.Errorf("%+v: tilt %.6g, want %.6g", row, got, want)
		}
	}
}
