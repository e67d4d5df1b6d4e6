package command

import (
	"bytes"
	"errors"
	"fmt"
	"math"
	"runtime"
	"slices"
	"strings"
	"sync"
	"sync/atomic"

	"slingloft/cmd/slingloft/document"
	"slingloft/export"
	"slingloft/export/gcode"
	"slingloft/export/whole"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
	"slingloft/outline/words"
)

// output is all that it takes to write the sheets of a plan.
type output struct {
	machine design.Machine
	options export.Options
	sheet   design.Sheet
	cloths  []string       // names of the cloths, by roll
	style   quantity.Style // of lengths in notes
	say     Words          // see [output.speak]
	only    string         // what of the sheets is written

	folder  string
	formats []string   // names
	mark    whole.Mark // files written for its tag, the design's digest, may be replaced
	force   bool       // replace any file

	known map[string]whole.Known // what the folder's record says, by the names of files; for proofs
	trial bool                   // it is what a machine is tried with, and drawn on its lines

	cause []notice // why files that nobody changed may not be as they should be
}

// outputOf returns how a design's sheets are written at a scale, as it is written
// on drawings, or at the design's own, with words around them. name is that of the
// command.
func outputOf(d design.Design, o shop, scale, name string, say *words.Sheets) (output, error) {
	out := output{machine: d.Machine, sheet: d.Sheet, style: d.Output.Style(1), only: o.only}
	for _, c := range d.Rolls() {
		out.cloths = append(out.cloths, c.Name)
	}
	if err := o.apply(&out.machine, name); err != nil {
		return out, err
	}
	var err error
	if out.options, err = export.OptionsFor(out.machine); err != nil {
		return out, err
	}
	out.options.Scale, out.options.Words, out.options.Inches = d.Output.Scale, say, d.Output.Inches
	if scale != "" {
		if out.options.Scale, err = export.ParseScale(scale); err != nil {
			return out, misuse(NoScale, name, err)
		}
	}
	return out, out.options.Validate()
}

// speak sets the words that are said of files, and in them.
func (o *output) speak(w Words) { o.say, o.options.Notes = w, &w.Files }

// file is one file that is to be written.
type file struct {
	about   document.Sheet
	content []byte
	notes   []string // for the maker
}

// write writes every drawing in every format and calls done after each file with its
// path. All are made before the first is written, so that settings that cannot be
// followed leave no file.
func (o output) write(drawings []export.Drawing, done func(path string, f file)) error {
	files, err := o.files(drawings)
	if err != nil {
		return err
	}
	var plain []whole.File
	for _, f := range files {
		plain = append(plain, whole.File{Name: f.about.Name, Content: f.content})
	}
	next := 0
	err = whole.WriteAll(o.folder, o.mark, o.force, plain, func(path string) {
		done(path, files[next])
		next++
	})
	return orForce(err, "--out", o.say)
}

// named tells of written files by their paths.
type named struct {
	Streams
	notes []string // each once
	first []string // by note: the first file that it is for
	more  []int    // by note: how many more files it is for
}

// done tells of one file.
func (n *named) done(path string, f file) {
	fmt.Fprintln(n.Out, path)
	for _, text := range f.notes {
		if at := slices.Index(n.notes, text); at >= 0 {
			n.more[at]++
			continue
		}
		n.notes, n.first, n.more = append(n.notes, text), append(n.first, path), append(n.more, 0)
	}
}

// tell says every note, with the file that it is for.
func (n *named) tell() {
	for i, text := range n.notes {
		where := n.first[i]
		if n.more[i] > 0 {
			where = n.words().text(notice{AndMore, []any{where, n.more[i]}})
		}
		n.say(NoteOf, where, text)
	}
}

// collect gathers written files for a document.
func collect(into *[]document.Sheet) func(string, file) {
	return func(_ string, f file) {
		f.about.Note = strings.Join(f.notes, "; ")
		*into = append(*into, f.about)
	}
}

// orForce says what would do where files are in the way; other is the flag that names
// another place.
func orForce(err error, other string, w Words) error {
	if errors.Is(err, whole.ErrExists) {
		return fmt.Errorf(w.Messages[ForceOr], err, other)
	}
	return err
}

