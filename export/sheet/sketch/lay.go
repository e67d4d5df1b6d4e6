package sketch

import (
	"fmt"
	"math"
	"strings"

	"slingloft/export"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Long writes how long a lay is: of a roll as its pieces lie on it, of a sheet as it is sold.
func Long(d *given.Data, l given.Lay) string {
	if l.Roll {
		return d.Cloth(l.Width)
	}
	return d.Round(l.Width)
}

// Lay draws the roll or sheet number i of the lays.
func Lay(d *given.Data, i int) picture.Picture {
	l, say := d.Lays[i], d.Say.Lay
	const left, right = 15.0, 6.0
	above := 3.0
	kept, below := keptIn(l), 11.0
	if len(kept) > 0 {
		below += 4 // room for the legend
	}
	tallest := 96.0 // two template sheets on a printed page
	if l.Roll {
		tallest, above = 130, 5 // the upper selvedge is lettered
		below += 3
	}
	k := math.Min((picture.Wide-left-right)/l.Width, tallest/l.Height)
	p := picture.Picture{ID: fmt.Sprintf("lay-%d", i+1), Title: d.LayName(i), Width: picture.Wide, Height: below + above + k*l.Height}
	v := picture.View{Scale: k, Shift: geom.Pt(left+(picture.Wide-left-right-k*l.Width)/2, below)}
	drawStock(&p, v, l, kept)
	for n, it := range l.Items {
		letterItem(&p, v, it, n+1)
	}
	p.Level(v.At(geom.Pt(0, 0)), v.At(geom.Pt(l.Width, 0)), below-7, Long(d, l))
	p.Upright(v.At(geom.Pt(0, 0)), v.At(geom.Pt(0, l.Height)), v.Shift.X-6, d.Round(l.Height))
	p.Desc = fmt.Sprintf(say.Desc, len(l.Items), Long(d, l), d.Round(l.Height), given.Percent(l.Use))
	if len(kept) > 0 {
		words := keptWords(d, kept)
		legend(&p, words)
		p.Desc += " " + fmt.Sprintf(say.Hatched, words)
	}
	if l.Roll {
		p.Desc += " " + say.Runs
		letterEdges(d, &p, v, l)
	}
	return p
}

// letterEdges letters the edges of a roll from outside: the end it is cut off at, from which
// the lengths along it are counted, and both selvedges.
func letterEdges(d *given.Data, p *picture.Picture, v picture.View, l given.Lay) {
	say := d.Say.Lay
	t := picture.Text{Size: picture.Small, Anchor: piece.Centre, Ink: picture.Quiet}
	low, high := v.At(geom.Pt(0, 0)), v.At(geom.Pt(l.Width, l.Height))
	for _, e := range []struct {
		text string
		y    float64
	}{{say.Selvedge, low.Y - 2}, {say.UpperSelvedge, high.Y + 2}} {
		t.Text = e.text
		half := picture.Width(t.Text, t.Size, false) / 2
		p.WriteFree(t, geom.Pt(low.X+half, e.y), geom.Pt((low.X+high.X)/2, e.y), geom.Pt(high.X-half, e.y))
	}
	t.Text, t.Turn = say.CutEnd, math.Pi/2
	p.WriteFree(t, geom.Pt(low.X-2.2, (low.Y+high.Y)/2), geom.Pt(low.X-2.2, low.Y+picture.Width(t.Text, t.Size, false)/2),
		geom.Pt(low.X-2.2, high.Y-picture.Width(t.Text, t.Size, false)/2))
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
// the only way, or else its number alone, beside it where it is too narrow for that.
func letterItem(p *picture.Picture, v picture.View, it export.Item, n int) {
	cut := it.Piece.Cut.Moved(it.Motion)
	t := picture.Text{Text: fmt.Sprintf("%d %s", n, Titled(it.Piece)), Size: picture.Small, Anchor: piece.Centre, Ink: picture.Main}
	if letterInside(p, v, t, cut) || letterLines(p, v, t, cut) {
		return
	}
	t.Text = fmt.Sprint(n)
	if letterInside(p, v, t, cut) {
		return
	}
	mid := places(cut, 0)[0]
	p.Callout(t, v.At(mid), geom.Pt(0, 4+v.Scale*cut.Bounds().Height()/2))
}

// letterLines letters an outline in two lines or more about its middle, level or upright, and
// reports whether there was room.
func letterLines(p *picture.Picture, v picture.View, t picture.Text, cut geom.Ring) bool {
	const most, lead = 4, 1.4 // lines, and from one to the next in sizes
	mid := v.At(cut.Bounds().Center())
	for n := 2; n <= most; n++ {
		for _, turn := range []float64{0, math.Pi / 2} {
			down := geom.Pt(0, -1).Turned(turn).Times(lead * t.Size)
			var block []picture.Text
			for i, words := range inLines(t.Text, n) {
				line := t
				line.Text, line.Turn = words, turn
				line.At = mid.Plus(down.Times(float64(i) - float64(n-1)/2))
				block = append(block, line)
			}
			if p.WriteAll(block) {
				return true
			}
		}
	}
	return false
}

// inLines breaks text at its spaces into at most n lines of about the same length.
func inLines(text string, n int) []string {
	var out []string
	line := ""
	for _, w := range strings.Fields(text) {
		if line != "" && len(out) < n-1 && len(line)+len(w)/2 > len(text)/n {
			out, line = append(out, line), ""
		}
		line = strings.TrimSpace(line + " " + w)
	}
	return append(out, line)
}

// letterInside letters an outline level or upright, clear of lines, and reports whether
// there was room.
func letterInside(p *picture.Picture, v picture.View, t picture.Text, cut geom.Ring) bool {
	need := (picture.Width(t.Text, t.Size, false) + 1) / v.Scale
	if p.WriteClear(t, v.Line(places(cut, need))...) {
		return true
	}
	t.Turn = math.Pi / 2
	return p.WriteClear(t, v.Line(geom.Polyline(upended(geom.Ring(places(upended(cut), need)))))...)
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
	for _, side := range []float64{0, -0.5, 0.5, -1, 1, -0.25, 0.25, -0.75, 0.75} {
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
