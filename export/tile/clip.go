package tile

import (
	"fmt"

	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// clipped returns the parts of a line that lie in the box. A closed line that
// lies wholly inside stays closed; any other becomes open parts, numbered in
// their names where there are several.
func clipped(l piece.Line, box geom.Box) []piece.Line {
	if box.ContainsBox(l.Points.Bounds()) {
		return []piece.Line{l}
	}
	runs := l.Points.Within(box)
	if l.Closed {
		runs = geom.Ring(l.Points).Within(box)
	}
	var out []piece.Line
	for i, r := range runs {
		part := piece.Line{Name: l.Name, Work: l.Work, Points: r}
		if len(runs) > 1 {
			part.Name = fmt.Sprintf("%s/part %d", l.Name, i+1)
		}
		out = append(out, part)
	}
	return out
}
