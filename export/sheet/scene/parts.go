package scene

import (
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/export/sheet/wording"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
)

// Parts draws the hammock from the side with its parts lettered instead of measured.
func Parts(d *given.Data) picture.Picture {
	b := bed{d}
	sh := b.Shape
	h, f := b.ends()
	top := max(h.ApexZ+stub*h.Slope, f.ApexZ+stub*f.Slope)
	low := min(sh.Problem.Bottom(h.TailX), sh.Problem.Bottom(f.TailX))
	const below, above = 17.0, 7.0
	k, shift := b.along()
	p := picture.Picture{ID: "view-parts", Title: b.Say.Parts.Hung.Title, Desc: b.Say.Parts.Hung.Desc,
		Width: picture.Wide, Height: below + above + k*(top-low)}
	v := picture.View{Scale: k, Shift: geom.Pt(shift, below-low*k)}
	at := func(x, z float64) geom.Point { return v.At(geom.Pt(x, z)) }
	cords, floor := b.fromSide(at)
	p.Area(picture.Cloth, append(append(geom.Polyline{}, floor...), cords.Reversed()...)...)
	p.Line(picture.Main, picture.Medium, joined(cords[0], floor, cords[len(cords)-1])...)
	p.Line(picture.Cord, picture.Bold, joined(at(h.ApexX, h.ApexZ), cords, at(f.ApexX, f.ApexZ))...)
	for _, e := range hung.Ends() {
		end := sh.Ends[e]
		apex, anchor := at(end.ApexX, end.ApexZ), at(end.ApexX+e.Sign()*stub, end.ApexZ+stub*end.Slope)
		p.Line(picture.Cord, picture.Medium, apex, anchor)
		p.Line(picture.Main, picture.Bold, anchor.Plus(geom.Pt(0, -4)), anchor.Plus(geom.Pt(0, 4)))
		p.Dot(picture.Main, apex, 0.7)
		p.Dot(picture.Bar, at(b.barAt(e), sh.At(b.barAt(e)).Z), 1.1)
	}
	b.letterParts(&p, at)
	return p
}

// letterParts letters the parts, each at the end where it has room.
func (b bed) letterParts(p *picture.Picture, at func(x, z float64) geom.Point) {
	sh, say := b.Shape, b.Say.Parts.Labels
	h, f := b.ends()
	s := b.Design.Bed.Span / 2
	floor := func(x float64) geom.Point { return at(x, sh.Problem.Bottom(x)) }
	cord := func(x float64) geom.Point { return at(x, sh.At(x).Z) }
	y := floor(0).Y
	p.Level(floor(h.TailX), floor(-s), y-6, say[wording.TailName])
	p.Level(floor(-s), floor(s), y-6, say[wording.BayName])
	p.Level(floor(s), floor(f.TailX), y-6, say[wording.TailName])
	p.Upright(floor(-s), cord(-s), cord(-s).X, say[wording.DropName])
	apex, foot := at(h.ApexX, h.ApexZ), at(f.ApexX, f.ApexZ)
	anchor := at(h.ApexX-stub, h.ApexZ+stub*h.Slope)
	corner := b.corner(hung.Head)
	for _, q := range []struct {
		name wording.Name
		at   geom.Point
		off  geom.Point
	}{
		{wording.AnchorName, anchor.Plus(geom.Pt(0, -4)), geom.Pt(-1, -6)},
		{wording.HangLineName, anchor.Towards(apex, 0.6), geom.Pt(12, 6)},
		{wording.ApexName, apex, geom.Pt(7, -9)},
		{wording.LegName, apex.Towards(at(corner.X, corner.Z), 0.5), geom.Pt(11, 8)},
		{wording.BarName, cord(-s), geom.Pt(9, 9)},
		{wording.GapName, cord(s), geom.Pt(-10, 10)},
		{wording.SideCordName, cord(0), geom.Pt(0, 9)},
		{wording.BedBottomName, floor(s / 3), geom.Pt(0, 5)},
		{wording.EndCapName, floor(f.TailX).Towards(cord(f.TailX), 0.3), geom.Pt(13, -4)},
		{wording.CornerName, at(corner.X, corner.Z), geom.Pt(-20, -4)},
		{wording.LegName, foot.Towards(cord(f.TailX), 0.4), geom.Pt(8, -8)},
	} {
		p.Callout(picture.Text{Text: say[q.name], Size: picture.Letter, Ink: picture.Main, Anchor: piece.Centre}, q.at, q.off)
	}
}
