package sketch

import (
	"fmt"
	"math"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
)

// TarpFlat draws the tarp as it lies flat, with its panels and loops.
func TarpFlat(d *given.Data) picture.Picture {
	say, t := d.Say.Tarp, d.Further.Tarp
	s := t.Size
	const beside, above = 22.0, 16.0
	k := min((picture.Wide-2*beside)/s.Ridge, 84/s.Width)
	p := picture.Picture{ID: "tarp-flat", Title: say.Flat.Title, Width: picture.Wide, Height: 2*above + k*s.Width,
		Desc: fmt.Sprintf(say.Flat.Desc, d.Cloth(s.Ridge), d.Cloth(s.Width), t.Panels)}
	v := picture.View{Scale: k, Shift: geom.Pt(picture.Wide/2, p.Height/2)}
	for _, r := range t.Plan {
		p.Area(picture.Cloth, v.Line(geom.Polyline(r))...)
		p.Outline(picture.Stitch, picture.Medium, v.Line(geom.Polyline(r)))
	}
	corner := geom.Pt(s.Side/2, s.Width/2)
	for _, at := range []geom.Point{{X: s.Ridge / 2}, corner, geom.Pt(corner.X, -corner.Y)} {
		for _, side := range []float64{1, -1} {
			from := v.At(geom.Pt(side*at.X, at.Y))
			out := from.Minus(v.Shift).Unit().Times(4)
			if at.Y == 0 {
				out = geom.Pt(side*4, 0)
			}
			p.Line(picture.Cord, 0.9, from, from.Plus(out))
		}
	}
	left, right := v.At(geom.Pt(-s.Ridge/2, 0)), v.At(geom.Pt(s.Ridge/2, 0))
	p.Dashed(picture.Quiet, picture.Hair, left, right)
	p.Level(left, right, 4, d.Cloth(s.Ridge))
	p.Upright(v.At(geom.Pt(-corner.X, -corner.Y)), v.At(geom.Pt(-corner.X, corner.Y)), 8, d.Cloth(s.Width))
	words := func(text string, ink picture.Ink, bold bool, at ...geom.Point) {
		p.WriteFree(picture.Text{Text: text, Size: picture.Letter, Anchor: piece.Centre, Ink: ink, Bold: bold}, at...)
	}
	words(say.RidgeName, picture.Main, false, v.Shift.Plus(geom.Pt(20, 2.6)), v.Shift.Plus(geom.Pt(34, 2.6)),
		v.Shift.Plus(geom.Pt(24, 2.6+k*t.Sag)))
	top := v.At(geom.Pt(0, corner.Y))
	words(say.SideName, picture.Main, false, top.Plus(geom.Pt(0, 2)), top.Plus(geom.Pt(0, 4)))
	words(say.LoopName, picture.Main, false, v.At(corner).Plus(geom.Pt(5, 5.6)), v.At(corner).Plus(geom.Pt(-9, 3)))
	end := v.At(geom.Pt((s.Ridge/2+corner.X)/2, s.Width/4))
	words(say.EndName, picture.Main, false, end.Plus(geom.Pt(9, 0)), end.Plus(geom.Pt(11, 2)))
	for i, r := range t.Plan {
		at := v.At(middleOf(r))
		words(given.Capital(t.Pieces[i].Title), picture.Main, true, at, at.Plus(geom.Pt(0, 5)), at.Plus(geom.Pt(0, -5)))
	}
	return p
}

// middleOf returns the middle of a panel on the upright line through its bounds' middle.
func middleOf(r geom.Ring) geom.Point {
	x := r.Bounds().Center().X
	var turned geom.Ring
	for _, p := range r {
		turned = append(turned, geom.Pt(p.Y, p.X))
	}
	all := turned.LevelCrossings(x)
	if len(all) < 2 {
		return r.Bounds().Center()
	}
	return geom.Pt(x, (all[0]+all[len(all)-1])/2)
}

// pitched is a tarp as it hangs: x and z of the hung shape's frame.
type pitched struct {
	d             *given.Data
	middle, ridge float64 // of the ridge: where its middle lies, its height at the ends
	top           float64 // height of the higher apex
	pitch, rain   float64 // rad
}

