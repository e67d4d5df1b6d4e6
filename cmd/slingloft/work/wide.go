package work

import (
	"fmt"
	"strings"

	"slingloft/outline/design"
	"slingloft/outline/panel"
	"slingloft/outline/quantity"
)

// tooWide is a body that does not fit on its roll. It says so in words of its own
// until [remedy.tried] knows what would do.
type tooWide struct {
	*panel.TooWide
	found string
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
	out.found = fmt.Sprintf("the body is %s wide as cut, the roll holds %s and cloth.joins allows %s",
		s.Length(rollWidth, e.Across, quantity.Up), s.Length(rollWidth, e.Holds, quantity.Down), p.Words.Joins[e.Allowed])
	return out
}

// widened says which joins, which rolls and which section at the bar would do, each
// tried.
func (r remedy) widened(e *tooWide) design.Fault {
	var ways []string
	for n := e.Allowed; n < len(e.Rolls); n++ {
		joins := r.source.Least(design.KeyClothJoins, float64(n))
		if n > e.Allowed && r.read(joins) == nil {
			ways = append(ways, "cloth.joins = "+joins.Written+" would do")
			break
		}
		if e.Rolls[n] == 0 {
			continue
		}
		if b, ok := r.settled(r.source.Least(rollWidth, e.Rolls[n]), joins); ok {
			ways = append(ways, fmt.Sprintf("a roll %s wide would do with %s", b.Written, r.with.words().Joins[n]))
		}
	}
	if b, ok := r.settled(r.source.Most(e.key, e.value-e.less)); ok {
		ways = append(ways, fmt.Sprintf("%s of %s or less would do", e.key, b.Written))
	}
	if len(ways) == 0 {
		ways = append(ways, fmt.Sprintf("the girth at the %s bar would have to be %s less, by a lower %s and a shorter bed.%s_bar",
			e.End, r.source.Length(rollWidth, e.Over, quantity.Up), e.key, e.End))
	}
	return r.source.Fault(rollWidth, e.found, strings.Join(ways, "; "))
}
