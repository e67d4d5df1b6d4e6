package sketch

import (
	"math"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
)

// keptIn returns the areas that are kept clear, as far as they lie on what is drawn
// of the stock; those past its end are left out.
func keptIn(l given.Lay) []given.Kept {
	var out []given.Kept
	for _, a := range l.Kept {
		a.Outline = within(a.Outline, l.Width, l.Height)
		if len(a.Outline) > 2 {
			out = append(out, a)
		}
	}
	return out
}

// within returns the part of an outline on a stock, cut at one edge after the other
// (I. E. Sutherland and G. W. Hodgman, 1974, from memory).
func within(r geom.Ring, width, height float64) geom.Ring {
	for _, inside := range []func(geom.Point) float64{
		func(p geom.Point) float64 { return p.X },
		func(p geom.Point) float64 { return width - p.X },
		func(p geom.Point) float64 { return p.Y },
		func(p geom.Point) float64 { return height - p.Y },
	} {
		var out geom.Ring
		for i, p := range r {
			q := r[(i+1)%len(r)]
			a, b := inside(p), inside(q)
			if a >= 0 {
				out = append(out, p)
			}
			if (a >= 0) != (b >= 0) {
				out = append(out, p.Towards(q, a/(a-b)))
			}
		}
		r = out
	}
	return r
}

// hatchStep is the distance of hatching lines, mm on paper.
const hatchStep = 1.2

// drawKept outlines and hatches an area, which is given on paper.
func drawKept(p *picture.Picture, area geom.Polyline) {
	turned := geom.Ring(area.Moved(geom.Motion{Turn: -math.Pi / 4}))
	back := geom.Motion{Turn: math.Pi / 4}
	var lines []geom.Polyline
	box := turned.Bounds()
	for y := math.Ceil(box.Min.Y/hatchStep) * hatchStep; y < box.Max.Y; y += hatchStep {
		xs := turned.LevelCrossings(y)
		for i := 1; i < len(xs); i += 2 {
			lines = append(lines, geom.Polyline{geom.Pt(xs[i-1], y), geom.Pt(xs[i], y)}.Moved(back))
		}
	}
	if len(lines) > 0 {
		p.Items = append(p.Items, picture.Path{Lines: lines, Stroke: picture.Inside, Width: picture.Hair})
	}
	p.Outline(picture.Inside, picture.Thin, area)
}

// keptWords names what is kept clear.
func keptWords(d *given.Data, kept []given.Kept) string {
	flaws := 0
	for _, a := range kept {
		if a.Flaw {
			flaws++
		}
	}
	say, others := d.Say.Lay, len(kept)-flaws
	switch {
	case others == 0:
		return say.Flaws.Of(flaws)
	case flaws == 0:
		return say.KeepOuts.Of(others)
	}
	return d.Both(say.Flaws.Of(flaws), say.KeepOuts.Of(others))
}

// legend says at the lower right what the hatching means.
func legend(p *picture.Picture, words string) {
	x := p.Width - 6 - picture.Width(words, picture.Small, false)
	drawKept(p, geom.Polyline{{X: x - 7, Y: 0.6}, {X: x - 1.5, Y: 0.6}, {X: x - 1.5, Y: 3.4}, {X: x - 7, Y: 3.4}})
	p.Write(picture.Text{Text: words, At: geom.Pt(x, 1.1), Size: picture.Small, Ink: picture.Main})
}
