package scene

import (
	"fmt"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// Above draws the hammock from above.
func Above(d *given.Data) picture.Picture {
	b := bed{d}
	sh := b.Shape
	h, f := b.ends()
	widest := max(h.Bar, f.Bar)
	const room = 9.0
	k, shift := b.along()
	p := picture.Picture{ID: "view-above", Title: b.Say.Hung.Above.Title, Width: picture.Wide, Height: 2*room + k*widest}
	v := picture.View{Scale: k, Shift: geom.Pt(shift, room+k*widest/2)}
	at := func(x, y float64) geom.Point { return v.At(geom.Pt(x, y)) }
	p.Area(picture.Cloth, b.fromAbove(v)...)
	for _, side := range []float64{1, -1} {
		var cord geom.Polyline
		for _, x := range sh.Stations(stations) {
			cord = append(cord, at(x, side*sh.At(x).Y))
		}
		p.Line(picture.Cord, picture.Bold, joined(at(h.ApexX, 0), cord, at(f.ApexX, 0))...)
	}
	p.Dashed(picture.Ghost, picture.Thin, at(h.TailX, 0), at(f.TailX, 0))
	for _, e := range hung.Ends() {
		end, x := sh.Ends[e], b.barAt(e)
		tip, other, apex := at(x, -end.Bar/2), at(x, end.Bar/2), at(end.ApexX, 0)
		p.Line(picture.Bar, 1, tip, other)
		p.Line(picture.Main, picture.Medium, v.Line(b.endRim(e))...)
		p.Dashed(picture.Cord, picture.Thin, apex, at(end.ApexX+e.Sign()*stub, 0))
		p.Dot(picture.Main, apex, 0.7)
		p.Upright(tip, other, at(x, 0).X-e.Sign()*7, b.Round(end.Bar))
		p.Dimension(tip, apex, e.Sign()*-7, b.Round(end.Leg))
	}
	narrow := sh.At(0).Y // at mid-bay, as it is measured
	p.Upright(at(0, -narrow), at(0, narrow), at(0, 0).X, b.Round(2*narrow))
	p.Desc = fmt.Sprintf(b.Say.Hung.Above.Desc,
		b.Round(h.Bar), b.Round(2*narrow), b.Round(f.Bar), b.Round(h.Leg), b.Round(f.Leg))
	return p
}

// fromAbove returns the outline of the cloth. A leaning end shows as a curve.
func (b bed) fromAbove(v picture.View) geom.Polyline {
	head, foot := b.corner(hung.Head), b.corner(hung.Foot)
	var out geom.Polyline
	for _, x := range b.Shape.Stations(stations) {
		if x > head.X && x < foot.X {
			out = append(out, v.At(geom.Pt(x, b.Shape.At(x).Y)))
		}
	}
	under := make(geom.Polyline, len(out))
	for i, q := range out {
		under[len(out)-1-i] = geom.Pt(q.X, 2*v.Shift.Y-q.Y)
	}
	out = append(append(out, v.Line(b.endRim(hung.Foot))...), under...)
	return append(out, v.Line(b.endRim(hung.Head))...)
}
