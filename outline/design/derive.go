package design

import (
	"fmt"
	"strings"

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
		r.fault(r.source.At(key), key, fmt.Sprintf("%q contradicts load.model = %q in line %d", r.sideCurve, other, r.source.At(KeyLoadModel).Line),
			fmt.Sprintf("write %q, or leave it out", other))
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
		known = append(known, m.Name)
	}
	r.bad[key] = true
	r.fault(r.source.At(key), key, quantity.Quoted(r.design.Bar.Material)+" is not in the table of materials",
		fmt.Sprintf("write %q, or leave it out and give modulus, yield and density from the data sheet", strings.Join(known, `" or "`)))
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
	r.fault(r.source.At(last), last, fmt.Sprintf("is given beside %s in line %d, and each sets the same", first, r.source.At(first).Line), "keep one of them")
}

// trial checks one test splice and reports whether it is sound; full is its name.
func (r *reader) trial(full Key, t Trial) bool {
	if !r.good(full.In("before"), full.In("after"), full.In("buried"), full.In(KeySpliceTrialCrossing.Name())) {
		return false
	}
	limit, part := 0.0, "in the crossing"
	if t.Crossing {
		limit = min(r.keys.byKey[KeySpliceEyeLoss].hi, r.design.Splice.Eye-beside(r.design.Splice.Eye))
	}
	if t.Buried > 0 {
		limit, part = limit+r.keys.byKey[KeySpliceContraction].hi*t.Buried, "to the bury"
	}
	switch {
	case !t.Crossing && t.Buried == 0:
		r.conflict(full.In(KeySpliceTrialCrossing.Name()), "neither a bury nor a crossing lies between the marks", "leave it out, or give what is buried")
	case t.After > t.Before:
		r.bounded(full.In("after"), "the host cannot grow longer than its length before the bury",
			r.atMost(full.In("after"), t.Before), "")
	case t.Buried > t.Before:
		r.bounded(full.In("buried"), "more is buried than lies between the marks", r.atMost(full.In("buried"), t.Before), "")
	case t.Before-t.After > limit:
		r.bounded(full.In("after"), "the host would lose "+r.show(full.In("after"), t.Before-t.After)+" "+part,
			r.atLeast(full.In("after"), t.Before-limit), "")
	default:
		return true
	}
	return false
}
