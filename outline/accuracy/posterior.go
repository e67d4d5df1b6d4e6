package accuracy

import (
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
)

// What is not known of a bed that hangs: by how much every part is off, how far the
// weight lies aside, and the height of the level that is measured over.
const (
	asideAt = int(finished.Parts) + iota
	levelAt
	unknowns
)

// anyLevel is the standard deviation of the height of the level that is measured
// over, mm: far above any, since it may be any.
const anyLevel = 1e4

// row is how a height, or what is made of heights, follows the unknowns.
type row [unknowns]float64

// posterior is what is known of the unknowns: the likeliest and their covariance.
type posterior struct {
	mean row
	cov  [unknowns]row
}

// prior returns what the stack of errors says before anything is read.
func prior(stack []Component, aside float64) *posterior {
	b := new(posterior)
	for _, c := range stack {
		for i, x := range c.Off {
			for j, y := range c.Off {
				b.cov[i][j] += float64(x * y)
			}
		}
	}
	b.cov[asideAt][asideAt] = aside * aside
	b.cov[levelAt][levelAt] = anyLevel * anyLevel
	return b
}

// dot returns the sum of products.
func (r *row) dot(q *row) float64 {
	sum := 0.0
	for i, v := range r {
		sum += float64(v * q[i])
	}
	return sum
}

// plus returns r + k q.
func (r row) plus(q row, k float64) row {
	for i := range r {
		r[i] += float64(k * q[i])
	}
	return r
}

// times returns the covariance times a row.
func (b *posterior) times(r *row) row {
	var out row
	for i := range out {
		out[i] = b.cov[i].dot(r)
	}
	return out
}

// update takes in one reading with the given variance: least squares, one reading
// after the other (R. E. Kalman, "A New Approach to Linear Filtering and Prediction
// Problems", J. Basic Eng. 82 (1960) 35).
func (b *posterior) update(r row, read, variance float64) {
	with := b.times(&r)
	spread := r.dot(&with) + variance
	miss := (read - r.dot(&b.mean)) / spread
	b.mean = b.mean.plus(with, miss)
	for i := range b.cov {
		b.cov[i] = b.cov[i].plus(with, -with[i]/spread)
	}
}

// spread returns the standard deviation of what follows a row.
func (b *posterior) spread(r row) float64 {
	with := b.times(&r)
	return math.Sqrt(max(0, r.dot(&with)))
}

// rowOf returns the row of one height, picked from all, over the level.
func rowOf(r finished.Rates, pick func(finished.Heights) float64) row {
	var out row
	for k, h := range r.Part {
		out[k] = pick(h)
	}
	out[asideAt] = pick(r.Aside)
	out[levelAt] = 1
	return out
}

// tip returns what picks one bar tip.
func tip(e hung.End, s bed.Side) func(finished.Heights) float64 {
	return func(h finished.Heights) float64 { return h.Tips[e][s] }
}

// modes are the three ways in which four tips can be off level, mm: end against end,
// both bars rolled alike, and the head bar rolled against the foot bar.
type modes struct{ pitch, roll, twist row }

// modesOf makes the modes of four tips. Slopes of the bars are taken over their
// lengths, so that a bed that is turned as a whole has no twist, and times the mean
// of these.
func modesOf(tips [2][2]row, bars [2]float64) modes {
	mean := (bars[hung.Head] + bars[hung.Foot]) / 2
	sum := func(k [2][2]float64) row {
		var out row
		for e := range k {
			for s := range k[e] {
				out = out.plus(tips[e][s], k[e][s])
			}
		}
		return out
	}
	h, f := mean/bars[hung.Head], mean/bars[hung.Foot]
	return modes{
		pitch: sum([2][2]float64{{0.5, 0.5}, {-0.5, -0.5}}),
		roll:  sum([2][2]float64{{h / 2, -h / 2}, {f / 2, -f / 2}}),
		twist: sum([2][2]float64{{h, -h}, {-f, f}}),
	}
}

// tips returns the four tips over their mean: what [modesOf] takes apart.
func (m modes) tips(bars [2]float64) [2][2]row {
	mean := (bars[hung.Head] + bars[hung.Foot]) / 2
	var out [2][2]row
	for e := range out {
		end := 1 - 2*float64(e)
		for s := range out[e] {
			half := (1 - 2*float64(s)) * bars[e] / mean / 2
			out[e][s] = row{}.plus(m.pitch, end/2).plus(m.roll, half).plus(m.twist, half*end/2)
		}
	}
	return out
}
