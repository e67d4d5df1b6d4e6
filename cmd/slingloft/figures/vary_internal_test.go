package figures

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"slingloft/outline/quantity"
)

// bought returns traits that all differ, each a round figure in a unit by hand.
func bought() *Buys {
	return &Buys{Shoulders: 25.4, Arms: 50.8, Squeeze: 44.482216152605, Sag: 76.2, Along: -12.7,
		Turn: math.Pi / 6, Hang: Pair{math.Pi / 9, math.Pi / 12}, Line: 444.82216152605, Side: 667.233242289075, Bar: 222.411080763025,
		Check: "side cord, sitting", Margin: 7.5, Required: 5, Length: 2540, Mass: 283.49523125, Cloth: 2.50838208e6}
}

// Every trait in both systems, worked by hand: 1 in is 25.4 mm, 1 lbf 4.4482216152605 N, 1 oz
// 28.349523125 g, 1 yd² 836 127.36 mm², all exact; the margin is that over what is required.
func TestTraitsByHand(t *testing.T) {
	b := bought()
	for m, want := range [TraitCount]struct {
		mm, in float64
		units  [2]string
	}{
		ShoulderTrait: {25.4, 1, [2]string{"mm", "in"}}, ArmTrait: {50.8, 2, [2]string{"mm", "in"}},
		SqueezeTrait: {44.482216152605, 10, [2]string{"N", "lbf"}}, SagTrait: {76.2, 3, [2]string{"mm", "in"}},
		AlongTrait: {-12.7, -0.5, [2]string{"mm", "in"}}, TurnTrait: {30, 30, [2]string{"°", "°"}},
		HeadHangTrait: {20, 20, [2]string{"°", "°"}}, FootHangTrait: {15, 15, [2]string{"°", "°"}},
		LineTrait: {444.82216152605, 100, [2]string{"N", "lbf"}}, SideTrait: {667.233242289075, 150, [2]string{"N", "lbf"}},
		BarTrait: {222.411080763025, 50, [2]string{"N", "lbf"}}, MarginTrait: {1.5, 1.5, [2]string{"", ""}},
		LengthTrait: {2540, 100, [2]string{"mm", "in"}}, MassTrait: {283.49523125, 10, [2]string{"g", "oz"}},
		ClothTrait: {2.50838208, 3, [2]string{"m²", "yd²"}},
	} {
		for k, s := range [2]quantity.Style{{}, {Inches: true, Decimals: 2}} {
			kind := Trait(m).kind()
			value := [2]float64{want.mm, want.in}[k]
			if got := kind.number(Trait(m).of(b), s); math.Abs(got-value) > 1e-9*math.Abs(value) {
				t.Errorf("trait %d: %g %s, want %g", m, got, kind.unit(s), value)
			}
			if got := kind.unit(s); got != want.units[k] {
				t.Errorf("trait %d is in %q, want %q", m, got, want.units[k])
			}
			// What people read is the number, rounded; a half inch is written as such.
			text := strings.Replace(kind.text(Trait(m).of(b), s), "1/2", "0.5", 1)
			read, err := strconv.ParseFloat(text, 64)
			if err != nil || math.Abs(read-value) > 0.5 {
				t.Errorf("trait %d is written %q, want %g: %v", m, text, value, err)
			}
		}
	}
	b.Required, b.Margin = 0, 0
	if got := MarginTrait.of(b); got != 0 {
		t.Errorf("a margin of which nothing is known is %g", got)
	}
}

// grid is a bed with two keys: spans from long to short, by two depths, one bed of which
// does not hang and one of whose margins is not known.
func grid() Varied {
	d := Varied{Name: "grid", Keys: []string{"bed.span", "bed.side_depth"}}
	for i, span := range []string{"1600 mm", "1500 mm", "1400 mm"} {
		for k, depth := range []string{"210 mm", "190 mm"} {
			b := bought()
			b.Shoulders, b.Sag, b.Margin = float64(100*i+10*k), 80, float64(10+i)
			v := Variant{Values: []string{span, depth}, Now: i == 1 && k == 0, Buys: b}
			if i == 2 && k == 1 {
				v.Buys, v.Cannot = nil, "too short"
			}
			if i == 0 && k == 0 {
				v.Buys.Required = 0
			}
			d.Variants = append(d.Variants, v)
		}
	}
	return d
}

