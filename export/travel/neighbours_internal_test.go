package travel

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"slingloft/outline/geom"
)

// Each next path of the first order is the nearest of those that are left, begun at
// its nearest end or corner.
func TestNearestFirst(t *testing.T) {
	rng := rand.New(rand.NewPCG(21, 1))
	for range 20 {
		paths := scattered(rng, 1+rng.IntN(30), 0.4)
		here := geom.Pt(rng.Float64()*1000, rng.Float64()*1000)
		tour := newTour(paths, here)
		left := map[int]bool{}
		for i := range paths {
			left[i] = true
		}
		for i, s := range tour.steps {
			nearest := math.Inf(1)
			for k := range left {
				p := paths[k]
				doors := geom.Polyline{p.Points[0], p.Points[len(p.Points)-1]}
				if p.Closed {
					doors = p.Points
				}
				for _, q := range doors {
					nearest = math.Min(nearest, here.Dist(q))
				}
			}
			if math.Abs(s.gap-nearest) > 1e-9 {
				t.Fatalf("step %d goes %g mm, the nearest end is at %g", i, s.gap, nearest)
			}
			delete(left, s.Path)
			here = s.out
		}
	}
}

// The neighbours of a stroke are the eight nearest by their ends and the three nearest
// in each quarter, none twice and never itself.
func TestNeighbours(t *testing.T) {
	rng := rand.New(rand.NewPCG(22, 1))
	for _, n := range []int{1, 2, 6, 9, 60} {
		paths := scattered(rng, n, 0)
		ends := func(k int) geom.Polyline {
			return geom.Polyline{paths[k].Points[0], paths[k].Points[len(paths[k].Points)-1]}
		}
		dist := func(i, k int) float64 {
			d := math.Inf(1)
			for _, a := range ends(i) {
				for _, b := range ends(k) {
					d = math.Min(d, a.Dist(b))
				}
			}
			return d
		}
		for i, got := range neighbours(paths) {
			seen := map[int]bool{i: true}
			for _, o := range got {
				if seen[o.path] || math.Abs(o.dist-dist(i, o.path)) > 1e-9 {
					t.Fatalf("%d paths: %d has %+v among %v", n, i, o, got)
				}
				seen[o.path] = true
			}
			// Every other path's distance, and by quarter of the plane.
			var all []float64
			var quarter [4][]float64
			for k := range paths {
				if k != i {
					q := quarterOf(ends(k)[0].Minus(ends(i)[0]))
					all, quarter[q] = append(all, dist(i, k)), append(quarter[q], dist(i, k))
				}
			}
			want := map[int]bool{i: true}
			for k := range paths {
				if k != i {
					mine := quarter[quarterOf(ends(k)[0].Minus(ends(i)[0]))]
					want[k] = dist(i, k) <= rank(all, 8) || dist(i, k) <= rank(mine, 3)
				}
			}
			for k := range paths {
				if want[k] != seen[k] {
					t.Fatalf("%d paths: %d as a neighbour of %d: %v, want %v", n, k, i, seen[k], want[k])
				}
			}
		}
	}
}

// quarterOf numbers the quarters of the plane.
func quarterOf(way geom.Point) int {
	q := 0
	if way.X < 0 {
		q++
	}
	if way.Y < 0 {
		q += 2
	}
	return q
}

// rank returns the nth smallest, infinity where there are fewer.
func rank(v []float64, n int) float64 {
	if len(v) < n {
		return math.Inf(1)
	}
	sorted := slices.Clone(v)
	slices.Sort(sorted)
	return sorted[n-1]
}
