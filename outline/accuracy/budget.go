package accuracy

import (
	"math"

	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
)

// Measure is one way in which the bed may be off level.
type Measure struct {
	Kind    MeasureKind `json:"name"`
	Worst   float64     `json:"worst"`   // mm
	RSS     float64     `json:"rss"`     // mm
	Allowed float64     `json:"allowed"` // by the design, mm
	// Sure says that even the worst case is allowed; Likely that the root of the sum
	// of squares is.
	Sure   bool `json:"sure"`
	Likely bool `json:"likely"`
}

// Verdict says how the measure stands to what is allowed.
func (m Measure) Verdict() Verdict {
	switch {
	case m.Sure:
		return Within
	case m.Likely:
		return LikelyMet
	}
	return LikelyMore
}

// Report is the whole stack.
type Report struct {
	Lengths  []Length
	Effects  []Effect
	Measures []Measure
	Notes    []Note
}

// Of returns how truly the hammock comes out on hang lines of the given lengths,
// mm. The lines themselves are adjusted on the spot and count as true. The error is
// that of [finished.Hammock.Hang].
func Of(s *hung.Shape, d design.Design, sp cord.Splicing, on Hanging) (Report, error) {
	effects, err := Effects(finished.Of(s, on.Lines), on.Weight)
	if err != nil {
		return Report{}, err
	}
	r := Report{Lengths: Lengths(s, d, sp), Effects: effects, Notes: []Note{SetIsOne, LinesTrue, SleeperCentred}}
	for k := range MeasureKindCount {
		m := Measure{Kind: k, Allowed: d.Accuracy.Level}
		together, squares := 0.0, 0.0
		for _, l := range r.Lengths {
			// A left and a right cord of each kind, with the other sign across.
			left := r.effect(l.Part)
			for _, per := range [2]float64{measure(left, k), measure(mirrored(left), k)} {
				together += per * l.Set
				for _, c := range l.Sources {
					e := math.Abs(per * c.Error)
					m.Worst += float64(c.Count) * e
					squares += float64(c.Count) * e * e
				}
			}
		}
		m.Worst += math.Abs(together)
		m.RSS = math.Sqrt(squares + together*together)
		m.Sure, m.Likely = m.Worst <= m.Allowed, m.RSS <= m.Allowed
		r.Measures = append(r.Measures, m)
	}
	return r, nil
}

// Hanging is the place and the sleeper that effects are found for.
type Hanging struct {
	Lines  [2]float64 // hang lines from apex to hook, mm, by [hung.End]
	Weight finished.Weight
}

// effect returns what one mm of a cord does to the level.
func (r Report) effect(p cord.Part) finished.Level {
	for _, e := range r.Effects {
		if e.Part == p {
			return e.Level
		}
	}
	return finished.Level{}
}

func mirrored(l finished.Level) finished.Level {
	l.Across[0], l.Across[1] = -l.Across[0], -l.Across[1]
	return l
}

// measure returns the part of a level that is of a kind.
func measure(l finished.Level, k MeasureKind) float64 {
	return [MeasureKindCount]float64{l.Along, l.Across[hung.Head], l.Across[hung.Foot], l.Sag}[k]
}
