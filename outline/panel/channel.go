package panel

import (
	"fmt"
	"slices"

	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/label"
	"slingloft/outline/piece"
	"slingloft/outline/walk"
)

// channel builds the piece that makes a side's channel, and walks its seam.
func (m *pattern) channel(s bed.Side) error {
	if m.d.Channel.Kind == design.Facing {
		return m.facing(s)
	}
	m.strip(s)
	return nil
}

// strip builds a straight strip, folded lengthwise over the body's edge: from
// each long edge a turn-under, then the foot's distance to the stitch line, then
// the channel's depth to the fold in the middle.
func (m *pattern) strip(s bed.Side) {
	c := m.d.Channel
	long := m.out.SideNet.HungLength()
	stitch := c.TurnUnder + c.Foot
	wide := 2 * (stitch + c.Depth)
	end := m.d.Seam.End
	p := piece.Piece{
		ID: "channel-" + s.String(), Kind: piece.Strip, Title: m.words.StripTitle(s), Stock: piece.Cloth, Count: 1,
		OneWay: m.d.Cloth.OneWay,
		Net:    geom.BoxOf(geom.Pt(0, stitch), geom.Pt(long, wide-stitch)).Ring(),
		Cut:    geom.BoxOf(geom.Pt(-end, 0), geom.Pt(long+end, wide)).Ring(),
	}
	p.Margins = []piece.Margin{
		{At: piece.AtLongEdges, Wide: c.TurnUnder}, {At: piece.AtFoot, Wide: c.Foot}, {At: piece.AtDepth, Wide: c.Depth},
		{At: piece.AtTurnedEnds, Wide: end}, {At: piece.AtOpening, Wide: c.Opening},
	}
	across := func(name string, w piece.Work, y float64) piece.Line {
		return piece.Line{Name: name, Work: w, Points: geom.Polyline{{X: -end, Y: y}, {X: long + end, Y: y}}}
	}
	for i, y := range []float64{c.TurnUnder, wide / 2, wide - c.TurnUnder} {
		p.Lines = append(p.Lines, across(fmt.Sprintf("press line %d", i+1), piece.Score, y))
	}
	for i, y := range []float64{stitch, wide - stitch} {
		p.Lines = append(p.Lines, across(fmt.Sprintf("stitch line %d", i+1), piece.Stitch, y))
	}
	for i, x := range []float64{0, long} {
		p.Lines = append(p.Lines, piece.Line{Name: fmt.Sprintf("end fold %d", i+1),
			Work: piece.Score, Points: geom.Polyline{{X: x, Y: 0}, {X: x, Y: wide}}})
	}
	m.openings(&p, wide/2)
	edge := m.stripNotches(&p, s, stitch, wide)
	p.Labels = append(p.Labels, m.stripLabels(s, c, stitch)...)
	m.stripGrain(&p, s, wide/2+c.Depth/2)
	m.out.Pieces = append(m.out.Pieces, p)
	m.out.Seams = append(m.out.Seams, walk.Seam(walk.Pair{
		Seam:  piece.Seam{Kind: piece.SideToStrip, Rim: piece.RimOf(s), IDs: [2]string{m.sideID[s], p.ID}},
		Edges: [2]flat.Edge{m.out.SideNet, edge}, Notches: m.onSide(s),
		Reach: c.Depth, // of the fold, not of the cord within it
	}, m.d.Seam))
}

// openings draws the worked openings that let the bars' tips out, at the fold,
// where the cord lies.
func (m *pattern) openings(p *piece.Piece, y float64) {
	half := m.d.Channel.Opening / 2
	for e, x := range m.barRuns() {
		name := hung.End(e).String() + " tip opening"
		p.Lines = append(p.Lines, piece.Line{Name: name, Role: piece.TipOpening, Index: e, Work: piece.CutInside,
			Points: geom.Polyline{{X: x - half, Y: y}, {X: x + half, Y: y}}})
	}
}

// stripNotches draws a strip's matching marks on both long edges and its pin
// points, and returns its seam as an edge.
func (m *pattern) stripNotches(p *piece.Piece, s bed.Side, stitch, wide float64) flat.Edge {
	long := m.out.SideNet.HungLength()
	edge := func(y float64) flat.Edge {
		return flat.Edge{Flat: geom.Polyline{{X: 0, Y: y}, {X: long, Y: y}}, Hung: []float64{0, long}}
	}
	low, high := edge(stitch), edge(wide-stitch)
	l, t := walk.Notches(low, m.onSide(s), walk.Style{Allowance: stitch, Inside: 1, Letter: clothLetter / 2.5})
	p.Lines, p.Labels = append(p.Lines, l...), append(p.Labels, t...)
	l, _ = walk.Notches(high, m.onSide(s), walk.Style{Allowance: stitch, Inside: -1})
	p.Lines = append(p.Lines, l...)
	for i, part := range []float64{0, 0.25, 0.5, 0.75, 1} {
		for _, y := range []float64{stitch, wide - stitch} {
			p.Lines = append(p.Lines, piece.Cross(fmt.Sprintf("pin point %d", i+1), geom.Pt(part*long, y))...)
		}
	}
	return low
}

