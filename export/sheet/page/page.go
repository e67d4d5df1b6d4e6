// Package page writes a build sheet as one web page that needs nothing beside
// itself: style and pictures are in it, no script is, and it asks no network for
// anything. It follows the reader's choice of light or dark, reads on a phone and
// prints on A4 and letter.
package page

import (
	_ "embed"
	"fmt"
	"io"
	"strings"

	"slingloft/export/sheet"
	"slingloft/export/sheet/picture"
)

//go:embed page.css
var rules string

// Style returns the style sheet that the page's own elements need.
func Style() string {
	light, dark := picture.Colours(false), picture.Colours(true)
	return fmt.Sprintf(":root{color-scheme:light dark;%s}\n@media screen and (prefers-color-scheme:dark){:root{%s}}\n%s\n%s",
		light, dark, picture.Rules(), rules)
}

// policy lets a page use its own style and nothing else.
const policy = "default-src 'none'; style-src 'unsafe-inline'; img-src 'none'; base-uri 'none'; form-action 'none'"

// Write writes the whole page.
func Write(w io.Writer, s sheet.Sheet) error {
	var b strings.Builder
	fmt.Fprintf(&b, "<!DOCTYPE html>\n<html lang=\"%s\">\n<head>\n<meta charset=\"utf-8\">\n", esc(s.Frame.Language))
	fmt.Fprintf(&b, "<meta http-equiv=\"Content-Security-Policy\" content=\"%s\">\n", policy)
	b.WriteString("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
	fmt.Fprintf(&b, "<title>%s</title>\n<style>\n%s</style>\n</head>\n<body>\n", esc(s.File()), Style())
	fmt.Fprintf(&b, "<a class=\"skip\" href=\"#main\">%s</a>\n", esc(s.Frame.Skip))
	b.WriteString(Body(s))
	b.WriteString("</body>\n</html>\n")
	_, err := io.WriteString(w, b.String())
	return err
}

// writer collects a page.
type writer struct {
	strings.Builder
	frame sheet.Frame
}

// Body returns what stands in the page: title, contents and sections.
func Body(s sheet.Sheet) string {
	b := writer{frame: s.Frame}
	fmt.Fprintf(&b, "<header class=\"title\">\n<h1>%s</h1>\n<p>%s</p>\n</header>\n", esc(s.Title), esc(s.Subtitle))
	fmt.Fprintf(&b, "<nav aria-label=\"%s\">\n<ol>\n", esc(s.Frame.Contents))
	for i, sec := range s.Sections {
		class := ""
		if s.Opens(i) {
			class = " class=\"opens\""
		}
		fmt.Fprintf(&b, "<li%s><a href=\"#%s\">%s</a></li>\n", class, sec.ID, esc(sec.Title))
	}
	b.WriteString("</ol>\n</nav>\n<main id=\"main\">\n")
	fmt.Fprintf(&b, "<p class=\"verdict %s\"><strong>%s.</strong> %s</p>\n", grade(s.Verdict.Grade), esc(s.Verdict.Title), esc(s.Verdict.Text))
	for i, sec := range s.Sections {
		if s.Opens(i) {
			fmt.Fprintf(&b, "<h2 class=\"part\" id=\"part-%s\">%s</h2>\n", sec.Part, esc(s.Frame.Parts[sec.Part]))
		}
		fmt.Fprintf(&b, "<section id=\"%s\" aria-labelledby=\"%s-h\">\n<h3 id=\"%s-h\"><span class=\"no\">%d</span> %s</h3>\n",
			sec.ID, sec.ID, sec.ID, i+1, esc(sec.Title))
		writeBlocks(&b, sec.Blocks)
		b.WriteString("</section>\n")
	}
	b.WriteString("</main>\n")
	fmt.Fprintf(&b, "<footer><p>%s</p></footer>\n", esc(s.Foot()))
	return b.String()
}

func esc(s string) string { return picture.Escaped(s) }

// grade returns the class of a grade.
func grade(g sheet.Grade) string { return [...]string{"good", "careful", "bad"}[g] }

// pictures reports whether a block holds pictures: the tables after it belong to
// it, so that it begins a row.
func pictures(block sheet.Block) bool {
	_, yes := block.(sheet.Figures)
	return yes
}

// writeBlocks writes a section's blocks, small ones beside each other.
func writeBlocks(b *writer, blocks []sheet.Block) {
	for i := 0; i < len(blocks); {
		n := i
		for n < len(blocks) && beside(blocks[n]) && (n == i || !pictures(blocks[n])) {
			n++
		}
		if n == i {
			writeBlock(b, blocks[i])
			i++
			continue
		}
		b.WriteString("<div class=\"row\">\n")
		for _, block := range blocks[i:n] {
			writeBlock(b, block)
		}
		b.WriteString("</div>\n")
		i = n
	}
}

func writeBlock(b *writer, block sheet.Block) {
	switch t := block.(type) {
	case sheet.Para:
		fmt.Fprintf(b, "<p>%s</p>\n", esc(string(t)))
	case sheet.List:
		writeList(b, t)
	case sheet.Notice:
		fmt.Fprintf(b, "<div class=\"notice %s\">\n<h4>%s</h4>\n", grade(t.Grade), esc(t.Title))
		writeList(b, t.Lines)
		b.WriteString("</div>\n")
	case sheet.Ticks:
		writeTicks(b, t)
	case sheet.Steps:
		writeSteps(b, t)
	case sheet.Terms:
		writeTerms(b, t)
	case sheet.Table:
		writeTable(b, t)
	case sheet.Figures:
		writeFigures(b, t)
	}
}

func writeList(b *writer, lines []string) {
	b.WriteString("<ul>\n")
	for _, l := range lines {
		fmt.Fprintf(b, "<li>%s</li>\n", esc(l))
	}
	b.WriteString("</ul>\n")
}

// hint says beside a wide picture that it goes on, where it is wider than the screen.
func (b *writer) hint(f *sheet.Figure) string {
	if !f.Wide() {
		return ""
	}
	return fmt.Sprintf(" <span class=\"hint\">%s</span>", esc(b.frame.GoesOn))
}

func writeFigures(b *writer, figs sheet.Figures) {
	b.WriteString("<div class=\"figures\">\n")
	for i := range figs {
		f := &figs[i]
		class := "narrow"
		if f.Wide() {
			class = "wide"
		}
		fmt.Fprintf(b, "<figure class=\"%s\">\n", class)
		if f.Wide() {
			// A scrolling region has to be within reach of the keyboard.
			fmt.Fprintf(b, "<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"%s\">%s</div>\n",
				esc(fmt.Sprintf(b.frame.Picture, f.Picture.Title)), f.Picture.SVG())
		} else {
			b.WriteString(f.Picture.SVG() + "\n")
		}
		fmt.Fprintf(b, "<figcaption>%s%s</figcaption>\n</figure>\n", esc(f.Caption), b.hint(f))
	}
	b.WriteString("</div>\n")
}
