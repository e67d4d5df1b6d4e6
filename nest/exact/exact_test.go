package exact

import (
	"math"
	"math/rand/v2"
	"testing"

	"slingloft/nest/nesttest"
	"slingloft/outline/geom"
)

func TestOverlap(t *testing.T) {
	notched := geom.Ring{{X: 0, Y: 0}, {X: 30, Y: 0}, {X: 30, Y: 30}, {X: 20, Y: 30},
		{X: 20, Y: 10}, {X: 10, Y: 10}, {X: 10, Y: 30}, {X: 0, Y: 30}}
	diamond := geom.Ring{{X: 0, Y: -5}, {X: 5, Y: 0}, {X: 0, Y: 5}, {X: -5, Y: 0}}
	frame := []geom.Ring{nesttest.Box(30, 30), geom.Box{Min: geom.Pt(10, 10), Max: geom.Pt(20, 20)}.Ring().Reversed()}
	one := func(r geom.Ring) []geom.Ring { return []geom.Ring{r} }
	for _, c := range []struct {
		name string
		a, b []geom.Ring
		at   geom.Point // of b
		want bool
	}{
		{"apart", one(nesttest.Box(10, 10)), one(nesttest.Box(10, 10)), geom.Pt(20, 0), false},
		{"side by side", one(nesttest.Box(10, 10)), one(nesttest.Box(10, 10)), geom.Pt(10, 3), false},
		{"corner to corner", one(nesttest.Box(10, 10)), one(nesttest.Box(10, 10)), geom.Pt(10, 10), false},
		{"one in the last place too near", one(nesttest.Box(10, 10)), one(nesttest.Box(10, 10)), geom.Pt(math.Nextafter(10, 0), 3), true},
		{"crossing", one(nesttest.Box(10, 10)), one(nesttest.Box(10, 10)), geom.Pt(5, 5), true},
		{"a cross without a vertex inside", one(nesttest.Box(10, 2)), one(nesttest.Box(2, 10)), geom.Pt(4, -4), true},
		{"the same", one(nesttest.Box(10, 10)), one(nesttest.Box(10, 10)), geom.Point{}, true},
		{"the same height, aligned", one(nesttest.Box(10, 10)), one(nesttest.Box(6, 10)), geom.Pt(2, 0), true},
		{"inside", one(nesttest.Box(10, 10)), one(nesttest.Box(2, 2)), geom.Pt(4, 4), true},
		{"inside, touching all sides", one(nesttest.Box(10, 10)), one(diamond), geom.Pt(5, 5), true},
		{"in a notch that just fits", one(notched), one(nesttest.Box(10, 20)), geom.Pt(10, 10), false},
		{"in a notch too deep", one(notched), one(nesttest.Box(10, 20)), geom.Pt(10, 9), true},
		{"diamond in a notch, touching both walls", one(notched), one(diamond), geom.Pt(15, 20), false},
		{"diamond tip on an edge", one(nesttest.Box(10, 10)), one(diamond), geom.Pt(15, 5), false},
		{"in the hole of a frame, fitting", frame, one(nesttest.Box(10, 10)), geom.Pt(10, 10), false},
		{"in the hole of a frame, free", frame, one(nesttest.Box(4, 4)), geom.Pt(12, 12), false},
		{"over the hole of a frame", frame, one(nesttest.Box(12, 4)), geom.Pt(9, 12), true},
		{"over the whole frame", frame, one(nesttest.Box(30, 30)), geom.Point{}, true},
	} {
		b := moved(c.b, c.at)
		if got := Overlap(c.a, b); got != c.want {
			t.Errorf("%s: overlap = %v, want %v", c.name, got, c.want)
		}
		if got := Overlap(b, c.a); got != c.want {
			t.Errorf("%s: overlap the other way = %v, want %v", c.name, got, c.want)
		}
	}
}

// Orientation must change sign when two points change places and stay when they
// go round, however close to a line they are, and agree with rationals.
func TestOrientLaws(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 5))
	for range 20000 {
		a := geom.Pt(rng.Float64(), rng.Float64())
		b := geom.Pt(rng.Float64(), rng.Float64())
		c := a.Towards(b, 2*rng.Float64())
		if rng.IntN(2) == 0 {
			c.X = math.Nextafter(c.X, 2)
		}
		got := orient(a, b, at(c))
		if got != orient(b, c, at(a)) || got != -orient(b, a, at(c)) || got != orientRat(a, b, at(c)) {
			t.Fatalf("orient(%v, %v, %v) = %d breaks a law", a, b, c, got)
		}
		if m := (mid{c, c}); compareSum(m.u.X, m.v.X, a.X) != sign(c.X-a.X) {
			t.Fatalf("compareSum(%v, %v) is wrong", c, a)
		}
	}
}

func moved(rings []geom.Ring, by geom.Point) []geom.Ring {
	var out []geom.Ring
	for _, r := range rings {
		out = append(out, r.Moved(geom.Motion{Shift: by}))
	}
	return out
}
