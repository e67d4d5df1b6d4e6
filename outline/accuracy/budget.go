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
	Name    string  `json:"name"`
	Worst   float64 `json:"worst"`   // mm
	RSS     float64 `json:"rss"`     // mm
	Allowed float64 `json:"allowed"` // by the design, mm
	// Sure says that even the worst case is allowed; Likely that the root of the sum
	// of squares is.
	Sure   bool `json:"sure"`
	Likely bool `json:"likely"`
}

// Verdict says in words how the measure stands to what is allowed.
func (m Measure) Verdict() string {
	switch {
	case m.Sure:
		return "within, even at worst"
	case m.Likely:
		return "likely within"
	}
	return "likely more than accepted"
}

// Report is the whole stack.
type Report struct {
	Lengths  []Length  `json:"lengths"`
	Effects  []Effect  `json:"effects"`
	Measures []Measure `json:"measures"`
	Notes    []string  `json:"notes"`
}

// Of returns how truly the hammock comes out on hang lines of the given lengths,
// mm. The lines themselves are adjusted on the spot and count as true. The error is
// that of [finished.Hammock.Hang].
func Of(s *hung.Shape, d design.Design, sp cord.Splicing, on Hanging) (Report, error) {
	effects, err := Effects(finished.Of(s, on.Lines), on.Weight)
	if err != nil {
		return Report{}, err
	}
	r := Report{Lengths: Lengths(s, d, sp), Effects: effects, Notes: []string{
		"first-load set is the same part of every cord, so that it acts on the level as one error",
		"hang lines are adjusted on the spot and count as true",
		"the sleeper keeps to the middle of the cloth",
	}}
	for i, name := range measureNames() {
		m := Measure{Name: name, Allowed: d.Accuracy.Level}
		together, squares := 0.0, 0.0
		for _, l := range r.Lengths {
			// A left and a right cord of each kind, with the other sign across.
			left := r.effect(l.Name)
			for _, per := range [2]float64{measure(left, i), measure(mirrored(left), i)} {
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

// effect returns what one mm of the named cord does to the level.
func (r Report) effect(name string) finished.Level {
	for _, e := range r.Effects {
		if e.Name == name {
			return e.Level
		}
	}
	return finished.Level{}
}

func mirrored(l finished.Level) finished.Level {
	l.Across[0], l.Across[1] = -l.Across[0], -l.Across[1]
	return l
}

func measureNames() [4]string {
	return [4]string{"along the bed, head bar against foot bar", "across at the head bar", "across at the foot bar", "sag at mid-bay"}
}

// measure returns the part of a level that the name of the same place speaks of.
func measure(l finished.Level, i int) float64 {
	return [4]float64{l.Along, l.Across[hung.Head], l.Across[hung.Foot], l.Sag}[i]
}
