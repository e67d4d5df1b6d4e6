package design

import (
	"cmp"
	"math"
	"slices"

	"slingloft/outline/quantity"
)

// The checks below need no solver: what they refuse cannot be built whatever
// the shape turns out to be. Each looks only at keys that were read well.

// check runs every check.
func (r *reader) check() {
	for _, f := range []func(){
		r.checkSleeper, r.checkLoad, r.checkCurve, r.checkSections, r.checkLegs, r.checkEnds,
		r.checkBuries, r.checkEye, r.checkChannel, r.checkCap, r.checkBar, r.checkStock,
		r.checkHang, r.checkRoll, r.checkFurther, r.checkTarp, r.checkLining, r.checkCover, r.checkJoins, r.checkFlaws, r.checkSheet, r.checkTemplate,
		r.checkMachine, r.checkMaterials, r.checkExtras, r.checkHung, r.checkGuests,
	} {
		f()
	}
}

// good reports whether none of the keys, nor a table around one, is at fault.
func (r *reader) good(keys ...Key) bool { return !slices.ContainsFunc(keys, r.faulty) }

// conflict notes a fault of a key that was read well but does not fit another.
func (r *reader) conflict(key Key, f Finding, hint Phrase) {
	r.bad[key] = true
	r.fault(r.source.At(key), key, f, hint)
}

// show returns a length as the maker would write it for the key.
func (r *reader) show(key Key, mm float64) string {
	return r.source.Length(key, mm, quantity.Nearest)
}

// bounded notes a fault of a key for which a value would do.
func (r *reader) bounded(key Key, f Finding, b Bound) {
	r.bad[key] = true
	r.faults = append(r.faults, r.source.Bounded(f, b))
}

// also adds to the fault that was noted last what else would do.
func (r *reader) also(hint Phrase) { r.faults[len(r.faults)-1].Hint.Say = hint }

// atLeast and atMost say which lengths would do.
func (r *reader) atLeast(key Key, mm float64) Bound { return r.source.Least(key, mm) }

func (r *reader) atMost(key Key, mm float64) Bound { return r.source.Most(key, mm) }

// beside is how far a length that has to be more or less than another one keeps off
// it, mm: what is named has to do itself.
func beside(mm float64) float64 { return max(0.1, mm/1000) }

// above and below say which lengths would do on one side of one that would not.
func (r *reader) above(key Key, mm float64) Bound { return r.atLeast(key, mm+beside(mm)) }

func (r *reader) below(key Key, mm float64) Bound { return r.atMost(key, mm-beside(mm)) }

// instead says which value of another key would do as well as the fault's own that
// was noted last.
func (r *reader) instead(key Key, mm float64) {
	r.faults[len(r.faults)-1].Hint.Instead = r.source.Least(key, mm)
}

// tilted returns the cosine of the bottom line's slope. Crown, stature and tails
// are measured along the bed, bars and the even load level.
func (r *reader) tilted() float64 { return r.design.Bed.Lift.Cos() }

// checkSleeper keeps the sleeper on the cloth, from crown to soles.
func (r *reader) checkSleeper() {
	b, s := r.design.Bed, r.design.Sleeper
	if r.design.Load.Model != Lying ||
		!r.good(KeyLoadModel, KeySleeperStature, KeySleeperCrown, KeyBedSpan, KeyBedHeadTail, KeyBedFootTail, KeyBedLift) {
		return
	}
	span := b.Span / r.tilted()
	foot := span + b.FootTail
	room := b.HeadTail + foot
	switch {
	case s.Stature > room:
		r.bounded(KeyBedSpan, Found(SleeperTooLong, r.show(KeySleeperStature, s.Stature), r.show(KeyBedSpan, room)),
			r.atLeast(KeyBedSpan, b.Span+(s.Stature-room)*r.tilted()))
	case s.Crown < -b.HeadTail:
		r.bounded(KeySleeperCrown, Found(HeadOffTail), r.atLeast(KeySleeperCrown, -b.HeadTail))
		r.instead(KeyBedHeadTail, -s.Crown)
	case s.Crown+s.Stature > foot:
		r.bounded(KeySleeperCrown, Found(FeetOffTail, r.show(KeySleeperCrown, s.Crown+s.Stature-foot)),
			r.atMost(KeySleeperCrown, foot-s.Stature))
		r.instead(KeyBedFootTail, s.Crown+s.Stature-span)
	}
}

