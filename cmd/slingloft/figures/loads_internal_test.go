package figures

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"
	"text/tabwriter"

	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/quantity"
	"slingloft/outline/rig"
	"slingloft/outline/room"
	"slingloft/outline/state"
)

// reportOf returns an empty report in a system of units.
func reportOf(inches bool) *report {
	say := English()
	b := &report{style: quantity.Style{Inches: inches, Decimals: 2}, imperial: inches, words: say.Names, say: say}
	b.out = tabwriter.NewWriter(&b.text, 0, 0, 2, ' ', tabwriter.AlignRight)
	return b
}

// written returns what a part of a report writes, line by line.
func (b *report) written(do func()) []string {
	b.text.Reset()
	do()
	b.out.Flush()
	return strings.Split(strings.TrimSpace(b.text.String()), "\n")
}

// A check in a word, what fails before what is missing, and its capacity and margin only
// where they are known.
func TestCheckInWords(t *testing.T) {
	b := reportOf(false)
	say := b.say.Faults.Standing
	missing := []design.Key{design.KeyBarYield}
	for name, r := range map[string]struct {
		c                         margin.Check
		standing, capacity, ratio string
	}{
		"met":         {margin.Check{Capacity: 1000, Ratio: 6.004, Required: 5, Met: true}, say.Met, "1000 N", "6.00"},
		"not met":     {margin.Check{Capacity: 900, Ratio: 4.5, Required: 5}, say.NotMet, "900 N", "4.50"},
		"waived":      {margin.Check{Capacity: 900, Ratio: 4.5, Required: 5, Waived: true}, say.Waived, "900 N", "4.50"},
		"waived, met": {margin.Check{Capacity: 900, Ratio: 5, Required: 5, Waived: true, Met: true}, say.Met, "900 N", "5.00"},
		"bound, fails": {margin.Check{Capacity: 900, Ratio: 4.5, Required: 5, Bound: true, Missing: missing}, say.NotMet,
			strings.Replace(b.say.Margins.AtMost, "%s", "900 N", 1), "4.50"},
		"missing":   {margin.Check{Required: 5, Missing: missing}, strings.Replace(say.Missing, "%s", "bar.yield", 1), b.say.NotGiven, "–"},
		"per width": {margin.Check{Capacity: 9.239, Ratio: 2.5, Required: 2, Unit: margin.PerWidth, Met: true}, say.Met, "9.24 N/mm", "2.50"},
	} {
		if got := [3]string{b.standing(r.c), b.capacity(r.c), b.ratio(r.c)}; got != [3]string{r.standing, r.capacity, r.ratio} {
			t.Errorf("%s: %q, want %q, %q and %q", name, got, r.standing, r.capacity, r.ratio)
		}
	}
}

// Which end stands higher goes by the sign, and both stand level where what would be
// written is nothing.
func TestHigherEnd(t *testing.T) {
	b := reportOf(false)
	for head, want := range map[float64]string{
		12: "head:12.00 mm", -12: "foot:12.00 mm", 0: "level", 0.004: "level", -0.004: "level", -0.006: "foot:0.01 mm",
	} {
		if got := b.higher(head, "%s:%s", "level"); got != want {
			t.Errorf("head %g mm higher: %q, want %q", head, got, want)
		}
	}
}

// The verdict on rolling goes by the flags, and a bed that turns over has no share.
func TestRollInWords(t *testing.T) {
	b := reportOf(false)
	say := b.say.Hanging
	for _, r := range []struct {
		roll    rig.Roll
		verdict string
	}{
		{rig.Roll{Turn: 15 * math.Pi / 180, Share: 0.61, Stable: true}, say.Steady},
		{rig.Roll{Turn: 25 * math.Pi / 180, Share: 0.7, Rocks: true}, say.Rocks},
		{rig.Roll{Turn: 40 * math.Pi / 180, Share: 0.8}, say.NotSteady},
	} {
		got := b.written(func() { b.roll(r.roll) })
		if len(got) != 2 || !strings.HasSuffix(got[1], ": "+r.verdict) || !strings.Contains(got[1], b.deg(r.roll.Turn)) ||
			!strings.Contains(got[1], quantity.Decimal(r.roll.Share, 2)) {
			t.Errorf("%+v: %q", r.roll, got)
		}
	}
	got := b.written(func() { b.roll(rig.Roll{Turn: 0.7, Over: true, Back: 120, Side: 40}) })
	if len(got) != 2 || !strings.Contains(got[0], "120.00 mm") || !strings.Contains(got[0], "40.00 mm") ||
		!strings.Contains(got[1], b.deg(0.7)) || strings.Contains(got[1], say.Steady+" ") {
		t.Errorf("turns over: %q", got)
	}
}

