package figures

import (
	"bytes"
	"encoding/csv"
	"errors"
	"strings"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/quantity"
	"slingloft/outline/stock"
	"slingloft/outline/words"
)

// bill returns a short list in which one thing has no name of the maker's.
func bill(t *testing.T, cloth string) stock.Bill {
	t.Helper()
	var d design.Design
	d.Bed.HeadBar, d.Bed.FootBar = 914, 814
	d.Bar = design.Bar{Name: "tube", Outer: 25, Wall: 1.5, Density: 2710, Stock: 2000, Price: 16}
	d.Cloth = design.Cloth{Name: cloth, Width: 1500, ArealDensity: 60, Price: 8}
	d.Seam = design.Seam{StitchLength: 2.5}
	b, err := stock.Of(stock.Input{
		Hammocks: []stock.Hammock{{Design: d, Runs: []stock.Run{{Count: 2, Length: 1600}}, Gathered: []float64{1210, 1105}}},
		Rolls:    []stock.Roll{{Cloth: d.Cloth, Lay: 2200, Pieces: []stock.Piece{{Count: 1, Area: 2.4e6}}}},
	})
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// The list reads back as it was written, and no text runs as a formula.
func TestCSV(t *testing.T) {
	const cloth = "=HYPERLINK(\"x\"), \"ripstop\"\nheavy"
	d := Document{bill: bill(t, cloth)}
	var first, second bytes.Buffer
	for _, w := range []*bytes.Buffer{&first, &second} {
		if err := d.WriteCSV(w, quantity.Style{}, English()); err != nil {
			t.Fatal(err)
		}
	}
	if first.String() != second.String() {
		t.Error("same list, other bytes")
	}
	rows, err := csv.NewReader(&first).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if len(rows) != 1+len(d.bill.Rows)+len(d.bill.Masses)+1 {
		t.Errorf("%d rows", len(rows))
	}
	if got, want := rows[1][1], "'"+cloth; got != want {
		t.Errorf("name %q, want %q", got, want)
	}
	if err := d.WriteCSV(broken{}, quantity.Style{}, English()); err == nil {
		t.Error("a write error is lost")
	}
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, errors.New("disk full") }

// In inches the list is in yards and ounces.
func TestCSVInYards(t *testing.T) {
	var text bytes.Buffer
	if err := (Document{bill: bill(t, "ripstop")}).WriteCSV(&text, quantity.Style{Inches: true}, English()); err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(text.String(), ",mass_oz,") || !strings.Contains(text.String(), ",yd,") || strings.Contains(text.String(), ",m,") {
		t.Errorf("not in yards and ounces:\n%s", text.String())
	}
}

// What the maker has not named is called by its kind, and the cut lengths of the
// drawstrings are told in the units of the design.
func TestMaterialsTold(t *testing.T) {
	names := map[string]string{}
	for _, r := range materialsOf(bill(t, "ripstop"), words.English(), quantity.Style{}).Rows {
		names[r.Name] = r.Note
	}
	if got, want := names["drawstring, thin and smooth"], "cut: head 1610 mm, foot 1505 mm, of which 400 mm to draw and tie"; got != want {
		t.Errorf("drawstring: %q, want %q", got, want)
	}
	if _, ok := names["thread"]; !ok {
		t.Errorf("no thread among %v", names)
	}
}
