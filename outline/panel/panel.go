package panel

import (
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
	"slingloft/outline/walk"
)

// panel is one of the pieces that a joined body is cut as: what of it lies between
// two heights.
type panel struct {
	which        piece.Panel
	low, high    float64
	lower, upper *Join // nil where the panel reaches the body's side
}

// middle reports whether the centre line lies on the panel.
func (p panel) middle() bool { return p.low < 0 && p.high > 0 }

// panels returns the panels of a joined body: the one in the middle first.
func (m *pattern) panels() []panel {
	j := m.out.Joins
	far := math.Inf(1)
	if len(j) == 1 {
		return []panel{
			{piece.WidePanel, -far, j[0].V, nil, &j[0]},
			{piece.NarrowPanel, j[0].V, far, &j[0], nil},
		}
	}
	return []panel{
		{piece.CentrePanel, j[0].V, j[1].V, &j[0], &j[1]},
		{piece.LeftPanel, j[1].V, far, &j[1], nil},
		{piece.RightPanel, -far, j[0].V, nil, &j[0]},
	}
}

// divide makes the panels of the body, which is not lettered yet, and walks their
// joins.
func (m *pattern) divide(whole piece.Piece) error {
	for _, q := range m.panels() {
		p, err := m.panelPiece(whole, q)
		if err != nil {
			return err
		}
		m.out.Pieces = append(m.out.Pieces, p)
		if q.upper == nil {
			m.sideID[bed.Left] = p.ID
		}
		if q.lower == nil {
			m.sideID[bed.Right] = p.ID
		}
	}
	for i, j := range m.out.Joins {
		ids := [2]string{m.sideID[bed.Right], m.out.Pieces[0].ID}
		if i == len(m.out.Joins)-1 {
			ids[0] = m.sideID[bed.Left]
		}
		s := walk.Seam(walk.Pair{
			Seam:  piece.Seam{Kind: m.as.join, Rim: j.Place, IDs: ids},
			Edges: [2]flat.Edge{j.Edge, j.Edge}, Notches: j.Notches,
		}, m.d.Seam)
		m.out.Seams = append(m.out.Seams, s)
	}
	return nil
}

// panelPiece cuts a panel out of the whole body and adds its joins' allowances and
// marks.
func (m *pattern) panelPiece(whole piece.Piece, q panel) (piece.Piece, error) {
	a := m.d.Seam.Join
	p := m.cloth(m.as.prefix+q.which.String(), m.as.part, m.as.panels[q.which])
	var ok, fine bool
	if p.Net, ok = band(whole.Net, q.low, q.high); ok {
		p.Cut, fine = band(whole.Cut, q.low-a, q.high+a)
	}
	if !ok || !fine {
		return p, &hung.Impossible{Key: m.as.joinsKey, Found: design.Found(design.JoinBreaksOff)}
	}
	p.Lines = append(p.Lines, piece.Line{Name: "net line", Role: piece.NetLine,
		Work: piece.Stitch, Points: geom.Polyline(p.Net), Closed: true})
	p.Lines = append(p.Lines, linesBetween(whole.Lines, q.low, q.high)...)
	for _, j := range []*Join{q.lower, q.upper} {
		if j == nil {
			continue
		}
		l, t := m.joinMarks(&p, q, *j)
		p.Lines, p.Labels = append(p.Lines, l...), append(p.Labels, t...)
	}
	for _, l := range whole.Labels { // numbers of notches
		if l.At.Y > q.low && l.At.Y < q.high {
			p.Labels = append(p.Labels, l)
		}
	}
	l, t := m.panelLetters(q)
	p.Lines, p.Labels = append(p.Lines, l...), append(p.Labels, t...)
	p.Checks = m.panelChecks(q)
	p.Margins = m.panelMargins(q)
	for _, l := range p.Lines {
		if l.Role == piece.HemFold && l.Index == 1 {
			p.Hem += l.Points.Length()
		}
	}
	if p.Hem > 0 {
		p.Margins = append(p.Margins, m.openingMargins()...)
	}
	return p, nil
}

// panelMargins is what a panel has at its edges.
func (m *pattern) panelMargins(q panel) []piece.Margin {
	var out []piece.Margin
	if q.lower == nil || q.upper == nil {
		out = append(out, piece.Margin{At: piece.AtSide, Wide: m.d.Seam.Side})
	}
	for _, j := range []*Join{q.lower, q.upper} {
		if j != nil {
			out = append(out, piece.Margin{At: piece.AtJoin, Wide: m.d.Seam.Join, Join: j.Place})
		}
	}
	return append(out, m.endMargin())
}

// band returns the part of a ring between two heights, either of which may be
// infinite, and whether it is one piece: whether each of them meets the outline
// twice.
func band(r geom.Ring, low, high float64) (geom.Ring, bool) {
	ok := true
	for _, c := range []struct{ v, up float64 }{{low, 1}, {high, -1}} {
		if math.IsInf(c.v, 0) {
			continue
		}
		var out geom.Ring
		met := 0
		for i, p := range r {
			q := r[(i+1)%len(r)]
			in, next := (p.Y-c.v)*c.up >= 0, (q.Y-c.v)*c.up >= 0
			if in {
				out = append(out, p)
			}
			if in != next {
				met++
				at := p.Towards(q, (c.v-p.Y)/(q.Y-p.Y))
				out = append(out, geom.Pt(at.X, c.v))
			}
		}
		ok = ok && met == 2
		r = out.Deduped(1e-9)
	}
	return r, ok
}