func pitchedOf(d *given.Data) pitched {
	e := d.Shape.Ends
	top := max(e[hung.Head].ApexZ, e[hung.Foot].ApexZ)
	return pitched{d, (e[hung.Head].ApexX + e[hung.Foot].ApexX) / 2, top + d.Further.Tarp.Size.Rise, top,
		float64(d.Design.Tarp.Pitch), float64(d.Design.Tarp.Rain)}
}

// edge returns how far out and how high the side edge hangs at x.
func (h pitched) edge(x float64) (y, z float64) {
	reach := h.d.Further.Tarp.Reach(x - h.middle)
	return reach * math.Cos(h.pitch), h.ridge - reach*math.Sin(h.pitch)
}

// drop returns where rain that comes down past a point has fallen to at a height.
func (h pitched) drop(past geom.Point, in, z float64) geom.Point {
	return geom.Pt(past.X+in*(past.Y-z)*math.Tan(h.rain), z)
}

// TarpFromEnd draws the tarp over the bed's section at the head bar, and the rain from the
// side that it keeps off.
func TarpFromEnd(d *given.Data) picture.Picture {
	say, h := d.Say.Tarp, pitchedOf(d)
	x := -d.Shape.Problem.Bed.Span / 2
	bed, err := d.Shape.SectionAt(x)
	if err != nil {
		return picture.Picture{}
	}
	low := d.Shape.Problem.Bottom(x)
	y, z := h.edge(x)
	box := geom.BoxOf(geom.Pt(-y, min(low, z)), geom.Pt(y, h.ridge))
	const beside, below, above = 16.0, 12.0, 6.0
	k := min((picture.Half-2*beside)/box.Width(), 62/box.Height())
	p := picture.Picture{ID: "tarp-end", Title: say.FromEnd.Title, Width: picture.Half, Height: below + above + k*box.Height(),
		Desc: fmt.Sprintf(say.FromEnd.Desc, d.Style.Angle(h.pitch), d.Style.Angle(h.rain))}
	v := picture.View{Scale: k, Shift: geom.Pt(picture.Half/2, below-k*box.Min.Y)}
	var half geom.Polyline
	const n = 24
	for i := range n + 1 {
		a, b := bed.Point(bed.Girth() / 2 * float64(i) / n)
		half = append(half, geom.Pt(a, low+b))
	}
	for _, side := range []float64{1, -1} {
		var l geom.Polyline
		for _, q := range half {
			l = append(l, geom.Pt(side*q.X, q.Y))
		}
		p.Line(picture.Main, picture.Medium, v.Line(l)...)
		p.Line(picture.Main, picture.Bold, v.At(geom.Pt(0, h.ridge)), v.At(geom.Pt(side*y, z)))
	}
	cord := half[n]
	p.Line(picture.Bar, picture.Bold, v.At(geom.Pt(-cord.X, cord.Y)), v.At(cord))
	past := geom.Pt(-y, z)
	from := h.drop(past, 1, h.ridge)
	to := h.drop(past, 1, box.Min.Y)
	p.Arrow(picture.Third, picture.Thin, v.At(from.Towards(past, 0.3)), v.At(to))
	letterRain(&p, say.RainName, v.At(from.Towards(past, 0.3)), v.At(to))
	p.Dot(picture.Mark, v.At(geom.Pt(0, h.top)), 0.7)
	p.WriteFree(picture.Text{Text: say.ApexName, Size: picture.Small, Ink: picture.Mark}, v.At(geom.Pt(0, h.top)).Plus(geom.Pt(1.4, -2.4)))
	p.Upright(v.At(geom.Pt(0, h.top)), v.At(geom.Pt(0, h.ridge)), picture.Half-9, d.Cloth(d.Further.Tarp.Size.Rise))
	p.Level(v.At(geom.Pt(0, z)), v.At(geom.Pt(y, z)), 4, d.Cloth(y))
	return p
}

