// Package picture holds line drawings for the build sheet as plain shapes on
// paper, so that a web page and a PDF file show the same picture.
//
// Coordinates are mm on paper, x to the right, y up, the origin at the lower left
// corner. What a line stands for is its [Ink]; the medium picks the colour, so
// that one picture serves light screens, dark screens and paper. Every picture
// carries a title and a description for people who cannot see it.
package picture

import (
	"math"
	"strings"

	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Picture is one drawing.
type Picture struct {
	ID            string // unique on a sheet, safe as an id ([SafeID]): "view-side"
	Title         string // what it shows, in a few words
	Desc          string // the same for those who cannot see it, with its figures
	Width, Height float64
	Items         []Item

	texts []geom.Box // where lettering stands already
}

// Item is a shape in a picture: a [Path] or a [Text].
type Item interface{ item() }

// Path is one or several lines drawn alike.
type Path struct {
	Lines  []geom.Polyline // mm
	Closed bool
	Stroke Ink
	Width  float64 // of the stroke, mm; 0: none
	Dash   []float64
	Fill   Ink
	Filled bool
}

// Text is a line of lettering. Its base line passes through At, or the middle of
// its capitals for an anchor of [piece.Centre].
type Text struct {
	Text   string
	At     geom.Point
	Size   float64 // of the font, mm
	Turn   float64 // rad
	Anchor piece.Anchor
	Ink    Ink
	Bold   bool
}

func (Path) item() {}
func (Text) item() {}

// Widths of pictures, mm: the printed page and half of it.
const (
	Wide = 180.0
	Half = 88.0
)

// Font sizes, mm: 8 and 7 points in print.
const (
	Letter = 2.8
	Small  = 2.5
)

// Line widths, mm: ISO 128 has them in steps of √2.
const (
	Bold   = 0.5
	Medium = 0.35
	Thin   = 0.25
	Hair   = 0.18
)

// SafeID returns text as an id: letters, digits and dashes.
func SafeID(text string) string {
	var out strings.Builder
	for _, r := range strings.ToLower(text) {
		if r >= 'a' && r <= 'z' || r >= '0' && r <= '9' {
			out.WriteRune(r)
		} else {
			out.WriteByte('-')
		}
	}
	return out.String()
}

// Line adds an open line.
func (p *Picture) Line(ink Ink, width float64, pts ...geom.Point) {
	p.Items = append(p.Items, Path{Lines: []geom.Polyline{pts}, Stroke: ink, Width: width})
}

// Dashed adds an open dashed line.
func (p *Picture) Dashed(ink Ink, width float64, pts ...geom.Point) {
	p.Items = append(p.Items, Path{Lines: []geom.Polyline{pts}, Stroke: ink, Width: width, Dash: []float64{1.6, 1}})
}

// Area adds a filled outline without a stroke.
func (p *Picture) Area(ink Ink, pts ...geom.Point) {
	p.Items = append(p.Items, Path{Lines: []geom.Polyline{pts}, Closed: true, Fill: ink, Filled: true})
}

// Outline adds closed lines without an area.
func (p *Picture) Outline(ink Ink, width float64, lines ...geom.Polyline) {
	p.Items = append(p.Items, Path{Lines: lines, Closed: true, Stroke: ink, Width: width})
}

// Dot adds a filled disc, as a polygon of 24 corners.
func (p *Picture) Dot(ink Ink, at geom.Point, radius float64) {
	const corners = 24
	pts := make([]geom.Point, corners)
	for i := range pts {
		s, c := math.Sincos(2 * math.Pi * float64(i) / corners)
		pts[i] = at.Plus(geom.Pt(radius*c, radius*s))
	}
	p.Area(ink, pts...)
}

// Write adds lettering and remembers where it stands.
func (p *Picture) Write(t Text) {
	p.Items = append(p.Items, t)
	p.texts = append(p.texts, t.Box())
}

// Last returns the room of the lettering that was written last.
func (p *Picture) Last() geom.Box { return p.texts[len(p.texts)-1] }

// WriteFree adds the lettering at one of the places at which it meets no other
// lettering and stays on the picture, and reports whether there was one: at the first
// that lies over no line that is drawn already, or else over the fewest.
func (p *Picture) WriteFree(t Text, places ...geom.Point) bool {
	at, _, ok := p.freest(t, places)
	if ok {
		t.At = at
		p.Write(t)
	}
	return ok
}

// WriteClear adds the lettering at the first of the places at which it meets neither
// other lettering nor a line and stays on the picture, and reports whether there was one.
func (p *Picture) WriteClear(t Text, places ...geom.Point) bool {
	at, lines, ok := p.freest(t, places)
	if !ok || lines > 0 {
		return false
	}
	t.At = at
	p.Write(t)
	return true
}

// WriteAll adds lines of lettering where they stand if none of them meets other lettering or a
// line or leaves the picture, and reports whether it has.
func (p *Picture) WriteAll(lines []Text) bool {
	for _, t := range lines {
		if _, n, ok := p.freest(t, []geom.Point{t.At}); !ok || n > 0 {
			return false
		}
	}
	for _, t := range lines {
		p.Write(t)
	}
	return true
}

// freest returns the first of the places for lettering that lies over the fewest lines, and
// how many, and reports whether there is any that is clear of other lettering.
func (p *Picture) freest(t Text, places []geom.Point) (best geom.Point, least int, ok bool) {
	for _, at := range places {
		t.At = at
		if !p.Free(t.Box()) {
			continue
		}
		if n := p.under(t); !ok || n < least {
			best, least, ok = at, n, true
		}
		if least == 0 {
			break
		}
	}
	return best, least, ok
}

// under counts the straight pieces of drawn lines that run through a text's letters.
func (p *Picture) under(t Text) int {
	n := 0
	p.struckBy(t, func(Ink) bool { n++; return true })
	return n
}

// through reports whether the line from p to q has a part inside the box.
func through(b geom.Box, p, q geom.Point) bool {
	from, to := 0.0, 1.0
	for _, c := range [4][2]float64{ // how far inside an edge p lies, and q
		{p.X - b.Min.X, q.X - b.Min.X}, {b.Max.X - p.X, b.Max.X - q.X},
		{p.Y - b.Min.Y, q.Y - b.Min.Y}, {b.Max.Y - p.Y, b.Max.Y - q.Y},
	} {
		switch {
		case c[0] <= 0 && c[1] <= 0:
			return false
		case c[0] < 0:
			from = max(from, c[0]/(c[0]-c[1]))
		case c[1] < 0:
			to = min(to, c[0]/(c[0]-c[1]))
		}
	}
	return from < to
}

// Free reports whether a box lies on the picture and clear of all lettering.
func (p *Picture) Free(b geom.Box) bool {
	if b.Min.X < 0 || b.Min.Y < 0 || b.Max.X > p.Width || b.Max.Y > p.Height {
		return false
	}
	for _, q := range p.texts {
		if overlap(b, q) {
			return false
		}
	}
	return true
}

// overlap reports whether two boxes share more than an edge.
func overlap(a, b geom.Box) bool {
	return a.Min.X < b.Max.X && b.Min.X < a.Max.X && a.Min.Y < b.Max.Y && b.Min.Y < a.Max.Y
}

// Clashes returns the pairs of lettering that stand over each other, and lettering
// that leaves the picture paired with "edge".
func (p *Picture) Clashes() [][2]string {
	var out [][2]string
	var seen []Text
	for _, it := range p.Items {
		t, ok := it.(Text)
		if !ok {
			continue
		}
		b := t.Box()
		if b.Min.X < -0.1 || b.Min.Y < -0.1 || b.Max.X > p.Width+0.1 || b.Max.Y > p.Height+0.1 {
			out = append(out, [2]string{t.Text, "edge"})
		}
		for _, o := range seen {
			if overlap(b, o.Box()) {
				out = append(out, [2]string{o.Text, t.Text})
			}
		}
		seen = append(seen, t)
	}
	return out
}

// View carries true measures to paper: scaled, then moved.
type View struct {
	Scale float64
	Shift geom.Point
}

// At returns the place on paper of a point.
func (v View) At(p geom.Point) geom.Point { return p.Times(v.Scale).Plus(v.Shift) }

// Line returns a line on paper.
func (v View) Line(l geom.Polyline) geom.Polyline {
	out := make(geom.Polyline, len(l))
	for i, p := range l {
		out[i] = v.At(p)
	}
	return out
}

// Fit returns the view that shows the box as large as it goes in the given room,
// in its middle.
func Fit(box, room geom.Box) View {
	k := math.Min(room.Width()/math.Max(box.Width(), 1e-9), room.Height()/math.Max(box.Height(), 1e-9))
	return View{k, room.Center().Minus(box.Center().Times(k))}
}
