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
	out   string
	paper string
	pages string
	shelf string
	force bool
	cloth bool
	reporting
}

func sheetCommand() command {
	return command{
		name: "sheet", args: " [DESIGN]", maxArgs: 1,
		set: func(f *pflag.FlagSet) func(context.Context, Streams, []string) error {
			var o sheetOptions
			f.StringVarP(&o.out, "out", "o", "build-sheet.html", "")
			f.StringVar(&o.paper, "paper", "a4", "")
			f.StringVar(&o.pages, "pages", allPages, "")
			f.BoolVar(&o.force, "force", false, "")
			f.BoolVar(&o.cloth, "cloth", false, "")
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
	p, err := load(args, o.shelf)
	if err != nil {
		return err
	}
	sayRenamed(s, &p)
	l, err := p.Lay(ctx, work.Budget{})
	if err != nil {
		return err
	}
	var cloth *work.Draped
	if o.cloth {
		h, err := draped(ctx, s, &p, work.Draping{})
		if err != nil && !errors.Is(err, work.ErrUnsettled) {
			return err
		}
		cloth = &h
	}
	doc, err := show.WithCloth(&p, l, cloth, wording.English())
	if err != nil {
		return err
	}
	doc = doc.Only(parts...)
	var b bytes.Buffer
	if err := form.write(&b, doc); err != nil {
		return err
	}
	folder, name := filepath.Split(o.out)
	err = whole.WriteAll(folder, whole.Mark{Tag: p.Digest}, o.force, []whole.File{{Name: name, Content: b.Bytes()}}, func(string) {
		if !o.json {
			fmt.Fprintln(s.Out, o.out)
		}
	})
	if err != nil {
		return orForce(err, "--out", s.words())
	}
	err = verdict(&p)
	if o.json {
		return errors.Join(err, document.Write(s.Out, builtDocument(&p, doc, err, s.words(), document.FileOf(name, form.name, b.Bytes()))))
	}
	return err
}

func builtSchema() map[string]any {
	return document.Schema[document.Built]("slingloft sheet", document.SheetVersion,
		"The build sheet that was written. With exit status 2 there is a list of faults in its place where the design is at fault.")
}

// builtDocument tells of a build sheet.
func builtDocument(p *work.Plan, s sheet.Sheet, err error, w Words, f document.File) document.Built {
	out := document.Built{
		Head:    headOf(p, document.SheetVersion, err),
		Verdict: verdictLines(p, w), Warnings: append([]string{}, p.Warnings()...), Outcome: s.Verdict.Text, File: f,
	}
	for _, sec := range s.Sections {
		out.Sections = append(out.Sections, sec.Title)
	}
	return out
}
