package drape

import (
	"math"

	"slingloft/outline/geom"
	"slingloft/outline/numeric"
)

// splitting finds the equilibrium by the alternating direction method of
// multipliers: every tie, contact and strut keeps a copy of its vector, which a
// local projection sets by its own law; one prefactored solve brings the nodes
// as near to all copies as the load lets them (S. Boyd et al., Distributed
// Optimization and Statistical Learning via ADMM, 2011; for projections of this
// kind, S. Bouaziz et al., Projective Dynamics, 2014). The state is the copies
// before projection, q; the scaled forces are q − projection.
type splitting struct {
	b      *body
	axes   [3]*numeric.Band
	joints *joints
	q      []float64 // ties three each, contacts two, struts one
	root   []float64 // of the penalty of each entry of q
	proj   []float64
	gap    []float64 // node vector less projection: the plain step of q
	right  [3][]float64
	before [3][]float64
}

// newSplitting factors the global solve, one matrix an axis; false where some
// node is not held.
func newSplitting(b *body) (*splitting, bool) {
	s := &splitting{b: b}
	for a := range 3 {
		m := b.matrix(a)
		if !m.Factor() {
			return nil, false
		}
		s.axes[a] = m
		s.right[a], s.before[a] = make([]float64, b.n), make([]float64, b.n)
	}
	var ok bool
	if s.joints, ok = newJoints(b, s.axes[2]); !ok {
		return nil, false
	}
	n := 3*len(b.ties) + 2*len(b.contacts) + len(b.struts)
	s.q, s.root = make([]float64, n), make([]float64, n)
	s.proj, s.gap = make([]float64, n), make([]float64, n)
	s.vectors(s.q)
	s.roots()
	return s, true
}

// roots fills root.
func (s *splitting) roots() {
	k := 0
	put := func(w float64, n int) {
		for range n {
			s.root[k] = math.Sqrt(w)
			k++
		}
	}
	for i := range s.b.ties {
		put(s.b.ties[i].penalty, 3)
	}
	for i := range s.b.contacts {
		put(s.b.contacts[i].penalty, 2)
	}
	for i := range s.b.struts {
		put(s.b.struts[i].penalty, 1)
	}
}

// vectors puts the vectors of the nodes' places into out.
func (s *splitting) vectors(out []float64) {
	b := s.b
	x, y, z := b.place[0], b.place[1], b.place[2]
	k := 0
	for i := range b.ties {
		p := &b.ties[i]
		n0, n1, n2 := p.node[0], p.node[1], p.node[2]
		c0, c1, c2 := p.part[0], p.part[1], p.part[2]
		out[k] = float64(c0*x[n0]) + float64(c1*x[n1]) + float64(c2*x[n2]) + p.offset[0]
		out[k+1] = float64(c0*y[n0]) + float64(c1*y[n1]) + float64(c2*y[n2]) + p.offset[1]
		out[k+2] = float64(c0*z[n0]) + float64(c1*z[n1]) + float64(c2*z[n2]) + p.offset[2]
		k += 3
	}
	for i := range b.contacts {
		t := &b.contacts[i]
		out[k], out[k+1] = y[t.node]/t.wide, (z[t.node]-z[t.disc])/t.high-1
		k += 2
	}
	for _, t := range b.struts {
		out[k] = y[t.node]
		k++
	}
}

// project sets proj from q, each vector by its own law.
func (s *splitting) project() {
	b := s.b
	k := 0
	for i := range b.ties {
		p := &b.ties[i]
		q, out := s.q[k:k+3], s.proj[k:k+3]
		long := math.Sqrt(float64(q[0]*q[0]) + float64(q[1]*q[1]) + float64(q[2]*q[2]))
		scale := 1.0
		if long > 1 {
			scale = (p.stiffness + float64(p.penalty*long)) / ((p.stiffness + p.penalty) * long)
		}
		out[0], out[1], out[2] = q[0]*scale, q[1]*scale, q[2]*scale
		k += 3
	}
	for range b.contacts {
		q, out := s.q[k:k+2], s.proj[k:k+2]
		long := math.Sqrt(float64(q[0]*q[0]) + float64(q[1]*q[1]))
		switch {
		case long >= 1:
			out[0], out[1] = q[0], q[1]
		case long > 0:
			out[0], out[1] = q[0]/long, q[1]/long
		default:
			out[0], out[1] = 0, -1
		}
		k += 2
	}
	for _, t := range b.struts {
		s.proj[k] = max(s.q[k], t.half)
		k++
	}
}

