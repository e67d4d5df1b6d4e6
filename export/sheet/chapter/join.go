package chapter

import (
	"math"

	"slingloft/export/sheet"
	"slingloft/outline/panel"
	"slingloft/outline/piece"
)

// bodies returns the panels of the body: one, unless it is joined.
func (b build) bodies() []piece.Piece {
	var out []piece.Piece
	for _, p := range b.Sewn.Pieces {
		if p.Kind.Body() {
			out = append(out, p)
		}
	}
	return out
}

// rim names a long edge of a panel.
func (b build) rim(r piece.Rim) string { return b.Names.Pieces.Rims[r] }

// stepJoin sews the panels of a joined body together.
func (b build) stepJoin() sheet.Step {
	s := sheet.Step{Title: "Join the panels", Text: "Lay two panels on each other, right sides together, notch on notch from " +
		"the head end, and stitch on the finished line. Trim the allowance of the outer panel, press both allowances " +
		"towards that panel, fold the other one over the trimmed one and stitch it down along its fold: a flat-felled " +
		"seam. A join has no ease; bar lines meet across it."}
	for _, j := range b.Sewn.Joins {
		s.Add(b.rim(j.Place)+", finished", b.Long(j.Edge.HungLength()))
		b.addFell(&s, j)
		for _, n := range j.Notches {
			s.Add(b.rim(j.Place)+", notch "+n.Name+" from the head end", b.Long(n.At))
		}
	}
	return s
}

// addFell tells where a join's fold, trim line and second row lie, as the panels
// have them.
func (b build) addFell(s *sheet.Step, j panel.Join) {
	s.Add(b.rim(j.Place)+", allowance on both panels", b.Long(b.Design.Seam.Join))
	done := map[piece.Role]bool{}
	for _, q := range b.bodies() {
		for _, l := range q.Lines {
			text, ok := b.fellWords(l.Role)
			if ok && l.Of == j.Place.String() && !done[l.Role] {
				done[l.Role] = true
				s.Add(b.rim(j.Place)+", "+text+q.Title, b.Long(math.Abs(l.Points[0].Y-j.V))+" from the finished line")
			}
		}
	}
}
