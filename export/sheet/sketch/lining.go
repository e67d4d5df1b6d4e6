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

// LiningAcross draws the section of both layers with the pad between them, in the pad's
// middle.
func LiningAcross(d *given.Data) picture.Picture {
	say, l := d.Say.Lining, d.Further.Lining
	x := l.Stations()[1]
	body := d.Shape.At(x).Section
	over, err := l.Laid.Lying().Over(body)
	cut, err2 := l.Laid.Over(body)
	if err != nil || err2 != nil {
		return picture.Picture{}
	}
	out := l.Laid.Lying().Out
	const beside, below, above = 13.0, 9.0, 5.0
	low := min(0, -out)
	k := min((picture.Half-2*beside)/(2*body.Half), 66/(body.Height-low))
	p := picture.Picture{ID: "lining-across", Title: say.Across.Title, Width: picture.Half, Height: below + above + k*(body.Height-low),
		Desc: fmt.Sprintf(say.Across.Desc, d.Cloth(d.Design.Lining.Thickness), d.Cloth(cut.Girth()-body.Girth()))}
	v := picture.View{Scale: k, Shift: geom.Pt(picture.Half/2, below-k*low)}
	one := mirrored(func(t float64) geom.Point { return geom.Pt(body.Point(t * body.Girth() / 2)) })
	other := mirrored(func(t float64) geom.Point { return geom.Pt(over.Point(t * over.Girth() / 2)) })
	p.Area(picture.Cloth, v.Line(padAcross(l.Laid.Half, body.Radius, over.Radius, over.Arc))...)
	p.Line(picture.Main, picture.Bold, v.Line(one)...)
	p.Line(picture.Third, picture.Medium, v.Line(other)...)
	for _, end := range []geom.Point{one[0], one[len(one)-1]} {
		p.Dot(picture.Cord, v.At(end), 1)
	}
	name := func(text string, ink picture.Ink, at geom.Point, off ...geom.Point) {
		var places []geom.Point
		for _, o := range off {
			places = append(places, v.At(at).Plus(o))
		}
		p.WriteFree(picture.Text{Text: text, Size: picture.Letter, Anchor: piece.Centre, Ink: ink}, places...)
	}
	wall := one[3*len(one)/4]
	inner, outer := geom.Pt(-9, 2), geom.Pt(9, -4)
	if out < 0 {
		inner, outer = outer, inner
	}
	name(say.BodyName, picture.Main, wall, inner, inner.Plus(geom.Pt(-4, 2)))
	name(say.LiningName, picture.Third, wall, outer, outer.Plus(geom.Pt(3, -3)), outer.Plus(geom.Pt(5, 0)))
	mid := geom.Pt(0, -out/2)
	name(say.PadName, picture.Main, mid, geom.Pt(-20, 8), geom.Pt(-24, 12), geom.Pt(-16, 14))
	p.Line(picture.Quiet, picture.Hair, v.At(mid).Plus(geom.Pt(-4, 0)), geom.Pt(p.Last().Max.X, p.Last().Min.Y))
	p.Upright(v.At(geom.Pt(0, min(0, -out))), v.At(geom.Pt(0, max(0, -out))), v.At(geom.Pt(0, 0)).X+14, d.Cloth(math.Abs(out)))
	return p
}

// mirrored returns a line whose right half goes from its middle, at 0, to 1.
func mirrored(half func(float64) geom.Point) geom.Polyline {
	const n = 40
	var out geom.Polyline
	for i := -n; i <= n; i++ {
		q := half(math.Abs(float64(i)) / n)
		if i < 0 {
			q.X = -q.X
		}
		out = append(out, q)
	}
	return out
}

// padAcross returns what lies between both layers' rounds, as far as the pad reaches.
func padAcross(half, body, lining, arc float64) geom.Polyline {
	if half > 0 {
		arc = min(arc, half/body)
	}
	const n = 30
	var out, back geom.Polyline
	for i := -n; i <= n; i++ {
		sin, cos := math.Sincos(arc * float64(i) / n)
		out = append(out, geom.Pt(body*sin, body*(1-cos)))
		back = append(back, geom.Pt(lining*sin, body-lining*cos))
	}
	return append(out, back.Reversed()...)
}

// Heights along the bed are drawn so many times as large.
const liningRaised = 4.0

