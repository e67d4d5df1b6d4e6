package accuracy

import (
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
)

// report fills in what comes of a set of adjustments.
func (b Bed) report(a *Advice, belief *posterior, set Off, s Survey) {
	left := belief.mean
	for k, mm := range set {
		left[k] += mm
	}
	again := left // as it is read again
	if s.Under == Weight {
		again[asideAt] = 0 // put down anew
	}
	tips := b.judged(b.modes(), s).tips(b.Bars)
	for e := range tips {
		for side := range tips[e] {
			pick := tip(hung.End(e), bed.Side(side))
			r := rowOf(b.Rates, pick)
			a.After[e][side] = pick(b.Designed) + r.dot(&again)
			a.OffAfter[e][side] = tips[e][side].dot(&left)
		}
	}
	for k, mm := range set {
		if mm != 0 {
			a.Adjustments = append(a.Adjustments, Adjustment{finished.Part(k), mm, b.moved(finished.Part(k), a.Uncertainty)})
		}
	}
}

// moved returns the largest uncertainty of the tips that a part moves at least half
// as much as any.
func (b Bed) moved(p finished.Part, of [2][2]float64) float64 {
	greatest, out := 0.0, 0.0
	for _, end := range b.Rates.Part[p].Tips {
		for _, rate := range end {
			greatest = max(greatest, math.Abs(rate))
		}
	}
	for e, end := range b.Rates.Part[p].Tips {
		for s, rate := range end {
			if math.Abs(rate) >= greatest/2 {
				out = max(out, of[e][s])
			}
		}
	}
	return out
}

// Way is how an adjustment is made.
type Way int

// The ways.
const (
	TakeIn   Way = iota // an eye, at the apex
	LetOut              // an eye, at the apex
	Shorten             // a line or another length
	Lengthen            // a line or another length
	Lower               // an anchor
	Raise               // an anchor
	WayCount            // how many there are
)

// String returns the way's identifier, as documents for other programs have it.
func (w Way) String() string {
	return [WayCount]string{"take in", "let out", "shorten", "lengthen", "lower", "raise"}[w]
}

// MarshalText writes the way's identifier.
func (w Way) MarshalText() ([]byte, error) { return []byte(w.String()), nil }

// How returns how the adjustment is made.
func (a Adjustment) How() Way {
	less := TakeIn
	switch {
	case a.Part == finished.HeadAnchor || a.Part == finished.FootAnchor:
		less = Lower
	case a.Part > finished.FootRightLeg:
		less = Shorten
	}
	if a.Change < 0 {
		return less
	}
	return less + 1
}
