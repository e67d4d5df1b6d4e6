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
	say := b.Say.Materials
	s := sheet.Section{ID: "materials", Title: say.Title}
	if b.Unlaid {
		s.Add(sheet.Para(b.Say.Unlaid))
	}
	if b.Bill == nil {
		return s, nil
	}
	if b.Together > 0 {
		s.Add(sheet.Para(fmt.Sprintf(say.Together, b.Together)))
	}
	s.Add(b.billTable())
	if b.Margins != nil {
		t := b.leastTable()
		s.Add(sheet.Table{ID: "materials-least", Caption: t.Caption, Head: t.Head, Words: t.Words, Rows: t.Rows, Strong: t.Strong},
			b.knots())
	}
	s.Add(b.massTable())
	if len(b.Bill.Bars) > 0 {
		s.Add(b.barsList())
	}
	s.Add(b.toolTable())
	if len(b.Bill.Open) > 0 {
		s.Add(sheet.Para(fmt.Sprintf(say.Open, strings.Join(b.Say.Names.OpenOf(*b.Bill), "; "))))
	}
	return s, nil
}

// billTable tables what to buy.
func (b build) billTable() sheet.Table {
	say, names := b.Say.Materials, b.Say.Names
	t := sheet.Table{ID: "materials-list", Caption: say.Caption, Head: say.Columns[:], Words: []bool{true, false, true, false, false}}
	for _, r := range b.Bill.Rows {
		t.AddStrong(false, fmt.Sprintf(say.Row, given.Capital(names.Materials.Kinds[r.Kind]), names.Materials.Thing(r)), b.amount(r),
			names.Note(r.Note, b.Style), b.each(r), b.price(r.Cost))
	}
	t.AddStrong(true, say.Cost, "", "", "", b.price(b.Bill.Cost))
	return t
}

// massTable tables what the parts weigh.
func (b build) massTable() sheet.Table {
	say := b.Say.Materials
	t := sheet.Table{ID: "materials-mass", Caption: say.Masses, Head: []string{say.Part, say.Mass}, Words: []bool{true, false}}
	for _, m := range b.Bill.Masses {
		t.AddStrong(false, b.Say.Names.MassPart(m.Part), b.weight(m.Grams, m.Missing == ""))
	}
	t.AddStrong(true, say.Total, b.weight(b.Bill.Total, b.Bill.Total != 0))
	return t
}

// amount writes how much of a row to buy.
func (b build) amount(r stock.Row) string {
	if r.Unit != stock.Metre {
		return fmt.Sprintf(b.Say.Materials.Pieces, quantity.Decimal(r.Quantity, 0), b.Say.Names.Materials.Units[r.Unit])
	}
	return b.Style.Metres(r.Quantity) + " " + b.Style.RunUnit()
}

// each writes the price of one unit of a row.
func (b build) each(r stock.Row) string {
	price, unit := r.Price, b.Say.Names.Materials.Units[r.Unit]
	if r.Unit == stock.Metre {
		price, unit = b.Style.PerRun(r.Price), b.Style.RunUnit()
	}
	if r.Price <= 0 {
		return ""
	}
	return fmt.Sprintf(b.Say.Materials.Each, b.price(price), unit)
}

// barsList says how the bars come out of their stock lengths.
func (b build) barsList() sheet.List {
	say := b.Say.Materials
	var l sheet.List
	for i, c := range b.Bill.Bars {
		var parts []string
		for _, p := range c.Parts {
			part := fmt.Sprintf(say.Bar, b.Say.Names.Materials.Bar[p.Bar], b.Long(p.Length))
			if b.Together > 0 {
				part = fmt.Sprintf(b.Say.Lay.OfBed, p.Hammock+1, part)
			}
			parts = append(parts, part)
		}
		l = append(l, fmt.Sprintf(say.Stock, i+1, strings.Join(parts, ", "), b.Round(c.Offcut)))
	}
	return l
}

// weight writes a mass given in grams, if it is known.
func (b build) weight(g float64, known bool) string {
	if !known {
		return b.Say.NotGiven
	}
	return b.Style.Weight(g) + " " + b.Style.WeightUnit()
}

// price writes a cost, if it is known.
func (b build) price(v float64) string {
	if v <= 0 {
		return b.Say.NotGiven
	}
	return quantity.Decimal(v, 2)
}
