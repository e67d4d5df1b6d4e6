package sketch

import (
	"fmt"
	"math"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
)

// LiesOn returns the pieces that a template is drawn on: those of the first place where
// it is laid.
func LiesOn(d *given.Data, q piece.Piece) []piece.Piece {
	var out []piece.Piece
	for _, p := range d.Sewn.Pieces {
		if len(q.Lie.Places) > 0 && onPiece(q.Lie.Places[0], p) {
			out = append(out, p)
		}
	}
	return out
}

// onPiece reports whether a place is on a piece.
func onPiece(at piece.Place, p piece.Piece) bool {
	return p.ID == at.Piece || at.Piece == "body" && p.Kind.Body()
}

// Lie draws a template where it is laid on its piece of cloth.
func Lie(d *given.Data, q piece.Piece) picture.Picture {
	say := d.Say.Boards
	cloth := LiesOn(d, q)
	box := geom.EmptyBox()
	for _, p := range cloth {
		box = box.Union(p.Cut.Bounds())
	}
	if q.Lie.For == piece.HollowBoard { // of an edge that may run on over other panels
		for _, at := range q.Lie.Places {
			if onPiece(at, cloth[0]) {
				box = box.Union(q.Cut.Moved(at.Motion).Bounds())
			}
		}
	}
	const margin, tallest = 6.0, 64.0
	k := min((picture.Half-2*margin)/box.Width(), tallest/box.Height())
	p := picture.Picture{ID: "lie-" + picture.SafeID(q.ID), Title: fmt.Sprintf(say.Lie.Title, Titled(q)),
		Width: picture.Half, Height: 2*margin + k*box.Height()}
	v := picture.View{Scale: k, Shift: geom.Pt(picture.Half/2, p.Height/2).Minus(box.Center().Times(k))}
	for _, c := range cloth {
		p.Area(picture.Cloth, v.Line(geom.Polyline(c.Cut))...)
		p.Outline(picture.Cut, picture.Hair, v.Line(geom.Polyline(c.Cut)))
		p.Outline(picture.Stitch, picture.Hair, v.Line(geom.Polyline(c.Net)))
	}
	drawSeen(d, &p, v, q, cloth)
	var laid []piece.Place
	for _, at := range q.Lie.Places {
		if len(cloth) > 0 && onPiece(at, cloth[0]) {
			laid = append(laid, at)
			drawLaid(&p, v, q, at)
		}
	}
	for _, c := range cloth {
		drawNotches(&p, v, q, c)
	}
	for _, at := range laid {
		letterLaid(d, &p, v, q, at)
	}
	p.Desc = fmt.Sprintf(say.Lie.Desc, Titled(q), cloth[0].Title, len(q.Lie.Places))
	return p
}

// drawNotches draws and letters the notches of a piece of cloth that a template gives where
// it is laid: those next to its finished line.
func drawNotches(p *picture.Picture, v picture.View, q piece.Piece, cloth piece.Piece) {
	var given []geom.Arc
	for _, at := range q.Lie.Places {
		for _, l := range q.Lie.Net {
			if onPiece(at, cloth) {
				given = append(given, geom.NewArc(l.Moved(at.Motion)))
			}
		}
	}
	done := map[string]bool{}
	for _, l := range cloth.Lines {
		if l.Role != piece.NotchStroke || done[l.Of] || len(l.Points) < 2 {
			continue
		}
		out, in := l.Points[0], l.Points[len(l.Points)-1]
		way := out.Minus(in).Unit()
		for _, a := range given {
			s, far := a.Nearest(out)
			net, _ := a.At(s)
			if far > notchFar || net.Minus(out).Dot(way) > 0 {
				continue
			}
			done[l.Of] = true
			at := v.At(net)
			p.Line(picture.Mark, picture.Medium, at.Plus(way.Times(1.6)), at.Minus(way.Times(1)))
			t := picture.Text{Text: l.Of, Size: picture.Small, Anchor: piece.Centre, Ink: picture.Mark}
			var places []geom.Point
			for _, off := range []float64{3.4, 4.2, -4, -5} {
				for _, aside := range []float64{0, 2.4, -2.4, 4, -4} {
					places = append(places, at.Plus(way.Times(off)).Plus(way.Left().Times(aside)))
				}
			}
			p.WriteFree(t, places...)
			break
		}
	}
}

// notchFar is how far outside of the finished line a notch may begin, mm: the widest
// allowance that is cut, a double-fold hem.
const notchFar = 80.0

