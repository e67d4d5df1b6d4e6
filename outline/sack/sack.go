package sack

import (
	"fmt"
	"slingloft/outline/article"

	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/geom"
	"slingloft/outline/label"
	"slingloft/outline/piece"
	"slingloft/outline/walk"
	"slingloft/outline/words"
)

// Sewn is the sacks of a design: their pieces, the seams walked, and how large they are
// when they are filled.
type Sewn struct {
	Pieces []piece.Piece
	Seams  []piece.Seam
	Size   Size
	Bundle Bundle     // the bars; zero where they have no sack
	Flat   [2]float64 // of the bars' sack as it lies, finished: length and width, mm

	// Base is half of the round bottom's seam line, counter-clockwise from its right
	// corner, and Notches those of that half; empty where there is none.
	Base    geom.Polyline
	Notches []piece.Notch
	Mouths  []float64 // lengths around the mouths that a drawcord runs in, mm
}

// clothLetter is the height of lettering, mm, where there is room: as on the bed's pieces.
const clothLetter = 10.0

// roundness is how far the chords of a round bottom lie from its circle, mm: a fifth of
// what any file keeps.
const roundness = 0.002

// Pieces builds the sacks of a design for what they hold. mark is lettered on each piece,
// in the words given.
func Pieces(d design.Design, p Packed, mark string, w words.Lettering) Sewn {
	m := maker{d: d, mark: mark, words: w}
	m.out.Size = sizeOf(d, p.Volume(d.Sack.Density))
	if d.Sack.Base == design.RoundBase {
		m.round()
	} else {
		m.flat()
	}
	if !d.Sack.NoBars {
		m.out.Bundle = bundleOf(p)
		m.bars()
	}
	return m.out
}

// maker gathers the pieces while they are built.
type maker struct {
	d     design.Design
	mark  string
	words words.Lettering
	out   Sewn
}

// edge is an edge of a rectangle, counter-clockwise from the lower one.
type edge int

const (
	lower edge = iota
	right
	upper
	left
)

// rectangle gives a piece a straight net of a width along the warp and a height
// across it, the lower left corner at zero, and what it has outside each edge. The mouth
// edges are hemmed.
func (m *maker) rectangle(of piece.Piece, along, across float64, mouths ...edge) piece.Piece {
	s := m.d.Sack
	p := m.cloth(of)
	corners := geom.Polyline{{X: 0, Y: 0}, {X: along, Y: 0}, {X: along, Y: across}, {X: 0, Y: across}, {X: 0, Y: 0}}
	var edges []geom.Polyline
	for i := range corners[:4] {
		edges = append(edges, corners[i:i+2])
	}
	out, fold := []float64{s.Allowance, s.Allowance, s.Allowance, s.Allowance}, make([]float64, 4)
	for _, e := range mouths {
		out[e], fold[e] = 2*s.Hem, s.Hem // folded two times, it takes its width two times
		p.Hem += edges[e].Length()
	}
	p.Net, p.Cut = geom.RingOf(edges), geom.OffsetEdges(edges, out)
	p.Lines = append(
		p.Lines,
		piece.Line{Name: "net line", Role: piece.NetLine, Work: piece.Stitch, Points: geom.Polyline(p.Net), Closed: true},
	)
	for _, e := range mouths {
		folds := geom.MovedEdges(edges, fold)[e].Inside(p.Cut)
		p.Lines = append(p.Lines, piece.Line{Name: "hem fold 1", Role: piece.HemFold, Index: 1, Work: piece.Score, Points: edges[e]},
			piece.Line{Name: "hem fold 2", Role: piece.HemFold, Index: 2, Work: piece.Score, Points: folds})
	}
	p.Margins = []piece.Margin{{At: piece.AtSackSeam, Wide: s.Allowance}, {At: piece.AtMouth, Wide: s.Hem}}
	p.Checks = []piece.Measure{{Kind: piece.NetAlong, Length: along}, {Kind: piece.NetAcross, Length: across},
		{Kind: piece.NetDiagonal, Length: corners[0].Dist(corners[2])}}
	return p
}

// cloth returns a piece of the sacks' cloth.
func (m *maker) cloth(of piece.Piece) piece.Piece {
	of.Stock, of.Article, of.Count, of.OneWay = piece.Cloth, article.Sack, 1, m.d.ClothFor(article.Sack).OneWay
	return of
}

// letter puts the grain arrow and the lettering on a piece, clear of what is on it.
func (m *maker) letter(p *piece.Piece) {
	box := p.Net.Bounds()
	at := geom.Pt(box.Min.X+box.Width()*0.72, box.Min.Y+box.Height()*0.2) // off a fold in the middle
	if p.Kind == piece.SackBase {
		at.X = box.Center().X
	}
	half := min(box.Width()/6, 100)
	p.Lines = append(p.Lines, piece.Arrow(at.Minus(geom.Pt(half, 0)), at.Plus(geom.Pt(half, 0)))...)
	h := min(clothLetter, box.Width()/20, box.Height()/8)
	room := label.NewRoom(p)
	rows := label.Rows(
		fmt.Sprintf(m.words.Cloth.Cut, p.Title),
		m.d.ClothFor(article.Sack).Name,
		fmt.Sprintf(m.words.Cloth.Shape, m.mark),
		m.words.Cloth.Inside,
	)
	room.LetterBlock(rows, box.Center(), h, label.Smallest, &p.Labels)
	room.Try(piece.Label{Text: m.words.Cloth.Grain, At: at.Plus(geom.Pt(0, 0.8*h)), Height: h / 2, Anchor: piece.Centre}, &p.Labels)
}

// add puts a piece among the others.
func (m *maker) add(p piece.Piece) { m.out.Pieces = append(m.out.Pieces, p) }

// notch draws notches along an edge of a piece, on whose left its cloth lies.
func (m *maker) notch(p *piece.Piece, e geom.Polyline, ns []piece.Notch) {
	l, t := walk.Notches(walk.Flat(e), ns, walk.Style{Allowance: m.d.Sack.Allowance, Inside: 1, Letter: clothLetter / 2.5})
	p.Lines, p.Labels = append(p.Lines, l...), append(p.Labels, t...)
}

// sew walks a seam between two edges.
func (m *maker) sew(s piece.Seam, a, b geom.Polyline, ns []piece.Notch) {
	m.out.Seams = append(m.out.Seams, walk.Seam(walk.Pair{Seam: s, Edges: [2]flat.Edge{walk.Flat(a), walk.Flat(b)}, Notches: ns}, m.d.Seam))
}

// notches returns n notches that part a seam of a length evenly, its ends among them where
// it closes on itself; the first one is double, so that no end is taken for another.
func notches(letter string, long float64, n int, closed bool) []piece.Notch {
	parts, first := n+1, 1
	if closed {
		parts, first = n, 0
	}
	var out []piece.Notch
	for i := range n {
		out = append(
			out,
			piece.Notch{Name: fmt.Sprintf("%s%d", letter, i+1), Number: i + 1, At: long * float64(i+first) / float64(parts), Double: i == 0},
		)
	}
	return out
}
