package geom_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/geom"
	_ "slingloft/outline/rapidtest"
)

// The laws of vectors in the plane: lengths and angles survive a turn, Left is a
// quarter of one, and the angle from one to the other is that of their directions.
func TestPointLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := func(name string) float64 { return rapid.Float64Range(-1000, 1000).Draw(t, name) }
		p, q := geom.Pt(f("px"), f("py")), geom.Pt(f("qx"), f("qy"))
		turn := rapid.Float64Range(-10, 10).Draw(t, "turn")
		size := p.Len()*q.Len() + 1
		pt, qt := p.Turned(turn), q.Turned(turn)
		if math.Abs(pt.Dot(qt)-p.Dot(q)) > 1e-9*size || math.Abs(pt.Cross(qt)-p.Cross(q)) > 1e-9*size {
			t.Fatalf("turned by %g: product %g for %g, cross %g for %g", turn, pt.Dot(qt), p.Dot(q), pt.Cross(qt), p.Cross(q))
		}
		if math.Abs(p.Dot(p.Left())) > 1e-9*size || math.Abs(p.Cross(p.Left())-p.Dot(p)) > 1e-9*size {
			t.Fatalf("%v turned left is %v", p, p.Left())
		}
		if p.Cross(q) != -q.Cross(p) || p.Dot(q) != q.Dot(p) || p.Dist(q) != q.Dist(p) {
			t.Fatalf("%v and %v the other way round", p, q)
		}
		if p.Len() > 1e-3 && q.Len() > 1e-3 {
			between := math.Remainder(q.Angle()-p.Angle()-p.AngleTo(q), 2*math.Pi)
			if math.Abs(between) > 1e-9 || math.Abs(p.Unit().Len()-1) > 1e-12 {
				t.Fatalf("angle from %v to %v is %g", p, q, p.AngleTo(q))
			}
		}
		mid := p.Towards(q, 0.5)
		if mid.Dist(p.Plus(q).Times(0.5)) > 1e-9 || p.Towards(q, 0) != p || p.Towards(q, 1).Dist(q) > 1e-9 {
			t.Fatalf("half way from %v to %v is %v", p, q, mid)
		}
	})
	if (geom.Point{}).Unit() != (geom.Point{}) {
		t.Error("no direction has a length")
	}
	for _, p := range []geom.Point{{X: math.NaN()}, {Y: math.Inf(1)}, {X: math.Inf(-1), Y: math.Inf(1)}} {
		if p.Finite() {
			t.Errorf("%v is said to be finite", p)
		}
	}
}

// Unions, common parts and what lies in a box, by its definition point by point.
func TestBoxes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		i := func(name string) float64 { return float64(rapid.IntRange(-5, 5).Draw(t, name)) }
		a := geom.BoxOf(geom.Pt(i("ax"), i("ay")), geom.Pt(i("ax"), i("ay")))
		b := geom.BoxOf(geom.Pt(i("bx"), i("by")), geom.Pt(i("bx"), i("by")))
		both, either := a.Common(b), a.Union(b)
		shared := false
		for x := -6.0; x <= 6; x += 0.5 {
			for y := -6.0; y <= 6; y += 0.5 {
				p := geom.Pt(x, y)
				if both.Contains(p) != (a.Contains(p) && b.Contains(p)) {
					t.Fatalf("%v in common: %v", p, both)
				}
				if (a.Contains(p) || b.Contains(p)) && !either.Contains(p) {
					t.Fatalf("%v lies in one of them, not in %v", p, either)
				}
				shared = shared || within(a.Min.X, a.Max.X, b.Min.X, b.Max.X, x) && within(a.Min.Y, a.Max.Y, b.Min.Y, b.Max.Y, y)
			}
		}
		if a.Overlaps(b) != shared {
			t.Fatalf("%v and %v: overlap %v, want %v", a, b, a.Overlaps(b), shared)
		}
		if a.ContainsBox(b) != (either == a) {
			t.Fatalf("%v holds %v: %v", a, b, a.ContainsBox(b))
		}
		if grown := a.Expanded(1.5); grown.Width() != a.Width()+3 || grown.Height() != a.Height()+3 || grown.Center() != a.Center() {
			t.Fatalf("%v expanded is %v", a, grown)
		}
		if math.Abs(a.Ring().Area()-a.Width()*a.Height()) > 1e-12 || a.Ring().Bounds() != a {
			t.Fatalf("%v as a ring: %v", a, a.Ring())
		}
	})
	none := geom.EmptyBox()
	if !none.Empty() || none.Width() != 0 || none.Height() != 0 || none.Union(geom.BoxOf(geom.Pt(1, 2))) != geom.BoxOf(geom.Pt(1, 2)) ||
		geom.BoxOf(geom.Pt(1, 2)).Union(none) != geom.BoxOf(geom.Pt(1, 2)) || none.Contains(geom.Pt(0, 0)) {
		t.Error("the empty box holds something")
	}
}

// within reports whether v lies inside of both stretches: between the ends of one, or in
// one that is a single place, but not where both are.
func within(a, b, c, d, v float64) bool {
	in := func(low, high float64) bool { return low < v && v < high || low == high && v == low }
	return in(a, b) && in(c, d) && (a < b || c < d)
}
