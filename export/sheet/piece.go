package sheet

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// pieces shows every cloth piece and, smaller, every template.
func (b *builder) pieces() (Section, error) {
	s := Section{ID: "pieces", Title: "The pieces"}
	s.Blocks = append(s.Blocks, Para("Orange: cut. Green, dash and dot: stitch line. Blue, dashed: fold or press. Dark "+
		"blue: notches and marks. "+
		"Notches have one stroke on the left side and two on the right, the sides as a sleeper on the back has them. The "+
		"warp runs along the grain arrow."))
	for _, p := range b.Sewn.Pieces {
		pic := b.piecePicture(p)
		caption := fmt.Sprintf("%s, cut %d.", capital(p.Title), p.Count)
		if f := acrossFactor(p.Cut.Bounds()); f > 1 {
			caption += fmt.Sprintf(" Across it is drawn %d times as wide as along.", f)
		}
		s.Blocks = append(s.Blocks, Figures{{pic, caption, pic.Width == wide}}, b.pieceTable(p))
		if len(p.Checks) > 0 {
			s.Blocks = append(s.Blocks, b.squareTable(p))
		}
	}
	if len(b.Templates) > 0 {
		s.Blocks = append(s.Blocks, b.templateTable())
	}
	return s, nil
}

// acrossFactor is by how much a strip is drawn wider than it is, so that its lines
// can be told apart; 1 for anything else.
func acrossFactor(box geom.Box) int {
	if box.Width() < 8*box.Height() {
		return 1
	}
	return int(math.Ceil(24 / ((wide - 24) / box.Width() * box.Height())))
}

// piecePicture draws a piece with its overall measures and notch names.
func (b *builder) piecePicture(q piece.Piece) picture.Picture {
	box := q.Cut.Bounds()
	factor := float64(acrossFactor(box))
	width, room := wide, 100.0
	if box.Width() < 1.3*box.Height() || box.Width() < 1.6*box.Height() && q.Kind != piece.WholeBody && factor == 1 {
		width, room = half, 62
	}
	const left, right, below, above = 15.0, 9.0, 12.0, 9.0
	k := math.Min((width-left-right)/box.Width(), room/(box.Height()*factor))
	p := picture.Picture{ID: "piece-" + safe(q.ID), Title: capital(q.Title) + ", flat", Width: width,
		Height: below + above + k*factor*box.Height()}
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
	p.Level(at(box.Min), at(geom.Pt(box.Max.X, box.Min.Y)), 4, b.long(box.Width()))
	p.Upright(at(box.Min), at(geom.Pt(box.Min.X, box.Max.Y)), shift.X-6, b.long(box.Height()))
	notchNames(&p, q, at)
	b.lineNames(&p, q, at)
	title := picture.Text{Text: capital(q.Title), Size: 3.4, Anchor: piece.Centre, Ink: picture.Main, Bold: true}
	p.WriteFree(title, append(line(places(q.Cut, (picture.Width(title.Text, title.Size, true)+2)/k)), at(box.Center()))...)
	p.Desc = b.pieceWords(q)
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
func (b *builder) lineNames(p *picture.Picture, q piece.Piece, at func(geom.Point) geom.Point) {
	type line struct {
		role  piece.Role
		index int
	}
	done := map[line]bool{}
	for _, l := range q.Lines {
		text, ok := b.lineWords(l)
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
func (b *builder) pieceWords(q piece.Piece) string {
	box := q.Cut.Bounds()
	return fmt.Sprintf("Outline of the %s as cut: %s along and %s across. Its figures stand in the table below.", q.Title,
		b.long(box.Width()), b.long(box.Height()))
}

// pieceTable tables what is needed to mark and cut a piece.
func (b *builder) pieceTable(q piece.Piece) Table {
	t := Table{ID: "piece-" + safe(q.ID) + "-figures", Caption: capital(q.Title), Head: []string{"", "figure"}, Words: []bool{true, true}}
	add := func(name, value string) { t.Rows = append(t.Rows, []string{name, value}) }
	box := q.Cut.Bounds()
	count := fmt.Sprint(q.Count)
	if q.Paired {
		count += ", every second one mirrored"
	}
	add("how many", count)
	add("as cut, along and across", b.long(box.Width())+" × "+b.long(box.Height()))
	if len(q.Net) > 0 {
		net := q.Net.Bounds()
		add("finished, along and across", b.long(net.Width())+" × "+b.long(net.Height()))
	}
	for _, m := range q.Margins {
		add(b.marginWords(m), b.long(m.Wide))
	}
	if n := notchList(q); n != "" {
		add("notches", n)
	}
	add("grain", b.grain(q))
	return t
}

// grain says how a piece lies on the roll.
func (b *builder) grain(q piece.Piece) string {
	switch {
	case q.FreeGrain:
		return "any way"
	case q.OneWay:
		return "warp along the arrow, all pieces the same way"
	}
	return "warp along the arrow, either end first"
}

// notchList lists the names of a piece's notches, each once.
func notchList(q piece.Piece) string {
	var names []string
	for _, l := range q.Lines {
		if l.Role == piece.NotchStroke && !slices.Contains(names, l.Of) {
			names = append(names, l.Of)
		}
	}
	return strings.Join(names, ", ")
}

// squareTable tables the distances that prove a piece true on the cloth.
func (b *builder) squareTable(q piece.Piece) Table {
	t := Table{ID: "piece-" + safe(q.ID) + "-checks", Caption: capital(q.Title) + ": measure these on the marked finished line before cutting",
		Head: []string{"from and to", b.unit()}, Words: []bool{true, false}}
	for _, c := range q.Checks {
		t.Rows = append(t.Rows, []string{b.words.Measure(c), b.figure(c.Length)})
	}
	return t
}

// templateTable lists the stiff templates.
func (b *builder) templateTable() Table {
	t := Table{ID: "templates", Caption: "Stiff templates and gauges, from " + b.Design.Sheet.Name,
		Head: []string{"template", "number", "along, " + b.unit(), "across, " + b.unit()}, Words: []bool{true, false, false, false}}
	for _, q := range b.Templates {
		box := q.Cut.Bounds()
		t.Rows = append(t.Rows, []string{titled(q.Title), fmt.Sprint(q.Count), b.figure(box.Width()), b.figure(box.Height())})
	}
	return t
}
