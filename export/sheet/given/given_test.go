package given_test

import (
	"math"
	"slices"
	"testing"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/wording"
	"slingloft/outline/margin"
	"slingloft/outline/quantity"
)

// data returns what writes figures in mm and in inches.
func data() (mm, in given.Data) {
	say := wording.English()
	return given.Data{Style: quantity.Style{Decimals: 1}, Say: say}, given.Data{Style: quantity.Style{Inches: true, Fraction: 32}, Say: say}
}

// Figures with and without their units: for marking to the finest step, for the eye to
// whole millimetres and eighths.
func TestFigures(t *testing.T) {
	mm, in := data()
	for _, row := range []struct{ name, got, want string }{
		{"long", mm.Long(100.04), "100.0 mm"}, {"long", in.Long(25.4 * 2.03125), "2 1/32 in"},
		{"round", mm.Round(99.5), "100 mm"}, {"round", in.Round(25.4 * 2.03125), "2 in"}, {"round", in.Round(25.4 * 2.125), "2 1/8 in"},
		{"figure", mm.Figure(-3.14), "-3.1"}, {"signed", mm.SignedFigure(-3.14), "−3.1"}, {"signed", mm.SignedFigure(-0.04), "0.0"},
		{"signed", mm.SignedFigure(2), "2.0"}, {"signed", in.SignedFigure(-25.4), "−1"},
		{"signed", mm.SignedFigure(math.Copysign(0, -1)), "0.0"},
		{"unit", mm.Unit(), "mm"}, {"unit", in.Unit(), "in"}, {"unit", mm.UnitWord(), "mm"}, {"unit", in.UnitWord(), "inches"},
		{"mass", mm.Mass(81.6), "82 kg"}, {"mass", in.Mass(0.45359237 * 180), "180 lb"},
		{"force", mm.Force(566.4), "566 N"}, {"force", in.Force(4.4482216152605 * 127), "127 lbf"},
		{"load", mm.Load(566.4, margin.Force), "566 N"}, {"load", mm.Load(1.5, margin.PerWidth), mm.Style.PerWidth(1.5)},
		{"degrees", mm.Style.Angle(math.Pi / 4), "45.0°"}, {"percent", given.Percent(0.256), "26 %"}, {"times", given.Times(6.235), "6.24"},
		{"both", mm.Both("a", "b"), "a and b"},
	} {
		if row.got != row.want {
			t.Errorf("%s: %q, want %q", row.name, row.got, row.want)
		}
	}
}

func TestCapital(t *testing.T) {
	for in, want := range map[string]string{
		"": "", "a": "A", "body": "Body", "Body": "Body", "über": "Über", "1 body": "1 body", "дно": "Дно",
	} {
		if got := given.Capital(in); got != want {
			t.Errorf("%q: %q, want %q", in, got, want)
		}
	}
}

// Sheets are counted among themselves, wherever the roll stands.
func TestLayName(t *testing.T) {
	d, _ := data()
	for name, row := range map[string]struct {
		lays []given.Lay
		want []string
	}{
		"roll alone": {[]given.Lay{{Roll: true}}, []string{"Cloth lay"}},
		"roll first": {[]given.Lay{{Roll: true}, {}, {}}, []string{"Cloth lay", "Template sheet 1 of 2", "Template sheet 2 of 2"}},
		"roll last":  {[]given.Lay{{}, {Roll: true}}, []string{"Template sheet 1 of 1", "Cloth lay"}},
	} {
		d.Lays = row.lays
		var got []string
		for i := range d.Lays {
			got = append(got, d.LayName(i))
		}
		if !slices.Equal(got, row.want) {
			t.Errorf("%s: %q, want %q", name, got, row.want)
		}
	}
}
