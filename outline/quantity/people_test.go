package quantity_test

import (
	"testing"

	"slingloft/outline/quantity"
)

// Known amounts in both systems: 1 lbf is 4.4482216 N and 1 lbf/in 0.17512684 N/mm
// (NIST SP 811, appendix B.8), an ounce 28.349523 g, a yard 0.9144 m.
func TestForPeople(t *testing.T) {
	metric, inch := quantity.Style{}, quantity.Style{Inches: true}
	for _, tc := range []struct{ what, got, want string }{
		{"force", metric.Force(912.4), "912 N"},
		{"force", inch.Force(444.82216), "100 lbf"},
		{"force", inch.Force(-4.4482216), "-1 lbf"},
		{"per width", metric.PerWidth(0.7634), "0.76 N/mm"},
		{"per width", inch.PerWidth(17.512684), "100.00 lbf/in"},
		{"force, rounded up", metric.ForceUp(4547.01), "4548 N"},
		{"force that is round", metric.ForceUp(4547), "4547 N"},
		{"force of some pounds, rounded up", inch.ForceUp(10 * 4.4482216152605), "10 lbf"},
		{"force of some pounds and a little", inch.ForceUp(10.1 * 4.4482216152605), "11 lbf"},
		{"per width, rounded up", metric.PerWidthUp(9.8701), "9.88 N/mm"},
		{"per width, rounded up", inch.PerWidthUp(17.5128), "100.01 lbf/in"},
		{"per length", metric.PerLengthFigure(0.5554) + " " + metric.PerLengthUnit(), "555 N/m"},
		{"per length", inch.PerLengthFigure(0.52538052) + " " + inch.PerLengthUnit(), "3.00 lbf/in"},
		{"weight", metric.Weight(261.4) + " " + metric.WeightUnit(), "261 g"},
		{"weight", inch.Weight(283.49523) + " " + inch.WeightUnit(), "10.0 oz"},
		{"run", metric.Metres(2.49) + " " + metric.RunUnit(), "2.49 m"},
		{"run", inch.Metres(9.144) + " " + inch.RunUnit(), "10.00 yd"},
		{"run", inch.Metres(9.1441) + " " + inch.RunUnit(), "10.01 yd"},
		{"price", quantity.Decimal(inch.PerRun(10), 3), "9.144"},
		{"price", quantity.Decimal(metric.PerRun(10), 3), "10.000"},
	} {
		if tc.got != tc.want {
			t.Errorf("%s: %q, want %q", tc.what, tc.got, tc.want)
		}
	}
}
