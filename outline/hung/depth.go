package hung

import (
	"math"
	"slices"

	"slingloft/outline/numeric"
)

func sortFloats(v []float64) { slices.Sort(v) }

// sideDepth returns the largest distance of the bay's flat edge from the chord
// between its corners, mm.
func (s *solver) sideDepth(t *candidate) float64 {
	d, _ := s.deepest(t)
	return d
}

// deepest returns the side depth and its station. The flat edge is half the
// girth over x, at the cord centres; the chord joins its ends at the bars.
func (s *solver) deepest(t *candidate) (depth, x float64) {
	b := &s.p.Bed
	foot, err := s.p.section(b.Span/2, t.end.y, t.end.z)
	if err != nil {
		return math.NaN(), 0
	}
	g0, g1 := s.head.Girth()/2, foot.Girth()/2
	slope := (g1 - g0) / b.Span
	scale := 1 / math.Sqrt(1+slope*slope)
	at := func(st *segment, frac float64) float64 {
		x := st.from + frac*(st.to-st.from)
		sec, err := s.p.section(x, s.tables.Interpolate(&st.y, frac), s.tables.Interpolate(&st.z, frac))
		if err != nil {
			return math.Inf(-1)
		}
		return (g0 + slope*(x+b.Span/2) - sec.Girth()/2) * scale
	}
	best := -1
	for i := range t.bay {
		if d := at(&t.bay[i], 0.5); best < 0 || d > depth {
			best, depth = i, d
		}
	}
	for _, i := range []int{best - 1, best, best + 1} {
		if i < 0 || i >= len(t.bay) {
			continue
		}
		st := &t.bay[i]
		frac, d := numeric.Peak(func(f float64) float64 { return at(st, f) }, 0, 1)
		if d >= depth {
			depth, x = d, st.from+frac*(st.to-st.from)
		}
	}
	return depth, x
}
