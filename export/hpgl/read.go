package hpgl

import (
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"

	"slingloft/export"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// maxBytes is what is read at most.
const maxBytes = 256 << 20

// Read reads a file of the instructions that we write, and labels as far as to
// skip them, as the drawing that stands on paper, in mm. The kind of work is that
// of the pen, CutOut for other pens; lines have numbers for names. A line that
// returns to its start is closed. Arcs, scaling and relative moves are an error.
func Read(r io.Reader) (export.Drawing, error) {
	data, err := io.ReadAll(io.LimitReader(r, maxBytes+1))
	if err != nil {
		return export.Drawing{}, export.Refuse(export.InPlot, err)
	}
	if len(data) > maxBytes {
		return export.Drawing{}, export.Refuse(export.PlotTooLarge, maxBytes>>20)
	}
	p := plotter{work: piece.CutOut}
	if err := p.run(string(data)); err != nil {
		return export.Drawing{}, export.Refuse(export.InPlot, err)
	}
	if !(p.drawing.Width > 0 && p.drawing.Height > 0) {
		return export.Drawing{}, export.Refuse(export.PlotSizeMissing)
	}
	return p.drawing, nil
}

// plotter follows the instructions.
type plotter struct {
	drawing export.Drawing
	work    piece.Work
	at      geom.Point
	down    bool
	line    geom.Polyline // what the pen draws while it is down
	points  int
}

func (p *plotter) run(text string) error {
	for {
		text = strings.TrimLeft(text, " ;\r\n\t")
		if text == "" {
			return p.lift()
		}
		if len(text) < 2 {
			return export.Refuse(export.InstructionUnread, text)
		}
		name := text[:2]
		text = text[2:]
		if name == "LB" { // a label runs to its terminator
			_, text, _ = strings.Cut(text, "\x03")
			continue
		}
		end := strings.IndexFunc(text, func(r rune) bool {
			return !(r >= '0' && r <= '9' || r == ',' || r == '.' || r == '-' || r == '+' || r == ' ' || r == '\n' || r == '\r')
		})
		if end < 0 {
			end = len(text)
		}
		if err := p.instruction(name, text[:end]); err != nil {
			return export.Refuse(export.AtInstruction, name, text[:end], err)
		}
		text = text[end:]
	}
}

func (p *plotter) instruction(name, args string) error {
	values, err := numbers(args)
	if err != nil {
		return err
	}
	switch name {
	case "IN", "PG", "PW", "LT", "VS", "DT", "WU":
		return nil
	case "PS":
		if len(values) != 2 {
			return export.Refuse(export.PlotSizeBroken)
		}
		p.drawing.Width, p.drawing.Height = values[0], values[1]
	case "SP":
		if err := p.lift(); err != nil {
			return err
		}
		p.down, p.work = false, piece.CutOut
		for _, w := range piece.Works() {
			if len(values) == 1 && values[0]*unitsPerMM == float64(Pen(w)) {
				p.work = w
			}
		}
	case "PU", "PD", "PA":
		return p.move(name, values)
	default:
		return export.Refuse(export.InstructionStrange)
	}
	return nil
}

// move changes the pen and goes through the points.
func (p *plotter) move(name string, values []float64) error {
	if len(values)%2 != 0 {
		return export.Refuse(export.CoordinatesOdd)
	}
	switch name {
	case "PU":
		if err := p.lift(); err != nil {
			return err
		}
		p.down = false
	case "PD":
		if !p.down {
			p.line = geom.Polyline{p.at}
		}
		p.down = true
	}
	for i := 0; i < len(values); i += 2 {
		p.at = geom.Pt(values[i], values[i+1])
		if p.down {
			p.line = append(p.line, p.at)
		}
		if p.points++; p.points > export.MaxPoints {
			return export.Refuse(export.TooManyPoints)
		}
	}
	return nil
}

// lift ends the line that is being drawn.
func (p *plotter) lift() error {
	l := piece.Line{Name: fmt.Sprintf("path %d", len(p.drawing.Lines)+1), Work: p.work, Points: p.line}
	p.line = nil
	if len(l.Points) < 2 {
		return nil
	}
	if len(p.drawing.Lines) >= export.MaxLines {
		return export.Refuse(export.TooManyLines)
	}
	if n := len(l.Points); n > 3 && l.Points[0] == l.Points[n-1] {
		l.Closed, l.Points = true, l.Points[:n-1]
	}
	p.drawing.Lines = append(p.drawing.Lines, l)
	return nil
}

// numbers reads the parameters of an instruction, plotter units, as mm.
func numbers(args string) ([]float64, error) {
	fields := strings.FieldsFunc(args, func(r rune) bool { return r == ',' || r == ' ' || r == '\n' || r == '\r' })
	out := make([]float64, len(fields))
	for i, f := range fields {
		v, err := strconv.ParseFloat(f, 64)
		if err != nil || math.Abs(v) > 1<<30 { // the range of HP-GL/2
			return nil, export.Refuse(export.NumberUnread, f)
		}
		out[i] = v / unitsPerMM
	}
	return out, nil
}
