package command

import (
	"slingloft/cmd/slingloft/document"
	"slingloft/cmd/slingloft/work"
)

// sayBrought tells of outlines that were brought in, each with what one can measure,
// and of what their files hold beside them.
func sayBrought(s Streams, p *work.Plan) {
	st := p.Style()
	for _, b := range p.Brought {
		var more []notice
		for _, part := range [...]struct {
			n         int
			one, many Message
		}{{b.Holes, OneHole, Holes}, {b.Lines, OneLine, Lines}} {
			switch {
			case part.n == 1:
				more = append(more, notice{what: part.one})
			case part.n > 1:
				more = append(more, notice{part.many, []any{part.n}})
			}
		}
		if b.KeepOut {
			more = append(more, notice{what: KeptClear})
		}
		s.say(BroughtIn, b.Title, st.Length(b.Width), st.Length(b.Height), more)
	}
	for _, from := range p.Sources {
		for _, note := range notesOf(from, s.words()) {
			s.say(NoteOf, from.File, note)
		}
	}
}

// notesOf says what of a file was left out, and what may look otherwise elsewhere.
func notesOf(s work.Source, w Words) []string {
	out := []string{}
	for _, d := range s.Doubts {
		out = append(out, w.Files.Fault(d))
	}
	if s.Left.Any() {
		out = append(out, w.text(notice{LeftOut, []any{w.Files.LeftOut(s.Left)}}))
	}
	return out
}

// outlinesOf tells of outlines that were brought in.
func outlinesOf(p *work.Plan, w Words) []document.Outline {
	notes := map[string][]string{}
	for _, s := range p.Sources {
		notes[s.File] = notesOf(s, w)
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
