package drape

import (
	"errors"
	"math"

	"slingloft/outline/geom"
)

// Errors of [Hang].
var (
	ErrLoose     = errors.New("the mesh is not held")
	ErrUnsettled = errors.New("the simulation did not settle")
)

// Hung is the simulated shape.
type Hung struct {
	Along  []float64     // u of the bed's centre line
	Bottom []geom.Point  // its x and z
	Edge   []geom.Point3 // the cord from corner to corner

	Tension  []float64  // of the cord between the points of Edge, N
	Leg      [2]float64 // tension of a leg past the cloth, N
	Thrust   [2]float64 // pull of one leg along x, N
	Vertical [2]float64 // pull of an end's two legs downward, N
	Bar      [2]float64 // thrust along the bar, N

	Flat   []geom.Point // the mesh
	Points []geom.Point3
	Faces  [][3]int

	Steps int
	Last  float64 // how far a node still moved, or stood off its law, in the last step, mm
}

// Hang hangs a pattern. It returns [ErrUnsettled] with the shape so far where the
// steps do not suffice.
func Hang(p *Pattern, r *Rig, f Stiffness, set Settings) (Hung, error) {
	g := newModel(p, r, f, set.Cell)
	s, ok := newSplitting(&g.body)
	if !ok {
		return Hung{}, ErrLoose
	}
	steps, last := s.settle(set.Step, set.Steps, g.load)
	h := g.read(s)
	h.Steps, h.Last = steps, last
	if !(last < set.Step) {
		return h, ErrUnsettled
	}
	return h, nil
}

// Level returns the largest less the smallest height of the bottom line between
// two places u along the cloth, mm.
func (h *Hung) Level(from, to float64) float64 {
	lo, hi := math.Inf(1), math.Inf(-1)
	take := func(z float64) { lo, hi = min(lo, z), max(hi, z) }
	take(h.Height(from))
	take(h.Height(to))
	for i, u := range h.Along {
		if u > from && u < to {
			take(h.Bottom[i].Y)
		}
	}
	return hi - lo
}

// Height returns the height of the bottom line at u along the cloth, mm.
func (h *Hung) Height(u float64) float64 {
	i := 1
	for i < len(h.Along)-1 && h.Along[i] < u {
		i++
	}
	a, b := h.Bottom[i-1].Y, h.Bottom[i].Y
	return a + (b-a)*(u-h.Along[i-1])/(h.Along[i]-h.Along[i-1])
}

// MaxTension returns the largest tension of the cord, N.
func (h *Hung) MaxTension() float64 {
	largest := max(h.Leg[0], h.Leg[1])
	for _, t := range h.Tension {
		largest = max(largest, t)
	}
	return largest
}

// read collects the result. A force is the weight of a split copy times what its
// projection took off it.
func (g *model) read(s *splitting) Hung {
	h := Hung{Flat: g.mesh.flat, Faces: g.mesh.faces}
	at := func(i int) geom.Point3 { return geom.Pt3(g.place[0][i], g.place[1][i], g.place[2][i]) }
	for k, c := range g.chain {
		for _, i := range c {
			h.Points = append(h.Points, at(i))
		}
		low := at(c[0])
		h.Along = append(h.Along, g.mesh.flat[g.mesh.chains[k][0]].X)
		h.Bottom = append(h.Bottom, geom.Pt(low.X, low.Z))
		h.Edge = append(h.Edge, at(g.edge(k)))
	}
	for _, i := range g.cord {
		_, t := s.force(i)
		h.Tension = append(h.Tension, t)
	}
	for e, i := range g.legs {
		v, t := s.force(i)
		h.Leg[e], h.Thrust[e], h.Vertical[e] = t, math.Abs(v.X), 2*v.Z
	}
	off := 3*len(g.ties) + 2*len(g.contacts)
	for e, t := range g.struts {
		h.Bar[e] = t.penalty * (s.proj[off+e] - s.q[off+e])
	}
	return h
}
