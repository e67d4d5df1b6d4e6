package quantity

import (
	"errors"
	"math"
	"strings"
	"testing"
)

func TestParse(t *testing.T) {
	tests := []struct {
		text string
		dim  Dimension
		want float64
	}{
		// ordinary
		{"1650 mm", Length, 1650},
		{"165 cm", Length, 1650},
		{"1.65 m", Length, 1650},
		{"1650mm", Length, 1650},
		{"65 in", Length, 1651},
		{"65in", Length, 1651},
		{`65"`, Length, 1651},
		{"65″", Length, 1651},
		{"7 1/2 in", Length, 190.5},
		{"7-1/2 in", Length, 190.5},
		{"7½ in", Length, 190.5},
		{"7 ½ in", Length, 190.5},
		{"½ in", Length, 12.7},
		{"3/16 in", Length, 25.4 * 3 / 16},
		{"5 ft 8 in", Length, 68 * 25.4},
		{"5 ft 8 1/2 in", Length, 68.5 * 25.4},
		{`5' 8 1/2"`, Length, 68.5 * 25.4},
		{`5'8"`, Length, 68 * 25.4},
		{"2 yd", Length, 1828.8},
		{"-3 1/2 in", Length, -88.9},
		{"−40 mm", Length, -40},
		{"+40 mm", Length, 40},
		{".5 mm", Length, 0.5},
		{"82 kg", Mass, 82},
		{"180 lb", Mass, 180 * 0.45359237},
		{"12 lb 8 oz", Mass, 12.5 * 0.45359237},
		{"5400 g", Mass, 5.4},
		{"9 kN", Force, 9000},
		{"90 daN", Force, 900},
		{"30 deg", Angle, math.Pi / 6},
		{"30°", Angle, math.Pi / 6},
		{"0.5 rad", Angle, 0.5},
		{"62 g/m²", ArealDensity, 62},
		{"62 g/m2", ArealDensity, 62},
		{"5.1 g/m", LinearDensity, 5.1},
		{"600 N/50 mm", LineForce, 12},
		{"600 N/50mm", LineForce, 12},
		{"60 daN/5 cm", LineForce, 12},
		{"12 kN/m", LineForce, 12},
		{"12000 N/m", LineForce, 12},
		{"68.9 GPa", Stress, 68900},
		{"241 N/mm²", Stress, 241},
		{"241 MPa", Stress, 241},
		{"2710 kg/m³", Density, 2710},
		{"2.71 g/cm3", Density, 2710},
		{"0.15", Ratio, 0.15},
		{"15 %", Ratio, 0.15},
		// degenerate
		{"0 mm", Length, 0},
		{"-0 mm", Length, 0},
		{"  12 mm  ", Length, 12},
		{"12\u00a0mm", Length, 12},
		{"0/8 in", Length, 0},
		{"0 ft 0 in", Length, 0},
	}
	for _, tc := range tests {
		q, err := As(tc.text, tc.dim)
		if err != nil {
			t.Errorf("As(%q, %v): %v", tc.text, tc.dim, err)
			continue
		}
		if diff := math.Abs(q.Value - tc.want); diff > 1e-12*math.Abs(tc.want) {
			t.Errorf("As(%q, %v) = %.10g, want %.10g", tc.text, tc.dim, q.Value, tc.want)
		}
		if math.Signbit(q.Value) && q.Value == 0 {
			t.Errorf("As(%q, %v) is a negative zero", tc.text, tc.dim)
		}
	}
}

// Published factors: NIST SP 811 (2008), appendix B.8, to the seven figures that
// are printed there.
func TestFactors(t *testing.T) {
	tests := []struct {
		text string
		dim  Dimension
		want float64
	}{
		{"1 lbf", Force, 4.448222},
		{"1 kgf", Force, 9.80665},
		{"1 oz", Mass, 0.02834952},
		{"1 oz/yd²", ArealDensity, 33.90575},
		{"1 psi", Stress, 6.894757e-3},
		{"1 ksi", Stress, 6.894757},
		{"1 lbf/in", LineForce, 0.1751268},
		{"1 lb/in³", Density, 27679.90},
	}
	for _, tc := range tests {
		q, err := As(tc.text, tc.dim)
		if err != nil || math.Abs(q.Value-tc.want) > 5e-7*tc.want {
			t.Errorf("As(%q) = %.10g, %v, want %v", tc.text, q.Value, err, tc.want)
		}
	}
}

