package design

import (
	"math"
	"strings"
	"testing"

	"slingloft/outline/quantity"
)

// What is left out of a design in inches is a round figure on a tape, near the
// metric one; what is given stays as it is, and so does a design in mm.
func TestLeftOutInInches(t *testing.T) {
	text := string(FullStarter(true))
	d, _, err := Read("inches.toml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	for key, v := range map[string]float64{"turn under": d.Channel.TurnUnder, "side": d.Seam.Side, "hem": d.Cap.Hem, "letter": d.Template.Letter} {
		if sixteenths := v / quantity.Inch * 16; math.Abs(sixteenths-math.Round(sixteenths)) > 1e-9 {
			t.Errorf("%s is %g in", key, v/quantity.Inch)
		}
	}
	given, _, err := Read("given.toml", []byte(strings.Replace(text, "\n# turn_under = \"3/8 in\"", "\nturn_under = \"10 mm\"", 1)))
	if err != nil || given.Channel.TurnUnder != 10 {
		t.Errorf("turn_under given as 10 mm is %g, %v", given.Channel.TurnUnder, err)
	}
	metric, _, err := Read("metric.toml", []byte(FullStarter(false)))
	if err != nil || metric.Channel.TurnUnder != 10 || metric.Seam.Side != 12 {
		t.Errorf("in mm: turn under %g, side %g, %v", metric.Channel.TurnUnder, metric.Seam.Side, err)
	}
}

// Both values of a key lie within a third of each other.
func TestLeftOutAlike(t *testing.T) {
	mm, inch := defaults(false), defaults(true)
	for _, r := range allKeys().rows {
		if r.usualIn == "" {
			continue
		}
		a, b := r.get(&mm).(float64), r.get(&inch).(float64)
		if b < a*2/3 || b > a*3/2 {
			t.Errorf("%s: %s and %s", r.key, r.usual, r.usualIn)
		}
	}
}