// A curve for each value of the second key, its points from short to long, without beds
// that do not hang and margins that are not known; of a single point none.
func TestLinesOfVariants(t *testing.T) {
	d := grid()
	lines := d.lines(ShoulderTrait, quantity.Style{})
	if len(lines) != 2 || lines[0].Name != "210 mm" || lines[1].Name != "190 mm" || lines[0].Ink == lines[1].Ink {
		t.Fatalf("%+v", lines)
	}
	for i, want := range [][2][]float64{{{1400, 1500, 1600}, {200, 100, 0}}, {{1500, 1600}, {110, 10}}} {
		if !slices.Equal(lines[i].X, want[0]) || !slices.Equal(lines[i].Y, want[1]) {
			t.Errorf("line %d: %v over %v, want %v over %v", i, lines[i].Y, lines[i].X, want[1], want[0])
		}
	}
	lines = d.lines(MarginTrait, quantity.Style{})
	if !slices.Equal(lines[0].X, []float64{1400, 1500}) || !slices.Equal(lines[0].Y, []float64{12. / 5, 11. / 5}) {
		t.Errorf("margins %v over %v", lines[0].Y, lines[0].X)
	}
	d.Variants = d.Variants[3:]
	if lines := d.lines(ShoulderTrait, quantity.Style{}); len(lines) != 0 {
		t.Errorf("single points drawn: %+v", lines)
	}
	if !grid().differ(ShoulderTrait, quantity.Style{}) || grid().differ(SagTrait, quantity.Style{}) {
		t.Error("what differs is not told from what does not")
	}
	// A tenth of what is read is no difference; of beds that do not hang nothing is compared.
	for by, want := range map[float64]bool{0.01: false, 3: true} {
		d := grid()
		d.Variants[4].Buys.Sag += by
		if d.differ(SagTrait, quantity.Style{}) != want {
			t.Errorf("%g mm differ: want %v", by, want)
		}
	}
}

// More curves than inks: those after are dashed, so that no two look alike.
func TestManyLines(t *testing.T) {
	d := Varied{Keys: []string{"bed.span", "bed.side_depth"}}
	for _, span := range []string{"1400 mm", "1500 mm"} {
		for k := range 10 {
			d.Variants = append(d.Variants, Variant{Values: []string{span, fmt.Sprintf("%d mm", 150+k)}, Buys: bought()})
		}
	}
	looks := map[string]bool{}
	for _, l := range d.lines(SagTrait, quantity.Style{}) {
		looks[fmt.Sprint(l.Ink, l.Dashed)] = true
	}
	if len(looks) != 10 {
		t.Errorf("ten curves look like %d", len(looks))
	}
	one := Varied{Keys: []string{"bed.span"}, Variants: []Variant{
		{Values: []string{"1400 mm"}, Buys: bought()}, {Values: []string{"55 in"}, Buys: bought()},
	}}
	if lines := one.lines(SagTrait, quantity.Style{}); len(lines) != 1 || lines[0].Name != "" {
		t.Errorf("one key: %+v", lines)
	}
}

// Values stand at their number in the unit of the first; what is none, and a value in
// another unit, stands at its place in the order.
func TestPlaceOnTheAxis(t *testing.T) {
	one := func(key string, values ...string) Varied {
		d := Varied{Keys: []string{key}}
		for _, v := range values {
			d.Variants = append(d.Variants, Variant{Values: []string{v}})
		}
		return d
	}
	for _, r := range []struct {
		d    Varied
		want []float64
		axis string
	}{
		{one("bed.span", "1400 mm", "1.5 m", "1600 mm"), []float64{1400, 2, 1600}, "bed.span, mm"},
		{one("bed.lift", "-2°", "0°", "1.5°"), []float64{-2, 0, 1.5}, "bed.lift, deg"},
		{one("bed.side_curve", "balanced", "parabola", "parabola", "arc"), []float64{1, 2, 2, 3}, "bed.side_curve"},
	} {
		for i, want := range r.want {
			if got := r.d.place(i, quantity.Style{}); math.Abs(got-want) > 1e-9 {
				t.Errorf("%s %s stands at %g, want %g", r.d.Keys[0], r.d.Variants[i].Values[0], got, want)
			}
		}
		if got := r.d.axis(quantity.Style{}); got != r.axis {
			t.Errorf("axis %q, want %q", got, r.axis)
		}
	}
}

