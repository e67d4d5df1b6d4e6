package main

import (
	"fmt"
	"os"
	"slices"
	"testing"

	"slingloft/cmd/slingloft/show"
	"slingloft/cmd/slingloft/work"
	"slingloft/export/sheet"
	"slingloft/export/sheet/picture"
	"slingloft/export/sheet/wording"
	"slingloft/outline/geom"
	"slingloft/outline/label"
	"slingloft/outline/piece"
)

// Lettering stands free, in the build sheet's pictures and on what is cut: no line runs
// through it, no other lettering lies over it.
func TestLetteringFree(t *testing.T) {
	for _, path := range swappedDesigns(t) {
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		p, err := work.ReadFor(path, data, work.Setting{})
		if err != nil {
			t.Fatal(err)
		}
		lays := inRows(&p)
		built, err := show.Of(&p, lays, wording.English())
		if err != nil {
			t.Fatal(err)
		}
		for _, q := range picturesOf(built) {
			for _, c := range append(q.Clashes(), q.Struck()...) {
				t.Errorf("%s, %s: %q under %s", path, q.ID, c[0], c[1])
			}
		}
		drawings, err := p.Drawings(lays, 1)
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range drawings {
			for _, s := range struck(d.Lines, d.Labels) {
				t.Errorf("%s, %s: %s", path, d.Name, s)
			}
		}
	}
}

// picturesOf returns all pictures of a sheet.
func picturesOf(s sheet.Sheet) []picture.Picture {
	var out []picture.Picture
	take := func(all sheet.Figures) {
		for _, f := range all {
			out = append(out, f.Picture)
		}
	}
	for _, section := range s.Sections {
		for _, b := range section.Blocks {
			switch b := b.(type) {
			case sheet.Figures:
				take(b)
			case sheet.Steps:
				for _, step := range b {
					take(step.Figures)
				}
			}
		}
	}
	return out
}

// struck says which labels have a line or another label over their letters.
func struck(lines []piece.Line, labels []piece.Label) []string {
	var out []string
	for i, l := range labels {
		q := label.InkOf(l)
		room := label.NewRoom(&piece.Piece{Cut: farAround(q), Lines: lines})
		if !room.Whole(q, q.Bounds()) {
			out = append(out, fmt.Sprintf("a line runs through %q at %.0f, %.0f", l.Text, l.At.X, l.At.Y))
		}
		if slices.ContainsFunc(labels[:i], func(o piece.Label) bool { return label.InkOf(o).Overlaps(q) }) {
			out = append(out, fmt.Sprintf("%q lies over lettering at %.0f, %.0f", l.Text, l.At.X, l.At.Y))
		}
	}
	return out
}

// farAround returns an outline well outside a label.
func farAround(q label.Quad) geom.Ring {
	const far = 1000
	b := q.Bounds()
	return geom.BoxOf(b.Min.Minus(geom.Pt(far, far)), b.Max.Plus(geom.Pt(far, far))).Ring()
}
