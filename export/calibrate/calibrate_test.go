package calibrate

import (
	"bytes"
	"math"
	"testing"

	"slingloft/export"
	"slingloft/export/svg"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/words"
)

// on returns what is tried on a stock of a size in mm.
func on(width, height float64) Trial {
	return Trial{Room: [2]float64{width, height}, Block: export.Block{Design: "Reed", Sheet: 1, Sheets: 1}, Words: words.EnglishSheets()}
}

// A machine that draws 0.4 % short along x and 0.2 % long along y is set right by
// what its calibration sheet measures.
func TestSheetSetsAMachineRight(t *testing.T) {
	d, bars, err := Sheet(on(600, 400))
	if err != nil {
		t.Fatal(err)
	}
	fault := [2]float64{0.996, 1.002}
	measured := func(o export.Options, name string) float64 {
		var b bytes.Buffer
		if err := svg.Write(&b, d, o); err != nil {
			t.Fatal(err)
		}
		read, err := svg.Read(&b)
		if err != nil {
			t.Fatal(err)
		}
		for _, l := range read.Lines {
			if l.Name == name {
				way := l.Points[1].Minus(l.Points[0])
				return geom.Pt(way.X*fault[0], way.Y*fault[1]).Len()
			}
		}
		t.Fatalf("no line %q", name)
		return 0
	}
	var o export.Options
	o.Correct[0], err = export.Correction(bars.X, measured(export.Options{}, "long bar x low"))
	if err != nil {
		t.Fatal(err)
	}
	o.Correct[1], err = export.Correction(bars.Y, measured(export.Options{}, "long bar y left"))
	if err != nil {
		t.Fatal(err)
	}
	for name, want := range map[string]float64{"long bar x high": 550, "long bar y right": 350} {
		if got := measured(o, name); math.Abs(got-want) > 0.01 {
			t.Errorf("%s measures %g mm after correction, want %g", name, got, want)
		}
	}
	if bars.X != 550 || bars.Y != 350 || math.Abs(bars.Diagonal-651.9202405203) > 1e-9 {
		t.Errorf("bars %+v", bars)
	}
}

// Bars are as long as there is room for, in whole steps of a ruler, and shorter on a
// small bed; on none are they none. Where the tool only cuts they are the edges of what
// is cut out.
func TestBars(t *testing.T) {
	for _, row := range []struct {
		x, y   float64
		inches bool
		want   Bars
	}{
		{100, 100, false, Bars{X: 80, Y: 80}},
		{120, 218, false, Bars{X: 100, Y: 190}},
		{2020, 870, false, Bars{X: 2000, Y: 850}},
		{20000, 1500, false, Bars{X: 3000, Y: 1450}},
		{4 * 25.4, 12 * 25.4, true, Bars{X: 3 * 25.4, Y: 10 * 25.4}},
		{81 * 25.4, 45 * 25.4, true, Bars{X: 80 * 25.4, Y: 44 * 25.4}},
	} {
		trial := on(row.x, row.y)
		trial.Inches = row.inches
		for _, trial.Cut = range []bool{false, true} {
			d, got, err := Sheet(trial)
			if err != nil || math.Abs(got.X-row.want.X) > 1e-9 || math.Abs(got.Y-row.want.Y) > 1e-9 {
				t.Errorf("%g × %g mm: bars %+v, %v, want %+v", row.x, row.y, got, err, row.want)
				continue
			}
			if d.Width > row.x+1e-6 || d.Height > row.y+1e-6 || d.Width != got.X+2*room || len(d.NoRoom) > 0 {
				t.Errorf("%g × %g mm: a drawing of %g × %g mm, without %v", row.x, row.y, d.Width, d.Height, d.NoRoom)
			}
			if n := len(d.Lines); trial.Cut != (n == 1 && d.Lines[0].Work == piece.CutOut && d.Lines[0].Closed) {
				t.Errorf("%d lines, cut %t", n, trial.Cut)
			}
		}
	}
}

