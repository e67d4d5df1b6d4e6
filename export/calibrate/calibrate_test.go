package calibrate

import (
	"bytes"
	"math"
	"testing"

	"slingloft/export"
	"slingloft/export/svg"
	"slingloft/outline/geom"
	"slingloft/outline/words"
)

// A machine that draws 0.4 % short along x and 0.2 % long along y is set right by
// what its calibration sheet measures.
func TestSheetSetsAMachineRight(t *testing.T) {
	frame, err := export.Within(600, 400)
	if err != nil {
		t.Fatal(err)
	}
	d, bars, err := Sheet(frame, export.Block{Design: "Reed", Sheet: 1, Sheets: 1}, words.EnglishSheets())
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
	for name, want := range map[string]float64{"long bar x high": 500, "long bar y right": 300} {
		if got := measured(o, name); math.Abs(got-want) > 0.01 {
			t.Errorf("%s measures %g mm after correction, want %g", name, got, want)
		}
	}
	if bars.X != 500 || bars.Y != 300 || math.Abs(bars.Diagonal-583.0951894845) > 1e-9 {
		t.Errorf("bars %+v", bars)
	}
	if _, _, err := Sheet(export.Around(60, 60, 1), export.Block{}, words.EnglishSheets()); err == nil {
		t.Error("a calibration sheet was drawn on 60 mm")
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
