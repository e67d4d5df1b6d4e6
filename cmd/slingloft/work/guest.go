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
	// Margins has every check of the guest's states: lying, sitting up, getting in, at the
	// edge.
	Margins margin.Report
}

// Least returns the check that is nearest to what it requires, or furthest below it; its
// capacity is 0 where none is known.
func (g Guest) Least() margin.Check {
	c, _ := g.Margins.Governing()
	return c
}

// Guests returns what every guest of the design finds, each alone in the bed. The bed
// and its anchors stay as they were made for the sleeper. They can be asked for once the
// plan is rigged.
func (p *Plan) Guests() []Guest { return p.guests() }

// guestsOf puts the made bed of a rigged plan under every guest.
func guestsOf(p *Plan) []Guest {
	var out []Guest
	made := p.Made()
	for _, g := range p.Design.Guests {
		found := Guest{Guest: g}
		who := p.person(g.Sleeper)
		found.Lying, found.Err = state.Lie(made, who)
		if found.Err == nil {
			d := p.Design
			d.Sleeper = g.Sleeper
			found.Margins = p.loaded(d, state.Of(made, who), state.Give{})
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
	return p.raised(state.PersonOf(s, hung.LyingLoad(p.Design.Bed, s)))
}
