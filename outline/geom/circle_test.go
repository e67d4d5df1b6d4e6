package geom

import (
	"math"
	"testing"
)

// The middle of a chord over the angle 2φ lies r cos φ from the centre: within the
// tolerance, and one chord fewer would not do.
func TestArcPointsKeepTheTolerance(t *testing.T) {
	centre := Pt(30, -40)
	for _, c := range []struct{ radius, turn, tolerance float64 }{
		{100, 1, 0.005}, {100, -2 * math.Pi, 0.005}, {2.5, math.Pi / 2, 0.005}, {1, 2 * math.Pi, 0.001}, {7000, 0.01, 0.001},
	} {
		l := ArcPoints(centre, Pt(0, c.radius), c.turn, c.tolerance)
		n := float64(len(l) - 1)
		sag := func(n float64) float64 { return c.radius * (1 - math.Cos(c.turn/n/2)) }
		if sag(n) > c.tolerance*(1+1e-9) || sag(n-1) <= c.tolerance {
			t.Errorf("%+v: %g chords, off by %g, one fewer by %g", c, n, sag(n), sag(n-1))
		}
		for i, p := range l {
			want := centre.Plus(Direction(math.Pi/2 + c.turn*float64(i)/n).Times(c.radius))
			if p.Dist(want) > 1e-11*c.radius {
				t.Errorf("%+v: point %d is %v, want %v", c, i, p, want)
			}
		}
	}
}

func TestArcPointsBounds(t *testing.T) {
	for _, c := range []struct {
		what                    string
		radius, turn, tolerance float64
		chords                  int
	}{
		{"a circle below the tolerance", 1e-4, 2 * math.Pi, 0.005, 3},
		{"a quarter of it", 1e-4, math.Pi / 2, 0.005, 1},
		{"no turn", 10, 0, 0.005, 1},
		{"no radius", 0, math.Pi, 0.005, 2},
		{"a planet", 6e9, 2 * math.Pi, 0.005, maxChords},
		{"not a number", math.NaN(), 1, 0.005, 1},
		{"infinite", math.Inf(1), 1, 0.005, maxChords},
	} {
		if n := len(ArcPoints(Point{}, Pt(c.radius, 0), c.turn, c.tolerance)) - 1; n != c.chords {
			t.Errorf("%s: %d chords, want %d", c.what, n, c.chords)
		}
	}
	if r := CirclePoints(Pt(1, 2), 5, 0.01); r[0] != Pt(6, 2) || math.Abs(r.Area()-25*math.Pi) > 0.01*2*math.Pi*5 || r.Area() < 0 {
		t.Errorf("a circle from %v with an area of %v", r[0], r.Area())
	}
}
