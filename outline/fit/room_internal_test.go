package fit

import (
	"math"
	"testing"
)

// Where no bed of the bars that room would ask for hangs, for shoulders of a hand, the bar is a
// part of the shoulder breadth, and the reason says so.
func TestBarWithoutRoom(t *testing.T) {
	for _, r := range []struct {
		side bool
		part float64
		why  Why
	}{{false, 1.95, BarOnBack}, {true, 2.1, BarOnSide}} {
		p := Person{Stature: 1200, Mass: 60, OnSide: r.side}
		b := proposer{step: 1}
		b.sleeper(p, 100)
		b.lengths(p)
		b.section(p, 100)
		for _, got := range b.Reasons {
			if got.Key != "bed.head_bar" {
				continue
			}
			if got.Why != r.why || got.Part != r.part || math.Abs(got.Value-100*r.part) > 0.5 {
				t.Errorf("on the side %v: %+v, want %g of 100 for reason %v", r.side, got, r.part, r.why)
			}
		}
	}
}
