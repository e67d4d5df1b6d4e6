package quantity_test

import (
	"math"
	"testing"

	"slingloft/outline/quantity"
)

// Each type is kept in the unit that it is named for: one of that unit, as a maker
// writes it, is read as 1.
func TestStored(t *testing.T) {
	for _, c := range []struct {
		unit string
		is   quantity.Dimension
	}{
		{"1 kg", quantity.Kilograms(0).Dimension()},
		{"1 N", quantity.Newtons(0).Dimension()},
		{"1 rad", quantity.Radians(0).Dimension()},
		{"1 g/m²", quantity.GramsPerSquareMetre(0).Dimension()},
		{"1 g/m", quantity.GramsPerMetre(0).Dimension()},
		{"1 N/mm", quantity.NewtonsPerMillimetre(0).Dimension()},
		{"1 N/mm²", quantity.NewtonsPerSquareMillimetre(0).Dimension()},
		{"1 kg/m³", quantity.KilogramsPerCubicMetre(0).Dimension()},
		{"1 mm/min", quantity.MillimetresPerMinute(0).Dimension()},
	} {
		if q, err := quantity.As(c.unit, c.is); err != nil || q.Value != 1 {
			t.Errorf("As(%q, %v) = %v, %v, want 1", c.unit, c.is, q.Value, err)
		}
	}
}

// What one quantity makes of another. The pound-force in newtons is that of NIST
// SP 811, appendix B.8; a litre of water weighs a kilogram.
func TestBetweenQuantities(t *testing.T) {
	for _, c := range []struct {
		what      string
		got, want float64
	}{
		{"weight of a pound, N", float64(quantity.Kilograms(quantity.Pound).Weight()), 4.4482216152605},
		{"mass of 2.5 kg, g", quantity.Kilograms(2.5).Grams(), 2500},
		{"weight of 1 kg on a square metre, Pa", 1e6 * float64(quantity.GramsPerSquareMetre(1000).Weight()), quantity.Gravity},
		{"2 m by 1.5 m of 70 g/m², g", quantity.GramsPerSquareMetre(70).Grams(2000 * 1500), 210},
		{"3 m of 5 g/m, g", quantity.GramsPerMetre(5).Grams(3000), 15},
		{"a litre of water, kg", quantity.KilogramsPerCubicMetre(1000).PerCubicMillimetre() * 100 * 100 * 100, 1},
		{"cos 60°", quantity.Degrees(60).Cos(), 0.5},
		{"tan −45°", quantity.Degrees(-45).Tan(), -1},
		{"no mass", float64(quantity.Kilograms(0).Weight()), 0},
	} {
		if math.Abs(c.got-c.want) > 1e-13*max(1, math.Abs(c.want)) {
			t.Errorf("%s: got %.16g, want %.16g", c.what, c.got, c.want)
		}
	}
}
