package seam

import (
	"fmt"
	"math"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/geom"
)

// How much of the bed a corner's picture shows, mm: along the side, outside of the end, and
// from the corner towards the middle of the bed.
const (
	windowIn  = 84.0
	windowOut = 36.0
	windowLow = 42.0
)

// corner is the head corner on the left, flat: lines in true measure within a window.
type corner struct {
	box                  geom.Box
	side, end            geom.Polyline // seam lines of side and end, from their corner
	fold                 geom.Polyline // the other edge of the channel
	rows                 []geom.Polyline
	cord                 geom.Polyline // from the channel out
	channelDeep, hemDeep float64
	pressed              float64 // how wide the allowances of the cap's seam are, pressed onto the cap
}

// CornerLeft is what is left of a cap seam's allowances past the net line of the side, mm:
// own choice.
const CornerLeft = 3.0

// cornerOf returns it for what is sewn.
func cornerOf(d *given.Data) corner {
	side, end := d.Sewn.SideNet.Flat, d.Sewn.EndNets[bed.Head].Flat.Reversed()
	c := corner{channelDeep: d.Design.Channel.Depth, pressed: max(d.Design.Seam.End, d.Design.Seam.Cap)}
	at, out := side[0], 1.0 // on which side of the seam line the channel lies
	spacing, first, cord := d.Design.Seam.RowSpacing, 0.0, d.Sewn.Reach
	if d.Design.Channel.Kind == design.Facing {
		out, first, cord = -1, d.Design.Channel.Depth, d.Design.Channel.Depth-d.Sewn.Reach
		spacing = -spacing
	}
	c.box = geom.BoxOf(geom.Pt(at.X-windowOut, at.Y-windowLow), geom.Pt(at.X+windowIn, at.Y+max(out, 0)*c.channelDeep+14))
	moved := func(by float64) geom.Polyline { return c.clipped(side.Offset(-out * by)) }
	c.side, c.end, c.fold = c.clipped(side), c.clipped(end), moved(c.channelDeep)
	for i := range d.Design.Seam.Rows {
		c.rows = append(c.rows, moved(first+float64(i)*spacing))
	}
	run := moved(cord)
	c.cord = append(geom.Polyline{run[0].Minus(run[1].Minus(run[0]).Unit().Times(windowOut - 8))}, run...)
	if d.Design.Cap.Kind == design.Gathered {
		c.hemDeep = d.Design.Cap.Hem
	}
	return c
}

// clipped returns what of a line lies in the window.
func (c corner) clipped(l geom.Polyline) geom.Polyline {
	parts := l.Clipped(c.box.Ring(), nil)
	if len(parts) == 0 {
		return l[:2]
	}
	return parts[0]
}

// Corner draws the head corner on the left, flat and to scale: where channel, cap and body
// meet, and where the cord comes out. It has no size where nothing is sewn.
func Corner(d *given.Data) picture.Picture {
	say := d.Say.Stitching
	words, capped := say.Corner, d.Design.Cap.Kind != design.Gathered
	if !capped {
		words = say.BareCorner
	}
	if len(d.Sewn.SideNet.Flat) == 0 {
		return picture.Picture{}
	}
	c := cornerOf(d)
	const foot, wide = 8.0, 86.0
	k := wide / c.box.Width()
	v := picture.View{Scale: k, Shift: geom.Pt(1, foot).Minus(c.box.Min.Times(k))}
	p := picture.Picture{ID: "seam-corner", Title: words.Title, Desc: words.Desc, Width: picture.Half,
		Height: foot + k*c.box.Height() + 8 + row}
	body := append(append(geom.Polyline{}, c.side...), geom.Pt(c.box.Max.X, c.box.Min.Y))
	p.Area(picture.Cloth, v.Line(append(body, c.end.Reversed()...))...)
	var cloth geom.Point
	if capped {
		cloth = flap(&p, v, c)
	}
	channel := v.Line(append(append(geom.Polyline{}, c.side...), c.fold.Reversed()...))
	p.Area(picture.Body, channel...)
	p.Outline(picture.Main, picture.Medium, channel)
	ends := v.Line(c.end)
	p.Dashed(picture.Stitch, picture.Medium, ends...)
	for _, r := range c.rows {
		p.Dashed(picture.Stitch, picture.Medium, v.Line(r)...)
	}
	if !capped {
		p.Line(picture.Fold, picture.Medium, ends...)
		p.Dashed(picture.Stitch, picture.Medium, v.Line(c.clipped(c.end.Offset(-c.hemDeep)))...)
	}
	p.Line(picture.Cord, 1.4*picture.Bold, v.Line(c.cord)...)
	c.letters(&p, d, v, cloth)
	return p
}

