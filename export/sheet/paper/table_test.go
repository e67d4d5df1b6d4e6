package paper

import (
	"fmt"
	"testing"

	"slingloft/export/sheet"
)

// A long table is divided evenly, its parts stand beside each other as one item, and
// nothing of it is wider than the page.
func TestLongTables(t *testing.T) {
	p := newWriter(sheet.Sheet{}, A4)
	for _, row := range []struct {
		rows, cell int  // how many, and how wide a column is in figures
		dense      bool // set in columns
		items      int
		parts      []int // rows behind which it is divided
	}{
		{10, 5, true, 1, []int{10}},
		{25, 5, true, 1, []int{13, 25}},
		{61, 5, true, 1, []int{15, 31, 46, 61}},
		{61, 20, true, 4, []int{15, 31, 46, 61}},
		{61, 5, false, 1, []int{31, 61}},
		{1, 5, true, 1, []int{1}},
	} {
		table := sheet.Table{Caption: "Head end, centre line to corner: chord 599.1 mm, along the curve 600.0 mm; columns " +
			"in mm, and more words than are good for it",
			Head: []string{"along", "offset", "curve"}, Words: make([]bool, 3), Dense: row.dense}
		for i := range row.rows {
			text := fmt.Sprintf("%0*d", row.cell, i)
			table.Rows = append(table.Rows, []string{text, text, text})
		}
		g := newGrid(table)
		if got := g.divided(); fmt.Sprint(got) != fmt.Sprint(row.parts) {
			t.Errorf("%d rows are divided at %v, want %v", row.rows, got, row.parts)
		}
		items := p.table(table)
		if len(items) != row.items {
			t.Errorf("%d rows are %d items, want %d", row.rows, len(items), row.items)
		}
		for i, it := range items {
			if it.w > content+0.01 || it.h > longest+20 {
				t.Errorf("%d rows: item %d is %g × %g mm", row.rows, i, it.w, it.h)
			}
		}
	}
}
