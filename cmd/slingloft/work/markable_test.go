package work_test

import (
	"errors"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
)

// A tail between a wide bar and a short leg doubles back: the fault stands at the leg, and
// the leg that would do does.
func TestTailDoublesBack(t *testing.T) {
	_, demo := design.Demo()
	text := string(demo)
	for _, change := range [][2]string{
		{`span = "1500 mm"`, `span = "1480 mm"`}, {`head_bar = "900 mm"`, `head_bar = "2500 mm"`},
		{`side_depth = "205 mm"`, `side_depth = "500 mm"`},
		{"\nhead_leg = \"", "\nhead_leg = \"1400 mm\" # \""}, {`width = "1500 mm"`, `width = "3 m"`},
		{"\ndistance = \"", "\ndistance = \"7 m\" # \""},
		{"\nstock = \"", "\nstock = \"4 m\" # \""},
	} {
		if strings.Count(text, change[0]) != 1 {
			t.Fatalf("%q stands there %d times", change[0], strings.Count(text, change[0]))
		}
		text = strings.Replace(text, change[0], change[1], 1)
	}
	_, err := work.ReadFor("wide.toml", []byte(text), work.Setting{})
	var faults design.Faults
	if !errors.As(err, &faults) || len(faults) != 1 || faults[0].Found.Rule != design.TailDoublesBack || faults[0].Key != design.KeyBedHeadLeg {
		t.Fatalf("%v", err)
	}
	would := strings.Replace(text, `head_leg = "1400 mm"`, `head_leg = "`+faults[0].Hint.Bound.Written+`"`, 1)
	if _, err := work.ReadFor("wide.toml", []byte(would), work.Setting{}); err != nil {
		t.Errorf("with %s: %v", faults[0].Hint.Bound.Written, err)
	}
}
