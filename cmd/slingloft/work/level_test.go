package work_test

import (
	"errors"
	"flag"
	"math"
	"slices"
	"testing"
	"time"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
	"slingloft/outline/level"
)

// demoWith returns the built-in design with other values of keys.
func demoWith(t *testing.T, values ...string) []byte {
	t.Helper()
	name, data := design.Demo()
	text, err := design.OpenText(name, data)
	if err != nil {
		t.Fatal(err)
	}
	for i := 0; i < len(values); i += 2 {
		if text, err = text.Set(design.Key(values[i]), values[i+1]); err != nil {
			t.Fatal(err)
		}
	}
	return text.Bytes()
}

var leveledAll = flag.Bool("leveled-all", false, "every design that is leveled, not the first few")

// leveled are designs of different kinds.
var leveled = []struct {
	name   string
	values []string
}{
	{"built-in", nil},
	{"on the side", []string{"sleeper.lies", "side"}},
	{"even load", []string{"load.model", "even", "load.from", "-100 mm", "load.to", "1500 mm"}},
	{"tails of 280", []string{"bed.head_tail", "280 mm", "bed.foot_tail", "280 mm"}},
	{"tails of 400", []string{"bed.head_tail", "400 mm", "bed.foot_tail", "400 mm", "bed.head_leg", "1100 mm", "bed.foot_leg", "1100 mm"}},
	{"with a lining", []string{"lining.pad_thickness", "25 mm"}},
	{"narrow foot", []string{"bed.foot_bar", "640 mm", "cap.hem", "14 mm"}},
	{"broad", []string{"bed.head_bar", "1100 mm", "bed.foot_bar", "1000 mm"}},
	{"light sleeper", []string{"sleeper.mass", "45 kg", "sleeper.stature", "1550 mm", "sleeper.crown", "0 mm"}},
	{"heavy sleeper", []string{"sleeper.mass", "110 kg"}},
	{"sloping", []string{"bed.lift", "2 deg"}},
	{"not shortened", []string{"bed.compensate", "false"}},
	{"tube of 180", []string{"bed.underbody_radius", "180 mm"}},
}

// Cut again from the cloth as it hangs, ten designs of different kinds and more come to lie
// level under their sleepers' bodies. The table is printed with -v, all of it with -leveled-all.
func TestLeveled(t *testing.T) {
	t.Logf("%-22s %16s %16s %14s %20s %9s %9s", "heights in mm", "under", "whole", "sides", "gathers head, foot", "shear", "rounds, s")
	usual := len(leveled)
	if !*leveledAll {
		usual = 5
	}
	for _, row := range leveled[:usual] {
		start := time.Now()
		p, err := work.ReadFor("x", demoWith(t, append([]string{"bed.level", "hung"}, row.values...)...), work.Setting{})
		if err != nil {
			t.Errorf("%s: %v", row.name, err)
			continue
		}
		b, a := p.Leveled.Before, p.Leveled.After
		in, out := p.Leveled.Most()
		const degree = math.Pi / 180
		t.Logf("%-22s %6.1f -> %6.2f %6.1f -> %6.2f %6.1f %6.1f %4.0f %3.0f -> %3.0f %3.0f %2.0f -> %2.0f° %3d, %4.1f", row.name,
			b.Under, a.Under, b.Whole, a.Whole, in, out, b.Gather[0], b.Gather[1], a.Gather[0], a.Gather[1],
			b.Shear/degree, a.Shear/degree, p.Leveled.Rounds, time.Since(start).Seconds())
		if !a.Level() {
			t.Errorf("%s: %.2f mm under the sleeper, %.2f mm elsewhere", row.name, a.Under, a.Whole)
		}
		for e, pull := range a.Line {
			if off := pull / b.Line[e]; !(off > 0.97 && off < 1.03) {
				t.Errorf("%s: the pull of line %d goes from %.0f to %.0f N", row.name, e, b.Line[e], pull)
			}
		}
	}
}

// The cut that comes of it, hung again as the design's own on the same mesh and on one half
// as wide, lies as level; and it comes out the same each time.
func TestLeveledHangsAgain(t *testing.T) {
	data := demoWith(t, "bed.level", "hung")
	p, err := work.ReadFor("x", data, work.Setting{})
	if err != nil {
		t.Fatal(err)
	}
	var under [2]float64
	for i, exact := range []bool{false, true} {
		h, err := p.Drape(t.Context(), work.Draping{Exact: exact})
		if err != nil {
			t.Fatal(err)
		}
		low, high := math.Inf(1), math.Inf(-1)
		for k, u := range h.Along {
			if u >= h.Crown && u <= h.Soles {
				low, high = min(low, h.Rests[k]), max(high, h.Rests[k])
			}
		}
		if under[i] = high - low; under[i] > level.Under {
			t.Errorf("exact %v: %.2f mm uneven", exact, under[i])
		}
		if off := (h.Vertical[0]+h.Vertical[1])/h.Weight - 1; math.Abs(off) > 1e-3 {
			t.Errorf("exact %v: the lines carry the weight to %g", exact, off)
		}
	}
	t.Logf("uneven by %.2f mm, with the mesh halved by %.2f mm", under[0], under[1])
	if math.Abs(under[0]-under[1]) > 0.3 {
		t.Errorf("halving the mesh moves the level from %.2f to %.2f mm", under[0], under[1])
	}
	again, err := work.ReadFor("x", data, work.Setting{})
	if err != nil || !slices.Equal(again.Leveled.Out, p.Leveled.Out) || again.Mark != p.Mark {
		t.Errorf("cut once more it is another: %v", err)
	}
}

// What cannot be made level, or only past what the cloth bears, is refused with what would do.
func TestLeveledRefuses(t *testing.T) {
	for _, row := range []struct {
		values []string
		rule   design.Rule
		hint   design.PhraseKind
	}{
		{[]string{"bed.head_bar", "560 mm", "bed.foot_bar", "520 mm"}, design.LevelOpen, design.MadeWouldDo},
		{[]string{"cloth.locking_angle", "12 deg"}, design.LevelSheared, design.MadeWouldDo},
	} {
		_, err := work.ReadFor("x", demoWith(t, append([]string{"bed.level", "hung"}, row.values...)...), work.Setting{})
		var faults design.Faults
		if !errors.As(err, &faults) || faults[0].Key != design.KeyBedLevel || faults[0].Found.Rule != row.rule || faults[0].Hint.Say.Kind != row.hint {
			t.Errorf("%v: %v", row.values, err)
		}
	}
}

// The loop tells how far it is, and ends where it is told to.
func TestLeveledStops(t *testing.T) {
	stop := errors.New("stop")
	told := 0.0
	_, err := work.ReadFor("x", demoWith(t, "bed.level", "hung"), work.Setting{Leveling: func(part float64) error {
		if told = part; part > 0.2 {
			return stop
		}
		return nil
	}})
	if !errors.Is(err, stop) || told > 1 {
		t.Errorf("%v at %g", err, told)
	}
}
