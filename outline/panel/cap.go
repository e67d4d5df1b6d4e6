package panel

import (
	"fmt"
	"math"

	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
	"slingloft/outline/walk"
)

// cap builds an end's cap from the hung end section and walks its seam. A
// gathered end has none.
func (m *pattern) cap(e hung.End) error {
	if m.d.Cap.Kind == design.Gathered {
		return nil
	}
	seam, err := m.capSeam(e)
	if err != nil {
		return err
	}
	if err := m.hollowFits(seam); err != nil {
		return err
	}
	top := m.capTop(seam)
	if err := m.hemLies(top); err != nil {
		return err
	}
	round, inside := seam, 1.0 // counter-clockwise, and the side of the seam the cap lies on
	if e == hung.Foot {
		round, inside = seam.Reversed(), -1
		top = top.Reversed()
	}
	net := []geom.Polyline{round, top}
	p := piece.Piece{ID: "cap-" + e.String(), Kind: piece.Cap, Title: m.words.CapTitle(e),
		Stock: piece.Cloth, Count: 1, OneWay: m.d.Cloth.OneWay}
	p.Net = geom.RingOf(net)
	m.out.CapSeams[e], m.out.CapTops[e] = round, top
	// The hem is folded twice, so that it takes its own width two times.
	p.Cut = geom.OffsetEdges(net, []float64{m.d.Seam.Cap, 2 * m.d.Cap.Hem})
	// At a sharp corner the cut is blunter than the fold, which ends there.
	hem := geom.MovedEdges(net, []float64{m.d.Seam.Cap, m.d.Cap.Hem})[1].Inside(p.Cut)
	p.Lines = []piece.Line{
		{Name: "net line", Role: piece.NetLine, Work: piece.Stitch, Points: geom.Polyline(p.Net), Closed: true},
		{Name: "hem fold 1", Role: piece.HemFold, Index: 1, Work: piece.Score, Points: top},
		{Name: "hem fold 2", Role: piece.HemFold, Index: 2, Work: piece.Score, Points: hem},
	}
	p.Hem = top.Length()
	p.Margins = []piece.Margin{{At: piece.AtSeam, Wide: m.d.Seam.Cap},
		{At: piece.AtHem, Wide: m.d.Cap.Hem}, {At: piece.AtDip, Wide: m.d.Cap.Hollow}}
	edge := walk.Flat(seam)
	l, t := walk.Notches(edge, m.out.EndNotches[e], walk.Style{Allowance: m.d.Seam.Cap, Inside: inside, Letter: clothLetter / 2})
	p.Lines, p.Labels = append(p.Lines, l...), append(p.Labels, t...)
	m.capMarks(&p, e)
	m.out.Pieces = append(m.out.Pieces, p)
	m.out.Seams = append(m.out.Seams, walk.Seam(walk.Pair{
		Seam:  piece.Seam{Kind: piece.EndToCap, End: e, IDs: [2]string{"body", p.ID}},
		Edges: [2]flat.Edge{m.out.EndNets[e], edge}, Notches: m.out.EndNotches[e],
	}, m.d.Seam))
	return nil
}

// capSeam returns the cap's seam from the right corner under the bed to the left
// one, as one sees it from inside the bed: the end section, cut off on both sides
// by what the body's seam line lies inside the cord. Looking out of the foot end the
// right corner stands to the right, out of the head end to the left.
func (m *pattern) capSeam(e hung.End) (geom.Polyline, error) {
	section := m.b.Sections[e]
	arc := geom.NewArc(section)
	half := m.out.EndNets[e].HungLength() / 2
	if !(half > 0) {
		return nil, &design.Breach{Found: design.Found(design.EndSeamGone, e)}
	}
	right := arc.Between(0, min(half, arc.Length()))
	if over := half - arc.Length(); over > 0 {
		// A facing's seam lies outside the cord: the wall runs on.
		p, dir := arc.At(arc.Length())
		right = append(right, p.Plus(dir.Times(over)))
	}
	out := -e.Sign() // where the left corner stands in the drawing
	var seam geom.Polyline
	for _, p := range right.Reversed() {
		seam = append(seam, geom.Pt(-out*p.X, p.Y))
	}
	for _, p := range right[1:] {
		seam = append(seam, geom.Pt(out*p.X, p.Y))
	}
	return seam, nil
}

