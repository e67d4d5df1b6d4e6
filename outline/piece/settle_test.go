package piece

import (
	"math"
	"testing"

	"slingloft/outline/geom"
)

func TestSettled(t *testing.T) {
	for _, r := range []struct{ x, want float64 }{
		{0, 0}, {1.00004, 1}, {1.00006, 1.0001}, {-1.00006, -1.0001}, {600.1, 600.1},
		// An inch over 32 is a half of the step: noise on either side changes nothing.
		{0.79375, 0.7938}, {math.Nextafter(0.79375, 0), 0.7938}, {0.79375 - 1e-11, 0.7938}, {-0.79375 + 1e-11, -0.7938},
		{-1e-9, 0},
	} {
		if got := settled(r.x); got != r.want || math.Signbit(got) != math.Signbit(r.want) {
			t.Errorf("settled(%v) = %v, want %v", r.x, got, r.want)
		}
	}
}

// Noise of the size that processors differ by leaves every number of a piece alike.
func TestSettledPieceWithNoise(t *testing.T) {
	build := func(noise float64) Piece {
		at := func(x, y float64) geom.Point { return geom.Pt(x+noise, y-noise) }
		return Piece{
			Cut:   geom.Ring{at(0, 0), at(100.12345, 0), at(100.12346, 0), at(100, 50), at(1e-6, 1e-6)},
			Holes: []geom.Ring{{at(10, 10), at(20, 10), at(20, 20)}},
			Lines: []Line{
				{Name: "open", Points: geom.Polyline{at(1, 1), at(2, 2), at(2.00001, 2)}},
				{Name: "short", Points: geom.Polyline{at(3, 3), at(3.00001, 3)}},
				{Name: "closed", Closed: true, Points: geom.Polyline{at(1, 1), at(2, 1), at(2, 2), at(1.00001, 1)}},
			},
			Labels: []Label{{Text: "a", At: at(0.79375, 5)}},
		}
	}
	a, b := build(0).Settled(), build(3e-11).Settled()
	same := func(what string, a, b []geom.Point, points int) {
		if len(a) != points || len(b) != points {
			t.Fatalf("%s: %d and %d points, want %d", what, len(a), len(b), points)
		}
		for i := range a {
			if a[i] != b[i] {
				t.Errorf("%s: %v and %v", what, a[i], b[i])
			}
		}
	}
	same("cut", a.Cut, b.Cut, 3)
	same("hole", a.Holes[0], b.Holes[0], 3)
	for i, n := range []int{2, 2, 3} {
		same(a.Lines[i].Name, a.Lines[i].Points, b.Lines[i].Points, n)
	}
	if a.Labels[0].At != b.Labels[0].At {
		t.Errorf("label at %v and %v", a.Labels[0].At, b.Labels[0].At)
	}
}
