package work

import (
	"slingloft/outline/design"
	"slingloft/outline/panel"
	"slingloft/outline/quantity"
)

// tooWide is a body that does not fit on its roll; [remedy.tried] finds what would do.
type tooWide struct {
	*panel.TooWide
	found design.Finding
	key   design.Key // that sets the section at the head bar
	value float64    // of it, mm
	less  float64    // by which it would have to be about less, mm
}

const rollWidth = design.KeyClothWidth

// tooWide says what was found.
func (p *Plan) tooWide(e *panel.TooWide) error {
	s, bed := p.source, p.Design.Bed
	out := &tooWide{TooWide: e, key: bed.HeadKey(), value: bed.HeadValue, less: e.Drop}
	if bed.Head == design.Girth {
		out.less = e.Over
	}
	out.found = design.Found(design.BodyTooWide, s.Length(rollWidth, e.Across, quantity.Up),
		s.Length(rollWidth, e.Holds, quantity.Down), design.JoinsAllowed(e.Allowed))
	return out
}

// widened says which joins, which rolls and which section at the bar would do, each
// tried.
func (r remedy) widened(e *tooWide) design.Fault {
	var ways []design.Phrase
	for n := e.Allowed; n < len(e.Rolls); n++ {
		joins := r.source.Least(design.KeyClothJoins, float64(n))
		if n > e.Allowed && r.read(joins) == nil {
			ways = append(ways, design.Say(design.JoinsWouldDo, joins))
			break
		}
		if e.Rolls[n] == 0 {
			continue
		}
		if b, ok := r.settled(r.source.Least(rollWidth, e.Rolls[n]), joins); ok {
			ways = append(ways, design.Say(design.RollWouldDo, b, design.JoinsAllowed(n)))
		}
	}
	if b, ok := r.settled(r.source.Most(e.key, e.value-e.less)); ok {
		ways = append(ways, design.Say(design.LessWouldDo, e.key, b))
	}
	if len(ways) == 0 {
		ways = append(ways, design.Say(design.LessGirth, e.End, r.source.Length(rollWidth, e.Over, quantity.Up), e.key))
	}
	return r.source.Fault(rollWidth, e.found, design.Say(design.AnyOf, ways))
}
