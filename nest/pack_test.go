package nest

import (
	"context"
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"reflect"
	"runtime"
	"slices"
	"testing"
	"time"

	sf "github.com/peterstace/simplefeatures/geom"

	"slingloft/nest/nesttest"
	"slingloft/outline/geom"
)

var quarters = []float64{0, math.Pi / 2, math.Pi, 3 * math.Pi / 2}

// judged fails the test unless an independent library finds every two pieces of
// the lay at least the gap apart, or without common area if there is no gap.
func judged(t *testing.T, items []Item, gap float64, lay Lay) {
	t.Helper()
	for i := range lay.Placements {
		for j := range i {
			if lay.Placements[i].Bed != lay.Placements[j].Bed {
				continue
			}
			a, b := polygon(t, items, lay.Placements[i]), polygon(t, items, lay.Placements[j])
			d, _ := sf.Distance(a.AsGeometry(), b.AsGeometry())
			if d < gap-1e-6 {
				t.Errorf("pieces %d and %d are %v apart, less than %v", i, j, d, gap)
			}
			if d == 0 && areaInCommon(t, items, lay, i, j) > 1e-9*a.Area() {
				t.Errorf("pieces %d and %d overlap", i, j)
			}
		}
	}
}

// Proven shortest lengths of small sets of convex pieces; Alvarez-Valdes,
// Martinez & Tamarit 2013 (IJPE 145), the values from memory.
func TestPackStripReachesProvenLengths(t *testing.T) {
	for name, want := range map[string]float64{"three": 6, "threep2": 9.33, "threep2w9": 8} {
		items, s := load(t, name)
		lay, err := PackStrip(context.Background(), items, s, Options{Seed: 1, Steps: 20000})
		if err != nil {
			t.Fatal(err)
		}
		if lay.Length > want*1.002 || lay.Length < want-0.01 {
			t.Errorf("%s: length %v, proven shortest %v", name, lay.Length, want)
		}
		judged(t, items, 0, lay)
	}
}

// A lay to begin with is kept where nothing shorter is found, and not heeded where it does
// not lie or is not whole.
func TestPackStripFromStart(t *testing.T) {
	items, s := load(t, "threep2w9")
	found, err := PackStrip(context.Background(), items, s, Options{Seed: 1, Steps: 20000})
	if err != nil {
		t.Fatal(err)
	}
	first, err := PackStrip(context.Background(), items, s, Options{})
	if err != nil {
		t.Fatal(err)
	}
	if found.Length >= first.Length {
		t.Fatalf("the search found %v, the first lay has %v", found.Length, first.Length)
	}
	p, err := newProblem(items, s.bed())
	if err != nil {
		t.Fatal(err)
	}
	p.grid = 0
	if spots, lies := p.begun(found.Placements); !lies || math.Abs(p.lay(spots).Length-found.Length) > 1e-9 {
		t.Errorf("begun anew it is %v long, lies %t; it was %v", p.lay(spots).Length, lies, found.Length)
	}
	apart := slices.Clone(found.Placements)
	apart[1].Motion = apart[0].Motion
	for what, places := range map[string][]Placement{"not whole": found.Placements[1:], "twice": append(slices.Clone(found.Placements[1:]), found.Placements[1]),
		"one over another": apart} {
		if _, lies := p.begun(places); lies {
			t.Errorf("%s: it lies", what)
		}
		if lay, err := PackStrip(context.Background(), items, s, Options{Start: places}); err != nil || lay.Length != first.Length {
			t.Errorf("%s: %v, %v", what, lay.Length, err)
		}
	}
}

// A search must improve on the first lay, and by much on these.
func TestPackStripSearches(t *testing.T) {
	for name, least := range map[string]float64{"fu": 0.85, "marques": 0.85, "shapes0": 0.60} {
		items, s := load(t, name)
		lay, err := PackStrip(context.Background(), items, s, Options{Seed: 1, Steps: 8000})
		if err != nil {
			t.Fatal(err)
		}
		if lay.Density < least {
			t.Errorf("%s: density %.4f after 8000 steps, below %v", name, lay.Density, least)
		}
		judged(t, items, 0, lay)
	}
}

