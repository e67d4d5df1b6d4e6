package geom

import (
	"math/rand/v2"
	"slices"
	"testing"
)

func TestSegments(t *testing.T) {
	for _, c := range []struct {
		what       string
		a, b, c, d Point
		straddle   bool
		at         Point
		crossing   bool
	}{
		{"crossing", Pt(0, 0), Pt(4, 4), Pt(0, 4), Pt(4, 0), true, Pt(2, 2), true},
		{"touching with an end", Pt(0, 0), Pt(4, 0), Pt(1, 0), Pt(3, 5), true, Pt(1, 0), true},
		{"sharing an end", Pt(0, 0), Pt(4, 0), Pt(4, 0), Pt(4, 3), true, Pt(4, 0), true},
		{"apart", Pt(0, 0), Pt(4, 0), Pt(1, 1), Pt(3, 5), false, Point{}, false},
		{"one would cross, run on", Pt(0, 0), Pt(4, 0), Pt(5, -1), Pt(5, 1), false, Point{}, false},
		{"side by side", Pt(0, 0), Pt(4, 0), Pt(0, 1), Pt(4, 1), false, Point{}, false},
		{"on one line, apart", Pt(0, 0), Pt(1, 0), Pt(2, 0), Pt(3, 0), true, Point{}, false},
	} {
		if got := Straddle(c.a, c.b, c.c, c.d); got != c.straddle {
			t.Errorf("%s: straddle %v", c.what, got)
		}
		if at, ok := Crossing(c.a, c.b, c.c, c.d); ok != c.crossing || at.Dist(c.at) > 1e-12 {
			t.Errorf("%s: crossing %v %v", c.what, at, ok)
		}
	}
}

// Side changes its sign with the direction, and its value is twice a triangle's area.
func TestSide(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 7))
	for range 200 {
		a, b, p := Pt(rng.Float64(), rng.Float64()), Pt(rng.Float64(), rng.Float64()), Pt(rng.Float64(), rng.Float64())
		if got, want := Side(a, b, p), 2*(Ring{a, b, p}).Area(); got-want > 1e-15 || want-got > 1e-15 {
			t.Fatalf("side %v, twice the area %v", got, want)
		}
		if s, r := Side(a, b, p), Side(b, a, p); s*r > 0 {
			t.Fatalf("%v and %v on one side both ways", s, r)
		}
	}
}

func TestBoxCut(t *testing.T) {
	box := Box{Pt(0, 0), Pt(10, 6)}
	for _, c := range []struct {
		what  string
		a, b  Point
		parts Interval
	}{
		{"across", Pt(-10, 3), Pt(30, 3), Interval{0.25, 0.5}},
		{"inside", Pt(1, 1), Pt(2, 5), Interval{0, 1}},
		{"out through the top", Pt(5, 3), Pt(5, 9), Interval{0, 0.5}},
		{"past a corner", Pt(-4, 4), Pt(4, 12), Interval{0, 0}},
		{"beside, along an edge", Pt(-4, 7), Pt(20, 7), Interval{0, 0}},
	} {
		got := box.Cut(c.a, c.b.Minus(c.a))
		if empty := c.parts.Lo >= c.parts.Hi; empty != (got.Lo >= got.Hi) || !empty && got != c.parts {
			t.Errorf("%s: %v, want %v", c.what, got, c.parts)
		}
	}
}

func TestLevelCrossings(t *testing.T) {
	// A letter U, its arms 2 wide, hollow from y = 2 up.
	u := Ring{Pt(0, 0), Pt(6, 0), Pt(6, 5), Pt(4, 5), Pt(4, 2), Pt(2, 2), Pt(2, 5), Pt(0, 5)}
	for _, c := range []struct {
		y    float64
		want []float64
	}{{1, []float64{0, 6}}, {3, []float64{0, 2, 4, 6}}, {2, []float64{0, 2, 4, 6}}, {9, nil}} {
		if got := u.LevelCrossings(c.y); !slices.Equal(got, c.want) {
			t.Errorf("at %g: %v, want %v", c.y, got, c.want)
		}
	}
}
