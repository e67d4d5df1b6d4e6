package picture

import (
	"slices"
	"strings"

	"slingloft/outline/geom"
)

// Struck returns the lettering through which a drawn line runs, each with the ink of the
// first line that does. Areas count as no lines, their strokes do.
func (p *Picture) Struck() [][2]string {
	var out [][2]string
	for _, it := range p.Items {
		if t, ok := it.(Text); ok {
			if ink, struck := p.strikes(t); struck {
				out = append(out, [2]string{t.Text, ink.Name()})
			}
		}
	}
	return out
}

// strikes returns the ink of a line that runs through a text's letters, if any does.
func (p *Picture) strikes(t Text) (ink Ink, struck bool) {
	p.struckBy(t, func(k Ink) bool { ink, struck = k, true; return false })
	return ink, struck
}

// struckBy yields the ink of every straight piece of a line that runs through a text's
// letters, until it is told to stop.
func (p *Picture) struckBy(t Text, yield func(Ink) bool) {
	box, flat := t.letters(), t.flat()
	for _, it := range p.Items {
		path, ok := it.(Path)
		if !ok || path.Width == 0 {
			continue
		}
		for _, l := range path.Lines {
			for i := range l {
				if i == 0 && !path.Closed {
					continue
				}
				if through(box.Expanded(path.Width/2), flat(l[(i+len(l)-1)%len(l)]), flat(l[i])) && !yield(path.Stroke) {
					return
				}
			}
		}
	}
}

// letters returns the room of a text's letters, from where its base line begins: from the
// lowest of them to the tops of capitals.
func (t Text) letters() geom.Box {
	low := 0.0
	if strings.ContainsAny(t.Text, "gjpqy,;()Q") {
		low = -descent * t.Size
	}
	return geom.BoxOf(geom.Pt(0, low), geom.Pt(Width(t.Text, t.Size, t.Bold), capHeight*t.Size))
}

// flat returns what carries a place on paper to where it lies from the text's own start, its
// base line level.
func (t Text) flat() func(geom.Point) geom.Point {
	at, along := t.Start()
	return func(q geom.Point) geom.Point {
		d := q.Minus(at)
		return geom.Pt(d.Dot(along), d.Dot(along.Left()))
	}
}

// besideLetters is how far a helping line stops before lettering, mm.
const besideLetters = 0.5

// Interrupted returns the picture with its helping lines, which are dimension and leader
// lines, axes and grids, interrupted where lettering stands (as ISO 129-1 has it, from
// memory).
func (p Picture) Interrupted() Picture {
	items := slices.Clone(p.Items)
	for i, it := range items {
		path, ok := it.(Path)
		if !ok || path.Closed || path.Filled || path.Stroke != Quiet && path.Stroke != Ghost {
			continue
		}
		for _, it := range p.Items {
			if t, ok := it.(Text); ok {
				var lines []geom.Polyline
				for _, l := range path.Lines {
					lines = append(lines, t.off(l)...)
				}
				path.Lines = lines
			}
		}
		items[i] = path
	}
	p.Items = items
	return p
}

// off returns the parts of a line that lie off a text's letters.
func (t Text) off(l geom.Polyline) []geom.Polyline {
	box, flat := t.letters().Expanded(besideLetters), t.flat()
	at, along := t.Start()
	back := func(q geom.Point) geom.Point { return at.Plus(along.Times(q.X)).Plus(along.Left().Times(q.Y)) }
	var out []geom.Polyline
	var run geom.Polyline
	add := func(a, b geom.Point) {
		if a.Dist(b) < 1e-9 {
			return
		}
		if len(run) == 0 {
			run = geom.Polyline{a}
		}
		run = append(run, b)
	}
	for i := 1; i < len(l); i++ {
		from, to, ok := box.Part(flat(l[i-1]), flat(l[i]))
		if !ok {
			add(l[i-1], l[i])
			continue
		}
		add(l[i-1], back(from))
		if len(run) > 0 {
			out = append(out, run)
		}
		run = nil
		add(back(to), l[i])
	}
	if len(run) > 0 {
		out = append(out, run)
	}
	return out
}