func TestSameSeedAndStepsSameLay(t *testing.T) {
	items, s := load(t, "marques")
	o := Options{Seed: 7, Steps: 9000, Workers: 3}
	first, err := PackStrip(context.Background(), items, s, o)
	if err != nil {
		t.Fatal(err)
	}
	old := runtime.GOMAXPROCS(1)
	second, err := PackStrip(context.Background(), items, s, o)
	runtime.GOMAXPROCS(old)
	if err != nil || !reflect.DeepEqual(first, second) {
		t.Errorf("length %v, then %v, %v", first.Length, second.Length, err)
	}
	o.Seed = 8
	if third, _ := PackStrip(context.Background(), items, s, o); reflect.DeepEqual(first, third) {
		t.Error("another seed gives the very same lay")
	}
}

func TestCancelReturnsBestSoFar(t *testing.T) {
	items, s := load(t, "blaz1")
	ctx, cancel := context.WithCancel(context.Background())
	reports := 0
	lay, err := PackStrip(ctx, items, s, Options{Time: time.Hour, Progress: func(p Progress) {
		if reports++; reports == 3 {
			cancel()
		}
	}})
	if err != nil || len(lay.Placements) != 28 || reports < 3 {
		t.Errorf("%d pieces after %d reports, %v", len(lay.Placements), reports, err)
	}
	if err := Verify(items, s, lay); err != nil {
		t.Error(err)
	}
}

// Random pieces with gap, margin, keep-outs, pairs and free turns: the promise
// holds on strip and beds, and a search never makes the lay longer.
func TestPromiseOnRandomPieces(t *testing.T) {
	for seed := range uint64(8) {
		rng := rand.New(rand.NewPCG(seed, 77))
		var items []Item
		for range 2 + rng.IntN(4) {
			items = append(items, Item{
				Outline: nesttest.Blob(rng.Float64, 3+rng.IntN(30), 60+200*rng.Float64()),
				Demand:  1 + rng.IntN(4), Paired: rng.IntN(2) == 0, Free: rng.IntN(3) == 0, Turns: quarters[:1+rng.IntN(4)],
			})
		}
		gap := 5 * rng.Float64()
		keep := []geom.Box{{Min: geom.Pt(150, 100), Max: geom.Pt(190, 130)}}
		strip := Strip{Width: 420, Gap: gap, Margin: 4, KeepOut: keep}
		bed := Bed{Width: 500, Height: 400, Gap: gap, Margin: 4, KeepOut: keep}
		long := math.Inf(1)
		for _, steps := range []int{0, 1500} {
			lay, err := PackStrip(context.Background(), items, strip, Options{Seed: seed, Steps: steps})
			if err != nil || lay.Length > long {
				t.Fatalf("seed %d, %d steps: length %v after %v, %v", seed, steps, lay.Length, long, err)
			}
			long = lay.Length
			judged(t, items, gap, lay)
			lay, err = PackBeds(context.Background(), items, bed, Options{Seed: seed, Steps: steps})
			if err != nil {
				t.Fatalf("seed %d, beds: %v", seed, err)
			}
			judged(t, items, gap, lay)
		}
	}
}

func TestPackBedsFillsBedsExactly(t *testing.T) {
	for _, c := range []struct {
		items  []Item
		bed    Bed
		beds   int
		length float64
	}{
		{[]Item{{Outline: nesttest.Box(100, 50), Demand: 8}}, Bed{Width: 200, Height: 100}, 2, 200},
		{[]Item{{Outline: nesttest.Box(100, 50), Demand: 5}}, Bed{Width: 200, Height: 100}, 2, 100},
		{[]Item{{Outline: nesttest.Box(50, 100), Demand: 4, Turns: quarters}}, Bed{Width: 200, Height: 100}, 1, 200},
		{[]Item{{Outline: nesttest.Box(94, 94), Demand: 2}}, Bed{Width: 200, Height: 100, Gap: 6, Margin: 3}, 1, 200},
		{nil, Bed{Width: 200, Height: 100}, 0, 0},
	} {
		lay, err := PackBeds(context.Background(), c.items, c.bed, Options{Seed: 1, Steps: 2000})
		if err != nil || lay.Beds != c.beds || math.Abs(lay.Length-c.length) > 1e-3 {
			t.Errorf("%v: %d beds, %v mm of the last, %v; want %d, %v", c.items, lay.Beds, lay.Length, err, c.beds, c.length)
		}
		if err := VerifyBeds(c.items, c.bed, lay); err != nil {
			t.Error(err)
		}
	}
}

