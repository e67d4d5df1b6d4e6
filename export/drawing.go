// Package export turns laid pieces into drawings and drawings into files.
//
// A [Drawing] is one sheet of work at true size: lines and lettering in mm, x
// to the right, y up, the origin at the lower left corner of the sheet. The
// packages below this one write a drawing in one format each, at a scale, to an
// io.Writer, and read such a file back.
package export

import (
	"slices"

	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Drawing is one sheet of work, ready for any format.
type Drawing struct {
	Name  string // file stem that says what is inside: "cloth-lay", "template-sheet-1"
	Title string // for people: "Cloth lay, sheet 1 of 1: Porch, design 0123abcd"

	Stock         piece.Stock // that it is cut from
	Roll          int         // of cloth: which of several rolls, from 0
	Width, Height float64     // size of the sheet at true scale, mm

	Lines  []piece.Line
	Labels []piece.Label

	// NoRoom names what stands on every sheet and had no room in the waste of this one.
	NoRoom []string

	Field *Field // of a stock that is longer than its machine's bed; nil: all of it at once

	from *Sheet // what it was composed from, nil if it was not
}

// OnStock returns the drawing as machines work it: as large as the stock, from corner
// to corner, with crosses, check bars and title in the waste. What has no room there is
// left out, see [Drawing.NoRoom]. A sheet whose band lies on its stock stays as it is,
// and so does a drawing that was not composed from a sheet.
func (d Drawing) OnStock() (Drawing, error) {
	if d.from == nil || d.from.Frame.Inside {
		return d, nil
	}
	s := *d.from
	u := s.Frame.unit()
	size := geom.Pt(s.Frame.Lay.Width(), s.Frame.Lay.Height())
	s.Frame = Frame{Width: size.X, Height: size.Y, Lay: geom.Box{Max: size}, Scale: 1 / u, Inside: true, bare: true}
	s.Edge = false // it is the stock's own
	return Compose(s)
}

// Holds reports whether a piece of the name lies on the drawing's sheet.
func (d Drawing) Holds(id string) bool {
	return d.from != nil && slices.ContainsFunc(d.from.Items, func(it Item) bool { return it.Piece.ID == id })
}

// Pieces returns the names of the pieces that lie on the drawing's sheet, each once.
func (d Drawing) Pieces() []string {
	var out []string
	if d.from != nil {
		for _, it := range d.from.Items {
			if !slices.Contains(out, it.Piece.ID) {
				out = append(out, it.Piece.ID)
			}
		}
	}
	return out
}

// Only returns the drawing with those of its pieces drawn whose names are given. The
// others keep their places.
func (d Drawing) Only(ids []string) (Drawing, error) {
	if d.from == nil {
		return d, nil
	}
	s := *d.from
	s.Items = slices.Clone(s.Items)
	for i, it := range s.Items {
		s.Items[i].Idle = !slices.Contains(ids, it.Piece.ID)
	}
	return Compose(s)
}

// Without returns the drawing without some kinds of work.
func (d Drawing) Without(left func(piece.Work) bool) Drawing {
	d.Lines = slices.DeleteFunc(slices.Clone(d.Lines), func(l piece.Line) bool { return left(l.Work) })
	if left(piece.Lettering) {
		d.Labels = nil
	}
	return d
}

// Bar is a check bar: a line of known length by which a plot is proved.
type Bar struct {
	Name   string  // as in the Line's name: "bar-100mm-x", "bar-4in-y"
	Length float64 // mm at true scale
}

// Bars returns the check bars that every drawing carries.
func Bars() []Bar {
	const inch = 25.4
	return []Bar{
		{"bar-100mm-x", 100}, {"bar-4in-x", 4 * inch},
		{"bar-100mm-y", 100}, {"bar-4in-y", 4 * inch},
	}
}
