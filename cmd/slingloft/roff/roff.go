// Package roff writes manual pages in the macros of man(7).
package roff

import (
	"fmt"
	"strings"
)

// Page is a manual page as it grows.
type Page struct{ b strings.Builder }

// New begins the page of a command, in section 1. The day, such as 2026-11-28, is that
// of the sources; empty: unknown. The source names program and version.
func New(name, day, source string) *Page {
	p := &Page{}
	p.line(".TH %s 1 %q %q", strings.ToUpper(plain(name)), day, plain(source))
	return p
}

// String returns the page.
func (p *Page) String() string { return p.b.String() }

func (p *Page) line(format string, a ...any) { fmt.Fprintf(&p.b, format+"\n", a...) }

// Head begins a section.
func (p *Page) Head(title string) { p.line(".SH %s", strings.ToUpper(plain(title))) }

// Name prints what a page is of, in the form by which pages are found.
func (p *Page) Name(name, does string) { p.line(`%s \- %s`, plain(name), plain(does)) }

// Synopsis prints how a command is called: what is typed, and what is filled in.
func (p *Page) Synopsis(typed, filled string) {
	p.line(`\fB%s\fR \fI%s\fR`, plain(typed), plain(filled))
}

// Text prints paragraphs, which empty lines part.
func (p *Page) Text(text string) {
	for i, paragraph := range strings.Split(strings.TrimSpace(text), "\n\n") {
		if i > 0 {
			p.line(".PP")
		}
		for row := range strings.Lines(paragraph) {
			p.line("%s", plain(strings.TrimSpace(row)))
		}
	}
}

// Item prints a term, what follows it, if anything, and what it means.
func (p *Page) Item(term, follows, means string) {
	p.line(".TP")
	if follows == "" {
		p.line(`\fB%s\fR`, plain(term))
	} else {
		p.line(`\fB%s\fR \fI%s\fR`, plain(term), plain(follows))
	}
	p.line("%s", plain(means))
}

// Verbatim prints lines as they stand.
func (p *Page) Verbatim(text string) {
	p.line(".nf")
	for row := range strings.Lines(text) {
		p.line("%s", plain(strings.TrimRight(row, "\n")))
	}
	p.line(".fi")
}

// See names other pages of section 1.
func (p *Page) See(names ...string) {
	for i, n := range names {
		comma := ","
		if i == len(names)-1 {
			comma = ""
		}
		p.line(`\fB%s\fR(1)%s`, plain(n), comma)
	}
}

// plain returns a text that is printed as it is: a minus that can be copied, no escapes,
// no line that is taken for a macro.
func plain(s string) string {
	s = strings.NewReplacer(`\`, `\e`, "-", `\-`).Replace(s)
	if strings.HasPrefix(s, ".") || strings.HasPrefix(s, "'") {
		s = `\&` + s
	}
	return s
}
