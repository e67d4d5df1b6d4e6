package accuracy

import (
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
	Outcomes []Outcome // by [MeasureKind]
	Working  Working   // how truly the maker works
	Notes    []Note
}

// Of returns how truly a made hammock comes out under a weight that it was designed
// for. What is set on the spot, hang lines and anchors, counts as true. The error is
// that of [finished.Hammock.Hang].
func Of(h finished.Hammock, d design.Design, sp cord.Splicing, w finished.Weight) (Report, error) {
	pose, err := h.Hang(finished.Change{}, w)
	if err != nil {
		return Report{}, err
	}
	level, err := LevelRates(h, pose, w)
	if err != nil {
		return Report{}, err
	}
	heights, err := h.Rates(pose)
	if err != nil {
		return Report{}, err
	}
	r := Report{Effects: Effects(heights, level), Working: WorkingOf(d.Accuracy, sp.Shown.Estimate)}
	r.Lengths = Lengths(h.Shape, d, sp, r.Working)
	r.Outcomes = Outcomes(Stack(h.Shape, d, sp, r.Working), level, d.Accuracy.Level)
	r.Notes = []Note{[...]Note{Left: SetIsOne, CutOff: SetCutOff, Preload: SetPulled}[r.Working.Taken], LinesTrue, SleeperCentred}
	return r, nil
}

// measure returns the part of a level that is of a kind.
func measure(l finished.Level, k MeasureKind) float64 {
	return [MeasureKindCount]float64{l.Along, l.Across[hung.Head], l.Across[hung.Foot], l.Sag}[k]
}
