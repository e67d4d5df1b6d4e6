package quantity_test

import (
	"errors"
	"testing"

	"slingloft/outline/quantity"
	"slingloft/outline/wordstest"
)

// TestSwapped breaks every rule once. With every word of the table swapped for another
// the error is the same but for what a person reads.
func TestSwapped(t *testing.T) {
	swapped := wordstest.Reversed(quantity.English())
	broken := map[quantity.Rule]bool{}
	for _, row := range []struct {
		text string
		of   quantity.Dimension
		want string
	}{
		{"1" + string(make([]byte, 70)), quantity.Length, ""},
		{"\xff mm", quantity.Length, "\"\ufffd mm\" is not valid text; write a length in mm, cm, m, in, ft, yd"},
		{"", quantity.Mass, `"" is empty; write a mass in kg, g, lb, oz`},
		{"mm", quantity.Angle, `"mm" does not begin with a number; write an angle in deg, rad`},
		{"5 mm,", quantity.Length, ""},
		{"5 mm x", quantity.Length, `"5 mm x" goes on with "x" after its unit; write one number and one unit`},
		{"5 ft 8", quantity.Length, `"5 ft 8" ends in a number without unit; write "5 ft 8 in"`},
		{"5.5 ft 8 in", quantity.Length, `"5.5 ft 8 in" has a part of one ft before the in; write a whole number of ft or one unit only`},
		{"5 m 8 cm", quantity.Length, ""},
		{"5 ft 14 in", quantity.Length, `"5 ft 14 in" has more in than one ft holds; carry them over to the ft`},
		{"5,5 mm", quantity.Length, ""},
		{"5.5.5 mm", quantity.Length, ""},
		{"5 3/2 in", quantity.Length, ""},
		{"5/0 in", quantity.Length, ""},
		{"5\tmm", quantity.Length, ""},
		{"5e3 mm", quantity.Length, `"5e3 mm" has an exponent; write the number out`},
		{"5 furlongs", quantity.Length, `"5 furlongs" has the unknown unit "furlongs"; write a length in mm, cm, m, in, ft, yd`},
		{"5 furlongs", quantity.Ratio, `"5 furlongs" has the unknown unit "furlongs"; write a ratio, such as 0.15 or "15 %"`},
		{"5 MM", quantity.Length, `"5 MM" has the unknown unit "MM"; write "5 mm"`},
		{"5", quantity.Length, `"5" has no unit; write "5 mm" (or cm, m, in, ft, yd)`},
		{"5 mm", quantity.Mass, `"5 mm" is a length; write a mass in kg, g, lb, oz`},
		{"5 kg", quantity.Force, `"5 kg" is a mass; write a force, such as "5 kgf"`},
		{"5 oz", quantity.ArealDensity, `"5 oz" is a mass; write a mass per area, such as "5 oz/yd²"`},
		{"5 kg", quantity.Ratio, `"5 kg" is a mass; write a ratio, such as 0.15 or "15 %"`},
	} {
		_, err := quantity.As(row.text, row.of)
		var e *quantity.Error
		if !errors.As(err, &e) {
			t.Errorf("%q: %v", row.text, err)
			continue
		}
		broken[e.Rule] = true
		if got := e.Error(); row.want != "" && got != row.want {
			t.Errorf("%q: %s\nwant %s", row.text, got, row.want)
		}
		if now := swapped.Text(e); now == e.Error() {
			t.Errorf("%q: %s in other words too", row.text, now)
		}
	}
	for r := range quantity.RuleCount {
		// No text of so few characters is beyond what a float64 holds.
		if !broken[r] && r != quantity.NotFinite {
			t.Errorf("nothing breaks rule %d", r)
		}
	}
}