// drawSeen draws the lines on the cloth that a template is laid by.
func drawSeen(d *given.Data, p *picture.Picture, v picture.View, q piece.Piece, cloth []piece.Piece) {
	box := geom.EmptyBox()
	for _, c := range cloth {
		box = box.Union(c.Cut.Bounds())
		for _, l := range c.Lines {
			if l.Role == piece.BarLine {
				p.Line(picture.Mark, picture.Hair, v.Line(l.Points)...)
			}
		}
	}
	switch q.Lie.For {
	case piece.CapBoard:
		p.Dashed(picture.Quiet, picture.Hair, v.At(geom.Pt(0, box.Min.Y)), v.At(geom.Pt(0, box.Max.Y)))
	case piece.HollowBoard:
		r := q.Lie.Rests[0]
		for _, at := range q.Lie.Places {
			if onPiece(at, cloth[0]) {
				p.Dashed(picture.Quiet, picture.Hair, v.Line(r.Edge.Moved(geom.Motion{Shift: geom.Pt(0, -r.Off)}).Moved(at.Motion))...)
			}
		}
	case piece.RoundBoard:
		p.Dashed(picture.Quiet, picture.Hair, v.At(geom.Pt(box.Min.X, 0)), v.At(geom.Pt(box.Max.X, 0)))
	case piece.SideBoard, piece.TailBoard:
		p.Dashed(picture.Quiet, picture.Hair, v.At(geom.Pt(box.Min.X, 0)), v.At(geom.Pt(box.Max.X, 0)))
		l := d.Sewn.BarLines
		if len(l[hung.Head]) > 0 && len(l[hung.Foot]) > 0 {
			x := (l[hung.Head][0].X + l[hung.Foot][0].X) / 2
			p.Dashed(picture.Quiet, picture.Hair, v.At(geom.Pt(x, box.Min.Y)), v.At(geom.Pt(x, box.Max.Y)))
		}
	}
}

// drawLaid draws a template at one of its places: plain with its lettered face up, dashed
// turned over, heavy what lies on a line.
func drawLaid(p *picture.Picture, v picture.View, q piece.Piece, at piece.Place) {
	ring := geom.Polyline(q.Cut.Moved(at.Motion))
	if at.Over {
		closed := append(append(geom.Polyline{}, ring...), ring[0])
		p.Dashed(picture.Main, picture.Thin, v.Line(closed)...)
	} else {
		p.Area(picture.Body, v.Line(ring)...)
		p.Outline(picture.Main, picture.Thin, v.Line(ring))
	}
	for _, r := range q.Lie.Rests {
		p.Line(picture.Mark, 2*picture.Bold, v.Line(r.Edge.Moved(at.Motion))...)
	}
}

// letterLaid letters a template at one of its places: which way up it lies, and its distance
// from the line beside which its straight edge lies.
func letterLaid(d *given.Data, p *picture.Picture, v picture.View, q piece.Piece, at piece.Place) {
	face := d.Say.Boards.FaceUp
	if at.Over {
		face = d.Say.Boards.TurnedOver
	}
	t := picture.Text{Text: face, Size: picture.Small, Anchor: piece.Centre, Ink: picture.Main}
	letterInside(p, v, t, q.Cut.Moved(at.Motion))
	if r := q.Lie.Rests[0]; r.Off != 0 && !at.Over {
		edge := r.Edge
		from := edge[0].Towards(edge[len(edge)-1], 0.75)
		mid, foot := v.At(at.Motion.Apply(from)), v.At(at.Motion.Apply(from.Plus(geom.Pt(0, -r.Off))))
		p.Span(foot, mid)
		t := picture.Text{Text: d.Cloth(math.Abs(r.Off)), Size: picture.Small, Anchor: piece.Centre, Ink: picture.Main}
		half := geom.Pt(picture.Width(t.Text, t.Size, false)/2+1, 0)
		places := []geom.Point{foot.Towards(mid, 0.5).Plus(half), foot.Towards(mid, 0.5).Minus(half)}
		for _, far := range []float64{3, 6, 9, 12} {
			beyond := mid.Minus(foot).Unit().Times(far)
			places = append(places, mid.Plus(beyond), foot.Minus(beyond), mid.Plus(beyond).Plus(half), foot.Minus(beyond).Minus(half))
		}
		p.WriteFree(t, places...)
	}
}