func TestHolesAreFilledOnlyWhenAsked(t *testing.T) {
	frame := Item{Outline: nesttest.Box(300, 300),
		Holes: []geom.Ring{geom.Box{Min: geom.Pt(50, 50), Max: geom.Pt(250, 250)}.Ring()}, Demand: 1}
	inner := Item{Outline: nesttest.Box(150, 190), Demand: 1}
	s := Strip{Width: 310}
	shut, err := PackStrip(context.Background(), []Item{frame, inner}, s, Options{Seed: 1, Steps: 1000})
	if err != nil || shut.Length < 450 {
		t.Errorf("hole shut: length %v, %v; want 450", shut.Length, err)
	}
	frame.Fill = true
	open, err := PackStrip(context.Background(), []Item{frame, inner}, s, Options{Seed: 1, Steps: 4000})
	if err != nil || math.Abs(open.Length-300) > 1e-3 {
		t.Errorf("hole open: length %v, %v; want 300", open.Length, err)
	}
}

func TestPackRefusesBadInput(t *testing.T) {
	nan := math.NaN()
	for _, c := range []struct {
		items []Item
		s     Strip
		want  string
	}{
		{[]Item{{Outline: nesttest.Box(10, 10), Demand: 1}, {Outline: nesttest.Box(40, 300), Demand: 1}}, Strip{Width: 250, Margin: 10},
			"item 1: needs 300.0 mm across, the strip leaves 230.0 mm"},
		{[]Item{{Outline: nesttest.Box(10, nan), Demand: 1}}, Strip{Width: 100}, "item 0: a vertex is not finite"},
		{[]Item{{Outline: nesttest.Box(10, 10), Demand: -1}}, Strip{Width: 100}, "item 0: negative demand"},
		{[]Item{{Outline: nesttest.Box(10, 10), Demand: 1 << 40}}, Strip{Width: 100}, "item 0: more than 5000 pieces in one lay"},
		{[]Item{{Outline: nesttest.Box(10, 0), Demand: 1}}, Strip{Width: 100}, "item 0: the outline has no area"},
		{[]Item{{Outline: nesttest.Box(10, 10), Demand: 1, Turns: []float64{math.Inf(1)}}}, Strip{Width: 100}, "item 0: a turn is not finite"},
		{[]Item{{Outline: geom.Ring{{X: 0, Y: 0}, {X: 10, Y: 10}, {X: 10, Y: 0}, {X: 0, Y: 30}}, Demand: 1}}, Strip{Width: 100},
			"item 0: the outline crosses itself"},
		{nil, Strip{Width: nan}, "stock: width, gap and margin must be finite and not negative"},
		{nil, Strip{Width: 100, Margin: 50}, "stock: nothing is left between the margins"},
		{nil, Strip{Width: 100, KeepOut: []geom.Box{{Max: geom.Pt(nan, 1)}}}, "stock: keep-out 0 is not finite"},
	} {
		if _, err := PackStrip(context.Background(), c.items, c.s, Options{}); err == nil || err.Error() != c.want {
			t.Errorf("got %v, want %s", err, c.want)
		}
	}
	var size *SizeError
	_, err := PackBeds(context.Background(), []Item{{Outline: nesttest.Box(700, 20), Demand: 1}}, Bed{Width: 600, Height: 400}, Options{})
	if !errors.As(err, &size) || size.Item != 0 || size.Along != 700 || size.RoomX != 600 {
		t.Errorf("a piece too long for a bed: %v", err)
	}
}

func ExamplePackStrip() {
	items := []Item{{Outline: geom.Ring{{X: 0, Y: 0}, {X: 200, Y: 0}, {X: 0, Y: 100}}, Demand: 4, Turns: []float64{0, math.Pi}}}
	lay, err := PackStrip(context.Background(), items, Strip{Width: 200}, Options{Seed: 1, Steps: 1000})
	fmt.Printf("%.0f mm, %.0f %%, %v\n", lay.Length, 100*lay.Density, err)
	// Output: 200 mm, 100 %, <nil>
}

func TestFreePieceLiesAskewWhereItMust(t *testing.T) {
	items := []Item{{Outline: nesttest.Box(640, 15), Demand: 1, Free: true}}
	bed := Bed{Width: 600, Height: 400}
	lay, err := PackBeds(context.Background(), items, bed, Options{})
	if err != nil || VerifyBeds(items, bed, lay) != nil {
		t.Errorf("a strip longer than the bed but shorter than its diagonal: %v", err)
	}
}
