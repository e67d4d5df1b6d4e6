package page

import (
	"fmt"

	"slingloft/export/sheet"
)

// part is how many rows of a long and narrow table stand below each other.
const part = 21

// broad is from how many columns on a table may be wider than a phone.
const broad = 4

func writeTable(b *writer, t sheet.Table) {
	if !t.Dense {
		open, end := "<div class=\"scroll"+short(t)+"\">", "</div>\n"
		if len(t.Head) >= broad {
			open = fmt.Sprintf("<div class=\"scroll%s\" tabindex=\"0\" role=\"group\" aria-labelledby=\"%s-c\">", short(t), t.ID)
		}
		b.WriteString(open)
		fmt.Fprintf(b, "<table id=\"%s\">\n<caption id=\"%s-c\">%s</caption>\n", t.ID, t.ID, esc(t.Caption))
		writeRows(b, t, 0, len(t.Rows))
		b.WriteString("</table>" + end)
		return
	}
	fmt.Fprintf(b, "<div class=\"dense\" role=\"group\" aria-labelledby=\"%s-c\">\n", t.ID)
	fmt.Fprintf(b, "<p class=\"caption\" id=\"%s-c\">%s</p>\n<div class=\"parts\">\n", t.ID, esc(t.Caption))
	parts := (len(t.Rows) + part - 1) / part
	for i := range parts {
		from, to := i*len(t.Rows)/parts, (i+1)*len(t.Rows)/parts
		fmt.Fprintf(b, "<table aria-label=\"%s\">\n", esc(fmt.Sprintf(b.frame.Rows, t.Caption, from+1, to)))
		writeRows(b, t, from, to)
		b.WriteString("</table>\n")
	}
	b.WriteString("</div>\n</div>\n")
}

// short is the class of a table that stays on one printed page.
func short(t sheet.Table) string {
	if len(t.Rows) <= part {
		return " short"
	}
	return ""
}

// beside reports whether a block may stand beside its neighbours.
func beside(block sheet.Block) bool {
	switch t := block.(type) {
	case sheet.Table:
		return !t.Dense && len(t.Head) <= 5
	case sheet.Figures:
		for _, f := range t {
			if f.Wide() {
				return false
			}
		}
		return true
	}
	return false
}

// writeRows writes the head and the rows from one up to another.
func writeRows(b *writer, t sheet.Table, from, to int) {
	words := func(i int) string {
		if i < len(t.Words) && t.Words[i] {
			return " class=\"w\""
		}
		return ""
	}
	b.WriteString("<thead><tr>")
	for i, h := range t.Head {
		if h == "" {
			fmt.Fprintf(b, "<td%s></td>", words(i))
			continue
		}
		fmt.Fprintf(b, "<th scope=\"col\"%s>%s</th>", words(i), esc(h))
	}
	b.WriteString("</tr></thead>\n<tbody>\n")
	for r := from; r < to; r++ {
		class := ""
		if r < len(t.Strong) && t.Strong[r] {
			class = " class=\"strong\""
		}
		fmt.Fprintf(b, "<tr%s>", class)
		for i, cell := range t.Rows[r] {
			if i == 0 && cell != "" {
				fmt.Fprintf(b, "<th scope=\"row\"%s>%s</th>", words(i), esc(cell))
				continue
			}
			fmt.Fprintf(b, "<td%s>%s</td>", words(i), esc(cell))
		}
		b.WriteString("</tr>\n")
	}
	b.WriteString("</tbody>\n")
}
