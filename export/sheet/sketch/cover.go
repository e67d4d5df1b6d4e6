package sketch

import (
	"fmt"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/insectnet"
	"slingloft/outline/piece"
	"slingloft/outline/room"
)

// CoverFromSide draws the net over the bed along it.
func CoverFromSide(d *given.Data) picture.Picture {
	say, c := d.Say.Cover, d.Further.Cover.Space
	head, foot := d.Shape.Ends[hung.Head], d.Shape.Ends[hung.Foot]
	ridge := [2]geom.Point{{X: c.Side.Far[0].X, Y: c.Side.Far[0].Z}, {}}
	last := len(c.Side.Far) - 1
	ridge[1] = geom.Pt(c.Side.Far[last].X, c.Side.Far[last].Z)
	low, high := d.Shape.Problem.Bottom(0), max(ridge[0].Y, ridge[1].Y, head.ApexZ, foot.ApexZ)
	const beside, below, above = 16.0, 6.0, 14.0
	k := min((picture.Wide-2*beside)/(foot.ApexX-head.ApexX), 62/(high-low))
	p := picture.Picture{ID: "cover-side", Title: say.FromSide.Title, Width: picture.Wide, Height: below + above + k*(high-low),
		Desc: fmt.Sprintf(say.FromSide.Desc, d.Cloth(c.Line.Between))}
	v := picture.View{Scale: k, Shift: geom.Pt(picture.Wide/2-k*(head.ApexX+foot.ApexX)/2, below-k*low)}
	var net geom.Polyline
	for _, q := range c.Side.Near {
		net = append(net, geom.Pt(q.X, q.Z))
	}
	area := append(append(geom.Polyline{}, net...), ridge[1], ridge[0])
	p.Area(picture.Cloth, v.Line(area)...)
	p.Outline(picture.Main, picture.Thin, v.Line(area))
	var cords, floor geom.Polyline
	a, z := d.Shape.TailEnds()
	const n = 60
	for i := range n + 1 {
		at := a + (z-a)*float64(i)/n
		q := d.Shape.At(at)
		cords, floor = append(cords, geom.Pt(at, q.Z)), append(floor, geom.Pt(at, q.Bottom))
	}
	apexes := [2]geom.Point{{X: head.ApexX, Y: head.ApexZ}, {X: foot.ApexX, Y: foot.ApexZ}}
	p.Line(picture.Cord, picture.Medium, v.Line(append(append(geom.Polyline{apexes[0]}, cords...), apexes[1]))...)
	p.Line(picture.Main, picture.Thin, v.Line(floor)...)
	way := ridge[1].Minus(ridge[0]).Unit()
	line := [2]geom.Point{ridge[0].Minus(way.Times(beside * 0.7 / k)), ridge[1].Plus(way.Times(beside * 0.7 / k))}
	if d.Design.Cover.Height == 0 {
		line = apexes
	}
	p.Line(picture.Third, picture.Medium, v.At(line[0]), v.At(line[1]))
	for _, at := range apexes {
		p.Dot(picture.Mark, v.At(at), 0.7)
	}
	p.WriteFree(picture.Text{Text: say.ApexName, Size: picture.Small, Ink: picture.Mark}, around(v.At(apexes[0]))...)
	mid := v.At(ridge[0].Towards(ridge[1], 0.5))
	p.WriteFree(picture.Text{Text: say.RidgeName, Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Third},
		mid.Plus(geom.Pt(0, 2)), mid.Plus(geom.Pt(0, 3)))
	p.WriteFree(picture.Text{Text: say.NetName, Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Main},
		v.At(ridge[0].Towards(ridge[1], 0.3)).Plus(geom.Pt(0, -12)), v.At(ridge[0].Towards(ridge[1], 0.6)).Plus(geom.Pt(0, -12)))
	if c.Line.Between > 0 && d.Design.Cover.Height == 0 {
		p.Level(v.At(apexes[0]), v.At(apexes[1]), p.Height-4, d.Cloth(c.Line.Between))
	}
	zipFromSide(d, &p, v)
	return p
}

