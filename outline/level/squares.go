package level

import (
	"math"

	"slingloft/outline/drape"
	"slingloft/outline/numeric"
)

const (
	// bent is the second difference of the recut from knot to knot, mm, that weighs as much
	// as a height off by its tolerance. Own choice: a side that waves more is hard to sew.
	bent = 8.0
	// spare is by how much slack cloth may lie off before it is moved, mm: most of its
	// tolerance.
	spare = 0.4 * Else
	// flattest is the least sine of a wall's angle that is reckoned with: a flatter wall
	// would ask for no cloth at all. Own choice.
	flattest = 0.3
)

// squares are the normal equations of the recut's knots: the least sum of squares of what is
// left of the heights, each over its tolerance, and of how the sides bend.
type squares struct {
	*numeric.Band
	right []float64
}

// improve moves the sides by what the heights ask for and returns by how much at most, mm;
// NaN where nothing is asked for. Where slack cloth lies a move counts for less, by its
// tolerance.
func (l *loop) improve(h *drape.Hung) float64 {
	n := len(l.Out)
	q := squares{numeric.NewBand(n, 3), make([]float64, n)}
	l.ask(h, q)
	q.bend(n)
	if !q.Factor() {
		return math.NaN()
	}
	q.Solve(q.right)
	moved := 0.0
	for k, v := range q.right {
		by := math.Abs(v - l.Out[k])
		if at := l.Start + float64(float64(k)*l.Knot); at < l.From-l.Knot || at > l.To+l.Knot {
			by *= Under / Else
		}
		moved = max(moved, by)
	}
	copy(l.Out, q.right)
	return moved
}

// ask adds what the heights ask for. A side moved out by the sine of its wall's angle lowers
// the bottom by one: of a half girth P/2 up to a cord that stays, d(P/2) = sin θ dh.
func (l *loop) ask(h *drape.Hung, q squares) {
	last, mean := len(h.Along)-1, l.mean(h)
	for i, u := range h.Along {
		if !l.judged(h, u) {
			continue
		}
		high, tol := l.off(h, i)-mean, Under
		if u < l.From || u > l.To {
			// Slack cloth is left as it lies while it lies well.
			high, tol = math.Copysign(max(math.Abs(high)-spare, 0), high), Else
		}
		long := (h.Along[min(i+1, last)] - h.Along[max(i-1, 0)]) / (2 * l.Knot)
		lower := 1 / max(h.Wall[i], flattest)
		q.add(l.Recut, u, lower, high+float64(l.At(u)*lower), long/(tol*tol))
	}
}

// add asks at a place that the side's move times by be a value, with a weight.
func (q squares) add(r Recut, u, by, value, weight float64) {
	first, parts := r.basis(u)
	knot := func(k int) int { return min(max(first+k, 0), len(q.right)-1) }
	for a, pa := range parts {
		q.right[knot(a)] += float64(weight * pa * by * value)
		for b, pb := range parts {
			if knot(b) <= knot(a) {
				q.Add(knot(a), knot(b), weight*pa*pb*by*by)
			}
		}
	}
}

// bend asks that the side bend little.
func (q squares) bend(n int) {
	second := [3]float64{1, -2, 1}
	for k := 1; k < n-1; k++ {
		for a, pa := range second {
			for b, pb := range second[:a+1] {
				q.Add(k-1+a, k-1+b, pa*pb/(bent*bent))
			}
		}
	}
}
