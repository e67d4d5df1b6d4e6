// Package chart draws the curves of the build sheet over axes with round ticks into a
// [picture.Picture], so that they follow the page's colours and can go into a PDF file.
package chart

import (
	"fmt"
	"math"

	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
)

// Line is one curve.
type Line struct {
	Name   string
	X, Y   []float64
	Ink    picture.Ink
	Dashed bool
}

// Chart is a set of curves over the same axes.
type Chart struct {
	ID, Title, Desc string
	X, Y            string // what the axes show, with the unit
	Lines           []Line
	At              []float64 // upright lines, such as at the bars
	FromZero        bool      // the upright axis starts at zero
}

// Size of a chart: two stand side by side on a printed page.
const (
	Width  = picture.Half
	Height = 62.0
	legend = 5.5 // height of the legend's rows over the chart
)

// Layout of the axes, mm.
const (
	apart  = 1.0  // between tick and figure, figure and name
	tick   = 1.06 // length of a tick
	gap    = 1.06 // between the axes and what they bound
	row    = 1.13 // height of a row of lettering with its tails, over its size
	rise   = 0.72 // of capitals and figures, over the size of their lettering
	grid   = 0.1  // width of the lines behind the curves
	margin = 1.0
)

// Draw returns the chart as a picture. Curves need at least two finite points.
func Draw(c Chart) (picture.Picture, error) {
	rows := legendRows(c.Lines)
	pic := picture.Picture{ID: c.ID, Title: c.Title, Desc: c.Desc, Width: Width, Height: Height + legend*float64(len(rows))}
	if err := check(c); err != nil {
		return pic, err
	}
	f := newField(c)
	f.ruled(&pic)
	for _, x := range c.At {
		pic.Line(picture.Quiet, picture.Hair, f.at(x, f.y.low), f.at(x, f.y.high))
	}
	for _, l := range c.Lines {
		p := picture.Path{Lines: []geom.Polyline{f.curve(l)}, Stroke: l.Ink, Width: picture.Bold}
		if l.Dashed {
			p.Dash = []float64{1.6, 1}
		}
		pic.Items = append(pic.Items, p)
	}
	f.axes(&pic, c)
	drawLegend(&pic, rows)
	return pic, nil
}

// check refuses curves that cannot be drawn.
func check(c Chart) error {
	for _, l := range c.Lines {
		n := min(len(l.X), len(l.Y))
		if n < 2 {
			return fmt.Errorf("chart %s, %s: a curve needs two points", c.ID, l.Name)
		}
		for i := range n {
			if p := geom.Pt(l.X[i], l.Y[i]); !p.Finite() {
				return fmt.Errorf("chart %s, %s: point %d is not finite", c.ID, l.Name, i+1)
			}
		}
	}
	return nil
}

// axis is the range that one side of the field shows, with its ticks.
type axis struct {
	low, high float64
	ticks     []stop
}

// part returns how far along the axis a value stands, from 0 to 1.
func (a axis) part(v float64) float64 { return (v - a.low) / (a.high - a.low) }

// field is the part of a chart in which its curves lie.
type field struct {
	box  geom.Box // mm on paper
	x, y axis
}

// newField lays out a chart: room for the figures and names of both axes.
func newField(c Chart) field {
	var f field
	f.x.low, f.x.high = reach(c)
	f.y.low, f.y.high = span(c)
	f.x.ticks, f.y.ticks = stops(f.x.low, f.x.high), stops(f.y.low, f.y.high)
	wide := 0.0
	for _, t := range f.y.ticks {
		wide = math.Max(wide, picture.Width(t.label, picture.Small, false))
	}
	over := margin // the last figure stands half past the axis' end
	for _, t := range f.x.ticks {
		over = math.Max(over, picture.Width(t.label, picture.Small, false)/2)
	}
	name := row * picture.Letter
	f.box.Min = geom.Pt(margin+name+2*apart+wide+tick+gap, margin+name+row*picture.Small+apart+tick+gap)
	f.box.Max = geom.Pt(Width-over, Height-margin-rise*picture.Small/2)
	return f
}

// at returns where a pair of values stands on paper.
func (f field) at(x, y float64) geom.Point {
	return geom.Pt(f.box.Min.X+float64(f.x.part(x)*f.box.Width()), f.box.Min.Y+float64(f.y.part(y)*f.box.Height()))
}

func (f field) curve(l Line) geom.Polyline {
	var out geom.Polyline
	for i := range min(len(l.X), len(l.Y)) {
		out = append(out, f.at(l.X[i], l.Y[i]))
	}
	return out
}

// ruled draws the lines behind the curves.
func (f field) ruled(pic *picture.Picture) {
	for _, t := range f.x.ticks {
		pic.Line(picture.Ghost, grid, f.at(t.value, f.y.low), f.at(t.value, f.y.high))
	}
	for _, t := range f.y.ticks {
		pic.Line(picture.Ghost, grid, f.at(f.x.low, t.value), f.at(f.x.high, t.value))
	}
}

