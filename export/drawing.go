// Package export turns laid pieces into drawings and drawings into files.
//
// A [Drawing] is one sheet of work at true size: lines and lettering in mm, x
// to the right, y up, the origin at the lower left corner of the sheet. The
// packages below this one write a drawing in one format each, at a scale, to an
// io.Writer, and read such a file back.
package export

import "slingloft/outline/piece"

// Drawing is one sheet of work, ready for any format.
type Drawing struct {
	Name  string // file stem that says what is inside: "cloth-lay", "template-sheet-1"
	Title string // for people: "Cloth lay, sheet 1 of 1: Porch, design 0123abcd"

	Width, Height float64 // size of the sheet at true scale, mm

	Lines  []piece.Line
	Labels []piece.Label
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