func TestParseFaults(t *testing.T) {
	tests := []struct {
		text string
		dim  Dimension
		want string // part of the message
	}{
		{"1650", Length, `"1650" has no unit; write "1650 mm" (or cm, m, in, ft, yd)`},
		{"", Length, "is empty"},
		{"   ", Length, "is empty"},
		{"mm", Length, "does not begin with a number"},
		{". mm", Length, "does not begin with a number"},
		{"1,650 mm", Length, "comma"},
		{"7,5 mm", Length, "decimal point"},
		{"1.2.3 mm", Length, "cannot be read"},
		{"1/0 in", Length, "denominator above 0"},
		{"7 9/8 in", Length, "fraction of 1 or more"},
		{"1.5/2 in", Length, "fraction that cannot be read"},
		{"99999999999/2 in", Length, "fraction that cannot be read"},
		{"1e3 mm", Length, "exponent"},
		{"82 kg", Length, "is a mass; write a length in mm, cm, m, in"},
		{"900 kg", Force, `is a mass; write a force, such as "900 kgf"`},
		{"200 lb", Force, `such as "200 lbf"`},
		{"1.1 oz", ArealDensity, `is a mass; write a mass per area, such as "1.1 oz/yd²"`},
		{"48 g", ArealDensity, `such as "48 g/m²"`},
		{"5 g", LinearDensity, `such as "5 g/m"`},
		{"around 20", Angle, "write an angle in deg, rad"},
		{"5 mm", Ratio, `write a ratio, such as 0.15`},
		{"5 MM", Length, `unknown unit "MM"; write "5 mm"`},
		{"5 Kg", Mass, `write "5 kg"`},
		{"5 furlong", Length, `unknown unit "furlong"; write a length in mm, cm`},
		{"48 gsm", ArealDensity, `write "48 g/m²"`},
		{"5 mm 3 mm", Length, "several numbers"},
		{"1 m 20 cm", Length, "several numbers"},
		{"5 ft 8", Length, "number without unit"},
		{"5 ft 12 in", Length, "carry them over"},
		{"5.5 ft 3 in", Length, "whole number of ft"},
		{"5 mm mm", Length, "after its unit"},
		{"5\tmm", Length, "tab or a line end"},
		{"5 mm\n", Length, "after its unit"},
		{"5 g/m3", LinearDensity, "unknown unit"},
		{"inf mm", Length, "does not begin with a number"},
		{"nan mm", Length, "does not begin with a number"},
		{"0x10 mm", Length, "unknown unit"},
		{"--5 mm", Length, "does not begin with a number"},
		{"\xff mm", Length, "not valid text"},
		{strings.Repeat("9", 61) + " mm", Length, ""}, // long but finite
		{strings.Repeat("9", 70) + " mm", Length, "too long"},
	}
	for _, tc := range tests {
		_, err := As(tc.text, tc.dim)
		if tc.want == "" {
			if err != nil {
				t.Errorf("As(%q, %v): %v", tc.text, tc.dim, err)
			}
			continue
		}
		var f *Error
		if !errors.As(err, &f) {
			t.Errorf("As(%q, %v) = %v, want an *Error with %q", tc.text, tc.dim, err, tc.want)
			continue
		}
		if !strings.Contains(f.Error(), tc.want) || strings.ContainsAny(f.Error(), "\n\t") {
			t.Errorf("As(%q, %v): %q, want %q", tc.text, tc.dim, f.Error(), tc.want)
		}
	}
}

func FuzzParse(f *testing.F) {
	for _, s := range []string{"1650 mm", "7 1/2 in", `5' 8"`, "600 N/50 mm", "15 %", "-½ in",
		"1e9 mm", "7-1/2 in", "12 lb 8 oz", "9/0 in", "\xf0 mm"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		q, err := Parse(text)
		if err != nil {
			if msg := err.Error(); strings.ContainsAny(msg, "\n\r\t\x00") || len(msg) > 600 {
				t.Errorf("Parse(%q): message %q", text, msg)
			}
			return
		}
		if math.IsNaN(q.Value) || math.IsInf(q.Value, 0) {
			t.Fatalf("Parse(%q) = %v", text, q.Value)
		}
		d := q.Unit.Dimension
		again, err := As(d.Text(q.Value), d)
		if len(d.Text(q.Value)) <= MaxLength && (err != nil || again.Value != q.Value) {
			t.Errorf("As(%q) = %v, %v, want %v", d.Text(q.Value), again.Value, err, q.Value)
		}
	})
}
