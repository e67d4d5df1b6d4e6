package seam

import (
	"fmt"
	"math"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/design"
	"slingloft/outline/geom"
)

// Opening draws the opening of a channel at a bar's tip, from the outside, to scale: the
// gap drawn out of it, the tip between its cords.
func Opening(d *given.Data) picture.Picture {
	say, c, gap := d.Say.Stitching, d.Design.Channel, d.Design.Splice.TipGap
	words := say.SlitOpening
	if c.Kind == design.Facing {
		words = say.SeamOpening
	}
	k := math.Min(58/c.Opening, 20/c.Depth)
	const mid, seam = 44.0, 15.0
	fold := seam + k*c.Depth
	x := func(mm float64) float64 { return mid + k*mm }
	half, high := c.Opening/2, k*d.Design.Side.Diameter+10.0 // room for the strands
	p := picture.Picture{ID: "seam-opening", Title: words.Title, Desc: fmt.Sprintf(words.Desc, d.Cloth(c.Opening), d.Cloth(gap)),
		Width: picture.Half, Height: fold + high + 13}
	p.Area(picture.Cloth, geom.Pt(0.5, 2), geom.Pt(87.5, 2), geom.Pt(87.5, fold), geom.Pt(0.5, fold))
	p.Line(picture.Main, picture.Medium, geom.Pt(0.5, fold), geom.Pt(x(-half), fold))
	p.Line(picture.Main, picture.Medium, geom.Pt(x(half), fold), geom.Pt(87.5, fold))
	for i := range d.Design.Seam.Rows {
		y := seam + k*float64(i)*d.Design.Seam.RowSpacing
		p.Dashed(picture.Stitch, picture.Medium, geom.Pt(0.5, y), geom.Pt(87.5, y))
	}
	lips(&p, x(-half), x(half), fold)
	outOf(&p, x, gap, fold, k*d.Design.Side.Diameter)
	p.Dashed(picture.Mark, picture.Thin, geom.Pt(mid, 2), geom.Pt(mid, fold))
	p.Level(geom.Pt(x(-half), fold), geom.Pt(x(half), fold), fold+high+4, fmt.Sprintf(say.Measured, say.OpeningOf, d.Cloth(c.Opening)))
	p.Level(geom.Pt(x(-gap/2), fold+3), geom.Pt(x(gap/2), fold+3), fold+high-1.4, fmt.Sprintf(say.Measured, say.GapOf, d.Cloth(gap)))
	p.Upright(geom.Pt(x(half)+6, seam), geom.Pt(x(half)+6, fold), 83, d.Cloth(c.Depth))
	line(&p, 2, fold+high+9.6, say.TipIn)
	line(&p, 2, 4, say.BarNotch)
	p.Line(picture.Quiet, picture.Hair, geom.Pt(2+picture.Width(say.BarNotch, picture.Letter, false)+0.8, 5), geom.Pt(mid, 6))
	return p
}

// lips draws the bound edges of an opening.
func lips(p *picture.Picture, from, to, y float64) {
	var pts []geom.Polyline
	for x := from; x <= to+0.01; x += 1.1 {
		pts = append(pts, geom.Polyline{{X: x, Y: y - 1.4}, {X: x, Y: y}})
	}
	p.Items = append(p.Items, picture.Path{Lines: pts, Stroke: picture.Stitch, Width: picture.Medium})
	p.Line(picture.Inside, picture.Medium, geom.Pt(from, y), geom.Pt(to, y))
}

// tipWide is how thick a bar's tip is drawn, mm on paper.
const tipWide = 2.6

// outOf draws the cord in the channel and both its strands of the gap out of the opening.
func outOf(p *picture.Picture, x func(float64) float64, gap, fold, thick float64) {
	in := fold - thick/2 - 0.8
	for _, side := range []float64{-1, 1} {
		end := x(side * gap / 2)
		edge := 0.5
		if side > 0 {
			edge = 87.5
		}
		for _, off := range []float64{-thick / 2, thick / 2} {
			p.Items = append(p.Items, picture.Path{Lines: []geom.Polyline{{{X: edge, Y: in + off}, {X: end, Y: in + off}}}, Stroke: picture.Cord,
				Width: picture.Thin, Dash: []float64{0.9, 0.6}})
		}
	}
	a, b := x(-gap/2), x(gap/2)
	mid := (a + b) / 2
	for _, lift := range []float64{1.6, 1.6 + thick + tipWide} {
		up := eased(geom.Pt(a, in), geom.Pt(mid-3, in+lift))
		down := eased(geom.Pt(mid+3, in+lift), geom.Pt(b, in))
		p.Line(picture.Cord, math.Max(thick, 0.8), append(up, down...)...)
	}
	p.Dot(picture.Bar, geom.Pt(mid, in+1.6+(thick+tipWide)/2), tipWide/2)
}
