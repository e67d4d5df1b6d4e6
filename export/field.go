package export

import (
	"math"

	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Field is the part of a drawing that a machine works at one time, where the stock is
// longer than its bed: the stock is moved on along x between one field and the next. A
// drawing with a field is that of the whole stock; what writes it draws the field's part
// alone, counted from the field's own corner, see [Field.Parts] and [Drawing.InField].
type Field struct {
	Number int    // from 1
	Spans  []Span // of all fields, in their order

	Width float64 // of every field, mm
	Feed  float64 // by which the stock was moved on since the field before, mm on the stock
	Match []Match // crosses that this field has in common with the one before
}

// Span is where a field lies along the drawing's x, mm.
type Span struct {
	From      float64 // its edge; the other is a field's width on
	Low, High float64 // where lines that are longer than any field are parted
}

// Match is a cross that two fields have in common, so that the stock can be lined up by it.
type Match struct {
	Name string
	At   geom.Point
}

// SeamLap is how far a cut that is parted goes over the parting, half of it from either
// field, mm: what lining up by crosses may be off along the cut, and more (own choice).
const SeamLap = 2.0

// span returns where the field lies.
func (f *Field) span() Span { return f.Spans[f.Number-1] }

// Box returns the field's part of a drawing of a height, mm.
func (f *Field) Box(height float64) geom.Box {
	from := f.span().From
	return geom.Box{Min: geom.Pt(from, 0), Max: geom.Pt(from+f.Width, height)}
}

// Parts returns what of a line is done in the field: all of it in the first field that
// holds it, and clear mm on either side of it; of a line that no field holds the part up
// to where it is parted, open. Crosses are in both their fields. Without a field a line
// is done as it is.
func (f *Field) Parts(l piece.Line, clear float64) []piece.Line {
	switch {
	case f == nil:
		return []piece.Line{l}
	case l.Role == piece.MatchCross:
		if l.Index == f.Number || l.Index == f.Number-1 {
			return []piece.Line{l}
		}
		return nil
	}
	box := l.Points.Bounds()
	for i, s := range f.Spans {
		if box.Min.X >= s.From+clear && box.Max.X <= s.From+f.Width-clear {
			if i+1 == f.Number {
				return []piece.Line{l}
			}
			return nil
		}
	}
	return f.parted(l)
}

// parted returns the field's part of a line that no field holds.
func (f *Field) parted(l piece.Line) []piece.Line {
	s, lap := f.span(), 0.0
	if Through(l.Work) {
		lap = SeamLap / 2
	}
	box := geom.Box{Min: geom.Pt(s.Low-lap, math.Inf(-1)), Max: geom.Pt(s.High+lap, math.Inf(1))}
	runs := l.Points.Within(box)
	if l.Closed {
		runs = geom.Ring(l.Points).Within(box)
	}
	var out []piece.Line
	for _, run := range runs {
		part := l
		part.Points, part.Closed = run, false
		out = append(out, part)
	}
	return out
}

// scaled returns the field in a file, as the options have its drawing.
func (f *Field) scaled(o Options) *Field {
	if f == nil {
		return nil
	}
	k := o.Point(geom.Pt(1, 1)).X
	out := &Field{Number: f.Number, Width: f.Width * k, Feed: f.Feed * o.ScaleFactor()}
	for _, s := range f.Spans {
		out.Spans = append(out.Spans, Span{s.From * k, s.Low * k, s.High * k})
	}
	for _, m := range f.Match {
		out.Match = append(out.Match, Match{m.Name, o.Point(m.At)})
	}
	return out
}

// InField returns a plain drawing as a machine has it on its bed: of one with a field the
// field's part, counted from its own corner; any other as it is. Its lines are the
// caller's own.
func (d Drawing) InField() Drawing {
	f := d.Field
	if f == nil {
		return d
	}
	var lines []piece.Line
	for _, l := range d.Lines {
		for _, part := range f.Parts(l, 0) {
			lines = append(lines, part.Moved(geom.Motion{Shift: f.Shift()}))
		}
	}
	d.Lines = lines
	return d.OnBed()
}

// Shift is the way from the drawing's places to those of the field.
func (f *Field) Shift() geom.Point {
	if f == nil {
		return geom.Point{}
	}
	return geom.Pt(-f.span().From, 0)
}

// OnBed returns the drawing in the size of its field, and its crosses counted from there.
func (d Drawing) OnBed() Drawing {
	if d.Field == nil {
		return d
	}
	f := *d.Field
	f.Match = nil
	for _, m := range d.Field.Match {
		f.Match = append(f.Match, Match{m.Name, m.At.Plus(f.Shift())})
	}
	d.Field, d.Width = &f, f.Width
	return d
}
