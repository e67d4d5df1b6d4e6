package chapter

import (
	"math"
	"slices"
	"testing"

	"slingloft/export/sheet"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

func TestSignedDecimal(t *testing.T) {
	for _, row := range []struct {
		v    float64
		n    int
		want string
	}{
		{1.234, 2, "1.23"}, {-1.235, 1, "−1.2"}, {0, 2, "0.00"}, {-0.004, 2, "0.00"}, {-0.006, 2, "−0.01"}, {math.Copysign(0, -1), 0, "0"},
	} {
		if got := signedDecimal(row.v, row.n); got != row.want {
			t.Errorf("%g with %d decimals: %q, want %q", row.v, row.n, got, row.want)
		}
	}
}

// A seam that is off stands out; one with gathers at a fold has a column for them.
func TestSeams(t *testing.T) {
	b := hangs(t)
	walk := piece.Seam{Kind: piece.EndToCap, IDs: [2]string{"body", "cap-head"}, Flat: [2]float64{1000, 990}, Hung: [2]float64{995, 994.5},
		Ease: 9.5, EasePer100: 0.95, Remains: -0.5, Tolerance: 2, Parts: []piece.SeamPart{
			{To: "H1", Flat: [2]float64{500, 495}, Ease: 5}, {From: "H1", Flat: [2]float64{500, 495}, Ease: -4.5},
		}}
	gathered := walk
	gathered.Remains, gathered.Parts = 2.5, slices.Clone(walk.Parts)
	gathered.Parts[1].Fold = -3
	b.Sewn.Seams = []piece.Seam{walk, gathered}
	s, err := b.seams()
	if err != nil {
		t.Fatal(err)
	}
	tables := ofKind[sheet.Table](s)
	if len(tables) != 3 {
		t.Fatalf("%d tables", len(tables))
	}
	if want := []bool{false, true}; !slices.Equal(tables[0].Strong, want) {
		t.Errorf("strong %v, want %v", tables[0].Strong, want)
	}
	want := []string{"body head end to cap", "1000.0", "990.0", "995.0", "994.5", "9.5", "0.95", "−0.5", "2.0"}
	if !slices.Equal(tables[0].Rows[0], want) {
		t.Errorf("row %q, want %q", tables[0].Rows[0], want)
	}
	if want := []string{"from", "to", "body", "cap-head", "ease"}; !slices.Equal(tables[1].Head, want) {
		t.Errorf("heads %q, want %q", tables[1].Head, want)
	}
	if want := []string{"H1", "end", "500.0", "495.0", "−4.5"}; !slices.Equal(tables[1].Rows[1], want) {
		t.Errorf("part %q, want %q", tables[1].Rows[1], want)
	}
	if h, r := tables[2].Head, tables[2].Rows[1]; h[5] != b.Say.Seams.Gathers || r[5] != "−3.0" {
		t.Errorf("gathers: heads %q, row %q", h, r)
	}
}

// A half circle of 100 mm: chord, length and deepest offset are known.
func TestOffsets(t *testing.T) {
	b := hangs(t)
	b.Design.Template.Tick = 50
	var half geom.Polyline
	for i := range 1001 {
		sin, cos := math.Sincos(math.Pi * float64(i) / 1000)
		half = append(half, geom.Pt(100-100*cos, -100*sin)) // to the right of the chord
	}
	b.Curves = []piece.Curve{{Kind: 0, Line: half}}
	s, err := b.offsets()
	if err != nil {
		t.Fatal(err)
	}
	table := ofKind[sheet.Table](s)[0]
	if want := "chord 200.0 mm, along the curve 314.2 mm; columns in mm"; table.Caption[len(table.Caption)-len(want):] != want {
		t.Errorf("caption %q", table.Caption)
	}
	deepest := slices.Index(table.Strong, true)
	if got, want := table.Rows[deepest], []string{"100.0", "100.0", "157.1"}; !slices.Equal(got, want) {
		t.Errorf("deepest %q, want %q", got, want)
	}
	b.Curves[0].Line = half[:1]
	if _, err := b.offsets(); err == nil {
		t.Error("a curve of one point has offsets")
	}
}
