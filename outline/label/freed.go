package label

import (
	"slices"

	"slingloft/outline/piece"
)

// freedNear is how far lettering may be moved off a line, in heights of a capital and at
// least freedLeast mm: it still stands by what it letters.
const (
	freedNear  = 8
	freedLeast = 25
)

// Freed returns the piece with lettering that a line runs through, or other lettering
// lies over, moved to the nearest place with room for it, smaller where there is none at its
// size. What has room nowhere near stays where it is.
func Freed(p piece.Piece) piece.Piece {
	lines := NewRoom(&piece.Piece{Cut: p.Cut, Holes: p.Holes, Lines: p.Lines})
	var kept, struck []piece.Label
	for _, l := range p.Labels {
		q := InkOf(l)
		if !lines.Whole(q, q.Bounds()) || slices.ContainsFunc(kept, func(o piece.Label) bool { return InkOf(o).Overlaps(q) }) {
			struck = append(struck, l)
		} else {
			kept = append(kept, l)
		}
	}
	if len(struck) == 0 {
		return p
	}
	p.Labels = kept
	room := NewRoom(&p)
	for _, l := range struck {
		room.Put(room.near(l), &p.Labels)
	}
	return p
}

// near returns a label where there is room for it near its own place, as large as there is.
func (r *Room) near(l piece.Label) piece.Label {
	for _, h := range Sizes(l.Height) {
		m := l
		m.Height = h
		if m, ok := r.Nearest(m, max(freedNear*l.Height, freedLeast)); ok {
			return m
		}
	}
	return l
}
