package insectnet

import (
	"fmt"

	"slingloft/outline/article"
	"slingloft/outline/geom"
	"slingloft/outline/label"
	"slingloft/outline/piece"
)

// clothLetter is the height of lettering, mm, where there is room: as on the bed's pieces.
const clothLetter = 10.0

// inside is how far inside of a corner its letter stands, in heights: past the name of a
// notch.
const inside = 4

// corners letters the corners of a net line, inside of them, and gives their distances.
func (m *maker) corners(q *piece.Piece, at []geom.Point) {
	c := piece.Cornered{Piece: q.ID, At: at}
	centre := q.Net.Bounds().Center()
	for i, p := range at {
		letter := string(rune('A' + i))
		c.Letters = append(c.Letters, letter)
		before, after := at[(i+len(at)-1)%len(at)], at[(i+1)%len(at)]
		in := after.Minus(p).Unit().Plus(before.Minus(p).Unit())
		if in.Len() < 0.3 || !q.Net.Contains(p.Plus(in.Unit().Times(inside*clothLetter))) { // hardly a corner, or one that turns in
			in = centre.Minus(p)
		}
		q.Labels = append(q.Labels, piece.Label{Text: letter, Role: piece.CornerLabel, At: p.Plus(in.Unit().Times(inside * clothLetter)),
			Height: clothLetter, Anchor: piece.Centre})
		for k, other := range at[:i] {
			q.Checks = append(q.Checks, piece.Measure{Kind: piece.LetteredCorners, Letters: [2]string{c.Letters[k], letter}, Length: p.Dist(other)})
		}
	}
	m.out.Corners = append(m.out.Corners, c)
}

// letter puts the grain arrow and the lettering on a piece, clear of what is on it.
func (m *maker) letter(q *piece.Piece) {
	box := q.Net.Bounds()
	at := geom.Pt(box.Center().X, box.Min.Y+0.45*box.Height())
	if all := q.Net.LevelCrossings(at.Y); len(all) >= 2 {
		at.X = all[0] + 0.3*(all[len(all)-1]-all[0])
	}
	half := min(box.Width()/8, 150)
	q.Lines = append(q.Lines, piece.Arrow(at.Minus(geom.Pt(half, 0)), at.Plus(geom.Pt(half, 0)))...)
	h := min(clothLetter, box.Width()/20, box.Height()/12)
	room := label.NewRoom(q)
	rows := label.Rows(m.d.Name, fmt.Sprintf(m.words.Cloth.Cut, q.Title), m.d.ClothFor(article.Cover).Name,
		fmt.Sprintf(m.words.Cloth.Shape, m.mark), m.words.Cloth.Outside)
	room.LetterBlock(rows, box.Center(), h, label.Smallest, &q.Labels)
	room.Try(piece.Label{Text: m.words.Cloth.Grain, At: at.Plus(geom.Pt(0, 0.8*h)), Height: h / 2, Anchor: piece.Centre}, &q.Labels)
}
