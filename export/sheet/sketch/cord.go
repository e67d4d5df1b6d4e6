package sketch

import (
	"fmt"
	"math"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/cord"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Cord draws a cord as cut, straight, with its marks.
func Cord(d *given.Data, c cord.Cord) picture.Picture {
	say := d.Say.Cords.Straight
	const left, right, below, stem = 8.0, 8.0, 11.0, 7.0
	tall := 0.0
	label := func(m cord.Mark) string { return d.Say.Names.Cords.Spot(m.Spot) + " " + d.RopeFigure(m.FromStart) }
	for _, m := range c.Marks {
		tall = math.Max(tall, picture.Width(label(m), picture.Small, false))
	}
	p := picture.Picture{ID: "cord-" + picture.SafeID(c.Part.String()), Title: fmt.Sprintf(say.Title, given.Capital(d.CordName(c))),
		Width: picture.Wide, Height: below + 3 + stem + tall + 3}
	k := (picture.Wide - left - right) / c.Cut
	y := below + 1.5
	x := func(s float64) float64 { return left + s*k }
	box := func(ink picture.Ink, from, to float64) {
		p.Area(ink, geom.Pt(x(from), y-1.1), geom.Pt(x(to), y-1.1), geom.Pt(x(to), y+1.1), geom.Pt(x(from), y+1.1))
	}
	box(picture.Cord, 0, c.Cut)
	lo, hi := buriedEnds(c)
	box(picture.Buried, 0, lo)
	box(picture.Buried, hi, c.Cut)
	want := make([]float64, len(c.Marks))
	for i, m := range c.Marks {
		want[i] = x(m.FromStart)
	}
	for i, at := range picture.Spread(want, 3.4, left, picture.Wide-left) {
		m := c.Marks[i]
		p.Line(picture.Main, picture.Thin, geom.Pt(want[i], y-1.8), geom.Pt(want[i], y+1.8), geom.Pt(at, y+stem))
		p.Write(picture.Text{Text: label(m), Size: picture.Small, Turn: math.Pi / 2, Ink: picture.Main,
			At: geom.Pt(at+0.36*picture.Small, y+stem+1), Anchor: piece.Start})
	}
	p.Level(geom.Pt(x(0), y), geom.Pt(x(c.Cut), y), 4, d.Rope(c.Cut))
	p.Desc = fmt.Sprintf(say.Desc, d.Rope(c.Cut))
	return p
}

// buriedEnds returns how far from the start the first end is buried in another
// cord and from where the last one is, by the shoulder marks.
func buriedEnds(c cord.Cord) (lo, hi float64) {
	hi = c.Cut
	for _, m := range c.Marks {
		if !m.Buried {
			continue
		}
		for _, n := range c.Marks {
			if n.Buried {
				continue
			}
			if m.FromStart < c.Cut/2 && n.FromStart > m.FromStart && (lo == 0 || n.FromStart < lo) {
				lo = n.FromStart
			}
			if m.FromStart > c.Cut/2 && n.FromStart < m.FromStart && (hi == c.Cut || n.FromStart > hi) {
				hi = n.FromStart
			}
		}
	}
	return lo, hi
}
