package chapter

import (
	"fmt"
	"slices"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
)

// loads tables forces and margins.
func (b build) loads() (sheet.Section, error) {
	s := sheet.Section{ID: "loads", Title: "Loads and margins"}
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
func (b build) forcesTable() sheet.Table {
	sh := b.Shape
	t := sheet.Table{ID: "forces", Caption: "Forces under the sleeper lying still", Head: []string{"", "head", "foot"},
		Words: []bool{true, false, false}}
	h, f := sh.Ends[hung.Head], sh.Ends[hung.Foot]
	add := func(name string, of func(hung.EndShape) float64) {
		t.Add(name, b.Force(of(h)), b.Force(of(f)))
	}
	add("pull on the hook, level", func(e hung.EndShape) float64 { return e.Horizontal })
	add("pull on the hook, upright", func(e hung.EndShape) float64 { return e.Vertical })
	add("leg tension at the bar tip, each", func(e hung.EndShape) float64 { return e.LegTension })
	add("side cord tension at the bar tip, each", func(e hung.EndShape) float64 { return e.TipTension })
	add("thrust along the bar", func(e hung.EndShape) float64 { return e.BarCompression })
	return t
}

// marginBlocks tables every check, case by case, and names the sources.
func (b build) marginBlocks() []sheet.Block {
	var out []sheet.Block
	var sources []margin.Source
	for i, c := range b.Margins.Cases {
		caption := given.Capital(b.Names.Margins.Cases[c.Kind]) + ": " + b.Names.Margins.Basis(c.Basis, b.Style)
		t := sheet.Table{ID: fmt.Sprintf("margins-%d", i+1), Caption: caption,
			Head:  []string{"part", "load", "dynamic factor", "holds", "margin", "required", "verdict", "source"},
			Words: []bool{true, false, false, false, false, false, true, false}}
		if c.Cannot.Kind != margin.NoObstacle {
			out = append(out, sheet.Notice{Grade: sheet.Careful, Title: caption, Lines: []string{"No loads: " + b.Names.Margins.Obstacle(c.Cannot, b.Style) + "."}})
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
			t.AddStrong(k.Unmet(), b.checkRow(k, n+1)...)
		}
		if len(t.Rows) > 0 {
			out = append(out, t)
		}
	}
	var list sheet.List
	for i, s := range sources {
		list = append(list, fmt.Sprintf("Source %d: %s.", i+1, b.Names.Margins.Source(s)))
	}
	out = append(out, list)
	if len(b.Margins.Notes) > 0 {
		out = append(out, sentences(b.Names.Margins.NotesOf(b.Margins.Notes)))
	}
	return out
}

// checkRow writes one check.
func (b build) checkRow(k margin.Check, source int) []string {
	holds, ratio, word := notGiven, "–", "met"
	if k.Capacity > 0 {
		holds, ratio = b.Load(k.Capacity, k.Unit), given.Times(k.Ratio)
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
		factor = "× " + given.Times(k.Factor)
	}
	return []string{b.Names.Margins.Parts[k.Part], b.Load(k.Load, k.Unit), factor, holds, ratio, given.Times(k.Required), word, fmt.Sprint(source)}
}
