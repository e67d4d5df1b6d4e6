// Package insectnet sizes and builds an insect net over a bed: two sides between the ridge and
// the channels' outer folds, and two ends over the caps, with a zip. The sides are ruled
// surfaces that are laid flat with the lengths of all their edges; the ends are flat.
//
// Lengths are mm, angles rad.
package insectnet

import (
	"fmt"
	"math"

	"slingloft/outline/article"
	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
	"slingloft/outline/walk"
	"slingloft/outline/words"
)

// Sewn is the cover of a design: its pieces, the seams walked, and how it hangs.
type Sewn struct {
	Pieces  []piece.Piece
	Seams   []piece.Seam
	Space   Space
	Curves  []Curved
	Corners []piece.Cornered
	Shear   float64 // largest that the sides ask of the net
	ShearX  float64 // its station
	Narrows float64 // how many times as wide as flat the net hangs there, across the bed's length
	Zip     Zip
	Loops   int // of tape on the ridge
	// Ties are the lengths of the cords across under the bed that hold a loose edge, with
	// what their knots take.
	Ties []float64
	// Elastic is that in the hem of a loose edge as it is cut, once round.
	Elastic float64
	Gap     float64 // largest between bed and a loose edge, from tie to tie
	Packed  quantity.Litres
}

// Curved is an edge of a piece that is drawn by a curve, from corner to corner, x along the
// straight line between them, y outwards from the piece.
type Curved struct {
	ID     string
	Kind   piece.CurveKind
	Line   geom.Polyline
	Places []piece.Place
}

// Pieces builds the cover of a design over a bed. mark is lettered on
// each piece, in the words given. The error is a [hung.Impossible], or a [design.Advised] of
// the place of its zip.
func Pieces(d design.Design, s Space, on Bed, mark string, w words.Lettering) (Sewn, error) {
	m := maker{d: d, bed: on, mark: mark, words: w}
	m.out.Space = s
	most, at := s.Side.Shear()
	m.out.Shear = most
	if at > 0 {
		m.out.ShearX = (s.Side.Near[at-1].X + s.Side.Near[at].X) / 2
		m.out.Narrows = math.Tan((math.Pi/2 - most) / 2)
	}
	for _, of := range []bed.Side{bed.Left, bed.Right} {
		m.sides[of] = sideOf(s, of)
	}
	if err := m.hemLies(); err != nil {
		return m.out, err
	}
	if err := m.sew(); err != nil {
		return m.out, err
	}
	for _, q := range m.pieces {
		m.letter(&q)
		m.out.Pieces = append(m.out.Pieces, q)
	}
	if err := m.fitsRoll(); err != nil {
		return m.out, err
	}
	m.curves()
	m.held()
	cut := 0.0
	for _, p := range m.out.Pieces {
		cut += p.Cut.Area()
	}
	// 1 kg/m³ is 1 g/l.
	m.out.Packed = quantity.Litres(d.ClothFor(article.Cover).ArealDensity.Grams(cut) / float64(d.Sack.Density))
	return m.out, nil
}

// maker gathers the pieces while they are built.
type maker struct {
	d     design.Design
	bed   Bed
	mark  string
	words words.Lettering
	sides [2]side // by [bed.Side]
	// pieces are by [bed.Side], then by [bed.End].
	pieces [4]piece.Piece
	count  int // notches named
	out    Sewn
}

// sideOf and endOf return the piece that is a side, or an end.
func (m *maker) sideOf(s bed.Side) *piece.Piece { return &m.pieces[s] }
func (m *maker) endOf(e bed.End) *piece.Piece   { return &m.pieces[2+int(e)] }

// loose reports whether the lower edge hangs free.
func (m *maker) loose() bool { return m.d.Cover.Edge == design.LooseEdge }

// lower returns how far outside of the net line the lower edge ends finished, and is cut.
func (m *maker) lower() (finished, cut float64) {
	c := m.d.Cover
	if m.loose() {
		return c.Lap, c.Lap + 2*c.Hem // folded two times, it takes its width two times
	}
	return c.Hem, 2 * c.Hem // lies on the bed's edge, turned under once
}

// sew builds all four pieces and walks their seams.
func (m *maker) sew() error {
	for _, s := range []bed.Side{bed.Left, bed.Right} {
		m.side(s)
	}
	for _, e := range hung.Ends() {
		m.end(e)
	}
	if err := m.zip(); err != nil {
		return err
	}
	m.ridge()
	for _, s := range []bed.Side{bed.Left, bed.Right} {
		for _, e := range hung.Ends() {
			m.corner(s, e)
		}
		m.toBed(s)
	}
	for _, e := range hung.Ends() {
		m.toCap(e)
	}
	return nil
}

