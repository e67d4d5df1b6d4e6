package finished_test

import (
	"testing"

	"slingloft/outline/finished"
)

// Rates are what hanging anew with a part a little longer and shorter shows, level
// and with the bed askew under a weight aside.
func TestRates(t *testing.T) {
	q := problem()
	_, s := made(t, q)
	h := finished.Make(finished.Made{Shape: &s, Lines: lines, SideEA: 200e3, LegEA: 150e3, Weft: 60})
	for _, row := range []struct {
		change finished.Change
		aside  float64
	}{{}, {finished.Change{Leg: [2][2]float64{{20, 0}, {0, 5}}, Girth: 4}, 30}} {
		w := finished.Weight{Load: q.Load, Centre: centre, Aside: row.aside}
		p := mustHang(t, h, row.change, w)
		r, err := h.Rates(p)
		if err != nil {
			t.Fatal(err)
		}
		const d = 0.5
		for k := range finished.Parts {
			up := mustHang(t, h, row.change.Plus(k.Change(d), 1), w)
			down := mustHang(t, h, row.change.Plus(k.Change(-d), 1), w)
			sameHeights(t, r.Part[k], up, down, 2*d)
		}
		up, down := w, w
		up.Aside += d
		down.Aside -= d
		sameHeights(t, r.Aside, mustHang(t, h, row.change, up), mustHang(t, h, row.change, down), 2*d)
	}
}

func mustHang(t testing.TB, h finished.Hammock, c finished.Change, w finished.Weight) finished.Pose {
	t.Helper()
	p, err := h.Hang(c, w)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func sameHeights(t *testing.T, rate finished.Heights, up, down finished.Pose, step float64) {
	t.Helper()
	a, b := up.Heights(), down.Heights()
	near(t, "middle", rate.Middle, (a.Middle-b.Middle)/step, 2e-4)
	for e := range 2 {
		near(t, "apex", rate.Apex[e], (a.Apex[e]-b.Apex[e])/step, 2e-4)
		for s := range 2 {
			near(t, "tip", rate.Tips[e][s], (a.Tips[e][s]-b.Tips[e][s])/step, 2e-4)
		}
	}
}

func BenchmarkHang(b *testing.B) {
	q := problem()
	h, _ := made(b, q)
	for b.Loop() {
		hang(b, h, finished.Change{Leg: [2][2]float64{{5, 0}, {}}}, q.Load)
	}
}

func BenchmarkRates(b *testing.B) {
	q := problem()
	h, _ := made(b, q)
	p := hang(b, h, finished.Change{}, q.Load)
	for b.Loop() {
		if _, err := h.Rates(p); err != nil {
			b.Fatal(err)
		}
	}
}
