package finished_test

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/mat"

	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// net is an independent judge: the hammock as points joined by springs, with
// weights at them, at rest where its potential energy is least. No equation of balance is
// written down. This file knows nothing of the package under test: the hammock's measures
// are taken off the designed shape anew, see [sketch].
type net struct {
	at      []geom.Point3 // three unknowns each
	fixed   map[int]geom.Point3
	springs []spring
	ribs    []rib
	weight  []float64 // N, at each point
}

// spring joins two points; slack says that it does not push.
type spring struct {
	a, b     int // −1 − e: the anchor of end e
	long, ea float64
	slack    bool
}

// rib is a section with its weight.
type rib struct {
	left, right        int
	half, radius, weft float64 // weft: stiffness of the strip, N per unit strain; 0: none
	weight, body       float64 // N: with the cloth, and alone
	centre, aside      float64
}

// height returns h for half an opening b, and θ, by halving.
func (r *rib) height(b, pull float64) (h, theta float64) {
	girth := func(th float64) float64 {
		if r.weft == 0 {
			return r.half
		}
		return r.half * (1 + pull/(2*math.Sin(th))/r.weft)
	}
	lo, hi := 1e-4, math.Pi/2
	for range 60 {
		mid := (lo + hi) / 2
		if (girth(mid)-r.radius*mid)*math.Cos(mid)+r.radius*math.Sin(mid) > b {
			lo = mid
		} else {
			hi = mid
		}
	}
	t := girth(lo) - r.radius*lo
	return t*math.Sin(lo) + r.radius*(1-math.Cos(lo)), lo
}

// energy returns the potential energy against the middle between the cords.
func (r *rib) energy(b, phi float64) float64 {
	pull := r.weight * math.Cos(phi)
	h, theta := r.height(b, pull)
	e := r.weight*-(h-r.centre)*math.Cos(phi) + r.body*r.aside*math.Sin(phi)
	if r.weft > 0 {
		strain := pull / (2 * math.Sin(theta)) / r.weft
		e += r.weft * strain * strain / 2 * 2 * r.half
	}
	return e
}

// system is what a Newton step needs; reach is the width of its matrix.
const reach = 11

type system struct {
	h *mat.SymBandDense
	g []float64
}

func (s *system) add(i, j int, v float64) {
	if i <= j {
		s.h.SetSymBand(i, j, s.h.At(i, j)+v)
	}
}

// assemble returns the energy; with s not nil it adds up gradient and Hessian.
func (n *net) assemble(s *system) float64 {
	e := 0.0
	for i, w := range n.weight {
		e += w * n.at[i].Z
		if s != nil {
			s.g[3*i+2] += w
		}
	}
	for _, q := range n.springs {
		e += n.spring(q, s)
	}
	for i := range n.ribs {
		e += n.rib(&n.ribs[i], s)
	}
	return e
}

func (n *net) place(i int) geom.Point3 {
	if i < 0 {
		return n.fixed[i]
	}
	return n.at[i]
}

func coords(a geom.Point3) [3]float64 { return [3]float64{a.X, a.Y, a.Z} }

func (n *net) spring(q spring, s *system) float64 {
	d := n.place(q.b).Minus(n.place(q.a))
	long := d.Len()
	k := q.ea / q.long
	pull := k * (long - q.long)
	if q.slack && pull < 0 {
		return 0
	}
	if s != nil {
		u := coords(d.Unit())
		for i, p := range [2]int{q.a, q.b} {
			for a := range 3 {
				if p < 0 {
					continue
				}
				s.g[3*p+a] += pull * u[a] * float64(2*i-1)
				for j, o := range [2]int{q.a, q.b} {
					for b := range 3 {
						if o < 0 {
							continue
						}
						v := (k - pull/long) * u[a] * u[b]
						if a == b {
							v += pull / long
						}
						if i != j {
							v = -v
						}
						s.add(3*p+a, 3*o+b, v)
					}
				}
			}
		}
	}
	return pull * (long - q.long) / 2
}