// global moves the nodes to where loads and copies balance.
func (s *splitting) global() {
	b := s.b
	for a := range 3 {
		copy(s.before[a], b.place[a])
		clear(s.right[a])
	}
	for i, w := range b.weight {
		s.right[2][i] = -w
	}
	s.addShear()
	k := 0
	for i := range b.ties {
		p := &b.ties[i]
		for a := range 3 {
			f := p.penalty * (float64(2*s.proj[k+a]) - s.q[k+a] - p.offset[a])
			r := s.right[a]
			r[p.node[0]] += float64(f * p.part[0])
			r[p.node[1]] += float64(f * p.part[1])
			r[p.node[2]] += float64(f * p.part[2])
		}
		k += 3
	}
	for i := range b.contacts {
		t := &b.contacts[i]
		s.right[1][t.node] += float64(t.penalty * (float64(2*s.proj[k]) - s.q[k]) / t.wide)
		f := t.penalty * (float64(2*s.proj[k+1]) - s.q[k+1] + 1) / t.high
		s.right[2][t.node] += f
		s.right[2][t.disc] -= f
		k += 2
	}
	for _, t := range b.struts {
		s.right[1][t.node] += float64(t.penalty * (float64(2*s.proj[k]) - s.q[k]))
		k++
	}
	for a := range 3 {
		if a == 2 {
			s.joints.gather(s.right[a])
		}
		for i, fixed := range b.fixed[a] {
			if fixed {
				s.right[a][i] = 0
			}
		}
		s.axes[a].Solve(s.right[a])
		if a == 2 {
			s.joints.settle(s.right[a])
		}
		copy(b.place[a], s.right[a])
	}
}

// addShear adds the forces of the weak shear, taken at the places of the last
// step.
func (s *splitting) addShear() {
	b := s.b
	for i := range b.faces {
		f := &b.faces[i]
		var p, q [3]float64
		for a := range 3 {
			x := b.place[a]
			x0, x1, x2 := x[f.node[0]], x[f.node[1]], x[f.node[2]]
			p[a] = float64(f.warp[0]*x0) + float64(f.warp[1]*x1) + float64(f.warp[2]*x2)
			q[a] = float64(f.weft[0]*x0) + float64(f.weft[1]*x1) + float64(f.weft[2]*x2)
		}
		g := b.shear * f.area * (float64(p[0]*q[0]) + float64(p[1]*q[1]) + float64(p[2]*q[2]))
		for a := range 3 {
			r := s.right[a]
			for k, n := range f.node {
				r[n] -= float64(g * (float64(f.warp[k]*q[a]) + float64(f.weft[k]*p[a])))
			}
		}
	}
}

// step does one plain step up to, but without, the move of q by gap. It returns
// the weighted size of the gap.
func (s *splitting) step() (norm float64) {
	s.project()
	s.global()
	s.vectors(s.gap)
	for i := range s.gap {
		s.gap[i] -= s.proj[i]
		norm += float64(float64(s.root[i]*s.gap[i]) * float64(s.root[i]*s.gap[i]))
	}
	return math.Sqrt(norm)
}

// far returns the longest way that a node moved in the last step or that a copy
// stands off its law, mm.
func (s *splitting) far() (far float64) {
	b := s.b
	for i := range b.ties {
		p := &b.ties[i]
		c := max(math.Abs(p.part[0]), math.Abs(p.part[1]), math.Abs(p.part[2]))
		for _, g := range s.gap[3*i : 3*i+3] {
			far = max(far, math.Abs(g)/c)
		}
	}
	k := 3 * len(b.ties)
	for i := range b.contacts {
		t := &b.contacts[i]
		far = max(far, math.Abs(s.gap[k]*t.wide), math.Abs(s.gap[k+1]*t.high))
		k += 2
	}
	for _, g := range s.gap[k:] {
		far = max(far, math.Abs(g))
	}
	for a := range 3 {
		for i, x := range b.place[a] {
			far = max(far, math.Abs(x-s.before[a][i]))
		}
	}
	return far
}

// force returns the pull of tie i in space and its size, N: that of its first
// node's end.
func (s *splitting) force(i int) (v geom.Point3, size float64) {
	p := &s.b.ties[i]
	c := math.Abs(p.part[0]) * p.penalty
	q, proj := s.q[3*i:3*i+3], s.proj[3*i:3*i+3]
	v = geom.Pt3(q[0]-proj[0], q[1]-proj[1], q[2]-proj[2]).Times(c)
	return v, v.Len()
}

const (
	mixed    = 5  // steps that the acceleration looks back
	reloaded = 10 // steps between two updates of a load that moves with the bed
)

// settle steps until nothing is further off than tol mm, at most the given number
// of times. A mixed step that doubles the gap is taken back.
func (s *splitting) settle(tol float64, maxSteps int, load func(steps int, far float64) error) (steps int, far float64, err error) {
	mix := newMixer(mixed, s.root)
	last := math.Inf(1)
	plain := append([]float64(nil), s.q...)
	for steps = 1; ; steps++ {
		if steps%reloaded == 0 {
			if err := load(steps, far); err != nil {
				return steps, far, err
			}
		}
		norm := s.step()
		if far = s.far(); far < tol || steps == maxSteps {
			return steps, far, nil
		}
		if norm > 2*last && mix.started {
			copy(s.q, plain)
			mix.restart()
			last = math.Inf(1)
			continue
		}
		last = norm
		for i := range plain {
			plain[i] = s.q[i] + s.gap[i]
		}
		mix.next(s.q, s.gap)
	}
}
