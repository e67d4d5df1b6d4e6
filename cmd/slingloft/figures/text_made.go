package figures

import (
	"fmt"
	"math"
	"strings"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/cord"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
)

func (b *report) cords(d Document) {
	say := b.say.Cords
	b.head(say.Title, b.words.Cords.Rigging[d.Rigging.Variant])
	for _, c := range d.Cords {
		b.line("%s%s", fmt.Sprintf(say.Cut, b.words.Cords.Parts[c.Part], c.Count, b.mm(c.Cut)), b.sum(c.Terms))
		b.row(append(say.Columns[:], fmt.Sprintf(say.Spliced, b.words.Cords.Spot(c.Datum)))...)
		for _, m := range c.Marks {
			spliced := b.figure(m.Spliced)
			if m.Buried {
				spliced = fmt.Sprintf(say.Buried, spliced)
			}
			b.row(b.words.Cords.Spot(m.Spot), b.figure(m.FromStart), b.figure(m.FromEnd), spliced)
		}
	}
	b.notes(d.Rigging.Notes)
}

// sum writes the terms of a cord's cut length.
func (b *report) sum(terms []cord.Term) string {
	var out strings.Builder
	for i, t := range terms {
		sign := " + "
		if i == 0 {
			sign = " = "
		}
		if t.Length < 0 {
			sign = " − "
		}
		out.WriteString(sign + b.words.Cords.Terms[t.Kind] + " " + b.figure(math.Abs(t.Length)))
	}
	return out.String()
}

func (b *report) seams(seams []piece.Seam) {
	say := b.say.Seams
	b.head(say.Title, b.unit())
	b.row(say.Columns[:]...)
	for _, s := range seams {
		verdict := b.figure(s.Tolerance)
		if !s.Within() {
			verdict = fmt.Sprintf(say.Out, verdict)
		}
		b.row(b.words.Seam(s), b.figure(s.Flat[0]), b.figure(s.Flat[1]), b.figure(s.Hung[0]), b.figure(s.Hung[1]),
			b.figure(s.Ease), quantity.Decimal(s.EasePer100, 2), b.figure(s.Remains), verdict)
	}
	for _, s := range seams {
		b.line(say.Parts, b.words.Seam(s))
		b.row(say.From, say.To, s.IDs[0], s.IDs[1], say.Ease, say.Gathers)
		for _, q := range s.Parts {
			b.row(b.words.SeamMark(q.From), b.words.SeamMark(q.To), b.figure(q.Flat[0]), b.figure(q.Flat[1]), b.figure(q.Ease), b.figure(q.Fold))
		}
	}
}

func (b *report) offsets(p *work.Plan, d Document) {
	say := b.say.Offsets
	for i, c := range p.Curves() {
		t := d.Offsets[i]
		b.head(say.Title, b.words.Pieces.Curves[c.Kind], b.unit(), b.mm(t.Chord), b.mm(t.Arc))
		b.row(say.Columns[:]...)
		for _, r := range t.Rows {
			depth := b.figure(r.Depth)
			if r.Deepest {
				depth = fmt.Sprintf(say.Deepest, depth)
			}
			b.row(b.figure(r.Station), depth, b.figure(r.Arc))
		}
	}
}

func (b *report) pieces(p *work.Plan, d Document) {
	say := b.say.Pieces
	b.head(say.Title)
	b.row(say.Columns[:]...)
	all := p.Pieces()
	for i, q := range d.Pieces {
		b.row(q.ID, fmt.Sprint(q.Count), b.mm(q.Size[0]), b.mm(q.Size[1]), b.mm(q.CutLength), say.Stocks[all[i].Stock])
	}
	for _, q := range all {
		if len(q.Checks) > 0 {
			b.line(say.Prove, q.ID)
		}
		for _, c := range q.Checks {
			b.row(b.words.Measure(c), b.mm(c.Length))
		}
	}
}

func (b *report) lay(d Document) {
	b.head(b.say.Lay.Title)
	c := d.Lay.Cloth
	b.line(b.say.Lay.Cloth, b.mm(c.Length), b.mm(c.Width), 100*c.Use)
	for _, r := range d.Lay.Rolls {
		b.line(b.say.Lay.Roll, r.Cloth, b.mm(r.Length), b.mm(r.Width), 100*r.Use)
	}
	if s := d.Lay.Sheets; s.Count > 0 {
		b.line(b.say.Lay.Templates, s.Count, b.mm(s.Width), b.mm(s.Length), 100*s.Use)
	}
}
