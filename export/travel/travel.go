// Package travel puts the paths of a machine into an order with little idle
// travel between them.
//
// The method. Few paths, as the outlines of a sheet, are put into the shortest order
// there is, each closed one begun at the corner that is best, by dynamic programming
// over sets of paths (Held and Karp 1962). More are begun with the nearest neighbour
// each time, from the place where the tool stands; then, until nothing gets shorter,
// segments are reversed (2-opt, Croes 1958), one to three paths moved to another
// place either way round (or-opt, Or 1976), and the corner chosen anew at which each
// closed path is begun, where only moves that join a path to one of its near neighbours
// are tried; then many times over a kick, the swap of two segments, and the moves
// again around it (iterated local search, Lourenço, Martin and Stützle 2003). At last,
// in the order that was found, the corners of all closed paths are chosen together.
// Sources from memory. The tool ends wherever the last path ends.
package travel

import (
	"math"
	"slices"

	"slingloft/outline/geom"
)

// Path is what the tool follows without a break. A closed path comes back to the
// point at which it is begun, which may be any of its points.
type Path struct {
	Points geom.Polyline // at least one; the first is not repeated in a closed path
	Closed bool
}

// Step is a path in the order of work.
type Step struct {
	Path     int  // index of the path
	Reversed bool // an open path is followed from its end
	Start    int  // index of the point at which a closed path is begun
}

// Follow returns the points in the order in which the tool comes to them, the
// start once more at the end of a closed path.
func (s Step) Follow(p Path) geom.Polyline {
	if !p.Closed {
		if s.Reversed {
			return p.Points.Reversed()
		}
		return p.Points
	}
	n := len(p.Points)
	out := make(geom.Polyline, 0, n+1)
	for i := range n + 1 {
		out = append(out, p.Points[(s.Start+i)%n])
	}
	return out
}

// block is how many paths are ordered at once; the time grows with its square.
// More are ordered block by block as they come, as with the letters of a page.
const block = 1500

// Order returns the order in which to follow the paths when the tool stands at
// from, and the same order for the same paths.
func Order(paths []Path, from geom.Point) []Step {
	var out []Step
	for first := 0; first < len(paths); first += block {
		steps := ordered(paths[first:min(first+block, len(paths))], from)
		from = steps[len(steps)-1].out
		for _, s := range steps {
			s.Path += first
			out = append(out, s.Step)
		}
	}
	return out
}

// ordered returns the stops at so many paths as are ordered at once.
func ordered(paths []Path, from geom.Point) []stop {
	if steps, ok := exactly(paths, from); ok {
		return steps
	}
	t := newTour(paths, from)
	t.improve()
	t.chooseCorners()
	return t.steps
}

// tour is an order under improvement.
type tour struct {
	paths []Path
	steps []stop
	from  geom.Point
	near  [][]neighbour // by path: the paths with ends near to its own
	at    []int         // by path: its place in steps

	queue  []int   // paths at which moves are to be tried
	queued []bool  // by path: it is in the queue
	change float64 // of the travel since it was last set to 0
	since  span    // the steps that were changed since then
	spare  []stop  // room for a segment on its way
}

// span is the steps from low to before high.
type span struct{ low, high int }

// with returns the span that holds the steps from low to before high too.
func (s span) with(low, high int) span {
	if s.low == s.high {
		return span{low, high}
	}
	return span{min(s.low, low), max(s.high, high)}
}

// stop is a step with the places at which the tool begins and ends it.
type stop struct {
	Step
	in, out geom.Point
	gap     float64 // travel to it, mm; see measure
}

// newTour begins with the nearest neighbour each time.
func newTour(paths []Path, from geom.Point) *tour {
	t := &tour{paths: paths, from: from, at: make([]int, len(paths)), queued: make([]bool, len(paths))}
	taken := make([]bool, len(paths))
	here := from
	for range paths {
		best, bestDist := Step{Path: -1}, math.Inf(1)
		for i, p := range paths {
			if !taken[i] {
				if s, d := nearestEntry(i, p, here); d < bestDist || best.Path < 0 {
					best, bestDist = s, d
				}
			}
		}
		taken[best.Path] = true
		t.add(best)
		here = t.exit(len(t.steps) - 1)
	}
	t.near = neighbours(paths)
	t.renumber(0, len(paths))
	return t
}

// add goes on with a step.
func (t *tour) add(s Step) {
	t.steps = append(t.steps, t.stop(s))
	t.measure(len(t.steps) - 1)
}

