package hung

import (
	"math"

	"slingloft/outline/numeric"
)

// interpolator reads values between the nodes of a segment.
type interpolator struct{ panel numeric.Panel }

// Station is the hung shape at one x.
type Station struct {
	X      float64
	Y      float64 // half opening between the cord centres, mm
	Z      float64 // height of the cords, mm
	DY, DZ float64 // slopes of the cord per mm of x; at a bar, those of the bay
	Bottom float64 // height of the bottom line, mm
	Load   float64 // whole line load, cloth included, N/mm
	Arc    float64 // cord length from the head tail's end, mm

	Section Section // zero past the tails and where the section does not exist
	Tension float64 // of one cord, N
	Cloth   float64 // tension of the cloth across, N/mm; 0 without load
}

// At returns the shape at x. Past the ends of the tails it is the leg, run on
// straight, up to and beyond the apex.
func (s *Shape) At(x float64) Station {
	first, last := s.cord[0].from, s.cord[len(s.cord)-1].to
	q := s.inside(min(max(x, first), last))
	if x < first || x > last {
		run := x - q.X
		q.Y += q.DY * run
		q.Z += q.DZ * run
		q.Arc += run * math.Sqrt(1+q.DY*q.DY+q.DZ*q.DZ)
		q.X, q.Load = x, 0
	}
	q.Bottom = s.Problem.Bottom(x)
	q.Tension = s.Thrust * math.Sqrt(1+q.DY*q.DY+q.DZ*q.DZ)
	if sec, err := s.Problem.section(x, q.Y, q.Z); err == nil {
		q.Section = sec
		q.Cloth = q.Load / (2 * math.Sin(sec.Wall))
	}
	return q
}

// Cord returns only the place of the cord at x, half opening and height: the
// part of [Shape.At] that a surface needs at every one of its points.
func (s *Shape) Cord(x float64) (y, z float64) {
	first, last := s.cord[0].from, s.cord[len(s.cord)-1].to
	in := min(max(x, first), last)
	st := &s.cord[s.find(in)]
	t := (in - st.from) / (st.to - st.from)
	y, z = s.tab.panel.Interpolate(&st.y, t), s.tab.panel.Interpolate(&st.z, t)
	if in != x {
		y += s.tab.panel.Interpolate(&st.dy, t) * (x - in)
		z += s.tab.panel.Interpolate(&st.dz, t) * (x - in)
	}
	return y, z
}

// SectionAt returns the section at x, past the tails' ends as well.
func (s *Shape) SectionAt(x float64) (Section, error) {
	y, z := s.Cord(x)
	return s.Problem.section(x, y, z)
}

// SectionBeyond returns the section at x as [Shape.SectionAt] does up to the
// tails' ends. Past them it is the smooth continuation that a flat pattern needs
// for a few cells of its net: the sides close in ever more slowly, so that they
// never meet, and may lean past the vertical; the underbody gives way where the
// cords would come inside it.
func (s *Shape) SectionBeyond(x float64) (Section, error) {
	first, last := s.cord[0].from, s.cord[len(s.cord)-1].to
	end := min(max(x, first), last)
	if end == x {
		return s.SectionAt(x)
	}
	q := s.inside(end)
	past := x - end
	y := q.Y * math.Exp(q.DY*past/q.Y)
	z := q.Z + q.DZ*past
	h := z - s.Problem.Bottom(x)
	// The radius of the circle that the cords lie on, and a little less to lie outside.
	touching := (float64(y*y) + float64(h*h)) / (2 * h) * (1 - 1e-6)
	sec, err := leaningSection(y, h, min(s.Problem.Radius(x), touching))
	return sec, errorAt(x, err)
}

// inside reads the shape at a station within the tails' ends. At a bar it reads
// the bay's side.
func (s *Shape) inside(x float64) Station {
	i := s.find(x)
	if x == s.Problem.Bed.Span/2 && i > 0 && s.cord[i].from == x {
		i--
	}
	st := &s.cord[i]
	t := (x - st.from) / (st.to - st.from)
	get := func(v *[nodes]float64) float64 { return s.tab.panel.Interpolate(v, t) }
	return Station{X: x, Y: get(&st.y), Z: get(&st.z), DY: get(&st.dy), DZ: get(&st.dz),
		Load: get(&st.w), Arc: s.arcs[i] + get(&st.arc)}
}

// Arc returns the length of cord from station a to station b, mm, along the
// tails' cloth and, past it, along the legs; negative for b < a.
func (s *Shape) Arc(a, b float64) float64 { return s.At(b).Arc - s.At(a).Arc }

// Ends of the cloth's centre line, head and foot, mm.
func (s *Shape) TailEnds() (head, foot float64) {
	return s.cord[0].from, s.cord[len(s.cord)-1].to
}

// Stations returns n+1 stations evenly from the head tail's end to the foot
// tail's end, with both bars and the load's breaks among them, rising.
func (s *Shape) Stations(n int) []float64 {
	head, foot := s.TailEnds()
	half := s.Problem.Bed.Span / 2
	marks := append(s.Problem.Load.Breaks(), -half, half)
	for i := range n + 1 {
		marks = append(marks, min(head+(foot-head)*float64(i)/float64(n), foot))
	}
	sortFloats(marks)
	out := marks[:0]
	for _, x := range marks {
		near := len(out) > 0 && x-out[len(out)-1] < 1e-6
		if x >= head && x <= foot && !near {
			out = append(out, x)
		}
	}
	return out
}

// MaxTension returns the largest tension of the cords from apex to apex, N, and
// its station. It looks on both sides of each bar.
func (s *Shape) MaxTension() (tension, x float64) {
	for i := range s.cord {
		st := &s.cord[i]
		frac := s.tab.panel.Nodes()
		for k := range nodes {
			t := s.Thrust * math.Sqrt(1+st.dy[k]*st.dy[k]+st.dz[k]*st.dz[k])
			if t > tension {
				tension, x = t, st.from+frac[k]*(st.to-st.from)
			}
		}
	}
	return tension, x
}
