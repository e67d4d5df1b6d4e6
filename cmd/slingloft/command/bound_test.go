package command_test

import (
	"math"
	"slices"

	"slingloft/outline/geom"
)

// web is what a lower bound of the travel is found with. Its places are the ends of
// the open tracks, the beginning and the closed tracks as wholes; travel ties the
// tracks together as a tree in which an end has one way and a closed track two, but
// for the place where the travel ends, which has one less. With a price on each end,
// paid for each way and paid back once, the cheapest of all trees costs no more than
// any travel (Held and Karp 1971). A closed track pays what it costs to pass it from
// one neighbour to another by one of its corners and gets fees from the ways that lead
// to it: so much is paid of the way through that the tree alone would give for nothing.
type web struct {
	places []place
	ways   []way // that the cheapest tree is sought among
	known  map[[2]int]bool
	order  []priced      // room for the ways by cost
	toll   []float64     // prices of the ends, then the fees
	paid   [][][]float64 // by closed place and other place: see reach, once it was asked for
}

// place is an end or a closed track.
type place struct {
	points geom.Polyline // one, or the corners
	middle geom.Point
	track  int
	closed bool
	near   []neighbour // of a closed track: those whose ways have a fee of their own
	pass   [][]float64 // by two of near: what it costs to pass from one to the other
}

// neighbour is a place that may come before or behind a closed track.
type neighbour struct {
	place, fee int
	reach      []float64 // see [web.reach]
}

// way joins two places; at each of its ends a toll is paid.
type way struct {
	a, b  int
	long  float64 // between two ends
	tollA int
	tollB int
}

// priced is a way, by number, with what it costs with its tolls.
type priced struct {
	way  int
	cost float64
}

func newWeb(tracks []track, from geom.Point) *web {
	end := func(p geom.Point, track int) place {
		return place{points: geom.Polyline{p}, middle: p, track: track}
	}
	w := &web{places: []place{end(from, 0)}, known: map[[2]int]bool{}}
	for i, t := range tracks {
		if t.closed {
			w.places = append(w.places, place{points: t.points, middle: t.points.Bounds().Center(), track: i + 1, closed: true})
		} else {
			w.places = append(w.places, end(t.points[0], i+1), end(t.points[len(t.points)-1], i+1))
		}
	}
	w.toll, w.paid = make([]float64, len(w.places)), make([][][]float64, len(w.places))
	w.addNearest()
	return w
}

// reach returns for each corner of closed place k what it pays of the way from there
// to another place: all of it to an end. Two closed places share the way between them:
// it is no shorter than its part along the line of their middles, of which each pays as
// far as the point halfway.
func (w *web) reach(k, other int) []float64 {
	if w.paid[k] == nil {
		w.paid[k] = make([][]float64, len(w.places))
	}
	if w.paid[k][other] == nil {
		w.paid[k][other] = w.reachOf(k, other)
	}
	return w.paid[k][other]
}

func (w *web) reachOf(k, other int) []float64 {
	p, q := w.places[k], w.places[other]
	out := make([]float64, len(p.points))
	a, b := p.middle, q.middle
	along := b.Minus(a).Unit()
	for i, corner := range p.points {
		if q.closed {
			out[i] = a.Plus(b).Times(0.5).Minus(corner).Dot(along)
		} else {
			out[i] = corner.Dist(q.middle)
		}
	}
	return out
}

// long returns the distance of two ends; a way to a closed place pays its length there.
func (w *web) long(a, b int) float64 {
	if w.places[a].closed || w.places[b].closed {
		return 0
	}
	return w.places[a].middle.Dist(w.places[b].middle)
}

// add takes a way among those to seek in.
func (w *web) add(a, b int) {
	a, b = min(a, b), max(a, b)
	if w.places[a].track == w.places[b].track || w.known[[2]int{a, b}] {
		return
	}
	w.known[[2]int{a, b}] = true
	e := way{a: a, b: b, long: w.long(a, b), tollA: a, tollB: b}
	if w.places[a].closed {
		e.tollA = w.addNeighbour(a, b)
	}
	if w.places[b].closed {
		e.tollB = w.addNeighbour(b, a)
	}
	w.ways = append(w.ways, e)
}

