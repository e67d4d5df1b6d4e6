package export_test

import (
	"bytes"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/hpgl"
	"slingloft/export/readertest"
	"slingloft/export/style"
	"slingloft/export/svg"
	"slingloft/outline/piece"
)

func TestStrokes(t *testing.T) {
	m := readertest.Machine(t, `stroke = [
	{ work = "cut-outline", colour = "#FF0000", width = "0.01 mm" },
	{ work = "score", solid = true },
	{ work = "mark", dash = "2 mm, 1 mm" },
]`)
	o, err := export.OptionsFor(m)
	if err != nil {
		t.Fatal(err)
	}
	cut, score, mark := o.Scheme.Of(piece.CutOut), o.Scheme.Of(piece.Score), o.Scheme.Of(piece.Mark)
	if (cut.Colour != style.Colour{R: 255}) || cut.Width != 0.01 || len(score.Dash) != 0 || len(mark.Dash) != 2 || mark.Colour != style.Default().Of(piece.Mark).Colour {
		t.Errorf("strokes %+v, %+v, %+v", cut, score, mark)
	}
	var b bytes.Buffer
	if err := svg.Write(&b, readertest.Square(), o); err != nil || !strings.Contains(b.String(), `stroke="#ff0000" stroke-width="0.0100"`) {
		t.Errorf("%v in %.900s", err, b.String())
	}
}

// Turned axes: the point nearest to the machine's zero is the sheet's upper left.
func TestAxesOfMachine(t *testing.T) {
	m := readertest.Machine(t, "origin = \"upper-left\"\ny_down = true\nswap_axes = true")
	o, err := export.OptionsFor(m)
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := hpgl.WriteFor(&b, readertest.Square(), o, hpgl.Plot{}); err != nil {
		t.Fatal(err)
	}
	// The square lies from (10 5) to (30 25) on a sheet 30 mm high: 5 mm to 25 mm
	// down, and 10 mm to 30 mm along.
	for _, want := range []string{"PS1200,1600;", "200,400", "1000,1200"} {
		if !strings.Contains(b.String(), want) {
			t.Errorf("no %s in %s", want, b.String())
		}
	}
}

func TestParseMeasured(t *testing.T) {
	inches := func(v float64) float64 { return v * 25.4 }
	for _, tc := range []struct {
		text string
		want [2]float64
	}{
		{"3.98x4.01", [2]float64{inches(3.98), inches(4.01)}}, {"3.98in x 4.01 in", [2]float64{inches(3.98), inches(4.01)}},
		{"100inx100in", [2]float64{}},
		{"99.6x100.2", [2]float64{99.6, 100.2}}, {"100×100", [2]float64{100, 100}}, {" 99.95 x 100.05 ", [2]float64{99.95, 100.05}},
		{"", [2]float64{}}, {"99.6", [2]float64{}}, {"99,6x100", [2]float64{}}, {"NaNx100", [2]float64{}}, {"Infx1", [2]float64{}},
		{"50x100", [2]float64{}}, {"-100x100", [2]float64{}}, {"0x0", [2]float64{}}, {"0x1p4x3", [2]float64{}},
	} {
		drawn, got, err := export.ParseMeasured(tc.text)
		if err == nil && drawn != [2]float64{100, 100} && drawn != [2]float64{101.6, 101.6} {
			t.Errorf("%q: drawn %v", tc.text, drawn)
		}
		if (err != nil) != (tc.want == [2]float64{}) || (err == nil && got != tc.want) {
			t.Errorf("ParseMeasured(%q) = %v, %v; want %v", tc.text, got, err, tc.want)
		}
	}
}
