package seam

import (
	"fmt"
	"math"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/design"
	"slingloft/outline/geom"
)

// room is how wide a section is drawn, and left where it begins, mm on paper.
const (
	room = 80.0
	left = 4.0
)

// bare is how much of a single cloth is shown beside a seam, mm on paper.
const bare = 10.0

// Channel draws the section of a side's channel with the cord in it, every measure to scale
// across the seam, and the rows of stitching in their order.
func Channel(d *given.Data) picture.Picture {
	if d.Design.Channel.Kind == design.Facing {
		return faced(d)
	}
	return bound(d)
}

// boundLayers is how many layers lie next to the seam of a side in a folded strip: five, one
// more with a lining.
func boundLayers(d design.Design) int {
	below, above := lined(d)
	return 5 + below + above
}

// boundSection is a body's side in a folded strip, with its lining.
func boundSection(d design.Design) section {
	c := d.Channel
	k := (room - bare) / (c.Depth + c.Foot)
	s := section{scale: k, zero: left + bare + k*c.Foot, level: 0}
	// The fold is round the cord: half as high as cord or layers ask for.
	top := float64(boundLayers(d) - 1)
	h := math.Max(top/2*ply, k*d.Side.Diameter/2+thick/2+0.4)
	s.level = math.Max(h-top/2*ply, 0)
	mid := s.y(top / 2)
	end := s.x(c.Depth)
	fold, raw := s.x(-c.Foot), s.x(c.TurnUnder-c.Foot)
	upper := geom.Polyline{{X: raw, Y: s.y(top - 1)}}
	upper = append(upper, turned(fold, s.y(top-1), s.y(top), -1)...)
	upper = append(upper, eased(geom.Pt(end-h-5, s.y(top)), geom.Pt(end-h, mid+h))...)
	way := append(geom.Polyline{}, upper...)
	round := turned(end, mid+h, mid-h, 1)
	way = append(way, round...)
	for i := range upper {
		q := upper[len(upper)-1-i]
		way = append(way, geom.Pt(q.X, 2*mid-q.Y))
	}
	below, above := lined(d)
	level := func(layer int) geom.Polyline {
		return geom.Polyline{{X: left, Y: s.y(float64(layer))}, {X: s.x(d.Seam.Side), Y: s.y(float64(layer))}}
	}
	s.cloths = []cloth{{stripCloth, way, 1}, {bodyCloth, level(2 + below), -1}}
	if below+above > 0 {
		s.cloths = append(s.cloths, cloth{liningCloth, level(2 + above), -1})
	}
	s.rows = rowsAt(s, d, 0, 1, s.y(0)-1, s.y(top)+1)
	return s
}

// rowsAt returns the rows of a side's stitching, the first so far across the seam and the
// others further in a direction.
func rowsAt(s section, d design.Design, first, way, from, to float64) []stitches {
	var out []stitches
	for i := range d.Seam.Rows {
		out = append(out, stitches{s.x(first + way*float64(i)*d.Seam.RowSpacing), from, to})
	}
	return out
}

// eased is a smooth way from one point to another, level at both.
func eased(a, b geom.Point) geom.Polyline {
	const steps = 10
	var out geom.Polyline
	for i := range steps + 1 {
		t := float64(i) / steps
		out = append(out, geom.Pt(a.X+(b.X-a.X)*t, a.Y+(b.Y-a.Y)*(1-math.Cos(math.Pi*t))/2))
	}
	return out
}

// runs is how many cords lie in a channel.
func runs(d design.Design) int {
	if d.Splice.Whole {
		return 2
	}
	return 1
}

// cords draws the cords in a channel, one beside the other, the first with its outside at
// x.
func cords(p *picture.Picture, d design.Design, x, y, scale, way float64) {
	r := scale * d.Side.Diameter / 2
	for i := range runs(d) {
		at := geom.Pt(x-way*r*(1+2*float64(i)), y)
		p.Area(picture.Buried, geom.CirclePoints(at, r, 0.02)...)
		p.Outline(picture.Cord, picture.Medium, geom.Polyline(geom.CirclePoints(at, r, 0.02)))
	}
}

// measure is a dimension of a section: from and to, mm across the seam.
type measure struct {
	from, to float64
	name     string
}

// step is from one row of dimensions to the next, mm.
const step = 5.2

