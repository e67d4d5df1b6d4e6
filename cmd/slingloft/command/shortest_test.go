package command_test

import (
	"cmp"
	"math"
	"slices"

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

// web is what a lower bound is found with: the places where tracks can be entered or
// left, which the travel has to tie together. Travel over n tracks is a tree of n
// ways between them and the place of beginning in which each place has one way, but
// for the last, which has none. A price on each place that has more ways than one
// brings the cheapest of all trees near to that, and what it costs less the prices is
// no more than any travel costs (Held and Karp 1971, with a price for the one place
// that has none).
type web struct {
	at    []geom.Polyline // by place: where it is; a closed track is one place with many points
	track []int           // by place: its track, 0 for the beginning
	want  []int           // by place: the ways that it has in any travel but at its end
	ways  []way           // that the cheapest tree is sought among
	known map[[2]int]bool
}

type way struct {
	a, b int
	long float64
}

func newWeb(tracks []track, from geom.Point) *web {
	w := &web{at: []geom.Polyline{{from}}, track: []int{0}, want: []int{1}, known: map[[2]int]bool{}}
	for i, t := range tracks {
		ends := []geom.Polyline{t.points[:1], t.points[len(t.points)-1:]}
		want := 1
		if t.closed {
			ends, want = []geom.Polyline{t.points}, 2
		}
		for _, p := range ends {
			w.at, w.track, w.want = append(w.at, p), append(w.track, i+1), append(w.want, want)
		}
	}
	return w
}

// long returns the least distance between two places.
func (w *web) long(a, b int) float64 {
	least := math.Inf(1)
	for _, p := range w.at[a] {
		for _, q := range w.at[b] {
			least = min(least, p.Dist(q))
		}
	}
	return least
}

// add takes a way among those to seek in.
func (w *web) add(a, b int) {
	key := [2]int{min(a, b), max(a, b)}
	if w.track[a] != w.track[b] && !w.known[key] {
		w.known[key] = true
		w.ways = append(w.ways, way{key[0], key[1], w.long(a, b)})
	}
}

// addNearest takes for each place the ways to those nearest to it.
func (w *web) addNearest(count int) {
	for a := range w.at {
		var all []way
		for b := range w.at {
			if w.track[a] != w.track[b] {
				all = append(all, way{a, b, w.long(a, b)})
			}
		}
		slices.SortFunc(all, func(x, y way) int { return cmp.Compare(x.long, y.long) })
		for _, e := range all[:min(count, len(all))] {
			w.add(e.a, e.b)
		}
	}
}

// cheapest returns what the cheapest tree of the known ways costs at the prices, and
// how many ways each place has in it, by Kruskal's method. It is no bound, since a
// cheaper way may be unknown.
func (w *web) cheapest(price []float64) (float64, []int) {
	cost := make([]float64, len(w.ways))
	order := make([]int, len(w.ways))
	for i, e := range w.ways {
		cost[i], order[i] = e.long+price[e.a]+price[e.b], i
	}
	slices.SortFunc(order, func(i, j int) int { return cmp.Compare(cost[i], cost[j]) })
	root := make([]int, len(w.at)) // by track
	for i := range root {
		root[i] = i
	}
	find := func(i int) int {
		for root[i] != i {
			root[i] = root[root[i]]
			i = root[i]
		}
		return i
	}
	sum, degree := 0.0, make([]int, len(w.at))
	for _, i := range order {
		e := w.ways[i]
		if a, b := find(w.track[e.a]), find(w.track[e.b]); a != b {
			root[a] = b
			sum += cost[i]
			degree[e.a]++
			degree[e.b]++
		}
	}
	return sum, degree
}

// cheapestOfAll returns what the cheapest tree of all ways costs at the prices, by
// Prim's method, and takes its ways among the known.
func (w *web) cheapestOfAll(price []float64) float64 {
	n := len(w.at)
	key, parent, in := make([]float64, n), make([]int, n), make([]bool, n)
	for i := range key {
		key[i] = math.Inf(1)
	}
	key[0] = 0
	sum := 0.0
	for {
		next := -1
		for i := range n {
			if !in[i] && !math.IsInf(key[i], 1) && (next < 0 || key[i] < key[next]) {
				next = i
			}
		}
		if next < 0 {
			return sum
		}
		sum += key[next]
		if next > 0 {
			w.add(next, parent[next])
		}
		for a := range n {
			if in[a] || w.track[a] != w.track[next] {
				continue
			}
			in[a] = true // its whole track is reached
			for b := range n {
				if w.track[b] == w.track[next] || in[b] {
					continue
				}
				if c := w.long(a, b) + price[a] + price[b]; c < key[b] {
					key[b], parent[b] = c, a
				}
			}
		}
	}
}

// leastTravel returns a length that no travel over the tracks is shorter than; travel
// is the length of one, which the prices are aimed at.
func leastTravel(tracks []track, from geom.Point, travel float64) float64 {
	const nearest, tries, rounds = 5, 3, 250
	w := newWeb(tracks, from)
	w.addNearest(nearest)
	price := make([]float64, len(w.at))
	w.cheapestOfAll(price) // its ways tie all places together
	best := 0.0
	for range tries {
		price = w.climb(price, travel, rounds)
		sum, last := w.paid(price)
		best = max(best, w.cheapestOfAll(price)-sum+price[last])
	}
	return best
}

// paid returns what every travel pays at the prices if each place has the ways that
// it wants, and the place whose missing way saves least, at which travel may end.
func (w *web) paid(price []float64) (sum float64, last int) {
	last = 1
	for i, p := range price {
		sum += p * float64(w.want[i])
		if i > 0 && p < price[last] {
			last = i
		}
	}
	return sum, last
}

// climb changes the prices so that the cheapest tree costs more: they rise where a
// place has too many ways and fall where it has too few, by steps as Polyak has them
// (1969), with some of the step before.
func (w *web) climb(price []float64, travel float64, rounds int) []float64 {
	price, top := slices.Clone(price), slices.Clone(price)
	step := make([]float64, len(price))
	best, share, stall := math.Inf(-1), 1.0, 0
	for range rounds {
		tree, degree := w.cheapest(price)
		sum, last := w.paid(price)
		degree[last]++
		if bound := tree - sum + price[last]; bound > best {
			best, stall = bound, 0
			copy(top, price)
		} else if stall++; stall == 12 {
			share, stall = share*0.6, 0
		}
		square := 0
		for i, d := range degree {
			square += (d - w.want[i]) * (d - w.want[i])
		}
		if square == 0 {
			break // the tree is a travel
		}
		size := share * max(travel-(tree-sum+price[last]), 1e-3*travel) / float64(square)
		for i, d := range degree {
			step[i] = 0.3*step[i] + 0.7*size*float64(d-w.want[i])
			price[i] += step[i]
		}
	}
	return top
}
