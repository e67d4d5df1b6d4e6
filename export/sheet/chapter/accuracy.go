package chapter

import (
	"fmt"

	"slingloft/export/sheet"
	"slingloft/outline/hung"
)

// accuracyBlocks tables how truly the hammock comes out.
func (b build) accuracyBlocks() []sheet.Block {
	say, names, r := b.Say.Accuracy, b.Say.Names, b.Accuracy
	lengths := sheet.Table{ID: "accuracy-lengths", Caption: fmt.Sprintf(say.Lengths, b.UnitWord()), Head: say.LengthColumns[:],
		Words: []bool{true, false, false, false, false}}
	for _, l := range r.Lengths {
		lengths.Add(names.Cords.Parts[l.Part], b.Figure(l.Nominal), b.Figure(l.Set), "± "+b.Figure(l.Worst), "± "+b.Figure(l.RSS))
	}
	level := sheet.Table{ID: "accuracy-level", Caption: fmt.Sprintf(say.Level, b.UnitWord()), Head: append(say.LevelColumns[:], ""),
		Words: []bool{true, false, false, false, true}}
	for _, m := range r.Outcomes {
		level.AddStrong(!m.Likely, names.Accuracy.Measures[m.Kind], "± "+b.Figure(m.Worst), "± "+b.Figure(m.RSS), b.Figure(m.Allowed),
			names.Accuracy.Verdicts[m.Verdict()])
	}
	said := append(names.Accuracy.Mends(r.Outcomes, b.Style), names.Accuracy.NotesOf(r.Notes)...)
	return []sheet.Block{lengths, level, sentences(said)}
}

// effectsTable tables what one unit too much of each cord does, for correcting
// the bed once it hangs.
func (b build) effectsTable() sheet.Table {
	const many = 10.0 // mm: what a first hanging is off by
	say := b.Say.Effects
	t := sheet.Table{ID: "effects", Caption: fmt.Sprintf(say.Caption, b.Round(many), b.UnitWord()), Head: say.Columns[:],
		Words: []bool{true, false, false, false, false, false}}
	for _, e := range b.Accuracy.Effects {
		t.Add(b.Say.Names.Cords.Parts[e.Part], b.SignedFigure(many*e.Corner), b.SignedFigure(many*e.Level.Along),
			b.SignedFigure(many*e.Level.Across[hung.Head]), b.SignedFigure(many*e.Level.Across[hung.Foot]), b.SignedFigure(many*e.Level.Sag))
	}
	return t
}

// correctedBlocks says what levels the bed that was measured as it hung.
func (b build) correctedBlocks() []sheet.Block {
	say, at, names, c := b.Say.Corrected, b.Say.Names.Tips, b.Say.Names.Accuracy, b.Corrected
	if c.Unread {
		return []sheet.Block{sentences(names.NotesOf(c.Notes))}
	}
	tips := sheet.Table{ID: "hung-tips", Caption: fmt.Sprintf(say.Tips, b.UnitWord()), Head: at.Columns[:],
		Words: []bool{true, false, false, false, false}}
	for _, e := range hung.Ends() {
		for s, tip := range at.Tip {
			tips.Add(b.ofEnd(tip, e), b.Figure(c.Survey.Heights.Tips[e][s]), b.SignedFigure(c.Off[e][s]),
				fmt.Sprintf(at.Known, b.Figure(c.Uncertainty[e][s])), b.Figure(c.After[e][s]))
		}
	}
	set := sheet.Table{ID: "hung-corrections", Caption: say.Set, Head: say.SetColumns[:], Words: []bool{true, false}}
	for _, a := range c.Adjustments {
		set.Add(names.Do(a, b.Style), fmt.Sprintf(at.Known, b.Long(a.Uncertainty)))
	}
	out := []sheet.Block{tips}
	if len(set.Rows) > 0 {
		out = append(out, set)
	}
	return append(out, sentences(names.NotesOf(c.Notes)))
}
