package work

import (
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/rig"
	"slingloft/outline/state"
)

// Guest is what another sleeper finds in the bed as it is made.
type Guest struct {
	design.Guest
	Lying state.State // its bottom line at mid-bay stands Lying.Level.Height above the design's
	// Ground is the height of the bottom line at mid-bay above ground, mm; 0 where the
	// design does not say where the bed hangs.
	Ground float64
	Err    error // why there is no such state
	// Checks are one of each part, of the guest's state that loads it most: lying,
	// sitting up, getting in, at the edge.
	Checks []margin.Check
}

// Least returns the check that is nearest to what it requires, or furthest below it, and
// whether any capacity is known.
func (g Guest) Least() (margin.Check, bool) { return margin.Report{Checks: g.Checks}.Governing() }

// Guests returns what every guest of the design finds, each alone in the bed. The bed
// and its anchors stay as they were made for the sleeper.
func (p *Plan) Guests() []Guest {
	var out []Guest
	made := p.Made()
	for _, g := range p.Design.Guests {
		found := Guest{Guest: g}
		who := p.person(g.Sleeper)
		found.Lying, found.Err = state.Lie(made, who)
		if found.Err == nil {
			d := p.Design
			d.Sleeper = g.Sleeper
			found.Checks = p.loaded(d, state.Of(made, who)).ByPart()
		}
		if p.Hangs && found.Err == nil {
			found.Ground = p.Place.Lowest - rig.Lowest(&p.Shape) + found.Lying.Level.Height
		}
		out = append(out, found)
	}
	return out
}

// person returns somebody who lies in the bed.
func (p *Plan) person(s design.Sleeper) state.Person {
	return state.PersonOf(s, hung.LyingLoad(p.Design.Bed, s))
}