// A pull in kgf beside newtons, 1 kgf = 9.80665 N; in lbf alone where those are used.
func TestPullInWords(t *testing.T) {
	if got := reportOf(false).pull(980.665); !strings.HasPrefix(got, "981 N") || !strings.Contains(got, "100.0 ") {
		t.Errorf("100 kgf: %q", got)
	}
	if got := reportOf(true).pull(444.82216152605); got != "100 lbf" {
		t.Errorf("100 lbf: %q", got)
	}
}

// A state for other programs is the state, side by side and end by end, with how far a bed
// was followed that turns over as an angle without sign.
func TestStatesForPrograms(t *testing.T) {
	loads := finished.Loads{Line: [2]float64{1, 2}, Leg: [2][2]float64{{3, 4}, {5, 6}}, Side: [2]float64{7, 8},
		Bar: [2]float64{9, 10}, Cloth: 11}
	rest := state.State{Kind: state.GettingIn, X: 120, Aside: 30, Seat: 390, Loads: loads, Hang: [2]float64{0.4, 0.5},
		Turn: -0.2, Share: 0.7, Slack: true}
	lost := state.State{Kind: state.Edge, Extreme: true, Bound: &finished.LostError{Aside: 98, Turn: -0.6}}
	other := state.State{Kind: state.Sitting, Bound: errors.New("not found")}
	got := statesOf([]state.State{rest, lost, other})
	s := got[0]
	if s.Case != "getting-in" || s.X != 120 || s.Aside != 30 || s.Seat != 390 || s.Turn != -0.2 || s.Share != 0.7 || !s.Slack ||
		s.Bound || s.Extreme || s.Lost != nil || s.Angle != (Pair{0.4, 0.5}) {
		t.Errorf("%+v", s)
	}
	if s.Hang != (Pair{1, 2}) || s.Leg != [2]Pair{{3, 4}, {5, 6}} || s.Side != (Pair{7, 8}) || s.Bar != (Pair{9, 10}) || s.Cloth != 11 {
		t.Errorf("loads %+v", s)
	}
	if l := got[1]; !l.Bound || !l.Extreme || l.Lost == nil || *l.Lost != (Lost{98, 0.6}) {
		t.Errorf("turned over: %+v, %+v", l, l.Lost)
	}
	if o := got[2]; !o.Bound || o.Lost != nil {
		t.Errorf("not found: %+v", o)
	}
}

// A drop's factor by √(1 + 2 h/give) + 1, from Gere's energy of a spring: never below 2, and
// nothing where the give is not known.
func TestSuddenForPrograms(t *testing.T) {
	for _, style := range []quantity.Style{{}, {Inches: true}} {
		got := suddenOf(margin.Report{Give: state.Give{Length: 30, Least: true}}, style)
		if got.Give != 30 || !got.Least || len(got.Drops) == 0 {
			t.Fatalf("%+v", got)
		}
		for i, d := range got.Drops {
			x := d.Factor - 1 // times the give is how far it sinks beyond the give
			if math.Abs(30*x*x-30-2*d.Height) > 1e-9 || d.Factor < 2 || i > 0 && d.Height <= got.Drops[i-1].Height {
				t.Errorf("a drop of %g mm loads %g times", d.Height, d.Factor)
			}
		}
	}
	if got := suddenOf(margin.Report{}, quantity.Style{}); got.Drops == nil || len(got.Drops) != 0 {
		t.Errorf("no give: %+v", got)
	}
}

// The proof is half as much again as the sleeper, and names what is known not to stand it.
func TestProofForPrograms(t *testing.T) {
	r := margin.Report{Checks: []margin.Check{
		{Part: margin.HeadLeg, Case: state.Sitting, Capacity: 100, Load: 60, Factor: 1},
		{Part: margin.FootLeg, Case: state.Sitting, Capacity: 200, Load: 60, Factor: 1},
		{Part: margin.ClothStrip, Case: state.Lying, Capacity: 1, Load: 60, Factor: 1},
	}}
	got := proofOf(r, 80)
	if got.Mass != 120 || got.Least != 1.3 || len(got.Unproven) != 1 || got.Unproven[0] != "head leg" {
		t.Errorf("%+v", got)
	}
	if none := proofOf(margin.Report{}, 80); none.Unproven == nil {
		t.Error("nothing unproven is no list")
	}
}

