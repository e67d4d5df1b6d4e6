package stock_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"slingloft/outline/cord"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
	"slingloft/outline/stock"
)

// bill makes the list of an input.
func bill(t *testing.T, in stock.Input) stock.Bill {
	t.Helper()
	b, err := stock.Of(in)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// rowOf returns the row of the given name.
func rowOf(t *testing.T, b stock.Bill, name string) stock.Row {
	t.Helper()
	i := slices.IndexFunc(b.Rows, func(r stock.Row) bool { return r.Name == name })
	if i < 0 {
		t.Fatalf("no row %q in %+v", name, b.Rows)
	}
	return b.Rows[i]
}

// open tells what is not given.
func open(b stock.Bill) []string {
	var out []string
	for _, o := range b.Open {
		if o.Row != nil {
			out = append(out, "price of "+o.Row.Name)
		} else {
			out = append(out, "mass of "+o.Mass.Part.String()+" for want of "+string(o.Mass.Missing))
		}
	}
	return out
}

// Without a stock length the bars are counted in metres and cost nothing known.
func TestBarsByTheMetre(t *testing.T) {
	in := input()
	in.Hammocks[0].Design.Bar.Stock = 0
	b := bill(t, in)
	r := rowOf(t, b, "tube")
	near(t, "metres", r.Quantity, (914-14+814-14)/1000.)
	if r.Unit != stock.Metre || r.Note.Kind != stock.BothBars || r.Price != 0 || r.Cost != 0 || b.Bars != nil {
		t.Errorf("%+v, bars %+v", r, b.Bars)
	}
	if !slices.Contains(open(b), "price of tube") {
		t.Errorf("open %q", open(b))
	}
	// A thick saw takes a second length where the two bars only just fit in one.
	in.Hammocks[0].Design.Bar.Stock, in.Saw = 1702, 3
	if b = bill(t, in); rowOf(t, b, "tube").Quantity != 2 {
		t.Errorf("1702 mm for 900 + 800 and a cut of 3: %+v", b.Bars)
	}
	if in.Saw = 2; rowOf(t, bill(t, in), "tube").Quantity != 1 {
		t.Errorf("1702 mm for 900 + 800 and a cut of 2")
	}
}

// What has no price and what has no mass is listed as open, nothing else.
func TestOpenList(t *testing.T) {
	in := input()
	in.Rolls[0].Cloth.ArealDensity = 0
	got := open(bill(t, in))
	for _, want := range []string{"price of line", "price of polyester", "mass of cloth for want of cloth.areal_density"} {
		if !slices.Contains(got, want) {
			t.Errorf("%q is not open in %q", want, got)
		}
	}
	for _, known := range []string{"ripstop", "braid", "tube", "plywood", "side cord", "bars"} {
		if slices.ContainsFunc(got, func(s string) bool { return strings.Contains(s, known) }) {
			t.Errorf("%s is open in %q", known, got)
		}
	}
}

// The used part of the roll needs both a lay and a width.
func TestUsed(t *testing.T) {
	for _, r := range []struct{ lay, width, want float64 }{
		{2200, 1500, 2.7e6 / (2250 * 1500)}, {0, 1500, 0}, {2200, 0, 0}, {4400, 1500, 2.7e6 / (4450 * 1500)},
	} {
		in := input()
		in.Rolls[0].Lay, in.Rolls[0].Cloth.Width = r.lay, r.width
		near(t, "used", bill(t, in).Used, r.want)
	}
}

// Lengths to buy are rounded up to a centimetre, never down, and whole centimetres
// stay as they are; what squares the end of the roll comes on top.
func TestNeverShort(t *testing.T) {
	for _, r := range []struct{ lay, want float64 }{{2200, 2.25}, {2200.001, 2.26}, {2209.9, 2.26}, {2210, 2.26}, {1, 0.06}, {0, 0}} {
		in := input()
		in.Rolls[0].Lay = r.lay
		near(t, "cloth", rowOf(t, bill(t, in), "ripstop").Quantity, r.want)
	}
}

// Cord is enough for all that is cut from it: the cords, both pieces of a trial splice,
// both ends that go five times round a post of up to 50 mm and are hitched, and what is
// added for mistakes.
func TestCordIsEnough(t *testing.T) {
	in := input()
	in.Hammocks[0].Cords[0].Kind.Diameter, in.Hammocks[0].Cords[1].Kind.Diameter = 3, 3
	in.Hammocks[0].Trials = []cord.Trial{{Kind: in.Hammocks[0].Cords[0].Kind, Host: 1850, Own: 400}}
	r := rowOf(t, bill(t, in), "braid")
	round := 5*math.Pi*53 + 60*3.0
	near(t, "braid", r.Quantity, math.Ceil((7700+2250+2*round)/10)/100)
	near(t, "its share", r.Note.Cord.Fast, 2*round)
	if line := rowOf(t, bill(t, in), "line"); line.Note.Cord.Trial != 0 {
		t.Errorf("a trial of the line: %+v", line.Note)
	}
}

// A lock stitch: per stitch each thread goes s along and t through, so that with a
// stitch of the cloth's thickness a seam takes four times its length.
func TestThread(t *testing.T) {
	for _, r := range []struct{ length, stitch, layers, want float64 }{
		{1000, 2.5, 0, 2000}, {1000, 2.5, 2.5, 4000}, {1000, 2.5, 0.5, 2400}, {0, 2.5, 0.5, 0}, {1000, 0, 0.5, 0},
	} {
		near(t, "thread", stock.Thread(r.length, r.stitch, r.layers), r.want)
	}
	in := input()
	in.Hammocks[0].Runs = []stock.Run{{Count: 1, Length: 500}} // rows not said: one
	in.Layers = 2.5
	in.Hammocks[0].Design.Seam.ThreadName = ""
	if r := rowOf(t, bill(t, in), ""); r.Thing == stock.AnyThread {
		near(t, "one run", r.Quantity, (4*500+400)*1.2/1000)
	} else {
		t.Errorf("first row without a name: %+v", r)
	}
	in.Hammocks[0].Runs = nil
	if slices.ContainsFunc(bill(t, in).Rows, func(r stock.Row) bool { return r.Kind == stock.ThreadRow }) {
		t.Error("thread without a seam")
	}
}

// No sheets, no row of sheets; hooks, straps and tips are always there.
func TestSheetsAndHardware(t *testing.T) {
	in := input()
	in.Sheets = 0
	b := bill(t, in)
	kinds := map[stock.Kind]float64{}
	for _, r := range b.Rows {
		kinds[r.Kind] += r.Quantity
	}
	if _, ok := kinds[stock.SheetRow]; ok {
		t.Error("sheets without templates")
	}
	near(t, "hooks, straps and tips", kinds[stock.HardwareRow], 2+2+4)
}

// The longest part is cut first, whatever the order they are given in, and parts
// alike keep their order.
func TestLongestFirst(t *testing.T) {
	parts := []stock.Part{{hung.Head, 500, 0}, {hung.Head, 900, 0}, {hung.Foot, 500, 0}, {hung.Foot, 1100, 0}}
	cut, err := stock.Cut(parts, 2003, 3)
	if err != nil {
		t.Fatal(err)
	}
	want := [][]stock.Part{{{hung.Foot, 1100, 0}, {hung.Head, 900, 0}}, {{hung.Head, 500, 0}, {hung.Foot, 500, 0}}}
	for i, c := range cut {
		if i >= len(want) || !slices.Equal(c.Parts, want[i]) {
			t.Errorf("length %d gives %v, want %v", i, c.Parts, want)
		}
	}
	near(t, "nothing over", cut[0].Offcut, 0)
	if parts[0].Length != 500 || parts[3].Length != 1100 {
		t.Errorf("the given order was changed: %+v", parts)
	}
	if cut, err = stock.Cut(nil, 2000, 3); err != nil || len(cut) != 0 {
		t.Errorf("nothing to cut: %+v, %v", cut, err)
	}
}

// Metric style leaves the list as it is.
func TestInMetres(t *testing.T) {
	b := bill(t, input())
	if got := b.In(quantity.Style{}); !slices.Equal(got.Rows, b.Rows) {
		t.Errorf("%+v, want %+v", got.Rows, b.Rows)
	}
}

// Two hammocks take together what each takes, but that one trial of a cord does for both,
// and bars come out of the same lengths; what is other has a row of its own.
func TestTwoHammocks(t *testing.T) {
	in := input()
	in.Hammocks[0].Trials = []cord.Trial{{Kind: in.Hammocks[0].Cords[0].Kind, Host: 1850, Own: 400}}
	one := bill(t, in)
	in.Hammocks = append(in.Hammocks, in.Hammocks[0])
	two := bill(t, in)
	a, b := rowOf(t, one, "braid").Note.Cord, rowOf(t, two, "braid").Note.Cord
	if want := (stock.CordShare{Cords: 2 * a.Cords, Waste: 2 * a.Waste, Fast: 2 * a.Fast, Trial: a.Trial}); b != want {
		t.Errorf("braid of two: %+v, want %+v", b, want)
	}
	near(t, "thread", rowOf(t, two, "polyester").Quantity, 2*rowOf(t, one, "polyester").Quantity)
	near(t, "mass but of the cloth", two.Total-2.7*60, 2*(one.Total-2.7*60))
	if len(two.Rows) != len(one.Rows) {
		t.Errorf("%d rows of two alike, %d of one", len(two.Rows), len(one.Rows))
	}
	// Four bars of 900 and 800 mm from lengths of 3.4 m: with the saw cuts not all from one.
	in.Hammocks[0].Design.Bar.Stock, in.Hammocks[1].Design.Bar.Stock = 3400, 3400
	two = bill(t, in)
	near(t, "tubes", rowOf(t, two, "tube").Quantity, 2)
	of := map[stock.Part]int{}
	for _, c := range two.Bars {
		for _, p := range c.Parts {
			of[p]++
		}
	}
	if len(of) != 4 || of[stock.Part{Bar: hung.Foot, Length: 800, Hammock: 1}] != 1 {
		t.Errorf("cut: %v", of)
	}
	// Other tips and another thread.
	in.Hammocks[1].Design.Bar.TipDiameter, in.Hammocks[1].Design.Seam.ThreadName = 9, "bonded nylon"
	apart := bill(t, in)
	near(t, "thread of the second", rowOf(t, apart, "bonded nylon").Quantity, rowOf(t, one, "polyester").Quantity)
	tips := map[float64]float64{}
	for _, r := range apart.Rows {
		if r.Thing == stock.BarTip {
			tips[r.Note.Tip.Pin] += r.Quantity
		}
	}
	if len(tips) != 2 || tips[9] != 4 || tips[0] != 4 {
		t.Errorf("tips by size: %v", tips)
	}
}

// The list says how large tips have to be: the plug by the tube's bore, the pin by what the
// gap leaves beside the cords where the design names none, and how far it stands out. Hang
// lines that no cord of the design makes are on the list, one an end, and off it else.
func TestTipsAndOwnLines(t *testing.T) {
	in := input()
	d := &in.Hammocks[0].Design
	d.Bar.Outer, d.Bar.Wall = 25, 1.5
	d.Splice.TipGap, d.Side.Diameter, d.Leg.Diameter = 39, 3, 4
	tip := bill(t, in).Rows[len(bill(t, in).Rows)-1].Note.Tip
	near(t, "plug", tip.Plug, 22)
	near(t, "pin at most", tip.Most, 39/3.9-4)
	near(t, "past the shoulder", tip.Past, 3*4)
	own := func() (n float64) {
		for _, r := range bill(t, in).Rows {
			if r.Thing == stock.OwnLine {
				n += r.Quantity
			}
		}
		return n
	}
	in.Hammocks[0].Cords = []cord.Cord{{Part: cord.SideCord}}
	near(t, "lines of one's own", own(), 2)
	in.Hammocks[0].Cords = append(in.Hammocks[0].Cords, cord.Cord{Part: cord.HeadLine}, cord.Cord{Part: cord.FootLine})
	near(t, "lines that are made", own(), 0)
}
