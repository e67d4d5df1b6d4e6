package figures

import (
	"bytes"
	"strings"
	"testing"

	"slingloft/outline/cord"
	"slingloft/outline/margin"
	"slingloft/outline/quantity"
	"slingloft/outline/state"
	"slingloft/outline/stock"
)

// A small list as a whole file: two decimals, what is not known left empty and not 0.
func TestCSVFile(t *testing.T) {
	d := Document{bill: stock.Bill{
		Rows: []stock.Row{
			{Kind: stock.ClothRow, Name: `rip "stop", white`, Quantity: 2.2, Price: 8, Cost: 17.6, Note: stock.Note{Kind: stock.RollLength}},
			{Kind: stock.SheetRow, Name: "plywood", Quantity: 3, Unit: stock.Single, Note: stock.Note{Kind: stock.ForTemplates}},
		},
		Masses: []stock.Mass{{Part: stock.MassPart{Kind: stock.OfCloth}, Grams: 162},
			{Part: stock.MassPart{Kind: stock.OfBars}, Missing: "bar.density"},
			{Part: stock.MassPart{Kind: stock.OfCord, Cord: cord.HeadLeg}, Grams: 12.5}},
		Total: 174.5, Cost: 17.6,
	}, strengths: []margin.Least{{Thing: margin.HookThing, Value: 5000.1, Keeps: 1,
		Check: margin.Check{Part: margin.HeadHook, Case: state.Sitting, Load: 1000.02, Required: 5}}}}
	want := `kind,name,quantity,unit,price,cost,mass_g,note
cloth,"rip ""stop"", white",2.20,m,8.00,17.60,,"length of roll, 50 mm of it to square the end"
sheet,plywood,3.00,piece,,,,templates
strength,"each hook, ring, strap and anchor",5001,N,,,,"at least 5001 N; 5.0 × 1000 N, head hook, sitting"
mass,cloth,,,,,162,
mass,bars,,,,,,bar.density is not given
mass,head leg,,,,,13,
total,,,,,17.60,175,
`
	var got bytes.Buffer
	if err := d.WriteCSV(&got, quantity.Style{}, English()); err != nil {
		t.Fatal(err)
	}
	if got.String() != want {
		t.Errorf("got\n%swant\n%s", got.String(), want)
	}
}

// Whatever a spreadsheet would run is set off, what it would not run stays as it is.
func TestFormulas(t *testing.T) {
	for text, want := range map[string]string{
		"braid 3 mm": "braid 3 mm", "3 mm = 1/8": "3 mm = 1/8", "'=quoted": "'=quoted", "Ätna": "Ätna",
		"=1+1": "'=1+1", "+cmd": "'+cmd", "-2": "'-2", "@SUM(A1)": "'@SUM(A1)", "\ttab": "'\ttab", "\rback": "'\rback",
	} {
		var got bytes.Buffer
		d := Document{bill: stock.Bill{Rows: []stock.Row{{Kind: stock.CordRow, Name: text, Quantity: 1, Price: 1, Cost: 1}}}}
		if err := d.WriteCSV(&got, quantity.Style{}, English()); err != nil {
			t.Fatal(err)
		}
		if !strings.Contains(got.String(), "cord,"+want+",1.00,m") && !strings.Contains(got.String(), `cord,"`+want+`",1.00,m`) {
			t.Errorf("%q: no %q in %q", text, want, got.String())
		}
	}
}
