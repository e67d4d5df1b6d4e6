package design

import (
	"fmt"
	"math"
)

// fids is the default length of a bury in cord diameters: three fids of 21
// (common practice, no source).
const fids = 63

// buries returns the lengths of a bury and of an eye's own bury, in mm.
func (d Design) buries(c Cord) (bury, eye float64) {
	bury = d.Splice.Bury
	if bury == 0 {
		bury = fids * c.Diameter
	}
	eye = d.Splice.EyeBury
	if eye == 0 {
		eye = bury
	}
	return bury, eye
}

// checkBuries wants cords long enough for what is buried in them.
func (r *reader) checkBuries() {
	d := r.design
	if d.Splice.Whole || !r.good("splice.bury", "splice.eye_bury", "splice.whole_loop", "cord.side.diameter", "cord.leg.diameter") {
		return
	}
	inSide, _ := d.buries(d.Leg)
	if r.good("bed.span") && 2*inSide >= d.Bed.Span {
		r.wants("splice.bury", "two buries of "+r.show("splice.bury", inSide)+" do not fit in the side cord", r.below("splice.bury", d.Bed.Span/2), "")
		return
	}
	inLeg, own := d.buries(d.Side)
	for _, leg := range []struct {
		key string
		l   float64
	}{{"bed.head_leg", d.Bed.HeadLeg}, {"bed.foot_leg", d.Bed.FootLeg}} {
		if r.good(leg.key) && inLeg+own >= leg.l {
			r.wants(leg.key, "is too short for its two buries, "+r.show(leg.key, inLeg)+" and "+r.show(leg.key, own),
				r.above(leg.key, inLeg+own), ", or a shorter splice.bury")
		}
	}
}

// checkEye keeps taper and eye loss within what they are part of.
func (r *reader) checkEye() {
	d := r.design
	bury, _ := d.buries(d.Leg)
	if r.good("splice.bury", "splice.taper", "cord.leg.diameter") && d.Splice.Taper >= bury {
		r.wants("splice.taper", "is not shorter than the bury, "+r.show("splice.taper", bury), r.below("splice.taper", bury), "")
	}
	if r.good("splice.eye", "splice.eye_loss") && d.Splice.EyeLoss >= d.Splice.Eye {
		r.wants("splice.eye_loss", "is not less than the eye, "+r.show("splice.eye_loss", d.Splice.Eye), r.below("splice.eye_loss", d.Splice.Eye), "")
	}
}

// checkChannel wants a channel that the cord fits in: two layers of its depth go
// around half the cord each.
func (r *reader) checkChannel() {
	d := r.design
	if least := math.Pi / 2 * d.Side.Diameter; r.good("channel.depth", "cord.side.diameter") && d.Channel.Depth < least {
		r.wants("channel.depth", "is too narrow for a cord of "+r.show("channel.depth", d.Side.Diameter), r.atLeast("channel.depth", least), "")
	}
	if r.good("channel.opening", "splice.tip_gap") && d.Channel.Opening < d.Splice.TipGap {
		r.wants("channel.opening", "is shorter than the tip gap, "+r.show("channel.opening", d.Splice.TipGap), r.atLeast("channel.opening", d.Splice.TipGap), "")
	}
	if r.good("channel.depth", "channel.presser_foot") && d.Channel.Foot >= d.Channel.Depth {
		r.wants("channel.presser_foot", "lies past the channel's depth, "+r.show("channel.presser_foot", d.Channel.Depth),
			r.below("channel.presser_foot", d.Channel.Depth), "")
	}
}

// leastDrawstring is the narrowest channel that a drawstring is threaded through,
// mm: own choice.
const leastDrawstring = 8

// checkCap keeps the cap's top edge above the bed.
func (r *reader) checkCap() {
	c := r.design.Cap
	if c.Kind == Gathered && r.good("cap.kind") {
		if r.source.Given("cap.hollow") && r.good("cap.hollow") {
			r.conflict("cap.hollow", "belongs to an end cap, but the ends are gathered", "leave it out, or write another kind")
		}
		if r.good("cap.hem") && c.Hem < leastDrawstring {
			r.wants("cap.hem", "leaves no room for the drawstring of a gathered end", r.atLeast("cap.hem", leastDrawstring), "")
		}
		return
	}
	for _, s := range r.sections() {
		if s.dropValue > 0 && r.good("cap.hollow", s.drop) && c.Hollow >= s.dropValue {
			r.wants("cap.hollow", "reaches the bed: the drop is "+r.show("cap.hollow", s.dropValue), r.below("cap.hollow", s.dropValue), "")
			return
		}
	}
}

