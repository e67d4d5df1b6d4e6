package scene

import (
	"fmt"
	"math"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// drawnShades is how many shades of tension are told apart: own choice.
const drawnShades = 8

// Drawn shows from above how hard the cloth is drawn across the bed, in its simulation:
// the darker the harder; what is slack has a colour of its own.
func Drawn(d *given.Data) picture.Picture {
	say, h := d.Say.Cloth.Drawn, d.Draped
	box, most := geom.EmptyBox(), 0.0
	for _, q := range h.Points {
		box = box.With(geom.Pt(q.X, q.Y)).With(geom.Pt(q.X, -q.Y))
	}
	for _, c := range h.Cloth {
		most = max(most, c.Weft)
	}
	k := (picture.Wide - 10) / box.Width()
	p := picture.Picture{ID: "view-drawn", Title: say.Title, Width: picture.Wide, Height: k*box.Height() + 18}
	v := picture.Fit(box, geom.BoxOf(geom.Pt(5, 14), geom.Pt(picture.Wide-5, p.Height-4)))
	// Areas of one shade go into one path.
	var shades [drawnShades + 1][]geom.Polyline
	for i, c := range h.Cloth {
		n := drawnShades
		if c.Weft > given.SlackUnder {
			// Most of the bed is drawn by a small part of the most: even steps would show nothing.
			n = min(int(math.Sqrt(c.Weft/most)*drawnShades), drawnShades-1)
		}
		for _, side := range [2]float64{1, -1} {
			var line geom.Polyline
			for _, f := range h.Faces[i] {
				line = append(line, v.At(geom.Pt(h.Points[f].X, side*h.Points[f].Y)))
			}
			shades[n] = append(shades[n], line)
		}
	}
	ink := func(n int) picture.Ink {
		if n == drawnShades {
			return picture.Second
		}
		return picture.Shade(1 - float64(n)/drawnShades)
	}
	for n, lines := range shades {
		if len(lines) > 0 {
			p.Items = append(p.Items, picture.Path{Lines: lines, Closed: true, Filled: true, Fill: ink(n), Stroke: ink(n), Width: 0.25})
		}
	}
	for _, side := range [2]float64{1, -1} {
		var cord geom.Polyline
		for _, q := range h.Edge {
			cord = append(cord, v.At(geom.Pt(q.X, side*q.Y)))
		}
		p.Line(picture.Cord, picture.Bold, cord...)
	}
	x := 5.0
	for _, l := range []struct {
		n    int
		text string
	}{{0, say.Little}, {drawnShades - 1, fmt.Sprintf(say.Most, d.Style.PerWidth(most))}, {drawnShades, say.Slack}} {
		p.Area(ink(l.n), geom.Pt(x, 3), geom.Pt(x+6, 3), geom.Pt(x+6, 6), geom.Pt(x, 6))
		p.Write(picture.Text{Text: l.text, At: geom.Pt(x+7.5, 3.4), Size: picture.Letter, Ink: picture.Main, Anchor: piece.Start})
		x += 13 + picture.Width(l.text, picture.Letter, false)
	}
	p.Desc = fmt.Sprintf(say.Desc, d.Style.PerWidth(most), d.Slack())
	return p
}