// stripLabels letters a strip between its stitch line and its fold, each text between two
// notches, where none has its number.
func (m *pattern) stripLabels(s bed.Side, c design.Channel, stitch float64) []piece.Label {
	var out []piece.Label
	from := m.barRuns()[0] + c.Opening
	for _, text := range []string{fmt.Sprintf(m.words.Cloth.OnStrip, m.d.Name, m.words.StripTitle(s), m.mark), m.words.Cloth.FaceIn} {
		to := m.out.SideNet.HungLength()
		for _, n := range m.onSide(s) {
			if n.At > from {
				to = min(to, n.At)
			}
		}
		h := fitting(text, min(clothLetter/2, c.Depth/4), to-clothLetter-from)
		out = append(out, piece.Label{Text: text, At: geom.Pt(from, stitch+c.Depth/2-h/2), Height: h})
		from = to + clothLetter
	}
	return out
}

// channelGrain is how long the grain arrow of a channel's piece is, mm: own choice.
const channelGrain = 120.0

// stripGrain draws and letters a strip's grain arrow at a height, midway between its two
// notches that are furthest from each other.
func (m *pattern) stripGrain(p *piece.Piece, s bed.Side, y float64) {
	notches := m.onSide(s)
	from, to := 0.0, notches[0].At
	for i := 1; i < len(notches); i++ {
		if a, b := notches[i-1].At, notches[i].At; b-a > to-from {
			from, to = a, b
		}
	}
	half := min(channelGrain, (to-from)/3) / 2
	m.grain(p, geom.Pt((from+to)/2, y), half)
}

// grain draws a grain arrow on a piece that is as narrow as a channel is deep, and letters
// it past its end.
func (m *pattern) grain(p *piece.Piece, at geom.Point, half float64) {
	h := min(clothLetter/2.5, m.d.Channel.Depth/4)
	end := at.Plus(geom.Pt(half, 0))
	p.Lines = append(p.Lines, piece.ArrowWith(min(14, m.d.Channel.Depth/2), at.Minus(geom.Pt(half, 0)), end)...)
	p.Labels = append(p.Labels, piece.Label{Text: m.words.Cloth.Grain, At: end.Plus(geom.Pt(h, -h/2)), Height: h})
}

// facingGrain draws a facing's grain arrow, straight along the warp, where the arrow fits
// between both edges: beside the middle, where the curve runs along it best.
func (m *pattern) facingGrain(p *piece.Piece, inner geom.Arc) {
	mid, dir := inner.At(inner.Length()/2 + channelGrain)
	at := mid.Plus(dir.Left().Times(m.d.Channel.Depth / 2))
	for half := channelGrain / 2; half > 5; half *= 0.8 {
		wing := geom.Pt(half, m.d.Channel.Depth/6)
		if p.Net.Contains(at.Plus(wing)) && p.Net.Contains(at.Minus(wing)) &&
			p.Net.Contains(at.Plus(geom.Pt(wing.X, -wing.Y))) && p.Net.Contains(at.Minus(geom.Pt(wing.X, -wing.Y))) {
			m.grain(p, at, half)
			return
		}
	}
}

// fitting returns the greatest height of lettering, from the asked one down, at which a
// text is no longer than the room; the smallest where none is.
func fitting(text string, asked, room float64) float64 {
	sizes := label.Sizes(asked)
	for _, h := range sizes {
		if label.Width(text, h) <= room {
			return h
		}
	}
	return sizes[len(sizes)-1]
}

