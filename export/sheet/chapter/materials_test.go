package chapter

import (
	"slingloft/export/sheet"
	"slingloft/export/sheet/giventest"
	"slingloft/outline/stock"
	"testing"
)

// What cannot be known is not told as nothing.
func TestNotGiven(t *testing.T) {
	d := giventest.Hung(t)
	b := build{&d}
	b.Bill = &stock.Bill{
		Rows:   []stock.Row{{Name: "any", Quantity: 2.5}},
		Masses: []stock.Mass{{Missing: "cloth.areal_density"}},
	}
	s, err := b.materials()
	if err != nil {
		t.Fatal(err)
	}
	given := 0
	for _, block := range s.Blocks {
		table, ok := block.(sheet.Table)
		for _, row := range table.Rows {
			given++
			if last := row[len(row)-1]; ok && last != d.Say.NotGiven {
				t.Errorf("%q: %q, want %q", row[0], last, d.Say.NotGiven)
			}
		}
	}
	if given != 4 {
		t.Errorf("%d rows, want 4", given)
	}
}