// linesBetween returns what of the body's lines lies on a panel. A notch is a
// stroke in an end's allowance and stays whole; the net line and the grain arrow
// are the panel's own.
func linesBetween(lines []piece.Line, low, high float64) []piece.Line {
	var out []piece.Line
	for _, l := range lines {
		switch {
		case l.Role == piece.NetLine || l.Role == piece.GrainArrow:
		case l.Role == piece.NotchStroke:
			if v := l.Points[0].Y; v > low && v < high {
				out = append(out, l)
			}
		default:
			for _, part := range between(l.Points, low, high) {
				l.Points = part
				out = append(out, l)
			}
		}
	}
	return out
}

// between returns the parts of a line between two heights.
func between(l geom.Polyline, low, high float64) []geom.Polyline {
	var out []geom.Polyline
	var run geom.Polyline
	for i := 1; i < len(l); i++ {
		a, b := l[i-1], l[i]
		from, to := 0.0, 1.0
		if d := b.Y - a.Y; d != 0 {
			s, t := (low-a.Y)/d, (high-a.Y)/d
			from, to = max(from, min(s, t)), min(to, max(s, t))
		} else if a.Y < low || a.Y > high {
			to = -1
		}
		if from >= to {
			continue
		}
		start := a.Towards(b, from)
		if len(run) == 0 || start.Dist(run[len(run)-1]) > 1e-9 {
			if len(run) > 1 {
				out = append(out, run)
			}
			run = geom.Polyline{start}
		}
		run = append(run, a.Towards(b, to))
	}
	if len(run) > 1 {
		out = append(out, run)
	}
	return out
}

// joinMarks draws a join's notches and what its fell needs: on the inner panel the
// fold of its allowance, on the outer one the line to trim to and the edge stitch.
func (m *pattern) joinMarks(p *piece.Piece, q panel, j Join) ([]piece.Line, []piece.Label) {
	inside := 1.0 // the panel lies to the left of the way from head to foot
	if q.upper != nil && q.upper.V == j.V {
		inside = -1
	}
	a := m.d.Seam.Join
	lines, labels := walk.Notches(j.Edge, j.Notches, walk.Style{Allowance: a, Inside: inside, Letter: clothLetter / 2})
	box := p.Cut.Bounds()
	across := func(name string, role piece.Role, w piece.Work, in float64) {
		v := j.V + inside*in
		for _, part := range (geom.Polyline{{X: box.Min.X - 1, Y: v}, {X: box.Max.X + 1, Y: v}}).Clipped(p.Cut, nil) {
			lines = append(lines, piece.Line{Name: j.Place.String() + " " + name, Role: role, Of: j.Place.String(), Work: w, Points: part})
		}
	}
	fell := a / 2
	switch {
	case fell <= fellEdge:
	case q.middle():
		across("fold", piece.FellFold, piece.Score, -fell)
	default:
		across("trim line", piece.FellTrim, piece.Mark, fellEdge-fell)
		across("edge stitch", piece.FellStitch, piece.Stitch, fell-fellEdge)
	}
	middle := j.Edge.Flat[0].Towards(j.Edge.Flat[1], 0.5)
	labels = append(labels, piece.Label{Text: m.words.Join(j.Place, j.Notches[0].Double),
		At:     middle.Plus(geom.Pt(2*clothLetter, inside*3.6*clothLetter/2)),
		Height: clothLetter / 2})
	return lines, labels
}

// panelChecks returns the distances that prove a panel square.
func (m *pattern) panelChecks(q panel) []piece.Measure {
	lower, upper := m.rim(q.lower, bed.Right), m.rim(q.upper, bed.Left)
	end := func(from, to rim, a, b bed.End) piece.Measure {
		return piece.Measure{From: piece.Corner{End: a, Rim: from.place}, To: piece.Corner{End: b, Rim: to.place},
			Length: from.at[a].Dist(to.at[b])}
	}
	bar := func(from, to rim) piece.Measure {
		return piece.Measure{
			From: piece.Corner{End: bed.Head, At: piece.AtBar, Rim: from.place}, To: piece.Corner{End: bed.Foot, At: piece.AtBar, Rim: to.place},
			Length: from.bars[bed.Head].Dist(to.bars[bed.Foot]),
		}
	}
	return []piece.Measure{
		end(upper, lower, bed.Head, bed.Foot), end(lower, upper, bed.Head, bed.Foot),
		end(upper, lower, bed.Head, bed.Head), end(upper, lower, bed.Foot, bed.Foot),
		end(upper, upper, bed.Head, bed.Foot), end(lower, lower, bed.Head, bed.Foot),
		bar(upper, lower), bar(lower, upper),
	}
}

// rim is one of a panel's long edges by its points at the ends and at the bars.
type rim struct {
	place    piece.Rim
	at, bars [2]geom.Point
}

// rim returns the edge at a join, or at a side where there is none.
func (m *pattern) rim(j *Join, s bed.Side) rim {
	r := rim{place: piece.RimOf(s)}
	up := 1 - 2*float64(s)
	side := m.out.SideNet.Flat
	r.at = [2]geom.Point{side[0], side[len(side)-1]}
	for e, half := range m.out.BarLines {
		r.bars[e] = half[len(half)-1]
	}
	if j != nil {
		r.place = j.Place
		r.at = [2]geom.Point(j.Edge.Flat)
		for e, half := range m.out.BarLines {
			r.bars[e] = geom.Pt(crossesAt(half, math.Abs(j.V)).X, j.V)
		}
		return r
	}
	for i := range r.at {
		r.at[i].Y *= up
		r.bars[i].Y *= up
	}
	return r
}
