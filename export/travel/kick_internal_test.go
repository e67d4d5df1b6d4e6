package travel

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"slingloft/outline/geom"
)

// strung returns a tour of n dots on a line, in their order, with the given gaps before
// each from the second on.
func strung(gaps []float64) *tour {
	at := 0.0
	paths := []Path{{Points: geom.Polyline{{}}}}
	for _, g := range gaps {
		at += g
		paths = append(paths, Path{Points: geom.Polyline{geom.Pt(at, 0)}})
	}
	return newTour(paths, geom.Pt(-1e6, 0))
}

// The gap before a kick's segment is the widest of seventeen drawn with a view to any but
// the way to the first step: with m gaps all different its rank is at most k with a
// probability of (k/m)^17.
func TestWideGapIsTheWidestOfSome(t *testing.T) {
	const m, draws = 40, 4000
	gaps := make([]float64, m)
	rank := make([]int, m+1) // by step
	for i := range gaps {
		// Each multiple of 7 below 41 once, so that ranks do not follow places.
		r := 7*(i+1)%(m+1) - 1
		gaps[i], rank[i+1] = float64(r+10), r+1
	}
	tour := strung(gaps)
	for i := 1; i <= m; i++ {
		if got := tour.gap(i); math.Abs(got-gaps[i-1]) > 1e-9 {
			t.Fatalf("step %d lies %g behind the one before, want %g", i, got, gaps[i-1])
		}
	}
	rng := rand.New(rand.NewPCG(41, 1))
	counts := make([]int, m+1)
	for range draws {
		i := tour.wideGap(rng)
		if i < 1 || i > m {
			t.Fatalf("a gap before step %d of %d", i, m+1)
		}
		counts[rank[i]]++
	}
	below := 0
	for k := 1; k <= m; k++ {
		below += counts[k]
		want := math.Pow(float64(k)/m, 17)
		// Four times the scatter of so many draws.
		if got := float64(below) / draws; math.Abs(got-want) > 4*math.Sqrt(want*(1-want)/draws)+1e-3 {
			t.Errorf("a gap of rank %d or less of %d in a share of %.4f, want %.4f", k, m, got, want)
		}
	}
	// Of two steps there is one gap.
	if i := strung([]float64{5}).wideGap(rng); i != 1 {
		t.Errorf("the only gap is before step 1, not %d", i)
	}
}

// One kick in three swaps segments between wide gaps, as long as they may be; the others
// swap short ones, of at most fifty steps and a third of all each.
func TestKicksLongAndShort(t *testing.T) {
	const n, kicks = 600, 3000
	gaps := make([]float64, n-1)
	rng := rand.New(rand.NewPCG(42, 1))
	for i := range gaps {
		gaps[i] = 1 + rng.Float64()
	}
	tour := strung(gaps)
	long, longest, cuts := 0, 0, map[int]int{}
	for range kicks {
		was := slices.Clone(tour.steps)
		tour.change, tour.since = 0, span{}
		tour.kick(rng)
		low, high := 0, n
		for low < n && tour.steps[low].Path == was[low].Path {
			low++
		}
		for high > low && tour.steps[high-1].Path == was[high-1].Path {
			high--
		}
		switch shift := high - low; {
		case shift == 0:
			t.Fatal("a kick changed nothing")
		case shift > 100:
			long++
		default:
			longest = max(longest, shift)
			cuts[low]++
		}
		copy(tour.steps, was)
		tour.renumber(0, n)
		for i := range tour.steps {
			tour.measure(i)
		}
	}
	// Three places drawn among 599 lie within 100 of each other about one time in thirteen.
	if share := float64(long) / kicks; share < 0.27 || share > 0.34 {
		t.Errorf("long segments are swapped in a share of %.3f, want a little less than a third", share)
	}
	if longest < 90 {
		t.Errorf("the longest swap of short segments is over %d steps, want up to 100", longest)
	}
	first, last := n, 0
	for low := range cuts {
		first, last = min(first, low), max(last, low)
	}
	if first > 5 || last < n-20 {
		t.Errorf("short segments are swapped from step %d to %d of %d only", first, last, n)
	}
}

// What a kick makes longer is put back as it was, numbers and gaps too, and what it makes
// shorter stays: after all kicks the tour knows itself and is no longer than settled.
func TestImproveKeepsTheBest(t *testing.T) {
	rng := rand.New(rand.NewPCG(43, 1))
	shorter := 0
	for _, n := range []int{1, 2, 3, 4, 20, 60, 60, 60, 60} {
		paths, from := scattered(rng, n, 0.2), geom.Pt(500, 0)
		settled := newTour(paths, from)
		for i := range settled.steps {
			settled.enqueue(i)
		}
		settled.settle()
		tour := newTour(paths, from)
		tour.improve()
		for i, s := range tour.steps {
			if tour.at[s.Path] != i || math.Abs(s.gap-tour.exit(i-1).Dist(s.in)) > 1e-9 {
				t.Fatalf("%d paths: step %d is said to stand at %d behind a gap of %g", n, i, tour.at[s.Path], s.gap)
			}
		}
		was, now := settled.idle(), tour.idle()
		if now > was+1e-6 {
			t.Errorf("%d paths: %g after kicks, %g before", n, now, was)
		}
		if now < was-1 {
			shorter++
		}
		again := newTour(paths, from)
		again.improve()
		if !slices.Equal(again.steps, tour.steps) {
			t.Errorf("%d paths: another order another time", n)
		}
	}
	if shorter < 3 {
		t.Errorf("kicks shorten %d orders of 9", shorter)
	}
}

// A segment too long for the short moves goes as a whole to a gap that is wide too: a word
// set between two others, far from where it belongs, in one move.
func TestWordsMoveWhole(t *testing.T) {
	word := func(x, y float64) []Path {
		var out []Path
		for k := range 8 {
			at := geom.Pt(x+6*float64(k), y)
			out = append(out, Path{Points: geom.Polyline{at, at.Plus(geom.Pt(4, 0))}})
		}
		return out
	}
	// In their order: two words of the first line, one of the second, the third of the first.
	var paths []Path
	for _, at := range [][2]float64{{0, 0}, {60, 0}, {400, 500}, {120, 0}, {340, 500}, {460, 500}} {
		paths = append(paths, word(at[0], at[1])...)
	}
	tour := newTour(paths, geom.Pt(-10, 0))
	steps := make([]Step, len(paths))
	for i := range steps {
		steps[i].Path = i
	}
	tour.steps = tour.steps[:0]
	for _, s := range steps {
		tour.add(s)
	}
	tour.renumber(0, len(steps))
	before := tour.idle()
	moved := false
	tour.watched(t, "word", func() { moved = tour.moveAt(16) })
	if !moved {
		t.Fatal("the word between the lines does not move")
	}
	// The way there and back, 2 × √(286² + 500²) or so, is saved but for a way along the line.
	if saved := before - tour.idle(); saved < 500 {
		t.Errorf("moving the word saves %g mm of %g", saved, before)
	}
	for k := range 8 {
		if d := tour.at[16+k] - tour.at[16]; d != k && d != -k {
			t.Errorf("stroke %d of the word stands %d behind its first", k, d)
		}
	}
}
