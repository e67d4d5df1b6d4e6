// Package format lists every format that drawings are written in, by name.
package format

import (
	"fmt"
	"io"
	"strings"

	"slingloft/export"
	"slingloft/export/dxf"
	"slingloft/export/gcode"
	"slingloft/export/hpgl"
	"slingloft/export/pdf"
	"slingloft/export/preview"
	"slingloft/export/svg"
	"slingloft/export/tile"
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
		{"pdf", ".pdf", "printers and print shops, at true size", pdf.Write, pdf.Read, Names, 2e-3},
		{"hpgl", ".plt", "pen and roll plotters, knife plotters", hpgl.Write, hpgl.Read, Lines, 0.018},
		{"gcode", ".ngc", "lasers, routers and drag knives on CNC controllers", gcode.Write, gcode.Read, Lines, 1e-4},
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

// Machine returns G-code for a machine's own settings. What is read back are then
// the paths of the tool, beside the lines and with lead-ins: compare them with
// those of a program written anew.
func Machine(s gcode.Settings) Format {
	f := Format{Name: "gcode", Ending: ".ngc", About: "for a " + s.Tool.String(), Read: gcode.Read, Keeps: Lines, Tolerance: 1e-4}
	f.Write = func(w io.Writer, d export.Drawing, o export.Options) error { return gcode.WriteFor(w, d, o, s) }
	return f
}

// Tiled returns PDF divided into pages of the given paper. What is read back are
// the lines of all pages, each named by its page as in "page 2/sling-1/cut line":
// compare them with those of a file written anew.
func Tiled(p tile.Paper) Format {
	f := Format{Name: "pdf", Ending: ".pdf", About: "pages of " + p.Name + " to put together", Keeps: Names, Tolerance: 2e-3}
	f.Write = func(w io.Writer, d export.Drawing, o export.Options) error {
		return pdf.WriteTiled(w, []export.Drawing{d}, o, p)
	}
	f.Read = func(r io.Reader) (export.Drawing, error) {
		pages, err := pdf.ReadPages(r)
		if err != nil || len(pages) == 0 {
			return export.Drawing{}, err
		}
		d := export.Drawing{Width: pages[0].Width, Height: pages[0].Height}
		for i, p := range pages {
			for _, l := range p.Lines {
				l.Name = fmt.Sprintf("page %d/%s", i+1, l.Name)
				d.Lines = append(d.Lines, l)
			}
		}
		return d, nil
	}
	return f
}

// Pattern returns DXF for sewn-product pattern exchange, pieces only. It is read
// back by what each numbered layer stands for: compare it with a file written anew.
func Pattern() Format {
	return Format{"pattern", ".pattern.dxf", "sewn-product pattern exchange (ASTM D6673)", dxf.WritePattern, dxf.Read, Lines, 1e-4}
}

// Arcs returns DXF with arcs within tolerance mm of the lines. They are read back as
// chords: compare them with those of a file written anew.
func Arcs(tolerance float64) Format {
	f := Format{Name: "dxf", Ending: ".dxf", About: "CAD programs, curves as arcs", Read: dxf.Read, Keeps: Lines, Tolerance: 1e-4}
	f.Write = func(w io.Writer, d export.Drawing, o export.Options) error { return dxf.WriteArcs(w, d, o, tolerance) }
	return f
}