// leastLoad is the shortest stretch that the even load covers, mm: own choice.
const leastLoad = 10

// checkLoad keeps the even load on the cloth.
func (r *reader) checkLoad() {
	l, b := r.design.Load, r.design.Bed
	for _, key := range []Key{KeyLoadFrom, KeyLoadTo} {
		if l.Model == Lying && r.source.Given(key) && r.good(KeyLoadModel, key) {
			r.conflict(key, Found(BoundsEvenLoad), Say(WriteOrLeave, `model = "even"`))
			return
		}
	}
	given := r.source.Given(KeyLoadFrom) || r.source.Given(KeyLoadTo)
	if !given || !r.good(KeyLoadFrom, KeyLoadTo, KeyLoadModel, KeyBedSpan, KeyBedHeadTail, KeyBedFootTail, KeyBedLift) {
		return
	}
	to := KeyLoadTo
	if !r.source.Given(to) {
		to = KeyLoadFrom
	}
	start, end := -b.HeadTail*r.tilted(), b.Span+b.FootTail*r.tilted()
	switch {
	case l.From < start:
		r.bounded(KeyLoadFrom, Found(LoadBeforeTail), r.atLeast(KeyLoadFrom, start))
	case l.To > end:
		r.bounded(to, Found(LoadPastTail), r.atMost(to, end))
	case l.To-l.From < leastLoad:
		r.bounded(KeyLoadTo, Found(LoadShort, r.show(KeyLoadTo, leastLoad)), r.atLeast(KeyLoadTo, l.From+leastLoad))
	}
}

// checkCurve keeps side curve, control and cut together.
func (r *reader) checkCurve() {
	b := r.design.Bed
	if r.good(KeyBedSideCurve, KeyBedSideDepth) && b.Curve != Balanced && b.Control != SideDepth {
		r.conflict(KeyBedSideCurve, Found(CurveWithoutDepth), Say(GiveSideDepth))
	}
	if r.source.Given(KeyBedEndGirth) && r.good(KeyBedEndGirth, KeyBedCut) && b.Cut != Straight {
		r.conflict(KeyBedEndGirth, Found(EndGirthOfNet), Say(WriteOrLeave, `cut = "straight"`))
	}
	if b.Level == ByHung && r.good(KeyBedLevel, KeyBedCut, KeyBedSideCurve) {
		switch {
		case b.Cut == Straight:
			r.conflict(KeyBedLevel, Found(HungOfStraight), Say(WriteOrLeave, `cut = "net"`))
		case b.Curve != Balanced:
			r.conflict(KeyBedLevel, Found(HungOfDrawn), Say(DrawnOrMade))
		}
	}
	// A curve deeper than half its chord turns back on itself, as an arc does.
	if r.source.Given(KeyBedSideDepth) && r.good(KeyBedSideDepth, KeyBedSpan) && float64(b.ControlValue) >= b.Span/2 {
		r.bounded(KeyBedSideDepth, Found(DepthOverHalf), r.below(KeyBedSideDepth, b.Span/2))
	}
}

// section is one bar's section, for the checks at both bars.
type section struct {
	bar, drop, girth, radius Key     // keys
	width, r                 float64 // mm
	dropValue, girthValue    float64 // mm; 0: not given
}

