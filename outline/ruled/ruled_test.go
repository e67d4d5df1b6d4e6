package ruled_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/geom"
	_ "slingloft/outline/rapidtest"
	"slingloft/outline/ruled"
)

// strip returns n+1 rulings between two lines over 0 to 1.
func strip(n int, near, far func(t float64) geom.Point3) ruled.Strip {
	var s ruled.Strip
	for i := range n + 1 {
		t := float64(i) / float64(n)
		s.Near, s.Far = append(s.Near, near(t)), append(s.Far, far(t))
	}
	return s
}

func near(t *testing.T, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s: %.12g, want %.12g within %g", what, got, want, within)
	}
}

// A cone unrolls into a sector: a chord of its rim that spans dφ has the angle
// 2 asin(r/ℓ sin(dφ/2)) at the tip, whatever the diagonal.
func TestCone(t *testing.T) {
	const r, high, n, turn = 300.0, 400.0, 90, 1.75 * math.Pi
	long := math.Hypot(r, high)
	rim := func(part float64) func(t float64) geom.Point3 {
		return func(t float64) geom.Point3 {
			sin, cos := math.Sincos(turn * t)
			return geom.Pt3(part*r*cos, part*r*sin, high*(1-part))
		}
	}
	step := 2 * math.Asin(r/long*math.Sin(turn/n/2))
	near(t, "sector", n*step, turn*r/long, 1e-3) // all of it, as the chords grow short
	for _, part := range []float64{0, 0.25} {    // from the tip, and cut off above
		for _, d := range []ruled.Diagonal{ruled.Midway, ruled.Forward, ruled.Backward} {
			s := strip(n, rim(part), rim(1))
			f := s.Flat(d)
			tip := geom.Pt(0, -part*long)
			for i := range f.Far {
				angle := math.Pi/2 - step*float64(i)
				for _, q := range []struct{ got, want geom.Point }{
					{f.Far[i], tip.Plus(geom.Direction(angle).Times(long))},
					{f.Near[i], tip.Plus(geom.Direction(angle).Times(part * long))},
				} {
					if off := q.got.Dist(q.want); off > 1e-6 {
						t.Fatalf("cone from %g, diagonal %d: ruling %d lies %g mm off the sector", part, d, i, off)
					}
				}
			}
			if g, _ := s.Shear(); g > 1e-6 {
				t.Errorf("cone from %g: shear %g", part, g)
			}
		}
	}
}

// A cylinder cut askew unrolls so that its rim is z(x) over the arc x = r φ.
func TestCylinder(t *testing.T) {
	const r, n, turn, rise = 250.0, 120, 1.5 * math.Pi, 90.0
	point := func(z func(phi float64) float64) func(t float64) geom.Point3 {
		return func(t float64) geom.Point3 {
			sin, cos := math.Sincos(turn * t)
			return geom.Pt3(r*cos, r*sin, z(turn*t))
		}
	}
	low := func(phi float64) float64 { return 40 * math.Sin(phi) }
	high := func(phi float64) float64 { return 400 + rise*math.Cos(phi) }
	chord := 2 * r * math.Sin(turn/n/2)
	near(t, "length", n*chord, r*turn, 0.1)
	for _, d := range []ruled.Diagonal{ruled.Midway, ruled.Forward, ruled.Backward} {
		f := strip(n, point(low), point(high)).Flat(d)
		for i := range f.Far {
			phi := turn * float64(i) / n
			x := chord * float64(i)
			for _, q := range []struct{ got, want geom.Point }{{f.Near[i], geom.Pt(x, low(phi))}, {f.Far[i], geom.Pt(x, high(phi))}} {
				if off := q.got.Dist(q.want); off > 1e-6 {
					t.Fatalf("diagonal %d: ruling %d lies %g mm off", d, i, off)
				}
			}
		}
	}
}

