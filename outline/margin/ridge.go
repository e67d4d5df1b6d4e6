package margin

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/state"
)

// ridge checks a ridge of a cover that carries. It is as long as the apexes are apart under
// the sleeper, and pulls nothing there. Where somebody hangs the bed too tight, with the
// lines flatter than designed, it holds what they then pull more than the bed does: at an
// end at which they carry V, at an angle α of the lines, V/tan α less what they pull as
// designed. It is tied at both ends.
func (a *assessor) ridge(c Case) {
	if !a.design.Cover.Carries() {
		return
	}
	k := Check{Part: RidgeCord, Case: c.Kind, Factor: 1, Required: given(a.design.Margins.Cord, CordMargin), Source: Source{Kind: KnotSheet},
		Capacity: float64(a.design.Cover.Strength) * KnotKeeps}
	for _, s := range c.States {
		k.Load = max(k.Load, RidgePull(s, float64(a.design.Cover.Flattest)))
	}
	if k.Load == 0 {
		return
	}
	if a.design.Cover.Strength == 0 {
		k.Missing = []design.Key{design.KeyCoverStrength}
	}
	a.add(k, func(needed float64) []Way { return []Way{atLeast(design.KeyCoverStrength, needed/KnotKeeps)} })
}

// RidgePull returns what a ridge that carries holds in a state where the hang lines stand
// at an angle, rad, N; 0 where that is no flatter than they do, or not known.
func RidgePull(s state.State, flattest float64) float64 {
	most := 0.0
	for e, at := range s.Hang {
		line := state.LineOf(ends()[e]).Load(s.Loads)
		if at > 0 {
			most = max(most, line*math.Sin(at)/math.Tan(flattest)-line*math.Cos(at))
		}
	}
	return most
}
