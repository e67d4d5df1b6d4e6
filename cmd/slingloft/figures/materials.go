package figures

import (
	"encoding/csv"
	"fmt"
	"io"
	"strings"

	"slingloft/outline/margin"
	"slingloft/outline/quantity"
	"slingloft/outline/stock"
	"slingloft/outline/words"
)

// Materials is the list of what to buy.
type Materials struct {
	Rows   []Row     `json:"rows"`
	Masses []Mass    `json:"masses"`
	Bars   []Cutting `json:"bars"`  // how the bars come out of their stock lengths
	Total  float64   `json:"total"` // of the masses that are known, g
	Cost   float64   `json:"cost"`  // of the rows that have a price
	Open   []string  `json:"open"`  // rows without a price and masses not known
	Used   float64   `json:"used"`  // part of the bought cloth that is in the pieces, 0 to 1
}

// Row is one thing to buy.
type Row struct {
	Kind     string  `json:"kind"` // "cloth", "cord", "bar", "thread", "sheet", "hardware"
	Name     string  `json:"name"`
	Quantity float64 `json:"quantity"`        // in Unit
	Unit     string  `json:"unit"`            // "m" or "piece"
	Price    float64 `json:"price,omitempty"` // of one unit; 0: not given
	Cost     float64 `json:"cost,omitempty"`
	Note     string  `json:"note"`
}

// Mass is what one part of the finished hammock weighs.
type Mass struct {
	Part    string  `json:"part"`
	Grams   float64 `json:"grams"`
	Missing string  `json:"missing,omitempty"` // key without which it is not known
}

// Cutting is one stock length and what is cut from it.
type Cutting struct {
	Parts  []Measure `json:"parts"`
	Offcut float64   `json:"offcut"` // what is left over, mm
}

// materialsOf returns a list as the document has it, in metres; lengths in remarks
// are in the style.
func materialsOf(b stock.Bill, w words.Names, style quantity.Style) Materials {
	out := Materials{Total: b.Total, Cost: b.Cost, Open: w.OpenOf(b), Used: b.Used}
	for _, r := range b.Rows {
		out.Rows = append(out.Rows, Row{r.Kind.String(), w.Materials.Thing(r), r.Quantity, r.Unit.String(), r.Price, r.Cost,
			w.Note(r.Note, style)})
	}
	for _, m := range b.Masses {
		out.Masses = append(out.Masses, Mass{m.Part.String(), m.Grams, string(m.Missing)})
	}
	for _, c := range b.Bars {
		cut := Cutting{Offcut: c.Offcut}
		for _, p := range c.Parts {
			cut.Parts = append(cut.Parts, Measure{p.Bar.String() + " bar", p.Length})
		}
		out.Bars = append(out.Bars, cut)
	}
	return out
}

// WriteCSV writes the rows of the list, least strengths, masses and both totals as comma-separated values
// (RFC 4180 but for its line ends, which are single line feeds), in the units of the
// style. A text that a spreadsheet would take for a formula is set off by an
// apostrophe; what is not given is left empty.
func (d Document) WriteCSV(w io.Writer, style quantity.Style, say Words) error {
	c := csv.NewWriter(w)
	list := materialsOf(d.bill.In(style), say.Names, style)
	mass := func(g float64) string {
		if g == 0 {
			return ""
		}
		return style.Weight(g)
	}
	number := func(v float64) string {
		if v == 0 {
			return ""
		}
		return quantity.Decimal(v, 2)
	}
	rows := [][]string{{"kind", "name", "quantity", "unit", "price", "cost", "mass_" + style.WeightUnit(), "note"}}
	for _, r := range list.Rows {
		rows = append(rows, []string{r.Kind, plain(r.Name), quantity.Decimal(r.Quantity, 2), r.Unit, number(r.Price),
			number(r.Cost), "", plain(r.Note)})
	}
	for _, l := range d.strengths {
		rows = append(rows, strengthRow(l, style, say))
	}
	for _, m := range list.Masses {
		note := ""
		if m.Missing != "" {
			note = fmt.Sprintf(say.Materials.KeyNotGiven, m.Missing)
		}
		rows = append(rows, []string{"mass", plain(m.Part), "", "", "", "", mass(m.Grams), note})
	}
	rows = append(rows, []string{"total", "", "", "", "", number(list.Cost), mass(list.Total), ""})
	return c.WriteAll(rows)
}

// strengthRow is a least strength to buy, with what it follows from as its remark.
func strengthRow(l margin.Least, style quantity.Style, say Words) []string {
	amount, unit, _ := strings.Cut(words.Strength(l.Value, l.Unit, style), " ")
	w := say.Names.Margins
	return []string{"strength", plain(w.Least.Things[l.Thing]), amount, unit, "", "", "",
		plain(fmt.Sprintf(say.Materials.Strength, w.LeastOf(l, style), w.LeastFor(l, style)))}
}

// plain keeps a text from being run as a formula.
func plain(s string) string {
	if s != "" && strings.ContainsRune("=+-@\t\r", rune(s[0])) {
		return "'" + s
	}
	return s
}
