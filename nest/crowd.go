package nest

import (
	"math"
	"slices"

	"slingloft/outline/geom"
)

// crowd is a lay in which pieces may overlap, of a given length, together with
// what the search needs at hand to tell how badly. Obstacles follow the pieces
// in every slice that goes over bodies.
type crowd struct {
	p      *problem
	n      int     // pieces
	all    int     // pieces and obstacles
	length float64 // room along x
	ease   float64 // how much wider than the stock the room across is
	spots  []spot

	form       []int32   // of every body
	x, y       []float64 // lower left corner of every body
	right, top []float64 // upper right corner, the gap added
	clash      []float64 // n rows of all: badness of every pair
	weight     []float64 // n rows of all: what the search has learned
	hits       []int     // of every piece: how many bodies it clashes with
	raised     []bool    // of every piece: some weight may be above 1
	size       []float64 // of every form: the side of a square of its area
	w, h       []float64 // of every form
	moves      int       // pieces that were offered a better place
}

// newCrowd returns an empty crowd for p.
func newCrowd(p *problem) *crowd {
	n, all := len(p.pieces), len(p.pieces)+len(p.blocks)
	c := &crowd{
		p: p, n: n, all: all, ease: p.ease,
		spots: make([]spot, n),
		form:  make([]int32, all),
		x:     make([]float64, all), y: make([]float64, all),
		right: make([]float64, all), top: make([]float64, all),
		clash: make([]float64, n*all), weight: make([]float64, n*all),
		hits: make([]int, n), raised: make([]bool, n),
	}
	for _, f := range p.atlas.forms {
		c.size = append(c.size, math.Sqrt(f.area))
		c.w = append(c.w, f.w)
		c.h = append(c.h, f.h)
	}
	for k, b := range p.blocks {
		c.stand(n+k, b.form, b.at)
	}
	return c
}

// stand puts body i somewhere without looking at clashes.
func (c *crowd) stand(i, form int, at geom.Point) {
	c.form[i] = int32(form)
	c.x[i], c.y[i] = at.X, at.Y
	c.right[i] = at.X + c.w[form] + c.p.atlas.gap
	c.top[i] = at.Y + c.h[form] + c.p.atlas.gap
}

// load takes over spots and length and finds all clashes.
func (c *crowd) load(spots []spot, length float64) {
	c.length = length
	copy(c.spots, spots)
	for i, s := range spots {
		c.stand(i, c.formOf(i, s.pose), s.at)
	}
	for i := range c.n {
		c.reckon(i)
	}
}

func (c *crowd) formOf(i, pose int) int { return c.p.pieces[i].poses[pose].form }

// move puts piece i in its new place and brings its clashes up to date.
func (c *crowd) move(i int, s spot) {
	c.spots[i] = s
	c.stand(i, c.formOf(i, s.pose), s.at)
	c.reckon(i)
}

// reckon finds all clashes of piece i anew.
func (c *crowd) reckon(i int) {
	f := int(c.form[i])
	row := c.clash[i*c.all : (i+1)*c.all]
	for j, old := range row {
		v := 0.0
		if j != i {
			v = c.badness(f, c.x[i], c.y[i], j)
		}
		if v == old {
			continue
		}
		row[j] = v
		change := btoi(v > 0) - btoi(old > 0)
		c.hits[i] += change
		if j < c.n {
			c.clash[j*c.all+i] = v
			c.hits[j] += change
		}
	}
}

// badness returns how badly form f at (x, y) overlaps body j, 0 where not.
func (c *crowd) badness(f int, x, y float64, j int) float64 {
	gap := c.p.atlas.gap
	if c.x[j] >= x+c.w[f]+gap || c.y[j] >= y+c.h[f]+gap || c.right[j] <= x || c.top[j] <= y {
		return 0
	}
	l := c.p.atlas.between(f, int(c.form[j]))
	return l.weigh * math.Sqrt(c.p.atlas.depth(l, c.x[j]-x, c.y[j]-y))
}

// weigh returns the factor of the root of the depth in the badness of a clash.
// The root makes many small overlaps count for more than one deep one; the factor
// grows with the sizes of both, since large pieces find another place less
// easily (after Gardeyn, Vanden Berghe & Wauters 2025, "An open-source heuristic
// to reboot 2D nesting research", with penetration depth in the place of their
// measure).
func weigh(f, g form) float64 {
	s, t := math.Sqrt(f.area), math.Sqrt(g.area)
	return math.Sqrt(min(s, t) * s * t)
}

// cost returns the weighted badness that piece i would have in form f at (x, y),
// given up once it reaches bound.
func (c *crowd) cost(i, f int, x, y, bound float64) float64 {
	gap := c.p.atlas.gap
	r, t := x+c.w[f]+gap, y+c.h[f]+gap
	weight := c.weight[i*c.all : (i+1)*c.all]
	xs, ys, rs, ts := c.x[:c.all], c.y[:c.all], c.right[:c.all], c.top[:c.all]
	sum := 0.0
	for j, xj := range xs {
		if xj >= r || rs[j] <= x || ys[j] >= t || ts[j] <= y || j == i {
			continue
		}
		l := c.p.atlas.between(f, int(c.form[j]))
		if d := c.p.atlas.depth(l, xj-x, ys[j]-y); d > 0 {
			sum += float64(weight[j] * l.weigh * math.Sqrt(d))
			if sum >= bound {
				return sum
			}
		}
	}
	return sum
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

func btoi(b bool) int {
	if b {
		return 1
	}
	return 0
}