// capRoom is the least of a cap that is left above the seam under its top edge, mm:
// own choice, so that hem and template have a place.
const capRoom = 25

// hollowFits refuses a top edge that dips down to the seam: in the middle, or near
// the corners, where the wall runs flatter than the hollow.
func (m *pattern) hollowFits(seam geom.Polyline) error {
	right, left := seam[0], seam[len(seam)-1]
	deepest := math.Inf(1)
	for _, p := range seam[1 : len(seam)-1] {
		t := (p.X - left.X) / (right.X - left.X)
		part := 4 * t * (1 - t)
		if part < 0.02 { // at a corner edge and seam meet anyway
			continue
		}
		// The room falls off to nothing at the corners, as the hollow does.
		deepest = min(deepest, (left.Towards(right, t).Y-p.Y)/part-capRoom)
	}
	if m.d.Cap.Hollow > max(deepest, 0) {
		return &hung.Impossible{Key: design.KeyCapHollow, Found: design.Found(design.CapDips),
			Bound: design.AtMost, Limit: max(deepest, 0)}
	}
	return nil
}

// capTop returns the top edge from the left corner back to the right one:
// straight, or hollow as a parabola.
func (m *pattern) capTop(seam geom.Polyline) geom.Polyline {
	right, left := seam[0], seam[len(seam)-1]
	dip := m.d.Cap.Hollow
	if dip == 0 {
		return geom.Polyline{left, right}
	}
	const n = 120
	var top geom.Polyline
	for i := range n + 1 {
		t := float64(i) / n
		p := left.Towards(right, t)
		top = append(top, geom.Pt(p.X, p.Y-dip*4*t*(1-t)))
	}
	top[0], top[n] = left, right
	return top
}

// capMarks draws the cap's centre line, grain and lettering.
func (m *pattern) capMarks(p *piece.Piece, e hung.End) {
	b := p.Net.Bounds()
	topMid := b.Max.Y - m.d.Cap.Hollow
	p.Lines = append(p.Lines, piece.Line{Name: "centre line", Work: piece.Mark, Points: geom.Polyline{{X: 0, Y: 0}, {X: 0, Y: topMid}}})
	h := min(clothLetter, b.Width()/40, topMid/14)
	// The warp runs along the roll, and the piece is laid as it is drawn here.
	warp := geom.Polyline{{X: -b.Width() * 0.22, Y: topMid * 0.625}, {X: -2 * h, Y: topMid * 0.625}}
	p.Lines = append(p.Lines, piece.Arrow(warp[0], warp[1])...)
	p.Labels = append(p.Labels, piece.Stacked(geom.Pt(1.2*h, topMid*0.75), h*0.8, 0,
		fmt.Sprintf(m.words.Cloth.Cut, p.Title), m.d.Cloth.Name, fmt.Sprintf(m.words.Cloth.Shape, m.mark), m.words.Cloth.FaceUp)...)
	p.Labels = append(p.Labels, piece.Label{Text: m.words.Cloth.Grain,
		At: warp[0].Towards(warp[1], 0.5).Plus(geom.Pt(0, 0.7*h)), Height: h / 2, Anchor: piece.Centre})
	seam := m.out.EndNets[e].HungLength()
	p.Checks = []piece.Measure{
		{Kind: piece.CapTop, Length: b.Width()},
		{Kind: piece.CapDepth, Length: topMid},
		{Kind: piece.CapSeam, Length: seam},
	}
}
