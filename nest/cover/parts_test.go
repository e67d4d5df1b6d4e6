package cover

import (
	"math"
	"math/rand/v2"
	"testing"

	"slingloft/nest/nesttest"
	"slingloft/outline/geom"
)

func TestConvexPartsCoverOutline(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 9))
	for n := range 300 {
		rings := []geom.Ring{nesttest.Blob(rng.Float64, 3+n%40, 100)}
		if n%3 == 0 && n > 9 {
			hole := nesttest.Blob(rng.Float64, 5, 20).CounterClockwise().Reversed()
			rings = append(rings, hole)
		}
		want, got := 0.0, 0.0
		for _, r := range rings {
			want += r.Area()
		}
		for _, p := range convexParts(rings) {
			got += p.Area()
			for i := range p {
				if geom.Side(p[i], p[(i+1)%len(p)], p[(i+2)%len(p)]) < 0 {
					t.Fatalf("part %v is not convex", p)
				}
			}
		}
		if math.Abs(got-want) > 1e-9*want {
			t.Errorf("%d vertices: parts have area %v, the region %v", len(rings[0]), got, want)
		}
	}
}

func TestSimplifiedCoversAndGrowsLittle(t *testing.T) {
	rng := rand.New(rand.NewPCG(4, 4))
	for n := range 40 {
		r := nesttest.Wavy(rng.Float64, 60+10*n)
		s := Simplified([]geom.Ring{r}, Most)[0]
		if len(s) >= len(r) || s.Area() > r.Area()*(1+more) {
			t.Errorf("%d vertices became %d, area %v became %v", len(r), len(s), r.Area(), s.Area())
		}
		for i, p := range r {
			if !s.Contains(p) && distanceTo(p, s) > 1e-9 {
				t.Fatalf("vertex %d of %d lies outside the simplified outline", i, len(r))
			}
		}
		if parts := convexParts([]geom.Ring{s}); area(parts) < s.Area()*(1-1e-9) {
			t.Errorf("the simplified outline of %d vertices crosses itself", len(r))
		}
	}
}

func distanceTo(p geom.Point, r geom.Ring) float64 {
	_, d := geom.NewArc(r.Closed()).Nearest(p)
	return d
}

// What is cut off at a box is convex, covers what lay in it, and has no vertex twice.
func TestWithin(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 6))
	for range 300 {
		r := hull(nesttest.Blob(rng.Float64, 12, 100))
		at := r.Bounds()
		box := geom.Box{Min: at.Min.Towards(at.Max, 0.3*rng.Float64()), Max: at.Max.Towards(at.Min, 0.3*rng.Float64())}
		if rng.IntN(3) == 0 {
			box.Max.X = r[rng.IntN(len(r))].X // through a vertex
		}
		got := Within([]geom.Ring{r}, box)
		if len(got) == 0 {
			continue
		}
		for i, v := range got[0] {
			next, after := got[0][(i+1)%len(got[0])], got[0][(i+2)%len(got[0])]
			if v.Dist(next) < 1e-9 || geom.Side(v, next, after) < -1e-6 || !box.Expanded(1e-9).Contains(v) {
				t.Fatalf("%v at %v became %v", r, box, got[0])
			}
		}
		for range 50 {
			p := geom.Pt(box.Min.X+rng.Float64()*box.Width(), box.Min.Y+rng.Float64()*box.Height())
			if r.Contains(p) && !got[0].Contains(p) && distanceTo(p, got[0]) > 1e-6 {
				t.Fatalf("%v at %v: %v is lost", r, box, p)
			}
		}
	}
}

// With a bound on the vertices a cover has no more of them, however little area that leaves.
func TestSimplifiedAtMost(t *testing.T) {
	rng := rand.New(rand.NewPCG(6, 6))
	for _, most := range []int{200, 28, 12, 7, 4} {
		for n := range 10 {
			r := nesttest.Wavy(rng.Float64, 480)
			for k := range r {
				if n%2 == 0 && k%2 == 0 {
					r[k] = r[k].Times(0.7)
				}
			}
			s := Simplified([]geom.Ring{r}, most)
			if len(s[0]) > most {
				t.Errorf("%d vertices, want at most %d", len(s[0]), most)
			}
			for i, p := range r {
				if !s[0].Contains(p) && distanceTo(p, s[0]) > 1e-9 {
					t.Fatalf("at most %d: vertex %d lies outside", most, i)
				}
			}
		}
	}
}
