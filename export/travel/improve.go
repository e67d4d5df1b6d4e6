package travel

import (
	"math/rand/v2"
	"slices"

	"slingloft/outline/geom"
)

// gain is the least shortening, mm, for which a move is made; less is rounding.
const gain = 1e-6

// How often the order is kicked. On the lettering of a sheet, a thousand strokes, a kick
// for every second path leaves the travel some 6 % shorter than none; eight times as many
// shorten it by another 0.3 % at most, at a time that grows as their number.
const (
	pathsPerKick = 2
	leastKicks   = 100
	maxKicks     = 6000
)

// improve shortens the travel by local moves, then kicks the order again and
// again at a random place and keeps what the moves make of it if it is shorter.
// The random numbers are the same each time.
func (t *tour) improve() {
	for i := range t.steps {
		t.enqueue(i)
	}
	t.settle()
	if len(t.steps) < 3 {
		return // too few for a kick
	}
	rng := rand.New(rand.NewPCG(1, 1))
	best := slices.Clone(t.steps)
	for range min(max(len(t.steps)/pathsPerKick, leastKicks), maxKicks) {
		t.change, t.since = 0, span{}
		t.kick(rng)
		t.settle()
		low, high := t.since.low, t.since.high
		if t.change > -gain {
			copy(t.steps[low:high], best[low:high])
			t.renumber(low, high)
		} else {
			copy(best[low:high], t.steps[low:high])
		}
	}
}

// kick swaps two segments that follow each other, a change that no move can undo at
// once: short ones anywhere, or, one time in three, segments of any length between
// wide gaps, such as lines of lettering.
func (t *tour) kick(rng *rand.Rand) {
	n := len(t.steps)
	if rng.IntN(3) == 0 {
		cuts := [3]int{t.wideGap(rng), t.wideGap(rng), t.wideGap(rng)}
		slices.Sort(cuts[:])
		if cuts[0] < cuts[1] && cuts[1] < cuts[2] {
			t.move(cuts[0], cuts[1]-1, cuts[2])
			return
		}
	}
	longest := min(n/3, 50)
	a, b := 1+rng.IntN(longest), 1+rng.IntN(longest)
	i := rng.IntN(n - a - b + 1)
	t.move(i, i+a-1, i+a+b)
}

// wideGap returns the step behind the widest of some gaps.
func (t *tour) wideGap(rng *rand.Rand) int {
	const some = 16
	widest := 1 + rng.IntN(len(t.steps)-1)
	for range some {
		if i := 1 + rng.IntN(len(t.steps)-1); t.gap(i) > t.gap(widest) {
			widest = i
		}
	}
	return widest
}

// settle makes moves at all steps in the queue until none shortens the
// travel.
func (t *tour) settle() {
	for len(t.queue) > 0 {
		path := t.queue[len(t.queue)-1]
		t.queue = t.queue[:len(t.queue)-1]
		t.queued[path] = false
		i := t.at[path]
		if t.restart(i) || t.reverseFrom(i) || t.moveAt(i) {
			t.enqueue(t.at[path])
		}
	}
}

// enqueue notes that moves at step i are to be tried.
func (t *tour) enqueue(i int) {
	if i < 0 || i >= len(t.steps) {
		return
	}
	if path := t.steps[i].Path; !t.queued[path] {
		t.queued[path] = true
		t.queue = append(t.queue, path)
	}
}

// restart begins a closed path at the corner with the shortest way in and out.
func (t *tour) restart(i int) bool {
	s := t.steps[i]
	p := t.paths[s.Path]
	if !p.Closed {
		return false
	}
	before := t.exit(i - 1)
	way := func(q geom.Point) float64 { return before.Dist(q) + t.wayTo(i+1, q) }
	now := way(p.Points[s.Start])
	best, bestWay := s.Start, now-gain
	for k, q := range p.Points {
		if d := way(q); d < bestWay {
			best, bestWay = k, d
		}
	}
	if best == s.Start {
		return false
	}
	s.Start = best
	t.steps[i] = t.stop(s.Step)
	t.measure(i)
	t.measure(i + 1)
	t.change += bestWay - now
	t.enqueue(i - 1)
	t.enqueue(i + 1)
	return true
}

// reverse turns the segment from step i to step j the other way round.
func (t *tour) reverse(i, j int) {
	t.change -= t.gap(i) + t.gap(j+1)
	for a, b := i, j; a <= b; a, b = a+1, b-1 {
		t.steps[a], t.steps[b] = t.steps[b].turned(), t.steps[a].turned()
	}
	// The travel within the segment stays as it is, to what is now the step behind.
	for k := j; k > i; k-- {
		t.steps[k].gap = t.steps[k-1].gap
	}
	t.renumber(i, j+1)
	t.measure(i)
	t.measure(j + 1)
	t.change += t.gap(i) + t.gap(j+1)
	for _, k := range [4]int{i - 1, i, j, j + 1} {
		t.enqueue(k)
	}
}

