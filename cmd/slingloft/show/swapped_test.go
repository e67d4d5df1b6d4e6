package show_test

import (
	"context"
	"testing"

	"github.com/google/go-cmp/cmp"

	"slingloft/cmd/slingloft/show"
	"slingloft/cmd/slingloft/work"
	"slingloft/export/sheet"
	"slingloft/outline/design"
	"slingloft/outline/piece"
	"slingloft/outline/stock"
	"slingloft/outline/words"
	"slingloft/outline/wordstest"
)

// outcome is what a run decides, without a word of it.
type outcome struct {
	Pieces   []string // id, and the name, kind of work and length of each line
	Lines    [][]piece.Line
	Margins  [][]piece.Margin
	Cords    map[string]float64
	Bill     []stock.Row
	Checks   []string
	Sections []string
	Facts    [][]string // of each step of the order of work, their values
}

// decided runs a design with a table of words.
func decided(t *testing.T, with work.Setting) (outcome, string) {
	t.Helper()
	name, text := design.Demo()
	p, err := work.ReadFor(name, text, with)
	if err != nil {
		t.Fatal(err)
	}
	l, err := p.Lay(context.Background(), work.Budget{})
	if err != nil {
		t.Fatal(err)
	}
	s, err := show.Of(&p, l)
	if err != nil {
		t.Fatal(err)
	}
	b, err := p.Bill(l)
	if err != nil {
		t.Fatal(err)
	}
	out := outcome{Cords: map[string]float64{}, Bill: b.Rows, Checks: p.Margins.Names()}
	for _, q := range p.Pieces() {
		out.Pieces, out.Margins = append(out.Pieces, q.ID), append(out.Margins, q.Margins)
		lines := append([]piece.Line(nil), q.Lines...)
		for i := range lines {
			lines[i].Points = nil
		}
		out.Lines = append(out.Lines, lines)
	}
	for _, c := range p.Cords.Cords {
		out.Cords[c.Part.String()] = c.Cut
	}
	read := ""
	for _, sec := range s.Sections {
		out.Sections = append(out.Sections, sec.ID)
		for _, block := range sec.Blocks {
			steps, _ := block.(sheet.Steps)
			for _, step := range steps {
				var facts []string
				for _, f := range step.Facts {
					facts, read = append(facts, f.Value), read+f.Name
				}
				out.Facts = append(out.Facts, facts)
			}
		}
	}
	return out, read
}

// No piece, layer, allowance, cord, thing to buy, check or step hangs on a word of the
// tables: with every word swapped for another, all of them are the same.
func TestWordsSwapped(t *testing.T) {
	english := words.EnglishLettering()
	reversed := wordstest.Reversed(english)
	if got := reversed.Seam(piece.Seam{Kind: piece.EndToCap}); got != "ydob daeh dne ot pac" {
		t.Fatalf("a seam is called %q", got)
	}
	want, read := decided(t, work.Setting{Words: &english})
	got, swapped := decided(t, work.Setting{Words: &reversed})
	if read == swapped {
		t.Error("the words of the order of work are the same")
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("with other words (-english +swapped):\n%s", diff)
	}
}
