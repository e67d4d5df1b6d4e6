package chapter

import (
	"slices"
	"testing"

	"slingloft/export/sheet"
	"slingloft/outline/accuracy"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
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
			[]string{"100 N", "–", "300 N", "3.00", "5.00", "waived"}},
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

// Cases have a table each, those without loads say why, those without checks nothing;
// a source is named once, by the number that the tables give.
func TestMarginBlocks(t *testing.T) {
	b := hangs(t)
	check := func(c margin.CaseKind, s margin.SourceKind, ratio float64) margin.Check {
		return margin.Check{Case: c, Load: 1, Factor: 1, Capacity: ratio, Ratio: ratio, Required: 5, Met: ratio >= 5,
			Source: margin.Source{Kind: s}}
	}
	b.Margins = &margin.Report{
		Cases: []margin.Case{{Kind: 0}, {Kind: 1, Cannot: margin.Obstacle{Kind: margin.NoPosture}}, {Kind: 2}, {Kind: 3}},
		Checks: []margin.Check{
			check(0, margin.CordSheet, 6), check(2, margin.HookSheet, 4), check(0, margin.Column, 5), check(2, margin.CordSheet, 7),
		},
	}
	blocks := b.marginBlocks()
	if len(blocks) != 4 {
		t.Fatalf("%d blocks: %v", len(blocks), blocks)
	}
	first, notice, second := blocks[0].(sheet.Table), blocks[1].(sheet.Notice), blocks[2].(sheet.Table)
	if notice.Grade != sheet.Careful || len(notice.Lines) != 1 {
		t.Errorf("a case without loads: %+v", notice)
	}
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
	if first.ID != "margins-1" || second.ID != "margins-3" {
		t.Errorf("tables %s and %s", first.ID, second.ID)
	}
	source := func(k margin.SourceKind) string { return b.Say.Names.Margins.Source(margin.Source{Kind: k}) }
	want := sheet.List{
		"Source 1: " + source(margin.CordSheet) + ".", "Source 2: " + source(margin.Column) + ".", "Source 3: " + source(margin.HookSheet) + ".",
	}
	if got := blocks[3].(sheet.List); !slices.Equal(got, want) {
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
