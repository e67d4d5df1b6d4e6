package travel

import (
	"math/rand/v2"
	"slices"
	"testing"

	"slingloft/outline/geom"
)

// copied returns a tour of its own with the same order and nothing to try.
func (t *tour) copied() *tour {
	c := newTour(t.paths, t.from)
	copy(c.steps, t.steps)
	c.renumber(0, len(c.steps))
	return c
}

// tourOf returns a tour of other steps over the same paths, to be measured only.
func tourOf(t *tour, steps []stop) *tour { return &tour{paths: t.paths, from: t.from, steps: steps} }

// reversed returns the travel with the steps from a to b turned round.
func (t *tour) reversed(a, b int) float64 {
	c := tourOf(t, slices.Clone(t.steps))
	slices.Reverse(c.steps[a : b+1])
	for i := a; i <= b; i++ {
		c.steps[i] = c.steps[i].turned()
	}
	return c.idle()
}

// moved returns the shorter travel of both ways round with the steps from i to j
// taken out and put in before what is now step place.
func (t *tour) moved(i, j, place int) float64 {
	stretch := slices.Clone(t.steps[i : j+1])
	rest := slices.Delete(slices.Clone(t.steps), i, j+1)
	if place > j {
		place -= len(stretch)
	}
	straight := tourOf(t, slices.Insert(slices.Clone(rest), place, stretch...))
	slices.Reverse(stretch)
	for k := range stretch {
		stretch[k] = stretch[k].turned()
	}
	turned := tourOf(t, slices.Insert(rest, place, stretch...))
	return min(straight.idle(), turned.idle())
}

// nearer returns where the near neighbours of a step stand that are nearer than
// widest.
func (t *tour) nearer(i int, widest float64) []int {
	var out []int
	for _, o := range t.near[t.steps[i].Path] {
		if o.dist < widest {
			out = append(out, t.at[o.path])
		}
	}
	return out
}

// shuffled returns a tour that is good in places: settled, then kicked a few times.
func shuffled(rng *rand.Rand, n int) *tour {
	t := newTour(scattered(rng, n, 0.2), geom.Point{})
	for i := range t.steps {
		t.enqueue(i)
	}
	t.settle()
	for range 3 {
		t.kick(rng)
	}
	return t
}

// Where turning some stretch would bring step i beside a near neighbour and shorten
// the travel, a stretch is turned: by the travel of the whole order, counted anew.
func TestNoReversalIsMissed(t *testing.T) {
	rng := rand.New(rand.NewPCG(31, 1))
	found := 0
	for range 25 {
		tour := shuffled(rng, 4+rng.IntN(30))
		was := tour.idle()
		for i := range tour.steps {
			some := false
			for _, k := range tour.nearer(i, max(tour.gap(i), tour.gap(i+1))) {
				for a := range tour.steps {
					for b := a; b < len(tour.steps); b++ {
						// Two pairs become neighbours: before a with b, and a with behind b.
						joins := (a-1 == i && b == k) || (a-1 == k && b == i) || (a == i && b+1 == k) || (a == k && b+1 == i)
						some = some || joins && tour.reversed(a, b) < was-2*gain
					}
				}
			}
			if some {
				found++
				if !tour.copied().reverseFrom(i) {
					t.Fatalf("step %d of %d: no stretch is turned though one would shorten the travel", i, len(tour.steps))
				}
			}
		}
	}
	if found < 30 {
		t.Errorf("only %d reversals to find", found)
	}
}

// Where one to three steps that begin or end with step i can be spared, and would
// better stand beside a near neighbour of the first or last of them, some are moved.
func TestNoMoveIsMissed(t *testing.T) {
	rng := rand.New(rand.NewPCG(32, 1))
	found := map[int]int{}
	for range 25 {
		tour := shuffled(rng, 5+rng.IntN(30))
		was := tour.idle()
		better := func(first, long int) bool {
			last := first + long - 1
			if first < 0 || last >= len(tour.steps) {
				return false
			}
			rest := tourOf(tour, slices.Delete(slices.Clone(tour.steps), first, last+1))
			inner := tourOf(tour, tour.steps[first:last+1]).idle() - tour.from.Dist(tour.entry(first))
			if rest.idle()+inner > was-2*gain {
				return false // the way across is longer than that to them and from them
			}
			widest := max(tour.gap(first), tour.gap(last+1))
			for _, k := range append(tour.nearer(first, widest), tour.nearer(last, widest)...) {
				for _, place := range []int{k, k + 1} {
					within := k >= first && k <= last || place >= first && place <= last+1
					if !within && tour.moved(first, last, place) < was-2*gain {
						return true
					}
				}
			}
			return false
		}
		for i := range tour.steps {
			for long := 1; long <= 3; long++ {
				if better(i, long) || better(i-long+1, long) {
					found[long]++
					if !tour.copied().moveAt(i) {
						t.Fatalf("step %d of %d: nothing moves though %d steps there would better stand elsewhere", i, len(tour.steps), long)
					}
				}
			}
		}
	}
	for long := 1; long <= 3; long++ {
		if found[long] < 20 {
			t.Errorf("only %d moves of %d steps to find", found[long], long)
		}
	}
}
