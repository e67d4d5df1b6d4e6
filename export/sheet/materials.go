package sheet

import (
	"fmt"
	"strings"

	"slingloft/outline/stock"
)

// materials lists what to buy, what it costs and what of it one carries.
func (b *builder) materials() (Section, error) {
	s := Section{ID: "materials", Title: "Materials and cost"}
	if b.Unlaid {
		s.Blocks = append(s.Blocks, Para(unlaid))
	}
	if b.Bill == nil {
		return s, nil
	}
	t := Table{ID: "materials-list", Caption: "To buy; prices are those of the design, in its own currency",
		Head: []string{"item", "amount", "note", "price", "cost"}, Words: []bool{true, false, true, false, false}}
	for _, r := range b.Bill.Rows {
		t.Rows = append(t.Rows, []string{capital(b.words.Materials.Kinds[r.Kind]) + ": " + b.words.Materials.Thing(r), b.amount(r),
			b.words.Note(r.Note, b.Style), b.each(r), price(r.Cost)})
		t.Strong = append(t.Strong, false)
	}
	t.Rows = append(t.Rows, []string{"together, of what has a price", "", "", "", price(b.Bill.Cost)})
	t.Strong = append(t.Strong, true)
	mass := Table{ID: "materials-mass", Caption: "What the finished hammock weighs", Head: []string{"part", "mass"},
		Words: []bool{true, false}}
	for _, m := range b.Bill.Masses {
		value := b.weight(m.Grams)
		if m.Missing != "" {
			value = notGiven
		}
		mass.Rows = append(mass.Rows, []string{b.words.MassPart(m.Part), value})
		mass.Strong = append(mass.Strong, false)
	}
	total := b.weight(b.Bill.Total)
	if b.Bill.Total == 0 {
		total = notGiven
	}
	mass.Rows = append(mass.Rows, []string{"together, of what is known", total})
	mass.Strong = append(mass.Strong, true)
	s.Blocks = append(s.Blocks, t, mass)
	if len(b.Bill.Bars) > 0 {
		s.Blocks = append(s.Blocks, b.barsList())
	}
	if len(b.Bill.Open) > 0 {
		s.Blocks = append(s.Blocks, Para("Not given: "+strings.Join(b.words.OpenOf(*b.Bill), "; ")+"."))
	}
	return s, nil
}

// amount writes how much of a row to buy.
func (b *builder) amount(r stock.Row) string {
	if r.Unit != stock.Metre {
		return fmt.Sprintf("%s × ", decimals(r.Quantity, 0)) + b.words.Materials.Units[r.Unit]
	}
	return b.Style.Metres(r.Quantity) + " " + b.Style.RunUnit()
}

// each writes the price of one unit of a row.
func (b *builder) each(r stock.Row) string {
	switch {
	case r.Price <= 0:
		return ""
	case r.Unit != stock.Metre:
		return price(r.Price) + " per " + b.words.Materials.Units[r.Unit]
	}
	return price(b.Style.PerRun(r.Price)) + " per " + b.Style.RunUnit()
}

// barsList says how the bars come out of their stock lengths.
func (b *builder) barsList() List {
	var l List
	for i, c := range b.Bill.Bars {
		var parts []string
		for _, p := range c.Parts {
			parts = append(parts, b.words.Materials.Bar[p.Bar]+" "+b.long(p.Length))
		}
		l = append(l, fmt.Sprintf("Bar stock %d: %s; %s over.", i+1, strings.Join(parts, ", "), b.round(c.Offcut)))
	}
	return l
}

// weight writes a mass given in grams.
func (b *builder) weight(g float64) string { return b.Style.Weight(g) + " " + b.Style.WeightUnit() }

// notGiven stands where a figure would need a value that the design does not have.
const notGiven = "not given"

// price writes a cost, if it is known.
func price(v float64) string {
	if v <= 0 {
		return notGiven
	}
	return decimals(v, 2)
}
