package pdf

import (
	"fmt"
	"io"
	"regexp"
	"slices"
	"strings"

	"slingloft/export"
	"slingloft/export/tile"
	"slingloft/outline/design"
)

// Format returns PDF, of whole sheets or divided into pages, as a format of files.
func Format() export.Format {
	return export.Format{Name: "pdf", Ending: ".pdf", SetUp: setUp}
}

// setUp chooses whole sheets, or pages where the machine takes a paper.
func setUp(m design.Machine, _ export.Material) (export.Codec, error) {
	c := export.Codec{Write: Write, Read: Read, Keeps: export.Names, Tolerance: 2e-3, Layers: layers, Faults: faults, Notes: notes}
	if m.Paper == "" || m.Paper == design.WholeSheet {
		return c, nil
	}
	p, err := tile.PaperNamed(m.Paper)
	if err != nil {
		return c, err
	}
	p.Overlap = m.Overlap
	c.Divided, c.Read, c.Notes = true, readDivided, nil
	c.Write = func(w io.Writer, d export.Drawing, o export.Options) error {
		return WriteTiled(w, []export.Drawing{d}, o, p)
	}
	return c, nil
}

// notes says where a page is larger than a PDF page of plain units may be.
func notes(d export.Drawing, o export.Options) []export.Note {
	w, h := o.Size(d)
	unit := newPage(export.Drawing{Width: w, Height: h}).unit
	if unit == 1 {
		return nil
	}
	far := "5080 mm"
	if o.Inches {
		far = "200 in"
	}
	return []export.Note{export.Tell(export.LargePage, far, export.Fixed(unit, 0))}
}

// readDivided reads the lines of all pages, each named by its page as in "page
// 2/sling-1/cut line". The size is that of the first page.
func readDivided(r io.Reader) (export.Drawing, error) {
	pages, err := ReadPages(r)
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

// layerName matches the name of a layer, which is in UTF-16.
var layerName = regexp.MustCompile(`(?s)/OCG /Name \((.*?)\)`)

// layers returns the names of the layers in a file, of which the letters that ASCII
// has are enough here.
func layers(data []byte) []string {
	names := export.LayerNames(layerName, data)
	for i, name := range names {
		names[i] = strings.TrimPrefix(strings.ReplaceAll(name, "\x00", ""), "\xfe\xff")
	}
	slices.Sort(names)
	return slices.Compact(names)
}
