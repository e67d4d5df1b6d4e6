package design

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
	if d.Splice.Whole || !r.good(KeySpliceBury, KeySpliceEyeBury, KeySpliceWholeLoop, KeyCordSideDiameter, KeyCordLegDiameter) {
		return
	}
	inSide, _ := d.buries(d.Leg)
	if r.good(KeyBedSpan) && 2*inSide >= d.Bed.Span {
		r.bounded(KeySpliceBury, Found(BuriesOverSide, r.show(KeySpliceBury, inSide)), r.below(KeySpliceBury, d.Bed.Span/2))
		return
	}
	inLeg, own := d.buries(d.Side)
	for _, leg := range []struct {
		key Key
		l   float64
	}{{KeyBedHeadLeg, d.Bed.HeadLeg}, {KeyBedFootLeg, d.Bed.FootLeg}} {
		if r.good(leg.key) && inLeg+own >= leg.l {
			r.bounded(leg.key, Found(LegForBuries, r.show(leg.key, inLeg), r.show(leg.key, own)), r.above(leg.key, inLeg+own))
			r.also(Say(OrShorterBury))
		}
	}
}

// checkEye keeps taper and eye loss within what they are part of.
func (r *reader) checkEye() {
	d := r.design
	bury, _ := d.buries(d.Leg)
	if r.good(KeySpliceBury, KeySpliceTaper, KeyCordLegDiameter) && d.Splice.Taper >= bury {
		r.bounded(KeySpliceTaper, Found(TaperOverBury, r.show(KeySpliceTaper, bury)), r.below(KeySpliceTaper, bury))
	}
	if r.good(KeySpliceEye, KeySpliceEyeLoss) && d.Splice.EyeLoss >= d.Splice.Eye {
		r.bounded(KeySpliceEyeLoss, Found(LossOverEye, r.show(KeySpliceEyeLoss, d.Splice.Eye)), r.below(KeySpliceEyeLoss, d.Splice.Eye))
	}
}

// leastDrawstring is the narrowest channel that a drawstring is threaded through,
// mm: own choice.
const leastDrawstring = 8

// checkCap keeps the cap's top edge above the bed.
func (r *reader) checkCap() {
	c := r.design.Cap
	if c.Kind == Gathered && r.good(KeyCapKind) {
		if r.source.Given(KeyCapHollow) && r.good(KeyCapHollow) {
			r.conflict(KeyCapHollow, Found(HollowOfGathered), Say(LeaveOrOtherKind))
		}
		if r.good(KeyCapHem) && c.Hem < leastDrawstring {
			r.bounded(KeyCapHem, Found(HemForDrawstring), r.atLeast(KeyCapHem, leastDrawstring))
		}
		return
	}
	for _, s := range r.sections() {
		if s.dropValue > 0 && r.good(KeyCapHollow, s.drop) && c.Hollow >= s.dropValue {
			r.bounded(KeyCapHollow, Found(HollowAtBed, r.show(KeyCapHollow, s.dropValue)), r.below(KeyCapHollow, s.dropValue))
			return
		}
	}
}

// checkBar keeps the tube a tube and its tips apart.
func (r *reader) checkBar() {
	d := r.design
	if r.good(KeyBarWall, KeyBarOuterDiameter) && d.Bar.Wall >= d.Bar.Outer/2 {
		r.bounded(KeyBarWall, Found(WallOverHalf), r.below(KeyBarWall, d.Bar.Outer/2))
		r.also(Say(OrSolid))
	}
	shorter := min(d.Bed.HeadBar, d.Bed.FootBar)
	if r.good(KeyBarTipReach, KeyBedHeadBar, KeyBedFootBar) && 2*d.Bar.TipReach >= shorter {
		r.bounded(KeyBarTipReach, Found(TipsMeet), r.below(KeyBarTipReach, shorter/2))
	}
	if r.good(KeyBarHole, KeyBarOuterDiameter) && d.Bar.Hole > d.Bar.Outer/2 {
		r.bounded(KeyBarHole, Found(HoleWide), r.atMost(KeyBarHole, d.Bar.Outer/2))
	}
	if r.good(KeyBarJoint, KeyBedHeadBar, KeyBedFootBar) && d.Bar.Joint > shorter/2 {
		r.bounded(KeyBarJoint, Found(JointLong), r.atMost(KeyBarJoint, shorter/2))
	}
}

// checkStock wants each bar to come out of one stock length.
func (r *reader) checkStock() {
	d := r.design
	if d.Bar.Stock == 0 || !r.good(KeyBarStock, KeyBarTipReach, KeyBedHeadBar, KeyBedFootBar) {
		return
	}
	if longest := d.Bar.CutFor(max(d.Bed.HeadBar, d.Bed.FootBar)); longest > d.Bar.Stock {
		r.bounded(KeyBarStock, Found(StockShort, r.show(KeyBarStock, longest)), r.atLeast(KeyBarStock, longest))
	}
}

