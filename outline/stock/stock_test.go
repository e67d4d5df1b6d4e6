package stock_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
	"slingloft/outline/stock"
)

func near(t *testing.T, what string, got, want float64) {
	t.Helper()
	if !(math.Abs(got-want) <= 1e-9*math.Max(1, math.Abs(want))) {
		t.Errorf("%s = %.9g, want %.9g", what, got, want)
	}
}

func input() stock.Input {
	var d design.Design
	d.Side = design.Cord{Name: "braid", LinearDensity: 5, Price: 2}
	d.Hang.Line = design.Cord{Name: "line", LinearDensity: 9}
	d.Bed.HeadBar, d.Bed.FootBar = 914, 814
	d.Bar = design.Bar{Name: "tube", Outer: 25, Wall: 1.5, Density: 2710, TipReach: 7, Stock: 2000, Price: 16}
	d.Cloth = design.Cloth{Name: "ripstop", Width: 1500, ArealDensity: 60, Price: 8}
	d.Sheet = design.Sheet{Name: "plywood", Price: 7}
	d.Seam = design.Seam{StitchLength: 2.5, ThreadName: "polyester"}
	d.Splice.Waste = 0.1
	return stock.Input{
		Hammocks: []stock.Hammock{{
			Design: d,
			Cords: []cord.Cord{{Part: cord.SideCord, Count: 2, Cut: 2000, Kind: d.Side}, {Part: cord.HeadLeg, Count: 2, Cut: 1500, Kind: d.Side},
				{Part: cord.HeadLine, Count: 1, Cut: 1800, Kind: d.Hang.Line}},
			Runs: []stock.Run{{2, 1600, 2}},
		}},
		Rolls:  []stock.Roll{{Cloth: d.Cloth, Lay: 2200, Pieces: []stock.Piece{{Count: 1, Area: 2.4e6}, {Count: 2, Area: 0.15e6}}}},
		Sheets: 3, Sheet: d.Sheet,
	}
}

// A small list worked by hand.
func TestBill(t *testing.T) {
	b, err := stock.Of(input())
	if err != nil {
		t.Fatal(err)
	}
	want := map[string][2]float64{ // quantity, cost
		"ripstop": {2.25, 18}, "braid": {9.28, 18.56}, "line": {3.56, 0}, "tube": {1, 16}, "plywood": {3, 21},
		// Four rows of 1.6 m at 2 (2.5 + 0.5) / 2.5, four tails of 0.1 m each, a fifth more.
		"polyester": {4 * (1.6*2.4 + 0.4) * 1.2, 0},
	}
	seen := 0
	for _, r := range b.Rows {
		if w, ok := want[r.Name]; ok {
			seen++
			near(t, r.Name, r.Quantity, w[0])
			near(t, "cost of "+r.Name, r.Cost, w[1])
		}
	}
	if seen != len(want) {
		t.Errorf("%d of %d rows in %+v", seen, len(want), b.Rows)
	}
	near(t, "cost", b.Cost, 18+18.56+16+21)
	bars := math.Pi / 4 * (25*25 - 22*22) * (900 + 800) * 2710e-6
	near(t, "mass", b.Total, 2.7*60+7*5+1.8*9+bars)
	near(t, "used", b.Used, 2.7e6/(2250*1500))
	near(t, "offcut", b.Bars[0].Offcut, 2000-900-800-2)
}

// What is not given is named and counts as nothing.
func TestOpen(t *testing.T) {
	in := input()
	in.Hammocks[0].Design.Bar.Density, in.Rolls[0].Cloth.ArealDensity = 0, 0
	in.Hammocks[0].Cords[2].Kind.LinearDensity = 0
	b, err := stock.Of(in)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "mass", b.Total, 7*5)
	missing := map[design.Key]bool{}
	for _, m := range b.Masses {
		missing[m.Missing] = true
	}
	for _, k := range []design.Key{design.KeyBarDensity, design.KeyClothArealDensity, "hang.line.linear_density"} {
		if !missing[k] {
			t.Errorf("%s is not named in %+v", k, b.Masses)
		}
	}
}