// measured letters measures in rows below a section, each with its dimension line: the
// first at the top.
func measured(p *picture.Picture, d *given.Data, s section, foot float64, all []measure) {
	for i, m := range all {
		for _, mm := range []float64{m.from, m.to} {
			x := s.x(mm)
			p.Line(picture.Ghost, picture.Hair, geom.Pt(x, foot), geom.Pt(x, foot-step*float64(i+1)-1))
		}
	}
	for i, m := range all {
		y := foot - step*float64(i+1)
		a, b := s.x(m.from), s.x(m.to)
		p.Line(picture.Quiet, picture.Hair, geom.Pt(a, y), geom.Pt(b, y))
		for _, x := range []float64{a, b} {
			p.Line(picture.Quiet, picture.Thin, geom.Pt(x-0.7, y-0.7), geom.Pt(x+0.7, y+0.7))
		}
		text := fmt.Sprintf(d.Say.Stitching.Measured, m.name, d.Cloth(m.to-m.from))
		wide := picture.Width(text, picture.Letter, false)
		switch {
		case wide < b-a-2:
			line(p, (a+b-wide)/2, y+0.9, text)
		case b+1.6+wide < p.Width-0.5:
			line(p, b+1.6, y-1, text)
		default:
			line(p, math.Max(a-1.6-wide, 0.5), y-1, text)
		}
	}
}

// bound draws a channel made by a folded strip.
func bound(d *given.Data) picture.Picture {
	say, c := d.Say.Stitching, d.Design.Channel
	s := boundSection(d.Design)
	pass := d.Design.Passage()
	dims := []measure{
		{0, c.Depth, say.Depth}, {0, d.Design.Seam.Side, say.SideAllowance}, {-c.Foot, c.TurnUnder - c.Foot, say.TurnUnder},
	}
	if d.Design.Seam.Rows > 1 {
		dims = append(dims, measure{c.Depth - pass.Clear, c.Depth, say.Clear}, measure{0, d.Design.Seam.RowSpacing, say.RowsApart})
	}
	dims = append(dims, measure{-c.Foot, 0, say.Foot})
	s = s.risen(step*float64(len(dims)) + 6)
	layers := float64(boundLayers(d.Design) - 1)
	p := picture.Picture{ID: "seam-channel", Title: say.Bound.Title, Width: picture.Half, Height: s.y(layers) + math.Max(s.swell(layers), 0) + 22,
		Desc: fmt.Sprintf(say.Bound.Desc, s.layers(c.Foot/2), d.Design.Seam.Rows, d.Cloth(c.Depth), d.Cloth(d.Design.Side.Diameter))}
	s.draw(&p)
	cords(&p, d.Design, s.x(c.Depth)-thick-0.4, s.y(layers/2), s.scale, 1)
	for i, r := range s.rows {
		number(&p, r, fmt.Sprint(i+1))
	}
	foot := s.rows[0].from - 1.4
	measured(&p, d, s, foot, dims)
	top := p.Height - 3.6
	points(&p, geom.Pt(s.x(0)+8, s.y(layers)), geom.Pt(18, top), say.StripOf)
	body := s.cloths[1].way[0].Y
	points(&p, geom.Pt(left+4, body), geom.Pt(2, top-row), say.BodyOf)
	if len(s.cloths) > 2 {
		points(&p, geom.Pt(left+2, s.cloths[2].way[0].Y), geom.Pt(2, top), d.Say.Lining.LiningName)
	}
	points(&p, geom.Pt(s.x(d.Design.Seam.Side), body), geom.Pt(46, top), say.RawEdge)
	points(&p, geom.Pt(s.x(c.Depth)-thick-s.scale*d.Design.Side.Diameter/2, s.y(layers/2)+1), geom.Pt(60, top-row), say.CordOf)
	return p
}

// row is from one line of lettering to the next, mm.
const row = 4.2

// risen returns a section higher on paper.
func (s section) risen(by float64) section {
	up := geom.Pt(0, by)
	out := section{scale: s.scale, zero: s.zero, level: s.level + by}
	for _, c := range s.cloths {
		way := make(geom.Polyline, len(c.way))
		for i, q := range c.way {
			way[i] = q.Plus(up)
		}
		out.cloths = append(out.cloths, cloth{c.of, way, c.right})
	}
	for _, r := range s.rows {
		out.rows = append(out.rows, stitches{r.x, r.from + by, r.to + by})
	}
	return out
}

// swell is by how much a section's cloths rise over its top layer, next to the cord.
func (s section) swell(layers float64) float64 {
	top := 0.0
	for _, c := range s.cloths {
		top = math.Max(top, c.way.Bounds().Max.Y)
	}
	return top - s.y(layers)
}

