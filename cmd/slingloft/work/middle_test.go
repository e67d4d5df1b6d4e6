package work_test

import (
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/cord"
)

// The middle mark of a cord meets the middle notch of its channel, though tails of unequal
// length move that notch off mid-bay: drawn from the head's bar the way along the cord is the
// way along the seam, but for what the cord is cut shorter and runs further out.
func TestMiddleMarkMeetsNotch(t *testing.T) {
	data, err := os.ReadFile(filepath.Join("..", "..", "..", "testdata", "design", "small.toml"))
	if err != nil {
		t.Fatal(err)
	}
	for name, more := range map[string]string{"chain": "", "loop": "[splice]\nwhole_loop = true\n\n"} {
		text := strings.NewReplacer(`"165 mm"`, `"130 mm"`, `"190 mm"`, `"215 mm"`, "[hang]\n", more+"[hang]\n").Replace(string(data))
		p, err := work.ReadFor("tails.toml", []byte(text), work.Setting{})
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		notch := map[string]float64{}
		for _, n := range p.Sewn.SideNotches {
			notch[n.Name] = n.At
		}
		head, foot := notch["L3"]-notch["L1"], notch["L5"]-notch["L3"]
		if math.Abs(head-foot) < 20 {
			t.Fatalf("%s: notches %v: the middle notch lies at mid-bay", name, notch)
		}
		var tips []float64
		middle := math.NaN()
		for _, n := range p.Cords.Nodes(p.Cords.ReadPull()) {
			switch n.Spot.Kind {
			case cord.Tip:
				if len(tips) == 0 || n.At-tips[len(tips)-1] > 1 {
					tips = append(tips, n.At)
				}
			case cord.Middle:
				middle = n.At
			}
		}
		if len(tips) != 2 {
			t.Fatalf("%s: tips at %v", name, tips)
		}
		const off = 2.0 // mm
		if got := middle - tips[0]; math.Abs(got-head) > off {
			t.Errorf("%s: from the head tip to the middle mark %.1f mm, to the notch %.1f mm", name, got, head)
		}
		if got := tips[1] - middle; math.Abs(got-foot) > off {
			t.Errorf("%s: from the middle mark to the foot tip %.1f mm, to the notch %.1f mm", name, got, foot)
		}
	}
}
