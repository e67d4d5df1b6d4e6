package figures

import (
	"fmt"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/accuracy"
	"slingloft/outline/bed"
	"slingloft/outline/hung"
)

// Accuracy is how level the bed comes out with the maker's working errors.
type Accuracy struct {
	Lengths  []accuracy.Length  `json:"lengths"`
	Effects  []accuracy.Effect  `json:"effects"`
	Measures []accuracy.Outcome `json:"measures"`
	Notes    []string           `json:"notes"`
}

// accuracyOf returns a stack as the document has it; err is why there is none.
func accuracyOf(r accuracy.Report, err error, say Words) Accuracy {
	out := Accuracy{r.Lengths, r.Effects, r.Outcomes, say.Names.Accuracy.NotesOf(r.Notes)}
	if err != nil {
		out.Notes = append(out.Notes, fmt.Sprintf(say.Accuracy.Cannot, say.Names.Why(err)))
	}
	return out
}

// accuracy prints how level the bed comes out, and beside what is likely more than
// accepted what does most and what would halve it.
func (b *report) accuracy(d Document) {
	if len(d.Accuracy.Measures) == 0 {
		return
	}
	b.head(b.say.Accuracy.Title)
	b.row(append(b.say.Accuracy.Columns[:], "")...)
	for _, m := range d.Accuracy.Measures {
		b.row(b.words.Accuracy.Measures[m.Kind], b.mm(m.Worst), b.mm(m.RSS), b.mm(m.Allowed), b.words.Accuracy.Verdicts[m.Verdict()])
	}
	for _, mend := range b.words.Accuracy.Mends(d.Accuracy.Measures, b.style) {
		b.line("%s", mend)
	}
	b.notes(d.Accuracy.Notes)
}

// corrections prints what the heights of a bed that hangs tell, and what levels it.
func (b *report) corrections(p *work.Plan, d Document) {
	if d.Hung == nil {
		return
	}
	say, at := b.say.Hung, b.words.Tips
	b.head(say.Title)
	if c := d.corrected; c != nil {
		b.row(at.Columns[:]...)
		for _, e := range hung.Ends() {
			for _, s := range [2]bed.Side{bed.Left, bed.Right} {
				b.row(fmt.Sprintf(at.Tip[s], b.words.Ends[e]), b.mm(p.Design.Hung.Tips[e][s]), b.mm(c.Off[e][s]),
					fmt.Sprintf(at.Known, b.mm(c.Uncertainty[e][s])), b.mm(c.After[e][s]))
			}
		}
		for _, a := range c.Adjustments {
			b.line(say.Do, b.words.Accuracy.Do(a, b.style), b.mm(a.Uncertainty))
		}
	}
	b.notes(d.Hung.Notes)
}