// On the hyperbolic paraboloid between two crossed bars of the same length, turned by τ
// against each other, the middle ruling stands square to both: by hand its twist is τ, the
// strip hangs narrower by cos(τ/2), and the shear asked is 90° − 2 atan cos(τ/2): for
// τ = 60° that is 90° − 2 · 40.8934° = 8.2132°.
func TestHyperbolicParaboloid(t *testing.T) {
	const bar, apart, n = 200.0, 500.0, 201
	for _, r := range []struct{ twist, shear float64 }{{60, 8.2132}, {30, 1.9859}, {0, 0}} {
		sin, cos := math.Sincos(r.twist * math.Pi / 180)
		s := strip(n, func(t float64) geom.Point3 { return geom.Pt3(bar*(t-0.5), 0, 0) },
			func(t float64) geom.Point3 { return geom.Pt3(bar*(t-0.5)*cos, apart, bar*(t-0.5)*sin) })
		near(t, "twist in the middle", s.Twist(n/2+1)*180/math.Pi, r.twist, 1e-3)
		got, at := s.Shear()
		near(t, "shear", got*180/math.Pi, r.shear, 1e-4)
		if r.twist > 0 && at != n/2+1 {
			t.Errorf("largest shear before ruling %d of %d", at, n)
		}
		near(t, "narrower", ruled.Narrowing(r.twist*math.Pi/180), math.Cos(r.twist/2*math.Pi/180), 1e-15)
	}
}

// The finer the cells, the less it matters which diagonals are taken: the difference of the
// two falls as the cells grow short, that of Midway to its limit as their square.
func TestDiagonalsAgree(t *testing.T) {
	saddle := func(n int) ruled.Strip {
		return strip(n, func(t float64) geom.Point3 { return geom.Pt3(1500*t, 0, 0) },
			func(t float64) geom.Point3 { return geom.Pt3(1500*t, 500-400*t*(1-t), 300*t*t) })
	}
	last := func(n int, d ruled.Diagonal) geom.Point {
		f := saddle(n).Flat(d)
		return f.Far[n]
	}
	limit := last(6400, ruled.Midway)
	apart, off := make([]float64, 2), make([]float64, 2)
	for i, n := range []int{50, 100} {
		apart[i], off[i] = last(n, ruled.Forward).Dist(last(n, ruled.Backward)), last(n, ruled.Midway).Dist(limit)
	}
	near(t, "both diagonals, cells halved", apart[0]/apart[1], 2, 0.1)
	near(t, "midway, cells halved", off[0]/off[1], 4, 0.3)
}

// All sides of every cell keep their lengths, whatever the surface and the diagonal.
func TestLengthsKept(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 12).Draw(t, "cells")
		v := rapid.Float64Range(-20, 20)
		var s ruled.Strip
		for i := range n + 1 {
			x := 100 * float64(i)
			s.Near = append(s.Near, geom.Pt3(x+v.Draw(t, "x"), v.Draw(t, "y"), v.Draw(t, "z")))
			s.Far = append(s.Far, geom.Pt3(x+v.Draw(t, "x"), 300+v.Draw(t, "y"), v.Draw(t, "z")))
		}
		for _, d := range []ruled.Diagonal{ruled.Midway, ruled.Forward, ruled.Backward} {
			f := s.Flat(d)
			for i := range s.Near {
				same := func(what string, flat, hung float64) {
					if math.Abs(flat-hung) > 1e-6 {
						t.Fatalf("diagonal %d, ruling %d: %s %g flat, %g hung", d, i, what, flat, hung)
					}
				}
				same("ruling", f.Near[i].Dist(f.Far[i]), s.Far[i].Minus(s.Near[i]).Len())
				if i > 0 {
					same("near side", f.Near[i].Dist(f.Near[i-1]), s.Near[i].Minus(s.Near[i-1]).Len())
					same("far side", f.Far[i].Dist(f.Far[i-1]), s.Far[i].Minus(s.Far[i-1]).Len())
				}
			}
		}
	})
}
