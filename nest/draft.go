package nest

import (
	"math"
	"slices"

	"slingloft/outline/geom"
)

// draft is a lay in which pieces may overlap, of a given length, together with
// what the search needs at hand to tell how badly.
type draft struct {
	p        *problem
	n        int        // pieces
	all      int        // pieces and obstacles
	length   float64    // room along x
	widening float64    // how much wider than the stock the room across is
	spots    []spot     // of the pieces, then the obstacles
	boxes    []geom.Box // the same, see atlas.box

	losses      []float64   // n rows of all: loss of every pair
	weight      []float64   // n rows of all: of the losses, raised where overlaps persist
	overlapping []int       // of every piece: how many of all it overlaps
	raised      []bool      // of every piece: some weight may be above 1
	moves       int         // pieces that were offered a better place
	late        func() bool // reports that time is up; nil: never
}

// newDraft returns an empty draft for p.
func newDraft(p *problem) *draft {
	n, all := len(p.pieces), len(p.pieces)+len(p.blocks)
	c := &draft{
		p: p, n: n, all: all, widening: p.widening,
		spots: make([]spot, all), boxes: make([]geom.Box, all),
		losses: make([]float64, n*all), weight: make([]float64, n*all),
		overlapping: make([]int, n), raised: make([]bool, n),
	}
	for k, s := range p.blocks {
		c.put(n+k, s)
	}
	return c
}

// put places body i, a piece or an obstacle, without looking for overlaps.
func (c *draft) put(i int, s spot) { c.spots[i], c.boxes[i] = s, c.p.atlas.box(s) }

// load takes over the pieces' spots and the length and finds all overlaps, or, where
// time is up, not all.
func (c *draft) load(spots []spot, length float64) {
	c.length = length
	for i, s := range spots {
		c.put(i, s)
	}
	for i := range c.n {
		if c.late != nil && c.late() {
			return
		}
		c.evaluate(i)
	}
}

// move puts piece i in its new place and brings its overlaps up to date.
func (c *draft) move(i int, s spot) {
	c.put(i, s)
	c.evaluate(i)
}

// fit returns s moved into the room that there is for its form.
func (c *draft) fit(s spot) spot {
	room := c.room(s.form)
	s.at.X = min(max(s.at.X, 0), room.X)
	s.at.Y = min(max(s.at.Y, 0), room.Y)
	return s
}

// room returns how far right and up the corner of a form may go.
func (c *draft) room(form int) geom.Point {
	size := c.p.atlas.forms[form].size
	return geom.Pt(max(c.length-size.X, 0), max(c.p.height+c.widening-size.Y, 0))
}

// area returns the area of piece i.
func (c *draft) area(i int) float64 { return c.p.atlas.forms[c.spots[i].form].area }

// evaluate finds all overlaps of piece i anew.
func (c *draft) evaluate(i int) {
	row := c.losses[i*c.all : (i+1)*c.all]
	for j, old := range row {
		v := 0.0
		if j != i && c.boxes[i].Overlaps(c.boxes[j]) {
			v = c.loss(i, j)
		}
		if v == old {
			continue
		}
		row[j] = v
		change := 0
		if old == 0 {
			change = 1
		} else if v == 0 {
			change = -1
		}
		c.overlapping[i] += change
		if j < c.n {
			c.losses[j*c.all+i] = v
			c.overlapping[j] += change
		}
	}
}

// loss returns how badly piece i overlaps j, 0 where not. The root makes many
// small overlaps count for more than one deep one; see lossScale for the factor.
func (c *draft) loss(i, j int) float64 {
	s, t := c.spots[i], c.spots[j]
	l := c.p.atlas.between(s.form, t.form)
	return l.scale * math.Sqrt(c.p.atlas.depth(l, t.at.X-s.at.X, t.at.Y-s.at.Y))
}

// weightedLoss returns the weighted loss of piece i where it is.
func (c *draft) weightedLoss(i int) float64 {
	sum := 0.0
	for j := range c.all {
		sum += float64(c.weight[i*c.all+j] * c.losses[i*c.all+j])
	}
	return sum
}

// totalLoss returns the loss of all pairs, without weights.
func (c *draft) totalLoss() float64 {
	sum := 0.0
	for i := range c.n {
		if c.overlapping[i] == 0 {
			continue
		}
		for _, v := range c.losses[i*c.all+i : (i+1)*c.all] {
			sum += v
		}
	}
	return sum
}

// overlaps reports whether piece i overlaps anything.
func (c *draft) overlaps(i int) bool { return c.overlapping[i] > 0 }

// resetWeights sets all weights to 1.
func (c *draft) resetWeights() {
	for k := range c.weight {
		c.weight[k] = 1
	}
	clear(c.raised)
}

const (
	minRise = 1.2  // of a weight after a sweep, for the mildest overlap
	maxRise = 1.5  // for the worst
	decay   = 0.95 // of the weight of a pair that does not overlap
)

// updateWeights raises the weights of pairs that overlap, the worst most, and lets the
// others sink back (guided local search: Voudouris & Tsang 1999; for nesting
// Egeblad, Nielsen & Odgaard 2007, Umetani et al. 2009).
func (c *draft) updateWeights() {
	worst := 0.0
	for i, n := range c.overlapping {
		if n > 0 {
			worst = max(worst, slices.Max(c.losses[i*c.all:(i+1)*c.all]))
		}
	}
	for i, n := range c.overlapping {
		if n > 0 || c.raised[i] {
			c.updateRow(i, worst)
		}
	}
}

func (c *draft) updateRow(i int, worst float64) {
	c.raised[i] = false
	losses := c.losses[i*c.all : (i+1)*c.all]
	for j, w := range c.weight[i*c.all : (i+1)*c.all] {
		v := losses[j]
		if v == 0 && w == 1 {
			continue
		}
		if v > 0 {
			w *= minRise + (maxRise-minRise)*v/worst
		} else {
			w = max(1, w*decay)
		}
		c.weight[i*c.all+j] = w
		c.raised[i] = c.raised[i] || w > 1
	}
}
