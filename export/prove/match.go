package prove

import (
	"math"

	"slingloft/export"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// pair is a line that is due with the one that was found for it.
type pair struct {
	want, got piece.Line
	off       float64 // greatest distance of a vertex of either from the other, mm
}

// match is the outcome of looking for every line.
type match struct {
	pairs          []pair
	missing, extra []export.Note
}

func named(l piece.Line) export.Note {
	if l.Name == "" {
		return export.Tell(export.Unnamed, l.Points[0].X, l.Points[0].Y)
	}
	return export.Tell(export.NamedSo, l.Name)
}

// byName pairs lines of the same name.
func byName(want, got []piece.Line, limit float64) match {
	var m match
	place := map[string]int{}
	for i, l := range got {
		if _, taken := place[l.Name]; taken {
			m.extra = append(m.extra, export.Tell(export.OnceMore, named(l)))
			continue
		}
		place[l.Name] = i
	}
	for _, w := range want {
		i, ok := place[w.Name]
		if !ok {
			m.missing = append(m.missing, named(w))
			continue
		}
		delete(place, w.Name)
		m.pairs = append(m.pairs, pair{w, got[i], deviation(w, got[i], limit)})
	}
	for _, l := range got {
		if i, left := place[l.Name]; left && got[i].Points[0] == l.Points[0] {
			m.extra = append(m.extra, named(l))
		}
	}
	return m
}

// byPlace pairs lines that lie at the same place, then those left over by the
// nearest corners of the boxes around them, the same kind of work first.
func byPlace(want, got []piece.Line, limit float64) match {
	var m match
	boxes := make([]geom.Box, len(got))
	used := make([]bool, len(got))
	for i, l := range got {
		boxes[i] = l.Points.Bounds()
	}
	// left holds what is not found at its place.
	var left []piece.Line
	for _, w := range want {
		box, found := w.Points.Bounds(), -1
		for i := range got {
			if used[i] || apart(boxes[i], box) > limit {
				continue
			}
			if deviation(w, got[i], limit) <= limit && (found < 0 || same(w, got[i])) {
				found = i
				if same(w, got[i]) {
					break
				}
			}
		}
		if found < 0 {
			left = append(left, w)
			continue
		}
		used[found] = true
		m.pairs = append(m.pairs, pair{w, got[found], deviation(w, got[found], limit)})
	}
	for _, w := range left {
		found, least := -1, math.Inf(1)
		box := w.Points.Bounds()
		reach := 0.2*(box.Width()+box.Height()) + 50 // further off it is another line
		for i := range got {
			d := apart(boxes[i], box)
			if !same(w, got[i]) {
				d += 10 * limit
			}
			if !used[i] && d < least && d < reach {
				found, least = i, d
			}
		}
		if found < 0 {
			m.missing = append(m.missing, named(w))
			continue
		}
		used[found] = true
		m.pairs = append(m.pairs, pair{w, got[found], deviation(w, got[found], limit)})
	}
	for i, l := range got {
		if !used[i] {
			m.extra = append(m.extra, named(l))
		}
	}
	return m
}

func same(a, b piece.Line) bool { return a.Work == b.Work && a.Closed == b.Closed }

// apart returns how far the corners of two boxes lie apart.
func apart(a, b geom.Box) float64 { return math.Max(a.Min.Dist(b.Min), a.Max.Dist(b.Max)) }

// maxComparisons bounds the work on one pair of lines, vertices times vertices.
const maxComparisons = 30_000_000

// deviation returns the greatest distance of a vertex of either line from the
// other line, wherever each begins and whichever way it runs. Lines that agree
// vertex by vertex within the limit are seen at once.
func deviation(want, got piece.Line, limit float64) float64 {
	a, b := want.Points, got.Points
	if len(a) == len(b) {
		off := 0.0
		for i := range a {
			off = math.Max(off, a[i].Dist(b[i]))
		}
		if off <= limit {
			return off
		}
	}
	if len(a)*len(b) > maxComparisons {
		return apart(a.Bounds(), b.Bounds())
	}
	return math.Max(outside(closedUp(want), closedUp(got)), outside(closedUp(got), closedUp(want)))
}

func closedUp(l piece.Line) geom.Polyline {
	if l.Closed {
		return geom.Ring(l.Points).Closed()
	}
	return l.Points
}

// outside returns the greatest distance of a vertex of a from b.
func outside(a, b geom.Polyline) float64 {
	arc, off := geom.NewArc(b), 0.0
	for _, p := range a {
		_, d := arc.Nearest(p)
		off = math.Max(off, d)
	}
	return off
}
