package sack

import (
	"slingloft/outline/bed"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// flat builds a sack of one piece, folded across its middle, which is the bottom. Both long
// edges are sewn to themselves; then each corner is laid flat, seam on fold, and sewn
// across as far from its tip as half the square is wide. On the flat piece that line runs
// round three sides of a rectangle:
//
//	║──────┬───┬───┬──────║
//	║      │   ┊   │      ║
//	║      └───┊───┘      ║ mouths, hemmed
//	║        fold         ║
func (m *maker) flat() {
	s := m.out.Size
	depth := s.Thick / 2                    // from a corner's tip to the line across
	across, half := 2*s.Thick, s.Wall+depth // as it lies; fold to mouth
	p := m.rectangle(piece.Piece{ID: "sack-side", Kind: piece.SackSide, Title: m.words.Cloth.Sack}, 2*half, across, right, left)
	p.Lines = append(p.Lines, piece.Line{Name: "bottom fold", Work: piece.Score, Points: geom.Polyline{{X: half, Y: 0}, {X: half, Y: across}}})
	for _, side := range []bed.Side{bed.Right, bed.Left} {
		edge, in := 0.0, depth
		if side == bed.Left {
			edge, in = across, across-depth
		}
		corner := geom.Polyline{{X: half - depth, Y: edge}, {X: half - depth, Y: in}, {X: half + depth, Y: in}, {X: half + depth, Y: edge}}
		p.Lines = append(p.Lines, piece.Line{Name: side.String() + " corner", Work: piece.Stitch, Points: corner})
	}
	p.Margins = append(p.Margins, piece.Margin{At: piece.AtCorner, Wide: depth})
	m.letter(&p)
	m.add(p)
	open := m.d.Sack.Hem
	for _, side := range []bed.Side{bed.Left, bed.Right} {
		edge, in := 0.0, depth
		if side == bed.Left {
			edge, in = across, across-depth
		}
		front, back := geom.Polyline{{X: half, Y: edge}, {X: open, Y: edge}}, geom.Polyline{{X: half, Y: edge}, {X: 2*half - open, Y: edge}}
		m.sew(piece.Seam{Kind: piece.SackEdge, Rim: piece.RimOf(side), IDs: [2]string{p.ID, p.ID}}, front, back, nil)
		fold := geom.Polyline{{X: half - depth, Y: in}, {X: half + depth, Y: in}}
		seam := geom.Polyline{{X: half - depth, Y: in}, {X: half - depth, Y: edge}, {X: half - depth, Y: in}}
		m.sew(piece.Seam{Kind: piece.SackCorner, Rim: piece.RimOf(side), IDs: [2]string{p.ID, p.ID}}, fold, seam, nil)
	}
	m.out.Mouths = append(m.out.Mouths, 2*across)
}

// bars builds the bars' sack of one piece, folded along its middle: its long edges are sewn
// together, and one end. Its mouth reaches half its width beyond the bars.
func (m *maker) bars() {
	wide := m.out.Bundle.Girth/2 + m.d.Sack.Slack
	long := m.out.Bundle.Long + wide/2
	p := m.rectangle(piece.Piece{ID: "sack-bars", Kind: piece.SackBars, Title: m.words.Cloth.BarsSack}, long, 2*wide, right)
	p.Lines = append(p.Lines, piece.Line{Name: "fold", Work: piece.Score, Points: geom.Polyline{{X: 0, Y: wide}, {X: long, Y: wide}}})
	m.letter(&p)
	m.add(p)
	open := long - m.d.Sack.Hem
	low, high := geom.Polyline{{X: 0, Y: 0}, {X: open, Y: 0}}, geom.Polyline{{X: 0, Y: 2 * wide}, {X: open, Y: 2 * wide}}
	m.sew(piece.Seam{Kind: piece.BarsEdge, IDs: [2]string{p.ID, p.ID}}, low, high, nil)
	m.sew(piece.Seam{Kind: piece.BarsEnd, IDs: [2]string{p.ID, p.ID}},
		geom.Polyline{{X: 0, Y: wide}, {X: 0, Y: 0}}, geom.Polyline{{X: 0, Y: wide}, {X: 0, Y: 2 * wide}}, nil)
	m.out.Flat = [2]float64{long, wide}
	m.out.Mouths = append(m.out.Mouths, 2*wide)
}