// cloth returns a piece of the cover's cloth between edges, of which low are of the lower
// edge.
func (m *maker) cloth(of piece.Piece, edges []geom.Polyline, low []bool) piece.Piece {
	c := m.d.Cover
	of.Stock, of.Article, of.Count, of.OneWay = piece.Cloth, article.Cover, 1, m.d.ClothFor(article.Cover).OneWay
	finished, cut := m.lower()
	out, fold, done := make([]float64, len(edges)), make([]float64, len(edges)), make([]float64, len(edges))
	for i := range edges {
		out[i], fold[i], done[i] = c.Allowance, c.Allowance, c.Allowance
		if low[i] {
			out[i], done[i], fold[i] = cut, finished, cut-c.Hem
		}
	}
	of.Net, of.Cut = geom.RingOf(edges), geom.OffsetEdges(edges, out)
	of.Lines = append(of.Lines, piece.Line{Name: "net line", Role: piece.NetLine, Work: piece.Stitch, Points: geom.Polyline(of.Net), Closed: true})
	first, second := geom.MovedEdges(edges, done), geom.MovedEdges(edges, fold)
	add := func(index int, line geom.Polyline) {
		of.Lines = append(of.Lines, piece.Line{Name: fmt.Sprintf("hem fold %d", index), Role: piece.HemFold, Index: index,
			Work: piece.Score, Points: line.Inside(of.Cut)})
	}
	for i := range edges {
		if !low[i] {
			continue
		}
		add(1, first[i])
		if m.loose() {
			add(2, second[i])
		}
		of.Hem += first[i].Length()
	}
	of.Margins = []piece.Margin{{At: piece.AtCoverSeam, Wide: c.Allowance}, {At: piece.AtCoverEdge, Wide: cut - c.Hem},
		{At: piece.AtCoverHem, Wide: c.Hem}}
	return of
}

// side builds a side.
func (m *maker) side(s bed.Side) {
	p := m.sides[s]
	low := make([]bool, len(p))
	for i := range p {
		low[i] = p[i].bound.low()
	}
	*m.sideOf(s) = m.cloth(piece.Piece{ID: "cover-" + s.String(), Kind: piece.CoverSide,
		Title: fmt.Sprintf(m.words.Cloth.CoverSide, m.words.Pieces.Rims[piece.RimOf(s)])}, p.lines(), low)
	at := make([]geom.Point, len(p))
	for i := range p {
		at[i] = p[i].line[0]
	}
	m.corners(m.sideOf(s), at)
}

// end builds an end.
func (m *maker) end(e bed.End) {
	n := m.out.Space.Ends[e]
	edges := n.Outline()
	*m.endOf(e) = m.cloth(piece.Piece{ID: "cover-" + e.String(), Kind: piece.CoverEnd,
		Title: fmt.Sprintf(m.words.Cloth.CoverEnd, m.words.Ends[e])}, edges, []bool{true, false, false})
	m.corners(m.endOf(e), []geom.Point{n.Edge[0], n.Corner, n.Top})
}

// walked walks a seam between two edges and notches both, evenly, the first notch double.
func (m *maker) walked(s piece.Seam, on [2]*piece.Piece, lines [2]geom.Polyline, left [2]bool, notches int) {
	edges := [2]flat.Edge{walk.Flat(lines[0]), walk.Flat(lines[1])}
	var ns []piece.Notch
	for i := range notches {
		m.count++
		ns = append(ns, piece.Notch{Name: fmt.Sprintf("N%d", m.count), Number: m.count,
			At: edges[0].HungLength() * float64(i+1) / float64(notches+1), Double: i == 0})
	}
	s.IDs = [2]string{on[0].ID, on[1].ID}
	m.out.Seams = append(m.out.Seams, walk.Seam(walk.Pair{Seam: s, Edges: edges, Notches: ns}, m.d.Seam))
	for i, p := range on {
		m.notch(p, edges[i], ns, left[i], m.d.Cover.Allowance)
	}
}

// notch draws notches along an edge of a piece.
func (m *maker) notch(p *piece.Piece, e flat.Edge, ns []piece.Notch, left bool, allowance float64) {
	inside := -1.0
	if left {
		inside = 1
	}
	l, t := walk.Notches(e, ns, walk.Style{Allowance: allowance, Inside: inside, Letter: clothLetter / 2})
	p.Lines, p.Labels = append(p.Lines, l...), append(p.Labels, t...)
}

// ridgeNotches is how many notches the ridge has; the net hangs by a loop at each, and at
// both ends.
const ridgeNotches = 3

