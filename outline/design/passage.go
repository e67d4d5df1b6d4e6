package design

import (
	"math"

	"slingloft/outline/quantity"
)

// Widths of what is drawn through a channel, in cord diameters, and the clear width
// that it needs beside its own (shop practice, no source).
const (
	eyeWide  = 3.0 // an eye pulled long
	buryWide = 2.4 // a cord that is filled by its partner
	playWide = 3.0 // mm
)

// LeastPlay is by how much the opening at a bar's tip is at least longer than the tip
// gap, mm: six at either end, for fingers and the knot of a thread (shop practice, no
// source).
const LeastPlay = 12.0

// TipSpread is the least tip gap over tip and cord together: the half angle of the two
// strands round the tip is asin((p + d)/g), and 1/3.9 keeps it under 15°, up to which a
// splice's throat is not torn open (a rope maker's rule for eyes).
const TipSpread = 3.9

// Threading says how a side's cords get into their channel.
type Threading int

// The ways.
const (
	EyesFirst     Threading = iota // the spliced chain is drawn through, an eye ahead
	LastEyeAfter                   // no eye passes: the last one is made after threading
	LoopJoinAfter                  // two runs of one loop are laid in and joined then
)

// Passage is the clear inside of a channel and what has to pass through it, mm.
type Passage struct {
	Clear float64 // flat width from the innermost row of stitching to the fold
	Eye   float64 // width that an eye pulled long asks for; 0 where none passes
	Bury  float64 // width that the thickest bury asks for
	Threading
	// Loose is how far raw edges inside reach past the innermost row, where they snag
	// unless they are bound; 0 where a row catches them.
	Loose float64
}

// Passage returns the inside of the channels.
func (d Design) Passage() Passage {
	rows := d.innerRow()
	p := Passage{Clear: d.Channel.Depth - rows, Bury: buryWide*d.thickest() + playWide}
	p.Loose = max(0, max(d.Seam.Side, d.Channel.TurnUnder-d.Channel.Foot)-rows)
	if d.Splice.Whole {
		p.Threading, p.Bury = LoopJoinAfter, (buryWide+1)*d.Side.Diameter+playWide
		return p
	}
	p.Eye = eyeWide*d.Leg.Diameter + playWide
	if p.Clear < p.Eye {
		p.Threading = LastEyeAfter
	}
	return p
}

// innerRow returns how far inside a channel its innermost row of stitching lies, mm
// from its seam.
func (d Design) innerRow() float64 { return float64(d.Seam.Rows-1) * d.Seam.RowSpacing }

// thickest returns the diameter of the thicker of side cord and leg, mm.
func (d Design) thickest() float64 {
	if d.Splice.Whole {
		return d.Side.Diameter
	}
	return max(d.Side.Diameter, d.Leg.Diameter)
}

// inChannel returns the thickness of the cords that lie side by side in a channel, mm.
func (d Design) inChannel() float64 {
	if d.Splice.Whole {
		return 2 * d.Side.Diameter
	}
	return d.Side.Diameter
}

// MostTip returns how thick the pin of a bar's tip may be, mm, before it tears the splices
// at the ends of its gap open; 0 where the gap has room for none.
func (d Design) MostTip() float64 { return max(0, d.Splice.TipGap/TipSpread-d.thickest()) }

// TipPast returns how far the pin of a tip stands past the shoulder that its cords press on,
// mm: past the cord and as much again twice, so that no cord slips off. Own choice.
func (d Design) TipPast() float64 { return 3 * d.thickest() }

// leastTipGap returns the shortest tip gap in which the strands part round a bar's tip
// without tearing at their splices, mm; 0 where the tip is not known.
func (d Design) leastTipGap() float64 {
	if d.Bar.TipDiameter == 0 {
		return 0
	}
	return TipSpread * (d.Bar.TipDiameter + d.thickest())
}

// need is a width that a channel has to have, mm, and what is wrong without it.
type need struct {
	least float64
	found Finding
}

// depthKeys are the keys that a channel's depth has to fit.
func depthKeys() []Key {
	return []Key{KeyCordSideDiameter, KeyCordLegDiameter, KeyChannelPresserFoot, KeyChannelTurnUnder,
		KeySeamSideAllowance, KeySeamRows, KeySeamRowSpacing, KeySpliceWholeLoop}
}

