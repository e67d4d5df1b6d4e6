package chapter

import (
	"slices"
	"testing"

	"slingloft/export/sheet"
	"slingloft/outline/hung"
	"slingloft/outline/stock"
)

// What cannot be known is not told as nothing.
func TestNotGiven(t *testing.T) {
	b := hangs(t)
	b.Bill = &stock.Bill{
		Rows:   []stock.Row{{Name: "any", Quantity: 2.5}},
		Masses: []stock.Mass{{Missing: "cloth.areal_density"}},
	}
	s, err := b.materials()
	if err != nil {
		t.Fatal(err)
	}
	given := 0
	for _, table := range ofKind[sheet.Table](s) {
		for _, row := range table.Rows {
			if table.ID == "materials-tools" {
				break
			}
			given++
			if last := row[len(row)-1]; last != b.Say.NotGiven {
				t.Errorf("%q: %q, want %q", row[0], last, b.Say.NotGiven)
			}
		}
	}
	if given != 4 {
		t.Errorf("%d rows, want 4", given)
	}
}

// Amounts and prices by the metre go over to yards with inches, pieces stay.
func TestAmounts(t *testing.T) {
	b := hangs(t)
	for _, row := range []struct {
		row          stock.Row
		inches       bool
		amount, each string
	}{
		{stock.Row{Unit: stock.Metre, Quantity: 2.5, Price: 9}, false, "2.50 m", "9.00 per m"},
		{stock.Row{Unit: stock.Metre, Quantity: 9.144, Price: 10}, true, "10.00 yd", "9.14 per yd"},
		{stock.Row{Unit: stock.Metre, Quantity: 2.5}, false, "2.50 m", ""},
		{stock.Row{Unit: stock.Single, Quantity: 4, Price: 1.5}, true, "4 × piece", "1.50 per piece"},
		{stock.Row{Unit: stock.Single, Quantity: 4}, false, "4 × piece", ""},
	} {
		b := b
		if row.inches {
			b = b.inches()
		}
		if amount, each := b.amount(row.row), b.each(row.row); amount != row.amount || each != row.each {
			t.Errorf("%+v: %q, %q, want %q, %q", row.row, amount, each, row.amount, row.each)
		}
	}
}

func TestMaterials(t *testing.T) {
	b := hangs(t)
	b.Bill = &stock.Bill{
		Rows:   []stock.Row{{Kind: stock.ClothRow, Thing: stock.Named, Name: "taffeta", Unit: stock.Metre, Quantity: 3, Price: 9, Cost: 27}},
		Masses: []stock.Mass{{Part: stock.MassPart{Kind: stock.OfCloth}, Grams: 310.4}},
		Bars:   []stock.Cutting{{Parts: []stock.Part{{Bar: hung.Head, Length: 890}, {Bar: hung.Foot, Length: 810}}, Offcut: 300}},
		Total:  310.4, Cost: 27,
	}
	bill, mass := b.billTable(), b.massTable()
	if got, want := cells(bill, "Cloth: taffeta"), []string{"3.00 m", "length of roll, 50 mm of it to square the end", "9.00 per m", "27.00"}; !slices.Equal(got, want) {
		t.Errorf("cloth %q, want %q", got, want)
	}
	if got := cells(bill, b.Say.Materials.Cost); got[3] != "27.00" || !slices.Equal(bill.Strong, []bool{false, true}) {
		t.Errorf("together %q, strong %v", got, bill.Strong)
	}
	if got := cells(mass, b.Say.Materials.Total); !slices.Equal(got, []string{"310 g"}) {
		t.Errorf("mass %q", got)
	}
	if got, want := b.barsList(), (sheet.List{"Bar stock 1: head bar 890.0 mm, foot bar 810.0 mm; 300 mm over."}); !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
	if s, err := b.materials(); err != nil || len(s.Blocks) != 4 {
		t.Errorf("%d blocks, %v", len(s.Blocks), err)
	}
	b.Bill.Open = []stock.Open{{Row: &b.Bill.Rows[0]}, {Mass: stock.Mass{Missing: "bar.density", Part: stock.MassPart{Kind: stock.OfBars}}}}
	s, err := b.materials()
	if err != nil {
		t.Fatal(err)
	}
	want := sheet.Para("Not given: price of taffeta; mass of bars, for want of bar.density.")
	if got := ofKind[sheet.Para](s); !slices.Equal(got, []sheet.Para{want}) {
		t.Errorf("%q, want %q", got, want)
	}
}

// A sheet without a lay says that there is none, and lists nothing.
func TestMaterialsUnlaid(t *testing.T) {
	b := hangs(t)
	b.Unlaid = true
	if s, err := b.materials(); err != nil || !slices.Equal(s.Blocks, []sheet.Block{sheet.Para(b.Say.Unlaid)}) {
		t.Errorf("%v, %v", s.Blocks, err)
	}
}
