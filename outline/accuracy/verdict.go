package accuracy

import (
	"math"
	"sort"

	"slingloft/outline/finished"
)

// Share is what one cause does to a measure.
type Share struct {
	Cause Cause   `json:"cause"`
	RSS   float64 `json:"rss"`  // mm
	Part  float64 `json:"part"` // of the measure's square
}

// Outcome is one way in which the bed may be off level, and why.
type Outcome struct {
	Measure
	Shares []Share `json:"shares"` // largest first; those of nothing are left out
}

// Largest returns the cause that does most, and whether there is any.
func (o Outcome) Largest() (Share, bool) {
	if len(o.Shares) == 0 {
		return Share{}, false
	}
	return o.Shares[0], true
}

// Halved returns the root of the sum of squares with the largest cause halved, mm.
func (o Outcome) Halved() float64 {
	l, _ := o.Largest()
	return math.Sqrt(max(0, float64(o.RSS*o.RSS)-float64(0.75*l.RSS*l.RSS)))
}

// Half returns half of what the maker's own measure for a cause is: mm, for the
// contraction and the set a ratio.
func (w Working) Half(c Cause) float64 {
	return [...]float64{w.Marking, w.Scatter, w.Kappa, w.Set, w.Tape, w.Bar, w.Marking, w.Sewing, math.Max(w.Line, w.Anchor), w.Kappa}[c] / 2
}

// LevelRates returns how the bed's level changes, mm per mm, with every part, by
// central differences about a pose. Of a weight in the middle a right part does what the
// left one does, mirrored.
func LevelRates(h finished.Hammock, p finished.Pose, w finished.Weight) ([finished.Parts]finished.Level, error) {
	var out [finished.Parts]finished.Level
	for k := range out {
		if left, ok := opposite(finished.Part(k)); ok && w.Aside == 0 {
			out[k] = mirrored(out[left])
			continue
		}
		var level [2]finished.Level
		for i, mm := range [2]float64{step, -step} {
			q, err := h.HangFrom(p, finished.Part(k).Change(mm), w)
			if err != nil {
				return out, err
			}
			level[i] = q.Level
		}
		out[k] = level[0].Minus(level[1]).Times(1 / (2 * step))
	}
	return out, nil
}

// opposite returns the left part that a right one mirrors.
func opposite(p finished.Part) (left finished.Part, ok bool) {
	switch p {
	case finished.HeadRightLeg, finished.FootRightLeg, finished.RightSide:
		return p - 1, true
	}
	return p, false
}

func mirrored(l finished.Level) finished.Level {
	l.Across[0], l.Across[1] = -l.Across[0], -l.Across[1]
	return l
}

// Outcomes returns how level the bed comes out with a stack of errors and what makes
// it so; allowed is what the design accepts, mm. Errors that the maker sets right on
// the spot, those of [Rigging], are left out.
func Outcomes(stack []Component, rates [finished.Parts]finished.Level, allowed float64) []Outcome {
	var out []Outcome
	for kind := range MeasureKindCount {
		o := Outcome{Measure: Measure{Kind: kind, Allowed: allowed}}
		var squares [CauseCount]float64
		for _, c := range stack {
			if c.Cause == Rigging {
				continue
			}
			e := 0.0
			for k, mm := range c.Off {
				e += float64(mm * measure(rates[k], kind))
			}
			o.Worst += math.Abs(e)
			squares[c.Cause] += float64(e * e)
		}
		o.finish(squares[:])
		out = append(out, o)
	}
	return out
}

// nothing is the part of all squares below which a cause has none: what the bed's
// symmetry leaves of it is rounding.
const nothing = 1e-12

// finish completes an outcome from the squares by cause.
func (o *Outcome) finish(squares []float64) {
	sum := 0.0
	for _, q := range squares {
		sum += q
	}
	o.RSS = math.Sqrt(sum)
	o.Sure, o.Likely = o.Worst <= o.Allowed, o.RSS <= o.Allowed
	for c, q := range squares {
		if q == 0 {
			continue
		}
		if q < nothing*sum {
			q = 0
		}
		o.Shares = append(o.Shares, Share{Cause(c), math.Sqrt(q), q / sum})
	}
	sort.SliceStable(o.Shares, func(a, b int) bool { return o.Shares[a].Part > o.Shares[b].Part })
}
