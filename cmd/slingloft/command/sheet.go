package command

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/document"
	"slingloft/cmd/slingloft/show"
	"slingloft/cmd/slingloft/work"
	"slingloft/export/sheet"
	"slingloft/export/sheet/page"
	"slingloft/export/sheet/paper"
	"slingloft/export/sheet/wording"
	"slingloft/export/whole"
)

// sheetOptions are the flags of sheet.
type sheetOptions struct {
	out    string
	paper  string
	pages  string
	shelf  string
	force  bool
	cloth  bool
	copies int
	reporting
}

func sheetCommand() command {
	return command{
		name: "sheet", args: " [DESIGN …]", maxArgs: work.MostBeds,
		set: func(f *pflag.FlagSet) func(context.Context, Streams, []string) error {
			var o sheetOptions
			f.StringVarP(&o.out, "out", "o", "build-sheet.html", "")
			f.StringVar(&o.paper, "paper", "a4", "")
			f.StringVar(&o.pages, "pages", allPages, "")
			f.BoolVar(&o.force, "force", false, "")
			f.BoolVar(&o.cloth, "cloth", false, "")
			f.IntVar(&o.copies, "copies", 1, "")
			shelfFlag(f, &o.shelf)
			return o.flags(f, builtSchema, func(ctx context.Context, s Streams, args []string) error { return writeSheet(ctx, s, args, o) })
		},
	}
}

// sheetForm is a form that a build sheet is written in.
type sheetForm struct {
	name  string // as documents call it
	write func(io.Writer, sheet.Sheet) error
}

// sheetFormOf returns the form that the name of a file asks for, on paper of the given
// size.
func sheetFormOf(name string, size paper.Size) (sheetForm, error) {
	switch strings.ToLower(filepath.Ext(name)) {
	case ".html", ".htm":
		return sheetForm{"html", page.Write}, nil
	case ".pdf":
		return sheetForm{"pdf", func(w io.Writer, s sheet.Sheet) error { return paper.Write(w, s, size) }}, nil
	}
	return sheetForm{}, misuse(BadEnding, name)
}

func paperNamed(name string) (paper.Size, error) {
	switch strings.ToLower(name) {
	case "a4":
		return paper.A4, nil
	case "letter":
		return paper.Letter, nil
	}
	return paper.Size{}, misuse(NoSheetPaper, name)
}

// allPages asks for the whole build sheet.
const allPages = "all"

// partsNamed returns the parts of the sheet that are asked for, none for the whole.
func partsNamed(names string) ([]sheet.Part, error) {
	if strings.EqualFold(names, allPages) {
		return nil, nil
	}
	var out []sheet.Part
	for name := range strings.SplitSeq(names, ",") {
		i := slices.IndexFunc(sheet.Parts(), func(p sheet.Part) bool { return strings.EqualFold(p.String(), strings.TrimSpace(name)) })
		if i < 0 {
			return nil, misuse(NoSheetPart, pageNames(), name)
		}
		out = append(out, sheet.Parts()[i])
	}
	return out, nil
}

// pageNames lists what can be asked for of a sheet.
func pageNames() string {
	names := []string{allPages}
	for _, p := range sheet.Parts() {
		names = append(names, p.String())
	}
	return strings.Join(names, ", ")
}

func writeSheet(ctx context.Context, s Streams, args []string, o sheetOptions) error {
	size, err := paperNamed(o.paper)
	if err != nil {
		return err
	}
	form, err := sheetFormOf(o.out, size)
	if err != nil {
		return err
	}
	parts, err := partsNamed(o.pages)
	if err != nil {
		return err
	}
	if o.copies < 1 || o.copies*max(1, len(args)) > work.MostBeds {
		return misuse(CopiesRange, "sheet", o.copies, work.MostBeds)
	}
	if o.cloth && len(args) > 1 {
		return misuse(ClothOfOne)
	}
	beds, err := loadBeds(ctx, s, args, work.Setting{Shelf: o.shelf})
	if err != nil {
		return err
	}
	for _, p := range beds {
		sayRenamed(s, p)
	}
	p, err := work.Together(beds, o.copies)
	if err != nil {
		return err
	}
	l, err := p.Lay(ctx, work.Budget{})
	if err != nil {
		return err
	}
	var cloth *work.Draped
	if o.cloth {
		h, err := draped(ctx, s, beds[0], work.Draping{})
		if err != nil && !errors.Is(err, work.ErrUnsettled) {
			return err
		}
		cloth = &h
	}
	folder, _ := filepath.Split(o.out)
	var built []builtSheet
	var files []whole.File
	for i, share := range p.Shares() {
		doc, err := show.OfShare(&p, share, l, cloth, wording.English())
		if err != nil {
			return err
		}
		doc = doc.Only(parts...)
		var b bytes.Buffer
		if err := form.write(&b, doc); err != nil {
			return err
		}
		name := sheetName(o.out, i, len(p.Shares()))
		built = append(built, builtSheet{share, doc, document.FileOf(name, form.name, b.Bytes())})
		files = append(files, whole.File{Name: name, Content: b.Bytes()})
	}
	err = whole.WriteAll(folder, whole.Mark{Tag: p.Digest}, o.force, files, func(name string) {
		if !o.json {
			fmt.Fprintln(s.Out, folder+filepath.Base(name)) // as --out has it
		}
	})
	if err != nil {
		return orForce(err, "--out", s.words())
	}
	err = verdicts(beds)
	if o.json {
		return errors.Join(err, document.Write(s.Out, builtDocument(&p, built, err, s.words())))
	}
	return err
}

// builtSheet is one build sheet that was written.
type builtSheet struct {
	of   work.Share
	doc  sheet.Sheet
	file document.File
}

// sheetName returns the name of the file of one of several sheets, with its number.
func sheetName(out string, i, of int) string {
	name := filepath.Base(out)
	if of == 1 {
		return name
	}
	ext := filepath.Ext(name)
	return fmt.Sprintf("%s-%d%s", strings.TrimSuffix(name, ext), i+1, ext)
}

func builtSchema() map[string]any {
	return document.Schema[document.Built]("slingloft sheet", document.SheetVersion,
		"The build sheet that was written. With exit status 2 there is a list of faults in its place where the design is at fault.")
}

// builtDocument tells of build sheets.
func builtDocument(p *work.Plan, all []builtSheet, err error, w Words) document.Built {
	first := all[0]
	out := document.Built{
		Head: headOf(p, document.SheetVersion, err), Beds: bedsOf(p),
		Verdict: []string{}, Warnings: []string{}, Outcome: first.doc.Verdict.Text, Sections: titles(first.doc), File: first.file,
	}
	for _, b := range all {
		out.Verdict = append(out.Verdict, verdictLines(b.of.Plan, w)...)
		out.Warnings = append(out.Warnings, b.of.Plan.Warnings()...)
		if len(all) > 1 {
			out.Sheets = append(out.Sheets, document.BedSheet{Beds: b.of.Beds, Outcome: b.doc.Verdict.Text, Sections: titles(b.doc), File: b.file})
		}
	}
	return out
}

// titles returns those of a sheet's sections.
func titles(s sheet.Sheet) []string {
	var out []string
	for _, sec := range s.Sections {
		out = append(out, sec.Title)
	}
	return out
}
