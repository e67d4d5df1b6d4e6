package geom

import "sort"

// Polyline is an open chain of points.
type Polyline []Point

// Length returns the summed length of the segments, in mm.
func (l Polyline) Length() float64 {
	sum := 0.0
	for i := 1; i < len(l); i++ {
		sum += l[i].Dist(l[i-1])
	}
	return sum
}

// Bounds returns the smallest box around l.
func (l Polyline) Bounds() Box { return BoxOf(l...) }

// Reversed returns l run from its end to its start.
func (l Polyline) Reversed() Polyline {
	r := make(Polyline, len(l))
	for i, p := range l {
		r[len(l)-1-i] = p
	}
	return r
}

// Moved returns l with the motion m applied.
func (l Polyline) Moved(m Motion) Polyline {
	r := make(Polyline, len(l))
	for i, p := range l {
		r[i] = m.Apply(p)
	}
	return r
}

// Arc is a table of the running length of a polyline, for finding places on it
// by length. Build it with [NewArc].
type Arc struct {
	pts Polyline
	at  []float64 // at[i] is the length from the start to pts[i]
}

// NewArc measures l, which needs at least two points to be of use.
func NewArc(l Polyline) Arc {
	at := make([]float64, len(l))
	for i := 1; i < len(l); i++ {
		at[i] = at[i-1] + l[i].Dist(l[i-1])
	}
	return Arc{l, at}
}

// Length returns the whole length in mm.
func (a Arc) Length() float64 {
	if len(a.at) == 0 {
		return 0
	}
	return a.at[len(a.at)-1]
}

// Vertex returns the length from the start to vertex i, in mm.
func (a Arc) Vertex(i int) float64 { return a.at[i] }

// At returns the point at length s from the start and the unit direction of
// travel there; s is clamped to the curve. It panics on an empty curve.
func (a Arc) At(s float64) (p, dir Point) {
	if len(a.pts) == 0 {
		panic("geom: Arc.At on an empty curve")
	}
	if len(a.pts) == 1 {
		return a.pts[0], Point{}
	}
	i := a.segment(s)
	p0, p1 := a.pts[i], a.pts[i+1]
	run := a.at[i+1] - a.at[i]
	t := 0.0
	if run > 0 {
		t = min(max((s-a.at[i])/run, 0), 1)
	}
	return p0.Towards(p1, t), p1.Minus(p0).Unit()
}

// segment returns the index of the segment that holds length s. At a vertex it is
// the one before, also where rounding puts s a little behind.
func (a Arc) segment(s float64) int {
	i := sort.SearchFloat64s(a.at, s-tie)
	return min(max(i-1, 0), len(a.pts)-2)
}

// Between returns the part of the curve from length s to length t, s < t.
func (a Arc) Between(s, t float64) Polyline {
	first, _ := a.At(s)
	last, _ := a.At(t)
	out := Polyline{first}
	for i, at := range a.at {
		if at > s && at < t && a.pts[i] != first {
			out = append(out, a.pts[i])
		}
	}
	if out[len(out)-1] != last {
		out = append(out, last)
	}
	return out
}

// tie is how near two lengths have to be, in mm, for rounding not to tell them apart.
const tie = 1e-9

// Nearest returns the length at which the curve comes closest to p, and that
// distance, both in mm. Of places as near to within a millionth of a micrometre, as
// before a corner of an offset line, it is the first: not one that rounding picks.
func (a Arc) Nearest(p Point) (s, dist float64) {
	best := -1.0
	for i := 0; i+1 < len(a.pts); i++ {
		t := project(p, a.pts[i], a.pts[i+1])
		d := p.Dist(a.pts[i].Towards(a.pts[i+1], t))
		if best < 0 || d < best-tie {
			best, s = d, a.at[i]+float64(t*(a.at[i+1]-a.at[i]))
		}
	}
	return s, max(best, 0)
}
