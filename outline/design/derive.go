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
	if r.source.Given("load.from") && !r.seen("load.to") {
		d.Load.To = d.Bed.Span
	}
	if !r.seen("channel.opening") {
		d.Channel.Opening = d.Splice.TipGap
	}
	if !r.seen("template.tick") {
		d.Template.Tick = 25
		if d.Output.Inches {
			d.Template.Tick = quantity.Inch
		}
	}
	r.material()
	r.contraction()
}

// curve lets the side curve set the load model, or finds that they contradict.
func (r *reader) curve() {
	const key = "bed.side_curve"
	model := map[string]Model{"sleeper": Lying, "even": Even}
	m, ok := model[r.sideCurve]
	if !ok || r.bad["load.model"] {
		return
	}
	if r.source.Given("load.model") && m != r.design.Load.Model {
		other := []string{"sleeper", "even"}[r.design.Load.Model]
		r.fault(r.source.At(key), key, fmt.Sprintf("%q contradicts load.model = %q in line %d", r.sideCurve, other, r.source.At("load.model").Line),
			fmt.Sprintf("write %q, or leave it out", other))
		r.bad[key], r.bad["load.model"] = true, true
		return
	}
	r.design.Load.Model = m
}

// material fills in the bars' material.
func (r *reader) material() {
	const key = "bar.material"
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

// contraction takes the mean of the test splices.
func (r *reader) contraction() {
	trials := r.design.Splice.Trials
	if len(trials) == 0 || r.bad["splice.trial"] {
		return
	}
	sum := 0.0
	for i, t := range trials {
		full := fmt.Sprintf("splice.trial[%d]", i+1)
		if !r.good(full+".before", full+".after", full+".buried") {
			return
		}
		k := (t.Before - t.After) / t.Buried
		limit := r.keys.byKey["splice.contraction"].hi
		switch {
		case t.After > t.Before:
			r.conflict(full+".after", "the host cannot grow longer than its length before the bury",
				r.atMost(full+".after", t.Before))
			return
		case t.Buried > t.Before:
			r.conflict(full+".buried", "more is buried than lies between the marks", r.atMost(full+".buried", t.Before))
			return
		case k > limit:
			r.conflict(full+".after", fmt.Sprintf("the host would lose %.2f of what is buried", k),
				r.atLeast(full+".after", t.Before-limit*t.Buried))
			return
		}
		sum += k
	}
	r.design.Splice.Contraction = sum / float64(len(trials))
}
