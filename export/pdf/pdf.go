// Package pdf writes drawings as PDF, one page for each sheet at its true size,
// and reads such files back.
//
// There is one layer (optional content group) for each kind of work, named by it,
// and in it each line as one path, inside marked content /Line that carries its
// name. Coordinates have four decimals of a point. A page longer than 200 in is
// given in user units of several points (UserUnit, PDF 1.6), as the limits of
// viewers demand (PDF Reference, fifth edition, implementation note 171); viewers
// that do not know user units show such a page reduced, so the check bars must be
// measured.
package pdf

import (
	"bytes"
	"fmt"
	"io"
	"math"
	"regexp"
	"strings"
	"time"
	"unicode/utf16"

	"codeberg.org/go-pdf/fpdf"

	"slingloft/export"
	"slingloft/export/style"
	"slingloft/outline/piece"
)

const (
	pointsPerMM = 72 / 25.4
	maxPoints   = 14400 // 200 in, the longest page in user units
	decimals    = 4
)

// Write writes one drawing as a PDF of one page.
func Write(w io.Writer, d export.Drawing, o export.Options) error {
	return WritePages(w, []export.Drawing{d}, o)
}

// WritePages writes drawings as a PDF with a page for each.
func WritePages(w io.Writer, ds []export.Drawing, o export.Options) error {
	if len(ds) == 0 {
		return export.Refuse(export.NoDrawings)
	}
	f := fpdf.NewCustom(&fpdf.InitType{UnitStr: "pt", Size: fpdf.SizeType{Wd: 595.28, Ht: 841.89}})
	// The files must not depend on the time, and fpdf writes the present for none.
	never := time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)
	f.SetCreationDate(never)
	f.SetModificationDate(never)
	f.SetCatalogSort(true)
	f.SetProducer("Slingloft", false)
	f.SetTitle(export.OneLine(ds[0].Title), true)
	for _, work := range piece.Works() {
		f.AddLayer(work.String(), true)
	}
	var units []float64
	for _, d := range ds {
		plain, err := d.Plain(o)
		if err != nil {
			return err
		}
		p := newPage(plain)
		units = append(units, p.unit)
		f.AddPageFormat("P", fpdf.SizeType{Wd: p.width, Ht: p.height})
		f.SetPageBox("art", 0, 0, p.width, p.height)
		for _, work := range piece.Works() {
			f.BeginLayer(int(work))
			f.RawWriteStr(p.layer(plain, work, o.Scheme.Of(work)))
			f.EndLayer()
		}
	}
	var b bytes.Buffer
	if err := f.Output(&b); err != nil {
		return export.Refuse(export.InPDF, err)
	}
	data, err := withUserUnits(b.Bytes(), units)
	if err != nil {
		return err
	}
	_, err = w.Write(data)
	return err
}

// artBox matches the box that is written only to be replaced; it cannot occur in
// a page's content, which is compressed.
var artBox = regexp.MustCompile(`/ArtBox \[[0-9. ]*\]`)

// withUserUnits puts the user unit of each page, which fpdf cannot write, in the
// place of its art box, which says no more than the page size. The length stays
// the same, and so do the offsets of all objects.
func withUserUnits(data []byte, units []float64) ([]byte, error) {
	places := artBox.FindAllIndex(data, -1)
	if len(places) != len(units) {
		return nil, export.Refuse(export.PagesFound, len(places), len(units))
	}
	for i, at := range places {
		text := ""
		if units[i] != 1 {
			text = "/UserUnit " + export.Fixed(units[i], 1)
			copy(data, "%PDF-1.6")
		}
		room := data[at[0]:at[1]]
		copy(room, text+strings.Repeat(" ", len(room)))
	}
	return data, nil
}

// page turns mm into the user units of one page.
type page struct {
	unit          float64 // points in a user unit
	width, height float64 // user units
}

func newPage(d export.Drawing) page {
	longest := math.Max(d.Width, d.Height) * pointsPerMM
	unit := math.Max(1, math.Ceil(longest/maxPoints))
	return page{unit, d.Width * pointsPerMM / unit, d.Height * pointsPerMM / unit}
}

// num returns a length in mm in user units.
func (p page) num(mm float64) string { return export.Fixed(mm*pointsPerMM/p.unit, decimals) }

// layer returns the content for the lines of one kind of work.
func (p page) layer(d export.Drawing, work piece.Work, s style.Stroke) string {
	var b strings.Builder
	colour := func(v uint8) string { return export.Fixed(float64(v)/255, 4) }
	fmt.Fprintf(&b, "1 J 1 j %s %s %s RG %s w [", colour(s.Colour.R), colour(s.Colour.G), colour(s.Colour.B), p.num(s.Width))
	for i, d := range s.Dash {
		if i > 0 {
			b.WriteByte(' ')
		}
		b.WriteString(p.num(d))
	}
	b.WriteString("] 0 d\n")
	for _, l := range d.Lines {
		if l.Work != work {
			continue
		}
		fmt.Fprintf(&b, "/Line <</N <%s>>> BDC\n", hexText(l.Name))
		for i, q := range l.Points {
			op := "l"
			if i == 0 {
				op = "m"
			}
			fmt.Fprintf(&b, "%s %s %s\n", p.num(q.X), p.num(q.Y), op)
		}
		if l.Closed {
			b.WriteString("s EMC\n")
		} else {
			b.WriteString("S EMC\n")
		}
	}
	return b.String()
}

// hexText returns text as the digits of a hexadecimal string in UTF-16, in which
// no character can end the string.
func hexText(text string) string {
	var b strings.Builder
	b.WriteString("FEFF")
	for _, u := range utf16.Encode([]rune(text)) {
		fmt.Fprintf(&b, "%04X", u)
	}
	return b.String()
}
