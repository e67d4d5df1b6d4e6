package panel

import (
	"fmt"
	"math"

	"slingloft/outline/article"
	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
	"slingloft/outline/walk"
)

// body builds the bed's panel, or panels where it is joined.
func (m *pattern) body() error {
	p := m.cloth(m.as.id, m.as.whole, m.as.title)
	p.Net = geom.RingOf(m.edges)
	allow := m.bodyAllowances()
	p.Cut = geom.OffsetEdges(m.edges, allow)
	p.Lines = append(p.Lines, piece.Line{Name: "net line", Role: piece.NetLine,
		Work: piece.Stitch, Points: geom.Polyline(p.Net), Closed: true})
	m.bodyMarks(&p)
	m.bodyNotches(&p)
	if m.d.Channel.Kind == design.Facing {
		p.Lines = append(p.Lines, m.innerStitch()...)
	}
	if m.d.Cap.Kind == design.Gathered {
		m.drawstring(&p)
		for _, i := range []int{headEnd, footEnd} {
			if err := m.hemLies(m.edges[i]); err != nil {
				return err
			}
		}
	}
	m.out.BodyNet = p.Net
	m.openingFolds(&p)
	if err := m.joins(p.Cut); err != nil {
		return err
	}
	if len(m.out.Joins) > 0 {
		return m.divide(p)
	}
	p.Labels = append(p.Labels, m.bodyLabels()...)
	p.Checks = bodyChecks(m.edges, m.out.BarLines)
	p.Margins = append([]piece.Margin{{At: piece.AtSides, Wide: m.d.Seam.Side}, m.endMargin()}, m.openingMargins()...)
	m.out.Pieces = append(m.out.Pieces, p)
	return nil
}

// bodyAllowances returns the allowance on each net edge, mm. A gathered end has
// no cap: its cloth is turned in for a drawstring.
func (m *pattern) bodyAllowances() []float64 {
	allow := make([]float64, bodyEdges)
	for i := range allow {
		allow[i] = m.d.Seam.Side
	}
	end := m.d.Seam.End
	if m.d.Cap.Kind == design.Gathered {
		end = 2 * m.d.Cap.Hem
	}
	allow[footEnd], allow[headEnd] = end, end
	return allow
}

// endMargin is what the body has at its ends.
func (m *pattern) endMargin() piece.Margin {
	if m.d.Cap.Kind == design.Gathered {
		return piece.Margin{At: piece.TurnedEnds, Wide: m.d.Cap.Hem}
	}
	return piece.Margin{At: piece.AtEnds, Wide: m.d.Seam.End}
}

// bodyMarks draws bar lines, centre line and grain.
func (m *pattern) bodyMarks(p *piece.Piece) {
	for e, half := range m.out.BarLines {
		var whole geom.Polyline
		for _, q := range half.Reversed() {
			whole = append(whole, geom.Pt(q.X, -q.Y))
		}
		whole = append(whole[:len(whole)-1], half...)
		p.Lines = append(p.Lines, piece.Line{Name: hung.End(e).String() + " bar line",
			Role: piece.BarLine, Index: e, Work: piece.Mark, Points: whole})
	}
	head, foot := m.b.Ends[hung.Head].Flat[0], m.b.Ends[hung.Foot].Flat[0]
	p.Lines = append(p.Lines, piece.Line{Name: "centre line", Work: piece.Mark, Points: geom.Polyline{head, foot}})
	long := min(300, (foot.X-head.X)/4)
	p.Lines = append(p.Lines, piece.Arrow(geom.Pt(-long/2, -6*clothLetter), geom.Pt(long/2, -6*clothLetter))...)
}

// bodyNotches draws the matching marks on all four seams.
func (m *pattern) bodyNotches(p *piece.Piece) {
	add := func(l []piece.Line, t []piece.Label) {
		p.Lines, p.Labels = append(p.Lines, l...), append(p.Labels, t...)
	}
	st := walk.Style{Allowance: m.d.Seam.Side, Inside: -1, Letter: clothLetter / 2}
	add(walk.Notches(m.out.SideNet, m.onSide(bed.Left), st))
	st.Inside = 1
	add(walk.Notches(m.out.SideNet.Mirrored(), m.onSide(bed.Right), st))
	if m.d.Cap.Kind == design.Gathered {
		return
	}
	for e := range m.out.EndNets {
		st := walk.Style{Allowance: m.d.Seam.End, Inside: 1, Letter: clothLetter / 2}
		if hung.End(e) == hung.Head {
			st.Inside = -1
		}
		add(walk.Notches(m.out.EndNets[e], m.out.EndNotches[e], st))
	}
}

// innerStitch returns the stitch lines that close a facing's channel, at the
// reach inside the cords.
func (m *pattern) innerStitch() []piece.Line {
	inner := m.edgesAt(m.out.Reach)
	left := joinedUp(leftEdges(inner))
	right := geom.Polyline{}
	for _, p := range left {
		right = append(right, geom.Pt(p.X, -p.Y))
	}
	return []piece.Line{
		{Name: "channel stitch right", Work: piece.Stitch, Points: right},
		{Name: "channel stitch left", Work: piece.Stitch, Points: left},
	}
}