// facing builds a channel piece cut to the curve: the outer edge is sewn to the
// body's, the inner one turned under and stitched at the reach.
func (m *pattern) facing(s bed.Side) error {
	outer, inner := leftEdges(m.edges), leftEdges(m.edgesAt(m.out.Reach))
	in, out := joinedUp(inner), joinedUp(outer)
	if s == bed.Left {
		m.out.FacingInner = in
	}
	net := append(inner, geom.Polyline{in[len(in)-1], out[len(out)-1]})
	for i := range outer {
		net = append(net, outer[len(outer)-1-i].Reversed())
	}
	net = append(net, geom.Polyline{out[0], in[0]})
	p := piece.Piece{ID: "facing-" + s.String(), Kind: piece.Facing, Title: m.words.FacingTitle(s),
		Stock: piece.Cloth, Count: 1, OneWay: m.d.Cloth.OneWay}
	p.Net = geom.RingOf(net)
	c, end, side := m.d.Channel, m.d.Seam.End, m.d.Seam.Side
	under := c.TurnUnder + c.Foot
	p.Margins = []piece.Margin{
		{At: piece.AtOuterEdge, Wide: side}, {At: piece.AtInnerEdge, Wide: c.TurnUnder},
		{At: piece.AtTurnedEnds, Wide: end}, {At: piece.AtSeamOpening, Wide: c.Opening},
	}
	p.Cut = geom.OffsetEdges(net, []float64{under, under, under, end, side, side, side, end})
	p.Lines = []piece.Line{{Name: "net line", Role: piece.NetLine, Work: piece.Stitch, Points: geom.Polyline(p.Net), Closed: true}}
	for i, e := range geom.MovedEdges(net, []float64{c.Foot, c.Foot, c.Foot, 0, 0, 0, 0, 0})[:len(inner)] {
		p.Lines = append(p.Lines, piece.Line{Name: fmt.Sprintf("press line %d", i+1), Work: piece.Score, Points: e})
	}
	edge := m.cord.Beside(out)
	l, t := walk.Notches(edge, m.onSide(s), walk.Style{Allowance: m.d.Seam.Side, Inside: -1, Letter: min(clothLetter/2.5, c.Depth/4)})
	p.Lines, p.Labels = append(p.Lines, l...), append(p.Labels, t...)
	p.Lines = append(p.Lines, m.facingGaps(edge)...)
	// Lettered between two quarters, where no notch has its number.
	arc := geom.NewArc(in)
	mid, dir := arc.At(arc.Length() * 3 / 8)
	text := fmt.Sprintf(m.words.Cloth.OnFacing, m.d.Name, p.Title, m.mark)
	h := fitting(text, min(clothLetter/2, c.Depth/4), arc.Length()/4-2*clothLetter)
	p.Labels = append(p.Labels, piece.Label{Text: text,
		At: mid.Plus(dir.Left().Times(m.d.Channel.Depth / 2)), Height: h, Turn: piece.Readable(dir.Angle()), Anchor: piece.Centre})
	m.facingGrain(&p, arc)
	// It is sewn on face to face, so that it is the mirror image of its side.
	if s == bed.Left {
		p = mirroredPiece(p)
	}
	m.out.Pieces = append(m.out.Pieces, p)
	m.out.Seams = append(m.out.Seams, walk.Seam(walk.Pair{
		Seam:  piece.Seam{Kind: piece.SideToFacing, Rim: piece.RimOf(s), IDs: [2]string{m.sideID[s], p.ID}},
		Edges: [2]flat.Edge{m.out.SideNet, edge}, Notches: m.onSide(s),
	}, m.d.Seam))
	return nil
}

// leftEdges returns the body's edges at v > 0 from head to foot: tail, bay, tail.
func leftEdges(edges []geom.Polyline) []geom.Polyline {
	return []geom.Polyline{edges[leftHeadTail].Reversed(), edges[leftBay].Reversed(), edges[leftFootTail].Reversed()}
}

// joinedUp returns edges that each end where the next starts as one line.
func joinedUp(edges []geom.Polyline) geom.Polyline {
	out := slices.Clone(edges[0])
	for _, e := range edges[1:] {
		out = append(out, e[1:]...)
	}
	return out
}

// facingGaps marks where the outer seam stays open for the bars' tips.
func (m *pattern) facingGaps(edge flat.Edge) []piece.Line {
	var out []piece.Line
	half := m.d.Channel.Opening / 2
	arc := geom.NewArc(edge.Flat)
	for e, at := range m.barRuns() {
		for _, s := range []float64{at - half, at + half} {
			p, dir := arc.At(edge.FlatOf(s))
			n := dir.Left()
			out = append(out, piece.Line{Name: hung.End(e).String() + " tip opening", Role: piece.TipOpening, Index: e, Work: piece.Mark,
				Points: geom.Polyline{p.Plus(n.Times(-4)), p.Plus(n.Times(4))}})
		}
	}
	return out
}

// mirroredPiece returns p mirrored in its u axis, lettering turned so that it
// still reads from left to right.
func mirroredPiece(p piece.Piece) piece.Piece {
	m := geom.Motion{Mirror: true}
	p.Cut, p.Net = p.Cut.Moved(m), p.Net.Moved(m)
	for i, h := range p.Holes {
		p.Holes[i] = h.Moved(m)
	}
	for i := range p.Lines {
		p.Lines[i] = p.Lines[i].Moved(m)
	}
	for i := range p.Labels {
		p.Labels[i] = p.Labels[i].Moved(m)
	}
	return p
}
