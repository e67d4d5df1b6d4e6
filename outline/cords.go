package outline

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"slingloft/outline/cord"
	"slingloft/outline/template"
	"slingloft/outline/words"
)

// cordGauge is a gauge for the ends of cords that are marked at the same distances.
type cordGauge struct {
	serves []cordEnd
	marks  []cordMark
}

// cordEnd is an end of a cord, or both.
type cordEnd struct {
	part cord.Part
	end  words.CordEnd
}

// cordMark is a mark of a gauge: the cord's own end, or a spot so far from it.
type cordMark struct {
	own  bool
	spot cord.Spot
	at   float64 // mm
}

// alike is how far two marks may lie apart, in mm, for one gauge to serve both: half
// of what its lettering tells.
const alike = 0.05

// cordGauges returns the gauges that mark every end of the cords. Ends spliced in
// the same way share one, which spares material: its marks say only what they have
// in common.
func cordGauges(cords []cord.Cord) []cordGauge {
	var out []cordGauge
	for _, c := range cords {
		start, end := cordEnds(c)
		if both, ok := shared(start, end); ok {
			both.serves = []cordEnd{{c.Part, words.BothEnds}}
			out = joined(out, both)
			continue
		}
		out = joined(joined(out, start), end)
	}
	return out
}

// joined returns gauges with g, as part of the first that can serve for it too or
// as one more.
func joined(gauges []cordGauge, g cordGauge) []cordGauge {
	for i := range gauges {
		if s, ok := shared(gauges[i], g); ok {
			gauges[i] = s
			return gauges
		}
	}
	return append(gauges, g)
}

// shared returns the gauge that serves for both, if their marks agree in place and
// in kind.
func shared(a, b cordGauge) (cordGauge, bool) {
	if len(a.marks) != len(b.marks) {
		return cordGauge{}, false
	}
	out := cordGauge{serves: slices.Concat(a.serves, b.serves)}
	for i, m := range a.marks {
		n := b.marks[i]
		if m.own != n.own || m.spot.Kind != n.spot.Kind || m.spot.Second != n.spot.Second || math.Abs(m.at-n.at) > alike {
			return cordGauge{}, false
		}
		if m.spot.On != n.spot.On {
			m.spot.On = cord.Alone
		}
		out.marks = append(out.marks, m)
	}
	return out, true
}

// cordEnds returns the gauges for the two ends of a cord: the marks nearer to each
// than to the other, counted from the cord's end.
func cordEnds(c cord.Cord) (start, end cordGauge) {
	start = cordGauge{[]cordEnd{{c.Part, words.StartEnd}}, []cordMark{{own: true}}}
	end = cordGauge{[]cordEnd{{c.Part, words.LastEnd}}, []cordMark{{own: true}}}
	for _, m := range c.Marks {
		switch {
		case m.Spot == cord.Spot{Kind: cord.Middle}: // found by folding the cord
		case m.FromStart < m.FromEnd:
			start.marks = append(start.marks, cordMark{spot: m.Spot, at: m.FromStart})
		default:
			end.marks = append(end.marks, cordMark{spot: m.Spot, at: m.FromEnd})
		}
	}
	for _, g := range []cordGauge{start, end} {
		slices.SortStableFunc(g.marks, func(a, b cordMark) int { return cmp.Compare(a.at, b.at) })
	}
	return start, end
}

// lettered returns the marks of a gauge as they are lettered.
func (g cordGauge) lettered(w words.Lettering) []template.GaugeMark {
	var out []template.GaugeMark
	for _, m := range g.marks {
		id, name := "END", w.CordEnd
		if !m.own {
			id, name = strings.ToUpper(m.spot.String()), strings.ToUpper(w.Cords.Spot(m.spot))
		}
		out = append(out, template.GaugeMark{ID: id, Name: name, At: m.at})
	}
	return out
}

// title returns what is lettered over the gauge number n.
func (g cordGauge) title(n int, w words.Lettering) string {
	var ends []string
	for _, e := range g.serves {
		ends = append(ends, w.EndOf(e.part, e.end))
	}
	return w.CordGaugeTitle(n, ends)
}
