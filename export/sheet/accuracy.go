package sheet

import "slingloft/outline/hung"

// accuracyBlocks tables how truly the hammock comes out.
func (b *builder) accuracyBlocks() []Block {
	r := b.Accuracy
	lengths := Table{ID: "accuracy-lengths", Caption: "How far each spliced cord may be off, from node to node, in " + b.unitWord(),
		Head:  []string{"cord", "length", "set under first load", "worst case", "root of squares"},
		Words: []bool{true, false, false, false, false}}
	for _, l := range r.Lengths {
		lengths.Rows = append(lengths.Rows, []string{b.words.Cords.Parts[l.Part], b.figure(l.Nominal), b.figure(l.Set),
			"± " + b.figure(l.Worst), "± " + b.figure(l.RSS)})
	}
	level := Table{ID: "accuracy-level", Caption: "What that does to the bed's level, in " + b.unitWord(),
		Head: []string{"departure", "worst case", "root of squares", "accepted", ""}, Words: []bool{true, false, false, false, true}}
	for _, m := range r.Measures {
		level.Rows = append(level.Rows, []string{b.words.Accuracy.Measures[m.Kind], "± " + b.figure(m.Worst),
			"± " + b.figure(m.RSS), b.figure(m.Allowed), b.words.Accuracy.Verdicts[m.Verdict()]})
		level.Strong = append(level.Strong, !m.Likely)
	}
	return []Block{lengths, level, sentences(b.words.Accuracy.NotesOf(r.Notes))}
}

// effectsTable tables what one unit too much of each cord does, for correcting
// the bed once it hangs.
func (b *builder) effectsTable() Table {
	const many = 10.0 // mm: what a first hanging is off by
	t := Table{ID: "effects", Caption: "What " + b.round(many) + " too long does, in " + b.unitWord() + "; a cord of " +
		"the left side stands for both",
		Head: []string{"cord", "its corner drops", "bed along, head against foot", "across at the head bar", "across at the foot bar",
			"sag at mid-bay"},
		Words: []bool{true, false, false, false, false, false}}
	for _, e := range b.Accuracy.Effects {
		t.Rows = append(t.Rows, []string{b.words.Cords.Parts[e.Part], b.signedFigure(many * e.Corner), b.signedFigure(many * e.Level.Along),
			b.signedFigure(many * e.Level.Across[hung.Head]), b.signedFigure(many * e.Level.Across[hung.Foot]), b.signedFigure(many * e.Level.Sag)})
	}
	return t
}