// Points in the order of their places keep their values, those at one place their order.
func TestRising(t *testing.T) {
	x, y := rising([]float64{3, 1, 2, 1}, []float64{30, 10, 20, 11})
	if !slices.Equal(x, []float64{1, 1, 2, 3}) || !slices.Equal(y, []float64{10, 11, 20, 30}) {
		t.Errorf("%v over %v", y, x)
	}
	if x, y = rising(nil, nil); x != nil || y != nil {
		t.Errorf("none: %v, %v", x, y)
	}
}

// The table for spreadsheets has a row for each variant and its figures to three decimals:
// numbers that read back, empty cells for a bed that does not hang with the reason at last.
func TestVariantsAsCSV(t *testing.T) {
	d := grid()
	d.Variants[5].Cannot = "=HYPERLINK(1)"
	var text bytes.Buffer
	if err := d.WriteCSV(&text, quantity.Style{Inches: true}, English()); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(&text).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	columns := len(d.Keys) + int(TraitCount) + 2
	if len(rows) != 1+len(d.Variants) {
		t.Fatalf("%d rows", len(rows))
	}
	for i, row := range rows {
		if len(row) != columns {
			t.Fatalf("row %d has %d cells of %d", i, len(row), columns)
		}
		if i == 0 {
			continue
		}
		v := d.Variants[i-1]
		if row[0] != v.Values[0] || row[1] != v.Values[1] {
			t.Errorf("row %d is of %v, want %v", i, row[:2], v.Values)
		}
		for m := range TraitCount {
			cell := row[len(d.Keys)+int(m)]
			if v.Buys == nil {
				if cell != "" {
					t.Errorf("a bed that does not hang has %q", cell)
				}
				continue
			}
			got, err := strconv.ParseFloat(cell, 64)
			if want := m.kind().number(m.of(v.Buys), quantity.Style{Inches: true}); err != nil || math.Abs(got-want) > 5.1e-4 {
				t.Errorf("row %d, trait %d: %q, want %g", i, m, cell, want)
			}
		}
	}
	if last := rows[6]; last[columns-1] != "'=HYPERLINK(1)" || last[columns-2] != "" {
		t.Errorf("the bed that does not hang: %q", last)
	}
	if rows[1][columns-2] != "side cord, sitting" || rows[1][columns-1] != "" {
		t.Errorf("a bed that hangs: %q", rows[1])
	}
}

// The page has a chart for each trait that differs, a table of how it lies and one of what
// it carries with the keys before both, and a row for each bed that hangs, the present one
// set off; what does not hang is listed.
func TestPageOfVariants(t *testing.T) {
	d := grid()
	say := English()
	table := d.table("", 2, 2+int(LineTrait), quantity.Style{}, say)
	if want := len(d.Keys) + int(LineTrait); len(table.Head) != want || len(table.Words) != want || len(table.Rows) != 5 {
		t.Fatalf("%d columns, %d kinds, %d rows", len(table.Head), len(table.Words), len(table.Rows))
	}
	for i, row := range table.Rows {
		if len(row) != len(table.Head) || row[0] != d.Variants[i].Values[0] {
			t.Errorf("row %d: %q", i, row)
		}
	}
	if !strings.HasSuffix(table.Head[2], ", mm") || slices.Contains(table.Words, true) {
		t.Errorf("head %q, words %v", table.Head, table.Words)
	}
	half := 2 + int(LineTrait)
	rest := d.table("", half, 2+int(TraitCount)+1, quantity.Style{}, say)
	if n := len(rest.Head); n != 2+int(TraitCount-LineTrait)+1 || !rest.Words[n-1] || rest.Words[n-2] {
		t.Errorf("the rest: %q, words %v", rest.Head, rest.Words)
	}
	figs, err := d.charts(quantity.Style{}, say)
	if err != nil {
		t.Fatal(err)
	}
	differ := 0
	for m := range TraitCount {
		if d.differ(m, quantity.Style{}) {
			differ++
		}
	}
	if len(figs) != differ || differ != 2 {
		t.Errorf("%d charts, %d traits differ, want shoulders and the margin", len(figs), differ)
	}
}
