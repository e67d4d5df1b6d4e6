package sheet

import (
	"fmt"
	"slices"

	"slingloft/outline/hung"
	"slingloft/outline/margin"
)

// loads tables forces and margins.
func (b *builder) loads() (Section, error) {
	s := Section{ID: "loads", Title: "Loads and margins"}
	s.Blocks = append(s.Blocks, carefully(), b.forcesTable())
	if b.Margins != nil {
		s.Blocks = append(s.Blocks, b.marginBlocks()...)
	}
	if b.Accuracy != nil {
		s.Blocks = append(s.Blocks, b.accuracyBlocks()...)
	}
	return s, nil
}

// forcesTable tables the forces of the hung shape.
func (b *builder) forcesTable() Table {
	sh := b.Shape
	t := Table{ID: "forces", Caption: "Forces under the sleeper lying still", Head: []string{"", "head", "foot"},
		Words: []bool{true, false, false}}
	h, f := sh.Ends[hung.Head], sh.Ends[hung.Foot]
	add := func(name string, of func(hung.EndShape) float64) {
		t.Rows = append(t.Rows, []string{name, b.force(of(h)), b.force(of(f))})
	}
	add("pull on the hook, level", func(e hung.EndShape) float64 { return e.Horizontal })
	add("pull on the hook, upright", func(e hung.EndShape) float64 { return e.Vertical })
	add("leg tension at the bar tip, each", func(e hung.EndShape) float64 { return e.LegTension })
	add("side cord tension at the bar tip, each", func(e hung.EndShape) float64 { return e.TipTension })
	add("thrust along the bar", func(e hung.EndShape) float64 { return e.BarCompression })
	return t
}

// marginBlocks tables every check, case by case, and names the sources.
func (b *builder) marginBlocks() []Block {
	var out []Block
	var sources []margin.Source
	for i, c := range b.Margins.Cases {
		caption := capital(b.words.Margins.Cases[c.Kind]) + ": " + b.words.Margins.Basis(c.Basis, b.Style)
		t := Table{ID: fmt.Sprintf("margins-%d", i+1), Caption: caption,
			Head:  []string{"part", "load", "dynamic factor", "holds", "margin", "required", "verdict", "source"},
			Words: []bool{true, false, false, false, false, false, true, false}}
		if c.Cannot.Kind != margin.NoObstacle {
			out = append(out, Notice{Careful, caption, []string{"No loads: " + b.words.Margins.Obstacle(c.Cannot, b.Style) + "."}})
			continue
		}
		for _, k := range b.Margins.Checks {
			if k.Case != c.Kind {
				continue
			}
			n := slices.Index(sources, k.Source)
			if n < 0 {
				sources = append(sources, k.Source)
				n = len(sources) - 1
			}
			t.Rows = append(t.Rows, b.checkRow(k, n+1))
			t.Strong = append(t.Strong, k.Unmet())
		}
		if len(t.Rows) > 0 {
			out = append(out, t)
		}
	}
	var list List
	for i, s := range sources {
		list = append(list, fmt.Sprintf("Source %d: %s.", i+1, b.words.Margins.Source(s)))
	}
	out = append(out, list)
	if len(b.Margins.Notes) > 0 {
		out = append(out, sentences(b.words.Margins.NotesOf(b.Margins.Notes)))
	}
	return out
}

// checkRow writes one check.
func (b *builder) checkRow(k margin.Check, source int) []string {
	holds, ratio, word := notGiven, "–", "met"
	if k.Capacity > 0 {
		holds, ratio = b.load(k.Capacity, k.Unit), times(k.Ratio)
		if k.Bound {
			holds, ratio = "≤ "+holds, "≤ "+ratio
		}
	}
	switch {
	case k.Unmet() && k.Waived:
		word = "waived"
	case k.Unmet():
		word = "not met"
	case !k.Met:
		word = notGiven
	}
	factor := "–"
	if k.Factor != 1 {
		factor = "× " + times(k.Factor)
	}
	return []string{b.words.Margins.Parts[k.Part], b.load(k.Load, k.Unit), factor, holds, ratio, times(k.Required), word, fmt.Sprint(source)}
}
