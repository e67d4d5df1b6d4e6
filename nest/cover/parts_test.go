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
		s := simplified([]geom.Ring{r})[0]
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
