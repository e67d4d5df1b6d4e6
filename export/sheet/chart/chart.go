// Package chart draws the curves of the build sheet: axes, ticks and lines are
// gonum/plot's, put into a [picture.Picture] so that they follow the page's
// colours and can go into a PDF file.
package chart

import (
	"errors"
	"fmt"
	"math"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/font/liberation"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

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
	Width  = 88.0
	Height = 62.0
	legend = 5.5 // height of the legend's rows over the chart
)

// apart is the room between an axis' figures and its name, mm.
const apart = 1.0

// Draw returns the chart as a picture. Curves need at least two finite points.
func Draw(c Chart) (picture.Picture, error) {
	rows := legendRows(c.Lines)
	pic := picture.Picture{ID: c.ID, Title: c.Title, Desc: c.Desc, Width: Width, Height: Height + legend*float64(len(rows))}
	p := plot.New()
	style(p, c)
	low, high := span(c)
	for _, x := range c.At {
		if err := add(p, Line{X: []float64{x, x}, Y: []float64{low, high}, Ink: picture.Quiet}, picture.Hair); err != nil {
			return pic, fmt.Errorf("chart %s, upright line: %w", c.ID, err)
		}
	}
	for _, l := range c.Lines {
		if err := add(p, l, picture.Bold); err != nil {
			return pic, fmt.Errorf("chart %s, %s: %w", c.ID, l.Name, err)
		}
	}
	p.Y.Min, p.Y.Max = low, high
	size := func(mm float64) vg.Length { return vg.Length(mm / mmPerPoint) }
	whole := draw.NewCanvas(newCanvas(&pic), size(Width), size(Height))
	// The last figure stands half past the axis' end.
	over := 1.0
	for _, t := range (ticks{}).Ticks(p.X.Min, p.X.Max) {
		over = max(over, picture.Width(t.Label, picture.Small, false)/2)
	}
	p.Draw(draw.Crop(whole, size(1), -size(over), size(0.5), 0))
	drawLegend(&pic, rows)
	return pic, nil
}

// style sets fonts, inks and the widths of axes.
func style(p *plot.Plot, c Chart) {
	fonts := font.NewCache(liberation.Collection())
	set := func(s *text.Style, mm float64, ink picture.Ink) {
		s.Font = font.From(font.Font{Typeface: "Liberation", Variant: "Sans"}, vg.Length(mm/mmPerPoint))
		s.Handler = text.Plain{Fonts: fonts}
		s.Color = inked{ink}
	}
	p.BackgroundColor = nil
	for _, a := range []*plot.Axis{&p.X, &p.Y} {
		set(&a.Label.TextStyle, picture.Letter, picture.Main)
		set(&a.Tick.Label, picture.Small, picture.Quiet)
		a.Color = inked{picture.Quiet}
		a.LineStyle.Width = picture.Hair / mmPerPoint
		a.Tick.LineStyle = a.LineStyle
		a.Tick.LineStyle.Color = a.Color
		a.Tick.Length = 3
		a.Padding = 3
		a.Label.Padding = vg.Length(apart / mmPerPoint)
		a.Tick.Marker = ticks{}
	}
	p.X.Label.Text, p.Y.Label.Text = c.X, c.Y
	set(&p.Title.TextStyle, picture.Letter, picture.Main)
	grid := plotter.NewGrid()
	for _, s := range []*draw.LineStyle{&grid.Vertical, &grid.Horizontal} {
		s.Color, s.Width, s.Dashes = inked{picture.Ghost}, vg.Length(0.1/mmPerPoint), nil
	}
	p.Add(grid)
}

// add adds one curve.
func add(p *plot.Plot, l Line, width float64) error {
	pts := make(plotter.XYs, min(len(l.X), len(l.Y)))
	for i := range pts {
		pts[i].X, pts[i].Y = l.X[i], l.Y[i]
	}
	if len(pts) < 2 {
		return errors.New("a curve needs two points")
	}
	line, err := plotter.NewLine(pts)
	if err != nil {
		return err
	}
	line.Color = inked{l.Ink}
	line.Width = vg.Length(width / mmPerPoint)
	if l.Dashed {
		line.Dashes = []vg.Length{vg.Length(1.6 / mmPerPoint), vg.Length(1 / mmPerPoint)}
	}
	p.Add(line)
	return nil
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

// ticks stand at round values: steps of 1, 2 or 5 times a power of ten.
type ticks struct{}

// few is about how many ticks an axis has.
const few = 5

// Ticks implements [plot.Ticker].
func (ticks) Ticks(low, high float64) []plot.Tick {
	step, decimals := round((high - low) / few)
	var out []plot.Tick
	for i := math.Ceil(low/step - 1e-9); i*step <= high+1e-9*step; i++ {
		v := i * step
		label := quantity.Decimal(v, decimals)
		if v < 0 {
			label = "−" + quantity.Decimal(-v, decimals)
		}
		out = append(out, plot.Tick{Value: v, Label: label})
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
