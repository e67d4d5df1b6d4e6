package work_test

import (
	"context"
	"errors"
	"math"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
)

// Hung as cloth in the round section the built-in design lies level and carries what the
// made bed carries, lying and with its sleeper sitting up; the lines balance the weight.
func TestDrape(t *testing.T) {
	name, data := design.Demo()
	p, err := work.ReadFor(name, data, work.Setting{})
	if err != nil {
		t.Fatal(err)
	}
	for _, how := range []work.Draping{{Round: true}, {Sits: true}} {
		h, err := p.Drape(t.Context(), how)
		if err != nil {
			t.Fatal(err)
		}
		s, ok := p.Beside(how)
		if !ok {
			t.Fatal("the made bed is not found at rest")
		}
		for e := range 2 {
			for what, pair := range map[string][2]float64{"line": {h.Line[e], s.Loads.Line[e]}, "leg": {h.Leg[e], s.Loads.Leg[e][0]}, "bar": {h.Bar[e], s.Loads.Bar[e]}} {
				if off := pair[0]/pair[1] - 1; math.Abs(off) > 0.01 {
					t.Errorf("sitting %v: %s %d differs by %.1f %%", how.Sits, what, e, 100*off)
				}
			}
		}
		if off := (h.Vertical[0]+h.Vertical[1])/h.Weight - 1; math.Abs(off) > 1e-3 {
			t.Errorf("sitting %v: the lines carry the weight to %g", how.Sits, off)
		}
		if !how.Sits && math.Abs(h.Height(h.Crown)-h.Height(0))+math.Abs(h.Height(h.Soles)-h.Height(0)) > 2.5 {
			t.Errorf("bottom at %g, %g and %g", h.Height(h.Crown), h.Height(0), h.Height(h.Soles))
		}
	}
	stop, cancel := context.WithCancel(t.Context())
	cancel()
	if _, err := p.Drape(stop, work.Draping{}); !errors.Is(err, context.Canceled) {
		t.Errorf("stopped: %v", err)
	}
}
