package sketch

import (
	"cmp"
	"fmt"
	"math"
	"slices"

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
	return p.ID == at.Piece || at.Piece == "body" && p.Kind.Body() || at.Piece == piece.LiningID && p.Kind.Lining()
}

// spread is a piece of cloth as it is drawn apart from its neighbours.
type spread struct {
	piece.Piece
	up     float64       // how far it is moved across, mm
	from   float64       // the height that distances across it are measured from: the centre line, or a join
	places []piece.Place // where the template gives some of its finished line
}

// spreadOut returns the pieces that a template is laid on, each with the places at which it
// gives a part of it: the panels of a joined body, which are marked one by one, lie so far
// apart that the template, which may reach past a panel, meets no other.
func spreadOut(q piece.Piece, cloth []piece.Piece) []spread {
	out := make([]spread, len(cloth))
	gap := 0.0
	for i, c := range cloth {
		out[i] = spread{Piece: c}
		net := c.Net.Bounds().Expanded(1)
		if len(cloth) > 1 { // a panel without the centre line is measured from its join next to it
			out[i].from = min(max(0, c.Net.Bounds().Min.Y), c.Net.Bounds().Max.Y)
		}
		for _, at := range q.Lie.Places {
			if onPiece(at, c) && (len(cloth) == 1 || reaches(q, at, net)) {
				out[i].places = append(out[i].places, at)
				ring := q.Cut.Moved(at.Motion).Bounds()
				gap = max(gap, c.Cut.Bounds().Min.Y-ring.Min.Y, ring.Max.Y-c.Cut.Bounds().Max.Y)
			}
		}
	}
	slices.SortFunc(out, func(a, b spread) int { return cmp.Compare(a.Cut.Bounds().Min.Y, b.Cut.Bounds().Min.Y) })
	for i := 1; i < len(out); i++ {
		below, own := out[i-1].Cut.Bounds(), out[i].Cut.Bounds()
		out[i].up = below.Max.Y + out[i-1].up - own.Min.Y + 2*gap + 0.08*own.Width() // both may reach past
	}
	return out
}

// reaches reports whether a template gives some finished line within a box where it is laid.
func reaches(q piece.Piece, at piece.Place, box geom.Box) bool {
	for _, l := range q.Lie.Net {
		for _, p := range l.Moved(at.Motion) {
			if box.Contains(p) {
				return true
			}
		}
	}
	return false
}

// Lie draws a template where it is laid on its piece of cloth, or on the panels of one.
func Lie(d *given.Data, q piece.Piece) picture.Picture {
	say := d.Say.Boards
	cloth := spreadOut(q, LiesOn(d, q))
	box := geom.EmptyBox()
	for _, c := range cloth {
		b, up := c.Cut.Bounds(), geom.Pt(0, c.up)
		box = box.Union(geom.BoxOf(b.Min.Plus(up), b.Max.Plus(up)))
	}
	const margin = 6.0
	tallest := 64.0
	if len(cloth) > 1 {
		tallest = 84
	}
	if q.Lie.For == piece.HollowBoard { // of an edge that may run on over other panels
		for _, at := range cloth[0].places {
			box = box.Union(q.Cut.Moved(at.Motion).Bounds())
		}
	}
	k := min((picture.Half-2*margin)/box.Width(), tallest/box.Height())
	p := picture.Picture{ID: "lie-" + picture.SafeID(q.ID), Title: fmt.Sprintf(say.Lie.Title, Titled(q)),
		Width: picture.Half, Height: 2*margin + k*box.Height()}
	middle := geom.Pt(picture.Half/2, p.Height/2).Minus(box.Center().Times(k))
	for _, c := range cloth {
		v := picture.View{Scale: k, Shift: middle.Plus(geom.Pt(0, k*c.up))}
		drawOn(d, &p, v, q, c)
		if c.from != 0 {
			letterJoin(&p, v, c, say.JoinLine)
		}
	}
	p.Desc = fmt.Sprintf(say.Lie.Desc, Titled(q), cloth[0].Title, len(q.Lie.Places))
	return p
}

// drawOn draws a piece of cloth with the template at its places on it.
func drawOn(d *given.Data, p *picture.Picture, v picture.View, q piece.Piece, c spread) {
	p.Area(picture.Cloth, v.Line(geom.Polyline(c.Cut))...)
	p.Outline(picture.Cut, picture.Hair, v.Line(geom.Polyline(c.Cut)))
	p.Outline(picture.Stitch, picture.Hair, v.Line(geom.Polyline(c.Net)))
	drawSeen(d, p, v, q, c)
	for _, at := range c.places {
		drawLaid(p, v, q, at)
	}
	drawNotches(p, v, q, c.Piece)
	for _, at := range c.places {
		letterLaid(d, p, v, q, at, c.from)
	}
}