// addNeighbour makes other a neighbour of closed place k, with a fee for its way.
func (w *web) addNeighbour(k, other int) (fee int) {
	p := &w.places[k]
	n := neighbour{place: other, fee: len(w.toll), reach: w.reach(k, other)}
	w.toll = append(w.toll, slices.Min(n.reach))
	var row []float64
	for i, m := range p.near {
		cost := pass(m.reach, n.reach)
		p.pass[i] = append(p.pass[i], cost)
		row = append(row, cost)
	}
	p.near, p.pass = append(p.near, n), append(p.pass, append(row, math.Inf(1)))
	return n.fee
}

// pass returns what it costs to go in and out by the best corner.
func pass(in, out []float64) float64 {
	least := math.Inf(1)
	for i := range in {
		least = min(least, in[i]+out[i])
	}
	return least
}

// addNearest takes for each place the ways to those whose middles are nearest to it.
func (w *web) addNearest() {
	const toEnd, toClosed = 5, 12
	for a, p := range w.places {
		var all []priced // by other place
		for b, q := range w.places {
			if p.track != q.track {
				all = append(all, priced{b, p.middle.Dist(q.middle)})
			}
		}
		slices.SortFunc(all, dearer)
		count := toEnd
		if p.closed {
			count = toClosed
		}
		for _, e := range all[:min(count, len(all))] {
			w.add(a, e.way)
		}
	}
}

// hop is the best way to pass a closed place: between which two of its neighbours, by
// number, and what is left of its cost when their fees are taken; alone is the same if
// the travel ends there.
type hop struct {
	a, b  int
	left  float64
	last  int
	alone float64
}

func (w *web) hop(k int) hop {
	p := w.places[k]
	h := hop{a: -1, b: -1, left: math.Inf(1), last: -1, alone: math.Inf(1)}
	for i, m := range p.near {
		fee := w.toll[m.fee]
		if alone := slices.Min(m.reach) - fee; alone < h.alone {
			h.last, h.alone = i, alone
		}
		for j := range i {
			if left := p.pass[i][j] - fee - w.toll[p.near[j].fee]; left < h.left {
				h.a, h.b, h.left = i, j, left
			}
		}
	}
	return h
}

// cheapest returns what the cheapest tree of the known ways costs, by Kruskal's
// method, less what is paid back, and by toll how much too often it was paid: 0 all
// over if the tree is a travel. It is no bound, since a cheaper way may be unknown.
func (w *web) cheapest() (float64, []float64) {
	w.order = w.order[:0]
	for i, e := range w.ways {
		w.order = append(w.order, priced{i, e.long + w.toll[e.tollA] + w.toll[e.tollB]})
	}
	slices.SortFunc(w.order, dearer)
	root := make([]int, len(w.places)) // by track
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
	sum, often := 0.0, make([]float64, len(w.toll))
	for _, p := range w.order {
		e := w.ways[p.way]
		if a, b := find(w.places[e.a].track), find(w.places[e.b].track); a != b {
			root[a] = b
			sum += p.cost
			often[e.tollA]++
			often[e.tollB]++
		}
	}
	return sum + w.settled(often, nil), often
}

func dearer(x, y priced) int {
	switch {
	case x.cost < y.cost:
		return -1
	case x.cost > y.cost:
		return 1
	}
	return 0
}

// settled returns what is paid back to ends and by closed places. The travel ends
// where that costs least. It calls each, if it is set, with the closed places.
func (w *web) settled(often []float64, each func(k int, h hop)) float64 {
	sum, last, least := 0.0, -1, math.Inf(1)
	hops := make([]hop, len(w.places))
	for i, p := range w.places {
		if !p.closed {
			sum -= w.toll[i]
			often[i]--
			if i > 0 && w.toll[i] < least {
				last, least = i, w.toll[i]
			}
			continue
		}
		h := w.hop(i)
		if each != nil {
			each(i, h)
		}
		hops[i] = h
		sum += h.left
		if h.alone-h.left < least {
			last, least = i, h.alone-h.left
		}
	}
	for i, h := range hops {
		near := w.places[i].near
		switch {
		case !w.places[i].closed:
		case i == last:
			often[near[h.last].fee]--
		default:
			often[near[h.a].fee]--
			often[near[h.b].fee]--
		}
	}
	if !w.places[last].closed {
		often[last]++
	}
	return sum + least
}