// LiningAlong draws both layers on the centre line with the pad between them.
func LiningAlong(d *given.Data) picture.Picture {
	say, l := d.Say.Lining, d.Further.Lining.Laid.Lying()
	from, to := d.Shape.TailEnds()
	const beside, below, above = 16.0, 14.0, 14.0
	k := (picture.Wide - 2*beside) / (to - from)
	deep := k * liningRaised * math.Abs(l.Out)
	bottom := func(x float64) float64 { return liningRaised * d.Shape.Problem.Bottom(x) }
	slope := k * math.Abs(bottom(to)-bottom(from))
	p := picture.Picture{ID: "lining-along", Title: say.Along.Title, Width: picture.Wide, Height: below + above + deep + slope,
		Desc: fmt.Sprintf(say.Along.Desc, d.Cloth(l.Foot-l.Head))}
	low := min(bottom(from), bottom(to)) - liningRaised*max(l.Out, 0)
	v := picture.View{Scale: k, Shift: geom.Pt(picture.Wide/2-k*(from+to)/2, below-k*low)}
	at := func(x, out float64) geom.Point { return v.At(geom.Pt(x, bottom(x)-liningRaised*out)) }
	p.Area(picture.Cloth, at(l.Head, 0), at(l.Foot, 0), at(l.Foot, l.Out), at(l.Head, l.Out))
	p.Line(picture.Main, picture.Bold, at(from, 0), at(to, 0))
	p.Line(picture.Third, picture.Medium, at(from, 0), at(l.Head, l.Out), at(l.Foot, l.Out), at(to, 0))
	half := d.Shape.Problem.Bed.Span / 2
	top := p.Height - 3
	for _, e := range hung.Ends() {
		x := e.Sign() * half
		p.Dashed(picture.Bar, picture.Thin, geom.Pt(at(x, 0).X, below-4), geom.Pt(at(x, 0).X, top-3))
		p.WriteFree(picture.Text{Text: d.Say.Names.OfEnd(d.Say.Names.Pieces.BarLine, int(e)), Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Bar},
			geom.Pt(at(x, 0).X, top-0.6), geom.Pt(at(x, 0).X, top-2))
	}
	p.WriteFree(picture.Text{Text: say.PadName, Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Main}, at(0, l.Out/2))
	body, lining := geom.Pt(0, 3), geom.Pt(0, -3)
	if l.Out < 0 {
		body, lining = lining, body
	}
	p.WriteFree(picture.Text{Text: say.BodyName, Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Main}, at(-half/2, 0).Plus(body))
	p.WriteFree(picture.Text{Text: say.LiningName, Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Third}, at(-half/2, l.Out).Plus(lining))
	p.Level(at(l.Head, 0), at(l.Foot, 0), 3, d.Cloth(l.Foot-l.Head))
	return p
}

// LiningFlat draws the lining flat over the body, with the edge that is hemmed and open.
func LiningFlat(d *given.Data) picture.Picture {
	say, l := d.Say.Lining, d.Further.Lining
	box := l.BodyNet.Bounds()
	const margin, above = 16.0, 10.0
	k := min((picture.Wide-2*margin)/box.Width(), 86/box.Height())
	p := picture.Picture{ID: "lining-flat", Title: say.Flat.Title, Width: picture.Wide, Height: 2*above + k*box.Height(),
		Desc: fmt.Sprintf(say.Flat.Desc, l.Opening.From.Name, l.Opening.To.Name)}
	v := picture.View{Scale: k, Shift: geom.Pt(picture.Wide/2, p.Height/2).Minus(box.Center().Times(k))}
	p.Area(picture.Cloth, v.Line(geom.Polyline(l.BodyNet))...)
	p.Outline(picture.Third, picture.Medium, v.Line(geom.Polyline(l.BodyNet)))
	p.Dashed(picture.Main, picture.Thin, v.Line(d.Sewn.BodyNet.Closed())...)
	for _, half := range l.BarLines {
		tip := half[len(half)-1]
		p.Line(picture.Bar, picture.Hair, v.At(geom.Pt(tip.X, -tip.Y)), v.At(tip))
	}
	for _, j := range l.Joins {
		p.Line(picture.Stitch, picture.Thin, v.Line(j.Edge.Flat)...)
	}
	open := l.Opening.Line
	p.Line(picture.Mark, 0.9, v.Line(open)...)
	inwards := v.Shift.Plus(box.Center().Times(k))
	for i, q := range []geom.Point{open[0], open[len(open)-1]} {
		at := v.At(q)
		out := at.Minus(inwards).Unit()
		n := []piece.Notch{l.Opening.From, l.Opening.To}[i]
		p.WriteFree(picture.Text{Text: n.Name, Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Mark},
			at.Plus(out.Times(4)), at.Plus(out.Times(6)), at.Minus(out.Times(4)))
	}
	mid, _ := geom.NewArc(open).At(open.Length() / 2)
	in := inwards.Minus(v.At(mid)).Unit()
	turn := 0.0
	if l.Opening.Edge.AtEnd() {
		turn = math.Pi / 2
	}
	p.WriteFree(picture.Text{Text: say.OpeningName, Size: picture.Letter, Anchor: piece.Centre, Turn: turn, Ink: picture.Mark},
		v.At(mid).Plus(in.Times(4)), v.At(mid).Plus(in.Times(7)))
	p.WriteFree(picture.Text{Text: say.LiningName, Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Third, Bold: true},
		v.At(geom.Pt(0, 0.15*box.Height())))
	p.WriteFree(picture.Text{Text: say.BodyName, Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Main},
		v.At(geom.Pt(0, 0)).Plus(geom.Pt(0, k*bodyMiddle(d)-4)))
	return p
}

// bodyMiddle returns how far the body's side lies from the centre line at mid-bay, mm.
func bodyMiddle(d *given.Data) float64 {
	side := d.Sewn.SideNet.Flat
	for i := 1; i < len(side); i++ {
		if side[i].X >= 0 {
			return side[i].Y
		}
	}
	return 0
}
