package export

import (
	"fmt"

	"slingloft/export/lettering"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// What a drawing may be at most: longer than any roll, more than any design
// gives, and far from what would exhaust a machine's or a reader's memory.
const (
	MaxSize   = 200_000.0 // mm of width or height
	MaxLines  = 500_000
	MaxPoints = 5_000_000
)

// noise is how far a point may lie past the edge of its sheet by rounding, mm.
const noise = 1e-6

// Plain returns the drawing as it stands in a file, in mm on paper: scaled and
// corrected as o says, names as [OneLine] leaves them, the lettering drawn out as
// lines of work [piece.Lettering] behind the other lines, no labels left. Every
// writer writes this, and every reader of ours gives this back. It refuses what
// [Drawing.Validate] and [Options.Validate] refuse.
func (d Drawing) Plain(o Options) (Drawing, error) {
	if err := o.Validate(); err != nil {
		return Drawing{}, err
	}
	if err := d.Validate(); err != nil {
		return Drawing{}, err
	}
	out := Drawing{Name: OneLine(d.Name), Title: OneLine(d.Title)}
	out.Width, out.Height = o.Size(d)
	out.Field = d.Field.scaled(o)
	for _, l := range d.Lines {
		l.Name = OneLine(l.Name)
		out.Lines = append(out.Lines, o.Line(l))
	}
	for i, l := range d.Labels {
		for _, s := range LabelLines(i, l) {
			out.Lines = append(out.Lines, o.Line(s))
		}
	}
	return out, nil
}

// LabelLines returns the strokes of label number i (from 0) of a drawing as
// lines, at the drawing's own scale.
func LabelLines(i int, l piece.Label) []piece.Line {
	var out []piece.Line
	for k, s := range lettering.Strokes(l) {
		out = append(out, piece.Line{
			Name: fmt.Sprintf("%s/stroke %d", LabelName(i), k+1), Role: piece.TextStroke, Index: i, Work: piece.Lettering, Points: s,
		})
	}
	return out
}

// LabelName returns the name of label number i (from 0) of a drawing.
func LabelName(i int) string { return fmt.Sprintf("label %d", i+1) }

// Validate reports the first thing in the drawing that no format can hold: a
// size, a point or a kind of work out of bounds, a line without length.
func (d Drawing) Validate() error {
	if !Inside(d.Width, 1, MaxSize) || !Inside(d.Height, 1, MaxSize) {
		return Refuse(SheetSize, d.Name, d.Width, d.Height, MaxSize)
	}
	if n := len(d.Lines) + len(d.Labels); n > MaxLines {
		return Refuse(SheetLines, d.Name, n, MaxLines)
	}
	sheet := geom.Box{Max: geom.Pt(d.Width, d.Height)}.Expanded(noise)
	points := 0
	for _, l := range d.Lines {
		points += len(l.Points)
		if err := checkLine(l, sheet); err != nil {
			return Refuse(AtDrawnLine, d.Name, l.Name, err)
		}
	}
	if points > MaxPoints {
		return Refuse(SheetPoints, d.Name, points, MaxPoints)
	}
	for i, l := range d.Labels {
		if err := checkLabel(l, sheet); err != nil {
			return Refuse(AtDrawnLabel, d.Name, LabelName(i), l.Text, err)
		}
	}
	return nil
}

func checkLine(l piece.Line, sheet geom.Box) error {
	if l.Work < 0 || int(l.Work) >= len(piece.Works()) {
		return Refuse(WorkUnknown, l.Work)
	}
	if len(l.Points) < 2 || (l.Closed && len(l.Points) < 3) {
		return Refuse(LineTooShort, len(l.Points))
	}
	return checkPoints(l.Points, sheet)
}

func checkLabel(l piece.Label, sheet geom.Box) error {
	if !Inside(l.Height, 0.1, 1000) || !Inside(l.Turn, -1e6, 1e6) || !l.At.Finite() {
		return Refuse(LabelOff, l.Height, l.Turn, l.At)
	}
	if len(l.Text) > maxText {
		return Refuse(LabelLong, len(l.Text), maxText)
	}
	for _, s := range lettering.Strokes(l) {
		if err := checkPoints(s, sheet); err != nil {
			return err
		}
	}
	return nil
}

// maxText is the longest text of a label in bytes, more than fits any sheet.
const maxText = 10_000

func checkPoints(pts geom.Polyline, sheet geom.Box) error {
	for i, p := range pts {
		if !p.Finite() {
			return Refuse(PointNumber, i+1)
		}
		if !sheet.Contains(p) {
			return Refuse(PointOutside, i+1, p)
		}
	}
	return nil
}
