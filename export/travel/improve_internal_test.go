package travel

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"slingloft/outline/geom"
)

// idle adds up the travel of a tour anew.
func (t *tour) idle() float64 {
	steps := make([]Step, len(t.steps))
	for i, s := range t.steps {
		steps[i] = s.Step
	}
	return Idle(t.paths, steps, t.from)
}

// books fails where what a tour keeps in mind of itself is not so: each path once and
// where it stands, places and gaps, and, since the given state, the change of the
// travel and the steps that changed.
func (t *tour) books(tt *testing.T, what string, before []stop, was float64) {
	tt.Helper()
	seen := make([]bool, len(t.paths))
	for i, s := range t.steps {
		if seen[s.Path] {
			tt.Fatalf("%s: path %d stands twice", what, s.Path)
		}
		seen[s.Path] = true
		if t.at[s.Path] != i {
			tt.Fatalf("%s: path %d is said to stand at %d, not at %d", what, s.Path, t.at[s.Path], i)
		}
		fresh := t.stop(s.Step)
		if fresh.in != s.in || fresh.out != s.out {
			tt.Fatalf("%s: step %d is entered at %v and left at %v, not %v and %v", what, i, s.in, s.out, fresh.in, fresh.out)
		}
		if want := t.exit(i - 1).Dist(s.in); math.Abs(s.gap-want) > 1e-9 {
			tt.Fatalf("%s: gap %d is %g, not %g", what, i, s.gap, want)
		}
		if (i < t.since.low || i >= t.since.high) && s != before[i] {
			tt.Fatalf("%s: step %d changed outside %d to %d", what, i, t.since.low, t.since.high)
		}
	}
	if now := t.idle(); math.Abs(was+t.change-now) > 1e-6 {
		tt.Fatalf("%s: travel went from %g to %g, by %g and not %g", what, was, now, now-was, t.change)
	}
}

// watched does something to a tour and checks its books.
func (t *tour) watched(tt *testing.T, what string, do func()) {
	tt.Helper()
	before, was := slices.Clone(t.steps), t.idle()
	t.change, t.since = 0, span{}
	do()
	t.books(tt, what, before, was)
}

// order returns the paths in the order in which they stand.
func (t *tour) order() []int {
	var out []int
	for _, s := range t.steps {
		out = append(out, s.Path)
	}
	return out
}

// Stretches moved and reversed stand where they should, worked out by cutting the
// order apart, and the books are right after each.
func TestMovesAndReversals(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 1))
	for _, n := range []int{3, 4, 9, 40} {
		tour := newTour(scattered(rng, n, 0.3), geom.Pt(500, 500))
		for range 150 {
			i := rng.IntN(n)
			j := i + rng.IntN(n-i)
			was := tour.order()
			if rng.IntN(2) == 0 {
				tour.watched(t, "reverse", func() { tour.reverse(i, j) })
				slices.Reverse(was[i : j+1])
			} else {
				place := rng.IntN(n + 1)
				if place >= i && place <= j+1 {
					continue // where it stands already
				}
				tour.watched(t, "move", func() { tour.move(i, j, place) })
				stretch := slices.Clone(was[i : j+1])
				if place > j {
					was = slices.Insert(was, place, stretch...)
					was = slices.Delete(was, i, j+1)
				} else {
					was = slices.Delete(was, i, j+1)
					was = slices.Insert(was, place, stretch...)
				}
			}
			if got := tour.order(); !slices.Equal(got, was) {
				t.Fatalf("%d paths, %d to %d: %v, want %v", n, i, j, got, was)
			}
		}
	}
}

// Every move that is made shortens the travel, and where none is made nothing
// changes.
func TestMovesShorten(t *testing.T) {
	rng := rand.New(rand.NewPCG(12, 1))
	made := map[string]int{}
	for range 30 {
		n := 3 + rng.IntN(60)
		tour := newTour(scattered(rng, n, 0.3), geom.Point{})
		for k := range n {
			other := rng.IntN(n)
			tour.watched(t, "shuffle", func() { tour.reverse(min(k, other), max(k, other)) })
		}
		for range 200 {
			i := rng.IntN(n)
			for what, move := range map[string]func(int) bool{"restart": tour.restart, "reverse": tour.reverseFrom, "move": tour.moveAt} {
				before := slices.Clone(tour.steps)
				var done bool
				tour.watched(t, what, func() { done = move(i) })
				switch {
				case done && tour.change > -gain:
					t.Fatalf("%s made the travel longer by %g", what, tour.change)
				case !done && !slices.Equal(before, tour.steps):
					t.Fatalf("%s made nothing and changed the order", what)
				case done:
					made[what]++
				}
			}
		}
	}
	for _, what := range []string{"restart", "reverse", "move"} {
		if made[what] < 20 {
			t.Errorf("%s was made %d times only", what, made[what])
		}
	}
}

