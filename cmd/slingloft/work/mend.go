package work

import (
	"fmt"
	"strings"

	"slingloft/outline/margin"
	"slingloft/outline/quantity"
)

// Mend says which values would meet a margin that is not met, each alone, and which
// changes would bring it nearer, in the units of the design; empty for one that is.
func (p *Plan) Mend(c margin.Check) string {
	say := p.Words.Mend
	var values, changes []string
	for _, w := range c.Ways {
		switch {
		case w.Least > 0:
			values = append(values, fmt.Sprintf(say.Value, w.Key, p.source.Value(w.Key, w.Least, quantity.Up)))
		case w.Less:
			changes = append(changes, fmt.Sprintf(say.Smaller, w.Key))
		default:
			changes = append(changes, fmt.Sprintf(say.Larger, w.Key))
		}
	}
	would := fmt.Sprintf(say.WouldDo, strings.Join(values, say.Or))
	helps := fmt.Sprintf(say.Helps, strings.Join(changes, say.OrElse))
	switch {
	case len(values) > 0 && len(changes) > 0:
		return fmt.Sprintf(say.Both, would, helps)
	case len(values) > 0:
		return would
	case len(changes) > 0:
		return helps
	}
	return ""
}
