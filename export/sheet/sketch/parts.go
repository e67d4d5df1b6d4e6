package sketch

import (
	"math"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/export/sheet/wording"
	"slingloft/outline/bed"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Parts draws the body flat, in one panel or several, with its lines lettered.
func Parts(d *given.Data, bodies []piece.Piece) picture.Picture {
	say := d.Say.Parts
	box := geom.EmptyBox()
	for _, q := range bodies {
		box = box.Union(q.Cut.Bounds())
	}
	const above = 12.0
	k := flatScale(box)
	p := picture.Picture{ID: "piece-parts", Title: say.Flat.Title, Desc: say.Flat.Desc, Width: picture.Wide, Height: 2*above + k*box.Height()}
	v := picture.View{Scale: k, Shift: geom.Pt(picture.Wide/2, p.Height/2).Minus(box.Center().Times(k))}
	for _, q := range bodies {
		p.Area(picture.Cloth, v.Line(geom.Polyline(q.Cut))...)
		p.Outline(picture.Cut, picture.Medium, v.Line(geom.Polyline(q.Cut)))
		p.Outline(picture.Stitch, picture.Thin, v.Line(geom.Polyline(q.Net)))
		for _, l := range q.Lines {
			if l.Role == piece.BarLine || l.Role == piece.NotchStroke {
				p.Items = append(p.Items, workPath(l, v.Line(l.Points)))
			}
		}
	}
	letterFlat(d, &p, v, box)
	drawEase(d, &p, v, v.At(box.Min).X-9, EaseTimes(d, bodies))
	return p
}

// flatBeside is the room beside the body in its picture, mm.
const flatBeside = 26.0

// flatScale is the scale of the body's picture.
func flatScale(box geom.Box) float64 {
	return min((picture.Wide-2*flatBeside)/box.Width(), 70/box.Height())
}

// EaseTimes returns how many times as large as it is ease is drawn: as large as there is
// room for.
func EaseTimes(d *given.Data, bodies []piece.Piece) int {
	box := geom.EmptyBox()
	for _, q := range bodies {
		box = box.Union(q.Cut.Bounds())
	}
	const room = 7.0
	for _, q := range d.Sewn.Seams {
		if q.Kind == piece.EndToCap {
			for _, times := range []int{20, 10, 5, 2} {
				if float64(times)*math.Abs(q.Ease)*flatScale(box) <= room {
					return times
				}
			}
			return 1
		}
	}
	return 1
}

// drawEase draws the head's end of the body and the seam of its cap beside each other,
// straight, and letters by how much the two differ.
func drawEase(d *given.Data, p *picture.Picture, v picture.View, x float64, times int) {
	for _, q := range d.Sewn.Seams {
		if q.Kind != piece.EndToCap {
			continue
		}
		const apart = 4.0
		say, half := d.Say.Parts.Labels, q.Flat[0]*v.Scale/2
		low, high := v.Shift.Y-half, v.Shift.Y+half
		end := high - float64(times)*q.Ease*v.Scale
		for i, top := range []float64{high, end} {
			at := x - apart*float64(i)
			p.Line(picture.Stitch, picture.Medium, geom.Pt(at, low), geom.Pt(at, top))
			p.Line(picture.Stitch, picture.Thin, geom.Pt(at-1, low), geom.Pt(at+1, low))
		}
		p.Line(picture.Quiet, picture.Hair, geom.Pt(x-apart-6, high), geom.Pt(x, high))
		p.Span(geom.Pt(x-apart-3, end), geom.Pt(x-apart-3, high))
		p.Line(picture.Quiet, picture.Hair, geom.Pt(x-apart-6, end), geom.Pt(x-apart, end))
		letter := func(name wording.Name, at geom.Point, turn float64) {
			p.Write(picture.Text{Text: say[name], Size: picture.Letter, At: at, Anchor: piece.Centre, Turn: turn, Ink: picture.Main})
		}
		letter(wording.EaseName, geom.Pt(x-apart-3, max(high, end)+3), 0)
		letter(wording.EndCapName, geom.Pt(x-apart-2.4, (low+end)/2), math.Pi/2)
		letter(wording.BodyName, geom.Pt(x+2.4, (low+end)/2), math.Pi/2)
		return
	}
}

// letterFlat letters the lines of the body.
func letterFlat(d *given.Data, p *picture.Picture, v picture.View, box geom.Box) {
	say, side := d.Say.Parts.Labels, geom.NewArc(d.Sewn.SideNet.Flat)
	point := func(run float64) geom.Point { q, _ := side.At(run); return v.At(q) }
	head, foot := d.Sewn.BarRuns()
	ends := [2]geom.Point{bed.Head: point(head), bed.Foot: point(foot)}
	mid, low := point((head+foot)/2), v.At(box.Min)
	p.Dashed(picture.Quiet, picture.Hair, geom.Pt(low.X-3, v.Shift.Y), geom.Pt(v.At(box.Max).X+3, v.Shift.Y))
	p.Dashed(picture.Quiet, picture.Hair, ends[bed.Head], ends[bed.Foot])
	girth := geom.Pt(ends[bed.Head].X*0.35+mid.X*0.65, v.Shift.Y)
	half := mid.Y - v.Shift.Y
	p.Upright(geom.Pt(girth.X, girth.Y-half), geom.Pt(girth.X, girth.Y+half), girth.X, say[wording.GirthName])
	p.Upright(mid, geom.Pt(mid.X, ends[bed.Head].Y*0.5+ends[bed.Foot].Y*0.5), mid.X, say[wording.SideDepthName])
	out := func(q geom.Point) geom.Point { return geom.Pt(q.X, q.Y+d.Design.Seam.Side*v.Scale) }
	quarter := point(head + 0.8*(foot-head))
	for _, c := range []struct {
		name    wording.Name
		at, off geom.Point
	}{
		{wording.CutLineName, out(quarter), geom.Pt(10, 9)},
		{wording.NetLineName, quarter, geom.Pt(-6, -7)},
		{wording.BarLineName, geom.Pt(ends[bed.Foot].X, v.Shift.Y-12), geom.Pt(-14, -4)},
		{wording.CentreLineName, geom.Pt(mid.X+14, v.Shift.Y), geom.Pt(8, 6)},
		{wording.NotchName, mid, geom.Pt(-14, -7)},
		{wording.CornerName, point(side.Length()), geom.Pt(15, 6)},
		{wording.AllowanceName, out(point(head + 0.25*(foot-head))), geom.Pt(-6, 8)},
	} {
		p.Callout(picture.Text{Text: say[c.name], Size: picture.Letter, Ink: picture.Main, Anchor: piece.Centre}, c.at, c.off)
	}
}
