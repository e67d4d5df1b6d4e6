package chapter

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"slingloft/export/sheet"
	"slingloft/outline/accuracy"
	"slingloft/outline/cord"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/state"
)

// What holds, the margin and the verdict of a check, known or not.
func TestCheckRow(t *testing.T) {
	b := hangs(t)
	for _, row := range []struct {
		name  string
		check margin.Check
		want  []string // load, factor, holds, margin, required, verdict
	}{
		{"met", margin.Check{Load: 100, Factor: 1, Capacity: 623.5, Ratio: 6.235, Required: 5, Met: true},
			[]string{"100 N", "–", "624 N", "6.24", "5.00", "met"}},
		{"with a factor", margin.Check{Load: 100, Factor: 2, Capacity: 600, Ratio: 6, Required: 5, Met: true},
			[]string{"100 N", "× 2.00", "600 N", "6.00", "5.00", "met"}},
		{"not met", margin.Check{Load: 100, Factor: 1, Capacity: 300, Ratio: 3, Required: 5},
			[]string{"100 N", "–", "300 N", "3.00", "5.00", "not met"}},
		{"not met at best", margin.Check{Load: 100, Factor: 1, Capacity: 300, Bound: true, Ratio: 3, Required: 5},
			[]string{"100 N", "–", "≤ 300 N", "≤ 3.00", "5.00", "not met"}},
		{"waived", margin.Check{Load: 100, Factor: 1, Capacity: 300, Ratio: 3, Required: 5, Waived: true},
			[]string{"100 N", "–", "300 N", "3.00", "5.00", "accepted"}},
		{"waived and met", margin.Check{Load: 100, Factor: 1, Capacity: 600, Ratio: 6, Required: 5, Waived: true, Met: true},
			[]string{"100 N", "–", "600 N", "6.00", "5.00", "met"}},
		{"enough at best", margin.Check{Load: 100, Factor: 1, Capacity: 600, Bound: true, Ratio: 6, Required: 5},
			[]string{"100 N", "–", "≤ 600 N", "≤ 6.00", "5.00", "not given"}},
		{"not given", margin.Check{Load: 100, Factor: 1, Required: 5},
			[]string{"100 N", "–", "not given", "–", "5.00", "not given"}},
		{"across the cloth", margin.Check{Load: 1.5, Factor: 1, Capacity: 12, Unit: margin.PerWidth, Ratio: 8, Required: 5, Met: true},
			[]string{b.Style.PerWidth(1.5), "–", b.Style.PerWidth(12), "8.00", "5.00", "met"}},
	} {
		got := b.checkRow(row.check, 3)
		if !slices.Equal(got[1:7], row.want) || got[7] != "3" {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}

// What governs, what to buy and every state have a table each around those of the cases;
// cases without checks have none; a source is named once, by the number that the tables
// give.
func TestMarginBlocks(t *testing.T) {
	b := hangs(t)
	check := func(c state.Kind, s margin.SourceKind, ratio float64) margin.Check {
		return margin.Check{Case: c, Load: 1, Factor: 1, Capacity: ratio, Ratio: ratio, Required: 5, Met: ratio >= 5,
			Source: margin.Source{Kind: s}}
	}
	lost := &finished.LostError{Aside: 40, Turn: -0.7, Cause: errors.New("no rest")}
	b.Margins = &margin.Report{
		Checks: []margin.Check{
			check(0, margin.CordSheet, 6), check(2, margin.HookSheet, 4), check(0, margin.Column, 5), check(2, margin.CordSheet, 7),
		},
		Leasts: []margin.Least{
			{Thing: margin.SideCordThing, Value: 5000, Knotted: 15000, Keeps: 0.9, Assumed: true},
			{Thing: margin.LineThing, Value: 6000, Knotted: 16000, Keeps: 0.9},
			{Thing: margin.HookThing, Value: 5000, Given: 4000, Keeps: 1},
		},
		States: []state.State{{Kind: state.Lying, Share: 0.5}, {Kind: state.Edge, Bound: lost}},
	}
	for k := range state.Kind(state.Kinds) {
		s := state.State{Kind: k}
		if k == state.Edge {
			s.Bound = lost
		}
		b.Margins.Cases = append(b.Margins.Cases, margin.Case{Kind: k, States: []state.State{s}})
	}
	blocks := b.marginBlocks()
	if len(blocks) != 8 {
		t.Fatalf("%d blocks: %v", len(blocks), blocks)
	}
	for i, id := range map[int]string{0: "governs", 1: "least", 3: "margins-1", 4: "margins-3", 5: "states"} {
		if got := blocks[i].(sheet.Table); got.ID != id {
			t.Errorf("block %d is %s, want %s", i, got.ID, id)
		}
	}
	least := blocks[1].(sheet.Table)
	if want := []string{"Side cord", "5000 N", "–", "0 N", "0.00", "0.90, assumed"}; !slices.Equal(least.Rows[0][:6], want) {
		t.Errorf("least %q, want %q", least.Rows[0], want)
	}
	// Hang lines that are the maker's own may be tied; those that are made with eyes are not.
	if got := least.Rows[1][2]; got != "16000 N" {
		t.Errorf("a line that is tied needs %q", got)
	}
	for knotted, want := range map[bool]string{true: "16000 N", false: "–"} {
		own := b.Cords
		b.Cords.Lines = []cord.HangLine{{Knotted: knotted}}
		if got := b.leastTable().Rows[1][2]; got != want {
			t.Errorf("knotted %v: %q", knotted, got)
		}
		b.Cords = own
	}
	if !slices.Equal(least.Strong, []bool{false, false, true}) ||
		least.Rows[2][2] != "–" || least.Rows[2][5] != "–" || least.Rows[2][7] != "4000 N" {
		t.Errorf("least %q, strong %v", least.Rows, least.Strong)
	}
	if states := blocks[5].(sheet.Table); states.Rows[1][0] != "Edge (bounded)" || states.Rows[1][8] != "–" || states.Rows[0][9] != "0.50" {
		t.Errorf("states %q", states.Rows)
	}
	b.Margins.Give, b.Margins.Dynamic = state.Give{Length: 40, Least: true}, 2
	said := strings.Join(b.marginBlocks()[6].(sheet.List), " ")
	for _, want := range []string{"held to 2.0 times", "gives 40 mm", "from 50 mm loads it with 2.9 times", "from 100 mm loads it with 3.4 times", "Hang lines give too"} {
		if !strings.Contains(said, want) { // 1 + √(1 + 100/40), 1 + √(1 + 200/40)
			t.Errorf("no %q in %q", want, said)
		}
	}
	first, second := blocks[3].(sheet.Table), blocks[4].(sheet.Table)
	sources := func(t sheet.Table) (out []string) {
		for _, r := range t.Rows {
			out = append(out, r[7])
		}
		return out
	}
	if a, z := sources(first), sources(second); !slices.Equal(a, []string{"1", "2"}) || !slices.Equal(z, []string{"3", "1"}) {
		t.Errorf("sources %q and %q", a, z)
	}
	if !slices.Equal(first.Strong, []bool{false, false}) || !slices.Equal(second.Strong, []bool{true, false}) {
		t.Errorf("strong %v and %v", first.Strong, second.Strong)
	}
	source := func(k margin.SourceKind) string { return b.Say.Names.Margins.Source(margin.Source{Kind: k}) }
	want := sheet.List{
		"Source 1: " + source(margin.CordSheet) + ".", "Source 2: " + source(margin.Column) + ".", "Source 3: " + source(margin.HookSheet) + ".",
	}
	if got := blocks[7].(sheet.List); !slices.Equal(got, want) {
		t.Errorf("sources %q, want %q", got, want)
	}
}

func TestForcesTable(t *testing.T) {
	b := hangs(t)
	b.Shape.Ends[hung.Head].BarCompression, b.Shape.Ends[hung.Foot].BarCompression = 518.4, 300
	if got, want := cells(b.forcesTable(), b.Say.Loads.Thrust), []string{"518 N", "300 N"}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// A departure that is likely more than accepted stands out; an effect is told for ten
// millimetres too long.
func TestAccuracy(t *testing.T) {
	b := hangs(t)
	effect := accuracy.Effect{Part: 0, Corner: 0.51, Level: finished.Level{Along: -1.2, Across: [2]float64{0.3, -0.4}, Sag: 0.05}}
	b.Accuracy = &accuracy.Report{
		Outcomes: []accuracy.Outcome{
			{Measure: accuracy.Measure{Kind: 0, Worst: 8, RSS: 3, Allowed: 5, Likely: true}},
			{Measure: accuracy.Measure{Kind: 1, Worst: 20, RSS: 9.04, Allowed: 5}},
		},
		Effects: []accuracy.Effect{effect},
	}
	level := b.accuracyBlocks()[1].(sheet.Table)
	if !slices.Equal(level.Strong, []bool{false, true}) || !slices.Equal(level.Rows[1][1:4], []string{"± 20.0", "± 9.0", "5.0"}) {
		t.Errorf("rows %q, strong %v", level.Rows, level.Strong)
	}
	effects := b.effectsTable()
	if got, want := effects.Rows[0][1:], []string{"5.1", "−12.0", "3.0", "−4.0", "0.5"}; !slices.Equal(got, want) {
		t.Errorf("effects %q, want %q", got, want)
	}
	if want := "What 10 mm too long does, in mm"; effects.Caption[:len(want)] != want {
		t.Errorf("caption %q", effects.Caption)
	}
	if got := b.inches().effectsTable().Rows[0][1]; got != "3/16" { // 5.1 mm are 3.2 sixteenths
		t.Errorf("in inches %q", got)
	}
}
