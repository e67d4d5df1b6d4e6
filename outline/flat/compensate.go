package flat

import (
	"math"

	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// Compensation is what the pattern was narrowed by so that it has the designed
// shape when its weft has stretched under the sleeper.
type Compensation struct {
	Stiffness float64 // of the weft, N/mm per unit strain; 0: not given, nothing done
	Strain    float64 // largest strain of the weft
	At        float64 // its station, mm
	Narrower  float64 // most that a side was moved in, mm
}

// Compensated returns the body with its weft shortened by its strain at the
// working load, N/k at every station, as is practice with tensile structures: the
// flat places move in, the hung lengths stay. The warp carries nothing and keeps
// its length. A stiffness of 0 leaves the body as it is.
func (b Body) Compensated(s *hung.Shape, weft float64) Body {
	if weft == 0 {
		return b
	}
	c := Compensation{Stiffness: weft}
	strain := weftStrain(s, weft)
	b.strain = strain
	moved := func(l geom.Polyline) geom.Polyline {
		out := make(geom.Polyline, len(l))
		for i, p := range l {
			e := strain.at(p.X)
			out[i] = geom.Pt(p.X, p.Y/(1+e))
			if e > c.Strain {
				c.Strain, c.At = e, p.X
			}
			c.Narrower = max(c.Narrower, p.Y-out[i].Y)
		}
		return out
	}
	b.Side = Edge{moved(b.Side.Flat), b.Side.Hung}
	for e := range b.Ends {
		b.Ends[e] = Edge{moved(b.Ends[e].Flat), b.Ends[e].Hung}
		b.Bars[e] = moved(b.Bars[e])
	}
	b.Compensation = c
	return b
}

// spread is over how much of the bed's length a step in the load is taken to
// even out in the cloth, mm to either side: about a hand, own choice. Shear in the
// cloth does this; without it a step in the load would cut a step into the edge.
const spread = 80.0

// strains is the strain of the weft at even flat places from one to another.
type strains struct {
	from, to float64
	of       []float64
}

// at returns the strain at a flat place, 0 where none was taken off.
func (r strains) at(u float64) float64 {
	if len(r.of) == 0 {
		return 0
	}
	n := len(r.of)
	t := (min(max(u, r.from), r.to) - r.from) / (r.to - r.from) * float64(n-1)
	i := min(int(t), n-2)
	return r.of[i] + float64((t-float64(i))*(r.of[i+1]-r.of[i]))
}

// weftStrain returns the strain of the weft over the flat place u: the cloth's
// tension over its stiffness, averaged with weights falling to both sides. Past
// the load's ends it stays what it is there, since a cloth that stretches up to a
// line does not end its stretch in it.
func weftStrain(s *hung.Shape, weft float64) strains {
	head, foot := s.TailEnds()
	from, to := head, foot
	if breaks := s.Problem.Load.Breaks(); len(breaks) > 0 {
		const inside = 1.0 // mm, on the loaded side of the load's end
		from, to = max(from, breaks[0]+inside), min(to, breaks[len(breaks)-1]-inside)
	}
	// A table over the stations: the average is needed at every outline point.
	const step = 10.0
	n := int(math.Ceil((foot-head)/step)) + 1
	raw := func(x float64) float64 { return s.At(min(max(x, from), to)).Cloth / weft }
	table := make([]float64, n)
	for i := range table {
		x := head + (foot-head)*float64(i)/float64(n-1)
		const samples = 8
		sum, all := 0.0, 0.0
		for k := -samples; k <= samples; k++ {
			w := 1 - math.Abs(float64(k))/(samples+1)
			sum += w * raw(x+spread*float64(k)/samples)
			all += w
		}
		table[i] = sum / all
	}
	return strains{head, foot, table}
}
