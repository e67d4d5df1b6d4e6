package sack

import (
	"math"

	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// round builds a wall and a round bottom. The wall lies with its height along the warp,
// mouth to the right; its long edge is sewn to itself, its lower end round the bottom.
//
//	        edge
//	  ┌──────────────┐
//	  │              ║ mouth, hemmed
//	base             ║
//	  │              ║
//	  └──────────────┘
//	        edge
func (m *maker) round() {
	s := m.out.Size
	ring := geom.CirclePoints(geom.Point{}, s.Thick/2, roundness)
	around := ring.Perimeter() // as it is cut: what the wall has to be as long as
	wall := m.rectangle(piece.Piece{ID: "sack-side", Kind: piece.SackSide, Title: m.words.Cloth.Sack}, s.Wall, around, right)
	base := m.base(ring)
	seam := notches("K", around, 4, true)
	end := geom.Polyline{{X: 0, Y: around}, {X: 0, Y: 0}} // down, so that the cloth lies to its left
	m.notch(&wall, end, seam[1:])                         // the first is where the wall closes
	m.notch(&base, ring.Closed(), seam)
	m.letter(&wall)
	m.letter(&base)
	m.add(wall)
	m.add(base)
	open := s.Wall - m.d.Sack.Hem
	low, high := geom.Polyline{{X: 0, Y: 0}, {X: open, Y: 0}}, geom.Polyline{{X: 0, Y: around}, {X: open, Y: around}}
	m.sew(piece.Seam{Kind: piece.SackWall, IDs: [2]string{wall.ID, wall.ID}}, low, high, nil)
	m.sew(piece.Seam{Kind: piece.SackBottom, IDs: [2]string{wall.ID, base.ID}}, end, ring.Closed(), seam[1:])
	m.out.Mouths = append(m.out.Mouths, around)
	half := geom.NewArc(ring.Closed()).Between(0, around/2)
	m.out.Base, m.out.Notches = half, seam[1:2]
}

// base returns the round bottom.
func (m *maker) base(ring geom.Ring) piece.Piece {
	a := m.d.Sack.Allowance
	p := m.cloth(piece.Piece{ID: "sack-base", Kind: piece.SackBase, Title: m.words.Cloth.SackBase})
	radius := m.out.Size.Thick / 2
	drawn := max(radius-4*clothLetter/2.5, radius/2) // short of the notches' names
	p.Net, p.Cut = ring, geom.CirclePoints(geom.Point{}, radius+a, roundness)
	p.Lines = append(p.Lines,
		piece.Line{Name: "net line", Role: piece.NetLine, Work: piece.Stitch, Points: geom.Polyline(ring), Closed: true},
		piece.Line{Name: "centre line", Work: piece.Mark, Points: geom.Polyline{{X: -drawn, Y: 0}, {X: drawn, Y: 0}}})
	p.Margins = []piece.Margin{{At: piece.AtSackSeam, Wide: a}}
	p.Checks = []piece.Measure{{Kind: piece.NetRound, Length: math.Pi * 2 * radius}, {Kind: piece.NetDiameter, Length: 2 * radius}}
	return p
}
