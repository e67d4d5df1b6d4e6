package sketch

import (
	"fmt"
	"math"

	"slingloft/export"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Lay draws the roll or sheet number i of the lays.
func Lay(d *given.Data, i int) picture.Picture {
	l, say := d.Lays[i], d.Say.Lay
	const left, right, above = 15.0, 6.0, 3.0
	kept, below := keptIn(l), 11.0
	if len(kept) > 0 {
		below += 4 // room for the legend
	}
	tallest := 96.0 // two template sheets on a printed page
	if l.Roll {
		tallest = 130
	}
	k := math.Min((picture.Wide-left-right)/l.Width, tallest/l.Height)
	p := picture.Picture{ID: fmt.Sprintf("lay-%d", i+1), Title: d.LayName(i), Width: picture.Wide, Height: below + above + k*l.Height}
	v := picture.View{Scale: k, Shift: geom.Pt(left+(picture.Wide-left-right-k*l.Width)/2, below)}
	drawStock(&p, v, l, kept)
	for n, it := range l.Items {
		letterItem(&p, v, it, n+1)
	}
	p.Level(v.At(geom.Pt(0, 0)), v.At(geom.Pt(l.Width, 0)), below-7, d.Round(l.Width))
	p.Upright(v.At(geom.Pt(0, 0)), v.At(geom.Pt(0, l.Height)), v.Shift.X-6, d.Round(l.Height))
	p.Desc = fmt.Sprintf(say.Desc, len(l.Items), d.Round(l.Width), d.Round(l.Height), given.Percent(l.Use))
	if len(kept) > 0 {
		words := keptWords(d, kept)
		legend(&p, words)
		p.Desc += " " + fmt.Sprintf(say.Hatched, words)
	}
	if l.Roll {
		p.Desc += " " + say.Runs
		p.Write(picture.Text{Text: say.Selvedge, Size: picture.Small, At: v.At(geom.Pt(0, 0)).Plus(geom.Pt(0, -3.4)),
			Anchor: piece.Start, Ink: picture.Quiet})
		p.Write(picture.Text{Text: say.CutEnd, Size: picture.Small, At: v.At(geom.Pt(0, 0)).Plus(geom.Pt(-1.6, 0)),
			Anchor: piece.Start, Turn: math.Pi / 2, Ink: picture.Quiet})
	}
	return p
}

// drawStock draws the stock, what is kept clear of it and the pieces on it.
func drawStock(p *picture.Picture, v picture.View, l given.Lay, kept []given.Kept) {
	for _, it := range l.Items {
		p.Area(picture.Cloth, v.Line(geom.Polyline(it.Piece.Cut.Moved(it.Motion)))...)
	}
	edge := geom.BoxOf(geom.Pt(0, 0), geom.Pt(l.Width, l.Height))
	p.Outline(picture.Quiet, picture.Medium, v.Line(geom.Polyline(edge.Ring())))
	for _, a := range kept {
		drawKept(p, v.Line(geom.Polyline(a.Outline)))
	}
	for _, it := range l.Items {
		cut := []geom.Polyline{v.Line(geom.Polyline(it.Piece.Cut.Moved(it.Motion)))}
		for _, h := range it.Piece.Holes {
			cut = append(cut, v.Line(geom.Polyline(h.Moved(it.Motion))))
		}
		p.Outline(picture.Cut, picture.Thin, cut...)
	}
}

// letterItem writes a laid piece's number and name into it, upright where that is
// the only way, or else its number alone.
func letterItem(p *picture.Picture, v picture.View, it export.Item, n int) {
	cut := it.Piece.Cut.Moved(it.Motion)
	t := picture.Text{Text: fmt.Sprintf("%d %s", n, Titled(it.Piece)), Size: picture.Small, Anchor: piece.Centre, Ink: picture.Main}
	need := (picture.Width(t.Text, t.Size, false) + 1) / v.Scale
	if p.WriteFree(t, v.Line(places(cut, need))...) {
		return
	}
	t.Turn = math.Pi / 2
	if p.WriteFree(t, v.Line(geom.Polyline(upended(geom.Ring(places(upended(cut), need)))))...) {
		return
	}
	t.Turn, t.Text = 0, fmt.Sprint(n)
	p.WriteFree(t, v.Line(places(cut, 0))...)
}

// places returns where lettering of a length may stand inside an outline: in the
// middle and to the sides of every level interval that is long enough, at a few
// heights, the longest first.
func places(r geom.Ring, need float64) geom.Polyline {
	type interval struct {
		mid  geom.Point
		long float64
	}
	box := r.Bounds()
	var all []interval
	for _, part := range []float64{0.5, 0.35, 0.65, 0.42, 0.58, 0.2, 0.8, 0.28, 0.72} {
		y := box.Min.Y + part*box.Height()
		xs := r.LevelCrossings(y)
		for i := 1; i < len(xs); i += 2 {
			if w := xs[i] - xs[i-1]; w >= need {
				all = append(all, interval{geom.Pt((xs[i]+xs[i-1])/2, y), w})
			}
		}
	}
	longest := 0.0
	for _, s := range all {
		longest = math.Max(longest, s.long)
	}
	var first, rest []interval
	for _, s := range all {
		if 1.15*s.long >= longest { // nearly as long is as good
			first = append(first, s)
		} else {
			rest = append(rest, s)
		}
	}
	var out geom.Polyline
	for _, side := range []float64{0, -0.5, 0.5, -1, 1} {
		for _, s := range append(first, rest...) {
			out = append(out, s.mid.Plus(geom.Pt(side*(s.long-need)/2, 0)))
		}
	}
	return out
}

// upended returns an outline with its axes changed for each other.
func upended(r geom.Ring) geom.Ring {
	out := make(geom.Ring, len(r))
	for i, p := range r {
		out[i] = geom.Pt(p.Y, p.X)
	}
	return out
}
