package geom_test

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/geom"
)

// regular returns n corners of a circle of the given radius, counter-clockwise.
func regular(n int, radius float64) geom.Ring {
	var r geom.Ring
	for k := range n {
		s, c := math.Sincos(2 * math.Pi * float64(k) / float64(n))
		r = append(r, geom.Pt(c, s).Times(radius))
	}
	return r
}

// Areas and outlines in closed form: n corners of a circle have an area of n/2 sin 2π/n
// and a length of 2 n sin π/n times the radius, squared and not.
func TestRingMeasures(t *testing.T) {
	for _, n := range []int{3, 4, 6, 17, 360} {
		r := regular(n, 10)
		area, long := 50*float64(n)*math.Sin(2*math.Pi/float64(n)), 20*float64(n)*math.Sin(math.Pi/float64(n))
		if math.Abs(r.Area()-area) > 1e-9 || math.Abs(r.Reversed().Area()+area) > 1e-9 {
			t.Errorf("%d corners: area %g, the other way round %g, want %g", n, r.Area(), r.Reversed().Area(), area)
		}
		if math.Abs(r.Perimeter()-long) > 1e-9 {
			t.Errorf("%d corners: outline %g, want %g", n, r.Perimeter(), long)
		}
	}
	for _, r := range []geom.Ring{nil, {{X: 1, Y: 1}}, {{X: 1, Y: 1}, {X: 5, Y: 5}}} {
		if r.Area() != 0 || r.Contains(geom.Pt(1, 1)) || len(r.Closed()) > len(r)+1 {
			t.Errorf("%v has an area of %g", r, r.Area())
		}
	}
}

// A ring moved keeps its area and its sense, mirrored or not, and holds what it held.
func TestRingMoved(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := func(lo, hi float64, name string) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
		var r geom.Ring
		n := rapid.IntRange(3, 12).Draw(t, "n")
		for k := range n {
			s, c := math.Sincos(2 * math.Pi * float64(k) / float64(n))
			r = append(r, geom.Pt(c, s).Times(f(20, 60, "radius")))
		}
		m := geom.Motion{Turn: f(-7, 7, "turn"), Shift: geom.Pt(f(-100, 100, "x"), f(-100, 100, "y")), Mirror: rapid.Bool().Draw(t, "mirror")}
		moved := r.Moved(m)
		if math.Abs(moved.Area()-r.Area()) > 1e-6 || math.Abs(moved.Perimeter()-r.Perimeter()) > 1e-6 {
			t.Fatalf("area %g became %g, outline %g became %g", r.Area(), moved.Area(), r.Perimeter(), moved.Perimeter())
		}
		p := geom.Pt(f(-60, 60, "px"), f(-60, 60, "py"))
		if _, d := geom.NewArc(r.Closed()).Nearest(p); d > 1e-6 && r.Contains(p) != moved.Contains(m.Apply(p)) {
			t.Fatalf("%v lies inside %v, moved %v", p, r.Contains(p), moved.Contains(m.Apply(p)))
		}
		if first := r.Reversed().CounterClockwise(); math.Abs(first.Area()-r.Area()) > 1e-9 {
			t.Fatalf("turned counter-clockwise its area is %g, not %g", first.Area(), r.Area())
		}
	})
}

// The crossings of a level line leave and enter by turns: between the first and second
// it is inside.
func TestLevelCrossingsAndContains(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(3, 12).Draw(t, "n")
		var r geom.Ring
		for range n {
			r = append(r, geom.Pt(rapid.Float64Range(-50, 50).Draw(t, "x"), rapid.Float64Range(-50, 50).Draw(t, "y")))
		}
		y := rapid.Float64Range(-50, 50).Draw(t, "level")
		at := r.LevelCrossings(y)
		if len(at)%2 != 0 || !slices.IsSorted(at) {
			t.Fatalf("crossings at %v", at)
		}
		for i := 0; i+1 < len(at); i++ {
			if at[i+1]-at[i] < 1e-6 {
				continue
			}
			if in := r.Contains(geom.Pt((at[i]+at[i+1])/2, y)); in != (i%2 == 0) {
				t.Fatalf("between %g and %g at %g: inside %v", at[i], at[i+1], y, in)
			}
		}
	})
}

func TestDeduped(t *testing.T) {
	for _, r := range []struct {
		name string
		in   geom.Ring
		want int
	}{
		{"nothing", nil, 0},
		{"all apart", regular(5, 10), 5},
		{"one twice", geom.Ring{{X: 0, Y: 0}, {X: 5, Y: 0}, {X: 5.005, Y: 0}, {X: 5, Y: 5}}, 3},
		{"the start again at the end", geom.Ring{{X: 0, Y: 0}, {X: 5, Y: 0}, {X: 5, Y: 5}, {X: 0, Y: 0.005}}, 3},
		{"all at one place", geom.Ring{{X: 1, Y: 1}, {X: 1, Y: 1}, {X: 1, Y: 1}}, 1},
		{"a crawl", geom.Ring{{X: 0, Y: 0}, {X: 0.006, Y: 0}, {X: 0.012, Y: 0}, {X: 0.018, Y: 0}, {X: 9, Y: 9}, {X: 0, Y: 9}}, 4},
	} {
		got := r.in.Deduped(0.01)
		if len(got) != r.want {
			t.Errorf("%s: %v, want %d vertices", r.name, got, r.want)
		}
		for i := 1; i < len(got); i++ {
			if got[i].Dist(got[i-1]) <= 0.01 {
				t.Errorf("%s: %v and %v are too near", r.name, got[i-1], got[i])
			}
		}
	}
}

// Started at its lowest vertex, left of two, a convex ring's edges turn once round.
func TestFromLowest(t *testing.T) {
	for turn := range 12 {
		r := regular(12, 10)
		r = append(append(geom.Ring{}, r[turn:]...), r[:turn]...)
		got := r.FromLowest()
		last := -1.0
		for i, p := range got {
			a := got[(i+1)%len(got)].Minus(p).Angle()
			if a < 0 {
				a += 2 * math.Pi
			}
			if a <= last {
				t.Fatalf("edge %d runs at %g after %g", i, a, last)
			}
			last = a
		}
	}
	box := geom.BoxOf(geom.Pt(1, 2), geom.Pt(5, 7)).Ring()
	if got := geom.Ring(append(append(geom.Ring{}, box[2:]...), box[:2]...)).FromLowest(); got[0] != geom.Pt(1, 2) {
		t.Errorf("a box starts at %v", got[0])
	}
}
