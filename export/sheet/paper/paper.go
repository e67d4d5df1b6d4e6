// Package paper writes a build sheet as a PDF file for A4 or letter paper: the
// same sections, tables and pictures as the web page, the pictures as lines and
// letters and not as dots.
package paper

import (
	"fmt"
	"io"
	"strings"
	"time"
	"unicode/utf8"

	"codeberg.org/go-fonts/liberation/liberationsansbold"
	"codeberg.org/go-fonts/liberation/liberationsansregular"
	"codeberg.org/go-pdf/fpdf"

	"slingloft/export/sheet"
	"slingloft/export/sheet/picture"
)

// Size is a paper.
type Size struct{ Width, Height float64 } // mm

// The papers.
var (
	A4     = Size{210, 297}
	Letter = Size{215.9, 279.4}
)

// Layout on the paper, mm: content is as wide as the widest picture.
const (
	content = picture.Wide
	top     = 14.0
	bottom  = 16.0
	gap     = 4.0 // between things beside each other
	below   = 4.0 // after each row of them
)

// Write writes the sheet on paper of the given size.
func Write(w io.Writer, s sheet.Sheet, size Size) error {
	p := newWriter(s, size)
	p.title()
	for i, sec := range s.Sections {
		if s.Opens(i) {
			p.opens(i, sec.Part)
		}
		p.section(i+1, sec)
	}
	return p.pdf.Output(w)
}

// writer lays a sheet out on pages.
type writer struct {
	pdf   *fpdf.Fpdf
	sheet sheet.Sheet
	left  float64
	end   float64 // lowest y of content
	y     float64
}

// pages stands for the number of pages until it is known.
const pages = "{nb}"

func newWriter(s sheet.Sheet, size Size) *writer {
	pdf := fpdf.NewCustom(&fpdf.InitType{UnitStr: "mm", Size: fpdf.SizeType{Wd: size.Width, Ht: size.Height}})
	p := &writer{pdf: pdf, sheet: s, left: (size.Width - content) / 2, end: size.Height - bottom}
	// The same sheet gives the same bytes: no clock, no order of a map.
	day := time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)
	pdf.SetCreationDate(day)
	pdf.SetModificationDate(day)
	pdf.SetCatalogSort(true)
	pdf.SetProducer("Slingloft", true)
	pdf.SetTitle(safe(s.File()), true)
	pdf.SetSubject(s.Design(), true)
	pdf.SetLang(s.Frame.Language)
	pdf.SetAutoPageBreak(false, 0)
	pdf.SetMargins(p.left, top, p.left)
	pdf.AddUTF8FontFromBytes("sans", "", liberationsansregular.TTF)
	pdf.AddUTF8FontFromBytes("sans", "B", liberationsansbold.TTF)
	pdf.SetLineCapStyle("round")
	pdf.SetLineJoinStyle("round")
	pdf.AliasNbPages(pages)
	pdf.SetFooterFunc(p.foot)
	p.page()
	return p
}

// page begins a page.
func (p *writer) page() {
	p.pdf.AddPage()
	p.y = top
}

// foot writes a page's foot.
func (p *writer) foot() {
	y := p.end + 7
	p.write(font{size: 7.5, ink: picture.Quiet}, p.left, y, p.sheet.Foot())
	number := fmt.Sprintf("%d / %s", p.pdf.PageNo(), pages)
	p.write(font{size: 7.5, ink: picture.Quiet}, p.left+content-width(font{size: 7.5}, "00 / 00"), y, number)
}

// room begins a new page where less than h mm are left, unless the page is new.
func (p *writer) room(h float64) {
	if p.y+h > p.end && p.y > top {
		p.page()
	}
}

