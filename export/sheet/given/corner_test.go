package given_test

import (
	"math"
	"testing"

	"slingloft/export/sheet/giventest"
	"slingloft/outline/bed"
)

// A channel runs beside its cord: its mouth lies as far along the leg as the channel is long
// past the bar's notch, but for what the notch lies aside of the tip, at most the distance of
// seam and cord. Where the end stands upright, as here, the cord's own corner lies there too.
func TestCornerRun(t *testing.T) {
	for _, lines := range [][]string{nil, {`kind = "strip"`, `kind = "facing"`}} {
		d := giventest.Sewn(t, lines...)
		side, net := d.Body.Side.HungLength(), d.Sewn.SideNet.HungLength()
		cord := [2]float64{d.Body.Tips[bed.Head], side - d.Body.Tips[bed.Foot]}
		notches := d.Sewn.SideNotches
		channel := [2]float64{notches[0].At, net - notches[len(notches)-1].At}
		for e := range bed.Foot + 1 {
			run := d.CornerRun(e)
			if math.Abs(run-channel[e]) > d.Sewn.Reach {
				t.Errorf("%s: %g mm along the leg, the channel is %g long", e, run, channel[e])
			}
			if math.Abs(run-cord[e]) > 3 {
				t.Errorf("%s: %g mm along the leg, the cord's corner lies at %g", e, run, cord[e])
			}
		}
	}
}

// Where nothing is sewn the cord's own corner is told.
func TestCornerRunUnsewn(t *testing.T) {
	d := giventest.Hung(t)
	if got, want := d.CornerRun(bed.Head), d.Body.Tips[bed.Head]; got != want || got <= 0 {
		t.Errorf("%g, want %g", got, want)
	}
}
