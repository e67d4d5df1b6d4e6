package figures

import (
	"fmt"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
	"slingloft/outline/margin"
	"slingloft/outline/quantity"
	"slingloft/outline/rig"
)

// unmet prints what fails before anything else.
func (b *report) unmet(p *work.Plan, d Document) {
	for _, c := range p.Margins.Checks {
		if c.Unmet() {
			word := "NOT MET"
			if c.Waived {
				word = "not met, waived in the design"
			}
			b.printf("%s: %s has margin %s, required %s; %s\n", word, b.words.Margins.CheckName(c),
				quantity.Decimal(c.Ratio, 2), quantity.Decimal(c.Required, 2), p.Mend(c))
		}
	}
	for _, s := range p.Sewn.Seams {
		if !s.Within() {
			b.printf("OUT OF TOLERANCE: seam %s, %s remain\n", b.words.Seam(s), b.mm(s.Remains))
		}
	}
	for _, line := range d.Warnings {
		b.printf("warning: %s\n", line)
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
	b.head("Margins: capacity over load")
	b.row("check", "load", "capacity", "margin", "required", "")
	for _, c := range r.Checks {
		b.row(b.words.Margins.CheckName(c), b.checked(c.Load, c.Unit), b.capacity(c), b.ratio(c), quantity.Decimal(c.Required, 1), standing(c))
	}
	for _, c := range r.Cases {
		b.printf("case %s: %s\n", b.words.Margins.Cases[c.Kind], b.words.Margins.Basis(c.Basis, b.style))
	}
	for _, n := range b.words.Margins.NotesOf(r.Notes) {
		b.printf("note: %s\n", n)
	}
	b.careful()
}

func (b *report) capacity(c margin.Check) string {
	if c.Capacity == 0 {
		return "not given"
	}
	text := b.checked(c.Capacity, c.Unit)
	if c.Bound {
		return "at most " + text
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
func standing(c margin.Check) string {
	switch {
	case c.Unmet() && c.Waived:
		return "not met, waived"
	case c.Unmet():
		return "NOT MET"
	case len(c.Missing) > 0:
		return "missing " + design.Listed(c.Missing, ", ")
	}
	return "met"
}

func (b *report) hanging(d Document) {
	b.head("Hanging")
	h := d.Hanging
	b.printf("overall length from hook to hook %s\n", b.mm(h.Overall))
	if p := h.Place; p != nil {
		b.place(*p)
	}
	steady := "steady"
	if !h.Roll.Stable {
		steady = "NOT steady"
	}
	b.printf("line through the hooks above the sleeper's centre of mass: %s on the back, %s on the side: %s\n",
		b.mm(h.Roll.Back), b.mm(h.Roll.Side), steady)
	b.printf("shelter: the ridge needs %s", b.mm(h.Shelter.Needed))
	if h.Shelter.Ridge > 0 {
		b.printf(", has %s", b.mm(h.Shelter.Ridge))
	}
	b.printf("\nsupport distance against the height of the hooks (%s), the bed's lowest point as the design has it:\n", b.unit())
	b.row("distance", "head hook", "foot hook", "head line", "foot line")
	for _, p := range h.Sweep {
		b.row(b.figure(p.Distance), b.figure(p.Ends[0].Hook), b.figure(p.Ends[1].Hook), b.figure(p.Ends[0].Line), b.figure(p.Ends[1].Line))
	}
	b.careful()
}

// place prints where the hammock hangs.
func (b *report) place(p rig.Place) {
	b.printf("between supports %s apart, lowest point %s above ground, edge to climb in over %s\n", b.mm(p.Distance),
		b.mm(p.Lowest), b.mm(p.Edge))
	b.row("", "head", "foot")
	add := func(name string, f func(rig.End) string) { b.row(name, f(p.Ends[0]), f(p.Ends[1])) }
	add("hook on the support", func(e rig.End) string { return b.mm(e.Hook) })
	add("hang line", func(e rig.End) string { return b.mm(e.Line) })
	add("angle of the line", func(e rig.End) string { return b.deg(e.Angle) })
	add("pull on the support", func(e rig.End) string {
		if b.imperial {
			return b.force(e.Pull.N)
		}
		return fmt.Sprintf("%s, %s kgf", b.force(e.Pull.N), quantity.Decimal(e.Pull.Kgf, 1))
	})
	if p.Beyond > 0 {
		b.printf("the higher hook stands %s above the height that the design gives\n", b.mm(p.Beyond))
	}
}

func (b *report) accuracy(d Document) {
	if len(d.Accuracy.Measures) == 0 {
		return
	}
	b.head("Working errors: how level the bed comes out")
	b.row("measure", "worst case", "root sum square", "allowed", "")
	for _, m := range d.Accuracy.Measures {
		b.row(b.words.Accuracy.Measures[m.Kind], b.mm(m.Worst), b.mm(m.RSS), b.mm(m.Allowed), b.words.Accuracy.Verdicts[m.Verdict()])
	}
	for _, n := range d.Accuracy.Notes {
		b.printf("note: %s\n", n)
	}
}

func (b *report) materials(d Document) {
	m := d.bill.In(b.style)
	b.head("Materials")
	b.row("kind", "what", "quantity", "unit", "price of one", "cost", "note")
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
	cost := "not given"
	if m.Cost > 0 {
		cost = quantity.Decimal(m.Cost, 2)
	}
	b.printf("cost of what has a price: %s\n", cost)
	b.row("part", "mass "+b.style.WeightUnit())
	for _, q := range m.Masses {
		mass := b.style.Weight(q.Grams)
		if q.Missing != "" {
			mass = "not given"
		}
		b.row(b.words.MassPart(q.Part), mass)
	}
	b.row("together, of what is known", b.style.Weight(m.Total))
	for _, o := range b.words.OpenOf(m) {
		b.printf("not given: %s\n", o)
	}
}
