package design

import (
	"math"
	"testing"
)

// What passes a channel, by hand: 20 mm deep, two rows 6 mm apart, cord of 3 mm. An
// eye takes 3 · 3 + 3, a bury 2.4 · 3 + 3, a loop's join its bury and the other run.
func TestPassage(t *testing.T) {
	base := Defaults()
	base.Side.Diameter, base.Leg.Diameter = 3, 3
	base.Channel = Channel{Depth: 20, TurnUnder: 9, Foot: 2}
	base.Seam.Side, base.Seam.Rows, base.Seam.RowSpacing = 12, 2, 6
	for _, tc := range []struct {
		name   string
		change func(*Design)
		want   Passage
	}{
		{"eyes first", func(*Design) {}, Passage{Clear: 14, Eye: 12, Bury: 10.2, Loose: 6}},
		{"just an eye", func(d *Design) { d.Channel.Depth = 18 }, Passage{Clear: 12, Eye: 12, Bury: 10.2, Loose: 6}},
		{"no eye", func(d *Design) { d.Channel.Depth = 17.5 }, Passage{Clear: 11.5, Eye: 12, Bury: 10.2, Loose: 6, Threading: LastEyeAfter}},
		{"raw edges caught", func(d *Design) { d.Seam.RowSpacing, d.Channel.Depth = 12, 30 }, Passage{Clear: 18, Eye: 12, Bury: 10.2}},
		{"the turn-under snags", func(d *Design) { d.Seam.Side = 5 }, Passage{Clear: 14, Eye: 12, Bury: 10.2, Loose: 1}},
		{"thin leg", func(d *Design) { d.Leg.Diameter = 2 }, Passage{Clear: 14, Eye: 9, Bury: 10.2, Loose: 6}},
		{"loop", func(d *Design) { d.Splice.Whole = true }, Passage{Clear: 14, Bury: 13.2, Loose: 6, Threading: LoopJoinAfter}},
	} {
		d := base
		tc.change(&d)
		got := d.Passage()
		for _, v := range [][2]float64{{got.Clear, tc.want.Clear}, {got.Eye, tc.want.Eye}, {got.Bury, tc.want.Bury}, {got.Loose, tc.want.Loose}} {
			if math.Abs(v[0]-v[1]) > 1e-9 || got.Threading != tc.want.Threading {
				t.Errorf("%s: %+v, want %+v", tc.name, got, tc.want)
			}
		}
	}
}

// The least gap round a tip keeps both strands within 15° of each other's middle, and
// no more than a hundredth is given away.
func TestLeastTipGap(t *testing.T) {
	for _, tip := range []float64{4, 8, 12.7} {
		for _, cord := range []float64{2, 3, 5} {
			d := Design{Side: Cord{Diameter: cord}, Leg: Cord{Diameter: cord}, Bar: Bar{TipDiameter: tip}}
			half := math.Asin((tip+cord)/d.leastTipGap()) * 180 / math.Pi
			if half > 15 || half < 14.8 {
				t.Errorf("tip %g, cord %g: strands stand %g° open", tip, cord, half)
			}
		}
	}
	if g := (Design{}).leastTipGap(); g != 0 {
		t.Errorf("a tip that is not known asks for %g mm", g)
	}
}

// An opening is longer than its gap by what it has to be, rounded up and no further.
func TestOpeningFor(t *testing.T) {
	for _, tc := range []struct {
		inches          bool
		gap, play, want float64
	}{
		{false, 24, 0, 36}, {false, 24, 12, 36}, {false, 44, 13.6, 58}, {false, 24.5, 12, 37},
		{true, 25.4, 0, 25.4 * 1.5}, {true, 25.4, 12.7, 25.4 * 1.5}, {true, 25.4, 13, 25.4 * 25 / 16},
	} {
		d := Design{Output: Output{Inches: tc.inches}, Splice: Splice{TipGap: tc.gap}}
		if got := d.OpeningFor(tc.play); math.Abs(got-tc.want) > 1e-9 {
			t.Errorf("gap %g, play %g: %g, want %g", tc.gap, tc.play, got, tc.want)
		}
	}
}