// bound returns the same for the cheapest tree of all ways, by Prim's method, which is
// a bound, and takes its ways among the known. A way to a closed place that has no fee
// pays its length less so much that to pass that place by it costs no less than else.
func (w *web) bound() float64 {
	n := len(w.places)
	less := make([]float64, n)
	sum := w.settled(make([]float64, len(w.toll)), func(k int, h hop) { less[k] = w.unknown(k, h) })
	fee := make([][]float64, n) // by closed place: what a way to another pays there
	for k, p := range w.places {
		if !p.closed {
			continue
		}
		fee[k] = make([]float64, n)
		for b := range fee[k] {
			if w.places[b].track != p.track {
				fee[k][b] = slices.Min(w.reach(k, b)) - less[k]
			}
		}
		for _, m := range p.near {
			fee[k][m.place] = w.toll[m.fee]
		}
	}
	side := func(a, b int) float64 { // what a way to b pays at a
		if !w.places[a].closed {
			return w.toll[a]
		}
		return fee[a][b]
	}
	key, parent, in := make([]float64, n), make([]int, n), make([]bool, n)
	for i := range key {
		key[i] = math.Inf(1)
	}
	key[0] = 0
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
		if sum += key[next]; next > 0 {
			w.add(next, parent[next])
		}
		for a, p := range w.places {
			if in[a] || p.track != w.places[next].track {
				continue
			}
			in[a] = true // its whole track is reached
			for b, q := range w.places {
				if in[b] || q.track == p.track {
					continue
				}
				if cost := w.long(a, b) + side(a, b) + side(b, a); cost < key[b] {
					key[b], parent[b] = cost, a
				}
			}
		}
	}
}

// unknown returns by how much a way to closed place k that has no fee has to pay less
// than its length.
func (w *web) unknown(k int, h hop) float64 {
	p := w.places[k]
	known := map[int]bool{}
	for _, m := range p.near {
		known[m.place] = true
	}
	detour := make([]float64, len(p.points)) // by corner: the least to come by it rather than by the nearest
	for c := range detour {
		detour[c] = math.Inf(1)
	}
	for b := range w.places {
		if b == k || known[b] {
			continue
		}
		reach := w.reach(k, b)
		least := slices.Min(reach)
		for c := range reach {
			detour[c] = min(detour[c], reach[c]-least)
		}
	}
	short := 0.0
	for _, m := range p.near {
		short = max(short, h.left-(pass(m.reach, detour)-w.toll[m.fee]))
	}
	// Two ways without a fee, or one alone.
	return max(short, h.left/2, h.alone)
}

// leastTravel returns a length that no travel over the tracks is shorter than; travel
// is the length of one, which the prices are aimed at, and the bound is close enough
// where that is limit times as long. Where there are few ways to choose the corners of
// closed tracks, each is tried.
func leastTravel(tracks []track, from geom.Point, travel, limit float64) float64 {
	const most = 64
	choices, closed := 1, -1
	for i, t := range tracks {
		if t.closed {
			choices, closed = min(choices*len(t.points), most+1), i
		}
	}
	if closed < 0 || choices > most {
		return newWeb(tracks, from).least(travel, limit)
	}
	least := math.Inf(1)
	for _, p := range tracks[closed].points {
		fixed := slices.Clone(tracks)
		fixed[closed] = track{points: geom.Polyline{p}}
		least = min(least, leastTravel(fixed, from, travel, limit))
	}
	return least
}

// least raises the tolls again and again, with what ways were found missing, until the
// travel is at most limit times the bound.
func (w *web) least(travel, limit float64) float64 {
	const rounds, ample = 50, 32
	best := w.bound() // its ways tie all places together
	for i := 0; i < ample && best*limit < travel; i++ {
		w.climb(travel, rounds)
		best = max(best, w.bound())
	}
	return best
}

// climb changes the tolls so that the cheapest tree costs more: they rise where they
// are paid too often and fall where too seldom, by steps as Polyak has them (1969),
// with some of the step before.
func (w *web) climb(travel float64, rounds int) {
	const keep, shrink, patience = 0.6, 0.6, 12
	top, step := slices.Clone(w.toll), make([]float64, len(w.toll))
	best, share, stall := math.Inf(-1), 1.0, 0
	for range rounds {
		bound, often := w.cheapest()
		if bound > best {
			best, stall = bound, 0
			copy(top, w.toll)
		} else if stall++; stall == patience {
			share, stall = share*shrink, 0
		}
		square := 0.0
		for _, d := range often {
			square += d * d
		}
		if square == 0 {
			break // the tree is a travel
		}
		size := share * max(travel-bound, 1e-3*travel) / square
		for i, d := range often {
			step[i] = keep*step[i] + (1-keep)*size*d
			w.toll[i] += step[i]
		}
	}
	copy(w.toll, top)
}
