// Package seam draws cross-sections of the seams, to scale across the seam, and how
// channels, caps and body meet.
//
// A section looks along the seam. The inside of the bed is up; how thick cloth is drawn,
// and how far its layers lie apart, is not to scale. The right side of a cloth has a thick
// edge, the lettered face a thin one.
package seam

import (
	"math"

	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Measures of layers as drawn, mm on paper.
const (
	thick = 1.3 // of a cloth
	ply   = 2.1 // from one layer to the next
)

// what is a piece of cloth in a section.
type what int

// The cloths.
const (
	bodyCloth what = iota
	stripCloth
	facingCloth
	capCloth
	otherPanel
	liningCloth
)

// cloth is one cloth in a section: its way on paper, and on which side of the way its
// right side lies: 1 to the left, −1 to the right.
type cloth struct {
	of    what
	way   geom.Polyline
	right float64
}

// stitches is a row of stitching through a section: where it is, on paper, and from which
// height to which.
type stitches struct{ x, from, to float64 }

// section is a seam, seen along it.
type section struct {
	scale  float64 // mm on paper for each mm across the seam
	zero   float64 // where the seam line stands on paper
	level  float64 // height of the lowest layer
	cloths []cloth
	rows   []stitches
}

// x returns where a place across the seam stands on paper.
func (s section) x(mm float64) float64 { return s.zero + s.scale*mm }

// y returns the height of a layer, counted from the lowest.
func (s section) y(layer float64) float64 { return s.level + ply*layer }

// layers returns how many layers of cloth lie over a place across the seam, mm.
func (s section) layers(mm float64) int {
	n, at := 0, s.x(mm)
	for _, c := range s.cloths {
		for i := 1; i < len(c.way); i++ {
			if (c.way[i-1].X > at) != (c.way[i].X > at) {
				n++
			}
		}
	}
	return n
}

// turned returns a half round from one height to another at a fold whose outside lies at
// x; out is 1 for a fold that points to the right.
func turned(x, from, to, out float64) geom.Polyline {
	const steps = 24
	r := math.Abs(to-from) / 2
	mid := geom.Pt(x-out*r, (from+to)/2)
	var pts geom.Polyline
	for i := range steps + 1 {
		sin, cos := math.Sincos(math.Pi * (float64(i)/steps - 0.5))
		pts = append(pts, mid.Plus(geom.Pt(out*r*cos, (to-from)/2*sin)))
	}
	return pts
}

// draw draws cloths and rows.
func (s section) draw(p *picture.Picture) {
	for _, c := range s.cloths {
		left, right := sides(c.way)
		p.Area(picture.Cloth, append(append(geom.Polyline{}, left...), right.Reversed()...)...)
	}
	for _, c := range s.cloths {
		left, right := sides(c.way)
		wide := [2]float64{picture.Hair, picture.Bold}
		if c.right > 0 {
			wide = [2]float64{picture.Bold, picture.Hair}
		}
		p.Line(picture.Main, wide[0], left...)
		p.Line(picture.Main, wide[1], right...)
		for _, i := range []int{0, len(left) - 1} {
			p.Line(picture.Main, picture.Hair, left[i], right[i])
		}
	}
	for _, r := range s.rows {
		p.Line(picture.Stitch, picture.Bold, geom.Pt(r.x, r.from), geom.Pt(r.x, r.to))
		for _, y := range []float64{r.from, r.to} {
			p.Line(picture.Stitch, picture.Bold, geom.Pt(r.x-0.8, y), geom.Pt(r.x+0.8, y))
		}
	}
}

// sides returns both faces of a cloth along its way.
func sides(way geom.Polyline) (left, right geom.Polyline) {
	for i, q := range way {
		n := way[min(i+1, len(way)-1)].Minus(way[max(i-1, 0)]).Unit().Left().Times(thick / 2)
		left, right = append(left, q.Plus(n)), append(right, q.Minus(n))
	}
	return left, right
}

// number numbers a row of stitching above its upper end, or below its lower one where
// other cloth lies above it.
func number(p *picture.Picture, r stitches, n string) {
	t := picture.Text{Text: n, Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Stitch, Bold: true}
	var places []geom.Point
	for _, off := range []float64{2.4, 3.4, 4.4} {
		places = append(places, geom.Pt(r.x, math.Max(r.from, r.to)+off), geom.Pt(r.x, math.Min(r.from, r.to)-off))
	}
	for _, aside := range []float64{-2, 2, -3, 3} {
		places = append(places, geom.Pt(r.x+aside, math.Max(r.from, r.to)+1))
	}
	p.WriteFree(t, places...)
}

// line letters a line that begins at a place, or near it where a line runs through it there.
func line(p *picture.Picture, x, y float64, t string) {
	p.WriteFree(picture.Text{Text: t, Size: picture.Letter, Ink: picture.Main}, around(geom.Pt(x, y))...)
}

// around returns a place for lettering and places near it, the nearest first.
func around(at geom.Point) geom.Polyline {
	out := geom.Polyline{at}
	for _, far := range []float64{1, 2, 3, 4.5, 6, 8} {
		for _, way := range []geom.Point{
			{X: 0, Y: -1}, {X: 0, Y: 1}, {X: -1}, {X: 1}, {X: -1, Y: -1}, {X: 1, Y: -1}, {X: 1, Y: 1}, {X: -1, Y: 1},
		} {
			out = append(out, at.Plus(way.Times(far)))
		}
	}
	return out
}

// points letters a place from a line of lettering that begins at another.
func points(p *picture.Picture, at, lettering geom.Point, t string) {
	text := picture.Text{Text: t, Size: picture.Letter, Ink: picture.Main}
	if !p.WriteFree(text, around(lettering)...) {
		return
	}
	lettering = p.Last().Min
	to := geom.Pt(lettering.X+1.5, p.Last().Max.Y)
	if lettering.Y > at.Y {
		to.Y = lettering.Y
	}
	p.Line(picture.Quiet, picture.Hair, at, to)
}
