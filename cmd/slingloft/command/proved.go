package command

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"io/fs"
	"path/filepath"
	"slices"

	"slingloft/cmd/slingloft/document"
	"slingloft/export"
	"slingloft/export/prove"
	"slingloft/outline/design"
)

// What came of a file, as documents call it.
const (
	agrees     = "agrees"
	differs    = "differs"
	missing    = "missing"
	strange    = "not due"
	unreadable = "unreadable"
)

// proved is what came of one file.
type proved struct {
	code  int    // exit status that it earns
	text  string // on one line
	about document.Proved
}

// prove compares every file that should be there, and finds those that should not.
func (o output) prove(drawings []export.Drawing) ([]proved, error) {
	var out []proved
	due, err := o.due(drawings)
	if err != nil {
		return nil, err
	}
	isDue := map[string]bool{}
	for _, f := range due {
		out = append(out, o.proveOne(f))
		isDue[f.name()] = true
	}
	files, err := sheetsIn(o.folder)
	for _, f := range files {
		if !isDue[f.name] && slices.Contains(o.formats, f.format) {
			out = append(out, notDue(f, o.say.text(o.stray(f.name))))
		}
	}
	return out, err
}

// judgedFiles returns the status that files earn together.
func judgedFiles(files []proved) error {
	code := Done
	for _, f := range files {
		if code == Done || f.code == Failed {
			code = f.code
		}
	}
	switch code {
	case Done:
		return nil
	case Failed:
		return ends(Failed, Unread)
	}
	return ends(code, Disagreeing)
}

// proveOne compares one file.
func (o output) proveOne(f dueFile) proved {
	about := document.Proved{Name: f.name(), Format: f.format.Name, Sheet: f.sheet}
	fails := func(code int, verdict string, why notice) proved {
		text := o.say.text(why)
		about.Verdict, about.Faults = verdict, []string{text}
		return proved{code, text, about}
	}
	data, err := readFile(filepath.Join(o.folder, f.name()))
	if errors.Is(err, fs.ErrNotExist) {
		return fails(Disagree, missing, notice{what: IsMissing})
	}
	if err != nil {
		return fails(Failed, unreadable, notice{Because, []any{err}})
	}
	r, err := prove.File(data, prove.Sheet{Drawing: f.drawing, Options: o.options, Format: f.format, Codec: f.codec})
	if lacks := o.lacks(err, f.drawing.Stock); len(lacks) > 0 {
		return fails(Disagree, strange, notice{IsNotDue, []any{design.English().Found(lacks[0].Found)}})
	}
	if err != nil {
		return fails(Failed, unreadable, notice{CannotBeRead, []any{err}})
	}
	about.Verdict, about.Agrees, about.Faults = agrees, r.Agrees(), append([]string{}, o.say.Files.All(r.Faults)...)
	about.Changed = o.changed(f.name(), data)
	about.Lines, about.Worst, about.Where, about.Limit = r.Lines, r.Worst, r.Where, r.Limit
	about.Found, about.Due = measures(r.Found), measures(r.Due)
	text := r.Text(o.say.Files)
	switch {
	case !r.Agrees():
		about.Verdict = differs
		return proved{Disagree, o.since(text, about.Changed), about}
	case about.Changed:
		text = o.since(text, true)
	}
	return proved{Done, text, about}
}

// changed reports whether a file is not what was written, as far as the folder's record
// knows.
func (o output) changed(name string, data []byte) bool {
	k, ok := o.known[name]
	sum := sha256.Sum256(data)
	return ok && k.Sum != hex.EncodeToString(sum[:])
}

// since says of a file, beside what is said already, whether it was changed.
func (o output) since(text string, changed bool) string {
	switch {
	case changed:
		return o.say.text(notice{WasChanged, []any{text}})
	case len(o.cause) > 0:
		return o.say.text(notice{WasNotChanged, []any{text, o.cause}})
	}
	return text
}

// stray says why a file that is named like a sheet is not due.
func (o output) stray(name string) notice {
	k, ok := o.known[name]
	if !ok {
		return notice{what: OfAnother}
	}
	if was, err := readKept(k.Note); err == nil && was.At != "" {
		return notice{OfEarlierCut, []any{was.about(o.folder)}}
	}
	return notice{what: OfEarlier}
}

func measures(m prove.Measures) *document.Measures {
	out := document.Measures{Size: [2]float64{m.Width, m.Height}, Lines: m.Lines, Bars: []document.Bar{}}
	for _, b := range m.Bars {
		out.Bars = append(out.Bars, document.Bar(b))
	}
	return &out
}

// stale says of all sheets that are there why they are not due.
func (o output) stale(why string) ([]proved, error) {
	files, err := sheetsIn(o.folder)
	var out []proved
	for _, f := range files {
		if slices.Contains(o.formats, f.format) {
			out = append(out, notDue(f, why))
		}
	}
	return out, err
}

// notDue is a file that belongs to no sheet.
func notDue(f sheetFile, why string) proved {
	return proved{Disagree, why, document.Proved{Name: f.name, Format: f.format, Sheet: f.stem, Verdict: strange, Faults: []string{why}}}
}
