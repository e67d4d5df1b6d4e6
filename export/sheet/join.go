package sheet

import (
	"math"

	"slingloft/outline/panel"
	"slingloft/outline/piece"
)

// bodies returns the panels of the body: one, unless it is joined.
func (b *builder) bodies() []piece.Piece {
	var out []piece.Piece
	for _, p := range b.Sewn.Pieces {
		if p.Kind.Body() {
			out = append(out, p)
		}
	}
	return out
}

// rim names a long edge of a panel.
func (b *builder) rim(r piece.Rim) string { return b.words.Pieces.Rims[r] }

// stepJoin sews the panels of a joined body together.
func (b *builder) stepJoin() Step {
	s := Step{Title: "Join the panels", Text: "Lay two panels on each other, right sides together, notch on notch from " +
		"the head end, and stitch on the finished line. Trim the allowance of the outer panel, press both allowances " +
		"towards that panel, fold the other one over the trimmed one and stitch it down along its fold: a flat-felled " +
		"seam. A join has no ease; bar lines meet across it."}
	for _, j := range b.Sewn.Joins {
		s.Facts = append(s.Facts, Fact{b.rim(j.Place) + ", finished", b.long(j.Edge.HungLength())})
		s.Facts = append(s.Facts, b.fellFacts(j)...)
		for _, n := range j.Notches {
			s.Facts = append(s.Facts, Fact{b.rim(j.Place) + ", notch " + n.Name + " from the head end", b.long(n.At)})
		}
	}
	return s
}

// fellFacts tells where a join's fold, trim line and second row lie, as the panels
// have them.
func (b *builder) fellFacts(j panel.Join) []Fact {
	out := []Fact{{b.rim(j.Place) + ", allowance on both panels", b.long(b.Design.Seam.Join)}}
	done := map[piece.Role]bool{}
	for _, q := range b.bodies() {
		for _, l := range q.Lines {
			text, ok := b.fellWords(l.Role)
			if ok && l.Of == j.Place.String() && !done[l.Role] {
				done[l.Role] = true
				out = append(out, Fact{b.rim(j.Place) + ", " + text + q.Title, b.long(math.Abs(l.Points[0].Y-j.V)) + " from the finished line"})
			}
		}
	}
	return out
}
