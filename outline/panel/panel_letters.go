package panel

import (
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/label"
	"slingloft/outline/piece"
)

// panelLetters returns a panel's title, its side and its grain arrow: the title
// inside the head bar, the arrow inside the foot bar, where the panel is widest.
func (m *pattern) panelLetters(q panel) ([]piece.Line, []piece.Label) {
	const clear = 2.4 * clothLetter // off a join: its notches are numbered there
	texts := m.lettering(m.as.panels[q.which], m.panelSides(q))
	head, foot := m.out.BarLines[hung.Head][0].X, m.out.BarLines[hung.Foot][0].X
	at := head + 5*clothLetter
	h, place := clothLetter, geom.Point{}
	for _, h = range label.Sizes(clothLetter) {
		wide := 0.0
		for _, t := range texts {
			wide = max(wide, label.Width(t, h))
		}
		low, high := m.clearBand(q, at, at+wide, clear)
		tall := h * (1.7*float64(len(texts)-1) + 1 + label.UnderLine)
		place = geom.Pt(at, low+(high-low+tall)/2-h)
		if tall <= high-low {
			break
		}
	}
	labels := piece.Stacked(place, h, 0, texts...)
	long := min(300, (foot-head)/4)
	low, high := m.clearBand(q, foot-5*clothLetter-long, foot-5*clothLetter, clear)
	v := low + (high-low)/3
	lines := piece.Arrow(geom.Pt(foot-5*clothLetter-long, v), geom.Pt(foot-5*clothLetter, v))
	labels = append(labels, piece.Label{Text: m.words.Cloth.Grain,
		At: geom.Pt(foot-5*clothLetter-long/2, v+0.7*clothLetter), Height: clothLetter / 2, Anchor: piece.Centre})
	if q.middle() {
		return lines, append(labels, m.lineLabels()...)
	}
	for _, e := range hung.Ends() {
		bar := crossesAt(m.out.BarLines[e], math.Abs(m.joinOf(q).V)).X
		low, high := m.clearBand(q, bar-1, bar+1, clear)
		if t := m.words.Cloth.Bars[e]; label.Width(t, clothLetter) < high-low {
			labels = append(labels, piece.Label{Text: t, At: geom.Pt(bar-e.Sign()*2*clothLetter, low), Height: clothLetter, Turn: math.Pi / 2})
		}
	}
	return lines, labels
}

// joinOf returns the join of a panel that has one.
func (m *pattern) joinOf(q panel) *Join {
	if q.lower != nil {
		return q.lower
	}
	return q.upper
}

// panelSides says which edges a panel has.
func (m *pattern) panelSides(q panel) string {
	switch {
	case q.upper == nil:
		return m.words.Cloth.Edges[bed.Left]
	case q.lower == nil:
		return m.words.Cloth.Edges[bed.Right]
	}
	return m.words.Cloth.NoEdge
}

// clearBand returns the heights between which a panel is free for lettering from
// station a to station b: off its joins, and a letter inside its sides. On the
// middle panel it lies to one side of the centre line.
func (m *pattern) clearBand(q panel, a, b, clear float64) (low, high float64) {
	side := math.Inf(1)
	for _, p := range m.out.SideNet.Flat {
		if p.X >= a && p.X <= b {
			side = min(side, p.Y)
		}
	}
	arc := geom.NewArc(m.out.SideNet.Flat)
	for _, u := range []float64{a, b} {
		s, _ := arc.Nearest(geom.Pt(u, side))
		p, _ := arc.At(s)
		side = min(side, p.Y)
	}
	side -= 2.4 * clothLetter // notches' numbers
	low, high = max(q.low+clear, -side), min(q.high-clear, side)
	if q.middle() {
		low = 1.5 * clothLetter
	}
	return low, high
}