// ridge sews both sides together.
func (m *maker) ridge() {
	l, onLeft := m.sides[bed.Left].at(atRidge)
	r, onRight := m.sides[bed.Right].at(atRidge)
	m.walked(piece.Seam{Kind: piece.CoverRidge}, [2]*piece.Piece{m.sideOf(bed.Left), m.sideOf(bed.Right)},
		[2]geom.Polyline{l, r}, [2]bool{onLeft, onRight}, ridgeNotches)
	m.out.Loops = ridgeNotches + 2
}

// corner sews a side to an end.
func (m *maker) corner(s bed.Side, e bed.End) {
	b := atHeadEnd
	if e == bed.Foot {
		b = atFootEnd
	}
	line, left := m.sides[s].at(b)
	n := m.out.Space.Ends[e]
	low := geom.Pt(s.Sign()*e.Sign()*n.Corner.X, n.Corner.Y) // as one sees it from outside: at the head the left to the left
	kind := piece.CoverLeft
	if s == bed.Right {
		kind = piece.CoverRight
	}
	m.walked(piece.Seam{Kind: kind, End: e}, [2]*piece.Piece{m.sideOf(s), m.endOf(e)},
		[2]geom.Polyline{line, {low, n.Top}}, [2]bool{left, low.X > 0}, 1)
}

// toBed sews the lower edge of a side to the outer fold of its channel, notch on notch. A
// loose edge has its ties there.
func (m *maker) toBed(s bed.Side) {
	line, left := m.sides[s].lower()
	net, strip := walk.Flat(line), m.fold()
	var ns []piece.Notch
	for _, n := range m.bed.Notches[s] {
		n.At = strip.HungOf(n.At)
		ns = append(ns, n)
	}
	_, cut := m.lower()
	if m.loose() {
		m.ties(ns)
	} else {
		id := "channel-" + s.String()
		if m.d.Channel.Kind == design.Facing {
			id = "facing-" + s.String()
		}
		p := walk.Pair{Seam: piece.Seam{Kind: piece.CoverToChannel, Rim: piece.RimOf(s), IDs: [2]string{m.sideOf(s).ID, id}},
			Edges: [2]flat.Edge{net, strip}, Notches: ns}
		m.out.Seams = append(m.out.Seams, walk.Seam(p, m.d.Seam))
	}
	m.notch(m.sideOf(s), net, ns, left, cut)
}

// fold returns the fold of a channel's strip, by what it is long as cut, and hung between
// the same corners and bars' tips.
func (m *maker) fold() flat.Edge {
	rim := m.out.Space.Side.Near
	at, total := make([]float64, 4), 0.0
	for i := 1; i < len(rim); i++ {
		total += rim[i].Minus(rim[i-1]).Len()
		for e, tip := range m.out.Space.Tips {
			if i == tip {
				at[1+e] = total
			}
		}
	}
	at[3] = total
	long := []float64{0, 0, 0, m.bed.Long}
	e := 1
	for _, n := range m.bed.Notches[bed.Left] {
		if n.Bar {
			long[e] = n.At
			e++
		}
	}
	out := flat.Edge{Hung: at}
	for _, x := range long {
		out.Flat = append(out.Flat, geom.Pt(x, 0))
	}
	return out
}

// toCap sews the lower edge of an end to the top edge of its cap.
func (m *maker) toCap(e bed.End) {
	n := m.out.Space.Ends[e]
	_, cut := m.lower()
	edge := walk.Flat(n.Edge)
	middle := edge.HungLength() / 2
	m.count++
	ns := []piece.Notch{{Name: fmt.Sprintf("N%d", m.count), Number: m.count, At: middle}}
	m.notch(m.endOf(e), edge, ns, true, cut)
	if m.loose() {
		return
	}
	on := n.Edge[n.Cap[0] : n.Cap[1]+1]
	top := m.bed.CapTops[e]
	half := walk.Flat(on)
	ns[0].At = half.HungLength() / 2
	m.out.Seams = append(m.out.Seams, walk.Seam(walk.Pair{
		Seam:  piece.Seam{Kind: piece.CoverToCap, End: e, IDs: [2]string{m.endOf(e).ID, "cap-" + e.String()}},
		Edges: [2]flat.Edge{half, walk.Flat(top)}, Notches: ns}, m.d.Seam))
}

// fitsRoll refuses pieces that are higher than the roll is wide.
func (m *maker) fitsRoll() error {
	c := m.d.ClothFor(article.Cover)
	for _, p := range m.out.Pieces {
		if high := p.Cut.Bounds().Height(); high > c.Width-2*c.Margin {
			return &hung.Impossible{Key: m.d.WidthKey(article.Cover), Found: design.Found(design.CoverOverRoll, p.ID), Bound: design.AtLeast,
				Limit: math.Ceil(high + 2*c.Margin)}
		}
	}
	return nil
}
