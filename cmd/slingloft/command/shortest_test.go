package command_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"slingloft/outline/geom"
)

// Shortest travel, by means that share nothing with the ordering that they judge.

// track is what a machine follows without a break: an open one from either end to
// the other, a closed one from any of its corners back to it.
type track struct {
	points geom.Polyline
	closed bool
}

// doors are the ways to follow a track: where it is entered and where it is left.
func (t track) doors() [][2]geom.Point {
	a, b := t.points[0], t.points[len(t.points)-1]
	if !t.closed {
		return [][2]geom.Point{{a, b}, {b, a}}
	}
	var out [][2]geom.Point
	for _, p := range t.points {
		out = append(out, [2]geom.Point{p, p})
	}
	return out
}

// exactTravel returns the shortest travel over all tracks, begun at from and ended
// anywhere, by dynamic programming over the sets of tracks that are done and the
// door by which the last one was left (Held and Karp 1962, Bellman 1962).
func exactTravel(tracks []track, from geom.Point) float64 {
	type door struct {
		track   int
		in, out geom.Point
	}
	var doors []door
	for i, t := range tracks {
		for _, d := range t.doors() {
			doors = append(doors, door{i, d[0], d[1]})
		}
	}
	best := make([][]float64, 1<<len(tracks)) // by set and door: the shortest way to be out of it
	best[0] = []float64{}
	shortest := 0.0
	for set := 1; set < len(best); set++ {
		best[set] = make([]float64, len(doors))
		shortest = math.Inf(1) // of the last set, that of all tracks, in the end
		for k, to := range doors {
			least := math.Inf(1)
			switch rest := set &^ (1 << to.track); {
			case rest == set:
			case rest == 0:
				least = from.Dist(to.in)
			default:
				for j, d := range doors {
					if b := best[rest][j]; b < least {
						least = min(least, b+d.out.Dist(to.in))
					}
				}
			}
			best[set][k] = least
			shortest = min(shortest, least)
		}
	}
	return shortest
}

// anyTravel returns the shortest travel by trying every order and door.
func anyTravel(tracks []track, from geom.Point) float64 {
	if len(tracks) == 0 {
		return 0
	}
	least := math.Inf(1)
	for i, t := range tracks {
		rest := append(append([]track(nil), tracks[:i]...), tracks[i+1:]...)
		for _, d := range t.doors() {
			least = min(least, from.Dist(d[0])+anyTravel(rest, d[1]))
		}
	}
	return least
}

// The judges agree: what is found set by set is what is found order by order, and the
// lower bound is below it, not far.
func TestJudgesOfTravel(t *testing.T) {
	rng := rand.New(rand.NewPCG(8, 8))
	bounds, exact := 0.0, 0.0
	for range 40 {
		var tracks []track
		for range 5 {
			at := geom.Pt(rng.Float64()*100, rng.Float64()*100)
			l := track{points: geom.Polyline{at}, closed: rng.IntN(3) == 0}
			for range 3 {
				l.points = append(l.points, at.Plus(geom.Pt(rng.Float64()*30, rng.Float64()*30)))
			}
			tracks = append(tracks, l)
		}
		got, want := exactTravel(tracks, geom.Point{}), anyTravel(tracks, geom.Point{})
		if math.Abs(got-want) > 1e-9 {
			t.Fatalf("%v: %g set by set, %g order by order", tracks, got, want)
		}
		least := newWeb(tracks, geom.Point{}).least(want, 1.03)
		if least > want+1e-9 {
			t.Fatalf("%v: bound %g above the shortest travel %g", tracks, least, want)
		}
		bounds, exact = bounds+least, exact+want
	}
	t.Logf("bounds are %.3f of the shortest travel", bounds/exact)
	if bounds < 0.9*exact {
		t.Errorf("bounds are %.3f of the shortest travel, want 0.9", bounds/exact)
	}
}
