package design

import (
	"strconv"

	"slingloft/outline/quantity"
)

// derive sets what follows from keys together: values left out whose default
// hangs on another key.
func (r *reader) derive() {
	d := &r.design
	r.curve()
	if r.source.Given(KeyLoadFrom) && !r.seen(KeyLoadTo) {
		d.Load.To = d.Bed.Span
	}
	r.fitted()
	if !r.seen(KeyTemplateTick) {
		d.Template.Tick = 25
		if d.Output.Inches {
			d.Template.Tick = quantity.Inch
		}
	}
	r.material()
	r.trials()
	r.derivedOpening()
}

// curve lets the side curve set the load model, or finds that they contradict.
func (r *reader) curve() {
	const key = KeyBedSideCurve
	model := map[string]Model{"sleeper": Lying, "even": Even}
	m, ok := model[r.sideCurve]
	if !ok || r.bad[KeyLoadModel] {
		return
	}
	if r.source.Given(KeyLoadModel) && m != r.design.Load.Model {
		other := []string{"sleeper", "even"}[r.design.Load.Model]
		r.fault(r.source.At(key), key, Found(CurveContradicts, r.sideCurve, KeyLoadModel, other, r.lineOf(KeyLoadModel)),
			Say(WriteOrLeave, strconv.Quote(other)))
		r.bad[key], r.bad[KeyLoadModel] = true, true
		return
	}
	r.design.Load.Model = m
}

// material fills in the bars' material.
func (r *reader) material() {
	const key = KeyBarMaterial
	if r.bad[key] || !r.source.Given(key) {
		return
	}
	var known []string
	for _, m := range Materials() {
		if m.Name == r.design.Bar.Material {
			r.design.Bar = r.design.Bar.filled()
			return
		}
		known = append(known, strconv.Quote(m.Name))
	}
	r.bad[key] = true
	r.fault(r.source.At(key), key, Found(UnknownMaterial, quantity.Quoted(r.design.Bar.Material)), Say(WriteMaterial, either(known)))
}

// trials completes the test splices and checks them. Where they show what a key says,
// that is given twice.
func (r *reader) trials() {
	s := &r.design.Splice
	if len(s.Trials) == 0 || r.bad[KeySpliceTrial] {
		return
	}
	for i := range s.Trials {
		one := KeySpliceTrial.Item(i + 1)
		if !r.source.Given(one.In(KeySpliceTrialCrossing.Name())) {
			s.Trials[i].Crossing = s.Trials[i].alone()
		}
		if !r.trial(one, s.Trials[i]) {
			return
		}
	}
	for _, shown := range []struct {
		key Key
		yes bool
	}{{KeySpliceEyeLoss, s.hasTrials(false)}, {KeySpliceContraction, s.hasTrials(true)}} {
		if shown.yes && r.source.Given(shown.key) {
			r.measuredTwice(shown.key)
		}
	}
}

// measuredTwice notes that a key is given beside test splices that show the same,
// at whichever stands last.
func (r *reader) measuredTwice(key Key) {
	first, last := key, KeySpliceTrial
	if a, b := r.source.At(first), r.source.At(last); b.Line < a.Line {
		first, last = last, first
	}
	r.bad[key] = true
	r.fault(r.source.At(last), last, Found(GivenBeside, first, r.lineOf(first), Say(TheSame)), Say(KeepOneOf))
}

// trial checks one test splice and reports whether it is sound; full is its name.
func (r *reader) trial(full Key, t Trial) bool {
	if !r.good(full.In("before"), full.In("after"), full.In("buried"), full.In(KeySpliceTrialCrossing.Name())) {
		return false
	}
	limit, part := 0.0, LostInCrossing
	if t.Crossing {
		limit = min(r.keys.byKey[KeySpliceEyeLoss].hi, r.design.Splice.Eye-beside(r.design.Splice.Eye))
	}
	if t.Buried > 0 {
		limit, part = limit+r.keys.byKey[KeySpliceContraction].hi*t.Buried, LostToBury
	}
	switch {
	case !t.Crossing && t.Buried == 0:
		r.conflict(full.In(KeySpliceTrialCrossing.Name()), Found(TrialIdle), Say(LeaveOrBuried))
	case t.After > t.Before:
		r.bounded(full.In("after"), Found(TrialGrew), r.atMost(full.In("after"), t.Before))
	case t.Buried > t.Before:
		r.bounded(full.In("buried"), Found(BuriedOver), r.atMost(full.In("buried"), t.Before))
	case t.Before-t.After > limit:
		r.bounded(full.In("after"), Found(part, r.show(full.In("after"), t.Before-t.After)), r.atLeast(full.In("after"), t.Before-limit))
	default:
		return true
	}
	return false
}
