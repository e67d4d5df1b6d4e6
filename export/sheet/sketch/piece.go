// Package sketch draws what lies flat: pieces, lays and cords.
package sketch

import (
	"fmt"
	"math"
	"slices"
	"strings"

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

// flat carries a piece to paper, across larger than along by a factor.
type flat struct {
	from, to geom.Point // the lower left corner of the piece, and where it stands on paper
	scale    float64
	across   float64
}

// Layout of a piece's picture, mm: room for its dimensions on each side.
const (
	pieceLeft, pieceRight = 15.0, 9.0
	pieceBelow            = 12.0
	pieceAbove            = 9.0
)

// flatOf returns the view of a piece and the width of its picture: half a page for one that
// is no longer than about as wide.
func flatOf(q piece.Piece) (v flat, width float64) {
	box, factor := q.Cut.Bounds(), float64(Across(q.Cut.Bounds()))
	width, room := picture.Wide, 100.0
	if box.Width() < 1.3*box.Height() || box.Width() < 1.6*box.Height() && q.Kind != piece.WholeBody && factor == 1 {
		width, room = picture.Half, 62
	}
	k := math.Min((width-pieceLeft-pieceRight)/box.Width(), room/(box.Height()*factor))
	to := geom.Pt(pieceLeft+(width-pieceLeft-pieceRight-k*box.Width())/2, pieceBelow)
	return flat{box.Min, to, k, factor}, width
}

func (v flat) at(p geom.Point) geom.Point {
	d := p.Minus(v.from)
	return geom.Pt(d.X*v.scale, d.Y*v.scale*v.across).Plus(v.to)
}

func (v flat) line(l geom.Polyline) geom.Polyline {
	out := make(geom.Polyline, len(l))
	for i, p := range l {
		out[i] = v.at(p)
	}
	return out
}

// Piece draws a piece with its overall measures and notch names.
func Piece(d *given.Data, q piece.Piece) picture.Picture {
	box := q.Cut.Bounds()
	v, width := flatOf(q)
	p := picture.Picture{ID: "piece-" + picture.SafeID(q.ID), Title: fmt.Sprintf(d.Say.Pieces.Flat.Title, given.Capital(q.Title)),
		Width: width, Height: pieceBelow + pieceAbove + v.scale*v.across*box.Height()}
	outline := v.line(geom.Polyline(q.Cut))
	p.Area(picture.Cloth, outline...)
	for _, l := range q.Lines {
		p.Items = append(p.Items, workPath(l, v.line(l.Points)))
	}
	for _, h := range q.Holes {
		p.Outline(picture.Inside, picture.Thin, v.line(geom.Polyline(h)))
	}
	p.Outline(picture.Cut, picture.Medium, outline)
	p.Level(v.at(box.Min), v.at(geom.Pt(box.Max.X, box.Min.Y)), 4, d.Cloth(box.Width()))
	p.Upright(v.at(box.Min), v.at(geom.Pt(box.Min.X, box.Max.Y)), v.to.X-6, d.Cloth(box.Height()))
	notchNames(&p, q, v)
	cornerNames(&p, q, v)
	lineNames(d, &p, q, v)
	title := picture.Text{Text: given.Capital(q.Title), Size: 3.4, Anchor: piece.Centre, Ink: picture.Main, Bold: true}
	need := (picture.Width(title.Text, title.Size, true) + 2) / v.scale
	p.WriteFree(title, append(v.line(places(q.Cut, need)), v.at(box.Center()))...)
	p.Desc = fmt.Sprintf(d.Say.Pieces.Flat.Desc, q.Title, d.Cloth(box.Width()), d.Cloth(box.Height()))
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
func notchNames(p *picture.Picture, q piece.Piece, v flat) {
	var done []string
	for _, l := range q.Lines {
		if l.Role != piece.NotchStroke || slices.Contains(done, l.Of) || len(l.Points) < 2 {
			continue
		}
		done = append(done, l.Of)
		a, in := v.at(l.Points[0]), v.at(l.Points[1])
		out := a.Minus(in).Unit()
		t := picture.Text{Text: l.Of, Size: picture.Small, Anchor: piece.Centre, Ink: picture.Mark}
		p.WriteFree(t, a.Plus(out.Times(2.6)), a.Plus(out.Times(3.6)), a.Plus(out.Times(-5)), in.Plus(out.Times(-4)).Plus(out.Left().Times(3)))
	}
}

// cornerNames letters the corners of a piece that have a letter, where it has them.
func cornerNames(p *picture.Picture, q piece.Piece, v flat) {
	for _, l := range q.Labels {
		if l.Role == piece.CornerLabel {
			at := v.at(l.At)
			in := v.at(q.Cut.Bounds().Center()).Minus(at)
			var places []geom.Point
			for _, far := range []float64{0, 2, 4, 6, 9, 12} { // across first: its lines lie close along a long edge
				for _, up := range []float64{0, 2, 4, 6, 9} {
					places = append(places, at.Plus(geom.Pt(math.Copysign(far, in.X), math.Copysign(up, in.Y))))
				}
			}
			p.WriteFree(picture.Text{Text: l.Text, Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Main, Bold: true}, places...)
		}
	}
}

// lineNames letters bar lines and the grain arrow.
func lineNames(d *given.Data, p *picture.Picture, q piece.Piece, v flat) {
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
		a, z := v.at(l.Points[0]), v.at(l.Points[len(l.Points)-1])
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

// Titled returns a piece's title as it is read. Templates and gauges are lettered in
// capitals; what the maker named and cloth is called as it is lettered.
func Titled(p piece.Piece) string {
	if p.Kind == piece.Template || p.Kind == piece.Gauge {
		return given.Capital(strings.ToLower(p.Title))
	}
	return p.Title
}
