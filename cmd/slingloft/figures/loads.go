package figures

import (
	"fmt"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/quantity"
	"slingloft/outline/rig"
)

// unmet prints what fails before anything else.
func (b *report) unmet(p *work.Plan, d Document) {
	say := b.say.Faults
	for _, c := range p.Margins.Checks {
		if c.Unmet() {
			word := say.NotMet
			if c.Waived {
				word = say.Waived
			}
			b.line(say.Margin, word, b.words.Margins.CheckName(c), quantity.Decimal(c.Ratio, 2), quantity.Decimal(c.Required, 2), p.Mend(c))
		}
	}
	for _, s := range p.Sewn.Seams {
		if !s.Within() {
			b.line(say.Seam, b.words.Seam(s), b.mm(s.Remains))
		}
	}
	for _, text := range d.Warnings {
		b.line(say.Warning, text)
	}
}

// checked returns a load or capacity with the unit of its check.
func (b *report) checked(v float64, unit margin.Unit) string {
	if unit == margin.Force {
		return b.force(v)
	}
	return b.style.PerWidth(v)
}

func (b *report) margins(r margin.Report) {
	say := b.say.Margins
	b.head(say.Title)
	b.row(append(say.Columns[:], "")...)
	for _, c := range r.Checks {
		b.row(b.words.Margins.CheckName(c), b.checked(c.Load, c.Unit), b.capacity(c), b.ratio(c), quantity.Decimal(c.Required, 1), b.standing(c))
	}
	for _, c := range r.Cases {
		b.line(say.Case, b.words.Margins.Cases[c.Kind], b.words.Margins.Basis(c.Basis, b.style))
	}
	b.notes(b.words.Margins.NotesOf(r.Notes))
	b.careful()
}

func (b *report) capacity(c margin.Check) string {
	if c.Capacity == 0 {
		return b.say.NotGiven
	}
	text := b.checked(c.Capacity, c.Unit)
	if c.Bound {
		return fmt.Sprintf(b.say.Margins.AtMost, text)
	}
	return text
}

func (b *report) ratio(c margin.Check) string {
	if c.Ratio == 0 {
		return "–"
	}
	return quantity.Decimal(c.Ratio, 2)
}

// standing says in a word how a check stands.
func (b *report) standing(c margin.Check) string {
	say := b.say.Faults.Standing
	switch {
	case c.Unmet() && c.Waived:
		return say.Waived
	case c.Unmet():
		return say.NotMet
	case len(c.Missing) > 0:
		return fmt.Sprintf(say.Missing, design.Listed(c.Missing, ", "))
	}
	return say.Met
}

func (b *report) hanging(d Document) {
	h, say := d.Hanging, b.say.Hanging
	b.head(say.Title)
	b.line(say.Overall, b.mm(h.Overall))
	if p := h.Place; p != nil {
		b.place(*p)
	}
	steady := say.Steady
	if !h.Roll.Stable {
		steady = say.NotSteady
	}
	b.line(say.Roll, b.mm(h.Roll.Back), b.mm(h.Roll.Side), steady)
	if h.Shelter.Ridge > 0 {
		b.line(say.ShelterOf, b.mm(h.Shelter.Needed), b.mm(h.Shelter.Ridge))
	} else {
		b.line(say.Shelter, b.mm(h.Shelter.Needed))
	}
	b.line(say.Sweep, b.unit())
	b.row(say.Columns[:]...)
	for _, p := range h.Sweep {
		b.row(b.figure(p.Distance), b.figure(p.Ends[0].Hook), b.figure(p.Ends[1].Hook), b.figure(p.Ends[0].Line), b.figure(p.Ends[1].Line))
	}
	b.careful()
}

// place prints where the hammock hangs.
func (b *report) place(p rig.Place) {
	say := b.say.Hanging
	b.line(say.Between, b.mm(p.Distance), b.mm(p.Lowest), b.mm(p.Edge))
	b.row("", b.words.Ends[hung.Head], b.words.Ends[hung.Foot])
	for k, f := range [placeFigures]func(rig.End) string{
		placeHook:  func(e rig.End) string { return b.mm(e.Hook) },
		placeLine:  func(e rig.End) string { return b.mm(e.Line) },
		placeAngle: func(e rig.End) string { return b.deg(e.Angle) },
		placePull: func(e rig.End) string {
			if b.imperial {
				return b.force(e.Pull.N)
			}
			return fmt.Sprintf(say.Pull, b.force(e.Pull.N), quantity.Decimal(e.Pull.Kgf, 1))
		},
	} {
		b.row(say.Figures[k], f(p.Ends[hung.Head]), f(p.Ends[hung.Foot]))
	}
	if p.Beyond > 0 {
		b.line(say.Beyond, b.mm(p.Beyond))
	}
}

func (b *report) materials(d Document) {
	m, say := d.bill.In(b.style), b.say.Materials
	b.head(say.Title)
	b.row(say.Columns[:]...)
	price := func(v float64) string {
		if v > 0 {
			return quantity.Decimal(v, 2)
		}
		return "–"
	}
	for _, r := range m.Rows {
		b.row(b.words.Materials.Kinds[r.Kind], b.words.Materials.Thing(r), quantity.Decimal(r.Quantity, 2), b.words.Materials.Units[r.Unit],
			price(r.Price), price(r.Cost), b.words.Note(r.Note, b.style))
	}
	cost := b.say.NotGiven
	if m.Cost > 0 {
		cost = quantity.Decimal(m.Cost, 2)
	}
	b.line(say.Cost, cost)
	b.row(say.Part, fmt.Sprintf(say.Mass, b.style.WeightUnit()))
	for _, q := range m.Masses {
		mass := b.style.Weight(q.Grams)
		if q.Missing != "" {
			mass = b.say.NotGiven
		}
		b.row(b.words.MassPart(q.Part), mass)
	}
	b.row(say.Total, b.style.Weight(m.Total))
	for _, o := range b.words.OpenOf(m) {
		b.line(say.Open, o)
	}
}
