package scene

import (
	"fmt"
	"math"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
)

// Side draws the hammock from the side.
func Side(d *given.Data) picture.Picture {
	b := bed{d}
	sh := b.Shape
	h, f := b.ends()
	top := max(h.ApexZ+stub*h.Slope, f.ApexZ+stub*f.Slope)
	low := min(sh.Problem.Bottom(h.TailX), sh.Problem.Bottom(f.TailX))
	const below, above = 21.0, 3.0
	k, shift := b.along()
	p := picture.Picture{ID: "view-side", Title: b.Say.Hung.Side.Title, Width: picture.Wide, Height: below + above + k*(top-low)}
	v := picture.View{Scale: k, Shift: geom.Pt(shift, below-low*k)}
	at := func(x, z float64) geom.Point { return v.At(geom.Pt(x, z)) }
	cords, floor := b.fromSide(at)
	p.Area(picture.Cloth, append(append(geom.Polyline{}, floor...), cords.Reversed()...)...)
	b.sleeper(&p, v)
	p.Line(picture.Main, picture.Medium, joined(cords[0], floor, cords[len(cords)-1])...)
	p.Line(picture.Cord, picture.Bold, joined(at(h.ApexX, h.ApexZ), cords, at(f.ApexX, f.ApexZ))...)
	for _, e := range hung.Ends() {
		end := sh.Ends[e]
		apex := at(end.ApexX, end.ApexZ)
		p.Dashed(picture.Cord, picture.Thin, apex, at(end.ApexX+e.Sign()*stub, end.ApexZ+stub*end.Slope))
		p.Dot(picture.Main, apex, 0.7)
		p.Dot(picture.Bar, at(b.barAt(e), sh.At(b.barAt(e)).Z), 1.1)
	}
	b.sideDimensions(&p, at)
	p.Desc = fmt.Sprintf(b.Say.Hung.Side.Desc,
		b.Round(f.TailX-h.TailX), b.Round(h.ApexZ), b.Round(h.Section.Height), b.Round(sh.At(0).Z-sh.Problem.Bottom(0)),
		b.Round(f.Section.Height), b.Round(f.ApexZ), b.slope(h), b.slope(f))
	return p
}

// fromSide returns the cords over the cloth, from corner to corner, and the bed's bottom.
func (b bed) fromSide(at func(x, z float64) geom.Point) (cords, floor geom.Polyline) {
	head, foot := b.corner(hung.Head), b.corner(hung.Foot)
	for _, x := range b.Shape.Stations(stations) {
		q := b.Shape.At(x)
		floor = append(floor, at(x, q.Bottom))
		if x > head.X && x < foot.X {
			cords = append(cords, at(x, q.Z))
		}
	}
	return joined(at(head.X, head.Z), cords, at(foot.X, foot.Z)), floor
}

// sideDimensions dimensions the side view.
func (b bed) sideDimensions(p *picture.Picture, at func(x, z float64) geom.Point) {
	sh, bed := b.Shape, b.Design.Bed
	s := bed.Span / 2
	y := at(0, min(sh.Problem.Bottom(-s), sh.Problem.Bottom(s))).Y
	point := func(x float64) geom.Point { return at(x, sh.Problem.Bottom(x)) }
	h, f := sh.Ends[hung.Head], sh.Ends[hung.Foot]
	p.Level(point(-s), point(h.TailX), y-6.5, b.Round(bed.HeadTail))
	p.Level(point(-s), point(s), y-6.5, b.Round(bed.Span))
	p.Level(point(s), point(f.TailX), y-6.5, b.Round(bed.FootTail))
	p.Level(at(h.ApexX, h.ApexZ), at(f.ApexX, f.ApexZ), y-15, b.Round(f.ApexX-h.ApexX))
	for _, e := range hung.Ends() {
		end := sh.Ends[e]
		x := e.Sign() * s
		tip := at(x, sh.At(x).Z)
		p.Upright(point(x), tip, tip.X-e.Sign()*7, b.Round(end.Section.Height))
		apex := at(end.ApexX, end.ApexZ)
		floor := geom.Pt(apex.X, point(end.TailX).Y)
		p.Upright(floor, apex, apex.X+e.Sign()*7, b.Round(end.ApexZ-sh.Problem.Bottom(end.TailX)))
		angle := picture.Text{Text: b.Style.Angle(math.Atan(end.Slope)), Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Main}
		p.WriteFree(angle, apex.Plus(geom.Pt(-e.Sign()*6, 4)), apex.Plus(geom.Pt(-e.Sign()*9, 2.5)), apex.Plus(geom.Pt(0, -4)))
		name := picture.Text{Text: b.Say.Names.Materials.Bar[e], Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Bar}
		p.WriteFree(name, tip.Plus(geom.Pt(0, 4)), tip.Plus(geom.Pt(-e.Sign()*8, 4)), tip.Plus(geom.Pt(-e.Sign()*10, 0)))
	}
	mid := at(0, sh.At(0).Z)
	p.Upright(point(0), mid, mid.X, b.Round(sh.At(0).Z-sh.Problem.Bottom(0)))
}

// sleeper draws somebody lying in the bed, head at the crown. The proportions are
// those of a rough drawing: parts of the stature from memory.
func (b bed) sleeper(p *picture.Picture, v picture.View) {
	profile := [][2]float64{{0.13, 0.03}, {0.15, 0.06}, {0.2, 0.1}, {0.27, 0.125}, {0.36, 0.115}, {0.44, 0.115}, {0.5, 0.12},
		{0.58, 0.1}, {0.68, 0.085}, {0.73, 0.08}, {0.8, 0.075}, {0.9, 0.05}, {0.95, 0.055}, {0.965, 0.12}, {0.985, 0.14},
		{0.998, 0.12}, {1, 0.02}}
	tall := b.Design.Sleeper.Stature
	crown := -b.Design.Bed.Span/2 + b.Design.Sleeper.Crown
	at := func(part, high float64) geom.Point {
		x := crown + part*tall
		return v.At(geom.Pt(x, b.Shape.Problem.Bottom(x)+6+high*tall))
	}
	outline := geom.Polyline{at(1, 0), at(0.13, 0)}
	for i := 1; i < len(profile); i++ {
		a, c := profile[i-1], profile[i]
		for j := range 6 {
			t := float64(j) / 6
			ease := t * t * (3 - 2*t)
			outline = append(outline, at(a[0]+(c[0]-a[0])*t, a[1]+(c[1]-a[1])*ease))
		}
	}
	p.Area(picture.Body, outline...)
	p.Dot(picture.Body, at(0.068, 0.068), 0.064*tall*v.Scale)
}
