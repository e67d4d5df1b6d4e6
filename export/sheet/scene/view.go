// Package scene draws the bed as it hangs: in space, from the side, from above and from
// its end.
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

// bed is the hung bed that is drawn.
type bed struct{ *given.Data }

// stub is how much of a hang line is drawn past each apex, mm true.
const stub = 140.0

// Side draws the hammock from the side.
func Side(d *given.Data) picture.Picture {
	b := bed{d}
	sh := b.Shape
	h, f := sh.Ends[hung.Head], sh.Ends[hung.Foot]
	left, right := h.ApexX-stub, f.ApexX+stub
	top := max(h.ApexZ+stub*h.Slope, f.ApexZ+stub*f.Slope)
	low := min(sh.Problem.Bottom(h.TailX), sh.Problem.Bottom(f.TailX))
	const below, above, margin = 21.0, 3.0, 13.0
	k := (picture.Wide - 2*margin) / (right - left)
	p := picture.Picture{ID: "view-side", Title: b.Say.Hung.Side.Title, Width: picture.Wide, Height: below + above + k*(top-low)}
	v := picture.View{Scale: k, Shift: geom.Pt(margin-left*k, below-low*k)}
	at := func(x, z float64) geom.Point { return v.At(geom.Pt(x, z)) }
	var cords, floor geom.Polyline // over the cloth, from corner to corner
	head, foot := b.corner(hung.Head), b.corner(hung.Foot)
	for _, x := range b.Shape.Stations(120) {
		q := sh.At(x)
		floor = append(floor, at(x, q.Bottom))
		if x > head.X && x < foot.X {
			cords = append(cords, at(x, q.Z))
		}
	}
	cords = append(append(geom.Polyline{at(head.X, head.Z)}, cords...), at(foot.X, foot.Z))
	p.Area(picture.Cloth, append(append(geom.Polyline{}, floor...), cords.Reversed()...)...)
	b.sleeper(&p, v)
	p.Line(picture.Main, picture.Medium, append(append(geom.Polyline{cords[0]}, floor...), cords[len(cords)-1])...)
	p.Line(picture.Cord, picture.Bold, append(append(geom.Polyline{at(h.ApexX, h.ApexZ)}, cords...), at(f.ApexX, f.ApexZ))...)
	for _, e := range hung.Ends() {
		end := sh.Ends[e]
		apex := at(end.ApexX, end.ApexZ)
		out := at(end.ApexX+e.Sign()*stub, end.ApexZ+stub*end.Slope)
		p.Dashed(picture.Cord, picture.Thin, apex, out)
		p.Dot(picture.Main, apex, 0.7)
		tip := at(e.Sign()*b.Design.Bed.Span/2, sh.At(e.Sign()*b.Design.Bed.Span/2).Z)
		p.Dot(picture.Bar, tip, 1.1)
	}
	b.sideDimensions(&p, at)
	p.Desc = fmt.Sprintf(b.Say.Hung.Side.Desc,
		b.Round(f.TailX-h.TailX), b.Round(h.ApexZ), b.Round(h.Section.Height), b.Round(sh.At(0).Z-sh.Problem.Bottom(0)),
		b.Round(f.Section.Height), b.Round(f.ApexZ),
		b.Style.Angle(math.Atan(h.Slope)), b.Style.Angle(math.Atan(f.Slope)))
	return p
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

// Above draws the hammock from above.
func Above(d *given.Data) picture.Picture {
	b := bed{d}
	sh := b.Shape
	h, f := sh.Ends[hung.Head], sh.Ends[hung.Foot]
	left, right := h.ApexX-stub, f.ApexX+stub
	widest := max(h.Bar, f.Bar)
	const margin, room = 13.0, 9.0
	k := (picture.Wide - 2*margin) / (right - left)
	p := picture.Picture{ID: "view-above", Title: b.Say.Hung.Above.Title, Width: picture.Wide, Height: 2*room + k*widest}
	v := picture.View{Scale: k, Shift: geom.Pt(margin-left*k, room+k*widest/2)}
	at := func(x, y float64) geom.Point { return v.At(geom.Pt(x, y)) }
	var up, down geom.Polyline
	for _, x := range b.Shape.Stations(120) {
		q := sh.At(x)
		up, down = append(up, at(x, q.Y)), append(down, at(x, -q.Y))
	}
	// A leaning end shows as a curve from above.
	rims := [2]geom.Polyline{b.endRim(hung.Head), b.endRim(hung.Foot)}
	cloth := geom.Polyline{}
	head, foot := b.corner(hung.Head), b.corner(hung.Foot)
	for i, x := range b.Shape.Stations(120) {
		if x > head.X && x < foot.X {
			cloth = append(cloth, up[i])
		}
	}
	under := make(geom.Polyline, len(cloth))
	for i, q := range cloth {
		under[len(cloth)-1-i] = geom.Pt(q.X, 2*v.Shift.Y-q.Y)
	}
	cloth = append(append(append(cloth, v.Line(rims[hung.Foot])...), under...), v.Line(rims[hung.Head])...)
	p.Area(picture.Cloth, cloth...)
	for _, side := range []geom.Polyline{up, down} {
		p.Line(picture.Cord, picture.Bold, append(append(geom.Polyline{at(h.ApexX, 0)}, side...), at(f.ApexX, 0))...)
	}
	p.Dashed(picture.Ghost, picture.Thin, at(h.TailX, 0), at(f.TailX, 0))
	for i, e := range hung.Ends() {
		end := sh.Ends[e]
		x := e.Sign() * b.Design.Bed.Span / 2
		p.Line(picture.Bar, 1, at(x, -end.Bar/2), at(x, end.Bar/2))
		p.Line(picture.Main, picture.Medium, v.Line(rims[i])...)
		apex := at(end.ApexX, 0)
		p.Dashed(picture.Cord, picture.Thin, apex, at(end.ApexX+e.Sign()*stub, 0))
		p.Dot(picture.Main, apex, 0.7)
		p.Upright(at(x, -end.Bar/2), at(x, end.Bar/2), at(x, 0).X-e.Sign()*7, b.Round(end.Bar))
		tip := at(x, -end.Bar/2)
		p.Dimension(tip, apex, e.Sign()*-7, b.Round(end.Leg))
	}
	narrow := sh.At(sh.DepthX).Y
	p.Upright(at(sh.DepthX, -narrow), at(sh.DepthX, narrow), at(sh.DepthX, 0).X, b.Round(2*narrow))
	p.Desc = fmt.Sprintf(b.Say.Hung.Above.Desc,
		b.Round(h.Bar), b.Round(2*narrow), b.Round(f.Bar), b.Round(h.Leg), b.Round(f.Leg))
	return p
}

// Across draws the sections at the bars and at mid-bay.
func Across(d *given.Data) picture.Picture {
	b := bed{d}
	sh := b.Shape
	h, f := sh.Ends[hung.Head], sh.Ends[hung.Foot]
	mid := sh.At(0).Section
	top := max(h.Section.Height, f.Section.Height)
	widest := max(h.Bar, f.Bar)
	k := min((picture.Half-30)/widest, 70/top)
	p := picture.Picture{ID: "view-end", Title: b.Say.Hung.Across.Title, Width: picture.Half, Height: 27 + k*top}
	v := picture.View{Scale: k, Shift: geom.Pt(picture.Half/2+4, 17)}
	bars := b.Say.Names.Materials.Bar
	sections := []struct {
		name string
		s    hung.Section
		ink  picture.Ink
	}{{bars[hung.Head], h.Section, picture.First}, {bars[hung.Foot], f.Section, picture.Second}, {b.Say.Hung.MidBay, mid, picture.Third}}
	x := 2.0
	for _, q := range sections {
		line := v.Line(sectionLine(q.s))
		p.Line(q.ink, picture.Medium, line...)
		for _, c := range []geom.Point{line[0], line[len(line)-1]} {
			p.Dot(q.ink, c, 0.9)
		}
		p.Line(q.ink, picture.Bold, geom.Pt(x, 4), geom.Pt(x+6, 4))
		p.Write(picture.Text{Text: q.name, At: geom.Pt(x+7.5, 3), Size: picture.Letter, Ink: picture.Main})
		x += 12 + picture.Width(q.name, picture.Letter, false)
	}
	for i, s := range []hung.Section{h.Section, f.Section} {
		a, c := v.At(geom.Pt(-s.Half, s.Height)), v.At(geom.Pt(s.Half, s.Height))
		if i == 0 {
			p.Line(picture.Bar, picture.Thin, a, c)
			p.Level(a, c, a.Y+4, b.Round(2*s.Half))
			p.Upright(v.At(geom.Pt(-s.Half, 0)), a, a.X-5, b.Round(s.Height))
		}
	}
	m := v.At(geom.Pt(mid.Half, mid.Height))
	p.Upright(geom.Pt(m.X, v.At(geom.Pt(0, 0)).Y), m, min(m.X+9, picture.Half-7), b.Round(mid.Height))
	low := v.At(geom.Pt(0, 0))
	radius := picture.Text{Text: fmt.Sprintf(b.Say.Hung.Radius, b.Round(mid.Radius)), Size: picture.Letter, Anchor: piece.Centre,
		Ink: picture.Main}
	p.WriteFree(radius, low.Plus(geom.Pt(0, -4)), low.Plus(geom.Pt(0, 5)))
	p.Desc = fmt.Sprintf(b.Say.Hung.Across.Desc,
		b.Round(h.Bar), b.Round(h.Section.Height), b.Round(2*mid.Half), b.Round(mid.Height), b.Round(f.Bar),
		b.Round(f.Section.Height), b.Style.Angle(h.Section.Wall))
	return p
}

// sectionLine returns a section from cord to cord, true measure.
func sectionLine(s hung.Section) geom.Polyline {
	const n = 48
	var out geom.Polyline
	for i := -n; i <= n; i++ {
		y, z := s.Point(math.Abs(float64(i)) / n * s.Girth() / 2)
		out = append(out, geom.Pt(math.Copysign(y, float64(i)), z))
	}
	return out
}
