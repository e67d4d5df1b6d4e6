// Package format lists every format that drawings are written in, by name.
package format

import (
	"fmt"
	"io"
	"strings"

	"slingloft/export"
	"slingloft/export/dxf"
	"slingloft/export/preview"
	"slingloft/export/svg"
)

// Format is one format of files.
type Format struct {
	Name   string // as it is asked for
	Ending string // of file names, with its dot
	About  string // what it is for, a few words

	// Write writes one drawing; the same drawing and options give the same bytes.
	Write func(w io.Writer, d export.Drawing, o export.Options) error
	// Read reads a file of ours back as what [export.Drawing.Plain] gave its
	// writer, as far as the format keeps it, see Keeps and Tolerance.
	Read func(r io.Reader) (export.Drawing, error)

	Keeps     Keeping
	Tolerance float64 // mm by which a point that is read may be off by rounding
}

// Keeping says how much of a drawing can be read back.
type Keeping int

// The kinds of keeping, each with all of the one before.
const (
	Size  Keeping = iota // the size of the sheet
	Lines                // and points, work and closedness of the lines, in any order
	Names                // and the lines' names
)

// All returns every format, in the order in which they are listed for people.
func All() []Format {
	return []Format{
		{"svg", ".svg", "laser cutters, browsers, drawing programs", svg.Write, svg.Read, Names, 1e-4},
		{"dxf", ".dxf", "CAD programs", dxf.Write, dxf.Read, Names, 1e-4},
		{"png", ".png", "a picture to look at", preview.Write, preview.Read, Size, 1},
	}
}

// Named returns the format of the given name.
func Named(name string) (Format, error) {
	var names []string
	for _, f := range All() {
		if f.Name == name {
			return f, nil
		}
		names = append(names, f.Name)
	}
	return Format{}, fmt.Errorf("format %.30q: want one of %s", name, strings.Join(names, ", "))
}
