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
	Rests  []float64     // height there of the underside of what lies on the cloth
	Edge   []geom.Point3 // the cord from corner to corner
	Tips   [2]int        // of it, the bars' tips
	Wall   []float64     // sine of the angle at which the cloth rises to the points of Edge

	Tension  []float64     // of the cord between the points of Edge, N
	Leg      [2]float64    // tension of a leg past the cloth, N
	Thrust   [2]float64    // pull of one leg along x, N
	Line     [2]float64    // pull of a hang line, N; 0 where the apex is fixed
	Apex     [2]geom.Point // x and z
	Vertical [2]float64    // pull of an end's two legs downward, N
	Bar      [2]float64    // thrust along the bar, N

	Flat   []geom.Point // the mesh
	Points []geom.Point3
	Faces  [][3]int
	Cloth  []Cloth // by face

	Steps int
	Last  float64 // how far a node still moved, or stood off its law, in the last step, mm
}

// Cloth is how one triangle of the cloth is drawn.
type Cloth struct {
	Warp, Weft float64 // tension along the threads, N/mm; 0: slack
	Shear      float64 // of the threads from the right angle, rad
	Area       float64 // flat, mm²
}

// Hang hangs a pattern. It returns [ErrUnsettled] with the shape so far where the
// steps do not suffice.
func Hang(p *Pattern, r *Rig, f Stiffness, set Settings) (Hung, error) {
	return NewBed(r, f).Hang(p, set)
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
		h.Rests = append(h.Rests, g.place[2][g.disc[k]])
		h.Edge = append(h.Edge, at(g.edge(k)))
		up := at(g.edge(k)).Minus(at(c[len(c)-2]))
		h.Wall = append(h.Wall, up.Z/up.Len())
	}
	h.Tips = g.mesh.tips
	for _, i := range g.cord {
		_, t := s.force(i)
		h.Tension = append(h.Tension, t)
	}
	for e, i := range g.legs {
		v, t := s.force(i)
		h.Leg[e], h.Thrust[e], h.Vertical[e] = t, math.Abs(v.X), 2*v.Z
	}
	for e, i := range g.lines {
		h.Apex[e] = g.r.Apex[e]
		if g.r.Lines[e] > 0 {
			_, t := s.force(i)
			at := at(g.apex[e])
			h.Line[e], h.Apex[e] = 2*t, geom.Pt(at.X, at.Z)
		}
	}
	g.drawn(s, &h)
	off := 3*len(g.ties) + 2*len(g.contacts)
	for e, t := range g.struts {
		h.Bar[e] = t.penalty * (s.proj[off+e] - s.q[off+e])
	}
	return h
}

// drawn reads how the cloth is drawn. The force of a thread's copy is the weight of the
// copy times what its projection took off it, over the area that it stands for.
func (g *model) drawn(s *splitting, h *Hung) {
	for i := range g.faces {
		f := &g.faces[i]
		c := Cloth{Area: f.area}
		for w, to := range [2]*float64{&c.Warp, &c.Weft} {
			k := g.threads[w][i]
			q, proj := s.q[3*k:3*k+3], s.proj[3*k:3*k+3]
			off := geom.Pt3(q[0]-proj[0], q[1]-proj[1], q[2]-proj[2])
			*to = g.ties[k].penalty * off.Len() / g.spread[k]
		}
		var p, q geom.Point3
		for k, n := range f.node {
			at := geom.Pt3(g.place[0][n], g.place[1][n], g.place[2][n])
			p, q = p.PlusTimes(at, f.warp[k]), q.PlusTimes(at, f.weft[k])
		}
		cos := float64(p.X*q.X) + float64(p.Y*q.Y) + float64(p.Z*q.Z)
		if long := p.Len() * q.Len(); long > 0 {
			c.Shear = math.Abs(math.Asin(max(-1, min(1, cos/long))))
		}
		h.Cloth = append(h.Cloth, c)
	}
}