// zipFromSide draws the zip of a side where it hangs: that part of the way from its panel's
// rim up to the ridge that it lies at, flat.
func zipFromSide(d *given.Data, p *picture.Picture, v picture.View) {
	c, zip := d.Further.Cover.Space, d.Further.Cover.Zip
	if zip.Opens == 0 { // up an end
		return
	}
	bay := c.Side.Near[c.Tips[0] : c.Tips[1]+1]
	n := len(bay) - 1
	long := zip.Room
	var line geom.Polyline
	for i, q := range bay {
		along := float64(i) / float64(n)
		if s := along*(long+100) - 50; s < (long-zip.Long)/2 || s > (long+zip.Long)/2 {
			continue
		}
		far := c.Side.Far[c.Tips[0]+i]
		up := d.Design.Cover.ZipUp / far.Minus(q).Len()
		at := q.PlusTimes(far.Minus(q), up)
		line = append(line, geom.Pt(at.X, at.Z))
	}
	if len(line) < 2 {
		return
	}
	p.Line(picture.Stitch, picture.Bold, v.Line(line)...)
	mid := v.At(line[len(line)/2])
	p.WriteFree(picture.Text{Text: d.Say.Cover.ZipName, Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Stitch},
		mid.Plus(geom.Pt(0, 2)), mid.Plus(geom.Pt(12, 2.4)))
}

// CoverFromEnd draws the section of bed, sleeper and net through the shoulders.
func CoverFromEnd(d *given.Data) picture.Picture {
	say, c := d.Say.Cover, d.Further.Cover.Space
	who := d.Design.Sleeper
	who.Lies = design.OnBack
	x, body := room.Place(room.Shoulders, design.OnBack, who, d.Design.Bed)
	low, cloth := insectnet.Lies(d.Shape, x, body)
	i := 0
	for i < len(c.Side.Near)-1 && c.Side.Near[i].X < x {
		i++
	}
	rim, top := c.Side.Near[i], c.Side.Far[i]
	const beside, below, above = 14.0, 8.0, 9.0
	k := min((picture.Half-2*beside)/(2*rim.Y), 60/(top.Z-low))
	p := picture.Picture{ID: "cover-end", Title: say.FromEnd.Title, Width: picture.Half, Height: below + above + k*(top.Z-low),
		Desc: fmt.Sprintf(say.FromEnd.Desc, d.Cloth(c.Free.From[design.OnBack][1]))}
	v := picture.View{Scale: k, Shift: geom.Pt(picture.Half/2, below-k*low)}
	var around geom.Polyline
	for _, q := range body.Outline() {
		around = append(around, geom.Pt(q.X, low+q.Y))
	}
	p.Area(picture.Body, v.Line(around)...)
	p.Outline(picture.Quiet, picture.Thin, v.Line(around))
	p.Line(picture.Main, picture.Medium, v.Line(cloth)...)
	for _, s := range []bed.Side{bed.Left, bed.Right} {
		p.Line(picture.Stitch, picture.Medium, v.At(geom.Pt(s.Sign()*rim.Y, rim.Z)), v.At(geom.Pt(0, top.Z)))
		p.Dot(picture.Cord, v.At(geom.Pt(s.Sign()*rim.Y, rim.Z)), 0.8)
	}
	ridge := v.At(geom.Pt(0, top.Z))
	p.Dot(picture.Third, ridge, 0.9)
	p.WriteFree(picture.Text{Text: say.RidgeName, Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Third},
		ridge.Plus(geom.Pt(0, 2.5)), ridge.Plus(geom.Pt(9, 1)))
	mid := v.At(geom.Pt(rim.Y*0.55, rim.Z+(top.Z-rim.Z)*0.45))
	p.WriteFree(picture.Text{Text: say.NetName, Size: picture.Letter, Ink: picture.Stitch}, mid.Plus(geom.Pt(4, 2)), mid.Plus(geom.Pt(7, 4)))
	p.Upright(v.At(geom.Pt(0, low+body.Depth)), ridge, picture.Half/2, d.Cloth(top.Z-low-body.Depth))
	return p
}

