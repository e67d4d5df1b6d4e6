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
	chapters := []func() (sheet.Section, error){
		b.result, b.hungShape, b.pieces, b.lay, b.cords, b.offsets, b.loads,
		b.materials, b.order, b.seams, b.charts, b.assumptions, b.sources,
	}
	for _, f := range chapters {
		sec, err := f()
		if err != nil {
			return sheet.Sheet{}, err
		}
		if len(sec.Blocks) > 0 {
			s.Sections = append(s.Sections, sec)
		}
	}
	return s, nil
}

// sentences sets notes, which are written as messages are, as sentences.
func sentences(notes []string) sheet.List {
	var out sheet.List
	for _, n := range notes {
		out = append(out, given.Capital(strings.TrimSuffix(n, "."))+".")
	}
	return out
}
