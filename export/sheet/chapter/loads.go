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
	s := sheet.Section{ID: "loads", Title: b.Say.Loads.Title}
	s.Add(b.carefully(), b.forcesTable())
	if b.Margins != nil {
		s.Add(b.marginBlocks()...)
	}
	if b.Accuracy != nil {
		s.Add(b.accuracyBlocks()...)
	}
	if len(b.Guests) > 0 {
		s.Add(b.guestBlocks()...)
	}
	return s, nil
}

// forcesTable tables the forces of the hung shape.
func (b build) forcesTable() sheet.Table {
	say := b.Say.Loads
	t := b.byEnd("forces", say.Forces)
	h, f := b.Shape.Ends[hung.Head], b.Shape.Ends[hung.Foot]
	add := func(name string, of func(hung.EndShape) float64) { t.Add(name, b.Force(of(h)), b.Force(of(f))) }
	add(say.Level, func(e hung.EndShape) float64 { return e.Horizontal })
	add(say.Upright, func(e hung.EndShape) float64 { return e.Vertical })
	add(say.Leg, func(e hung.EndShape) float64 { return e.LegTension })
	add(say.Side, func(e hung.EndShape) float64 { return e.TipTension })
	add(say.Thrust, func(e hung.EndShape) float64 { return e.BarCompression })
	return t
}

// marginBlocks tables every check, case by case, and names the sources.
func (b build) marginBlocks() []sheet.Block {
	say, names := b.Say.Loads, b.Say.Names.Margins
	var out []sheet.Block
	var sources []margin.Source
	for i, c := range b.Margins.Cases {
		caption := fmt.Sprintf(say.Case, given.Capital(names.Cases[c.Kind]), names.Basis(c.Basis, b.Style))
		if c.Cannot.Kind != margin.NoObstacle {
			out = append(out, sheet.Notice{Grade: sheet.Careful, Title: caption,
				Lines: []string{fmt.Sprintf(say.NoLoads, names.Obstacle(c.Cannot, b.Style))}})
			continue
		}
		t := sheet.Table{ID: fmt.Sprintf("margins-%d", i+1), Caption: caption, Head: say.Columns[:],
			Words: []bool{true, false, false, false, false, false, true, false}}
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
		list = append(list, fmt.Sprintf(say.Source, i+1, names.Source(s)))
	}
	out = append(out, list)
	if len(b.Margins.Notes) > 0 {
		out = append(out, sentences(names.NotesOf(b.Margins.Notes)))
	}
	return out
}

// checkRow writes one check.
func (b build) checkRow(k margin.Check, source int) []string {
	say := b.Say.Loads
	holds, ratio, verdict := b.Say.NotGiven, "–", say.Met
	if k.Capacity > 0 {
		holds, ratio = b.Load(k.Capacity, k.Unit), given.Times(k.Ratio)
		if k.Bound {
			holds, ratio = "≤ "+holds, "≤ "+ratio
		}
	}
	switch {
	case k.Unmet() && k.Waived:
		verdict = say.Waived
	case k.Unmet():
		verdict = say.NotMet
	case !k.Met:
		verdict = b.Say.NotGiven
	}
	factor := "–"
	if k.Factor != 1 {
		factor = "× " + given.Times(k.Factor)
	}
	return []string{b.Say.Names.Margins.Parts[k.Part], b.Load(k.Load, k.Unit), factor, holds, ratio, given.Times(k.Required), verdict,
		fmt.Sprint(source)}
}
