package work

import (
	"fmt"
	"strings"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// On smaller and smaller sheets a side that is asked for whole comes in halves before it
// has joints, caps are halves from the first, and a gauge has a joint on none.
func TestHalvesBeforeJoints(t *testing.T) {
	_, demo := design.Demo()
	d, _, err := design.Read("demo.toml", demo)
	if err != nil {
		t.Fatal(err)
	}
	d.Template.Whole = true
	seen := map[string]bool{}
	for _, sheet := range [][2]float64{{2400, 900}, {700, 500}, {560, 380}, {330, 300}} {
		d.Sheet.Width, d.Sheet.Height = sheet[0], sheet[1]
		p, err := ReadFor("d.toml", design.Write(d), Setting{})
		if err != nil {
			t.Fatal(err)
		}
		sides := 0
		for _, q := range p.Templates {
			joint := strings.HasSuffix(q.ID, "of2") || strings.HasSuffix(q.ID, "of3")
			switch {
			case q.Kind == piece.Gauge && joint:
				t.Errorf("%v: %s has a joint", sheet, q.ID)
			case q.ID == "template-cap-head":
				seen["half"] = true
			case strings.HasPrefix(q.ID, "template-cap-head-1of"):
				seen["joint"] = true
			case strings.HasPrefix(q.ID, "template-side"):
				sides++
			}
		}
		seen[fmt.Sprint("sides ", sides > 1)] = true
	}
	for _, what := range []string{"half", "joint", "sides false", "sides true"} {
		if !seen[what] {
			t.Errorf("no sheet gave a case of %s", what)
		}
	}
}
