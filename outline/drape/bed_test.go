package drape_test

import (
	"math"
	"testing"

	"slingloft/outline/drape"
	"slingloft/outline/geom"
)

// A bed whose cut changes comes to hang from where it hung before as it does from nothing,
// in a part of the steps.
func TestBedFollows(t *testing.T) {
	j := demo(t, false)
	s := solve(t, j.problem)
	p, r := lay(t, &s, j.stiffness.Weft)
	p, r = shortened(p, r, &s, j.stiffness)
	set := drape.Settings{Cell: 50, Step: 3e-3, Steps: 8000}
	b := drape.NewBed(&r, j.stiffness)
	for _, part := range []float64{0, 0.02, 0.024} {
		q := p
		wide := func(l []geom.Point) (out []geom.Point) {
			for _, at := range l {
				out = append(out, geom.Pt(at.X, at.Y*(1+part*math.Cos(at.X/300))))
			}
			return out
		}
		q.Side = wide(p.Side)
		for e := range q.Ends {
			q.Ends[e] = wide(p.Ends[e])
		}
		warm, err := b.Hang(&q, set)
		if err != nil {
			t.Fatal(err)
		}
		cold, err := drape.Hang(&q, &r, j.stiffness, set)
		if err != nil {
			t.Fatal(err)
		}
		t.Logf("%d steps, from nothing %d", warm.Steps, cold.Steps)
		if part != 0 && warm.Steps > cold.Steps/2 {
			t.Errorf("%d steps, from nothing %d", warm.Steps, cold.Steps)
		}
		for i, at := range cold.Bottom {
			if math.Abs(at.X) < 800 {
				like(t, "height over the drop", 400+warm.Bottom[i].Y, 400+at.Y, 2e-4)
			}
		}
		forces := func(h drape.Hung) [4]float64 { return [4]float64{h.Leg[0], h.Leg[1], h.Bar[0], h.Bar[1]} }
		for i, f := range forces(cold) {
			like(t, "force", forces(warm)[i], f, 1e-3)
		}
	}
}