// checkHang wants supports further apart than the bars, and above the bed.
func (r *reader) checkHang() {
	h, b := r.design.Hang, r.design.Bed
	if h.Distance > 0 && r.good(KeyHangDistance, KeyBedSpan) && h.Distance <= b.Span {
		r.bounded(KeyHangDistance, Found(SupportsClose, r.show(KeyHangDistance, b.Span)), r.above(KeyHangDistance, b.Span))
	}
	r.checkFastening()
	if h.Height > 0 && r.good(KeyHangHeight, KeyHangBed) && h.Height <= h.Bed {
		r.bounded(KeyHangHeight, Found(SupportsLow, r.show(KeyHangHeight, h.Bed)), r.above(KeyHangHeight, h.Bed))
	}
	if b.Second == LevelAnchors && h.Distance == 0 && r.good(KeyBedLevelAnchors, KeyHangDistance) {
		r.conflict(KeyBedLevelAnchors, Found(AnchorsNowhere), Say(GiveOrAsk, string(KeyHangDistance), string(KeyBedLevelApexes)))
	}
}

// checkFastening wants what a fastening needs and nothing that belongs to another.
func (r *reader) checkFastening() {
	h := r.design.Hang
	if !r.good(KeyHangFastening) {
		return
	}
	if h.Fastening == FixedEye && r.source.Given(KeyHangTravel) && r.good(KeyHangTravel) {
		r.conflict(KeyHangTravel, Found(FixedTravel), Say(WriteOrLeave, `fastening = "sliding", "strap" or "hitch"`))
	}
	switch {
	case h.Fastening == Strapped && !r.seen(KeyHangStrap):
		r.lacks(r.keys.byKey[KeyHangStrap])
	case h.Fastening != Strapped && r.source.Given(KeyHangStrap) && r.good(KeyHangStrap):
		r.conflict(KeyHangStrap, Found(NoStrap), Say(WriteOrLeave, `fastening = "strap"`))
	}
}

// checkRoll keeps some of the roll's width.
func (r *reader) checkRoll() { r.checkSelvedge(KeyCloth, r.design.Cloth) }

// checkSelvedge keeps some of the width of the cloth of a table.
func (r *reader) checkSelvedge(table Key, c Cloth) {
	strip := table.In("selvedge_strip")
	if r.good(strip, table.In("width")) && 2*c.Margin >= c.Width {
		r.bounded(strip, Found(MarginsOverRoll, r.show(strip, c.Width)), r.below(strip, c.Width/2))
	}
}

// leastFell is the narrowest allowance of a flat-felled join, mm: half of it shows,
// and what is trimmed inside is a little less (common practice, no source).
const leastFell = 8

// checkJoins wants an allowance that a lengthwise join can be felled with.
func (r *reader) checkJoins() {
	d := r.design
	if d.Cloth.Joins > 0 && r.good(KeyClothJoins, KeySeamJoinAllowance) && d.Seam.Join < leastFell {
		r.bounded(KeySeamJoinAllowance, Found(FellNarrow), r.atLeast(KeySeamJoinAllowance, leastFell))
	}
}

// checkFlaws keeps the flaws rectangles on the roll.
func (r *reader) checkFlaws() {
	if r.bad[KeyClothFlaw] {
		return
	}
	for i, f := range r.design.Cloth.Flaws {
		flaw := KeyClothFlaw.Item(i + 1)
		from, to, low, high := flaw.In("from"), flaw.In("to"), flaw.In("low"), flaw.In("high")
		switch {
		case !r.good(from, to, low, high):
		case f.Max.X <= f.Min.X:
			r.bounded(to, Found(FlawBackwards), r.above(to, f.Min.X))
		case f.Max.Y <= f.Min.Y:
			r.bounded(high, Found(FlawUpsideDown), r.above(high, f.Min.Y))
		case r.good(KeyClothWidth) && f.Max.Y > r.design.Cloth.Width:
			r.bounded(high, Found(FlawOffRoll, r.show(high, r.design.Cloth.Width)), r.atMost(high, r.design.Cloth.Width))
		}
	}
}

// checkSheet keeps half of the sheet each way, own choice: in less, templates fall into
// more parts than anybody joins. And it keeps parts apart after the cut.
func (r *reader) checkSheet() {
	s := r.design.Sheet
	if least := min(s.Width, s.Height); r.good(KeySheetEdgeStrip, KeySheetWidth, KeySheetHeight) && 4*s.Margin > least {
		r.bounded(KeySheetEdgeStrip, Found(MarginsOverSheet), r.atMost(KeySheetEdgeStrip, least/4))
	}
	if r.good(KeySheetGap, KeySheetKerf) && s.Gap < s.Kerf {
		r.bounded(KeySheetGap, Found(GapUnderKerf, r.show(KeySheetGap, s.Kerf)), r.atLeast(KeySheetGap, s.Kerf))
	}
}

// checkTemplate wants room for lettering beside the curve.
func (r *reader) checkTemplate() {
	t := r.design.Template
	if r.good(KeyTemplateLetter, KeyTemplateBacking) && t.Backing < 2*t.Letter {
		r.bounded(KeyTemplateBacking, Found(BackingNarrow, r.show(KeyTemplateBacking, t.Letter)), r.atLeast(KeyTemplateBacking, 2*t.Letter))
	}
	if r.good(KeyTemplateTick, KeyBedSpan) && t.Tick > r.design.Bed.Span/4 {
		r.bounded(KeyTemplateTick, Found(TicksFew), r.atMost(KeyTemplateTick, r.design.Bed.Span/4))
	}
}