// letterJoin letters the join of a panel from which distances are measured.
func letterJoin(p *picture.Picture, v picture.View, c spread, words string) {
	box, y := c.Cut.Bounds(), c.from
	t := picture.Text{Text: words, Size: picture.Small, Anchor: piece.Centre, Ink: picture.Main}
	var places []geom.Point
	for _, part := range []float64{0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8} {
		at := v.At(geom.Pt(box.Min.X+part*box.Width(), y))
		for _, off := range []float64{2.4, -2.4, 3.2, -3.2, -4.4, 4.4} {
			places = append(places, at.Plus(geom.Pt(0, off)))
		}
	}
	p.WriteFree(t, places...)
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

// drawSeen draws the lines on a piece of cloth that a template is laid by.
func drawSeen(d *given.Data, p *picture.Picture, v picture.View, q piece.Piece, c spread) {
	box := c.Cut.Bounds()
	for _, l := range c.Lines {
		if l.Role == piece.BarLine {
			p.Line(picture.Mark, picture.Hair, v.Line(l.Points)...)
		}
	}
	across := func(x float64) {
		p.Dashed(picture.Quiet, picture.Hair, v.At(geom.Pt(x, box.Min.Y)), v.At(geom.Pt(x, box.Max.Y)))
	}
	along := func() {
		if c.from == 0 {
			p.Dashed(picture.Quiet, picture.Hair, v.At(geom.Pt(box.Min.X, 0)), v.At(geom.Pt(box.Max.X, 0)))
		}
	}
	switch q.Lie.For {
	case piece.CapBoard:
		across(0)
	case piece.HollowBoard, piece.CoverBoard:
		r := q.Lie.Rests[0]
		for _, at := range c.places {
			p.Dashed(picture.Quiet, picture.Hair, v.Line(r.Edge.Moved(geom.Motion{Shift: geom.Pt(0, -r.Off)}).Moved(at.Motion))...)
		}
	case piece.RoundBoard:
		along()
	case piece.SideBoard, piece.TailBoard, piece.LiningSideBoard, piece.LiningTailBoard:
		along()
		l := d.Sewn.BarLines
		if len(l[hung.Head]) > 0 && len(l[hung.Foot]) > 0 {
			across((l[hung.Head][0].X + l[hung.Foot][0].X) / 2)
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
	for _, l := range q.Lie.Net {
		p.Line(picture.Stitch, 2*picture.Bold, v.Line(l.Moved(at.Motion))...)
	}
	for _, r := range q.Lie.Rests {
		p.Line(picture.Mark, 2*picture.Bold, v.Line(r.Edge.Moved(at.Motion))...)
	}
}

// letterLaid letters a template at one of its places: which way up it lies, and how far its
// straight edge lies from the line that distances are measured from.
func letterLaid(d *given.Data, p *picture.Picture, v picture.View, q piece.Piece, at piece.Place, from float64) {
	face := d.Say.Boards.FaceUp
	if at.Over {
		face = d.Say.Boards.TurnedOver
	}
	if q.Lie.For == piece.CapBoard { // which half of a cap is the left one is not to be guessed
		face = fmt.Sprintf(d.Say.Boards.SideUp, d.Say.Boards.Sides[at.Side], face)
	}
	t := picture.Text{Text: face, Size: picture.Small, Anchor: piece.Centre, Ink: picture.Main}
	r := q.Lie.Rests[0]
	edge := r.Edge.Moved(at.Motion)
	if !letterInside(p, v, t, q.Cut.Moved(at.Motion)) {
		letterAlong(p, v, t, edge, q.Cut.Moved(at.Motion).Bounds().Center())
	}
	if a, z := edge[0], edge[len(edge)-1]; from != 0 && math.Abs(a.Y-from) > 0.05 {
		if math.Abs(a.X) < math.Abs(z.X) {
			a, z = z, a // z is next to the middle of the bed
		}
		foot, end, beside := v.At(geom.Pt(z.X, from)), v.At(z), math.Copysign(6, z.X-a.X)
		for _, at := range []geom.Point{foot, end} {
			p.Line(picture.Quiet, picture.Hair, at.Plus(geom.Pt(beside/6, 0)), at.Plus(geom.Pt(1.2*beside, 0)))
		}
		foot, end = foot.Plus(geom.Pt(beside, 0)), end.Plus(geom.Pt(beside, 0))
		p.Span(foot, end)
		letterBeside(d, p, foot.Towards(end, 0.5), math.Abs(z.Y-from))
	} else if from == 0 && r.Off != 0 && !at.Over {
		letterAside(d, p, v, r, at)
	}
}

// letterAlong letters a template that has no room for it beside its straight edge, on the
// side away from its middle, where that is free.
func letterAlong(p *picture.Picture, v picture.View, t picture.Text, edge geom.Polyline, middle geom.Point) {
	a, z := edge[0], edge[len(edge)-1]
	out := z.Minus(a).Unit().Left()
	if out.Dot(middle.Minus(a)) > 0 {
		out = geom.Pt(-out.X, -out.Y)
	}
	var places []geom.Point
	for _, off := range []float64{2.4, 3.2, 4.4, 6, 8} {
		for _, part := range []float64{0.5, 0.4, 0.6, 0.3, 0.7} {
			places = append(places, v.At(a.Towards(z, part)).Plus(out.Times(off)))
		}
	}
	p.WriteClear(t, places...)
}

// letterAside letters how far a straight edge lies from the line beside which it is laid.
func letterAside(d *given.Data, p *picture.Picture, v picture.View, r piece.Rest, at piece.Place) {
	from := r.Edge[0].Towards(r.Edge[len(r.Edge)-1], 0.75)
	end, foot := v.At(at.Motion.Apply(from)), v.At(at.Motion.Apply(from.Plus(geom.Pt(0, -r.Off))))
	p.Span(foot, end)
	letterBeside(d, p, foot.Towards(end, 0.5), math.Abs(r.Off))
}

// letterBeside letters a distance beside the middle of its dimension line.
func letterBeside(d *given.Data, p *picture.Picture, at geom.Point, mm float64) {
	t := picture.Text{Text: d.Cloth(mm), Size: picture.Small, Anchor: piece.Centre, Ink: picture.Main}
	half := geom.Pt(picture.Width(t.Text, t.Size, false)/2+1, 0)
	var places []geom.Point
	for _, up := range []float64{0, 1.6, -1.6, 3, -3, 4.5, -4.5, 6, -6, 9, -9, 12, -12} {
		places = append(places, at.Plus(half).Plus(geom.Pt(0, up)), at.Minus(half).Plus(geom.Pt(0, up)))
	}
	p.WriteFree(t, places...)
}
