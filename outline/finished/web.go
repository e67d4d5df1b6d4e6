package finished

import (
	"math"

	"slingloft/outline/geom"
	"slingloft/outline/numeric"
)

// web is points joined by lines that pull and, some of them, push, with weights at
// the points. Its rest is where its potential energy is least. Points are numbered so
// that lines join near ones only.
type web struct {
	at      []geom.Point3
	weight  []float64 // N, of each point
	anchors [2]geom.Point3
	lines   []line
}

// line joins two points; an anchor e has the number −1 − e.
type line struct {
	a, b     int
	long, ea float64 // unstretched, mm; stiffness, N
	pushes   bool
}

// webBand is how far apart the numbers of two joined unknowns are at most: all
// between two neighbouring stations of two points each.
const webBand = 11

func (w *web) place(i int) geom.Point3 {
	if i < 0 {
		return w.anchors[-1-i]
	}
	return w.at[i]
}

// pull returns the pull in a line, N; one that does not push has none below 0.
func (w *web) pull(l *line) float64 {
	p := l.ea * (w.place(l.b).Minus(w.place(l.a)).Len()/l.long - 1)
	if p < 0 && !l.pushes {
		return 0
	}
	return p
}

// energy returns the potential energy, N mm.
func (w *web) energy() float64 {
	e := 0.0
	for i, f := range w.weight {
		e += float64(f * w.at[i].Z)
	}
	for i := range w.lines {
		p := w.pull(&w.lines[i])
		e += float64(p*p) * w.lines[i].long / (2 * w.lines[i].ea)
	}
	return e
}

// forces returns the gradient of the energy and, where m is not nil, adds its second
// derivatives to that.
func (w *web) forces(m *numeric.Band) []float64 {
	g := make([]float64, 3*len(w.at))
	for i, f := range w.weight {
		g[3*i+2] = f
	}
	for i := range w.lines {
		l := &w.lines[i]
		p := w.pull(l)
		if p == 0 {
			continue
		}
		d := w.place(l.b).Minus(w.place(l.a))
		long := d.Len()
		u := [3]float64{d.X / long, d.Y / long, d.Z / long}
		for k, sign := range [2]float64{-1, 1} {
			at := [2]int{l.a, l.b}[k]
			for c := range u {
				if at >= 0 {
					g[3*at+c] += float64(sign * p * u[c])
				}
			}
		}
		if m != nil {
			stiffen(m, l, u, p/long)
		}
	}
	return g
}

// stiffen adds a line's second derivatives: EA/L along it, its pull over its length
// across it.
func stiffen(m *numeric.Band, l *line, u [3]float64, across float64) {
	along := l.ea/l.long - across
	for i := range 3 {
		for j := range 3 {
			v := float64(along * u[i] * u[j])
			if i == j {
				v += across
			}
			if j <= i && l.a >= 0 {
				m.Add(3*l.a+i, 3*l.a+j, v)
			}
			if j <= i && l.b >= 0 {
				m.Add(3*l.b+i, 3*l.b+j, v)
			}
			if l.a >= 0 && l.b >= 0 {
				m.Add(3*l.b+i, 3*l.a+j, -v)
			}
		}
	}
}

// rest moves the points to where the energy is least: first with lines that give
// easily, among which a long way is soon found, then with their own. It fails with
// numeric.ErrNoConvergence.
func (w *web) rest() error {
	const (
		soft  = 20   // stiffness of the first lines, of all weights
		rough = 1e-3 // force that may be left then, of all weights
		fine  = 1e-9 // and in the end
	)
	total := 0.0
	for _, f := range w.weight {
		total += f
	}
	own := w.lines
	w.lines = append([]line(nil), own...)
	for i := range w.lines {
		w.lines[i].ea = min(own[i].ea, soft*total)
	}
	err := w.descend(rough * total)
	w.lines = own
	if err != nil {
		return err
	}
	return w.descend(fine * total)
}

// descend is Newton's method with as much damping as makes the matrix positive
// definite, until no force is larger than left, N.
func (w *web) descend(left float64) error {
	const (
		mostSteps = 300
		far       = 120.0 // mm, of one step: the lines turn by less than a radian
		least     = 1e-4  // N/mm, of damping
	)
	damping := 0.0
	for range mostSteps {
		m := numeric.NewBand(3*len(w.at), webBand)
		g := w.forces(m)
		if numeric.Largest(g) <= left {
			return nil
		}
		dx, used, ok := damped(m, g, damping, least)
		if !ok {
			break
		}
		share := min(1, far/numeric.Largest(dx))
		if taken := w.step(dx, g, share); taken == 0 {
			damping = max(10*used, least)
		} else if damping = used / 4; taken < share/4 {
			damping = max(4*used, least)
		} else if damping < least {
			damping = 0
		}
	}
	return numeric.ErrNoConvergence
}

// damped solves (m + damping) dx = g, with more damping where that is not positive
// definite.
func damped(m *numeric.Band, g []float64, damping, least float64) (dx []float64, used float64, ok bool) {
	const maxDamping = 1e12
	for ; damping < maxDamping; damping = max(10*damping, least) {
		c := m.Clone()
		for i := range g {
			c.Add(i, i, damping)
		}
		if c.Factor() {
			dx = append([]float64(nil), g...)
			c.Solve(dx)
			return dx, damping, true
		}
	}
	return nil, 0, false
}

// step moves the points against dx, by share or as much less as lets the energy
// fall, and returns by how much; 0 where it does not.
func (w *web) step(dx, g []float64, share float64) float64 {
	const few = 1e-6
	before, old := w.energy(), append([]geom.Point3(nil), w.at...)
	fall := 0.0
	for i, d := range dx {
		fall += float64(d * g[i])
	}
	noise := float64(1e-13 * math.Abs(before))
	for ; share > few; share /= 2 {
		for i := range w.at {
			w.at[i] = old[i].PlusTimes(geom.Pt3(dx[3*i], dx[3*i+1], dx[3*i+2]), -share)
		}
		if w.energy() <= before-float64(1e-4*share*fall)+noise {
			return share
		}
	}
	w.at = old
	return 0
}
