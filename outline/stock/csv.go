package stock

import (
	"encoding/csv"
	"io"
	"strings"

	"slingloft/outline/quantity"
)

// In returns the list with lengths and the prices of a length in the units of the
// style, in which [Bill.WriteCSV] writes it then; the masses here stay in grams.
func (b Bill) In(s quantity.Style) Bill {
	rows := make([]Row, len(b.Rows))
	for i, r := range b.Rows {
		if r.Unit == "m" {
			r.Quantity, r.Unit, r.Price = s.Run(r.Quantity), s.RunUnit(), s.PerRun(r.Price)
		}
		rows[i] = r
	}
	b.Rows, b.style = rows, s
	return b
}

// WriteCSV writes the rows, the masses and both totals as comma-separated values
// (RFC 4180 but for its line ends, which are single line feeds), in metric units
// unless [Bill.In] chose others. A text that a spreadsheet would take for a formula
// is set off by an apostrophe; what is not given is left empty.
func (b Bill) WriteCSV(w io.Writer) error {
	c := csv.NewWriter(w)
	mass := func(g float64) string {
		if g == 0 {
			return ""
		}
		return b.style.Weight(g)
	}
	number := func(v float64) string {
		if v == 0 {
			return ""
		}
		return quantity.Decimal(v, 2)
	}
	rows := [][]string{{"kind", "name", "quantity", "unit", "price", "cost", "mass_" + b.style.WeightUnit(), "note"}}
	for _, r := range b.Rows {
		rows = append(rows, []string{r.Kind, plain(r.Name), quantity.Decimal(r.Quantity, 2), r.Unit, number(r.Price), number(r.Cost), "", plain(r.Note)})
	}
	for _, m := range b.Masses {
		note := ""
		if m.Missing != "" {
			note = m.Missing + " is not given"
		}
		rows = append(rows, []string{"mass", plain(m.Part), "", "", "", "", mass(m.Grams), note})
	}
	rows = append(rows, []string{"total", "", "", "", "", number(b.Cost), mass(b.Total), ""})
	return c.WriteAll(rows)
}

// plain keeps a text from being run as a formula.
func plain(s string) string {
	if s != "" && strings.ContainsRune("=+-@\t\r", rune(s[0])) {
		return "'" + s
	}
	return s
}