func (n *net) rib(r *rib, s *system) float64 {
	l, o := n.at[r.left], n.at[r.right]
	dy, dz := l.Y-o.Y, l.Z-o.Z
	long, phi := math.Hypot(dy, dz), math.Atan2(dz, dy)
	b := long / 2
	e := r.energy(b, phi)
	if s != nil {
		const db, dp = 0.02, 2e-5
		at := func(i, j float64) float64 { return r.energy(b+i*db, phi+j*dp) }
		up, down, more, less := at(1, 0), at(-1, 0), at(0, 1), at(0, -1)
		vb, vp := (up-down)/(2*db), (more-less)/(2*dp)
		vbb, vpp := (up+down-2*e)/(db*db), (more+less-2*e)/(dp*dp)
		vbp := (at(1, 1) + at(-1, -1) - at(1, -1) - at(-1, 1)) / (4 * db * dp)
		u := [2]float64{dy / long, dz / long}
		v := [2]float64{-u[1], u[0]}
		for i, p := range [2]int{r.left, r.right} {
			si := float64(1 - 2*i)
			s.g[3*p+2] += r.weight / 2
			for a := range 2 {
				s.g[3*p+1+a] += si * (vb*u[a]/2 + vp*v[a]/long)
				for j, q := range [2]int{r.left, r.right} {
					sj := float64(1 - 2*j)
					for c := range 2 {
						h := vbb*u[a]*u[c]/4 + vbp*(u[a]*v[c]+v[a]*u[c])/(2*long) + vpp*v[a]*v[c]/(long*long)
						h += vb*v[a]*v[c]/(2*long) - vp*(u[a]*v[c]+v[a]*u[c])/(long*long)
						s.add(3*p+1+a, 3*q+1+c, si*sj*h)
					}
				}
			}
		}
	}
	return e + r.weight*(l.Z+o.Z)/2
}

// rest moves the points to where the energy is least.
func (n *net) rest(t testing.TB) {
	t.Helper()
	size := 3 * len(n.at)
	damping := 0.0
	for step := 0; ; step++ {
		if step == 400 {
			t.Fatal("the net does not come to rest")
		}
		s := system{mat.NewSymBandDense(size, reach, nil), make([]float64, size)}
		before := n.assemble(&s)
		var dx mat.VecDense
		for {
			for i := range size {
				s.add(i, i, damping)
			}
			var c mat.BandCholesky
			if c.Factorize(s.h) && c.SolveVecTo(&dx, mat.NewVecDense(size, s.g)) == nil {
				break
			}
			damping = max(10*damping, 1e-4)
		}
		largest, old := 0.0, append([]geom.Point3(nil), n.at...)
		for i := range size {
			largest = max(largest, math.Abs(dx.AtVec(i)))
		}
		share := min(1, 40/largest)
		for {
			for i := range n.at {
				n.at[i] = old[i].PlusTimes(geom.Point3{X: dx.AtVec(3 * i), Y: dx.AtVec(3*i + 1), Z: dx.AtVec(3*i + 2)}, -share)
			}
			if n.assemble(nil) <= before+1e-9*math.Abs(before) || share < 1e-6 {
				break
			}
			share /= 2
		}
		if largest*share < 1e-6 && damping < 1e-3 {
			return
		}
		damping /= 5
		if share < 0.1 {
			damping = max(damping, 1e-3) * 20
		}
	}
}

// pull returns the pull in a spring, N.
func (n *net) pull(k int) float64 {
	q := n.springs[k]
	return q.ea * (n.place(q.b).Minus(n.place(q.a)).Len()/q.long - 1)
}

// judge is the net of a made hammock with its points by name.
type judge struct {
	net
	bars, lines [2]int    // springs
	legs        [2][2]int // springs
	apex        [2]int
	tips        [2][2]int
	cords       [2][]int // springs of the side cords
	middle      int      // rib at mid-bay
}

// cells is how many stretches a half bay has, some 30 mm each; a tail has tailCells.
const (
	cells     = 24
	tailCells = 6
)

// sketch is a made hammock with what is wrong of it and what lies in it, as the judge
// measures it: lengths mm, stiffness N, of the weft N/mm.
type sketch struct {
	shape                       *hung.Shape
	sideEA, legEA, lineEA, weft float64
	leg                         [2][2]float64 // longer, by end and side
	side, line, bar             [2]float64    // longer
	girth                       float64       // wider
	anchor                      [2]geom.Point3
	load                        hung.Load
	centre, aside               float64
}

// tied returns where the hang line of an end is tied: a line's length on from the apex, as
// steep as both sides pull there.
func (m sketch) tied(e int) geom.Point3 {
	end := m.shape.Ends[e]
	pull := math.Hypot(end.Horizontal, end.Vertical)
	out := float64(2*e - 1)
	return geom.Point3{X: end.ApexX + out*lines[e]*end.Horizontal/pull, Z: end.ApexZ + lines[e]*end.Vertical/pull}
}

// newJudge lays a net out along the designed shape.
func newJudge(m sketch) *judge {
	s := m.shape
	j := &judge{middle: tailCells + cells}
	j.fixed = map[int]geom.Point3{}
	xs := even(s)
	j.at = append(j.at, geom.Point3{X: s.Ends[0].ApexX, Z: s.Ends[0].ApexZ})
	for _, x := range xs {
		y, z := s.Cord(x)
		j.at = append(j.at, geom.Point3{X: x, Y: y, Z: z}, geom.Point3{X: x, Y: -y, Z: z})
	}
	j.at = append(j.at, geom.Point3{X: s.Ends[1].ApexX, Z: s.Ends[1].ApexZ})
	j.weight = make([]float64, len(j.at))
	for e := range 2 {
		j.tie(m, e, len(xs)-1)
	}
	for i := 1; i < len(xs); i++ {
		j.stretch(m, i, xs[i-1], xs[i])
	}
	for i := range xs {
		j.ribs = append(j.ribs, newRib(m, i, xs))
	}
	return j
}