// A slot whose number is the kerf comes out as wide as the board is thick.
func TestComb(t *testing.T) {
	c := Comb{Thickness: 3, First: 0.05, Step: 0.05, Slots: 10}
	p, err := c.Piece()
	if err != nil {
		t.Fatal(err)
	}
	if p.Cut.Area() <= 0 || len(p.Labels) != 10 || len(p.Cut) != 4+4*10 {
		t.Fatalf("comb of area %g with %d labels and %d corners", p.Cut.Area(), len(p.Labels), len(p.Cut))
	}
	want := p.Cut.Bounds().Width() * (backbone + slotDepth)
	for i := range 10 {
		kerf := 0.05 + 0.05*float64(i)
		want -= (3 - kerf) * slotDepth
		// Under the middle of the slot there is board, in it none.
		at := p.Labels[i].At
		if !p.Cut.Contains(at) || p.Cut.Contains(geom.Pt(at.X, backbone+slotDepth/2)) {
			t.Errorf("slot %d is not over its number", i+1)
		}
		left, right := geom.Pt(at.X-(3-kerf)/2, 20), geom.Pt(at.X+(3-kerf)/2, 20)
		if !p.Cut.Contains(left.Minus(geom.Pt(0.001, 0))) || !p.Cut.Contains(right.Plus(geom.Pt(0.001, 0))) ||
			p.Cut.Contains(left.Plus(geom.Pt(0.001, 0))) || p.Cut.Contains(right.Minus(geom.Pt(0.001, 0))) {
			t.Errorf("slot %d is not %g mm wide", i+1, 3-kerf)
		}
	}
	if math.Abs(p.Cut.Area()-want) > 1e-9 {
		t.Errorf("area %g, want %g", p.Cut.Area(), want)
	}
	for _, bad := range []Comb{{}, {Thickness: 3, First: 0.05, Step: 0.5, Slots: 10}, {Thickness: math.NaN(), Step: 0.1, Slots: 2}, {Thickness: 3, Step: math.NaN(), Slots: 2}} {
		if p, err := bad.Piece(); err == nil {
			t.Errorf("comb %+v has %d corners, want an error", bad, len(p.Cut))
		}
	}
}

// Where a bed has no room for the comb in one row it is cut in several, and ends with
// the slots that there is room for; round a cutter's diameter the numbers lie close.
func TestCombInRows(t *testing.T) {
	c := CombFor(2.94, 0, false)
	for _, row := range []struct {
		x, y        float64
		rows, slots int
	}{{900, 600, 1, 12}, {120, 110, 2, 10}, {100, 100, 1, 4}, {100, 600, 3, 12}} {
		d, rows, err := CombSheet(c, on(row.x, row.y))
		slots := 0
		for _, r := range rows {
			slots += r.Slots
		}
		if err != nil || len(rows) != row.rows || slots != row.slots || d.Width > row.x || d.Height > row.y {
			t.Errorf("%g × %g mm: %d slots in %d rows on %g × %g mm, %v", row.x, row.y, slots, len(rows), d.Width, d.Height, err)
		}
	}
	for _, row := range []struct {
		thickness, cutter float64
		inches            bool
		slots             int
		first, last       string
	}{
		{2.94, 0, false, 12, "0.05", "0.60"}, {2.95, 0, true, 12, "0.002", "0.024"}, {6, 3.175, false, 12, "2.90", "3.45"},
		{6, 3.175, true, 12, "0.114", "0.136"}, {0.42, 0, false, 6, "0.05", "0.30"}, {3, 3.175, false, 0, "", ""},
	} {
		c := CombFor(row.thickness, row.cutter, row.inches)
		if c.Slots != row.slots || c.Slots > 0 && (c.Kerf(0) != row.first || c.Kerf(c.Slots-1) != row.last) {
			t.Errorf("%+v: %d slots from %s to %s", row, c.Slots, c.Kerf(0), c.Kerf(c.Slots-1))
		}
	}
}
