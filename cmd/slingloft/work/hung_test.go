package work_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/accuracy"
	"slingloft/outline/design"
	"slingloft/outline/finished"
)

// askew is a bed that hangs with errors, and what judges it.
type askew struct {
	plan     work.Plan
	made     finished.Hammock
	sleeper  finished.Weight
	designed finished.Pose
}

func askewOf(t *testing.T, name string, data []byte) askew {
	t.Helper()
	p, err := work.ReadFor(name, data, work.Setting{})
	if err != nil {
		t.Fatal(err)
	}
	a := askew{plan: p, made: p.Made()}
	a.sleeper = finished.Weight{Load: p.Shape.Problem.Load, Centre: p.Person().Back}
	if a.designed, err = a.made.Hang(finished.Change{}, a.sleeper); err != nil {
		t.Fatal(err)
	}
	return a
}

// uneven returns the largest difference between the tips under the sleeper, against the
// design, mm.
func (a askew) uneven(t *testing.T, o accuracy.Off) float64 {
	t.Helper()
	p, err := a.made.HangFrom(a.designed, changed(o), a.sleeper)
	if err != nil {
		t.Fatal(err)
	}
	low, high := math.Inf(1), math.Inf(-1)
	for e := range p.Tips {
		for s := range p.Tips[e] {
			off := p.Tips[e][s].Z - a.designed.Tips[e][s].Z
			low, high = min(low, off), max(high, off)
		}
	}
	return high - low
}

// A maker hangs the bed with errors, twice those of the stack, so that most are worth
// putting right whatever can be read, lays 25 kg in it, to 1 mm in the middle, reads the
// four tips to 3 mm over the ground, twice, writes their means into the design, does
// what the program says, and the bed lies better: through the file, in mm and in
// inches, with what the design says of fastenings and units.
func TestCorrectedThroughTheFile(t *testing.T) {
	_, demo := design.Demo()
	inches, err := os.ReadFile("../../../testdata/design/inches.toml")
	if err != nil {
		t.Fatal(err)
	}
	for name, data := range map[string][]byte{"demo.toml": demo, "inches.toml": inches} {
		a := askewOf(t, name, data)
		rng := rand.New(rand.NewPCG(14, 7))
		off := func(most float64) float64 { return most * (2*rng.Float64() - 1) }
		w := accuracy.WorkingOf(a.plan.Design.Accuracy, a.plan.Cords.Splicing.Shown.Estimate)
		stack := accuracy.Stack(&a.plan.Shape, a.plan.Design, a.plan.Cords.Splicing, w)
		const from, to = 250, 1150
		load := accuracy.DeadWeight(a.plan.Design.Bed, 25, from, to)
		var before, after float64 // of those over 8 mm
		for range 15 {
			var o accuracy.Off
			for _, c := range stack {
				k := 2 * rng.NormFloat64()
				for i, mm := range c.Off {
					o[i] += k * mm
				}
			}
			load.Aside = off(1)
			hung, err := a.made.HangFrom(a.designed, changed(o), load)
			if err != nil {
				t.Fatal(err)
			}
			text := fmt.Sprintf("\n[hung]\nunder = \"weight\"\nmass = \"25 kg\"\nfrom = \"%d mm\"\nto = \"%d mm\"\n", from, to)
			for e, bar := range []string{"head", "foot"} {
				for s, side := range []string{"left", "right"} {
					text += fmt.Sprintf("%s_%s = \"%.1f mm\"\n", bar, side, 700+hung.Tips[e][s].Z+(off(3)+off(3))/2)
				}
			}
			p, err := work.ReadFor(name, append(data[:len(data):len(data)], text...), work.Setting{})
			if err != nil {
				t.Fatal(err)
			}
			c := p.Corrected()
			if c.Unread {
				t.Fatal("the heights tell nothing")
			}
			was := a.uneven(t, o)
			for _, d := range c.Adjustments {
				o[d.Part] += d.Change
			}
			is := a.uneven(t, o)
			if is > was+3 {
				t.Errorf("%s: %.1f mm uneven, and %.1f after %+v", name, was, is, c.Adjustments)
			}
			if was > 8 {
				before, after = before+was, after+is
			}
		}
		t.Logf("%s: those over 8 mm uneven, %.1f mm in all, are %.1f after", name, before, after)
		if before == 0 || after > before/2 {
			t.Errorf("%s: %.1f mm uneven, %.1f after: want half or less", name, before, after)
		}
	}
}

// changed returns by how much a bed is off as a change of it.
func changed(o accuracy.Off) finished.Change {
	var c finished.Change
	for k, mm := range o {
		c = c.Plus(finished.Part(k).Change(mm), 1)
	}
	return c
}
