package geom_test

import (
	"math"
	"testing"

	g "slingloft/outline/geom"
)

// A point as far from both legs of a corner is nearest to the first leg, whatever
// the last bits of its coordinates.
func TestNearestBesideACorner(t *testing.T) {
	arc := g.NewArc(g.Polyline{{X: 0, Y: 0}, {X: 10, Y: 0}, {X: 10, Y: 10}})
	for _, noise := range []float64{-1e-12, 0, 1e-12} {
		s, d := arc.Nearest(g.Pt(7+noise, 3-noise))
		if math.Abs(s-7) > 1e-9 || math.Abs(d-3) > 1e-9 {
			t.Errorf("with noise %g: nearest at %g, %g off, want 7 and 3", noise, s, d)
		}
	}
	if s, _ := arc.Nearest(g.Pt(7.001, 3)); math.Abs(s-13) > 1e-9 {
		t.Errorf("nearer to the second leg: at %g, want 13", s)
	}
}

// At a vertex the direction is that of the segment before, whatever the last bits of
// the length.
func TestAtAVertex(t *testing.T) {
	arc := g.NewArc(g.Polyline{{X: 0, Y: 0}, {X: 10, Y: 0}, {X: 10, Y: 10}})
	for _, noise := range []float64{-1e-12, 0, 1e-12} {
		if p, dir := arc.At(10 + noise); dir != g.Pt(1, 0) || p.Dist(g.Pt(10, 0)) > 1e-9 {
			t.Errorf("with noise %g: %v, direction %v", noise, p, dir)
		}
	}
	if _, dir := arc.At(10.001); dir != g.Pt(0, 1) {
		t.Errorf("past the vertex: direction %v", dir)
	}
}
