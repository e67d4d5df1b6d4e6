package command

import (
	"fmt"
	"io"

	"slingloft/cmd/slingloft/document"
	"slingloft/cmd/slingloft/work"
)

// sayBrought tells of outlines that were brought in, each with what one can measure,
// and of what their files hold beside them.
func sayBrought(w io.Writer, p *work.Plan) {
	st := p.Style()
	for _, b := range p.Brought {
		text := fmt.Sprintf("brought in: %s, %s × %s", b.Title, st.Length(b.Width), st.Length(b.Height))
		for _, part := range [...]struct {
			n         int
			one, more string
		}{{b.Holes, "hole", "holes"}, {b.Lines, "line in it", "lines in it"}} {
			switch {
			case part.n == 1:
				text += ", 1 " + part.one
			case part.n > 1:
				text += fmt.Sprintf(", %d %s", part.n, part.more)
			}
		}
		if b.KeepOut {
			text += ", kept clear"
		}
		say(w, text)
	}
	for _, s := range p.Sources {
		for _, note := range notesOf(s) {
			sayf(w, "note: %s: %s", s.File, note)
		}
	}
}

// notesOf says what of a file was left out, and what may look otherwise elsewhere.
func notesOf(s work.Source) []string {
	out := append([]string{}, s.Doubts...)
	if s.Left.Any() {
		out = append(out, "left out: "+s.Left.String())
	}
	return out
}

// outlinesOf tells of outlines that were brought in.
func outlinesOf(p *work.Plan) []document.Outline {
	notes := map[string][]string{}
	for _, s := range p.Sources {
		notes[s.File] = notesOf(s)
	}
	out := []document.Outline{}
	for _, b := range p.Brought {
		use := map[bool]string{true: "keep-out", false: "piece"}[b.KeepOut]
		out = append(out, document.Outline{
			File: b.File, Name: b.Title, Use: use, Stock: b.Stock.String(), Size: [2]float64{b.Width, b.Height},
			Holes: b.Holes, Lines: b.Lines, Notes: notes[b.File],
		})
	}
	return out
}
