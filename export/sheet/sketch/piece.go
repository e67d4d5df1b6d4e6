// Package sketch draws what lies flat: pieces, lays and cords.
package sketch

import (
	"fmt"
	"math"
	"slices"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Across is by how much a strip is drawn wider than it is, so that its lines
// can be told apart; 1 for anything else.
func Across(box geom.Box) int {
	if box.Width() < 8*box.Height() {
		return 1
	}
	return int(math.Ceil(24 / ((picture.Wide - 24) / box.Width() * box.Height())))
}

// Piece draws a piece with its overall measures and notch names.
func Piece(d *given.Data, q piece.Piece) picture.Picture {
	box := q.Cut.Bounds()
	factor := float64(Across(box))
	width, room := picture.Wide, 100.0
	if box.Width() < 1.3*box.Height() || box.Width() < 1.6*box.Height() && q.Kind != piece.WholeBody && factor == 1 {
		width, room = picture.Half, 62
	}
	const left, right, below, above = 15.0, 9.0, 12.0, 9.0
	k := math.Min((width-left-right)/box.Width(), room/(box.Height()*factor))
	p := picture.Picture{ID: "piece-" + picture.SafeID(q.ID), Title: fmt.Sprintf(d.Say.Pieces.Flat.Title, given.Capital(q.Title)),
		Width: width, Height: below + above + k*factor*box.Height()}
	shift := geom.Pt(left+(width-left-right-k*box.Width())/2, below)
	at := func(p geom.Point) geom.Point {
		d := p.Minus(box.Min)
		return geom.Pt(d.X*k, d.Y*k*factor).Plus(shift)
	}
	line := func(l geom.Polyline) geom.Polyline {
		out := make(geom.Polyline, len(l))
		for i, p := range l {
			out[i] = at(p)
		}
		return out
	}
	p.Area(picture.Cloth, line(geom.Polyline(q.Cut))...)
	for _, l := range q.Lines {
		p.Items = append(p.Items, workPath(l, line(l.Points)))
	}
	for _, h := range q.Holes {
		p.Items = append(p.Items, picture.Path{Lines: []geom.Polyline{line(geom.Polyline(h))}, Closed: true, Stroke: picture.Inside,
			Width: picture.Thin})
	}
	p.Items = append(p.Items, picture.Path{Lines: []geom.Polyline{line(geom.Polyline(q.Cut))}, Closed: true, Stroke: picture.Cut,
		Width: picture.Medium})
	p.Level(at(box.Min), at(geom.Pt(box.Max.X, box.Min.Y)), 4, d.Long(box.Width()))
	p.Upright(at(box.Min), at(geom.Pt(box.Min.X, box.Max.Y)), shift.X-6, d.Long(box.Height()))
	notchNames(&p, q, at)
	lineNames(d, &p, q, at)
	title := picture.Text{Text: given.Capital(q.Title), Size: 3.4, Anchor: piece.Centre, Ink: picture.Main, Bold: true}
	p.WriteFree(title, append(line(places(q.Cut, (picture.Width(title.Text, title.Size, true)+2)/k)), at(box.Center()))...)
	p.Desc = pieceWords(d, q)
	return p
}

// workPath returns a line in the stroke of its kind of work.
func workPath(l piece.Line, pts geom.Polyline) picture.Path {
	p := picture.Path{Lines: []geom.Polyline{pts}, Closed: l.Closed, Width: picture.Thin}
	switch l.Work {
	case piece.Stitch:
		p.Stroke, p.Dash = picture.Stitch, []float64{3, 0.8, 0.3, 0.8}
	case piece.Score:
		p.Stroke, p.Dash = picture.Fold, []float64{1.8, 0.8}
	case piece.CutInside:
		p.Stroke, p.Width = picture.Inside, picture.Bold
	case piece.CutOut:
		p.Stroke = picture.Cut
	case piece.Mark:
		p.Stroke = picture.Mark
	default:
		p.Stroke = picture.Quiet
	}
	return p
}

// notchNames letters the notches outside the cut line, each once.
func notchNames(p *picture.Picture, q piece.Piece, at func(geom.Point) geom.Point) {
	var done []string
	for _, l := range q.Lines {
		if l.Role != piece.NotchStroke || slices.Contains(done, l.Of) || len(l.Points) < 2 {
			continue
		}
		done = append(done, l.Of)
		a, in := at(l.Points[0]), at(l.Points[1])
		out := a.Minus(in).Unit()
		t := picture.Text{Text: l.Of, Size: picture.Small, Anchor: piece.Centre, Ink: picture.Mark}
		p.WriteFree(t, a.Plus(out.Times(2.6)), a.Plus(out.Times(3.6)), a.Plus(out.Times(-5)), in.Plus(out.Times(-4)).Plus(out.Left().Times(3)))
	}
}

// lineNames letters bar lines and the grain arrow.
func lineNames(d *given.Data, p *picture.Picture, q piece.Piece, at func(geom.Point) geom.Point) {
	type line struct {
		role  piece.Role
		index int
	}
	done := map[line]bool{}
	for _, l := range q.Lines {
		text, ok := lineWords(d, l)
		if !ok || done[line{l.Role, l.Index}] || len(l.Points) < 2 {
			continue
		}
		done[line{l.Role, l.Index}] = true
		a, z := at(l.Points[0]), at(l.Points[len(l.Points)-1])
		dir := z.Minus(a).Unit()
		turn := dir.Angle()
		if turn > math.Pi/2+1e-9 || turn <= -math.Pi/2+1e-9 {
			turn = math.Remainder(turn+math.Pi, 2*math.Pi)
		}
		t := picture.Text{Text: text, Size: picture.Small, Turn: turn, Anchor: piece.Centre, Ink: picture.Mark}
		off := dir.Left().Times(2.2)
		parts := []float64{0.5}
		if l.Role == piece.BarLine { // the centre line crosses it somewhere
			parts = []float64{0.72, 0.8, 0.6, 0.86, 0.5, 0.4}
		}
		var places []geom.Point
		for _, part := range parts {
			mid := a.Towards(z, part)
			places = append(places, mid.Plus(off), mid.Minus(off), mid.Plus(off.Times(2)), mid.Minus(off.Times(2)))
		}
		p.WriteFree(t, places...)
	}
}

// pieceWords tells a piece in words.
func pieceWords(d *given.Data, q piece.Piece) string {
	box := q.Cut.Bounds()
	return fmt.Sprintf(d.Say.Pieces.Flat.Desc, q.Title,
		d.Long(box.Width()), d.Long(box.Height()))
}

// lineWords says what a line of a piece is, for those that a drawing names.
func lineWords(d *given.Data, l piece.Line) (string, bool) {
	switch l.Role {
	case piece.BarLine:
		return d.Say.Names.OfEnd(d.Say.Names.Pieces.BarLine, l.Index), true
	case piece.GrainArrow:
		return d.Say.Pieces.Grain, true
	}
	return "", false
}