// nearestEntry returns the way to begin path number i from here.
func nearestEntry(i int, p Path, here geom.Point) (Step, float64) {
	last := len(p.Points) - 1
	if !p.Closed {
		a, b := here.Dist(p.Points[0]), here.Dist(p.Points[last])
		return Step{Path: i, Reversed: b < a}, math.Min(a, b)
	}
	best, bestDist := 0, math.Inf(1)
	for k, q := range p.Points {
		if d := here.Dist(q); d < bestDist {
			best, bestDist = k, d
		}
	}
	return Step{Path: i, Start: best}, bestDist
}

// neighbours returns for each path the paths whose ends or corners are nearest to
// an end of its own, and the nearest in each quarter of the plane, so that a letter
// has neighbours in other words too; of closed paths a few corners stand for all.
func neighbours(paths []Path) [][]neighbour {
	const around, quarterly = 8, 3
	ends := make([]geom.Polyline, len(paths))
	for i, p := range paths {
		ends[i] = geom.Polyline{p.Points[0], p.Points[len(p.Points)-1]}
		if p.Closed {
			corners := 8
			if len(paths) < 100 { // outlines, which are large
				corners = 64
			}
			ends[i] = nil
			for k := range corners {
				ends[i] = append(ends[i], p.Points[k*len(p.Points)/corners])
			}
		}
	}
	out := make([][]neighbour, len(paths))
	for i := range paths {
		var all shortlist
		var quarter [4]shortlist
		for k := range paths {
			if k == i {
				continue
			}
			n := neighbour{k, nearest(ends[i], ends[k])}
			all = all.with(n, around)
			way := ends[k][0].Minus(ends[i][0])
			q := 0
			if way.X < 0 {
				q++
			}
			if way.Y < 0 {
				q += 2
			}
			quarter[q] = quarter[q].with(n, quarterly)
		}
		out[i] = all
		for _, list := range quarter {
			for _, n := range list {
				if !slices.Contains(out[i], n) {
					out[i] = append(out[i], n)
				}
			}
		}
	}
	return out
}

// neighbour is another path and how near an end of it comes, mm.
type neighbour struct {
	path int
	dist float64
}

// shortlist is the nearest neighbours, in their order.
type shortlist []neighbour

// with returns the list, which may have so many neighbours, with n if it is
// near enough; n comes behind those as near.
func (s shortlist) with(n neighbour, limit int) shortlist {
	if len(s) == limit && n.dist >= s[limit-1].dist {
		return s
	}
	if len(s) < limit {
		s = append(s, n)
	}
	j := len(s) - 1
	for ; j > 0 && s[j-1].dist > n.dist; j-- {
		s[j] = s[j-1]
	}
	s[j] = n
	return s
}

func nearest(a, b geom.Polyline) float64 {
	best := math.Inf(1) // the square of the distance
	for _, p := range a {
		for _, q := range b {
			way := p.Minus(q)
			best = min(best, way.Dot(way))
		}
	}
	return math.Sqrt(best)
}

// entry and exit return where the tool begins and ends step i; the step before the
// first ends where the tool stands.
func (t *tour) entry(i int) geom.Point { return t.steps[i].in }
func (t *tour) exit(i int) geom.Point {
	if i < 0 {
		return t.from
	}
	return t.steps[i].out
}

// stop returns the step with its places.
func (t *tour) stop(s Step) stop {
	p := t.paths[s.Path]
	first, last := p.Points[0], p.Points[len(p.Points)-1]
	switch {
	case p.Closed:
		return stop{Step: s, in: p.Points[s.Start], out: p.Points[s.Start]}
	case s.Reversed:
		return stop{Step: s, in: last, out: first}
	}
	return stop{Step: s, in: first, out: last}
}

// gap returns the travel to step i; none to the place behind the last.
func (t *tour) gap(i int) float64 {
	if i >= len(t.steps) {
		return 0
	}
	return t.steps[i].gap
}

// measure finds the travel to step i anew, if there is such a step, after it or the
// one before has changed.
func (t *tour) measure(i int) {
	if i < len(t.steps) {
		t.steps[i].gap = t.wayTo(i, t.exit(i-1))
		t.since = t.since.with(i, i+1)
	}
}

// wayTo returns the way from a place to step i; none to the place behind the last.
func (t *tour) wayTo(i int, from geom.Point) float64 {
	if i >= len(t.steps) {
		return 0
	}
	return from.Dist(t.entry(i))
}

// renumber takes note of the places of steps from first to before end.
func (t *tour) renumber(first, end int) {
	for i := first; i < end; i++ {
		t.at[t.steps[i].Path] = i
	}
	t.since = t.since.with(first, end)
}
