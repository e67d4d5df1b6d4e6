package nest

import (
	"math"
	"math/rand/v2"
	"testing"

	"slingloft/nest/exact"
	"slingloft/nest/nesttest"
	"slingloft/outline/geom"
)

// The search's measure and the exact predicate must agree about overlap.
func TestDepthAgreesWithExactOverlap(t *testing.T) {
	rng := rand.New(rand.NewPCG(2, 6))
	items := []Item{
		{Outline: nesttest.Blob(rng.Float64, 12, 200), Demand: 1, Free: true},
		{Outline: nesttest.Blob(rng.Float64, 7, 300), Demand: 2, Free: true, Paired: true},
		{Outline: nesttest.Blob(rng.Float64, 9, 150), Demand: 1, Turns: []float64{0.3, 0.3 + math.Pi, 2}},
	}
	p, err := newProblem(items, Strip{Width: 500}.bed())
	if err != nil {
		t.Fatal(err)
	}
	hits := 0
	for range 20000 {
		a, b := p.pieces[rng.IntN(len(p.pieces))], p.pieces[rng.IntN(len(p.pieces))]
		qa, qb := a.poses[rng.IntN(len(a.poses))], b.poses[rng.IntN(len(b.poses))]
		d := geom.Pt(600*rng.Float64()-300, 600*rng.Float64()-300)
		ra := []geom.Ring{items[a.item].Outline.CounterClockwise().Moved(qa.motion)}
		mb := qb.motion
		mb.Shift = mb.Shift.Plus(d)
		rb := []geom.Ring{items[b.item].Outline.CounterClockwise().Moved(mb)}
		depth := p.atlas.depth(p.atlas.between(qa.form, qb.form), d.X, d.Y)
		if depth > 0 && depth < 1e-6 {
			continue
		}
		hit := exact.Overlap(ra, rb)
		if hit {
			hits++
		}
		if (depth > 0) != hit {
			t.Fatalf("depth %v, overlap %v at %v", depth, hit, d)
		}
	}
	if hits < 2000 {
		t.Errorf("only %d overlaps were met", hits)
	}
}