// A kick swaps two stretches beside each other and turns none; no path is lost.
func TestKick(t *testing.T) {
	rng := rand.New(rand.NewPCG(13, 1))
	for _, n := range []int{3, 5, 12, 200} {
		tour := newTour(scattered(rng, n, 0.3), geom.Point{})
		for range 100 {
			was := tour.order()
			tour.watched(t, "kick", func() { tour.kick(rng) })
			now := tour.order()
			low := 0
			for low < n && now[low] == was[low] {
				low++
			}
			high := n
			for high > low && now[high-1] == was[high-1] {
				high--
			}
			if low == high {
				t.Fatalf("%d paths: a kick changed nothing", n)
			}
			// Turned round, the part that changed is the one before it.
			part, old := now[low:high], was[low:high]
			at := slices.Index(old, part[0])
			if !slices.Equal(append(slices.Clone(old[at:]), old[:at]...), part) {
				t.Fatalf("%d paths: %v became %v, no swap of two stretches", n, old, part)
			}
		}
	}
}

// Where nothing is left to try no single move shortens the travel, and a second
// round finds as little.
func TestSettled(t *testing.T) {
	rng := rand.New(rand.NewPCG(14, 1))
	left, tried := 0, 0
	for range 20 {
		n := 5 + rng.IntN(60)
		tour := newTour(scattered(rng, n, 0.3), geom.Point{})
		was := tour.idle()
		tour.watched(t, "settle", func() {
			for i := range tour.steps {
				tour.enqueue(i)
			}
			tour.settle()
		})
		if len(tour.queue) > 0 || slices.Contains(tour.queued, true) || tour.idle() > was {
			t.Fatalf("%d left to try, travel %g after %g", len(tour.queue), tour.idle(), was)
		}
		for i := range tour.steps {
			tried++
			if tour.restart(i) || tour.reverseFrom(i) || tour.moveAt(i) {
				left++
			}
		}
	}
	if left*20 > tried {
		t.Errorf("after settling %d of %d steps still have a move", left, tried)
	}
}

// A dozen strokes, or eight paths some of which are rings, are near enough to the
// shortest order there is, which dynamic programming finds; mostly it is that one.
func TestImprovedIsShortest(t *testing.T) {
	rng := rand.New(rand.NewPCG(15, 1))
	for _, r := range []struct {
		n     int
		rings float64
	}{{11, 0}, {7, 0.4}} {
		const draws = 40
		sum, best, met := 0.0, 0.0, 0
		for range draws {
			paths := scattered(rng, r.n, r.rings)
			from := geom.Pt(rng.Float64()*1000, 0)
			steps, ok := exactly(paths, from)
			if !ok {
				t.Fatal("too many paths for the shortest order")
			}
			shortest := tour{paths: paths, from: from, steps: steps}.lengthOf()
			tour := newTour(paths, from)
			tour.improve()
			tour.chooseCorners()
			got := tour.idle()
			if got < shortest-1e-6 {
				t.Fatalf("travel %g is shorter than the shortest, %g", got, shortest)
			}
			if got < shortest+1e-6 {
				met++
			}
			if got > 1.15*shortest {
				t.Errorf("%d paths: travel %.1f, the shortest is %.1f", r.n, got, shortest)
			}
			sum, best = sum+got, best+shortest
		}
		if met < draws*8/10 || sum > 1.005*best {
			t.Errorf("%d paths: the shortest order met %d times of %d, travel %.4f of it", r.n, met, draws, sum/best)
		}
	}
}

// lengthOf adds up the travel of a tour whose gaps are not measured.
func (t tour) lengthOf() float64 { return t.idle() }

// Of a thousand strokes in rows, as lettering is, the order found is far shorter than
// the nearest neighbour's each time and not much longer than row by row.
func TestRowsOfStrokes(t *testing.T) {
	var paths []Path
	rng := rand.New(rand.NewPCG(16, 1))
	const rows, each, apart, pitch = 12, 25, 40.0, 8.0
	for row := range rows {
		for k := range each {
			at := geom.Pt(float64(k)*pitch, float64(row)*apart)
			paths = append(paths, Path{Points: geom.Polyline{at, at.Plus(geom.Pt(5, 0))}})
		}
	}
	rng.Shuffle(len(paths), func(i, k int) { paths[i], paths[k] = paths[k], paths[i] })
	// Row by row there and back: a gap of 3 between strokes, a row's distance between rows.
	byHand := rows*(each-1)*3.0 + (rows-1)*apart
	got := Idle(paths, Order(paths, geom.Point{}), geom.Point{})
	if got < byHand-1e-6 || got > 1.03*byHand {
		t.Errorf("travel %.1f mm, row by row it is %.1f", got, byHand)
	}
}
