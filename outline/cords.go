package outline

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"slingloft/outline/cord"
	"slingloft/outline/template"
)

// cordGauge is a gauge for the ends of cords that are marked at the same distances.
type cordGauge struct {
	serves []string // "head leg start"
	marks  []template.GaugeMark
}

// alike is how far two marks may lie apart, in mm, for one gauge to serve both: half
// of what its lettering tells.
const alike = 0.05

// cordGauges returns the gauges that mark every end of the cords. Ends spliced in
// the same way share one, which spares material: its marks carry only the words
// that their names have in common.
func cordGauges(cords []cord.Cord) []cordGauge {
	var out []cordGauge
	for _, c := range cords {
		start, end := cordEnds(c)
		start.serves, end.serves = []string{c.Name + " start"}, []string{c.Name + " end"}
		if both, ok := shared(start, end); ok {
			both.serves = []string{c.Name + " both ends"}
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
// in the last words of their names.
func shared(a, b cordGauge) (cordGauge, bool) {
	if len(a.marks) != len(b.marks) {
		return cordGauge{}, false
	}
	out := cordGauge{serves: slices.Concat(a.serves, b.serves)}
	for i, m := range a.marks {
		name := commonEnd(m.Name, b.marks[i].Name)
		if name == "" || math.Abs(m.At-b.marks[i].At) > alike {
			return cordGauge{}, false
		}
		out.marks = append(out.marks, template.GaugeMark{Name: name, At: m.At})
	}
	return out, true
}

// commonEnd returns the words that both names end with.
func commonEnd(a, b string) string {
	x, y := strings.Fields(a), strings.Fields(b)
	n := 0
	for n < min(len(x), len(y)) && x[len(x)-1-n] == y[len(y)-1-n] {
		n++
	}
	return strings.Join(x[len(x)-n:], " ")
}

// cordEnds returns the gauges for the two ends of a cord: the marks nearer to each
// than to the other, counted from the cord's end.
func cordEnds(c cord.Cord) (start, end cordGauge) {
	start.marks = []template.GaugeMark{{Name: "END"}}
	end.marks = []template.GaugeMark{{Name: "END"}}
	for _, m := range c.Marks {
		name := strings.ToUpper(m.Name)
		switch {
		case m.Name == "middle": // found by folding the cord
		case m.FromStart < m.FromEnd:
			start.marks = append(start.marks, template.GaugeMark{Name: name, At: m.FromStart})
		default:
			end.marks = append(end.marks, template.GaugeMark{Name: name, At: m.FromEnd})
		}
	}
	for _, g := range []cordGauge{start, end} {
		slices.SortStableFunc(g.marks, func(a, b template.GaugeMark) int { return cmp.Compare(a.At, b.At) })
	}
	return start, end
}
