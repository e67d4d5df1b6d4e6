package nest

import (
	"context"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"slingloft/nest/nesttest"
)

// crowdOf returns a searcher over n random pieces of 12 vertices each, thrown on
// a strip that they would fill to 80 %.
func crowdOf(tb testing.TB, n int) *search {
	rng := rand.New(rand.NewPCG(uint64(n), 2))
	var items []Item
	for range 10 {
		items = append(items, Item{Outline: nesttest.Blob(rng.Float64, 12, 200), Demand: n / 10, Turns: quarters})
	}
	width := 150 * math.Sqrt(float64(n))
	p, err := newProblem(items, Strip{Width: width}.bed())
	if err != nil {
		tb.Fatal(err)
	}
	length := p.area / 0.8 / width
	t := newTeam(context.Background(), p, Options{Steps: 1 << 40, Workers: 1}, make([]spot, n), length)
	s := t.workers[0]
	s.mover.c.length = length
	for i := range s.best {
		s.best[i] = s.mover.anywhere(p.pieces[i].poses[0].form)
	}
	s.mover.c.load(s.best, length)
	s.mover.c.resetWeights()
	return s
}

// A sweep must bring down the overlap of a random heap.
func TestSweepSeparates(t *testing.T) {
	for _, n := range []int{50, 200} {
		s := crowdOf(t, n)
		before := s.mover.c.totalLoss()
		for range 5 {
			s.sweep()
		}
		if after := s.mover.c.totalLoss(); after > before/3 {
			t.Errorf("%d pieces: overlap went from %v to %v only", n, before, after)
		}
	}
}

// The time and memory of one sweep over a random heap; steps are pieces that were
// offered a better place.
func BenchmarkSweep(b *testing.B) {
	for _, n := range []int{50, 200, 1000} {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			s := crowdOf(b, n)
			for range 3 { // makes the fields
				s.sweep()
			}
			b.ReportAllocs()
			from := s.mover.c.moves
			for b.Loop() {
				s.mover.c.load(s.best, s.mover.c.length)
				s.sweep()
			}
			b.ReportMetric(float64(s.mover.c.moves-from)/float64(b.N), "steps/op")
		})
	}
}

// Preparing and laying out once, without search: what every run pays.
func BenchmarkFirstLay(b *testing.B) {
	for _, name := range []string{"marques", "shapes0"} {
		b.Run(name, func(b *testing.B) {
			items, s := load(b, name)
			for b.Loop() {
				if _, err := PackStrip(context.Background(), items, s, Options{}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// The exact check of a finished lay.
func BenchmarkVerify(b *testing.B) {
	items, s := load(b, "marques")
	lay, err := PackStrip(context.Background(), items, s, Options{Steps: 1000})
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		if err := Verify(items, s, lay); err != nil {
			b.Fatal(err)
		}
	}
}
