package cord_test

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// splicing resolves a splice that is meant to be sound.
func splicing(t rapid.TB, s design.Splice, o cord.Options) cord.Splicing {
	t.Helper()
	sp, err := cord.Resolve(design.Design{Splice: s}, o)
	if err != nil {
		t.Fatal(err)
	}
	return sp
}

// What is given comes before what follows from a diameter; a taper is never longer
// than its bury.
func TestSplicingDefaults(t *testing.T) {
	for _, r := range []struct {
		name             string
		in               design.Splice
		bury, eye, taper float64 // for cord of 3 mm, of 90 mm buried
	}{
		{"nothing given", design.Splice{}, 189, 189, 30},
		{"a bury", design.Splice{Bury: 150}, 150, 150, 30},
		{"an eye's bury", design.Splice{EyeBury: 120}, 189, 120, 30},
		{"both", design.Splice{Bury: 150, EyeBury: 120}, 150, 120, 30},
		{"a taper", design.Splice{Taper: 50}, 189, 189, 50},
		{"a taper too long", design.Splice{Taper: 130}, 189, 189, 90},
	} {
		sp := splicing(t, r.in, cord.Options{})
		near(t, r.name+", bury", sp.Bury(3), r.bury, 1e-12)
		near(t, r.name+", eye", sp.EyeBury(3), r.eye, 1e-12)
		near(t, r.name+", taper", sp.Taper(90), r.taper, 1e-12)
	}
	near(t, "hook, not given", splicing(t, design.Splice{}, cord.Options{}).Hook, cord.DefaultHook, 0)
	near(t, "hook, given", splicing(t, design.Splice{}, cord.Options{Hook: 17}).Hook, 17, 0)
}

// A loop round a pin, walked along: the tangent from its throat, then the arc, cut
// into chords. Five fittings long by the Naval Ships' Technical Manual, or from its
// length.
func TestEyeWalked(t *testing.T) {
	// walked returns the whole loop by the points of a cord drawn tight round a pin.
	walked := func(reach, q float64) float64 {
		touch := math.Acos(q / reach) // from the pin's centre, off the line to the throat
		long := math.Hypot(reach-q*math.Cos(touch), q*math.Sin(touch))
		const n = 20000
		for k := range n {
			a, b := touch+(math.Pi-touch)*float64(k)/n, touch+(math.Pi-touch)*float64(k+1)/n
			long += math.Hypot(q*(math.Cos(b)-math.Cos(a)), q*(math.Sin(b)-math.Sin(a)))
		}
		return 2 * long
	}
	rapid.Check(t, func(t *rapid.T) {
		hook, d := rapid.Float64Range(4, 40).Draw(t, "hook"), rapid.Float64Range(1.5, 6).Draw(t, "cord")
		loop, reach, err := splicing(t, design.Splice{}, cord.Options{Hook: hook}).Eye(d)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "reach", reach, 5.5*hook, 1e-9)
		near(t, "loop", loop, walked(reach, (hook+d)/2), 1e-6)
		// The same eye by its loop has the same reach.
		given, same, err := splicing(t, design.Splice{Eye: loop}, cord.Options{Hook: hook}).Eye(d)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "given loop", given, loop, 0)
		near(t, "its reach", same, reach, 1e-6)
	})
}

// A limit that a fault names is met just so: at it the splice does, a little past it
// not.
func TestSpliceLimits(t *testing.T) {
	limit := func(err error) float64 {
		t.Helper()
		var bad *hung.Impossible
		if !errors.As(err, &bad) {
			t.Fatalf("%v, want a limit", err)
		}
		return bad.Limit
	}
	for _, r := range []struct{ hook, cord float64 }{{10, 3}, {6, 2}, {25, 4.5}} {
		eye := func(long float64) error {
			_, _, err := splicing(t, design.Splice{Eye: long}, cord.Options{Hook: r.hook}).Eye(r.cord)
			return err
		}
		least := limit(eye(5))
		if eye(least) != nil || eye(least-2) == nil {
			t.Errorf("hook %g, cord %g: an eye of %g: %v; 2 mm less: %v", r.hook, r.cord, least, eye(least), eye(least-2))
		}
		near(t, "least eye", least, math.Pi*(r.hook+r.cord), 2)
		gap := func(long float64) error {
			_, err := splicing(t, design.Splice{TipGap: long}, cord.Options{Tip: r.hook}).Spread(r.cord)
			return err
		}
		least = limit(gap(5))
		if gap(least) != nil || gap(least-2) == nil {
			t.Errorf("tip %g, cord %g: a gap of %g: %v; 2 mm less: %v", r.hook, r.cord, least, gap(least), gap(least-2))
		}
		near(t, "least gap", least, math.Pi/2*(r.hook+r.cord), 2)
	}
}

