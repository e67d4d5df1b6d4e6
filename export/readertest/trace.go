package readertest

import (
	"encoding/xml"
	"errors"
	"io"
	"strings"
	"testing"

	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// TracedPage is what MuPDF's trace device says that a page draws.
type TracedPage struct {
	Width, Height float64 // mm
	Lines         []piece.Line
}

// Trace returns the pages of a PDF file as MuPDF draws them, in mm, y upwards.
// The kind of work is that of the layer; lines have no names.
func Trace(t testing.TB, file string) []TracedPage {
	t.Helper()
	const mm = 25.4 / 72
	d := xml.NewDecoder(strings.NewReader(Run(t, "mutool", "draw", "-F", "trace", "-o", "-", file, "1-N")))
	var pages []TracedPage
	var layers []string
	var m [6]float64
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return pages
		}
		if err != nil {
			t.Fatal(err)
		}
		e, ok := token.(xml.StartElement)
		if !ok {
			continue
		}
		value := map[string]string{}
		for _, a := range e.Attr {
			value[a.Name.Local] = a.Value
		}
		switch e.Name.Local {
		case "page":
			box := floats(t, value["mediabox"], 4)
			pages = append(pages, TracedPage{Width: box[2] * mm, Height: box[3] * mm})
		case "layer":
			layers = append(layers, value["name"])
		case "end_layer":
			layers = layers[:len(layers)-1]
		case "stroke_path", "fill_path":
			copy(m[:], floats(t, value["transform"], 6))
		case "moveto", "lineto":
			p := &pages[len(pages)-1]
			if e.Name.Local == "moveto" {
				p.Lines = append(p.Lines, piece.Line{Work: workOf(layers)})
			}
			x, y := floats(t, value["x"], 1)[0], floats(t, value["y"], 1)[0]
			l := &p.Lines[len(p.Lines)-1]
			l.Points = append(l.Points, geom.Pt((m[0]*x+m[2]*y+m[4])*mm, p.Height-(m[1]*x+m[3]*y+m[5])*mm))
		case "closepath":
			p := &pages[len(pages)-1]
			p.Lines[len(p.Lines)-1].Closed = true
		}
	}
}

func workOf(layers []string) piece.Work {
	for _, name := range layers {
		for _, w := range piece.Works() {
			if w.String() == name {
				return w
			}
		}
	}
	return -1
}
