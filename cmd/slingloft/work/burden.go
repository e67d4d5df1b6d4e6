package work

import (
	"slingloft/outline/design"
	"slingloft/outline/margin"
	"slingloft/outline/rig"
	"slingloft/outline/state"
)

// burden is what the made bed carries in all its states.
type burden struct {
	margins margin.Report
	roll    rig.Roll
}

// burdenOf puts the made bed of a rigged plan through its states.
func burdenOf(p *Plan) burden {
	bed, who := p.Made(), p.Person()
	out := burden{p.loaded(p.Design, state.Of(bed, who), state.GiveOf(bed, who)), p.steadiness()}
	r := &out.roll
	roll, err := state.RollOf(bed, who)
	if err != nil {
		// Not at rest even with the weight a hair aside.
		r.Over = true
		return out
	}
	r.Turn, r.Share, r.Over = roll.Turn, roll.Share, roll.Over
	r.Stable, r.Rocks = roll.How == state.Stable, roll.How == state.Rocks
	return out
}

// loaded returns what every part carries in some states of the made bed. The design has
// the one who lies in it as its sleeper.
func (p *Plan) loaded(d design.Design, states []state.State, give state.Give) margin.Report {
	return margin.Of(margin.Input{Shape: &p.Shape, Design: d, Hook: d.Hang.HookStrength, Joined: p.joined(),
		States: states, Give: give, LinesGuessed: !p.Hangs})
}

// joined reports whether the body has lengthwise joins.
func (p *Plan) joined() bool { return len(p.Sewn.Joins) > 0 }

// Margins returns what every part carries in every state of the made bed, against what
// it holds.
func (p *Plan) Margins() margin.Report { return p.burden().margins }

// Roll returns how steady the made bed is.
func (p *Plan) Roll() rig.Roll { return p.burden().roll }
