package chapter

import (
	"fmt"

	"slingloft/export/sheet"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
)

// lineFacts tells how far apart the bar lines cross the centre line.
func (b build) lineFacts(s *sheet.Step) {
	if l := b.Sewn.BarLines; len(l[hung.Head]) > 0 && len(l[hung.Foot]) > 0 {
		s.Check(b.Say.Order.BarToBar, b.Cloth(l[hung.Foot][0].X-l[hung.Head][0].X))
	}
}

// markFacts tells what is marked by hand beside the body.
func (b build) markFacts(s *sheet.Step) {
	say := b.Say.Order
	const letters = 2 // the lines on notches and allowances come last
	if b.strips() {
		insert(s, letters, say.MarkStrips)
	} else {
		insert(s, letters, say.MarkFacings)
	}
	if b.capped() {
		insert(s, letters, say.MarkCaps)
	}
}

// proveFacts tells the distances that prove the body: its diagonals and both ends; the
// rest stands with the piece.
func (b build) proveFacts(s *sheet.Step) {
	say := b.Say.Order
	const shown = 4
	bodies, prove := b.bodies(), say.Diagonals
	if len(bodies) > 1 {
		prove = say.Corners
	}
	s.Do = append(s.Do, prove)
	for _, q := range bodies {
		for _, c := range q.Checks[:min(shown, len(q.Checks))] {
			s.Check(b.of(len(bodies), q, b.Say.Names.Measure(c)), b.Cloth(c.Length))
		}
	}
}

func (b build) cutFacts(s *sheet.Step) {
	say, d := b.Say.Order, b.Design
	count := 0
	for _, p := range b.Sewn.Pieces {
		count += p.Count
	}
	s.Check(say.ClothPieces, fmt.Sprint(count))
	s.Add(say.SideAllowance, b.Cloth(d.Seam.Side))
	b.addEnds(s)
	if b.joined() {
		s.Add(say.JoinAllowance, b.Cloth(d.Seam.Join))
	}
	if b.capped() {
		s.Add(say.CapAllowance, b.Cloth(d.Seam.Cap))
	}
}

// addEnds adds what the body has at its ends.
func (b build) addEnds(s *sheet.Step) {
	for _, q := range b.bodies() {
		for _, m := range q.Margins {
			if m.At == piece.AtEnds || m.At == piece.TurnedEnds {
				s.Add(b.marginWords(m), b.Cloth(m.Wide))
				return
			}
		}
	}
}
