package drape

import "slingloft/outline/numeric"

// links is a sleeper as rigid links, end to end: each disc that it carries stands at a part
// of the way along one of them. Its unknowns are the heights of the joints.
type links struct {
	joints []float64 // stations, rising
	on     map[int]carried
}

// carried is where a disc stands: between joint link and the next.
type carried struct {
	link int
	part float64
}

// carries reports whether a disc stands on the links.
func (c *links) carries(disc int) bool {
	_, ok := c.on[disc]
	return ok
}

// carry sets a disc on the link at a station; false past the ends.
func (c *links) carry(disc int, x float64) bool {
	for k := 1; k < len(c.joints); k++ {
		a, b := c.joints[k-1], c.joints[k]
		if x >= a && x <= b {
			c.on[disc] = carried{k - 1, (x - a) / (b - a)}
			return true
		}
	}
	return false
}

// stiff is how much the joints resist a turn, N mm/rad: little beside any weight, own
// choice, so that a joint over no cloth has a place.
const stiff = 1000.0

// joints solves for the joints' heights: the nodes' band with the discs of the links taken
// out, bordered by the few unknowns of the links (Schur complement).
type joints struct {
	c     *links
	order []int // discs, rising
	reach [][]float64
	plain [][]float64 // what the nodes do for each joint's height
	small *numeric.Band
	pull  []float64 // on the joints
}

// newJoints prepares the border of a factored band; false where a joint is not held.
func newJoints(b *body, band *numeric.Band) (*joints, bool) {
	j := &joints{c: &b.sleeper}
	m := len(b.sleeper.joints)
	if m == 0 {
		return j, true
	}
	for d := range b.n {
		if b.sleeper.carries(d) {
			j.order = append(j.order, d)
		}
	}
	j.small, j.pull = numeric.NewBand(m, m-1), make([]float64, m)
	for range m {
		j.reach = append(j.reach, make([]float64, b.n))
	}
	for i := range b.contacts {
		t := &b.contacts[i]
		on, ok := b.sleeper.on[t.disc]
		if !ok {
			continue
		}
		p := t.penalty / float64(t.high*t.high)
		parts := [2]float64{1 - on.part, on.part}
		for k, x := range parts {
			j.reach[on.link+k][t.node] += float64(p * x)
			for l := 0; l <= k; l++ {
				j.small.Add(on.link+k, on.link+l, p*x*parts[l])
			}
		}
	}
	b.sleeper.bend(j.small)
	for k := range m {
		w := append([]float64(nil), j.reach[k]...)
		band.Solve(w)
		j.plain = append(j.plain, w)
		for l := 0; l <= k; l++ {
			j.small.Add(k, l, -dot(j.reach[l], w))
		}
	}
	return j, j.small.Factor()
}

// bend adds the resistance of the joints to turning: of the difference of the slopes of two
// links.
func (c *links) bend(m *numeric.Band) {
	x := c.joints
	for k := 1; k < len(x)-1; k++ {
		a, b := 1/(x[k]-x[k-1]), 1/(x[k+1]-x[k])
		parts := [3]float64{a, -a - b, b}
		for i, p := range parts {
			for l := 0; l <= i; l++ {
				m.Add(k-1+i, k-1+l, stiff*p*parts[l])
			}
		}
	}
}

// gather takes what pulls the discs of the links off the right side.
func (j *joints) gather(right []float64) {
	clear(j.pull)
	for _, d := range j.order {
		on := j.c.on[d]
		j.pull[on.link] += float64((1 - on.part) * right[d])
		j.pull[on.link+1] += float64(on.part * right[d])
		right[d] = 0
	}
}

// settle completes the solution of the band by that of the links.
func (j *joints) settle(z []float64) {
	if j.small == nil {
		return
	}
	h := append([]float64(nil), j.pull...)
	for k := range h {
		h[k] += dot(j.reach[k], z)
	}
	j.small.Solve(h)
	for k, w := range j.plain {
		for i, x := range w {
			z[i] += float64(h[k] * x)
		}
	}
	for _, d := range j.order {
		on := j.c.on[d]
		z[d] = float64((1-on.part)*h[on.link]) + float64(on.part*h[on.link+1])
	}
}
