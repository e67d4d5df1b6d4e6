package tile

import (
	"fmt"
	"math"

	"slingloft/export"
	"slingloft/export/lettering"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// furniture draws what stands on the pages beside the sheet.
type furniture struct {
	grid
	options export.Options
	pages   int
}

// page draws one tile, number n of all pages.
func (f furniture) page(c cell, kept map[cell]bool, n int) export.Drawing {
	d := export.Drawing{
		Name: f.sheet.Name + "-" + c.name(), Title: f.sheet.Title + " " + c.name(),
		Width: f.paper.Width, Height: f.paper.Height,
	}
	shown := f.shown(c)
	toPage := geom.Motion{Shift: f.window.Min.Minus(shown.Min)}
	for _, l := range f.sheet.Lines {
		for _, part := range clipped(l, shown) {
			d.Lines = append(d.Lines, part.Moved(toPage))
		}
	}
	for _, l := range f.joints(c, kept) {
		d.Lines = append(d.Lines, l.Moved(toPage))
	}
	f.addBars(&d)
	f.addText(&d, c.name(), n)
	return d
}

// joints returns the joints of a cell with its neighbours that have a page too,
// in the sheet's coordinates, so that the same marks come out on both.
func (f furniture) joints(c cell, kept map[cell]bool) []piece.Line {
	shown, core := f.shown(c), f.core(c)
	var out []piece.Line
	add := func(other cell, at, along geom.Point, length float64) {
		if kept[other] {
			first, second := c, other
			if other.row < c.row || (other.row == c.row && other.column < c.column) {
				first, second = other, c
			}
			out = append(out, joint(first.name()+" + "+second.name(), at, along, length)...)
		}
	}
	right, up := geom.Pt(1, 0), geom.Pt(0, 1)
	width, height := shown.Width(), shown.Height()
	add(cell{c.column - 1, c.row}, geom.Pt(core.Min.X, shown.Min.Y), up, height)
	add(cell{c.column + 1, c.row}, geom.Pt(core.Max.X, shown.Min.Y), up, height)
	add(cell{c.column, c.row + 1}, geom.Pt(shown.Min.X, core.Min.Y), right, width)
	add(cell{c.column, c.row - 1}, geom.Pt(shown.Min.X, core.Max.Y), right, width)
	return out
}

// joint returns the line of a joint and two match marks on it, each a cross
// through a diamond with the names of both pages beside it.
func joint(name string, at, along geom.Point, length float64) []piece.Line {
	const arm, half, textHeight = 4.0, 2.5, 2.0
	across := along.Left()
	out := []piece.Line{register("joint "+name, at, at.Plus(along.Times(length)))}
	for i, share := range []float64{0.25, 0.75} {
		m := at.Plus(along.Times(length * share))
		mark := fmt.Sprintf("match %s/%d", name, i+1)
		diamond := register(mark+"/diamond", m.Plus(along.Times(half)), m.Plus(across.Times(half)),
			m.Minus(along.Times(half)), m.Minus(across.Times(half)))
		diamond.Closed = true
		out = append(out, diamond,
			register(mark+"/along", m.Minus(along.Times(arm)), m.Plus(along.Times(arm))),
			register(mark+"/across", m.Minus(across.Times(arm)), m.Plus(across.Times(arm))))
		out = append(out, text(mark+"/names", piece.Label{
			Text: name, At: m.Plus(along.Times(arm + 1)).Plus(across.Times(0.8)), Height: textHeight, Turn: along.Angle(),
		})...)
	}
	return out
}

func register(name string, pts ...geom.Point) piece.Line {
	return piece.Line{Name: name, Work: piece.Register, Points: pts}
}

// text returns a label as lines.
func text(name string, l piece.Label) []piece.Line {
	var out []piece.Line
	for i, s := range lettering.Strokes(l) {
		out = append(out, piece.Line{Name: fmt.Sprintf("%s/stroke %d", name, i+1), Work: piece.Lettering, Points: s})
	}
	return out
}

// addBars adds the check bars: 100 mm and 4 in on the paper itself, whatever the
// scale of the sheet, along the bottom and up the left side.
func (f furniture) addBars(d *export.Drawing) {
	const tick, textHeight = 1.2, 2.0
	x, y := geom.Pt(1, 0), geom.Pt(0, 1)
	start := geom.Pt(border+bandLeft, border+bandBottom)
	places := []struct {
		at, along geom.Point
		text      string
	}{
		{geom.Pt(start.X, border+3), x, "100 mm"}, {geom.Pt(start.X, border+11), x, "4 in"},
		{geom.Pt(border+5, start.Y), y, "100 mm"}, {geom.Pt(border+11.5, start.Y), y, "4 in"},
	}
	correct := export.Options{Correct: f.options.Correct}
	for i, bar := range export.Bars() {
		p := places[i]
		end := p.at.Plus(correct.Point(p.along.Times(bar.Length)))
		across := p.along.Left().Times(tick)
		name := "paper " + bar.Name
		d.Lines = append(d.Lines, register(name, p.at, end),
			register(name+"/start", p.at.Minus(across), p.at.Plus(across)),
			register(name+"/end", end.Minus(across), end.Plus(across)))
		d.Lines = append(d.Lines, text(name+"/text", piece.Label{
			Text: p.text, At: p.at.Towards(end, 0.5).Plus(p.along.Left().Times(2.6)), Height: textHeight,
			Turn: p.along.Angle(), Anchor: piece.Centre,
		})...)
	}
}

// addText adds the page's name and what to mind when printing, to the right of
// the bars.
func (f furniture) addText(d *export.Drawing, name string, n int) {
	say := f.options.Said()
	left := border + bandLeft + 101.6*1.1 + 5 // a bar of 4 in, corrected by at most a tenth
	rows := []struct {
		text   string
		height float64
		y      float64
	}{
		{fmt.Sprintf(say.Page, name, n, f.pages), 3.5, 13},
		{say.Print, 2.5, 7.5},
		{say.Measure, 2.5, 2.5},
	}
	for i, r := range rows {
		room := f.paper.Width - border - left
		height := math.Min(r.height, r.height*room/math.Max(lettering.Width(r.text, r.height), 1))
		label := piece.Label{Text: lettering.Fit(r.text, height, room*1.001), At: geom.Pt(left, border+r.y), Height: height}
		d.Lines = append(d.Lines, text(fmt.Sprintf("page text %d", i+1), label)...)
	}
}

// mapPage draws the whole sheet small, with the joints and the names of the
// pages, and says how to put them together.
func (f furniture) mapPage(cells []cell) export.Drawing {
	say := f.options.Said()
	d := export.Drawing{
		Name: f.sheet.Name + "-map", Title: fmt.Sprintf(say.Map, f.sheet.Title), Width: f.paper.Width, Height: f.paper.Height,
	}
	lies := say.Upright
	if f.paper.Width > f.paper.Height {
		lies = say.Aside
	}
	notes := []string{
		f.sheet.Title,
		fmt.Sprintf(say.Pages, len(cells), f.paper.Name, lies, export.ScaleText(f.options.ScaleFactor())),
		say.Order,
		say.Together,
	}
	y := f.window.Max.Y - 4
	for i, note := range notes {
		const height, step = 3.0, 5.5
		label := piece.Label{Text: lettering.Fit(note, height, f.window.Width()), At: geom.Pt(f.window.Min.X, y), Height: height}
		d.Lines = append(d.Lines, text(fmt.Sprintf("note %d", i+1), label)...)
		y -= step
	}
	f.addMap(&d, cells, geom.Box{Min: f.window.Min.Plus(geom.Pt(2, 2)), Max: geom.Pt(f.window.Max.X-2, y)})
	f.addBars(&d)
	f.addText(&d, say.MapName, 1)
	return d
}

// addMap draws the small sheet into the room.
func (f furniture) addMap(d *export.Drawing, cells []cell, room geom.Box) {
	whole := geom.Box{Max: geom.Pt(f.sheet.Width, f.sheet.Height)}
	k := math.Min(room.Width()/whole.Width(), room.Height()/whole.Height())
	small := func(p geom.Point) geom.Point { return room.Min.Plus(p.Times(k)) }
	add := func(l piece.Line) {
		pts := make(geom.Polyline, len(l.Points))
		for i, p := range l.Points {
			pts[i] = small(p)
		}
		l.Name, l.Points = "map/"+l.Name, pts
		d.Lines = append(d.Lines, l)
	}
	for _, l := range f.sheet.Lines {
		if l.Work == piece.CutOut || l.Work == piece.CutInside || l.Work == piece.Stitch {
			add(l)
		}
	}
	for _, c := range cells {
		core := f.core(c)
		box := geom.Box{
			Min: geom.Pt(math.Max(core.Min.X, 0), math.Max(core.Min.Y, 0)),
			Max: geom.Pt(math.Min(core.Max.X, whole.Max.X), math.Min(core.Max.Y, whole.Max.Y)),
		}
		frame := register(c.name(), box.Ring()...)
		frame.Closed = true
		add(frame)
		height := math.Min(8, 0.3*k*math.Min(box.Width(), box.Height()))
		d.Lines = append(d.Lines, text("map/name "+c.name(), piece.Label{
			Text: c.name(), At: small(box.Center()), Height: height, Anchor: piece.Centre,
		})...)
	}
}
