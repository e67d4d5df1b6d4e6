package chapter

import (
	"fmt"
	"strings"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/outline/quantity"
	"slingloft/outline/stock"
)

// materials lists what to buy, what it costs and what of it one carries.
func (b build) materials() (sheet.Section, error) {
	s := sheet.Section{ID: "materials", Title: "Materials and cost"}
	if b.Unlaid {
		s.Blocks = append(s.Blocks, sheet.Para(unlaid))
	}
	if b.Bill == nil {
		return s, nil
	}
	t := sheet.Table{ID: "materials-list", Caption: "To buy; prices are those of the design, in its own currency",
		Head: []string{"item", "amount", "note", "price", "cost"}, Words: []bool{true, false, true, false, false}}
	for _, r := range b.Bill.Rows {
		t.AddStrong(false, given.Capital(b.Names.Materials.Kinds[r.Kind])+": "+b.Names.Materials.Thing(r), b.amount(r),
			b.Names.Note(r.Note, b.Style), b.each(r), price(r.Cost))
	}
	t.AddStrong(true, "together, of what has a price", "", "", "", price(b.Bill.Cost))
	mass := sheet.Table{ID: "materials-mass", Caption: "What the finished hammock weighs", Head: []string{"part", "mass"},
		Words: []bool{true, false}}
	for _, m := range b.Bill.Masses {
		value := b.weight(m.Grams)
		if m.Missing != "" {
			value = notGiven
		}
		mass.AddStrong(false, b.Names.MassPart(m.Part), value)
	}
	total := b.weight(b.Bill.Total)
	if b.Bill.Total == 0 {
		total = notGiven
	}
	mass.AddStrong(true, "together, of what is known", total)
	s.Blocks = append(s.Blocks, t, mass)
	if len(b.Bill.Bars) > 0 {
		s.Blocks = append(s.Blocks, b.barsList())
	}
	if len(b.Bill.Open) > 0 {
		s.Blocks = append(s.Blocks, sheet.Para("Not given: "+strings.Join(b.Names.OpenOf(*b.Bill), "; ")+"."))
	}
	return s, nil
}

// amount writes how much of a row to buy.
func (b build) amount(r stock.Row) string {
	if r.Unit != stock.Metre {
		return fmt.Sprintf("%s × ", quantity.Decimal(r.Quantity, 0)) + b.Names.Materials.Units[r.Unit]
	}
	return b.Style.Metres(r.Quantity) + " " + b.Style.RunUnit()
}

// each writes the price of one unit of a row.
func (b build) each(r stock.Row) string {
	switch {
	case r.Price <= 0:
		return ""
	case r.Unit != stock.Metre:
		return price(r.Price) + " per " + b.Names.Materials.Units[r.Unit]
	}
	return price(b.Style.PerRun(r.Price)) + " per " + b.Style.RunUnit()
}

// barsList says how the bars come out of their stock lengths.
func (b build) barsList() sheet.List {
	var l sheet.List
	for i, c := range b.Bill.Bars {
		var parts []string
		for _, p := range c.Parts {
			parts = append(parts, b.Names.Materials.Bar[p.Bar]+" "+b.Long(p.Length))
		}
		l = append(l, fmt.Sprintf("Bar stock %d: %s; %s over.", i+1, strings.Join(parts, ", "), b.Round(c.Offcut)))
	}
	return l
}

// weight writes a mass given in grams.
func (b build) weight(g float64) string { return b.Style.Weight(g) + " " + b.Style.WeightUnit() }

// notGiven stands where a figure would need a value that the design does not have.
const notGiven = "not given"

// price writes a cost, if it is known.
func price(v float64) string {
	if v <= 0 {
		return notGiven
	}
	return quantity.Decimal(v, 2)
}
