package nest

import (
	"math"
	"slices"

	"slingloft/outline/geom"
)

// crowd is a lay in which pieces may overlap, of a given length, together with
// what the search needs at hand to tell how badly.
type crowd struct {
	p      *problem
	n      int        // pieces
	all    int        // pieces and obstacles
	length float64    // room along x
	ease   float64    // how much wider than the stock the room across is
	spots  []spot     // of the pieces, then the obstacles
	boxes  []geom.Box // the same, see atlas.box

	clash  []float64 // n rows of all: badness of every pair
	weight []float64 // n rows of all: what the search has learned
	hits   []int     // of every piece: how many of all it clashes with
	raised []bool    // of every piece: some weight may be above 1
	moves  int       // pieces that were offered a better place
}

// newCrowd returns an empty crowd for p.
func newCrowd(p *problem) *crowd {
	n, all := len(p.pieces), len(p.pieces)+len(p.blocks)
	c := &crowd{
		p: p, n: n, all: all, ease: p.ease,
		spots: make([]spot, all), boxes: make([]geom.Box, all),
		clash: make([]float64, n*all), weight: make([]float64, n*all),
		hits: make([]int, n), raised: make([]bool, n),
	}
	for k, s := range p.blocks {
		c.stand(n+k, s)
	}
	return c
}

// stand puts body i, a piece or an obstacle, somewhere without looking at clashes.
func (c *crowd) stand(i int, s spot) { c.spots[i], c.boxes[i] = s, c.p.atlas.box(s) }

// load takes over the pieces' spots and the length and finds all clashes.
func (c *crowd) load(spots []spot, length float64) {
	c.length = length
	for i, s := range spots {
		c.stand(i, s)
	}
	for i := range c.n {
		c.reckon(i)
	}
}

// move puts piece i in its new place and brings its clashes up to date.
func (c *crowd) move(i int, s spot) {
	c.stand(i, s)
	c.reckon(i)
}

// fit returns s moved into the room that there is for its form.
func (c *crowd) fit(s spot) spot {
	room := c.room(s.form)
	s.at.X = min(max(s.at.X, 0), room.X)
	s.at.Y = min(max(s.at.Y, 0), room.Y)
	return s
}

// room returns how far right and up the corner of a form may go.
func (c *crowd) room(form int) geom.Point {
	size := c.p.atlas.forms[form].size
	return geom.Pt(max(c.length-size.X, 0), max(c.p.height+c.ease-size.Y, 0))
}

// area returns the area of piece i.
func (c *crowd) area(i int) float64 { return c.p.atlas.forms[c.spots[i].form].area }

// reckon finds all clashes of piece i anew.
func (c *crowd) reckon(i int) {
	row := c.clash[i*c.all : (i+1)*c.all]
	for j, old := range row {
		v := 0.0
		if j != i && c.boxes[i].Overlaps(c.boxes[j]) {
			v = c.badness(i, j)
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
		c.hits[i] += change
		if j < c.n {
			c.clash[j*c.all+i] = v
			c.hits[j] += change
		}
	}
}

// badness returns how badly piece i overlaps j, 0 where not. The root makes many
// small overlaps count for more than one deep one; see weigh for the factor.
func (c *crowd) badness(i, j int) float64 {
	s, t := c.spots[i], c.spots[j]
	l := c.p.atlas.between(s.form, t.form)
	return l.weigh * math.Sqrt(c.p.atlas.depth(l, t.at.X-s.at.X, t.at.Y-s.at.Y))
}

// costHere returns the weighted badness of piece i where it is.
func (c *crowd) costHere(i int) float64 {
	sum := 0.0
	for j := range c.all {
		sum += float64(c.weight[i*c.all+j] * c.clash[i*c.all+j])
	}
	return sum
}

// total returns the badness of all pairs, without weights.
func (c *crowd) total() float64 {
	sum := 0.0
	for i := range c.n {
		if c.hits[i] == 0 {
			continue
		}
		for _, v := range c.clash[i*c.all+i : (i+1)*c.all] {
			sum += v
		}
	}
	return sum
}

// clashes reports whether piece i overlaps anything.
func (c *crowd) clashes(i int) bool { return c.hits[i] > 0 }

// calm sets all weights to 1.
func (c *crowd) calm() {
	for k := range c.weight {
		c.weight[k] = 1
	}
	clear(c.raised)
}

const (
	leastRise = 1.2  // of a weight after a sweep, for the mildest clash
	mostRise  = 1.5  // for the worst
	fade      = 0.95 // of the weight of a pair that does not clash
)

// learn raises the weights of pairs that clash, the worst most, and lets the
// others sink back (guided local search: Voudouris & Tsang 1999; for nesting
// Egeblad, Nielsen & Odgaard 2007, Umetani et al. 2009).
func (c *crowd) learn() {
	worst := 0.0
	for i, n := range c.hits {
		if n > 0 {
			worst = max(worst, slices.Max(c.clash[i*c.all:(i+1)*c.all]))
		}
	}
	for i, n := range c.hits {
		if n > 0 || c.raised[i] {
			c.learnRow(i, worst)
		}
	}
}

func (c *crowd) learnRow(i int, worst float64) {
	c.raised[i] = false
	clash := c.clash[i*c.all : (i+1)*c.all]
	for j, w := range c.weight[i*c.all : (i+1)*c.all] {
		v := clash[j]
		if v == 0 && w == 1 {
			continue
		}
		if v > 0 {
			w *= leastRise + (mostRise-leastRise)*v/worst
		} else {
			w = max(1, w*fade)
		}
		c.weight[i*c.all+j] = w
		c.raised[i] = c.raised[i] || w > 1
	}
}