// facedSection is a body's side with a facing turned to its inside.
func facedSection(d design.Design) section {
	c := d.Channel
	k := (room - bare) / (c.Depth + c.Foot)
	below, above := lined(d)
	out, in := ply*float64(below), ply*float64(above) // of a lining, outside and inside of the body
	s := section{scale: k, zero: left + room - 2 - out}
	h := math.Max(ply, (k*d.Side.Diameter+thick)/2+0.4) + in
	// The body comes round the cord and back; its allowance and the facing's lie on it.
	end := s.x(0)
	body := append(geom.Polyline{{X: left - 2, Y: 0}}, turned(end, 0, 2*h, 1)...)
	body = append(body, geom.Pt(s.x(-d.Seam.Side), 2*h))
	fold, raw := s.x(-c.Depth-c.Foot), s.x(-c.Depth-c.Foot+c.TurnUnder)
	facing := geom.Polyline{{X: s.x(-d.Seam.Side), Y: 2*h + ply + out}}
	facing = append(facing, turned(end-0.8, 2*h+ply+out, 2*h+2*ply+out, 1)...)
	down := math.Min(s.x(-d.Seam.Side), end-2*h)
	flat := math.Max(s.x(-c.Depth)+2, down-8)
	facing = append(facing, eased(geom.Pt(down, 2*h+2*ply+out), geom.Pt(flat, 2*ply+in))...)
	facing = append(facing, turned(fold, 2*ply+in, ply+in, -1)...)
	facing = append(facing, geom.Pt(raw, ply+in))
	s.cloths = []cloth{{bodyCloth, body, -1}, {facingCloth, facing, -1}}
	if below+above > 0 {
		lining := append(geom.Polyline{{X: left - 2, Y: in - out}}, turned(end+out-in, in-out, 2*h+out-in, 1)...)
		s.cloths = append(s.cloths, cloth{liningCloth, append(lining, geom.Pt(s.x(-d.Seam.Side), 2*h+out-in)), -1})
	}
	s.rows = append([]stitches{{end - 2.4, 2*h - in - 1, 2*h + ply + out + 1}}, rowsAt(s, d, -c.Depth, 1, -1-out, 2*ply+in+1)...)
	return s
}

// faced draws a channel made by a facing.
func faced(d *given.Data) picture.Picture {
	say, c := d.Say.Stitching, d.Design.Channel
	dims := []measure{
		{-c.Depth, 0, say.Depth}, {-d.Design.Seam.Side, 0, say.SideAllowance},
		{-c.Depth - c.Foot, -c.Depth - c.Foot + c.TurnUnder, say.TurnUnder},
	}
	if d.Design.Seam.Rows > 1 {
		dims = append(dims, measure{-d.Design.Passage().Clear, 0, say.Clear},
			measure{-c.Depth, -c.Depth + d.Design.Seam.RowSpacing, say.RowsApart})
	}
	dims = append(dims, measure{-c.Depth - c.Foot, -c.Depth, say.Foot})
	s := facedSection(d.Design).risen(step*float64(len(dims)) + 6)
	top := 0.0
	for _, q := range s.cloths {
		top = math.Max(top, q.way.Bounds().Max.Y)
	}
	p := picture.Picture{ID: "seam-channel", Title: say.Faced.Title, Width: picture.Half, Height: top + 22,
		Desc: fmt.Sprintf(say.Faced.Desc, s.layers(-c.Depth), d.Design.Seam.Rows, d.Cloth(c.Depth), d.Cloth(d.Design.Side.Diameter))}
	s.draw(&p)
	base := s.cloths[0].way[0].Y
	r := s.scale * d.Design.Side.Diameter / 2
	below, above := lined(d.Design)
	out, in := ply*float64(below), ply*float64(above)
	cords(&p, d.Design, s.x(0)-thick-0.4-in, base+in+thick/2+0.2+r, s.scale, 1)
	for i, r := range s.rows {
		number(&p, r, fmt.Sprint(i+1))
	}
	measured(&p, d, s, base-out-2.4, dims)
	high := p.Height - 3.6
	points(&p, geom.Pt(left+3, base), geom.Pt(2, high-row), say.BodyOf)
	if len(s.cloths) > 2 {
		points(&p, geom.Pt(left+1, s.cloths[2].way[0].Y), geom.Pt(2, high-2*row), d.Say.Lining.LiningName)
	}
	points(&p, geom.Pt(s.x(-c.Depth)+3, base+in+2*ply), geom.Pt(14, high), say.FacingOf)
	points(&p, geom.Pt(s.x(-d.Design.Seam.Side), top-2*ply), geom.Pt(38, high-row), say.RawEdges)
	points(&p, geom.Pt(s.x(0)-2, top-ply), geom.Pt(60, high), say.OuterSeam)
	return p
}
