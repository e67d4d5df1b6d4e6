package given

import (
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/design"
)

// CornerRun returns the cord from a bar's tip to the corner of the tail, the mouth of its
// channel, mm. Cord and channel run beside each other, but the bar's notch on the seam does
// not lie square to the leg at its tip: legs come in towards the apex and rise, walls lean.
func (d *Data) CornerRun(e bed.End) float64 {
	run := d.channelRun(e)
	if run == 0 {
		if run = d.Body.Tips[e]; e == bed.Foot {
			run = d.Body.Side.HungLength() - run
		}
		return run // nothing is sewn
	}
	seam := d.Sewn.Reach // how far inside the cord the net line lies
	if d.Design.Channel.Kind == design.Facing {
		seam -= d.Design.Channel.Depth
	}
	end, at := d.Shape.Ends[e], d.Design.Bed.Span/2
	if e == bed.Head {
		at = -at
	}
	in, rise := end.Bar/2/end.Leg, (end.ApexZ-d.Shape.At(at).Z)/end.Leg
	sin, cos := math.Sincos(end.Section.Wall)
	return run + seam*(float64(cos*in)-float64(sin*rise))
}

// channelRun returns the length of a channel from a bar's notch to its mouth, mm; 0 where
// nothing is sewn.
func (d *Data) channelRun(e bed.End) float64 {
	var bars []float64
	for _, n := range d.Sewn.SideNotches {
		if n.Bar {
			bars = append(bars, n.At)
		}
	}
	switch {
	case len(bars) == 0:
		return 0
	case e == bed.Head:
		return bars[0]
	}
	return d.Sewn.SideNet.HungLength() - bars[len(bars)-1]
}
