package picture

import (
	"math"

	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Measures of a dimension line, mm.
const (
	pastEnd   = 1.2 // extension lines go on past the dimension line
	fromPoint = 0.8 // and start clear of what they measure
	slash     = 0.9 // half the oblique stroke at each end
	aside     = 0.9 // lettering above the line
)

// Dimension adds a dimension line between two points on paper, moved off them by
// off to the left of the way from a to b, with its lettering over the middle. Where
// the lettering is wider than the line or meets another, it stands beside an end,
// that of b first.
func (p *Picture) Dimension(a, b geom.Point, off float64, text string) {
	p.dimension(a, b, b.Minus(a).Unit(), off, text)
}

// Level adds a dimension of the level distance between two points at height y.
func (p *Picture) Level(a, b geom.Point, y float64, text string) {
	p.across(a, b, geom.Pt(a.X, y), geom.Pt(b.X, y), text)
}

// Upright adds a dimension of the height between two points at x.
func (p *Picture) Upright(a, b geom.Point, x float64, text string) {
	p.across(a, b, geom.Pt(x, a.Y), geom.Pt(x, b.Y), text)
}

func (p *Picture) dimension(a, b, along geom.Point, off float64, text string) {
	n := along.Left().Times(off)
	p.across(a, b, a.Plus(n), b.Plus(n), text)
}

// across draws a dimension line from c to d with extension lines from a and b.
func (p *Picture) across(a, b, c, d geom.Point, text string) {
	for _, q := range [2][2]geom.Point{{a, c}, {b, d}} {
		dir := q[1].Minus(q[0])
		if dir.Len() > fromPoint+pastEnd {
			u := dir.Unit()
			p.Line(Quiet, Hair, q[0].Plus(u.Times(fromPoint)), q[1].Plus(u.Times(pastEnd)))
		}
	}
	p.beside(c, d, p.Span(c, d), text)
}

// Span adds a dimension line without its lettering and returns its direction.
func (p *Picture) Span(c, d geom.Point) geom.Point {
	p.Line(Quiet, Hair, c, d)
	along := d.Minus(c).Unit()
	if along == (geom.Point{}) {
		along = geom.Pt(1, 0)
	}
	s := along.Turned(math.Pi / 4).Times(slash)
	for _, q := range []geom.Point{c, d} {
		p.Line(Quiet, Thin, q.Minus(s), q.Plus(s))
	}
	return along
}

// beside letters a dimension line: over its middle, under it, or past its ends.
func (p *Picture) beside(c, d, along geom.Point, text string) {
	turn := math.Remainder(along.Angle(), 2*math.Pi)
	if turn > math.Pi/2+1e-9 || turn <= -math.Pi/2+1e-9 {
		turn = math.Remainder(turn+math.Pi, 2*math.Pi)
	}
	dir := geom.Pt(1, 0).Turned(turn)
	up := dir.Left().Times(aside + capHeight/2*Letter)
	mid := c.Towards(d, 0.5)
	t := Text{Text: text, Size: Letter, Turn: turn, Anchor: piece.Centre, Ink: Main}
	wide := Width(text, Letter, false)
	half := dir.Times(wide/2 + 1.6)
	if d.Minus(c).Dot(dir) < 0 {
		half = half.Times(-1)
	}
	low, high := c, d
	var places []geom.Point
	if wide < d.Dist(c)-1 {
		places = append(places, mid.Plus(up), mid.Minus(up))
		for _, q := range []float64{0.35, 0.65, 0.25, 0.75} {
			places = append(places, low.Towards(high, q).Plus(up), low.Towards(high, q).Minus(up))
		}
	}
	places = append(places, high.Plus(half), low.Minus(half), mid.Plus(up), mid.Minus(up),
		high.Plus(half).Plus(up), low.Minus(half).Plus(up), mid.Plus(up.Times(2.4)), mid.Minus(up.Times(2.4)),
		high.Plus(half).Minus(up), low.Minus(half).Minus(up))
	p.WriteFree(t, places...)
}

// Arrow adds an arrow from a to b with an open head.
func (p *Picture) Arrow(ink Ink, width float64, a, b geom.Point) {
	const barb, open = 1.8, 0.32
	back := a.Minus(b).Unit().Times(barb)
	p.Items = append(p.Items, Path{Stroke: ink, Width: width, Lines: []geom.Polyline{
		{a, b}, {b.Plus(back.Turned(open)), b, b.Plus(back.Turned(-open))}}})
}

// Callout letters a thing at an offset from it, with a thin line that leads there; where
// the lettering has no room, a little further off.
func (p *Picture) Callout(t Text, at, off geom.Point) {
	var places []geom.Point
	for _, far := range []float64{1, 1.25, 1.5, 0.8} {
		for _, turn := range []float64{0, 0.3, -0.3, 0.6, -0.6} {
			places = append(places, at.Plus(off.Times(far).Turned(turn)))
		}
	}
	if !p.WriteFree(t, places...) {
		return
	}
	box := p.Last()
	p.Line(Quiet, Hair, at, nearest(box, at))
	p.Dot(Quiet, at, 0.4)
}

// nearest returns the point of a box, with a little room round it, that is nearest to
// another.
func nearest(b geom.Box, at geom.Point) geom.Point {
	const room = 0.4
	return geom.Pt(math.Min(math.Max(at.X, b.Min.X-room), b.Max.X+room), math.Min(math.Max(at.Y, b.Min.Y-room), b.Max.Y+room))
}