// files makes the content of every file that is due.
func (o output) files(drawings []export.Drawing) ([]file, error) {
	due, err := o.due(drawings)
	if err != nil {
		return nil, err
	}
	number, total := o.numbered(drawings)
	var out []file
	var lacking gcode.UnsetError
	var far reaches
	made := o.contents(due)
	for i, f := range due {
		b, err := &made[i].content, made[i].err
		if far.took(err, f.sheet) {
			continue
		} else if lacks := o.lacks(err, f.drawing.Stock); len(lacks) > 0 {
			lacking = lacking.With(lacks)
			continue
		} else if err != nil {
			return nil, err
		}
		d, stock := f.drawing, f.drawing.Stock
		w, h := o.options.Size(d)
		if d.Field != nil {
			w = o.options.Point(geom.Pt(d.Field.Width, 0)).X
		}
		out = append(out, file{content: b.Bytes(), notes: o.notes(f), about: document.Sheet{
			File:  document.FileOf(f.name(), f.format.Name, b.Bytes()),
			Sheet: f.sheet, Title: d.Title, Stock: stock.String(), Number: number[f.sheet], Of: total[stock], Size: [2]float64{w, h},
		}})
	}
	for _, e := range far {
		lacking = lacking.With(o.tooFar(e, e.Stock))
	}
	if len(lacking) > 0 {
		return nil, lacking
	}
	if len(out) == 0 {
		return nil, misuse(NothingToWrite, strings.Join(o.say.lines(append(o.untold(), notice{what: NothingLeft})), "; "))
	}
	return out, nil
}

// content is what a file holds, or why it cannot be made.
type content struct {
	content bytes.Buffer
	err     error
}

// contents makes the contents of files, as many at a time as there are processors.
func (o output) contents(due []dueFile) []content {
	out := make([]content, len(due))
	var done sync.WaitGroup
	var next atomic.Int64
	for range min(runtime.GOMAXPROCS(0), len(due)) {
		done.Go(func() {
			for i := int(next.Add(1)) - 1; i < len(due); i = int(next.Add(1)) - 1 {
				out[i].err = due[i].codec.Write(&out[i].content, due[i].drawing, o.options)
			}
		})
	}
	done.Wait()
	return out
}

// numbered returns which of the sheets of its stock each drawing is, by its name and
// from 1, and how many there are.
func (o output) numbered(drawings []export.Drawing) (number map[string]int, total map[piece.Stock]int) {
	number, total = map[string]int{}, map[piece.Stock]int{}
	for _, d := range drawings {
		total[d.Stock]++
		number[d.Name] = total[d.Stock]
	}
	return number, total
}

// notes says what the maker should know of a file before it is used.
func (o output) notes(f dueFile) []string {
	var out []string
	if f.codec.Notes != nil {
		out = o.say.Files.All(f.codec.Notes(f.drawing, o.options))
	}
	switch {
	case f.drawing.Field != nil:
		notes, err := o.fieldNotes(f.drawing)
		if err != nil {
			panic("command: a drawing that was written is not sound: " + err.Error())
		}
		out = append(out, notes...)
	case f.format.Drives:
		out = append(out, o.say.text(o.zero(f.drawing)))
	}
	return out
}

// zero says where the operator puts a machine's zero.
func (o output) zero(d export.Drawing) notice {
	w, h := o.options.Size(d)
	return notice{ZeroAt, []any{o.options.Axes.Origin, o.style.Length(w), o.style.Length(h)}}
}

// lacks returns what an error of a writer says that the machine lacks, nothing where it
// says something else.
func (o output) lacks(err error, s piece.Stock) gcode.UnsetError {
	var lacks gcode.UnsetError
	var far *export.ReachError
	if errors.As(err, &far) {
		return o.tooFar(far, s)
	}
	errors.As(err, &lacks)
	return lacks
}

// tooFar says what would do where a machine does not reach over a sheet.
func (o output) tooFar(e *export.ReachError, s piece.Stock) gcode.UnsetError {
	hint := design.MoreOrNoCloth
	divided := e.Wide() && !e.High() && !o.machine.Fields && s == piece.Cloth
	switch alone := o.machine.For != design.ForBoth; {
	case divided && alone:
		hint = design.MoreOrFieldsAlone
	case divided:
		hint = design.MoreOrFields
	case alone:
		hint = design.MoreWouldDo
	case s == piece.Board:
		hint = design.MoreOrNoBoards
	}
	var out gcode.UnsetError
	side := func(too bool, key design.Key, found design.Rule, need, has float64) {
		if too {
			out = append(out, gcode.Lack{Key: key, Found: design.Found(found, e.Name, o.style.Length(need), o.style.Length(has)),
				Hint: design.Say(hint, o.style.Length(o.roundedUp(need)))})
		}
	}
	side(e.Wide(), design.KeyMachineWidth, design.TooWideToReach, e.Need.X, e.Bed.Width)
	side(e.High(), design.KeyMachineHeight, design.TooHighToReach, e.Need.Y, e.Bed.Height)
	return out
}

// roundedUp returns a length in mm that is at least the given one and stays itself where
// it is written for people.
func (o output) roundedUp(mm float64) float64 {
	step := 0.1 // mm
	if o.style.Inches {
		step = quantity.Inch / 16
	}
	return math.Ceil(mm/step) * step
}
