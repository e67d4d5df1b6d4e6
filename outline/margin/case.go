package margin

import (
	"slingloft/outline/hung"
	"slingloft/outline/state"
)

// Case is one load case with the static loads that it puts on every part: the largest
// of all its states.
type Case struct {
	Kind   state.Kind
	Side   float64    // largest pull in a side cord, N
	Leg    [2]float64 // largest pull in a leg, by [hung.End], N
	Hang   [2]float64 // pull in a hang line and on its support, N
	Bar    [2]float64 // thrust along a bar, N; 0: none
	Cloth  float64    // largest tension across the bed, N/mm
	States []state.State
}

// casesOf gathers states by their kinds, extremes left out.
func casesOf(states []state.State) []Case {
	var out []Case
	for k := range state.Kind(state.Kinds) {
		c := Case{Kind: k}
		for _, s := range states {
			if s.Kind == k && !s.Extreme {
				c.add(s)
			}
		}
		if len(c.States) > 0 {
			out = append(out, c)
		}
	}
	return out
}

// add counts a state in.
func (c *Case) add(s state.State) {
	c.States = append(c.States, s)
	at := func(m state.Member) float64 { return m.Load(s.Loads) }
	c.Side = max(c.Side, at(state.SideCord))
	for _, e := range hung.Ends() {
		c.Leg[e] = max(c.Leg[e], at(state.LegOf(e)))
		c.Hang[e] = max(c.Hang[e], at(state.LineOf(e)))
		c.Bar[e] = max(c.Bar[e], at(state.BarOf(e)))
	}
	c.Cloth = max(c.Cloth, at(state.Cloth))
}

// Bound returns why loads of the case are bounds rather than those of equilibrium, nil
// where all its states were found at rest.
func (c Case) Bound() error {
	for _, s := range c.States {
		if s.Bound != nil {
			return s.Bound
		}
	}
	return nil
}