// sections returns the sections at both bars.
func (r *reader) sections() []section {
	b := r.design.Bed
	head := section{bar: KeyBedHeadBar, drop: KeyBedHeadDrop, girth: KeyBedHeadGirth, radius: KeyBedHeadRadius,
		width: b.HeadBar, r: b.HeadRadius}
	foot := section{bar: KeyBedFootBar, drop: KeyBedFootDrop, girth: KeyBedFootGirth, radius: KeyBedFootRadius,
		width: b.FootBar, r: b.FootRadius}
	if r.source.Given(KeyBedUnderbodyRadius) {
		head.radius, foot.radius = KeyBedUnderbodyRadius, KeyBedUnderbodyRadius
	}
	if b.Head == Drop {
		head.dropValue = b.HeadValue
	} else {
		head.girthValue = b.HeadValue
	}
	switch b.Second {
	case FootDrop:
		foot.dropValue = b.SecondValue
	case FootGirth:
		foot.girthValue = b.SecondValue
	}
	return []section{head, foot}
}

// checkSections looks for a section of tangent, arc and tangent at each bar. A radius
// that both bars have is held to the tighter bound.
func (r *reader) checkSections() {
	type tight struct {
		key   Key
		found Finding
		limit float64
	}
	var radii []tight
	for _, s := range r.sections() {
		if !r.good(s.bar, s.radius) {
			continue
		}
		if s.r > s.width/2 {
			radii = append(radii, tight{s.radius, Found(RadiusOverHalf, r.show(s.radius, s.width/2)), s.width / 2})
		}
		if s.girthValue > 0 && r.good(s.girth) && s.girthValue <= s.width {
			r.bounded(s.girth, Found(GirthShort, r.show(s.girth, s.width)), r.above(s.girth, s.width))
		}
		// The cord lies outside the round part where y² + (h−R)² > R².
		least := (s.width*s.width/4 + s.dropValue*s.dropValue) / 2
		if s.dropValue > 0 && r.good(s.drop) && s.r*s.dropValue >= least {
			limit := least / s.dropValue
			radii = append(radii, tight{s.radius, Found(RadiusAtCord), limit - beside(limit)})
		}
	}
	slices.SortStableFunc(radii, func(a, b tight) int { return cmp.Compare(a.limit, b.limit) })
	for _, t := range radii {
		if r.good(t.key) {
			r.bounded(t.key, t.found, r.atMost(t.key, t.limit))
		}
	}
}

// checkLegs wants legs that meet beyond the tail: seen from above, a leg is the
// long side of a triangle with half the bar.
func (r *reader) checkLegs() {
	b := r.design.Bed
	for _, end := range []struct {
		bar, leg, tail Key
		width, l, t    float64
	}{
		{KeyBedHeadBar, KeyBedHeadLeg, KeyBedHeadTail, b.HeadBar, b.HeadLeg, b.HeadTail},
		{KeyBedFootBar, KeyBedFootLeg, KeyBedFootTail, b.FootBar, b.FootLeg, b.FootTail},
	} {
		if !r.good(end.bar, end.leg) {
			continue
		}
		if end.l <= end.width/2 {
			r.bounded(end.leg, Found(LegsApart, r.show(end.leg, end.width/2)), r.above(end.leg, end.width/2))
			continue
		}
		if reach := math.Sqrt(end.l*end.l - end.width*end.width/4); r.good(end.tail) && end.t >= reach {
			r.bounded(end.leg, Found(LegsMeetEarly, r.show(end.leg, reach)), r.above(end.leg, math.Hypot(end.t, end.width/2)))
		}
	}
}

// checkEnds keeps the girth at the end of a straight tail below that at the head
// bar, as the legs close in.
func (r *reader) checkEnds() {
	b := r.design.Bed
	if b.EndGirth == 0 || b.Head != Girth || !r.good(KeyBedEndGirth, KeyBedHeadGirth, KeyBedCut) {
		return
	}
	if b.EndGirth > b.HeadValue {
		r.bounded(KeyBedEndGirth, Found(EndGirthOver), r.atMost(KeyBedEndGirth, b.HeadValue))
	}
}