// axes draws both axes with their figures and names.
func (f field) axes(pic *picture.Picture, c Chart) {
	low := f.box.Min.Minus(geom.Pt(gap, gap))
	pic.Line(picture.Quiet, picture.Hair, geom.Pt(f.box.Min.X, low.Y), geom.Pt(f.box.Max.X, low.Y))
	pic.Line(picture.Quiet, picture.Hair, geom.Pt(low.X, f.box.Min.Y), geom.Pt(low.X, f.box.Max.Y))
	half := rise * picture.Small / 2
	for _, t := range f.x.ticks {
		x := f.at(t.value, f.y.low).X
		pic.Line(picture.Quiet, picture.Hair, geom.Pt(x, low.Y), geom.Pt(x, low.Y-tick))
		pic.Write(picture.Text{Text: t.label, At: geom.Pt(x, low.Y-tick-apart-half), Size: picture.Small, Anchor: piece.Centre,
			Ink: picture.Quiet})
	}
	for _, t := range f.y.ticks {
		y := f.at(f.x.low, t.value).Y
		pic.Line(picture.Quiet, picture.Hair, geom.Pt(low.X, y), geom.Pt(low.X-tick, y))
		pic.Write(picture.Text{Text: t.label, At: geom.Pt(low.X-tick-apart, y-half), Size: picture.Small, Anchor: piece.End, Ink: picture.Quiet})
	}
	mid, up := f.box.Center(), margin+row*picture.Letter/2
	pic.Write(picture.Text{Text: c.X, At: geom.Pt(mid.X, up), Size: picture.Letter, Anchor: piece.Centre, Ink: picture.Main})
	pic.Write(picture.Text{Text: c.Y, At: geom.Pt(up, mid.Y), Size: picture.Letter, Turn: math.Pi / 2, Anchor: piece.Centre,
		Ink: picture.Main})
}

// reach returns the range of the level axis: that of the curves and upright lines.
func reach(c Chart) (low, high float64) {
	low, high = math.Inf(1), math.Inf(-1)
	for _, l := range c.Lines {
		for _, x := range l.X {
			low, high = math.Min(low, x), math.Max(high, x)
		}
	}
	for _, x := range c.At {
		low, high = math.Min(low, x), math.Max(high, x)
	}
	if !(high > low) {
		return low - 1, low + 1
	}
	return low, high
}

// span returns the range of the upright axis: that of the curves with a little
// room, or a little around a constant.
func span(c Chart) (low, high float64) {
	low, high = math.Inf(1), math.Inf(-1)
	for _, l := range c.Lines {
		for _, y := range l.Y {
			low, high = math.Min(low, y), math.Max(high, y)
		}
	}
	if c.FromZero {
		low = math.Min(low, 0)
	}
	room := 0.06 * (high - low)
	if !(room > 1e-9*math.Max(1, math.Abs(high))) {
		room = math.Max(1, 0.05*math.Abs(high))
	}
	if low != 0 || !c.FromZero {
		low -= room
	}
	return low, high + room
}

// stop is a tick of an axis.
type stop struct {
	value float64
	label string
}

// few is about how many ticks an axis has.
const few = 5

// stops returns ticks at round values: steps of 1, 2 or 5 times a power of ten.
func stops(low, high float64) []stop {
	step, decimals := round((high - low) / few)
	var out []stop
	for i := math.Ceil(low/step - 1e-9); i*step <= high+1e-9*step; i++ {
		v := i * step
		label := quantity.Decimal(v, decimals)
		if v < 0 {
			label = "−" + quantity.Decimal(-v, decimals)
		}
		out = append(out, stop{v, label})
	}
	return out
}

// round returns the round step next above x, and the decimals that it needs.
func round(x float64) (step float64, decimals int) {
	if !(x > 0) || math.IsInf(x, 0) {
		return 1, 0
	}
	power := math.Floor(math.Log10(x))
	decimals = int(math.Max(0, -power))
	unit := math.Pow(10, power)
	for _, k := range []float64{1, 2, 5} {
		if k*unit >= x*(1-1e-9) {
			return k * unit, decimals
		}
	}
	return 10 * unit, int(math.Max(0, -power-1))
}

// legendRows breaks the curves' names into rows.
func legendRows(lines []Line) [][]Line {
	var rows [][]Line
	room := 0.0
	for _, l := range lines {
		if l.Name == "" {
			continue
		}
		wide := sample + 1.5 + picture.Width(l.Name, picture.Letter, false) + 5
		if len(rows) == 0 || wide > room {
			rows, room = append(rows, nil), Width-4
		}
		last := len(rows) - 1
		rows[last] = append(rows[last], l)
		room -= wide
	}
	return rows
}

// sample is the length of line shown in a legend, mm.
const sample = 7.0

// drawLegend names the curves over the chart.
func drawLegend(pic *picture.Picture, rows [][]Line) {
	for i, row := range rows {
		x, y := 4.0, pic.Height-legend*(float64(i)+0.6)
		for _, l := range row {
			line := picture.Path{Lines: []geom.Polyline{{geom.Pt(x, y), geom.Pt(x+sample, y)}}, Stroke: l.Ink, Width: picture.Bold}
			if l.Dashed {
				line.Dash = []float64{1.6, 1}
			}
			pic.Items = append(pic.Items, line)
			x += sample + 1.5
			pic.Write(picture.Text{Text: l.Name, At: geom.Pt(x, y-1), Size: picture.Letter, Ink: picture.Main, Anchor: piece.Start})
			x += picture.Width(l.Name, picture.Letter, false) + 5
		}
	}
}
