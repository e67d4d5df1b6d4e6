package nest

import (
	"math"
	"math/rand/v2"
	"testing"

	"slingloft/outline/geom"
)

func TestConvexPartsCoverOutline(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 9))
	for n := range 300 {
		rings := []geom.Ring{blob(rng.Float64, 3+n%40, 100)}
		if n%3 == 0 && n > 9 {
			hole := blob(rng.Float64, 5, 20).CounterClockwise().Reversed()
			rings = append(rings, hole)
		}
		want, got := 0.0, 0.0
		for _, r := range rings {
			want += r.Area()
		}
		for _, p := range convexParts(rings) {
			got += p.Area()
			for i := range p {
				if side(p[i], p[(i+1)%len(p)], p[(i+2)%len(p)]) < 0 {
					t.Fatalf("part %v is not convex", p)
				}
			}
		}
		if math.Abs(got-want) > 1e-9*want {
			t.Errorf("%d vertices: parts have area %v, the region %v", len(rings[0]), got, want)
		}
	}
}

func TestMinkowskiOfBoxes(t *testing.T) {
	got := minkowski(box(3, 2), reflected(box(5, 7)))
	want := geom.Ring{{X: -5, Y: -7}, {X: 3, Y: -7}, {X: 3, Y: 2}, {X: -5, Y: 2}}
	if len(got) != 4 {
		t.Fatalf("got %v, want %v", got, want)
	}
	for i := range want {
		if got[i] != want[i] {
			t.Errorf("got %v, want %v", got, want)
		}
	}
}

func TestSimplifiedCoversAndGrowsLittle(t *testing.T) {
	rng := rand.New(rand.NewPCG(4, 4))
	for n := range 40 {
		r := wavy(rng.Float64, 60+10*n)
		for _, fine := range []finesse{closely(), roughly()} {
			s := simplified([]geom.Ring{r}, fine)[0]
			if len(s) >= len(r) || s.Area() > r.Area()*(1+fine.more) {
				t.Errorf("%d vertices became %d, area %v became %v", len(r), len(s), r.Area(), s.Area())
			}
			for i, p := range r {
				if where, _, _ := locate(at(p), []geom.Ring{s}); where == outside && distanceTo(p, s) > 1e-9 {
					t.Fatalf("vertex %d of %d lies outside the simplified outline", i, len(r))
				}
			}
			if !covers(convexParts([]geom.Ring{s}), []geom.Ring{s}) {
				t.Errorf("the simplified outline of %d vertices crosses itself", len(r))
			}
		}
	}
}

// wavy returns a smooth outline with n vertices and some hollows.
func wavy(rnd func() float64, n int) geom.Ring {
	a, b := rnd(), rnd()
	var r geom.Ring
	for k := range n {
		u := 2 * math.Pi * float64(k) / float64(n)
		s, c := math.Sincos(u)
		r = append(r, geom.Pt(2*c, s).Times(400+100*a*math.Sin(3*u)+60*b*math.Cos(5*u)))
	}
	return r
}

func distanceTo(p geom.Point, r geom.Ring) float64 {
	least := math.Inf(1)
	for i := range r {
		least = min(least, toSegment(p, [2]geom.Point{r[i], r[(i+1)%len(r)]}))
	}
	return least
}

// The search's measure and the exact predicate must agree about overlap.
func TestDepthAgreesWithExactOverlap(t *testing.T) {
	rng := rand.New(rand.NewPCG(2, 6))
	items := []Item{
		{Outline: blob(rng.Float64, 12, 200), Demand: 1, Free: true},
		{Outline: blob(rng.Float64, 7, 300), Demand: 2, Free: true, Paired: true},
		{Outline: blob(rng.Float64, 9, 150), Demand: 1, Turns: []float64{0.3, 0.3 + math.Pi, 2}},
	}
	p, err := newProblem(items, Strip{Width: 500}.ground())
	if err != nil {
		t.Fatal(err)
	}
	hits := 0
	for range 20000 {
		a, b := p.pieces[rng.IntN(len(p.pieces))], p.pieces[rng.IntN(len(p.pieces))]
		qa, qb := a.poses[rng.IntN(len(a.poses))], b.poses[rng.IntN(len(b.poses))]
		d := geom.Pt(600*rng.Float64()-300, 600*rng.Float64()-300)
		ra := []geom.Ring{items[a.item].Outline.CounterClockwise().Moved(qa.motion)}
		mb := qb.motion
		mb.Shift = mb.Shift.Plus(d)
		rb := []geom.Ring{items[b.item].Outline.CounterClockwise().Moved(mb)}
		depth := p.atlas.depth(p.atlas.between(qa.form, qb.form), d.X, d.Y)
		if depth > 0 && depth < 1e-6 {
			continue
		}
		hit := overlap(ra, rb)
		if hit {
			hits++
		}
		if (depth > 0) != hit {
			t.Fatalf("depth %v, overlap %v at %v", depth, hit, d)
		}
	}
	if hits < 2000 {
		t.Errorf("only %d overlaps were met", hits)
	}
}
