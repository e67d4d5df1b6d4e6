package work

import (
	"slingloft/outline/design"
	"slingloft/outline/piece"
	"slingloft/outline/template"
)

// markable reports the first seam curve that doubles back along its chord, so that no
// offsets from a straight edge mark it, as a fault of what bends it so.
func (p *Plan) markable() error {
	b := p.Design.Bed
	for _, c := range p.Sewn.Curves() {
		if _, err := template.Offsets(c.Line, p.Design.Template.Tick); err == nil {
			continue
		}
		const step = 0.1 // beyond what does not do, own choice: what does is tried for, and come back to
		switch c.Kind {
		case piece.HeadTailSide:
			return p.bounded(design.TailDoublesBack, p.source.Least(design.KeyBedHeadLeg, b.HeadLeg*(1+step)))
		case piece.FootTailSide:
			return p.bounded(design.TailDoublesBack, p.source.Least(design.KeyBedFootLeg, b.FootLeg*(1+step)))
		case piece.BaySide:
			if b.Control == design.SideDepth {
				return p.bounded(design.SideDoublesBack, p.source.Most(design.KeyBedSideDepth, float64(b.ControlValue)*(1-step)))
			}
			return p.Fault(b.ControlKey(), design.Found(design.SideDoublesBack), design.Say(design.ChangeThis))
		}
		return p.Fault(design.KeyBedCut, design.Found(design.EndDoublesBack), design.Say(design.ChangeThis))
	}
	return nil
}

// bounded is a fault of the design's value of a key, with one that may do.
func (p *Plan) bounded(r design.Rule, b design.Bound) design.Faults {
	return design.Faults{p.source.Bounded(design.Found(r), b)}
}
