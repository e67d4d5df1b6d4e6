// Package dxf writes drawings as DXF for CAD programs, and reads DXF files.
//
// The version is AC1018, the first that knows true colours. Lengths are mm
// ($INSUNITS 4), or inches ($INSUNITS 1) where the options say so. There is one layer for each kind of work, named by it, with
// colour, width and a line type of its own that is in mm as well. Every line is a
// LWPOLYLINE, closed where the line is, and carries its name as extended data of
// the application SLINGLOFT. Lettering is drawn as strokes, so that it looks the
// same everywhere and a machine can follow it; there are no TEXT entities. The
// limits of the drawing are those of the sheet, its extents those of the lines.
//
// Group codes and their meaning follow Autodesk's DXF Reference.
package dxf

import (
	"fmt"
	"io"
	"math"

	"slingloft/export"
	"slingloft/export/simplify"
	"slingloft/export/style"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// application names the extended data that carries the names of lines.
const application = "SLINGLOFT"

// Handles of the fixed parts; the rest follows from firstHandle on.
const (
	handleBlocks    = 0x1 // block record table
	handleLayers    = 0x2
	handleStyles    = 0x3
	handleTypes     = 0x5
	handleViews     = 0x6
	handleUCS       = 0x7
	handleViewports = 0x8
	handleApps      = 0x9
	handleDims      = 0xA
	handleRoot      = 0xC
	handleGroups    = 0xD
	handleModel     = 0x1F // record of the model space
	handlePaper     = 0x1B
	firstHandle     = 0x40
)

// writer writes one file.
type writer struct {
	*pairs
	last      int     // handle given last
	tolerance float64 // within which arcs replace chords, 0 for no arcs
}

func (w *writer) next() int {
	w.last++
	return w.last
}

// Write writes the drawing as DXF with a layer for each kind of work, curves as
// the chords that the drawing has.
func Write(out io.Writer, d export.Drawing, o export.Options) error { return WriteArcs(out, d, o, 0) }

// maxArcTolerance is more than any line of a pattern may be off, mm.
const maxArcTolerance = 1.0

// WriteArcs is [Write] with arcs, as bulges of the polylines, that lie within
// tolerance mm of the lines, lettering left as it is. 0 writes no arcs.
func WriteArcs(out io.Writer, d export.Drawing, o export.Options, tolerance float64) error {
	if !export.Inside(tolerance, 0, maxArcTolerance) {
		return export.Refuse(export.ArcsOff, tolerance, maxArcTolerance)
	}
	plain, err := d.Plain(o)
	if err != nil {
		return err
	}
	w := &writer{pairs: newPairs(out, o.Inches), last: firstHandle, tolerance: tolerance}
	w.header(plain)
	w.all("0", "SECTION", "2", "CLASSES", "0", "ENDSEC")
	w.tables(o.Scheme, plain)
	w.blocks()
	w.all("0", "SECTION", "2", "ENTITIES")
	for _, l := range plain.Lines {
		w.polyline(l)
	}
	w.all("0", "ENDSEC")
	w.objects()
	w.all("0", "EOF")
	return w.flush()
}

// header writes the header. The seed for handles lies above all that are used:
// a few per layer and one per line.
func (w *writer) header(d export.Drawing) {
	box := geom.EmptyBox()
	for _, l := range d.Lines {
		box = box.Union(l.Points.Bounds())
	}
	if box.Empty() {
		box = geom.Box{}
	}
	w.all("0", "SECTION", "2", "HEADER", "9", "$ACADVER", "1", "AC1018", "9", "$DWGCODEPAGE", "3", "ANSI_1252")
	w.all("9", "$HANDSEED")
	w.handle(5, firstHandle+100+len(d.Lines))
	w.units()
	w.all("9", "$LUNITS", "70", "2", "9", "$LUPREC", "70", "4")
	w.all("9", "$LTSCALE", "40", "1.0", "9", "$PLINEGEN", "70", "1", "9", "$INSBASE", "10", "0.0", "20", "0.0", "30", "0.0")
	w.all("9", "$EXTMIN")
	w.point(box.Min)
	w.num(30, 0)
	w.all("9", "$EXTMAX")
	w.point(box.Max)
	w.num(30, 0)
	w.all("9", "$LIMMIN")
	w.point(geom.Point{})
	w.all("9", "$LIMMAX")
	w.point(geom.Pt(d.Width, d.Height))
	w.all("0", "ENDSEC")
}

func (w *writer) point(p geom.Point) {
	w.num(10, p.X)
	w.num(20, p.Y)
}

// polyline writes one line. Bit 128 lets dashes run on through the vertices.
func (w *writer) polyline(l piece.Line) {
	flags := 128
	if l.Closed {
		flags |= 1
	}
	w.raw(0, "LWPOLYLINE")
	w.handle(5, w.next())
	w.handle(330, handleModel)
	w.all("100", "AcDbEntity")
	w.raw(8, l.Work.String())
	vertices := w.vertices(l)
	w.all("100", "AcDbPolyline")
	w.int(90, len(vertices))
	w.int(70, flags)
	w.num(43, 0)
	for _, v := range vertices {
		w.point(v.at)
		if v.bulge != 0 {
			w.raw(42, export.Fixed(v.bulge, bulgeDecimals))
		}
	}
	w.raw(1001, application)
	for _, part := range inParts(escaped(l.Name)) {
		w.raw(1000, part)
	}
}

// bulgeDecimals keep an arc of 10 m radius true to less than a hundredth of a
// micrometre.
const bulgeDecimals = 12

// vertices returns the vertices of a line, with arcs where they are asked for.
func (w *writer) vertices(l piece.Line) []vertex {
	var out []vertex
	if w.tolerance == 0 || l.Work == piece.Lettering {
		for _, p := range l.Points {
			out = append(out, vertex{at: p})
		}
		return out
	}
	at, pieces := simplify.Arcs(l.Points, l.Closed, w.tolerance)
	for _, p := range pieces {
		out = append(out, vertex{at, p.Bulge})
		at = p.To
	}
	if !l.Closed {
		out = append(out, vertex{at: at})
	}
	return out
}

// inParts cuts text into strings of extended data, which hold 255 bytes each,
// without parting an escape.
func inParts(text string) []string {
	const limit, escape = 240, 7
	var out []string
	for len(text) > limit {
		cut := limit
		for k := 1; k < escape; k++ {
			if text[limit-k] == '\\' {
				cut = limit - k
			}
		}
		out = append(out, text[:cut])
		text = text[cut:]
	}
	return append(out, text)
}

// aci returns the entry of AutoCAD's index of 255 colours that is near c, for
// readers that know no true colour: black and greys are 7, bright hues 10, 20 …
// 240 in steps of 15 degrees, and two above each its darker shade.
func aci(c style.Colour) int {
	high := max(c.R, c.G, c.B)
	low := min(c.R, c.G, c.B)
	if high-low < 16 {
		return 7
	}
	r, g, b, span := float64(c.R), float64(c.G), float64(c.B), float64(high-low)
	var sixth float64
	switch high {
	case c.R:
		sixth = math.Mod((g-b)/span+6, 6)
	case c.G:
		sixth = (b-r)/span + 2
	default:
		sixth = (r-g)/span + 4
	}
	index := 10 + 10*(int(math.Round(sixth*4))%24)
	if high < 204 {
		index += 2
	}
	return index
}

// lineWeight returns the nearest of the widths that group 370 knows, in
// hundredths of a millimetre.
func lineWeight(mm float64) int {
	known := [...]int{0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140, 158, 200, 211}
	best := known[0]
	for _, k := range known {
		if math.Abs(float64(k)-float64(mm*100)) < math.Abs(float64(best)-float64(mm*100)) {
			best = k
		}
	}
	return best
}

// typeName returns the name of the line type of a kind of work.
func typeName(s style.Stroke, w piece.Work) string {
	if len(s.Dash) == 0 {
		return "Continuous"
	}
	return fmt.Sprintf("dash-%s", w)
}
