package tarp

import (
	"fmt"

	"slingloft/outline/article"
	"slingloft/outline/geom"
	"slingloft/outline/label"
	"slingloft/outline/piece"
	"slingloft/outline/walk"
)

// clothLetter is the height of lettering, mm, where there is room: as on the bed's pieces.
const clothLetter = 10.0

// fellEdge is how far the second row of a flat-felled join lies from its fold, and how much
// narrower than the fell the trimmed allowance is, mm: as at the bed's joins.
const fellEdge = 2.0

// Fell is what a flat-felled join measures from its net line: where the one allowance is
// folded, the other trimmed, and where the second row lies on its panel.
type Fell struct{ Fold, Trim, Second float64 }

// FellOf returns the fell of an allowance; zero where that is too narrow for one.
func FellOf(allowance float64) Fell {
	fold := allowance / 2
	if fold <= fellEdge {
		return Fell{}
	}
	return Fell{fold, fold - fellEdge, fold - fellEdge}
}

// panel builds a panel with the notches of its seams.
func (m *maker) panel(p panel, notches map[seam][]piece.Notch) {
	own := p.motion()
	q := m.cloth(piece.Piece{ID: p.id, Kind: piece.TarpPanel, Title: m.title(p), Count: 1})
	edges := make([]geom.Polyline, len(p.bounds))
	for i, l := range p.lines() {
		edges[i] = l.Moved(own)
	}
	q.Net, q.Cut = geom.RingOf(edges), outside(edges, m.allowances(p.bounds))
	q.Lines = append(q.Lines, netLine(q.Net))
	m.hem(&q, p, edges)
	for no := range seam(len(m.panels)) {
		m.joined(&q, p, no, notches[no])
	}
	m.corners(&q, edges)
	q.Margins = []piece.Margin{{At: piece.AtTarpEdge, Wide: m.d.Tarp.Hem}}
	if !p.whole {
		q.Margins = append(q.Margins, piece.Margin{At: piece.AtTarpJoin, Wide: m.d.Tarp.Allowance})
	}
	m.letter(&q, m.words.Cloth.Under)
	m.out.Pieces = append(m.out.Pieces, q)
}

// netLine returns the finished line of a piece.
func netLine(net geom.Ring) piece.Line {
	return piece.Line{Name: "net line", Role: piece.NetLine, Work: piece.Stitch, Points: geom.Polyline(net), Closed: true}
}

// title returns what a panel is called.
func (m *maker) title(p panel) string {
	say := m.words.Cloth
	switch {
	case p.whole:
		return say.Tarp
	case p.across:
		return fmt.Sprintf(say.TarpPart, p.number)
	case p.number == 0:
		return fmt.Sprintf(say.TarpHalf, m.words.Pieces.Rims[piece.RimOf(p.half)])
	}
	return fmt.Sprintf(say.TarpHalfPart, m.words.Pieces.Rims[piece.RimOf(p.half)], p.number)
}

// cloth returns a piece of the sheet's cloth.
func (m *maker) cloth(of piece.Piece) piece.Piece {
	of.Stock, of.Article, of.OneWay = piece.Cloth, article.Tarp, m.d.ClothFor(article.Tarp).OneWay
	return of
}

// hem draws the two folds along every edge of the sheet that a panel has.
func (m *maker) hem(q *piece.Piece, p panel, edges []geom.Polyline) {
	fold := make([]float64, len(edges))
	for i, b := range p.bounds {
		if b.bound.hemmed() {
			fold[i] = m.d.Tarp.Hem
		}
	}
	edges, fold = smooth(edges, fold)
	moved := geom.MovedEdges(edges, fold)
	for i, l := range edges {
		if fold[i] == 0 { // a join
			continue
		}
		q.Hem += l.Length()
		q.Lines = append(q.Lines, piece.Line{Name: "hem fold 1", Role: piece.HemFold, Index: 1, Work: piece.Score, Points: l},
			piece.Line{Name: "hem fold 2", Role: piece.HemFold, Index: 2, Work: piece.Score, Points: moved[i].Inside(q.Cut)})
	}
}

