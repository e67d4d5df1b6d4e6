package nest

import (
	"context"
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"slingloft/nest/nesttest"
	"slingloft/outline/geom"
)

// manyOf returns so many different outlines with so many vertices each, every second
// vertex of them drawn in where they are jagged.
func manyOf(n, vertices int, jagged bool) []Item {
	rng := rand.New(rand.NewPCG(uint64(n), 3))
	var out []Item
	for range n {
		r := nesttest.Wavy(rng.Float64, vertices)
		for k := range r {
			if jagged && k%2 == 0 {
				r[k] = r[k].Times(0.8)
			}
		}
		out = append(out, Item{Outline: r, Demand: 1, Turns: []float64{0, math.Pi}})
	}
	return out
}

// However many outlines there are, and however fine, the work that they make is bounded,
// and what covers them covers all of them.
func TestAfford(t *testing.T) {
	for _, items := range [][]Item{manyOf(60, 480, false), manyOf(60, 480, true), manyOf(1, 3000, true)} {
		p, err := newProblem(items, Strip{Width: 1500, Gap: 2}.bed())
		if err != nil {
			t.Fatal(err)
		}
		pairs := p.atlas.pairs()
		count := func() float64 {
			return p.atlas.patchCount(pairs, func(s shape) int { return len(s.parts) })
		}
		before := count()
		p.afford(Options{Steps: 1000})
		if count() > fieldPatches || p.firstCost() > firstPatches {
			t.Errorf("%d outlines: %.0f patches, %.0f before; first lay %.0f", len(items), count(), before, p.firstCost())
		}
		if coarse := p.atlas.plain; coarse != (before > fieldPatches) {
			t.Errorf("%d outlines: %.0f patches and coarser covers: %t", len(items), before, coarse)
		}
		for i, s := range p.atlas.shapes {
			for _, parts := range [][]geom.Ring{s.parts, s.rough} {
				for k, v := range s.region[0] {
					if !inAny(parts, v) {
						t.Fatalf("shape %d: vertex %d lies in no part", i, k)
					}
				}
			}
		}
	}
}

// inAny reports whether a point lies in one of convex parts, or within rounding.
func inAny(parts []geom.Ring, v geom.Point) bool {
next:
	for _, r := range parts {
		for k, a := range r {
			b := r[(k+1)%len(r)]
			if geom.Side(a, b, v) < -1e-9*a.Dist(b)*r.Bounds().Width() {
				continue next
			}
		}
		return true
	}
	return false
}

// Many different outlines give the same sound lay by the same steps.
func TestManyOutlines(t *testing.T) {
	items := manyOf(40, 480, true)
	var lays []string
	for range 2 {
		lay, err := PackStrip(context.Background(), items, Strip{Width: 1500, Gap: 2}, Options{Steps: 60})
		if err != nil {
			t.Fatal(err)
		}
		lays = append(lays, fmt.Sprint(lay))
	}
	if lays[0] != lays[1] {
		t.Error("two searches of the same steps differ")
	}
}

// A search ends with its time, however much there is to do.
func TestTimeIsKept(t *testing.T) {
	for name, items := range map[string][]Item{"many": manyOf(60, 300, false), "fine": manyOf(2, 3000, true)} {
		start := time.Now()
		var steps time.Duration // a clock that no other work on the machine changes
		clock := func() time.Duration { steps += time.Millisecond; return steps }
		if _, err := PackStrip(context.Background(), items, Strip{Width: 1500}, Options{Time: time.Second / 2, Clock: clock, Workers: 1}); err != nil {
			t.Error(err)
		}
		if took := time.Since(start); took > 20*time.Second {
			t.Errorf("%s: %v", name, took)
		}
	}
}

// A piece as long as the bed goes onto it although its cover is longer; one that has no
// place beside what is kept clear is named.
func TestExactBed(t *testing.T) {
	var oval geom.Ring
	for k := range 480 {
		at := geom.Direction(2*math.Pi*float64(k)/480 + 0.003)
		oval = append(oval, geom.Pt(150*at.X, 100*at.Y))
	}
	box := oval.Bounds()
	lay, err := PackBeds(context.Background(), []Item{{Outline: oval, Demand: 2}}, Bed{Width: box.Width(), Height: box.Height()}, Options{Steps: 20})
	if err != nil || lay.Beds != 2 {
		t.Errorf("%d beds, error %v", lay.Beds, err)
	}
	clear := Bed{Width: 300, Height: 200, KeepOut: []geom.Box{{Min: geom.Pt(140, 90), Max: geom.Pt(160, 110)}}}
	plate := Item{Outline: nesttest.Box(250, 180), Demand: 1}
	var off *KeptOffError
	if _, err = PackBeds(context.Background(), []Item{{Outline: nesttest.Box(9, 9), Demand: 1}, plate}, clear, Options{}); !errors.As(err, &off) || off.Item != 1 {
		t.Errorf("a plate over what is kept clear: %v", err)
	}
}
