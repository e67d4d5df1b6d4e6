package drape

import "slingloft/outline/numeric"

// tie is a thread or a piece of cord: a vector of length 1 while just taut, a
// weighted sum of up to three nodes' places and an offset. Its energy is
// stiffness/2 · (length − 1)² past 1 and nothing below.
type tie struct {
	node      [3]int
	part      [3]float64
	offset    [3]float64
	stiffness float64 // N mm
	penalty   float64 // weight of its split copy in the global solve, N mm
	weft      bool    // it is a weft thread
}

// contact keeps a node outside the rim of its disc, an ellipse whose place is that of its
// lowest point. Its vector is the node's from the disc's middle in half axes, of length 1
// at the rim.
type contact struct {
	node, disc int
	penalty    float64 // of that vector, N mm
	wide, high float64 // half axes across and up, mm
}

// along returns the part of the vector along an axis for a mm of the node's place.
func (t *contact) along(axis int) float64 {
	return [3]float64{0, 1 / t.wide, 1 / t.high}[axis]
}

// strut keeps a bar's tip at half the bar's length or beyond.
type strut struct {
	node          int
	half, penalty float64
}

// face is a triangle's warp and weft vectors, for its shear.
type face struct {
	node       [3]int
	warp, weft [3]float64
	area       float64
}

// body is the discrete model: nodes and discs in one numbering, what joins them
// and what loads them.
type body struct {
	n        int
	ties     []tie
	contacts []contact
	struts   []strut
	faces    []face
	shear    float64
	weight   []float64 // downward on each node or disc, N
	fixed    [3][]bool // by axis, the unknowns that stay 0
	place    [3][]float64
	width    int // of the band
	sleeper  links
}

// resize gives the body n nodes and discs.
func (b *body) resize(n int) {
	b.n, b.weight = n, make([]float64, n)
	for a := range 3 {
		b.fixed[a], b.place[a] = make([]bool, n), make([]float64, n)
	}
}

// matrix returns the weights of all copies on the nodes, along one axis. Discs
// touch across and up, bars hold across.
func (b *body) matrix(axis int) *numeric.Band {
	m := numeric.NewBand(b.n, b.width)
	for i := range b.ties {
		p := &b.ties[i]
		for k := range 3 {
			for l := 0; l <= k; l++ {
				if x := p.penalty * p.part[k] * p.part[l]; x != 0 {
					m.Add(p.node[k], p.node[l], x)
				}
			}
		}
	}
	if axis > 0 {
		for _, t := range b.contacts {
			p := t.penalty * t.along(axis) * t.along(axis)
			m.Add(t.node, t.node, p)
			if axis == 2 && !b.sleeper.carries(t.disc) {
				m.Add(t.disc, t.disc, p)
				m.Add(t.node, t.disc, -p)
			}
		}
	}
	if axis == 1 {
		for _, t := range b.struts {
			m.Add(t.node, t.node, t.penalty)
		}
	}
	for i, fixed := range b.fixed[axis] {
		if fixed {
			m.Hold(i)
		}
	}
	return m
}
