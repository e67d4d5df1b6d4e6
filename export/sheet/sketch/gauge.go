package sketch

import (
	"fmt"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Gauge draws a gauge in use: cloth folded over a step, allowance beside the net line, a
// cord or a seam along the marked edge.
func Gauge(d *given.Data, q piece.Piece) picture.Picture {
	say := d.Say.Boards
	box := q.Cut.Bounds()
	const margin, tallest = 5.0, 34.0
	k := min((picture.Half-2*margin)/box.Width(), tallest/box.Height())
	p := picture.Picture{ID: "use-" + picture.SafeID(q.ID), Title: fmt.Sprintf(say.Gauge.Title, given.Capital(d.Say.Shop.Kinds[q.Lie.For])),
		Width: picture.Half, Height: 2*margin + k*box.Height()}
	p.Desc = fmt.Sprintf(say.Gauge.Desc, d.Say.Shop.Kinds[q.Lie.For])
	v := picture.View{Scale: k, Shift: geom.Pt(picture.Half/2, p.Height/2).Minus(box.Center().Times(k))}
	p.Area(picture.Body, v.Line(geom.Polyline(q.Cut))...)
	for _, l := range q.Lines {
		p.Items = append(p.Items, workPath(l, v.Line(l.Points)))
	}
	p.Outline(picture.Main, picture.Thin, v.Line(geom.Polyline(q.Cut)))
	switch q.Lie.For {
	case piece.PressBoard:
		drawFold(d, &p, v, q)
	case piece.AllowBoard:
		drawAllowance(d, &p, v, q)
	case piece.CordBoard:
		a, z := v.At(geom.Pt(0, 0)), v.At(geom.Pt(box.Max.X, 0))
		p.Line(picture.Cord, 1.2, geom.Pt(a.X, a.Y+1), geom.Pt(z.X, z.Y+1))
		letterLine(&p, say.CordOn, geom.Pt((a.X+z.X)/2, a.Y-5))
	case piece.NotchBoard:
		a, z := v.At(geom.Pt(box.Min.X, 0)), v.At(geom.Pt(box.Max.X, 0))
		p.Area(picture.Cloth, a, z, geom.Pt(z.X, z.Y+3.5), geom.Pt(a.X, a.Y+3.5))
		p.Line(picture.Stitch, picture.Thin, a, z)
		letterLine(&p, say.EdgeOn, geom.Pt((a.X+z.X)/2, a.Y-5))
	}
	return p
}

// firstStep returns the ends of the lowest edge of a step gauge's first step, from the
// left.
func firstStep(q piece.Piece) (a, z geom.Point) { return q.Cut[0], q.Cut[1] }

// drawFold draws cloth folded over the first step up to the scored line.
func drawFold(d *given.Data, p *picture.Picture, v picture.View, q piece.Piece) {
	a, z := firstStep(q)
	left, right := v.At(a).X+2, v.At(z).X-2
	fold, raw := v.At(a).Y, v.At(geom.Pt(0, 0)).Y
	at := func(x, y float64) geom.Point { return geom.Pt(x, y) }
	p.Area(picture.Cloth, at(left, fold-4), at(right, fold-4), at(right, raw), at(left, raw))
	p.Line(picture.Fold, picture.Medium, at(left, fold), at(right, fold))
	p.Line(picture.Cut, picture.Medium, at(left, raw), at(right, raw))
	letterLine(p, d.Say.Boards.RawEdge, at((left+right)/2, raw+2.2))
	letterLine(p, d.Say.Boards.Fold, at((left+right)/2, fold-2.2))
}

// drawAllowance draws the net line along the scored line, and the cut line along the
// first step.
func drawAllowance(d *given.Data, p *picture.Picture, v picture.View, q piece.Piece) {
	a, _ := firstStep(q)
	box := q.Cut.Bounds()
	left, right := v.At(box.Min).X-3, v.At(box.Max).X+3
	net, cut := v.At(geom.Pt(0, 0)).Y, v.At(a).Y
	p.Line(picture.Stitch, picture.Medium, geom.Pt(left, net), geom.Pt(right, net))
	p.Line(picture.Cut, picture.Medium, geom.Pt(left, cut), geom.Pt(right, cut))
	letterLine(p, d.Say.Boards.NetLine, geom.Pt(right-12, net+2.2))
	letterLine(p, d.Say.Boards.CutLine, geom.Pt(right-12, cut-2.2))
}

// letterLine letters a line beside it.
func letterLine(p *picture.Picture, text string, at geom.Point) {
	t := picture.Text{Text: text, Size: picture.Small, Anchor: piece.Centre, Ink: picture.Main}
	p.WriteFree(t, at, at.Plus(geom.Pt(0, 1.2)), at.Minus(geom.Pt(0, 1.2)))
}
