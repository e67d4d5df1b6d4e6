package export_test

import (
	"math"
	"testing"

	"slingloft/export"
	"slingloft/outline/geom"
)

func TestFixed(t *testing.T) {
	rows := []struct {
		v        float64
		decimals int
		want     string
	}{
		{0, 4, "0.0000"}, {math.Copysign(0, -1), 4, "0.0000"}, {-0.00004, 4, "0.0000"}, {-0.00006, 4, "-0.0001"},
		{1e-20, 4, "0.0000"}, {123456789, 4, "123456789.0000"}, {1e21, 0, "1000000000000000000000"}, {-2.5, 0, "-2"}, {-0.4, 0, "0"},
	}
	for _, r := range rows {
		if got := export.Fixed(r.v, r.decimals); got != r.want {
			t.Errorf("Fixed(%g, %d) = %q, want %q", r.v, r.decimals, got, r.want)
		}
	}
}

func TestScales(t *testing.T) {
	rows := []struct {
		text  string
		scale float64
	}{{"1:1", 1}, {"1:5", 0.2}, {"1:2.5", 0.4}, {"2:1", 2}, {"1:10", 0.1}, {"1:3", 1.0 / 3}}
	for _, r := range rows {
		if got, err := export.ParseScale(r.text); err != nil || math.Abs(got-r.scale) > 1e-12 {
			t.Errorf("ParseScale(%q) = %g, %v", r.text, got, err)
		}
		if got := export.ScaleText(r.scale); got != r.text {
			t.Errorf("ScaleText(%g) = %q, want %q", r.scale, got, r.text)
		}
	}
	for _, text := range []string{"", "1", "0:1", "1:0", "-1:5", "-1:-5", "NaN:1", "1:1e9", "Inf:Inf", "1:5:2"} {
		if got, err := export.ParseScale(text); err == nil {
			t.Errorf("ParseScale(%q) = %g, want an error", text, got)
		}
	}
}

// A bar that came out short is drawn longer by as much, so that it measures true.
func TestCorrection(t *testing.T) {
	const nominal, measured = 100, 99.6
	c, err := export.Correction(nominal, measured)
	if err != nil {
		t.Fatal(err)
	}
	o := export.Options{Correct: [2]float64{c, 0}}
	drawn := o.Point(geom.Pt(nominal, nominal))
	machine := measured / float64(nominal)
	if got := drawn.X * machine; math.Abs(got-nominal) > 1e-9 || drawn.Y != nominal {
		t.Errorf("corrected bar measures %g, other axis %g", got, drawn.Y)
	}
	for _, m := range []float64{0, -100, 50, 200, math.NaN(), math.Inf(1)} {
		if c, err := export.Correction(nominal, m); err == nil {
			t.Errorf("Correction(100, %g) = %g, want an error", m, c)
		}
	}
}

func TestOneLineAndID(t *testing.T) {
	rows := []struct{ text, line, id string }{
		{"plain name", "plain name", "plain-name"},
		{" two\r\n lines\t", "two lines", "two-lines"},
		{"a\x00\x1b\u202eb", "ab", "ab"},
		{"😀", "□", "n"},
		{"7 3⁄16 in", "7 3⁄16 in", "n7-3-16-in"},
		{"é\xff", "é\ufffd", "n"},
		{"", "", "n"},
		{`"><x id='`, `"><x id='`, "x-id"},
	}
	for _, r := range rows {
		if got := export.OneLine(r.text); got != r.line {
			t.Errorf("OneLine(%q) = %q, want %q", r.text, got, r.line)
		}
		if got := export.ID(r.text); got != r.id {
			t.Errorf("ID(%q) = %q, want %q", r.text, got, r.id)
		}
	}
}
