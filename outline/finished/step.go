package finished

import (
	"math"
	"slices"

	"slingloft/outline/hung"
)

// step is a short stretch of the bed between two stations of the design. Values
// stand at its start, middle and end.
type step struct {
	from, to float64
	w        [3]float64 // load with the cloth's own weight, N/mm
	body     [3]float64 // load alone, N/mm
	own      [3]float64 // weight of the cloth, N/mm
	half     [3]float64 // P/2 unstretched, mm
	radius   [3]float64
	arc      [3]float64 // unstretched cord per mm of x in the design
	bay      bool
}

// steps lays the bed out in steps that end at the bars and wherever the load
// jumps.
func (h *Hammock) steps(load hung.Load) []step {
	const number = 64
	s := h.Shape
	half := s.Problem.Bed.Span / 2
	marks := merged(s.Stations(number), load.Breaks())
	var out []step
	for i := 1; i < len(marks); i++ {
		st := step{from: marks[i-1], to: marks[i]}
		mid := (st.from + st.to) / 2
		st.bay = math.Abs(mid) < half
		// A hair inside the ends, where loads and slopes may jump.
		hair := float64(1e-9 * (st.to - st.from))
		for k, x := range [3]float64{st.from + hair, mid, st.to - hair} {
			h.node(&st, k, x, load)
		}
		out = append(out, st)
	}
	return out
}

// node fills in what stands at node k of a step, at station x.
func (h *Hammock) node(st *step, k int, x float64, load hung.Load) {
	s := h.Shape
	q := h.section(st, k, x)
	st.body[k] = load.At(x)
	st.w[k] = st.body[k] + st.own[k]
	st.arc[k] = math.Sqrt(1 + float64(q.DY*q.DY) + float64(q.DZ*q.DZ))
	if k == 2 {
		// Simpson's rule over the step gives back its cord exactly.
		scale := s.Arc(st.from, st.to) / ((st.arc[0] + float64(4*st.arc[1]) + st.arc[2]) / 6 * (st.to - st.from))
		for i := range st.arc {
			st.arc[i] = h.cut(float64(st.arc[i]*scale), s.Thrust*st.arc[i], h.ea(st))
		}
	}
}

// section fills in the cloth across the bed at node k of a step, at station x of the
// shape, which it returns.
func (h *Hammock) section(st *step, k int, x float64) hung.Station {
	q := h.Shape.At(x)
	girth := q.Section.Girth()
	st.radius[k] = q.Section.Radius
	st.own[k] = h.Shape.Problem.ClothWeight * girth
	st.half[k] = girth / 2
	switch {
	case h.Girth != nil:
		st.half[k] = h.Girth(x) / 2
	case h.Weft > 0 && !h.Plain:
		st.half[k] /= 1 + q.Cloth/h.Weft
	}
	return q
}

// ea returns the stiffness of the cords along a step.
func (h *Hammock) ea(st *step) float64 {
	if st.bay {
		return h.SideEA
	}
	return h.LegEA
}

// spaced returns the marks between two stations, rising, each once.
func spaced(marks []float64, from, to float64) []float64 {
	slices.Sort(marks)
	var out []float64
	for _, x := range marks {
		if x >= from && x <= to && (len(out) == 0 || x > out[len(out)-1]+1) {
			out = append(out, x)
		}
	}
	return out
}

// merged returns the stations with those of extra that lie among them, rising.
func merged(stations, extra []float64) []float64 {
	all := append(append([]float64(nil), stations...), extra...)
	slices.Sort(all)
	out := stations[:1:1]
	for _, x := range all {
		if x > out[len(out)-1]+1e-6 && x <= stations[len(stations)-1] {
			out = append(out, x)
		}
	}
	return out
}