// joined draws what a panel has at a seam: notches, and what its fell needs.
func (m *maker) joined(q *piece.Piece, p panel, no seam, notches []piece.Notch) {
	line, left := p.at(no)
	if line == nil || len(notches) == 0 {
		return
	}
	line = line.Moved(p.motion())
	inside := -1.0
	if left {
		inside = 1
	}
	l, t := walk.Notches(walk.Flat(line), notches, walk.Style{Allowance: m.d.Tarp.Allowance, Inside: inside, Letter: clothLetter / 2})
	q.Lines, q.Labels = append(q.Lines, l...), append(q.Labels, t...)
	fell := FellOf(m.d.Tarp.Allowance)
	if fell.Fold == 0 {
		return
	}
	add := func(name string, role piece.Role, w piece.Work, out float64) {
		for _, part := range extended(line).Offset(inside*out).Clipped(q.Cut, nil) {
			q.Lines = append(q.Lines, piece.Line{Name: fmt.Sprintf("%s %d", name, no), Role: role, Of: fmt.Sprint(int(no)), Work: w, Points: part})
		}
	}
	for _, s := range p.covers {
		if s == no {
			add("join fold", piece.FellFold, piece.Score, fell.Fold)
		}
	}
	for _, s := range p.covered {
		if s == no {
			add("join trim line", piece.FellTrim, piece.Mark, fell.Trim)
			add("join edge stitch", piece.FellStitch, piece.Stitch, -fell.Second)
		}
	}
}

// extended returns a line run on straight at both ends, across any allowance.
func extended(l geom.Polyline) geom.Polyline {
	const on = 200.0
	n := len(l)
	out := geom.Polyline{l[0].Plus(l[0].Minus(l[1]).Unit().Times(on))}
	out = append(out, l[1:n-1]...)
	return append(out, l[n-1].Plus(l[n-1].Minus(l[n-2]).Unit().Times(on)))
}

// corners letters the corners of the net line, and gives their distances.
func (m *maker) corners(q *piece.Piece, edges []geom.Polyline) {
	at := make([]geom.Point, len(edges))
	for i, l := range edges {
		at[i] = l[0]
	}
	letters := make([]string, len(at))
	for i, p := range at {
		letters[i] = string(rune('A' + i))
		before, after := edges[(i+len(edges)-1)%len(edges)], edges[i]
		in := after[1].Minus(p).Unit().Plus(before[len(before)-2].Minus(p).Unit()).Unit()
		q.Labels = append(q.Labels, piece.Label{Text: letters[i], Role: piece.CornerLabel,
			At: p.Plus(in.Times(2 * clothLetter)), Height: clothLetter,
			Anchor: piece.Centre})
		for k, other := range at[:i] {
			q.Checks = append(q.Checks, piece.Measure{Kind: piece.LetteredCorners, Letters: [2]string{letters[k], letters[i]},
				Length: p.Dist(other)})
		}
	}
	m.out.Corners = append(m.out.Corners, piece.Cornered{Piece: q.ID, Letters: letters, At: at})
}

// letter puts the grain arrow and the lettering on a piece, clear of what is on it; face
// says which one is lettered.
func (m *maker) letter(q *piece.Piece, face string) {
	box := q.Net.Bounds()
	at, wide := levelIn(q.Net)
	half := min(wide/4, 150)
	q.Lines = append(q.Lines, piece.Arrow(at.Minus(geom.Pt(half, 0)), at.Plus(geom.Pt(half, 0)))...)
	h := min(clothLetter, box.Width()/20, box.Height()/8)
	room := label.NewRoom(q)
	rows := label.Rows(m.d.Name, fmt.Sprintf(m.words.Cloth.CutMany, q.Title, q.Count), m.d.ClothFor(article.Tarp).Name,
		fmt.Sprintf(m.words.Cloth.Shape, m.mark), face)
	room.LetterBlock(rows, box.Center(), h, label.Smallest, &q.Labels)
	room.Try(piece.Label{Text: m.words.Cloth.Grain, At: at.Plus(geom.Pt(0, 0.8*h)), Height: h / 2, Anchor: piece.Centre}, &q.Labels)
}

