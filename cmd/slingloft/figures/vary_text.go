package figures

import (
	"encoding/csv"
	"fmt"
	"io"
	"strings"
	"text/tabwriter"

	"slingloft/outline/quantity"
)

// Text writes the variants for people, lengths as the design wants them: a table, then
// what stands in the way of the others.
func (d Varied) Text(w io.Writer, s quantity.Style, say Words) error {
	b := &report{style: s, words: say.Names, say: say}
	b.out = tabwriter.NewWriter(&b.text, 0, 0, 2, ' ', tabwriter.AlignRight)
	b.line(say.Vary.Title, d.Name)
	b.line("")
	names, units := d.heads(s, say)
	b.row(names...)
	b.row(units...)
	for _, v := range d.Variants {
		if v.Buys != nil {
			b.row(append(d.cells(v, s, say), v.now(say))...)
		}
	}
	b.out.Flush()
	b.line("")
	b.line("%s", say.Vary.How)
	for _, v := range d.Variants {
		if v.Cannot != "" {
			b.line(say.Vary.Cannot, v.named(d.Keys), v.Cannot)
		}
	}
	b.line(say.Caution, say.Vary.Careful)
	_, err := io.WriteString(w, b.text.String())
	return err
}

// now marks the design as it stands.
func (v Variant) now(say Words) string {
	if v.Now {
		return say.Vary.Now
	}
	return ""
}

// named returns a variant by its keys and values.
func (v Variant) named(keys []string) string {
	var out []string
	for i, k := range keys {
		out = append(out, k+" "+v.Values[i])
	}
	return strings.Join(out, ", ")
}

// heads returns the heads of the columns in two rows, with their units in the second.
func (d Varied) heads(s quantity.Style, say Words) (names, units []string) {
	for _, k := range d.Keys {
		names, units = append(names, k), append(units, "")
	}
	for m := range TraitCount {
		names, units = append(names, say.Vary.Columns[m]), append(units, m.kind().unit(s))
	}
	return append(names, say.Vary.Check), append(units, "")
}

// cells returns the row of a variant that can be made.
func (d Varied) cells(v Variant, s quantity.Style, say Words) []string {
	out := append([]string(nil), v.Values...)
	for m := range TraitCount {
		text := m.kind().text(m.of(v.Buys), s)
		if m == MarginTrait && v.Buys.Required == 0 {
			text = say.NotGiven
		}
		out = append(out, text)
	}
	return append(out, v.Buys.Check)
}

// WriteCSV writes the variants as comma-separated values, as the list of materials is
// written, a row each; of one that cannot be made the last column says why.
func (d Varied) WriteCSV(w io.Writer, s quantity.Style, say Words) error {
	names, units := d.heads(s, say)
	head := make([]string, len(names))
	for i, n := range names {
		if head[i] = plain(n); units[i] != "" {
			head[i] = fmt.Sprintf("%s (%s)", n, units[i])
		}
	}
	rows := [][]string{append(head, say.Vary.Why)}
	for _, v := range d.Variants {
		row := make([]string, len(names))
		copy(row, v.Values)
		if v.Buys != nil {
			copy(row, d.cells(v, quantity.Style{Inches: s.Inches, Decimals: 2}, say))
		}
		for i, m := len(d.Keys), Trait(0); m < TraitCount && v.Buys != nil; i, m = i+1, m+1 {
			row[i] = quantity.Decimal(m.kind().number(m.of(v.Buys), s), 3)
		}
		for i := range row {
			if i < len(d.Keys) || i == len(row)-1 {
				row[i] = plain(row[i])
			}
		}
		rows = append(rows, append(row, plain(v.Cannot)))
	}
	return csv.NewWriter(w).WriteAll(rows)
}
