package work

import (
	"strings"

	"slingloft/outline/margin"
	"slingloft/outline/quantity"
)

// Mend says which values would meet a margin that is not met, each alone, and which
// changes would bring it nearer, in the units of the design; empty for one that is.
func (p *Plan) Mend(c margin.Check) string {
	var values, changes []string
	for _, w := range c.Ways {
		switch {
		case w.Least > 0:
			values = append(values, string(w.Key)+" of "+p.source.Value(w.Key, w.Least, quantity.Up))
		case w.Less:
			changes = append(changes, "a smaller "+string(w.Key))
		default:
			changes = append(changes, "a larger "+string(w.Key))
		}
	}
	text := ""
	if len(values) > 0 {
		text = strings.Join(values, ", or ") + " or more would do"
	}
	if len(changes) > 0 {
		if text != "" {
			text += "; "
		}
		text += strings.Join(changes, " or ") + " helps"
	}
	return text
}