// levelIn returns the middle of the widest level stretch of a ring at a third of its
// height, or higher where that is wider by half, and how wide it is.
func levelIn(r geom.Ring) (at geom.Point, wide float64) {
	box := r.Bounds()
	for _, part := range []float64{0.31, 0.47, 0.63} {
		y := box.Min.Y + box.Height()*part
		all := r.LevelCrossings(y)
		for i := 0; i+1 < len(all); i += 2 {
			if w := all[i+1] - all[i]; w > 1.5*wide {
				at, wide = geom.Pt((all[i]+all[i+1])/2, y), w
			}
		}
	}
	return at, wide
}

// patches builds the reinforcements of the corners, two one way and two the other, and of
// both ends of the ridge. Their outer edges lie in the folds of the hem, the inner ones
// are turned under.
//
//	    hem
//	┌─────────╲
//	│           ╲ turned under
//	│            │
//	└────────────┘
func (m *maker) patches() {
	o, reach := m.out.flat, m.d.Tarp.Patch
	side, end := geom.NewArc(o.side.Line()), geom.NewArc(o.foot.Line())
	m.patch(piece.Piece{ID: "tarp-patch-corner", Title: m.words.Cloth.TarpCorner, Count: 4, Paired: true},
		end.Between(end.Length()-reach, end.Length()), side.Between(0, reach))
	// At an end of the ridge the patch lies on both halves, whose seams meet there as the
	// ridge begins.
	first := geom.NewArc(o.ridge.Line())
	in, _ := first.At(first.Length() - reach)
	straight := geom.Motion{Turn: -o.ridge.To.Minus(in).Angle()}
	straight.Shift = straight.Apply(o.ridge.To).Times(-1)
	upper := end.Between(0, reach).Moved(straight)
	lower := upper.Reversed().Moved(geom.Motion{Mirror: true})
	m.patch(piece.Piece{ID: "tarp-patch-ridge", Title: m.words.Cloth.TarpEnd, Count: 2}, lower, upper)
}

// patch builds a patch between two edges of the sheet that meet at its corner, the second
// where the first ends, counter-clockwise.
func (m *maker) patch(of piece.Piece, a, b geom.Polyline) {
	corner := b[0]
	inner := corner.Plus(a[0].Minus(corner).Unit().Plus(b[len(b)-1].Minus(corner).Unit()).Unit().Times(m.d.Tarp.Patch))
	// The corner lies at the upper right, the warp along x.
	edges := []geom.Polyline{a, b, {b[len(b)-1], inner}, {inner, a[0]}}
	for i := range edges {
		edges[i] = edges[i].Moved(geom.Motion{Shift: corner.Times(-1)})
	}
	if of.Count > 2 {
		m.out.Patch = [4]geom.Point{edges[1][0], edges[0][0], edges[2][1], edges[2][0]}
	}
	q := m.cloth(of)
	q.Kind = piece.TarpPatch
	turn := m.d.Tarp.Allowance
	q.Net, q.Cut = geom.RingOf(edges), outside(edges, []float64{0, 0, turn, turn})
	q.Lines = append(q.Lines, netLine(q.Net))
	q.Hem = edges[2].Length() + edges[3].Length() // stitched down there
	q.Margins = []piece.Margin{{At: piece.AtPatch, Wide: turn}}
	m.letter(&q, m.words.Cloth.Against)
	m.out.Pieces = append(m.out.Pieces, q)
}
