package cover

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/nest/nesttest"
	"slingloft/outline/geom"
	_ "slingloft/outline/rapidtest"
)

// lattice returns a ring of the corners given as x, y, x, y …
func lattice(xy ...float64) geom.Ring {
	var r geom.Ring
	for i := 0; i+1 < len(xy); i += 2 {
		r = append(r, geom.Pt(xy[i], xy[i+1]))
	}
	return r
}

// Letters and frames: they take so many convex parts at least, one and half as many as
// they have hollow corners less their holes; no more than four times as many are made,
// by Hertel and Mehlhorn's bound, and they fill the region.
func TestParts(t *testing.T) {
	square := nesttest.Box(30, 30)
	for _, r := range []struct {
		name  string
		rings []geom.Ring
		least int
	}{
		{"triangle", []geom.Ring{lattice(0, 0, 4, 0, 0, 4)}, 1},
		{"square", []geom.Ring{square}, 1},
		{"square with points on its sides", []geom.Ring{lattice(0, 0, 10, 0, 30, 0, 30, 30, 12, 30, 0, 30)}, 1},
		{"L", []geom.Ring{lattice(0, 0, 20, 0, 20, 10, 10, 10, 10, 30, 0, 30)}, 2},
		{"T", []geom.Ring{lattice(10, 0, 20, 0, 20, 20, 30, 20, 30, 30, 0, 30, 0, 20, 10, 20)}, 2},
		{"U", []geom.Ring{lattice(0, 0, 30, 0, 30, 30, 20, 30, 20, 10, 10, 10, 10, 30, 0, 30)}, 2},
		{"cross", []geom.Ring{lattice(10, 0, 20, 0, 20, 10, 30, 10, 30, 20, 20, 20, 20, 30, 10, 30, 10, 20, 0, 20, 0, 10, 10, 10)}, 3},
		{"frame", []geom.Ring{square, geom.BoxOf(geom.Pt(10, 10), geom.Pt(20, 20)).Ring().Reversed()}, 2},
		{"frame of two holes", []geom.Ring{square, geom.BoxOf(geom.Pt(5, 5), geom.Pt(10, 10)).Ring().Reversed(),
			geom.BoxOf(geom.Pt(15, 15), geom.Pt(25, 20)).Ring().Reversed()}, 3},
	} {
		parts, ok := Parts(r.rings, Most)
		if !ok || len(parts) < r.least || len(parts) > 4*r.least || r.least == 1 && len(parts) != 1 {
			t.Errorf("%s: %d parts, %v; at least %d are needed", r.name, len(parts), ok, r.least)
		}
		if got, want := area(parts), area(r.rings); math.Abs(got-want) > 1e-9*want {
			t.Errorf("%s: parts of %g mm², the region has %g", r.name, got, want)
		}
		for _, p := range parts {
			for i := range p {
				if geom.Side(p[i], p[(i+1)%len(p)], p[(i+2)%len(p)]) < 0 {
					t.Errorf("%s: part %v is not convex", r.name, p)
				}
			}
		}
	}
}

// An outline that crosses itself is not covered, and that is said.
func TestPartsOfACrossing(t *testing.T) {
	eight := lattice(0, 0, 30, 30, 30, 0, 0, 40)
	if parts, ok := Parts([]geom.Ring{eight.CounterClockwise()}, Most); ok && area(parts) < 30*30/4 {
		t.Errorf("an eight is said to be covered by %v", parts)
	}
}

// Points tried at random lie in the region or off it as they lie in some part or none;
// no two parts share one.
func TestPartsByPoints(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func() float64 { return rapid.Float64Range(0, 1).Draw(t, "r") }
		rings := []geom.Ring{nesttest.Blob(draw, rapid.IntRange(10, 18).Draw(t, "n"), 100)}
		if rapid.Bool().Draw(t, "hole") {
			rings = append(rings, nesttest.Blob(draw, 4, 20).Reversed())
		}
		parts := convexParts(rings)
		for range 20 {
			p := geom.Pt(rapid.Float64Range(-50, 50).Draw(t, "x"), rapid.Float64Range(-50, 50).Draw(t, "y"))
			if near(p, rings, 1e-3) || near(p, parts, 1e-6) {
				continue
			}
			in := rings[0].Contains(p) && (len(rings) == 1 || !rings[1].Contains(p))
			found := 0
			for _, q := range parts {
				if q.Contains(p) {
					found++
				}
			}
			if found > 1 || (found == 1) != in {
				t.Fatalf("%v lies in %d parts, in the region %v", p, found, in)
			}
		}
	})
}

// near reports whether p lies within a distance of a boundary.
func near(p geom.Point, rings []geom.Ring, within float64) bool {
	for _, r := range rings {
		if distanceTo(p, r) < within {
			return true
		}
	}
	return false
}

// Few corners are left as they are; of many, no more goes than the budget of area
// allows, and the given rings are not changed.
func TestSimplifiedBudget(t *testing.T) {
	small := nesttest.Blob(func() float64 { return 0.5 }, plainCorners, 100)
	if got := Simplified([]geom.Ring{small}, Most); len(got[0]) != plainCorners {
		t.Errorf("%d corners became %d", plainCorners, len(got[0]))
	}
	circle := star(90, 100)
	before := append(geom.Ring(nil), circle...)
	got := Simplified([]geom.Ring{circle}, Most)[0]
	for i := range circle {
		if circle[i] != before[i] {
			t.Fatalf("vertex %d of the given ring was moved", i)
		}
	}
	// A polygon of m corners round a circle has an area greater by (π/m)²/3: 0.32 % for 32
	// corners, and the one of 90 inside it lacks 0.08 %. So some 32 come for 0.4 %.
	if len(got) > 36 || got.Area() > circle.Area()*(1+more) || got.Area() < circle.Area() {
		t.Errorf("a circle of 90 corners became one of %d, area %g became %g", len(got), circle.Area(), got.Area())
	}
	// A hole gets smaller, never larger: what is covered only grows.
	hole := star(60, 40).Reversed()
	rings := Simplified([]geom.Ring{circle, hole}, Most)
	if rings[1].Area() < hole.Area() || rings[1].Area() > 0 {
		t.Errorf("a hole of area %g became %g", -hole.Area(), -rings[1].Area())
	}
}

// star returns a regular polygon, counter-clockwise.
func star(n int, radius float64) geom.Ring {
	var r geom.Ring
	for k := range n {
		s, c := math.Sincos(2 * math.Pi * float64(k) / float64(n))
		r = append(r, geom.Pt(c, s).Times(radius))
	}
	return r
}
