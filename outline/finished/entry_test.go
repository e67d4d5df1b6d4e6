package finished_test

import (
	"math"
	"testing"

	"slingloft/outline/bed"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
	"slingloft/outline/numeric"
)

// seat is one of 70 kg on 360 mm of a cord at mid-bay.
var seat = hung.EvenLoad(70*hung.Gravity, -180, 180)

// entered is a bed whose legs are scaled, made of what stretches.
func entered(t testing.TB, scale float64) (finished.Hammock, finished.Entry) {
	t.Helper()
	q := problem()
	q.ClothWeight = 70e-9 * hung.Gravity
	q.Bed.HeadLeg *= scale
	q.Bed.FootLeg *= scale
	_, s := made(t, q)
	h := finished.Make(finished.Made{Shape: &s, Lines: lines, SideEA: 200e3, LegEA: 200e3, LineEA: 200e3, Weft: 60})
	e, err := h.Enter(finished.Change{}, bed.Left, seat)
	if err != nil {
		t.Fatal(err)
	}
	return h, e
}

// One who gets in hangs where the energy is least, whether the other cord is taut
// or slack: as a finer net of springs that only pull has it.
func TestEntryLeastEnergy(t *testing.T) {
	for _, scale := range []float64{0.75, 1, 1.25, 2} {
		h, e := entered(t, scale)
		if want := scale == 2; e.Slack != want {
			t.Errorf("legs × %g: slack %v, want %v", scale, e.Slack, want)
		}
		j := newJudge(sketch{shape: h.Shape, sideEA: 200e3, legEA: 200e3, lineEA: 200e3, weft: 60, load: seat})
		for i := range j.springs {
			j.springs[i].slack = true
		}
		for _, k := range j.bars {
			j.springs[k].slack = false
		}
		for _, r := range j.ribs {
			j.weight[r.left] += r.body + (r.weight-r.body)/2
			j.weight[r.right] += (r.weight - r.body) / 2
			j.springs = append(j.springs, spring{r.left, r.right, 2 * r.half, r.weft, true})
		}
		j.ribs = nil
		j.rest(t)
		const mm, part = 1.5, 0.01
		for end := range 2 {
			near(t, "line", e.Line[end], j.pull(j.lines[end]), part*e.Line[end])
			near(t, "bar", e.Bar[end], -j.pull(j.bars[end]), part*e.Line[end])
			near(t, "tip", e.Tips[end][0].Minus(j.at[j.tips[end][0]]).Len(), 0, mm)
			near(t, "apex", e.Apex[end].Minus(j.at[j.apex[end]]).Len(), 0, mm)
		}
		greatest := 0.0
		for _, k := range j.cords[0] {
			greatest = max(greatest, j.pull(k))
		}
		near(t, "cord", e.Side[0], greatest, part*greatest)
	}
}

// A bed of alike ends whose other cord is slack is one string between two anchors: a
// catenary under the seat, straight beyond. Its closed form gives the pull.
func TestEntryIsOneString(t *testing.T) {
	q := problem()
	b := &q.Bed
	b.FootBar, b.FootTail, b.FootRadius, b.SeatRadius = b.HeadBar, b.HeadTail, b.HeadRadius, b.HeadRadius
	b.HeadLeg, b.FootLeg = 1700, 1700
	q.BarWeight = [2]float64{}
	q.Load = hung.EvenLoad(700, -600, 600)
	_, s := made(t, q)
	const line, half = 1000.0, 150.0
	h := finished.Make(finished.Made{Shape: &s, Lines: [2]float64{line, line}})
	weight := 700.0
	e, err := h.Enter(finished.Change{}, bed.Left, hung.EvenLoad(weight, -half, half))
	if err != nil {
		t.Fatal(err)
	}
	under := s.Arc(-half, half) / 2
	straight := line + s.Ends[0].Leg + s.SideArc/2 - under
	between := h.Anchor(hung.Foot).X - h.Anchor(hung.Head).X
	thrust, err := numeric.Root(func(thrust float64) float64 {
		slope := weight / 2 / thrust
		return straight/math.Hypot(1, slope) + under/slope*math.Asinh(slope) - between/2
	}, 10, 1e5, 1e-9)
	if err != nil {
		t.Fatal(err)
	}
	want := math.Hypot(thrust, weight/2)
	if !e.Slack {
		t.Error("the other cord is taut")
	}
	for end := range 2 {
		near(t, "line", e.Line[end], want, 2e-3*want)
		near(t, "leg", e.Leg[end][0], want, 2e-3*want)
		near(t, "bar", e.Bar[end], 0, 1e-3*want)
	}
	near(t, "cord", e.Side[0], want, 2e-3*want)
	near(t, "seat", e.Seat.Y, 0, 0.5)
}

// What is sat on at the left is the mirror of what is sat on at the right.
func TestEntryMirror(t *testing.T) {
	h, l := entered(t, 1)
	r, err := h.Enter(finished.Change{}, bed.Right, seat)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "seat", l.Seat.Z, r.Seat.Z, 1e-3)
	near(t, "line", l.Line[0], r.Line[0], 1e-2)
	near(t, "cord", l.Side[0], r.Side[1], 1e-2)
}

func BenchmarkEnter(b *testing.B) {
	h, _ := entered(b, 1)
	for b.Loop() {
		if _, err := h.Enter(finished.Change{}, bed.Left, seat); err != nil {
			b.Fatal(err)
		}
	}
}
