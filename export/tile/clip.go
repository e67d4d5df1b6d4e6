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

// segmentIn returns the part of the segment from a to b that lies in the box, by
// the method of Liang and Barsky. A part without length counts as none, except of
// a segment that has none itself.
func segmentIn(a, b geom.Point, box geom.Box) (geom.Point, geom.Point, bool) {
	from, to := 0.0, 1.0
	d := b.Minus(a)
	// Each side holds where distance + t·way ≥ 0.
	sides := [4][2]float64{
		{a.X - box.Min.X, d.X}, {box.Max.X - a.X, -d.X},
		{a.Y - box.Min.Y, d.Y}, {box.Max.Y - a.Y, -d.Y},
	}
	for _, s := range sides {
		distance, way := s[0], s[1]
		switch {
		case way == 0 && distance < 0:
			return a, b, false
		case way > 0:
			from = max(from, -distance/way)
		case way < 0:
			to = min(to, distance/-way)
		}
	}
	if from > to || (from == to && a != b) {
		return a, b, false
	}
	p, q := a, b // exactly, where they are not cut
	if from > 0 {
		p = a.Towards(b, from)
	}
	if to < 1 {
		q = a.Towards(b, to)
	}
	return p, q, true
}