// flap draws the cap opened out from its seam, and returns a place on it.
func flap(p *picture.Picture, v picture.View, c corner) geom.Point {
	const deep = 20.0
	far := c.end.Offset(deep)
	out := v.Line(append(append(geom.Polyline{}, c.end...), far.Reversed()...))
	p.Area(picture.Cloth, out...)
	p.Line(picture.Main, picture.Thin, v.Line(far)...)
	p.Line(picture.Fold, picture.Medium, v.At(c.end[0]), v.At(far[0])) // its hem begins here
	raw := c.allowances()
	p.Dashed(picture.Main, picture.Thin, v.Line(raw)...)
	p.Line(picture.Cut, picture.Medium, v.At(c.cutOff()), v.At(raw[0]))
	mid := len(far) / 2
	return v.At(c.end[min(mid, len(c.end)-1)].Towards(far[mid], 0.6))
}

// cutOff returns where the allowances of the cap's seam end, past the side's net line.
func (c corner) cutOff() geom.Point {
	return c.end[0].Plus(c.end[0].Minus(c.end[1]).Unit().Times(CornerLeft))
}

// allowances returns the raw edges of the cap's seam, pressed onto the cap and cut off.
func (c corner) allowances() geom.Polyline {
	return append(geom.Polyline{c.cutOff()}, c.end...).Offset(c.pressed)
}

// letters letters a corner.
func (c corner) letters(p *picture.Picture, d *given.Data, v picture.View, flap geom.Point) {
	say := d.Say.Stitching
	at := v.At(c.side[0])
	for _, l := range append([]geom.Polyline{c.end}, c.rows...) { // where stitching is locked
		from, to := v.At(l[0]), v.At(geom.NewArc(l).Between(0, math.Min(9, l.Length()))[1])
		u := to.Minus(from).Unit()
		p.Line(picture.Stitch, picture.Bold, from.Plus(u.Times(0.6)), from.Plus(u.Times(5)))
	}
	top := p.Height - 3.6
	leg := v.At(c.cord[0].Towards(c.cord[1], 0.2))
	line(p, leg.X, leg.Y+1.4, say.LegOut)
	end := v.At(c.side[0].Towards(c.fold[0], 0.9))
	points(p, end, geom.Pt(end.X+5, top-2*row), say.EndFlush)
	part := 0.5 // between the rows and the cord
	if len(c.rows) > 1 {
		part = 0.58
	}
	if c.fold[0].Y < c.side[0].Y {
		part = 1 - part
	}
	channel := v.At(c.side[len(c.side)-1]).Towards(v.At(c.fold[len(c.fold)-1]), part)
	line(p, channel.X-18, channel.Y-0.4, say.ChannelOf)
	line(p, 64, v.At(c.box.Min).Y+3, say.BodyCloth)
	points(p, at.Plus(geom.Pt(2, -1)), geom.Pt(at.X+9, at.Y-22), say.Backstitch)
	if flap != (geom.Point{}) {
		points(p, flap, geom.Pt(2, 2), say.CapOut)
		cut := v.At(c.cutOff()).Towards(v.At(c.allowances()[0]), 0.7)
		points(p, cut, geom.Pt(32, 2), fmt.Sprintf(say.CutOff, d.Cloth(CornerLeft)))
	}
	tack(p, v.At(c.cord[1]), v.At(c.cord[1]).Minus(v.At(c.cord[0])).Unit())
	points(p, v.At(c.cord[1]), geom.Pt(2, top-row), say.Tack)
	line(p, 2, top, fmt.Sprintf(say.TackAt, d.Rope(d.CornerRun(bed.Head))))
}

// tack draws the stitches that hold a corner to its leg: across the cord, just inside the
// mouth of the channel.
func tack(p *picture.Picture, mouth, in geom.Point) {
	for i := range 3 {
		at := mouth.Plus(in.Times(0.7 + 0.8*float64(i)))
		p.Line(picture.Second, picture.Bold, at.Plus(in.Left().Times(1.6)), at.Minus(in.Left().Times(1.6)))
	}
}