// Without a tip or a gap nothing spreads; a thicker tip spreads more, and a wide gap
// by its two arcs against their chords, q² / G.
func TestSpreadGrows(t *testing.T) {
	spread := func(gap, tip float64) float64 {
		t.Helper()
		v, err := splicing(t, design.Splice{TipGap: gap}, cord.Options{Tip: tip}).Spread(3)
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
	near(t, "no tip", spread(40, 0), 0, 0)
	near(t, "no gap", spread(0, 7), 0, 0)
	last := 0.0
	for _, tip := range []float64{1, 3, 5, 7, 9} {
		s := spread(60, tip)
		if !(s > last) {
			t.Errorf("tip %g: spread %g after %g", tip, s, last)
		}
		last = s
	}
	// G = g/2 to first order; √(G² − q²) + q asin(q/G) = G + q²/2G + …
	const q = 2.0
	near(t, "wide gap", spread(4000, 1), 2*q*q/2/2000, 1e-8)
}

// The remarks of a set say what was taken for want of a value, each for its own.
func TestNotes(t *testing.T) {
	full := func() (design.Design, cord.Options) {
		d, _ := sample(t)
		d.Splice.Bury, d.Splice.Taper, d.Splice.TipGap = 180, 60, 40
		d.Splice.Trials = []design.Trial{{Before: 500, After: 480, Buried: 100}, {Before: 500, After: 482, Buried: 100}}
		d.Side.Stiffness, d.Leg.Stiffness = 2e5, 2e5
		return d, cord.Options{Hook: 10, Tip: 6}
	}
	for _, r := range []struct {
		name   string
		change func(*design.Design, *cord.Options)
		want   []cord.NoteKind
	}{
		{"all given", func(*design.Design, *cord.Options) {}, []cord.NoteKind{cord.TestedOften}},
		{"no bury", func(d *design.Design, _ *cord.Options) { d.Splice.Bury = 0 }, []cord.NoteKind{cord.BuryByDiameter, cord.TestedOften}},
		{"no taper", func(d *design.Design, _ *cord.Options) { d.Splice.Taper = 0 }, []cord.NoteKind{cord.TaperByThird, cord.TestedOften}},
		{"one trial", func(d *design.Design, _ *cord.Options) { d.Splice.Trials = d.Splice.Trials[:1] }, []cord.NoteKind{cord.TestedOnce}},
		{"a whole eye", func(d *design.Design, _ *cord.Options) { d.Splice.Trials[1].Crossing = true }, []cord.NoteKind{cord.TestedOften, cord.CrossingTested}},
		{"only whole eyes", func(d *design.Design, _ *cord.Options) {
			d.Splice.Trials[0].Crossing, d.Splice.Trials[1].Crossing = true, true
		}, []cord.NoteKind{cord.TestedTogether}},
		{"a slip", func(d *design.Design, _ *cord.Options) {
			d.Splice.Trials = append(d.Splice.Trials, d.Splice.Trials[0], design.Trial{Before: 500, After: 440, Buried: 100})
		}, []cord.NoteKind{cord.TestedOften, cord.TestedOdd}},
		{"no trial", func(d *design.Design, _ *cord.Options) { d.Splice.Trials = nil }, []cord.NoteKind{cord.UntestedGiven}},
		{"no contraction", func(d *design.Design, _ *cord.Options) { d.Splice.Trials, d.Splice.Contraction = nil, 0 }, []cord.NoteKind{cord.NoContraction}},
		{"no hook", func(_ *design.Design, o *cord.Options) { o.Hook = 0 }, []cord.NoteKind{cord.TestedOften, cord.HookTaken}},
		{"no tip", func(_ *design.Design, o *cord.Options) { o.Tip = 0 }, []cord.NoteKind{cord.TestedOften, cord.SpreadLeftOut}},
		{"cut plain", func(d *design.Design, _ *cord.Options) { d.Bed.Plain, d.Side.Stiffness = true, 0 }, []cord.NoteKind{cord.TestedOften, cord.NotShortened}},
		{"no stiffness", func(d *design.Design, _ *cord.Options) { d.Side.Stiffness, d.Leg.Stiffness = 0, 0 }, []cord.NoteKind{cord.TestedOften, cord.SideNotShortened, cord.LegsNotShortened}},
		{"a loop has no legs", func(d *design.Design, _ *cord.Options) { d.Splice.Whole, d.Leg.Stiffness = true, 0 }, []cord.NoteKind{cord.TestedOften}},
	} {
		d, o := full()
		r.change(&d, &o)
		_, s := sample(t)
		set, err := cord.Of(&s, d, o)
		if err != nil {
			t.Fatalf("%s: %v", r.name, err)
		}
		var got []cord.NoteKind
		for _, n := range set.Notes {
			got = append(got, n.Kind)
		}
		if fmt.Sprint(got) != fmt.Sprint(r.want) {
			t.Errorf("%s: notes %v, want %v", r.name, got, r.want)
		}
	}
}
