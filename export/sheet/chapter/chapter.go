// Package chapter lays out the chapters of the build sheet, one a file: it chooses what
// is told, and in which order, and asks others for the pictures.
package chapter

import (
	"strings"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
)

// build is a build sheet in the making.
type build struct{ *given.Data }

// Sheet sets out the sheet.
func Sheet(d given.Data) (sheet.Sheet, error) {
	b := build{&d}
	s := sheet.Sheet{Title: d.Design.Name, Subtitle: b.subtitle(), Digest: d.Digest, Frame: d.Say.Frame, Verdict: b.verdict()}
	for _, row := range b.chapters() {
		sec, err := row.of()
		if err != nil {
			return sheet.Sheet{}, err
		}
		if len(sec.Blocks) > 0 {
			sec.Part = row.part
			interrupt(sec.Blocks)
			s.Sections = append(s.Sections, sec)
		}
	}
	return s, nil
}

// interrupt keeps the helping lines of all pictures off their lettering.
func interrupt(blocks []sheet.Block) {
	each := func(all sheet.Figures) {
		for i := range all {
			all[i].Picture = all[i].Picture.Interrupted()
		}
	}
	for _, b := range blocks {
		switch b := b.(type) {
		case sheet.Figures:
			each(b)
		case sheet.Steps:
			for _, s := range b {
				each(s.Figures)
			}
		}
	}
}

// chapterOf is a row of the sheet: a part of it and what makes one of its sections.
type chapterOf struct {
	part sheet.Part
	of   func() (sheet.Section, error)
}

// chapters are the sections of the sheet, in order.
func (b build) chapters() []chapterOf {
	return []chapterOf{
		{sheet.Shop, b.result}, {sheet.Shop, b.cutList}, {sheet.Shop, b.ticks},
		{sheet.Work, b.names}, {sheet.Work, b.materials},
		{sheet.Work, b.pieces}, {sheet.Work, b.templates}, {sheet.Work, b.lay}, {sheet.Work, b.stage("cloth")}, {sheet.Work, b.cover},
		{sheet.Work, b.stage("sewing")},
		{sheet.Work, b.cords}, {sheet.Work, b.stage("rope")}, {sheet.Work, b.stage("fitting")},
		{sheet.Work, b.sacks}, {sheet.Work, b.lining}, {sheet.Work, b.tarp},
		{sheet.Hanging, b.hungShape}, {sheet.Hanging, b.room}, {sheet.Hanging, b.leveled}, {sheet.Hanging, b.cloth}, {sheet.Hanging, b.hanging},
		{sheet.Appendix, b.glossary}, {sheet.Appendix, b.offsets}, {sheet.Appendix, b.loads}, {sheet.Appendix, b.seams},
		{sheet.Appendix, b.charts}, {sheet.Appendix, b.assumptions}, {sheet.Appendix, b.sources},
	}
}

// sentences sets notes, which are written as messages are, as sentences.
func sentences(notes []string) sheet.List {
	var out sheet.List
	for _, n := range notes {
		out = append(out, given.Capital(strings.TrimSuffix(n, "."))+".")
	}
	return out
}