// checkChannel wants a channel that holds the cord beside the raw edges, and lets
// through what is drawn in.
func (r *reader) checkChannel() {
	d := r.design
	if r.good(KeyChannelDepth, KeyChannelPresserFoot) && d.Channel.Foot >= d.Channel.Depth {
		// What leaves room for cord and allowance as well, where anything does.
		most := d.Channel.Depth - d.Seam.Side - d.inChannel()
		if most < r.keys.byKey[KeyChannelPresserFoot].lo {
			most = d.Channel.Depth - beside(d.Channel.Depth)
		}
		r.bounded(KeyChannelPresserFoot, Found(FootPastDepth, r.show(KeyChannelPresserFoot, d.Channel.Depth)),
			r.atMost(KeyChannelPresserFoot, most))
	}
	if n := r.depth(); r.good(append(depthKeys(), KeyChannelDepth)...) && lacking(d.Channel.Depth, n.least) {
		r.bounded(KeyChannelDepth, n.found, r.atLeast(KeyChannelDepth, n.least))
	}
	r.checkTipGap()
}

// lacking reports whether a length is less than another by more than conversions from
// inches leave over.
func lacking(mm, least float64) bool { return mm < least-1e-9 }

// depth returns what a channel's depth has to be: cord, allowance and the foot's distance lie
// beside each other, and what is drawn in passes beside the innermost row of stitching.
func (r *reader) depth() need {
	d, p := r.design, r.design.Passage()
	show := func(mm float64) string { return r.show(KeyChannelDepth, mm) }
	most := need{}
	for _, n := range []need{
		{d.Seam.Side + d.inChannel() + d.Channel.Foot, Found(ChannelFull, show(d.Seam.Side), show(d.inChannel()), show(d.Channel.Foot))},
		{d.innerRow() + p.Bury, Found(ChannelNarrow, show(max(p.Clear, 0)), show(p.Bury))},
	} {
		if n.least > most.least {
			most = n
		}
	}
	return most
}

// checkTipGap wants a gap that takes the bar's tip, and an opening through which it
// comes out.
func (r *reader) checkTipGap() {
	d := r.design
	known := r.good(KeySpliceTipGap, KeyBarTipDiameter, KeyCordSideDiameter, KeyCordLegDiameter)
	if least := d.leastTipGap(); known && lacking(d.Splice.TipGap, least) {
		r.bounded(KeySpliceTipGap, Found(TipGapShort, r.show(KeyBarTipDiameter, d.Bar.TipDiameter), r.show(KeyCordSideDiameter, d.thickest())),
			r.atLeast(KeySpliceTipGap, least))
	}
	if least := d.Splice.TipGap + LeastPlay; r.good(KeyChannelOpening, KeySpliceTipGap) && lacking(d.Channel.Opening, least) {
		r.bounded(KeyChannelOpening, Found(OpeningShort, r.show(KeyChannelOpening, d.Splice.TipGap)), r.atLeast(KeyChannelOpening, least))
	}
}

// roundStep is to what lengths that are left out are rounded up, mm.
func roundStep(inches bool) float64 {
	if inches {
		return quantity.Inch / 16
	}
	return 1
}

// OpeningFor returns the opening for a tip gap that may lie off its place by half the
// play either way, rounded up to a whole mm or sixteenth of an inch; never less than
// by [LeastPlay], mm.
func (d Design) OpeningFor(play float64) float64 {
	step := roundStep(d.Output.Inches)
	return math.Ceil((d.Splice.TipGap+max(play, LeastPlay))/step-1e-9) * step
}

// fitted sets what is left out of channel and tip gap: the depth and the gap large
// enough for what they hold, where that is more than is usual, and the opening longer
// than the gap by what is handled there; all round in the design's units.
func (r *reader) fitted() {
	d := &r.design
	step := roundStep(d.Output.Inches)
	up := func(usual, least float64) float64 { return max(usual, math.Ceil(least/step-1e-9)*step) }
	if !r.seen(KeyChannelDepth) && r.good(depthKeys()...) {
		d.Channel.Depth = up(d.Channel.Depth, r.depth().least)
	}
	if !r.seen(KeySpliceTipGap) {
		d.Splice.TipGap = up(d.Splice.TipGap, d.leastTipGap())
	}
	if !r.seen(KeyChannelOpening) {
		d.Channel.Opening = d.OpeningFor(LeastPlay)
	}
}
