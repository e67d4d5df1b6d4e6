package travel

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"slingloft/outline/geom"
)

// Whatever is done to a tour, both steps beside every way that changed are to be tried
// again: nothing else can have become better.
func TestWhatChangedIsTriedAgain(t *testing.T) {
	rng := rand.New(rand.NewPCG(51, 1))
	done := map[string]int{}
	for range 400 {
		n := 4 + rng.IntN(12)
		whole := newTour(scattered(rng, n, 0.3), geom.Pt(500, 500))
		i := rng.IntN(n)
		j := i + rng.IntN(n-i)
		place := rng.IntN(n + 1)
		for what, do := range map[string]func(t *tour) bool{
			"reverse": func(t *tour) bool { t.reverse(i, j); return true },
			"move": func(t *tour) bool {
				if place >= i && place <= j+1 {
					return false
				}
				t.move(i, j, place)
				return true
			},
			"restart": func(t *tour) bool {
				if s := &t.steps[i]; t.paths[s.Path].Closed {
					// From the corner that is furthest round, so that there is a better one.
					*s = t.stop(Step{Path: s.Path, Start: (s.Start + 6) % len(t.paths[s.Path].Points)})
					t.measure(i)
					t.measure(i + 1)
				}
				return t.restart(i)
			},
		} {
			one := whole.copied()
			type way struct{ from, to geom.Point }
			ways := func(t *tour) map[way]bool {
				out := map[way]bool{}
				for k := range t.steps {
					out[way{t.exit(k - 1), t.entry(k)}] = true
				}
				return out
			}
			var before map[way]bool
			if what == "restart" {
				before = map[way]bool{}
				for k := range one.steps {
					if k != i && k != i+1 {
						before[way{one.exit(k - 1), one.entry(k)}] = true
					}
				}
			} else {
				before = ways(one)
			}
			if !do(one) {
				continue
			}
			done[what]++
			for k := range one.steps {
				if before[way{one.exit(k - 1), one.entry(k)}] || before[way{one.entry(k), one.exit(k - 1)}] {
					continue
				}
				for _, beside := range []int{k - 1, k} {
					// A corner chosen anew is tried again by whoever chose it.
					if beside >= 0 && !one.queued[one.steps[beside].Path] && !(what == "restart" && beside == i) {
						t.Fatalf("%s of %d to %d before %d of %d: step %d beside a new way is not tried again", what, i, j, place, n, beside)
					}
				}
			}
			for path, queued := range one.queued {
				if queued != slices.Contains(one.queue, path) {
					t.Fatalf("%s: path %d in the queue: %v", what, path, !queued)
				}
			}
		}
	}
	for _, what := range []string{"reverse", "move", "restart"} {
		if done[what] < 50 {
			t.Errorf("%s: %d times only", what, done[what])
		}
	}
}

// A corner that is there twice is no better the second time: nothing moves for no gain.
func TestRestartGainsSomething(t *testing.T) {
	ring := Path{Closed: true, Points: geom.Polyline{geom.Pt(0, 50), geom.Pt(10, 0), geom.Pt(10, 0), geom.Pt(20, 50)}}
	dot := func(x float64) Path { return Path{Points: geom.Polyline{geom.Pt(x, -5)}} }
	paths := []Path{dot(0), ring, dot(20)}
	tour := newTour(paths, geom.Pt(-10, -5))
	for start := range ring.Points {
		tour.steps = tour.steps[:0]
		for i := range paths {
			s := Step{Path: i}
			if i == 1 {
				s.Start = start
			}
			tour.add(s)
		}
		tour.renumber(0, 3)
		was := tour.idle()
		tour.change = 0
		made := tour.restart(1)
		if lower := start == 1 || start == 2; made == lower {
			t.Errorf("from corner %d: begun anew %v", start, made)
		}
		if math.Abs(tour.idle()-was-tour.change) > 1e-9 || made && tour.change > -gain {
			t.Errorf("from corner %d: travel %g, then %g, by %g", start, was, tour.idle(), tour.change)
		}
	}
}

// Gaps of nothing: a place is drawn all the same, and none beyond the last step. Of four
// steps the narrowest gap comes up once in a while only: (1/3)^17 is never, (2/3)^17 one
// time in a thousand.
func TestWideGapOfFew(t *testing.T) {
	rng := rand.New(rand.NewPCG(52, 1))
	level := strung([]float64{0, 0, 0})
	for range 400 {
		if i := level.wideGap(rng); i < 1 || i > 3 {
			t.Fatalf("a gap before step %d of 4", i)
		}
	}
	few := strung([]float64{20, 30, 10})
	const draws = 4000
	counts := map[int]int{}
	for range draws {
		counts[few.wideGap(rng)]++
	}
	if counts[2] < draws*995/1000 || counts[1] > draws*5/1000 || counts[3] > 0 {
		t.Errorf("the widest before step 2: %v", counts)
	}
}

// Two or three steps that stand first and belong among the others are moved when the last
// of them is looked at, as one segment: what lies beyond them on the way back gains nothing
// alone.
func TestSegmentsMoveByTheirLast(t *testing.T) {
	for long := 2; long <= 3; long++ {
		for _, before := range []int{0, 1, 2} {
			var paths []Path
			dot := func(x, y float64) { paths = append(paths, Path{Points: geom.Polyline{geom.Pt(x, y)}}) }
			for k := range before {
				dot(-10*float64(before-k), 0)
			}
			for k := range long { // from far to near, on the straight way back
				x := 58 - 3*float64(k)
				dot(x, 3*x/58)
			}
			for k := range 12 {
				dot(10*float64(k), 0)
			}
			tour := newTour(paths, geom.Pt(-10*float64(before)-10, 0))
			tour.steps = tour.steps[:0]
			for i := range paths {
				tour.add(Step{Path: i})
			}
			tour.renumber(0, len(paths))
			was := tour.idle()
			made := false
			tour.watched(t, "move", func() { made = tour.moveAt(before + long - 1) })
			if !made || tour.idle() > was-90 {
				t.Errorf("%d steps behind %d: moved %v, travel %g after %g", long, before, made, tour.idle(), was)
			}
			for k := 1; k < long; k++ {
				if d := tour.at[before+k] - tour.at[before]; d != k && d != -k {
					t.Errorf("%d steps behind %d are torn apart", long, before)
				}
			}
		}
	}
}