// checkBar keeps the tube a tube and its tips apart.
func (r *reader) checkBar() {
	d := r.design
	if r.good("bar.wall", "bar.outer_diameter") && d.Bar.Wall >= d.Bar.Outer/2 {
		r.wants("bar.wall", "is half the outer diameter or more", r.below("bar.wall", d.Bar.Outer/2), "; leave it out for a solid bar")
	}
	shorter := min(d.Bed.HeadBar, d.Bed.FootBar)
	if r.good("bar.tip_reach", "bed.head_bar", "bed.foot_bar") && 2*d.Bar.TipReach >= shorter {
		r.wants("bar.tip_reach", "two tips reach across the whole bar", r.below("bar.tip_reach", shorter/2), "")
	}
}

// checkStock wants each bar to come out of one stock length.
func (r *reader) checkStock() {
	d := r.design
	if d.Bar.Stock == 0 || !r.good("bar.stock", "bar.tip_reach", "bed.head_bar", "bed.foot_bar") {
		return
	}
	if longest := max(d.Bed.HeadBar, d.Bed.FootBar) - 2*d.Bar.TipReach; longest > d.Bar.Stock {
		r.wants("bar.stock", "is shorter than the longer bar, "+r.show("bar.stock", longest), r.atLeast("bar.stock", longest), "")
	}
}

// checkHang wants supports further apart than the bars, and above the bed.
func (r *reader) checkHang() {
	h, b := r.design.Hang, r.design.Bed
	if h.Distance > 0 && r.good("hang.distance", "bed.span") && h.Distance <= b.Span {
		r.wants("hang.distance", "the supports stand closer than the bars, "+r.show("hang.distance", b.Span), r.above("hang.distance", b.Span), "")
	}
	if h.Height > 0 && r.good("hang.height", "hang.bed") && h.Height <= h.Bed {
		r.wants("hang.height", "the supports lie no higher than the bed, "+r.show("hang.height", h.Bed), r.above("hang.height", h.Bed), "")
	}
}

// checkRoll keeps some of the roll's width.
func (r *reader) checkRoll() {
	c := r.design.Cloth
	if r.good("cloth.margin", "cloth.width") && 2*c.Margin >= c.Width {
		r.wants("cloth.margin", "leaves nothing of a roll "+r.show("cloth.margin", c.Width)+" wide", r.below("cloth.margin", c.Width/2), "")
	}
}

// leastFell is the narrowest allowance of a flat-felled join, mm: half of it shows,
// and what is trimmed inside is a little less (common practice, no source).
const leastFell = 8

// checkJoins wants an allowance that a lengthwise join can be felled with.
func (r *reader) checkJoins() {
	d := r.design
	if d.Cloth.Joins > 0 && r.good("cloth.joins", "seam.join_allowance") && d.Seam.Join < leastFell {
		r.wants("seam.join_allowance", "is too little for a flat-felled join", r.atLeast("seam.join_allowance", leastFell), "")
	}
}

// checkFlaws keeps the flaws rectangles on the roll.
func (r *reader) checkFlaws() {
	if r.bad["cloth.flaw"] {
		return
	}
	for i, f := range r.design.Cloth.Flaws {
		full := fmt.Sprintf("cloth.flaw[%d].", i+1)
		from, to, low, high := full+"from", full+"to", full+"low", full+"high"
		switch {
		case !r.good(from, to, low, high):
		case f.Max.X <= f.Min.X:
			r.wants(to, "the flaw ends where it starts or before", r.above(to, f.Min.X), "")
		case f.Max.Y <= f.Min.Y:
			r.wants(high, "the upper edge lies no higher than the lower one", r.above(high, f.Min.Y), "")
		case r.good("cloth.width") && f.Max.Y > r.design.Cloth.Width:
			r.wants(high, "the flaw lies off the roll, which is "+r.show(high, r.design.Cloth.Width)+" wide", r.atMost(high, r.design.Cloth.Width), "")
		}
	}
}

// checkSheet keeps half of the sheet each way, own choice: in less, templates fall into
// more parts than anybody joins. And it keeps parts apart after the cut.
func (r *reader) checkSheet() {
	s := r.design.Sheet
	if least := min(s.Width, s.Height); r.good("sheet.margin", "sheet.width", "sheet.height") && 4*s.Margin > least {
		r.wants("sheet.margin", "leaves less than half of the sheet", r.atMost("sheet.margin", least/4), "")
	}
	if r.good("sheet.gap", "sheet.kerf") && s.Gap < s.Kerf {
		r.wants("sheet.gap", "is less than the width of cut, "+r.show("sheet.gap", s.Kerf), r.atLeast("sheet.gap", s.Kerf), "")
	}
}

// checkTemplate wants room for lettering beside the curve.
func (r *reader) checkTemplate() {
	t := r.design.Template
	if r.good("template.letter", "template.backing") && t.Backing < 2*t.Letter {
		r.wants("template.backing", "has no room for letters of "+r.show("template.backing", t.Letter), r.atLeast("template.backing", 2*t.Letter), "")
	}
	if r.good("template.tick", "bed.span") && t.Tick > r.design.Bed.Span/4 {
		r.wants("template.tick", "gives fewer than four ticks along the bay", r.atMost("template.tick", r.design.Bed.Span/4), "")
	}
}
