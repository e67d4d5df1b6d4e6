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

// Across draws the sections at the bars and at mid-bay.
func Across(d *given.Data) picture.Picture {
	b := bed{d}
	h, f := b.ends()
	mid := b.Shape.At(0).Section
	top := max(h.Section.Height, f.Section.Height)
	k := min((picture.Half-30)/max(h.Bar, f.Bar), 70/top)
	p := picture.Picture{ID: "view-end", Title: b.Say.Hung.Across.Title, Width: picture.Half, Height: 27 + k*top}
	v := picture.View{Scale: k, Shift: geom.Pt(picture.Half/2+4, 17)}
	bars := b.Say.Names.Materials.Bar
	x := 2.0 // of the name of a section, below them all
	for _, q := range []struct {
		name string
		s    hung.Section
		ink  picture.Ink
	}{{bars[hung.Head], h.Section, picture.First}, {bars[hung.Foot], f.Section, picture.Second}, {b.Say.Hung.MidBay, mid, picture.Third}} {
		line := v.Line(sectionLine(q.s))
		p.Line(q.ink, picture.Medium, line...)
		for _, c := range []geom.Point{line[0], line[len(line)-1]} {
			p.Dot(q.ink, c, 0.9)
		}
		p.Line(q.ink, picture.Bold, geom.Pt(x, 4), geom.Pt(x+6, 4))
		p.Write(picture.Text{Text: q.name, At: geom.Pt(x+7.5, 3), Size: picture.Letter, Ink: picture.Main})
		x += 12 + picture.Width(q.name, picture.Letter, false)
	}
	b.acrossDimensions(&p, v, h.Section, mid)
	p.Desc = fmt.Sprintf(b.Say.Hung.Across.Desc,
		b.Round(h.Bar), b.Round(h.Section.Height), b.Round(2*mid.Half), b.Round(mid.Height), b.Round(f.Bar),
		b.Round(f.Section.Height), b.Style.Angle(h.Section.Wall))
	return p
}

// acrossDimensions dimensions the section at the head bar and that at mid-bay.
func (b bed) acrossDimensions(p *picture.Picture, v picture.View, head, mid hung.Section) {
	left, right := v.At(geom.Pt(-head.Half, head.Height)), v.At(geom.Pt(head.Half, head.Height))
	p.Line(picture.Bar, picture.Thin, left, right)
	p.Level(left, right, left.Y+4, b.Round(2*head.Half))
	p.Upright(v.At(geom.Pt(-head.Half, 0)), left, left.X-5, b.Round(head.Height))
	m, low := v.At(geom.Pt(mid.Half, mid.Height)), v.At(geom.Pt(0, 0))
	p.Upright(geom.Pt(m.X, low.Y), m, min(m.X+9, picture.Half-7), b.Round(mid.Height))
	radius := picture.Text{Text: fmt.Sprintf(b.Say.Hung.Radius, b.Round(mid.Radius)), Size: picture.Letter, Anchor: piece.Centre,
		Ink: picture.Main}
	p.WriteFree(radius, low.Plus(geom.Pt(0, -4)), low.Plus(geom.Pt(0, 5)))
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
