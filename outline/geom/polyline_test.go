package geom_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/geom"
)

// steps is a staircase of sides 3 and 4, every other one.
func steps() geom.Polyline {
	return geom.Polyline{{X: 0, Y: 0}, {X: 3, Y: 0}, {X: 3, Y: 4}, {X: 6, Y: 4}, {X: 6, Y: 8}}
}

// Places along a staircase by hand, directions that of the side before at a corner,
// ends clamped.
func TestArcAt(t *testing.T) {
	a := geom.NewArc(steps())
	if a.Length() != 14 || a.Vertex(2) != 7 || steps().Length() != 14 {
		t.Errorf("length %g, third vertex at %g", a.Length(), a.Vertex(2))
	}
	right, up := geom.Pt(1, 0), geom.Pt(0, 1)
	for _, r := range []struct {
		s      float64
		at, to geom.Point
	}{
		{-5, geom.Pt(0, 0), right}, {0, geom.Pt(0, 0), right}, {1.5, geom.Pt(1.5, 0), right}, {3, geom.Pt(3, 0), right},
		{3.5, geom.Pt(3, 0.5), up}, {7, geom.Pt(3, 4), up}, {8, geom.Pt(4, 4), right}, {14, geom.Pt(6, 8), up}, {99, geom.Pt(6, 8), up},
	} {
		p, dir := a.At(r.s)
		if p.Dist(r.at) > 1e-12 || dir.Dist(r.to) > 1e-12 {
			t.Errorf("at %g: %v towards %v, want %v towards %v", r.s, p, dir, r.at, r.to)
		}
	}
	if p, dir := geom.NewArc(geom.Polyline{{X: 2, Y: 3}}).At(7); p != geom.Pt(2, 3) || dir != (geom.Point{}) {
		t.Errorf("of a point: %v, %v", p, dir)
	}
	if (geom.Arc{}).Length() != 0 {
		t.Error("nothing has a length")
	}
}

// Any cut of a curve is as long as it is asked to be, begins and ends where the curve
// does there, and both parts of a cut make up the whole.
func TestArcBetween(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var l geom.Polyline
		for range rapid.IntRange(2, 12).Draw(t, "n") {
			l = append(l, geom.Pt(rapid.Float64Range(-50, 50).Draw(t, "x"), rapid.Float64Range(-50, 50).Draw(t, "y")))
		}
		a := geom.NewArc(l)
		if a.Length() < 1 {
			t.Skip("too short")
		}
		s := a.Length() * rapid.Float64Range(0.01, 0.49).Draw(t, "s")
		e := a.Length() * rapid.Float64Range(0.51, 0.99).Draw(t, "e")
		part := a.Between(s, e)
		if math.Abs(part.Length()-(e-s)) > 1e-9*a.Length() {
			t.Fatalf("from %g to %g: %g long", s, e, part.Length())
		}
		first, _ := a.At(s)
		last, _ := a.At(e)
		if part[0] != first || part[len(part)-1] != last {
			t.Fatalf("from %v to %v, want %v to %v", part[0], part[len(part)-1], first, last)
		}
		if whole := a.Between(0, s).Length() + part.Length() + a.Between(e, a.Length()).Length(); math.Abs(whole-l.Length()) > 1e-9*a.Length() {
			t.Fatalf("in three parts it is %g long, not %g", whole, l.Length())
		}
		// The nearest place to one of its own points is there, and never further than any
		// other point.
		at, d := a.Nearest(first)
		if p, _ := a.At(at); d > 1e-9 || p.Dist(first) > 1e-9 {
			t.Fatalf("nearest to %v is %g away at %v", first, d, p)
		}
		q := geom.Pt(rapid.Float64Range(-60, 60).Draw(t, "qx"), rapid.Float64Range(-60, 60).Draw(t, "qy"))
		if _, d := a.Nearest(q); d > q.Dist(last)+1e-9 || d > q.Dist(l[0])+1e-9 {
			t.Fatalf("nearest to %v is %g away, the end %g", q, d, q.Dist(last))
		}
	})
}

// Run from its end a curve has the same places at the same ways from there.
func TestReversed(t *testing.T) {
	l := steps()
	r := l.Reversed()
	for i := range l {
		if r[i] != l[len(l)-1-i] {
			t.Errorf("vertex %d is %v", i, r[i])
		}
	}
	a, b := geom.NewArc(l), geom.NewArc(r)
	for s := 0.25; s < 14; s += 0.5 {
		p, there := a.At(s)
		q, back := b.At(14 - s)
		if p.Dist(q) > 1e-12 || there.Plus(back).Len() > 1e-12 {
			t.Errorf("at %g: %v and %v, directions %v and %v", s, p, q, there, back)
		}
	}
	if l[0] != geom.Pt(0, 0) {
		t.Error("the given curve was turned round")
	}
}
