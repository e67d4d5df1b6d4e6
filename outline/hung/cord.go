package hung

import (
	"math"
	"sort"

	"slingloft/outline/design"
	"slingloft/outline/numeric"
)

const nodes = numeric.Order + 2

// segment is the cord over one panel, outwards or along x as the caller has it.
// Values stand at the panel's nodes: start, Gauss points, end.
type segment struct {
	from, to float64 // stations, from < to or from > to
	y, dy    [nodes]float64
	z, dz    [nodes]float64
	w        [nodes]float64 // whole line load with the cloth's own, N/mm
	arc      [nodes]float64 // length from the segment's start, mm
}

// state is a point of the cord with its slopes per unit of the run.
type state struct{ y, dy, z, dz float64 }

// integrator integrates a cord away from a start: slopes are per mm of that run.
type integrator struct {
	tables *numeric.Panel
	thrust float64
	// pull returns the line load at a station, N/mm, and the cotangent of the wall
	// there with the cord at (y, z).
	pull func(x, y, z float64) (w, cot float64, err error)
}

// errNoSettle is returned where the inner iteration of a panel does not settle,
// which no shape near equilibrium shows.
const errNoSettle = design.Broken(design.CordUnsettled)

// panel integrates over one panel from station a to b. In it the load on the
// cord depends weakly on its place, so that putting the last curve back in
// gains two digits or more a round.
func (r *integrator) panel(s state, a, b float64) (segment, state, error) {
	const maxRounds, converged = 80, 1e-13
	run := math.Abs(b - a)
	st := segment{from: a, to: b}
	st.y[0], st.dy[0], st.z[0], st.dz[0] = s.y, s.dy, s.z, s.dz
	frac := r.tables.Nodes()
	for i := 1; i < nodes; i++ {
		st.y[i] = s.y + s.dy*frac[i]*run
		st.z[i] = s.z + s.dz*frac[i]*run
	}
	for range maxRounds {
		change, err := r.round(&st, run)
		if err != nil {
			return st, s, err
		}
		if change <= converged*(1+math.Abs(s.y)) {
			measure(r.tables, &st, run)
			e := nodes - 1
			return st, state{st.y[e], st.dy[e], st.z[e], st.dz[e]}, nil
		}
	}
	return st, s, errNoSettle
}

// round puts the current curve into the load and integrates it twice; it
// returns the largest move of a node.
func (r *integrator) round(st *segment, run float64) (float64, error) {
	var fy, fz [numeric.Order]float64
	for i := range numeric.Order {
		x := st.from + r.tables.At(i)*(st.to-st.from)
		w, cot, err := r.pull(x, st.y[i+1], st.z[i+1])
		if err != nil {
			return 0, err
		}
		fz[i] = w / (2 * r.thrust)
		fy[i] = fz[i] * cot
	}
	cy := integrateTwice(r.tables, &st.y, &st.dy, &fy, run)
	cz := integrateTwice(r.tables, &st.z, &st.dz, &fz, run)
	return max(cy, cz), nil
}

// integrateTwice sets v and its slope dv at the nodes after the first from the
// second derivative f at the Gauss points; it returns the largest change of v.
func integrateTwice(t *numeric.Panel, v, dv *[nodes]float64, f *[numeric.Order]float64, run float64) float64 {
	slope, turn := t.Integrate(f, run)
	rise, whole := t.Integrate(&slope, run)
	change := 0.0
	set := func(i int, d, s, along float64) {
		next := v[0] + dv[0]*along + d
		change = max(change, math.Abs(next-v[i]))
		v[i], dv[i] = next, dv[0]+s
	}
	for i := range numeric.Order {
		set(i+1, rise[i], slope[i], t.At(i)*run)
	}
	set(nodes-1, whole, turn, run)
	return change
}

// pull returns the line load at x, the cloth's own weight included, and the
// cotangent of the wall there, over a bottom line that is given.
func (p *Problem) pull(x, y, z float64) (w, cot float64, err error) {
	s, err := p.section(x, y, z)
	if err != nil {
		return 0, 0, err
	}
	w = p.Load.At(x) + p.ClothWeight*s.Girth()
	return w, s.cot(), nil
}

// section returns the section at x with the cord at (y, z); its error names x.
func (p *Problem) section(x, y, z float64) (Section, error) {
	s, err := NewSection(y, z-p.Bottom(x), p.Radius(x))
	return s, errorAt(x, err)
}

// errorAt returns the error of a section with the station that it is for.
func errorAt(x float64, err error) error {
	if bad, ok := err.(SectionError); ok {
		bad.X = x
		return bad
	}
	return err
}

// measure fills in the running length of a segment.
func measure(tables *numeric.Panel, st *segment, run float64) {
	var ds [numeric.Order]float64
	for i := range ds {
		ds[i] = math.Sqrt(1 + st.dy[i+1]*st.dy[i+1] + st.dz[i+1]*st.dz[i+1])
	}
	arc, whole := tables.Integrate(&ds, run)
	copy(st.arc[1:], arc[:])
	st.arc[nodes-1] = whole
}

// loads fills in the line load at every node of a segment.
func (s *solver) loads(st *segment) {
	for i, frac := range s.tables.Nodes() {
		// Just inside the ends, so that a load that jumps there is this panel's.
		x := st.from + min(max(frac, 1e-9), 1-1e-9)*(st.to-st.from)
		if sec, err := s.p.section(x, st.y[i], st.z[i]); err == nil {
			st.w[i] = s.p.Load.At(x) + s.p.ClothWeight*sec.Girth()
		}
	}
}

// path integrates over every panel between the stations given, which run from
// the start outwards.
func (r *integrator) path(s state, stations []float64) ([]segment, state, error) {
	out := make([]segment, 0, len(stations)-1)
	for i := 1; i < len(stations); i++ {
		st, next, err := r.panel(s, stations[i-1], stations[i])
		if err != nil {
			return nil, s, err
		}
		out = append(out, st)
		s = next
	}
	return out, s, nil
}

// stations divides a..b (either way round) at every break between and into
// panels of at most longest mm.
func stations(a, b float64, breaks []float64, longest float64) []float64 {
	lo, hi := min(a, b), max(a, b)
	cuts := []float64{lo}
	for _, x := range breaks {
		// A break closer than this to the last is the same one with noise.
		if x > cuts[len(cuts)-1]+1e-6 && x < hi-1e-6 {
			cuts = append(cuts, x)
		}
	}
	cuts = append(cuts, hi)
	out := []float64{lo}
	for i := 1; i < len(cuts); i++ {
		from, to := cuts[i-1], cuts[i]
		n := int(math.Ceil((to - from) / longest))
		for k := 1; k <= n; k++ {
			out = append(out, from+(to-from)*float64(k)/float64(n))
		}
		out[len(out)-1] = to
	}
	if a > b {
		sort.Sort(sort.Reverse(sort.Float64Slice(out)))
	}
	return out
}
