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
	pts := l.Points
	if l.Closed {
		pts = geom.Ring(l.Points).Closed()
	}
	runs := runsIn(pts, box)
	if n := len(runs); l.Closed && n > 1 && runs[0][0] == pts[0] && runs[n-1][len(runs[n-1])-1] == pts[0] {
		runs[0] = append(runs[n-1], runs[0][1:]...) // one part that passes the start
		runs = runs[:n-1]
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

// runsIn returns the stretches of an open polyline in the box.
func runsIn(pts geom.Polyline, box geom.Box) []geom.Polyline {
	var out []geom.Polyline
	var run geom.Polyline
	for i := 1; i < len(pts); i++ {
		a, b, ok := segmentIn(pts[i-1], pts[i], box)
		if !ok {
			continue
		}
		if n := len(run); n > 0 && run[n-1] != a {
			out = append(out, run)
			run = nil
		}
		if len(run) == 0 {
			run = geom.Polyline{a}
		}
		run = append(run, b)
	}
	if len(run) > 0 {
		out = append(out, run)
	}
	return out
}

// segmentIn returns the part of the segment from a to b that lies in the box. A part
// without length counts as none, except of a segment that has none itself.
func segmentIn(a, b geom.Point, box geom.Box) (geom.Point, geom.Point, bool) {
	in := box.Cut(a, b.Minus(a))
	if a != b && in.Lo >= in.Hi || a == b && !box.Contains(a) {
		return a, b, false
	}
	p, q := a, b // exactly, where they are not cut
	if in.Lo > 0 {
		p = a.Towards(b, in.Lo)
	}
	if in.Hi < 1 {
		q = a.Towards(b, in.Hi)
	}
	return p, q, true
}