// Every part is cut once, no stock length is overdrawn, and no fewer lengths than
// the sum needs are used; pairs take the least.
func TestCut(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 1))
	for range 500 {
		n := 1 + rng.IntN(9)
		parts := make([]stock.Part, n)
		sum := 0.0
		for i := range parts {
			parts[i] = stock.Part{Length: 300 + 1500*rng.Float64()}
			sum += parts[i].Length
		}
		cut, err := stock.Cut(parts, 2000, 3)
		if err != nil {
			t.Fatal(err)
		}
		got, count := 0.0, 0
		for _, c := range cut {
			used := 0.0
			for i, p := range c.Parts {
				used += p.Length
				if i > 0 {
					used += 3
				}
				got += p.Length
				count++
			}
			near(t, "offcut", c.Offcut, 2000-used)
			if c.Offcut < 0 {
				t.Fatalf("overdrawn: %+v", c)
			}
		}
		near(t, "sum", got, sum)
		if count != n || float64(len(cut)) < sum/2000 || float64(len(cut)) > math.Ceil(2*(sum+3*float64(n))/2000) {
			t.Fatalf("%d parts, %d lengths for %g mm", count, len(cut), sum)
		}
		if n == 2 {
			want := 2
			if sum+3 <= 2000 {
				want = 1
			}
			if len(cut) != want {
				t.Fatalf("a pair of %g takes %d lengths, want %d", sum, len(cut), want)
			}
		}
	}
	_, err := stock.Cut([]stock.Part{{hung.Head, 2100.2, 0}}, 2000, 3)
	var bad *hung.Impossible
	if !errors.As(err, &bad) || bad.Key != "bar.stock" || bad.Limit != 2101 {
		t.Errorf("too long: %v", err)
	}
}

// In inches the list is in yards with the price of a yard; the cost stays what it is.
func TestInYards(t *testing.T) {
	b, err := stock.Of(input())
	if err != nil {
		t.Fatal(err)
	}
	yards := b.In(quantity.Style{Inches: true})
	for i, r := range b.Rows {
		q := yards.Rows[i]
		if r.Unit != stock.Metre {
			if q != r {
				t.Errorf("%s: %+v, want %+v", r.Name, q, r)
			}
			continue
		}
		// A yard is 0.9144 m exactly; what is bought is never short and at most a
		// hundredth of a yard more.
		if over := q.Quantity*0.9144 - r.Quantity; q.Unit != stock.Yard || over < -1e-9 || over > 0.009144+1e-9 {
			t.Errorf("%s: %g %v for %g m", r.Name, q.Quantity, q.Unit, r.Quantity)
		}
		near(t, "price of a yard", q.Price, 0.9144*r.Price)
		near(t, "cost", q.Cost, r.Cost)
	}
}

// A gathered end's drawstring runs through its whole channel and is long enough to
// tie; its cut lengths are told.
func TestDrawstrings(t *testing.T) {
	in := input()
	plain, err := stock.Of(in)
	if err != nil {
		t.Fatal(err)
	}
	in.Hammocks[0].Gathered = []float64{1210, 1105}
	b, err := stock.Of(in)
	if err != nil {
		t.Fatal(err)
	}
	if len(b.Rows) != len(plain.Rows)+1 {
		t.Fatalf("%d rows, %d without drawstrings", len(b.Rows), len(plain.Rows))
	}
	for _, r := range b.Rows {
		if r.Thing == stock.Drawstring {
			near(t, "metres", r.Quantity, 3.12) // 1.61 m and 1.505 m, up to a centimetre
			if want := (stock.Note{Kind: stock.CutStrings, Cut: [2]float64{1610, 1505}}); r.Note != want {
				t.Errorf("note %+v", r.Note)
			}
			return
		}
	}
	t.Error("no drawstring")
}