// CoverOnStrip draws the lower edge of a side on a channel strip that lies flat.
func CoverOnStrip(d *given.Data) picture.Picture {
	say, c := d.Say.Cover, d.Design.Cover
	p := picture.Picture{ID: "cover-strip", Title: say.OnStrip.Title, Width: picture.Half, Height: 64,
		Desc: fmt.Sprintf(say.OnStrip.Desc, d.Cloth(c.Hem))}
	const left, right, middle, low, high, hem = 6.0, 64.0, 30.0, 12.0, 48.0, 8.0
	box := func(a, b float64) geom.Polyline {
		return geom.Polyline{{X: left, Y: a}, {X: right, Y: a}, {X: right, Y: b}, {X: left, Y: b}}
	}
	p.Area(picture.Cloth, box(low, high)...)
	p.Outline(picture.Main, picture.Medium, box(low, high))
	net := geom.Polyline{{X: left + 5, Y: middle - hem}, {X: right - 5, Y: middle - hem}, {X: right - 5, Y: 58}, {X: left + 5, Y: 58}}
	p.Line(picture.Quiet, picture.Thin, net[3], net[0], net[1], net[2])
	for x := left + 8; x < right-5; x += 3 {
		p.Line(picture.Ghost, picture.Hair, geom.Pt(x, middle-hem), geom.Pt(x, 58))
	}
	p.Dashed(picture.Fold, picture.Thin, geom.Pt(left, middle), geom.Pt(right, middle))
	for _, y := range []float64{middle - 1.6, middle - hem + 1.6} {
		p.Dashed(picture.Stitch, picture.Medium, geom.Pt(left+5, y), geom.Pt(right-5, y))
	}
	name := func(text string, ink picture.Ink, at, off geom.Point) {
		p.Callout(picture.Text{Text: text, Size: picture.Letter, Ink: ink}, at, off)
	}
	name(say.FoldName, picture.Fold, geom.Pt(right, middle), geom.Pt(5, 3))
	name(say.StripName, picture.Main, geom.Pt(right, low+4), geom.Pt(5, -3))
	name(say.NetName, picture.Quiet, geom.Pt(right-5, 54), geom.Pt(9, 0))
	p.Upright(geom.Pt(left+5, middle-hem), geom.Pt(left+5, middle), 2.5, d.Cloth(c.Hem))
	return p
}

// ZipEnd draws an end of the zip in the net.
func ZipEnd(d *given.Data) picture.Picture {
	say := d.Say.Cover
	p := picture.Picture{ID: "cover-zip", Title: say.ZipSlit.Title, Width: picture.Half, Height: 40,
		Desc: fmt.Sprintf(say.ZipSlit.Desc, d.Cloth(d.Design.Cover.ZipWidth))}
	const left, end, low, high, middle, fork = 4.0, 62.0, 12.0, 28.0, 20.0, 8.0
	p.Area(picture.Cloth, geom.Pt(left, 4), geom.Pt(78, 4), geom.Pt(78, 36), geom.Pt(left, 36))
	p.Dashed(picture.Stitch, picture.Medium, geom.Pt(left, low), geom.Pt(end, low), geom.Pt(end, high), geom.Pt(left, high))
	p.Line(picture.Inside, picture.Medium, geom.Pt(left, middle), geom.Pt(end-fork, middle))
	for _, y := range []float64{low, high} {
		p.Line(picture.Inside, picture.Medium, geom.Pt(end-fork, middle), geom.Pt(end-0.8, y+(middle-y)*0.1))
	}
	p.WriteFree(picture.Text{Text: say.SlitName, Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Inside}, geom.Pt(30, 22.4), geom.Pt(30, 23.5))
	p.WriteFree(picture.Text{Text: say.RowName, Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Stitch}, geom.Pt(30, 30.2), geom.Pt(30, 31.5))
	p.Upright(geom.Pt(end, low), geom.Pt(end, high), 70, d.Cloth(d.Design.Cover.ZipWidth))
	return p
}
