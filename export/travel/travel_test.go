package travel

import (
	"math"
	"math/rand/v2"
	"testing"

	"slingloft/outline/geom"
)

// scattered returns n paths in a field of 1000 mm: strokes, dots and rings.
func scattered(rng *rand.Rand, n int, ringShare float64) []Path {
	var out []Path
	for range n {
		at := geom.Pt(rng.Float64()*1000, rng.Float64()*1000)
		if rng.Float64() < ringShare {
			ring := Path{Closed: true}
			for k := range 12 {
				s, c := math.Sincos(float64(k) * math.Pi / 6)
				ring.Points = append(ring.Points, at.Plus(geom.Pt(c, s).Times(15)))
			}
			out = append(out, ring)
			continue
		}
		turn := rng.Float64() * 7
		out = append(out, Path{Points: geom.Polyline{at, at.Plus(geom.Pt(10, 3).Turned(turn)),
			at.Plus(geom.Pt(20+rng.Float64()*30, 0).Turned(turn))}})
	}
	return out
}

// Every path is followed once, whole.
func TestOrderIsAPermutation(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 1))
	for _, n := range []int{0, 1, 2, 3, 7, 100, 1700} {
		paths := scattered(rng, n, 0.3)
		steps := Order(paths, geom.Point{})
		seen := make([]bool, n)
		for _, s := range steps {
			if seen[s.Path] {
				t.Fatalf("%d paths: path %d twice", n, s.Path)
			}
			seen[s.Path] = true
			p := paths[s.Path]
			got, want := s.Follow(p).Length(), p.Points.Length()
			if p.Closed {
				want = geom.Ring(p.Points).Perimeter()
			}
			if math.Abs(got-want) > 1e-9 {
				t.Errorf("path %d followed over %g mm of %g", s.Path, got, want)
			}
		}
		if len(steps) != n {
			t.Errorf("%d steps of %d", len(steps), n)
		}
	}
}

func TestSameOrderTwice(t *testing.T) {
	paths := scattered(rand.New(rand.NewPCG(5, 5)), 400, 0.3)
	a, b := Order(paths, geom.Point{}), Order(paths, geom.Point{})
	for i := range a {
		if a[i] != b[i] {
			t.Fatalf("step %d is %v and %v", i, a[i], b[i])
		}
	}
}

// Of few paths no order is shorter than the one that is found, by trying them all.
func TestFewPathsExact(t *testing.T) {
	rng := rand.New(rand.NewPCG(2, 2))
	for n := range 6 {
		for range 20 {
			paths := scattered(rng, n, 0.4)
			got, want := Idle(paths, Order(paths, geom.Point{}), geom.Point{}), exact(paths, geom.Point{})
			if math.Abs(got-want) > 1e-9 {
				t.Fatalf("%d paths: travel %g, the shortest is %g: %v", n, got, want, paths)
			}
		}
	}
}

// Where there are too many paths for that, the travel is near the shortest all the
// same.
func TestNearExactTour(t *testing.T) {
	rng := rand.New(rand.NewPCG(2, 2))
	sum, best := 0.0, 0.0
	for range 60 {
		paths := scattered(rng, 5, 0.2)
		tour := newTour(paths, geom.Point{})
		tour.improve()
		tour.chooseCorners()
		got, want := 0.0, exact(paths, geom.Point{})
		for i := range tour.steps {
			got += tour.gap(i)
		}
		if got < want-1e-9 {
			t.Fatalf("travel %g is shorter than the shortest, %g", got, want)
		}
		sum, best = sum+got, best+want
	}
	if ratio := sum / best; ratio > 1.01 {
		t.Errorf("travel is %.4f of the shortest on average", ratio)
	}
}

// The corners of all closed paths are chosen together: no choice of three is shorter.
func TestChooseCorners(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 9))
	for range 20 {
		paths := scattered(rng, 3, 1)
		tour := newTour(paths, geom.Point{})
		steps := []Step{tour.steps[0].Step, tour.steps[1].Step, tour.steps[2].Step}
		tour.chooseCorners()
		got, want := 0.0, math.Inf(1)
		for i := range tour.steps {
			got += tour.gap(i)
		}
		for k := range 12 * 12 * 12 {
			steps[0].Start, steps[1].Start, steps[2].Start = k%12, k/12%12, k/144
			want = math.Min(want, Idle(paths, steps, geom.Point{}))
		}
		if math.Abs(got-want) > 1e-9 {
			t.Errorf("corners chosen for %g mm, %g would do", got, want)
		}
	}
}

// exact returns the shortest travel by trying every order and way round.
func exact(paths []Path, from geom.Point) float64 {
	if len(paths) == 0 {
		return 0
	}
	best := math.Inf(1)
	for i, p := range paths {
		rest := append(append([]Path(nil), paths[:i]...), paths[i+1:]...)
		try := func(in, out geom.Point) {
			best = math.Min(best, from.Dist(in)+exact(rest, out))
		}
		if !p.Closed {
			try(p.Points[0], p.Points[len(p.Points)-1])
			try(p.Points[len(p.Points)-1], p.Points[0])
			continue
		}
		for _, q := range p.Points {
			try(q, q)
		}
	}
	return best
}

// On many open paths the travel stays near the lower bound of Held and Karp.
func TestNearLowerBound(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 3))
	for range 2 {
		paths := scattered(rng, 150, 0)
		got, bound := Idle(paths, Order(paths, geom.Point{}), geom.Point{}), lowerBound(paths, geom.Point{}, 400)
		t.Logf("travel %.0f mm, bound %.0f mm: %.1f %% above", got, bound, 100*(got/bound-1))
		if got < bound || got > 1.10*bound {
			t.Errorf("travel %.1f mm is not within 10 %% above the bound %.1f mm", got, bound)
		}
	}
}

// The bound is none for more than the shortest travel, and not far below it.
func TestBoundIsBelowExact(t *testing.T) {
	rng := rand.New(rand.NewPCG(6, 6))
	bounds, shortest := 0.0, 0.0
	for range 40 {
		paths := scattered(rng, 5, 0.2)
		bound, want := lowerBound(paths, geom.Point{}, 400), exact(paths, geom.Point{})
		if bound > want+1e-6 {
			t.Fatalf("bound %g above the shortest travel %g", bound, want)
		}
		bounds, shortest = bounds+bound, shortest+want
	}
	if ratio := bounds / shortest; ratio < 0.9 {
		t.Errorf("bound is %.3f of the shortest travel on average", ratio)
	}
	if got := lowerBound(nil, geom.Point{}, 400); got != 0 {
		t.Errorf("bound of no paths %g", got)
	}
}

func BenchmarkOrder(b *testing.B) {
	paths := scattered(rand.New(rand.NewPCG(4, 4)), 1000, 0.1)
	var travel float64
	for b.Loop() {
		travel = Idle(paths, Order(paths, geom.Point{}), geom.Point{})
	}
	b.ReportMetric(travel, "mm")
}
