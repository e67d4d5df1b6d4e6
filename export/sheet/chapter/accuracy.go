package chapter

import (
	"slingloft/export/sheet"
	"slingloft/outline/hung"
)

// accuracyBlocks tables how truly the hammock comes out.
func (b build) accuracyBlocks() []sheet.Block {
	r := b.Accuracy
	lengths := sheet.Table{ID: "accuracy-lengths", Caption: "How far each spliced cord may be off, from node to node, in " + b.UnitWord(),
		Head:  []string{"cord", "length", "set under first load", "worst case", "root of squares"},
		Words: []bool{true, false, false, false, false}}
	for _, l := range r.Lengths {
		lengths.Add(b.Names.Cords.Parts[l.Part], b.Figure(l.Nominal), b.Figure(l.Set),
			"± "+b.Figure(l.Worst), "± "+b.Figure(l.RSS))
	}
	level := sheet.Table{ID: "accuracy-level", Caption: "What that does to the bed's level, in " + b.UnitWord(),
		Head: []string{"departure", "worst case", "root of squares", "accepted", ""}, Words: []bool{true, false, false, false, true}}
	for _, m := range r.Measures {
		level.AddStrong(!m.Likely, b.Names.Accuracy.Measures[m.Kind], "± "+b.Figure(m.Worst),
			"± "+b.Figure(m.RSS), b.Figure(m.Allowed), b.Names.Accuracy.Verdicts[m.Verdict()])
	}
	return []sheet.Block{lengths, level, sentences(b.Names.Accuracy.NotesOf(r.Notes))}
}

// effectsTable tables what one unit too much of each cord does, for correcting
// the bed once it hangs.
func (b build) effectsTable() sheet.Table {
	const many = 10.0 // mm: what a first hanging is off by
	t := sheet.Table{ID: "effects", Caption: "What " + b.Round(many) + " too long does, in " + b.UnitWord() + "; a cord of " +
		"the left side stands for both",
		Head: []string{"cord", "its corner drops", "bed along, head against foot", "across at the head bar", "across at the foot bar",
			"sag at mid-bay"},
		Words: []bool{true, false, false, false, false, false}}
	for _, e := range b.Accuracy.Effects {
		t.Add(b.Names.Cords.Parts[e.Part], b.SignedFigure(many*e.Corner), b.SignedFigure(many*e.Level.Along),
			b.SignedFigure(many*e.Level.Across[hung.Head]), b.SignedFigure(many*e.Level.Across[hung.Foot]), b.SignedFigure(many*e.Level.Sag))
	}
	return t
}
