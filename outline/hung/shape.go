package hung

import (
	"math"
	"slingloft/outline/design"
	"sort"
)

// errNeverMeets is met inside the search for a leg: the two sides' cords run
// apart or beside each other.
const errNeverMeets = design.Broken(design.LegsNeverMeet)

// EndShape is what follows at one end of the hung shape.
type EndShape struct {
	Bar     float64 // opening between the cord centres at the bar, mm
	Section Section // at the bar
	TailX   float64 // station of the end of the tail's centre line, mm
	Last    Section // at TailX
	Leg     float64 // cord from bar tip to apex, mm
	TailArc float64 // of it, along the tail's cloth, mm
	ApexX   float64 // station of the apex, mm
	ApexZ   float64 // its height, mm
	Slope   float64 // rise per run of the hang line, tan α

	Horizontal float64 // pull at the apex, N
	Vertical   float64 // N

	BarCompression float64 // thrust along the bar, N
	LegTension     float64 // at the tip, N
	TipTension     float64 // of the side cord at the tip, N
	LegSlope       float64 // inward slope of the leg at the tip, mm per mm of run
	SideSlope      float64 // inward slope of the side cord at the tip
}

// Shape is a solved hung shape.
type Shape struct {
	Problem Problem
	Thrust  float64     // H of one side, N
	Ends    [2]EndShape // by [End]
	SideArc float64     // side cord from tip to tip, mm
	Depth   float64     // side depth at the cord line in the flat cloth, mm
	DepthX  float64     // where it is deepest, mm
	Offset  float64     // by how much the head apex stands higher than the foot's, mm

	cord []segment // from tail end to tail end, along x
	at   []float64 // starts of cord, rising
	arcs []float64 // cord length from the head tail's end to the start of each
	tab  *interpolator
}

// Solve returns the hung shape of a problem, or an [Impossible] that names what
// stands in its way.
func Solve(p Problem) (Shape, error) {
	s, err := newSolver(&p)
	if err != nil {
		return Shape{}, err
	}
	t, err := s.solve()
	if err != nil {
		return Shape{}, err
	}
	for _, e := range [2]End{Head, Foot} {
		if t.tails[e], err = s.tail(&t, e); err != nil {
			return Shape{}, err
		}
	}
	return s.shape(&t), nil
}

// shape collects a solved candidate.
func (s *solver) shape(t *candidate) Shape {
	sh := Shape{Problem: *s.p, Thrust: t.thrust, tab: &interpolator{s.tables}}
	sh.cord = append(sh.cord, reversed(t.tails[Head].path)...)
	sh.cord = append(sh.cord, t.bay...)
	sh.cord = append(sh.cord, t.tails[Foot].path...)
	run := 0.0
	for i := range sh.cord {
		s.loads(&sh.cord[i])
		sh.at = append(sh.at, sh.cord[i].from)
		sh.arcs = append(sh.arcs, run)
		run += sh.cord[i].arc[nodes-1]
	}
	for i := range t.bay {
		sh.SideArc += t.bay[i].arc[nodes-1]
	}
	sh.Depth, sh.DepthX = s.deepest(t)
	for _, e := range [2]End{Head, Foot} {
		sh.Ends[e] = s.endShape(t, e)
	}
	sh.Offset = sh.Ends[Head].ApexZ - sh.Ends[Foot].ApexZ
	return sh
}

// endShape collects one end.
func (s *solver) endShape(t *candidate, e End) EndShape {
	tl := &t.tails[e]
	h := t.thrust
	inY, inZ := t.dy, t.dz
	if e == Foot {
		inY, inZ = -t.end.dy, -t.end.dz
	}
	tension := func(dy, dz float64) float64 { return h * math.Sqrt(1+dy*dy+dz*dz) }
	x := e.Sign() * s.p.Bed.Span / 2
	out := EndShape{
		Bar: s.p.bar(e), TailX: tl.endX, Leg: tl.arc,
		ApexX: tl.apexX, ApexZ: tl.apexZ, Slope: tl.slope,
		Horizontal: 2 * h, Vertical: 2 * h * tl.slope,
		BarCompression: h * (-tl.start.dy - inY),
		LegTension:     tension(tl.start.dy, tl.start.dz),
		TipTension:     tension(inY, inZ),
		LegSlope:       -tl.start.dy, SideSlope: -inY,
	}
	// Both sections were met on the way to the solution, so they exist.
	out.Section, _ = s.p.section(x, tl.start.y, tl.start.z)
	out.Last, _ = s.p.section(tl.endX, tl.end.y, tl.end.z)
	for i := range tl.path {
		out.TailArc += tl.path[i].arc[nodes-1]
	}
	return out
}

// reversed turns segments that run outwards from the head bar into ones that
// run along x.
func reversed(path []segment) []segment {
	out := make([]segment, len(path))
	for k, st := range path {
		r := segment{from: st.to, to: st.from}
		whole := st.arc[nodes-1]
		for i := range nodes {
			j := nodes - 1 - i
			r.y[i], r.dy[i] = st.y[j], -st.dy[j]
			r.z[i], r.dz[i] = st.z[j], -st.dz[j]
			r.w[i], r.arc[i] = st.w[j], whole-st.arc[j]
		}
		out[len(path)-1-k] = r
	}
	return out
}

// find returns the segment that holds x, the first or last one outside.
func (s *Shape) find(x float64) int {
	return max(sort.SearchFloat64s(s.at, math.Nextafter(x, math.Inf(1)))-1, 0)
}