// TarpFromSide draws the tarp along the bed, and the rain from an end that it keeps off.
func TarpFromSide(d *given.Data) picture.Picture {
	say, h, s := d.Say.Tarp, pitchedOf(d), d.Further.Tarp.Size
	head, foot := d.Shape.Ends[hung.Head], d.Shape.Ends[hung.Foot]
	from, to := h.middle-s.Ridge/2, h.middle+s.Ridge/2
	low := min(d.Shape.Problem.Bottom(0), h.ridge-s.Width/2*math.Sin(h.pitch))
	const beside, below, above = 20.0, 5.0, 13.0
	k := min((picture.Wide-2*beside)/s.Ridge, 70/(h.ridge-low))
	p := picture.Picture{ID: "tarp-side", Title: say.FromSide.Title, Width: picture.Wide, Height: below + above + k*(h.ridge-low),
		Desc: fmt.Sprintf(say.FromSide.Desc, d.Cloth(s.Ridge), d.Cloth(s.Rise), d.Style.Angle(h.rain))}
	v := picture.View{Scale: k, Shift: geom.Pt(picture.Wide/2-k*h.middle, below-k*low)}
	const n = 60
	var area geom.Polyline
	for i := range n + 1 {
		part := 2*float64(i)/n - 1
		area = append(area, geom.Pt(h.middle+part*s.Ridge/2, h.ridge-s.Dip*(1-part*part)))
	}
	for _, l := range d.Further.Tarp.Edges() {
		for _, q := range l {
			area = append(area, geom.Pt(h.middle+q.X, h.ridge-q.Y*math.Sin(h.pitch)))
		}
	}
	p.Area(picture.Cloth, v.Line(area)...)
	p.Outline(picture.Main, picture.Medium, v.Line(area))
	var cords, floor geom.Polyline
	a, z := d.Shape.TailEnds()
	for i := range n + 1 {
		at := a + (z-a)*float64(i)/n
		q := d.Shape.At(at)
		cords, floor = append(cords, geom.Pt(at, q.Z)), append(floor, geom.Pt(at, q.Bottom))
	}
	cords = append(append(geom.Polyline{geom.Pt(head.ApexX, head.ApexZ)}, cords...), geom.Pt(foot.ApexX, foot.ApexZ))
	p.Line(picture.Cord, picture.Medium, v.Line(cords)...)
	p.Line(picture.Main, picture.Thin, v.Line(floor)...)
	for _, e := range []struct {
		end  hung.EndShape
		sign float64
	}{{head, -1}, {foot, 1}} {
		run := (picture.Wide/2 - 3) / k
		run -= math.Abs(e.end.ApexX - h.middle)
		apex := geom.Pt(e.end.ApexX, e.end.ApexZ)
		out := min(run, (h.ridge+above*0.6/k-apex.Y)/e.end.Slope)
		p.Line(picture.Cord, picture.Thin, v.At(apex), v.At(apex.Plus(geom.Pt(e.sign*out, out*e.end.Slope))))
		p.Dot(picture.Mark, v.At(apex), 0.7)
	}
	past := geom.Pt(to, h.ridge)
	begin := geom.Pt(to+3/k*math.Tan(h.rain), h.ridge+3/k)
	p.Arrow(picture.Third, picture.Thin, v.At(begin), v.At(h.drop(past, -1, low)))
	letterRain(&p, say.RainName, v.At(begin), v.At(h.drop(past, -1, low)))
	p.Level(v.At(geom.Pt(from, h.ridge)), v.At(geom.Pt(to, h.ridge)), p.Height-5, d.Cloth(s.Ridge))
	p.Upright(v.At(geom.Pt(from, h.top)), v.At(geom.Pt(from, h.ridge)), v.At(geom.Pt(from, 0)).X-8, d.Cloth(s.Rise))
	p.WriteFree(picture.Text{Text: say.ApexName, Size: picture.Small, Ink: picture.Mark},
		around(v.At(geom.Pt(head.ApexX, head.ApexZ)))...)
	return p
}

