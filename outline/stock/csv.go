package stock

import (
	"encoding/csv"
	"io"
	"strings"

	"slingloft/outline/quantity"
)

// WriteCSV writes the rows, the masses and both totals as comma-separated values
// (RFC 4180 but for its line ends, which are single line feeds). A text that a
// spreadsheet would take for a formula is set off by an apostrophe.
func (b Bill) WriteCSV(w io.Writer) error {
	c := csv.NewWriter(w)
	number := func(v float64) string {
		if v == 0 {
			return ""
		}
		return quantity.Decimal(v, 2)
	}
	rows := [][]string{{"kind", "name", "quantity", "unit", "price", "cost", "mass_g", "note"}}
	for _, r := range b.Rows {
		rows = append(rows, []string{r.Kind, plain(r.Name), quantity.Decimal(r.Quantity, 2), r.Unit, number(r.Price), number(r.Cost), "", plain(r.Note)})
	}
	for _, m := range b.Masses {
		note := ""
		if m.Missing != "" {
			note = m.Missing + " is not given"
		}
		rows = append(rows, []string{"mass", plain(m.Part), "", "", "", "", number(m.Grams), note})
	}
	rows = append(rows, []string{"total", "", "", "", "", number(b.Cost), number(b.Total), ""})
	return c.WriteAll(rows)
}

// plain keeps a text from being run as a formula.
func plain(s string) string {
	if s != "" && strings.ContainsRune("=+-@\t\r", rune(s[0])) {
		return "'" + s
	}
	return s
}