// drawstring draws the folds of a gathered end: the edge is turned in at the net
// line, its raw edge half way under.
func (m *pattern) drawstring(p *piece.Piece) {
	half := geom.MovedEdges(m.edges, func() []float64 {
		d := make([]float64, bodyEdges)
		d[headEnd], d[footEnd] = m.d.Cap.Hem, m.d.Cap.Hem
		return d
	}())
	for e, i := range [2]int{headEnd, footEnd} {
		name := hung.End(e).String()
		p.Lines = append(p.Lines,
			piece.Line{Name: name + " fold", Work: piece.Score, Points: m.edges[i]},
			piece.Line{Name: name + " turn-under", Work: piece.Score, Points: half[i].Inside(p.Cut)})
	}
}

// bodyLabels letters the panel above its centre line, clear of the bar lines.
func (m *pattern) bodyLabels() []piece.Label {
	h := clothLetter
	x := -m.d.Bed.Span / 4
	out := piece.Stacked(geom.Pt(x, 8*h), h, 0,
		m.lettering(m.as.title)...,
	)
	out = append(out, m.lineLabels()...)
	out = append(out,
		piece.Label{Text: m.words.Cloth.Grain, At: geom.Pt(0, -5*h), Height: h / 2, Anchor: piece.Centre},
		piece.Label{Text: m.words.Cloth.Sides[bed.Left], At: geom.Pt(x, m.sideRoom()), Height: h / 2},
		piece.Label{Text: m.words.Cloth.Sides[bed.Right], At: geom.Pt(x, -m.sideRoom()), Height: h / 2})
	return out
}

// lettering is what stands on a piece of the layer with a title.
func (m *pattern) lettering(title string, more ...string) []string {
	out := append([]string{m.named(title), m.d.Cloth.Name, fmt.Sprintf(m.as.face, m.mark)}, more...)
	if m.as.article == article.Bed {
		out = append(out, m.largestMass())
	}
	return out
}

// largestMass is what the bed is made to carry, lettered where everybody who gets in
// sees it.
func (m *pattern) largestMass() string {
	return fmt.Sprintf(m.words.LargestMass, m.d.Output.Style(0).People(float64(m.d.Sleeper.Mass), false))
}

// named returns what tells one piece of the design from the others.
func (m *pattern) named(title string) string {
	return m.d.Name + " · " + fmt.Sprintf(m.words.Cloth.Cut, title)
}

// lineLabels names the bar lines and the centre line.
func (m *pattern) lineLabels() []piece.Label {
	h := clothLetter
	var out []piece.Label
	for _, e := range hung.Ends() {
		bar := m.out.BarLines[e][0].X
		out = append(out, piece.Label{Text: m.words.Cloth.Bars[e], At: geom.Pt(bar-e.Sign()*2*h, 4*h), Height: h, Turn: math.Pi / 2})
	}
	return append(out, piece.Label{Text: m.words.Cloth.Centre, At: geom.Pt(-m.d.Bed.Span/4, 0.8*h), Height: h / 2})
}

// sideRoom returns a height on the panel well inside the seam over the quarter
// of the bay where its side's name stands.
func (m *pattern) sideRoom() float64 {
	v := math.Inf(1)
	for _, p := range m.out.SideNet.Flat {
		if math.Abs(p.X) < m.d.Bed.Span/2 {
			v = min(v, p.Y)
		}
	}
	return 0.75 * v
}

// bodyChecks returns the distances that prove the panel square, between its net
// corners and where the bar lines meet the seam lines.
func bodyChecks(edges []geom.Polyline, bars [2]geom.Polyline) []piece.Measure {
	last := func(i int) geom.Point { return edges[i][len(edges[i])-1] }
	tip := func(e hung.End, side float64) geom.Point {
		p := bars[e][len(bars[e])-1]
		return geom.Pt(p.X, side*p.Y)
	}
	corner := func(e bed.End, s bed.Side) piece.Corner { return piece.Corner{End: e, Rim: piece.RimOf(s)} }
	onBar := func(e bed.End, s bed.Side) piece.Corner {
		return piece.Corner{End: e, At: piece.AtBarLine, Rim: piece.RimOf(s)}
	}
	const h, f, l, r = bed.Head, bed.Foot, bed.Left, bed.Right
	at := map[piece.Corner]geom.Point{
		corner(h, r): edges[rightHeadTail][0], corner(f, r): edges[footEnd][0],
		corner(f, l): edges[leftFootTail][0], corner(h, l): last(leftHeadTail),
		onBar(h, r): tip(hung.Head, -1), onBar(f, r): tip(hung.Foot, -1), onBar(f, l): tip(hung.Foot, 1), onBar(h, l): tip(hung.Head, 1),
	}
	var out []piece.Measure
	for _, q := range [][2]piece.Corner{
		{corner(h, l), corner(f, r)}, {corner(h, r), corner(f, l)},
		{onBar(h, l), onBar(f, r)}, {onBar(h, r), onBar(f, l)},
		{corner(h, l), corner(h, r)}, {corner(f, l), corner(f, r)},
		{onBar(h, l), onBar(h, r)}, {onBar(f, l), onBar(f, r)},
		{onBar(h, l), onBar(f, l)}, {onBar(h, r), onBar(f, r)},
	} {
		out = append(out, piece.Measure{From: q[0], To: q[1], Length: at[q[0]].Dist(at[q[1]])})
	}
	return out
}