// letterRain letters the arrow of the rain beside it, near where it begins.
func letterRain(p *picture.Picture, text string, from, to geom.Point) {
	t := picture.Text{Text: text, Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Third}
	beside := to.Minus(from).Unit().Left().Times(picture.Width(text, t.Size, false)/2 + 2)
	var places []geom.Point
	for _, part := range []float64{0.05, 0.15, 0.3, 0.45, 0.6} {
		at := from.Towards(to, part)
		places = append(places, at.Plus(beside), at.Minus(beside))
	}
	p.WriteFree(t, places...)
}

// around returns places for a short word beside a point, the nearest first.
func around(at geom.Point) []geom.Point {
	var out []geom.Point
	for _, d := range []geom.Point{
		{X: 1.5, Y: 1.5}, {X: 2, Y: -3}, {X: -7.5, Y: -3}, {X: -7.5, Y: 2.5}, {X: 3, Y: 4}, {X: -3, Y: 4.5}, {X: -3, Y: -6},
		{X: 5, Y: 7},
	} {
		out = append(out, at.Plus(d))
	}
	return out
}

// TarpCorner draws a finished corner from its lettered face: the patch under the hem, and
// the loop.
func TarpCorner(d *given.Data) picture.Picture {
	say, t := d.Say.Tarp, d.Design.Tarp
	corner, one, inner, other := d.Further.Tarp.Patch[0], d.Further.Tarp.Patch[1], d.Further.Tarp.Patch[2], d.Further.Tarp.Patch[3]
	k := 34 / t.Patch
	p := picture.Picture{ID: "tarp-corner", Title: say.Corner.Title, Width: picture.Half, Height: 66,
		Desc: fmt.Sprintf(say.Corner.Desc, d.Cloth(t.Patch))}
	v := picture.View{Scale: k, Shift: geom.Pt(64, 52).Minus(corner.Times(k))}
	u, w := one.Minus(corner).Unit(), other.Minus(corner).Unit()
	in := u.Plus(w).Unit()
	far := 1.2 * t.Patch
	p.Area(picture.Cloth, v.At(corner), v.At(corner.Plus(w.Times(far))), v.At(corner.Plus(u.Plus(w).Times(far))),
		v.At(corner.Plus(u.Times(far))))
	p.Line(picture.Main, picture.Medium, v.At(corner.Plus(u.Times(far))), v.At(corner), v.At(corner.Plus(w.Times(far))))
	patch := v.Line(geom.Polyline{corner, one, inner, other})
	p.Area(picture.Body, patch...)
	p.Outline(picture.Main, picture.Thin, patch)
	p.Dashed(picture.Stitch, picture.Thin, v.At(one.Plus(in.Times(-2/k))), v.At(inner.Plus(in.Times(-2/k))), v.At(other.Plus(in.Times(-2/k))))
	fold := corner.Plus(u.Plus(w).Times(t.Hem / math.Abs(u.Cross(w))))
	p.Dashed(picture.Stitch, picture.Medium, v.At(fold.Plus(u.Times(far-t.Hem))), v.At(fold), v.At(fold.Plus(w.Times(far-t.Hem))))
	across := in.Left().Times(2.2 / k)
	at := func(along, side float64) geom.Point {
		return v.At(corner.Plus(in.Times(along / k)).Plus(across.Times(side)))
	}
	tape := geom.Polyline{at(-6, 1), at(16, 1), at(16, -1), at(-6, -1)}
	p.Area(picture.Cloth, tape...)
	p.Outline(picture.Cord, picture.Medium, tape)
	p.Line(picture.Stitch, picture.Thin, at(3, 0.7), at(14.5, -0.7), at(14.5, 0.7), at(3, -0.7), at(3, 0.7), at(14.5, 0.7))
	p.Line(picture.Stitch, picture.Thin, at(3, -0.7), at(14.5, -0.7))
	note(&p, at(-6, 0).Plus(geom.Pt(3, 1)), say.LoopName)
	p.WriteFree(picture.Text{Text: say.PatchName, Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Main},
		v.At(inner).Plus(geom.Pt(8, 6)), v.At(inner).Plus(geom.Pt(3, 9)))
	p.Dimension(v.At(other), v.At(corner), 5, d.Cloth(t.Patch))
	note(&p, geom.Pt(3, 4), say.UnderUp)
	return p
}
