// Package splice draws how the cords are made: the working end with its taper, the fid at
// its mark, crossings and eyes, buries, lock stitching, corners and the chain on its tape.
//
// Where a picture says so it is to scale along the cord, by the marks that the cord has;
// how thick cords are drawn is not, but for the gap round a bar's tip.
package splice

import (
	"math"

	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
)

// look is how a cord is told from another.
type look struct{ fill, edge picture.Ink }

func sideLook() look { return look{picture.Buried, picture.Cord} }
func legLook() look  { return look{picture.Body, picture.Bar} }

// Thicknesses of cords as drawn, mm on paper: one by itself, the same inside another, and
// one that is filled.
const (
	bare   = 3.0
	inner  = 1.8
	filled = 4.6
)

// edges returns both edges of a cord along a path, as wide at each running length as wide
// says.
func edges(path geom.Polyline, wide func(s float64) float64) (left, right geom.Polyline) {
	run := 0.0
	for i, q := range path {
		from, to := path[max(i-1, 0)], path[min(i+1, len(path)-1)]
		if i > 0 {
			run += q.Dist(path[i-1])
		}
		n := to.Minus(from).Unit().Left().Times(wide(run) / 2)
		left, right = append(left, q.Plus(n)), append(right, q.Minus(n))
	}
	return left, right
}

// even is a cord of one thickness.
func even(wide float64) func(float64) float64 { return func(float64) float64 { return wide } }

// rope draws a cord along a path.
func rope(p *picture.Picture, k look, path geom.Polyline, wide func(float64) float64) {
	plain(p, k, path, wide)
	p.Items = append(p.Items, picture.Path{Lines: braid(path, wide), Stroke: k.edge, Width: picture.Hair})
}

// plain draws a cord without its braid.
func plain(p *picture.Picture, k look, path geom.Polyline, wide func(float64) float64) {
	left, right := edges(path, wide)
	p.Area(k.fill, append(append(geom.Polyline{}, left...), right.Reversed()...)...)
	p.Line(k.edge, picture.Thin, left...)
	p.Line(k.edge, picture.Thin, right...)
}

// braidStep is from one strand of a braid as drawn to the next, mm on paper.
const braidStep = 1.7

// braid returns the strands of a braid as arrowheads along its path.
func braid(path geom.Polyline, wide func(float64) float64) []geom.Polyline {
	arc := geom.NewArc(path)
	var out []geom.Polyline
	for s := braidStep / 2; s < arc.Length()-braidStep/2; s += braidStep {
		q, dir := arc.At(s)
		w := wide(s) / 2
		n, back := dir.Left().Times(w), dir.Times(0.7*w)
		out = append(out, geom.Polyline{q.Plus(n).Minus(back), q, q.Minus(n).Minus(back)})
	}
	return out
}

// ghost draws a cord that lies inside another.
func ghost(p *picture.Picture, k look, path geom.Polyline, wide func(float64) float64) {
	left, right := edges(path, wide)
	for _, l := range []geom.Polyline{left, right} {
		p.Items = append(p.Items, picture.Path{Lines: []geom.Polyline{l}, Stroke: k.edge, Width: picture.Thin, Dash: []float64{0.9, 0.6}})
	}
}

// tapering is the thickness of a cord that is whole up to a running length and thin at
// another.
func tapering(wide, from, to float64) func(float64) float64 {
	const thin = 0.3
	return func(s float64) float64 {
		t := math.Min(math.Max((s-from)/math.Max(to-from, 1e-9), 0), 1)
		return wide * (1 - (1-thin)*t)
	}
}

// curve returns a smooth line through points (Catmull and Rom, 1974, from memory).
func curve(pts ...geom.Point) geom.Polyline {
	const steps = 12
	var out geom.Polyline
	for i := 0; i+1 < len(pts); i++ {
		a, b, c, d := pts[max(i-1, 0)], pts[i], pts[i+1], pts[min(i+2, len(pts)-1)]
		for n := range steps {
			t := float64(n) / steps
			q := b.Times(2).Plus(c.Minus(a).Times(t)).
				Plus(a.Times(2).Minus(b.Times(5)).Plus(c.Times(4)).Minus(d).Times(t * t)).
				Plus(b.Times(3).Minus(a).Minus(c.Times(3)).Plus(d).Times(t * t * t))
			out = append(out, q.Times(0.5))
		}
	}
	return append(out, pts[len(pts)-1])
}

// straight returns a level line.
func straight(x0, x1, y float64) geom.Polyline { return geom.Polyline{{X: x0, Y: y}, {X: x1, Y: y}} }

// stroke draws a mark across a cord.
func stroke(p *picture.Picture, at geom.Point, wide float64) {
	p.Line(picture.Main, picture.Medium, at.Plus(geom.Pt(0, wide/2+0.6)), at.Minus(geom.Pt(0, wide/2+0.6)))
}

// eyelet is a place where a cord is opened and another passes through it: its strands part
// into two.
type eyelet struct {
	look
	at, along geom.Point
	wide      float64
}

// Measures of an eyelet, mm on paper: half its length and how far its halves part.
const (
	openHalf = 5.0
	openWide = 2.5
)

// half returns one of an eyelet's halves, on the left of its way or on the right.
func (e eyelet) half(side float64) geom.Polyline {
	const steps = 16
	n := e.along.Unit().Left()
	var out geom.Polyline
	for i := range steps + 1 {
		t := 2*float64(i)/steps - 1
		off := side * (e.wide/4 + openWide*math.Pow(math.Cos(math.Pi*t/2), 2))
		out = append(out, e.at.Plus(e.along.Unit().Times(t*openHalf)).Plus(n.Times(off)))
	}
	return out
}

// through draws a cord that passes through an eyelet: over one of its halves and under the
// other.
func through(p *picture.Picture, e eyelet, k look, path geom.Polyline, wide float64) {
	plain(p, e.look, e.half(-1), even(e.wide/2))
	rope(p, k, path, even(wide))
	plain(p, e.look, e.half(1), even(e.wide/2))
}

// without returns the parts of a path outside a stretch around a running length, which an
// eyelet takes.
func without(path geom.Polyline, at float64) (before, after geom.Polyline) {
	arc := geom.NewArc(path)
	return arc.Between(0, at-openHalf), arc.Between(at+openHalf, arc.Length())
}