// Each tip's figure stands under its own name.
func TestTipsForPrograms(t *testing.T) {
	var at [2][2]float64
	at[hung.Head][bed.Left], at[hung.Head][bed.Right], at[hung.Foot][bed.Left], at[hung.Foot][bed.Right] = 1, 2, 3, 4
	if got := tipsOf(at); got != (Tips{HeadLeft: 1, HeadRight: 2, FootLeft: 3, FootRight: 4}) {
		t.Errorf("%+v", got)
	}
}

// What the sleeper feels, part by part: what cannot be said of one part is said of it alone,
// and the largest squeeze is that of the posture.
func TestRoomForPrograms(t *testing.T) {
	r := room.Room{Head: 80, Feet: 60, OverFace: 400, Upright: 150, Ridge: -20, Fits: []room.Fit{
		{Part: room.Shoulders, Lies: design.OnBack, X: -300, Opening: 560, Spare: 80, Squeeze: 12, Pressure: 0.001, Floor: 3,
			Body: room.Body{Breadth: 480, Depth: 240}},
		{Part: room.Hips, Lies: design.OnBack, Squeeze: 9},
		{Part: room.Shoulders, Lies: design.OnSide, Squeeze: 40, Err: errors.New("too broad")},
	}}
	got := roomOf(r, nil)
	want := Fit{Part: "shoulders", Lies: "back", X: -300, Breadth: 480, Depth: 240, Opening: 560, Spare: 80, Squeeze: 12,
		Pressure: 0.001, Floor: 3}
	if len(got.Fits) != 3 || got.Fits[0] != want || got.Fits[1].Cannot != "" || got.Fits[2].Cannot != "too broad" || got.Cannot != "" {
		t.Errorf("%+v", got)
	}
	if got.Head != 80 || got.Feet != 60 || got.OverFace != 400 || got.Upright != 150 || got.Ridge != -20 {
		t.Errorf("%+v", got)
	}
	if none := roomOf(room.Room{}, errors.New("not found")); none.Cannot != "not found" || none.Fits == nil {
		t.Errorf("%+v", none)
	}
	if back, side := mostSqueezed(r, design.OnBack), mostSqueezed(r, design.OnSide); back != 12 || side != 40 {
		t.Errorf("squeezed by %g and %g", back, side)
	}
	if spare := roomTrait(r, design.OnBack, room.Shoulders); spare != 80 {
		t.Errorf("shoulders have %g to spare", spare)
	}
	if spare := roomTrait(r, design.OnSide, room.Knees); spare != 0 {
		t.Errorf("knees that are not looked at have %g to spare", spare)
	}
	b := reportOf(false)
	if under, over := b.above(5), b.above(-5); under != b.say.Room.Under || over != b.say.Room.Over || under == over {
		t.Errorf("under %q, over %q", under, over)
	}
}

// A table of states: of a bound no turn is told, nor a share where there is none; the more
// loaded side or end stands in the row.
func TestStatesInATable(t *testing.T) {
	b := reportOf(false)
	loads := finished.Loads{Line: [2]float64{610, 620}, Leg: [2][2]float64{{330, 340}, {350, 320}}, Side: [2]float64{410, 420},
		Bar: [2]float64{260, 250}, Cloth: 0.5}
	rows := b.written(func() {
		b.states([]state.State{
			{Kind: state.Sitting, X: 10, Loads: loads, Turn: -0.1, Share: 0.5},
			{Kind: state.Edge, X: 10, Aside: 100, Loads: loads, Bound: errors.New("not found"), Turn: 0.3},
			{Kind: state.GettingIn, Loads: loads, Share: 1, Turn: 0.3},
			{Kind: state.Edge, Aside: 230, Loads: loads, Extreme: true, Turn: 0.6, Share: 0.8},
		})
	})
	if len(rows) != 6 {
		t.Fatalf("%q", rows)
	}
	for i, want := range []struct{ turn, share string }{{"5.7°", "0.50"}, {"–", "–"}, {"–", "1.00"}, {"34.4°", "0.80"}} {
		cells := strings.Fields(rows[i+2])
		last := []string{"620", "350", "420", "260", "500", want.turn, want.share}
		if n := len(cells); n < 7 || !slices.Equal(cells[n-7:], last) {
			t.Errorf("row %d: %q, want turn %s, share %s", i, rows[i+2], want.turn, want.share)
		}
	}
}