// title writes what stands above all.
func (p *writer) title() {
	for _, l := range wrap(font{size: 20}, p.sheet.Title, content) {
		p.y += 8
		p.write(font{size: 20}, p.left, p.y, l)
	}
	p.y += 2
	p.text(font{size: 9, ink: picture.Quiet}, p.sheet.Subtitle, content)
	p.y += 2
	v := p.sheet.Verdict
	p.place(p.notice(sheet.Notice{Grade: v.Grade, Title: v.Title, Lines: []string{v.Text}}))
}

// opens writes the heading of a part, on a page of its own but for the first.
func (p *writer) opens(i int, part sheet.Part) {
	if i > 0 {
		p.page()
	}
	name := p.sheet.Frame.Parts[part]
	p.y += 8
	p.pdf.Bookmark(safe(name), 0, p.y-7)
	p.write(font{size: 17}, p.left, p.y, name)
	p.y += 3
}

// section writes a section's heading and blocks. The heading stays with what
// follows it, a paragraph that opens the section with what follows that.
func (p *writer) section(no int, s sheet.Section) {
	const heading = 12.0
	runs, first := p.items(s.Blocks), 30.0
	if len(runs) > 0 {
		first = runs[0][0].h
	}
	if len(runs) > 1 && isPara(s.Blocks[0]) {
		first += below + runs[1][0].h
	}
	p.room(heading + min(first, 170))
	p.y += 7
	p.pdf.Bookmark(safe(s.Title), 1, p.y-5)
	p.write(font{size: 13, bold: true}, p.left, p.y, fmt.Sprintf("%d  %s", no, s.Title))
	p.y += 5
	for _, run := range runs {
		p.place(run)
	}
}

func isPara(b sheet.Block) bool {
	_, ok := b.(sheet.Para)
	return ok
}

// font is how a text is set.
type font struct {
	size float64 // points
	bold bool
	ink  picture.Ink
}

// mm returns a font's size in mm, lead the distance of its lines.
func (f font) mm() float64   { return f.size * 25.4 / 72 }
func (f font) lead() float64 { return 1.35 * f.mm() }

func width(f font, text string) float64 { return picture.Width(safe(text), f.mm(), f.bold) }

// write writes a line of text from x on base line y.
func (p *writer) write(f font, x, y float64, text string) {
	p.use(f)
	p.pdf.Text(x, y, safe(text))
}

func (p *writer) use(f font) {
	bold := ""
	if f.bold {
		bold = "B"
	}
	p.pdf.SetFont("sans", bold, f.size)
	c := f.ink.OnPaper()
	p.pdf.SetTextColor(int(c[0]), int(c[1]), int(c[2]))
}

// text writes a paragraph in a column at the left.
func (p *writer) text(f font, text string, room float64) {
	for _, l := range wrap(f, text, room) {
		p.room(f.lead())
		p.y += f.lead()
		p.write(f, p.left, p.y, l)
	}
}

// wrap breaks text into lines of at most the given width, mm; a word that is wider
// is broken too.
func wrap(f font, text string, room float64) []string {
	var out []string
	line := ""
	for _, w := range strings.Fields(text) {
		for w != "" && width(f, w) > room {
			n := fitting(f, w, room)
			if line != "" {
				out, line = append(out, line), ""
			}
			out, w = append(out, w[:n]), w[n:]
		}
		next := w
		if line != "" {
			next = line + " " + w
		}
		if line != "" && width(f, next) > room {
			out = append(out, line)
			next = w
		}
		line = next
	}
	return append(out, line)
}

// fitting returns how many bytes of a word fit, at least those of its first letter.
func fitting(f font, word string, room float64) int {
	n := 0
	for i, r := range word {
		end := i + utf8.RuneLen(r)
		if r == utf8.RuneError {
			end = i + 1
		}
		if n > 0 && width(f, word[:end]) > room {
			break
		}
		n = end
	}
	return n
}

// safe returns text without what the font or the format cannot hold: control
// characters and those beyond the basic plane.
func safe(text string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r < ' ' || r == 0x7f:
			return ' '
		case r > 0xffff || r >= 0xd800 && r < 0xe000:
			return '□'
		}
		return r
	}, text)
}