// even returns the stations of a net.
func even(s *hung.Shape) []float64 {
	half := s.Problem.Bed.Span / 2
	head, foot := s.TailEnds()
	var xs []float64
	lay := func(a, b float64, n int) {
		for i := range n {
			xs = append(xs, a+(b-a)*float64(i)/float64(n))
		}
	}
	lay(head, -half, tailCells)
	lay(-half, half, 2*cells)
	lay(half, foot, tailCells)
	return append(xs, foot)
}

func stiff(ea float64) float64 {
	if ea == 0 {
		return 5e7
	}
	return ea
}

// cut returns the length of a cord that is to be long under a pull.
func cut(long, pull, ea float64) float64 { return long / (1 + pull/stiff(ea)) }

func (j *judge) join(a, b int, long, ea float64) int {
	j.springs = append(j.springs, spring{a, b, long, stiff(ea), false})
	return len(j.springs) - 1
}

// station returns the point of a station and side.
func station(i, side int) int { return 1 + 2*i + side }

// tie adds hang line, bar and free legs of an end.
func (j *judge) tie(m sketch, e, last int) {
	end := m.shape.Ends[e]
	j.fixed[-1-e] = m.tied(e).Plus(m.anchor[e])
	j.apex[e] = [2]int{0, len(j.at) - 1}[e]
	line := cut(lines[e], math.Hypot(end.Horizontal, end.Vertical), m.lineEA) + m.line[e]
	j.lines[e] = j.join(-1-e, j.apex[e], line, m.lineEA)
	at := [2]int{tailCells, tailCells + 2*cells}[e]
	j.bars[e] = j.join(station(at, 0), station(at, 1), end.Bar+m.bar[e], 0)
	for side := range 2 {
		j.tips[e][side] = station(at, side)
		j.weight[station(at, side)] += m.shape.Problem.BarWeight[e] / 2
		tail := station([2]int{0, last}[e], side)
		leg := cut(end.Leg-end.TailArc, m.shape.At(end.ApexX).Tension, m.legEA) + m.leg[e][side]
		j.legs[e][side] = j.join(min(j.apex[e], tail), max(j.apex[e], tail), leg, m.legEA)
	}
}

// stretch adds both cords up to station i.
func (j *judge) stretch(m sketch, i int, from, to float64) {
	s := m.shape
	half := s.Problem.Bed.Span / 2
	bay := to > -half && from < half
	ea := m.legEA
	if bay {
		ea = m.sideEA
	}
	for side := range 2 {
		long := cut(s.Arc(from, to), s.At((from+to)/2).Tension, ea)
		if bay {
			long *= 1 + m.side[side]/s.SideArc
		}
		k := j.join(station(i-1, side), station(i, side), long, ea)
		if bay {
			j.cords[side] = append(j.cords[side], k)
		}
	}
}

// newRib returns the section at a station with its share of the weight.
func newRib(m sketch, i int, xs []float64) rib {
	q := m.shape.At(xs[i])
	girth := q.Section.Girth()
	r := rib{left: station(i, 0), right: station(i, 1), radius: q.Section.Radius, half: girth / 2, centre: m.centre, aside: m.aside}
	strip := 0.0
	const fine = 64
	hat := func(a, b float64) { // from 0 at a to 1 at b
		for k := range fine {
			f := (float64(k) + 0.5) / fine
			r.body += f * m.load.At(a+(b-a)*f) * math.Abs(b-a) / fine
			strip += f * math.Abs(b-a) / fine
		}
	}
	if i > 0 {
		hat(xs[i-1], xs[i])
	}
	if i < len(xs)-1 {
		hat(xs[i+1], xs[i])
	}
	r.weight = r.body + m.shape.Problem.ClothWeight*girth*strip
	if m.weft > 0 {
		r.weft = m.weft * strip
		r.half /= 1 + q.Cloth/m.weft
	}
	r.half += m.girth / 2
	return r
}

// bottom returns the bottom of the bed at mid-bay.
func (j *judge) bottom() float64 {
	r := &j.ribs[j.middle]
	l, o := j.at[r.left], j.at[r.right]
	phi := math.Atan2(l.Z-o.Z, l.Y-o.Y)
	h, _ := r.height(math.Hypot(l.Y-o.Y, l.Z-o.Z)/2, r.weight*math.Cos(phi))
	return (l.Z+o.Z)/2 - h*math.Cos(phi)
}