// turned returns the stop the other way round.
func (s stop) turned() stop {
	s.Reversed = !s.Reversed
	s.in, s.out = s.out, s.in
	return s
}

// reverseFrom tries to reverse segments that begin or end beside a neighbour of
// step i that is nearer than what now stands beside it.
func (t *tour) reverseFrom(i int) bool {
	widest := max(t.gap(i), t.gap(i+1))
	for _, other := range t.near[t.steps[i].Path] {
		if other.dist >= widest {
			continue
		}
		k := t.at[other.path]
		for _, segment := range [4][2]int{{i + 1, k}, {k, i - 1}, {i, k - 1}, {k + 1, i}} {
			a, b := segment[0], segment[1]
			if a < 0 || a > b || b >= len(t.steps) {
				continue
			}
			before := t.gap(a) + t.gap(b+1)
			after := t.exit(a - 1).Dist(t.exit(b))
			if after < before-gain && after+t.wayTo(b+1, t.entry(a)) < before-gain {
				t.reverse(a, b)
				return true
			}
		}
	}
	return false
}

// moveAt tries to move one to three steps that begin or end with step i, and longer
// segments from i to a gap that is wide as well, such as words.
func (t *tour) moveAt(i int) bool {
	for length := 1; length <= 3; length++ {
		if t.moveFrom(i, length) || (length > 1 && i-length+1 >= 0 && t.moveFrom(i-length+1, length)) {
			return true
		}
	}
	const longest, maxTries = 60, 4
	wide := t.gap(i) / 2
	for j, tries := i+3, 0; j < min(i+longest, len(t.steps)) && tries < maxTries; j++ {
		if t.gap(j+1) >= wide {
			tries++
			if t.moveFrom(i, j-i+1) {
				return true
			}
		}
	}
	return false
}

// moveFrom tries to move the steps from i on, length of them, to a neighbour of
// the first or the last of them that is nearer than what now stands beside them.
func (t *tour) moveFrom(i, length int) bool {
	j := i + length - 1
	if j >= len(t.steps) || len(t.steps) == length {
		return false
	}
	saved := t.gap(i) + t.gap(j+1) - t.wayTo(j+1, t.exit(i-1))
	if saved <= gain {
		return false
	}
	widest := max(t.gap(i), t.gap(j+1))
	ends := [2]int{i, j}
	for _, end := range ends[:min(length, 2)] {
		for _, other := range t.near[t.steps[end].Path] {
			k := t.at[other.path]
			if other.dist >= widest || (k >= i && k <= j) {
				continue
			}
			for _, place := range [2]int{k, k + 1} { // before step k, or behind it
				if (place < i || place > j+1) && t.tryMove(i, j, place, saved) {
					return true
				}
			}
		}
	}
	return false
}

// tryMove moves the segment from i to j so that it stands before what is now step
// place, either way round, if that costs less than is saved.
func (t *tour) tryMove(i, j, place int, saved float64) bool {
	bound := saved - gain
	straight := t.cost(t.entry(i), t.exit(j), place, bound)
	turned := t.cost(t.exit(j), t.entry(i), place, bound)
	if min(straight, turned) >= bound {
		return false
	}
	if turned < straight {
		t.reverse(i, j)
	}
	t.move(i, j, place)
	return true
}

// cost is what a segment from in to out costs before step place, or less than that but
// at least bound.
func (t *tour) cost(in, out geom.Point, place int, bound float64) float64 {
	to, gap := t.exit(place-1).Dist(in), t.gap(place)
	if to-gap >= bound {
		return to - gap
	}
	return to + t.wayTo(place, out) - gap
}

// move takes the segment from i to j out and puts it in before what is now step
// place, which is not within it.
func (t *tour) move(i, j, place int) {
	low, high := min(i, place), max(j+1, place) // the steps that shift
	t.change -= t.gap(i) + t.gap(j+1) + t.gap(place)
	moved := append(t.spare[:0], t.steps[i:j+1]...)
	t.spare = moved
	at := place // where the segment comes to stand
	if place > j {
		copy(t.steps[i:], t.steps[j+1:place])
		at = place - len(moved)
	} else {
		copy(t.steps[place+len(moved):], t.steps[place:i])
	}
	copy(t.steps[at:], moved)
	t.renumber(low, high)
	seam := i // where it has left a seam
	if place <= j {
		seam = j + 1
	}
	for _, k := range [3]int{at, at + len(moved), seam} {
		t.measure(k)
	}
	t.change += t.gap(at) + t.gap(at+len(moved)) + t.gap(seam)
	for _, k := range [6]int{at - 1, at, at + len(moved) - 1, at + len(moved), seam - 1, seam} {
		t.enqueue(k)
	}
}
