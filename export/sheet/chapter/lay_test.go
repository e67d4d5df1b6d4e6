package chapter

import (
	"math"
	"slices"
	"testing"

	"slingloft/export"
	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/outline/geom"
)

func TestLiesBy(t *testing.T) {
	b := hangs(t)
	for _, row := range []struct {
		motion geom.Motion
		want   string
	}{
		{geom.Motion{}, "as drawn"},
		{geom.Motion{Turn: 2 * math.Pi, Shift: geom.Pt(10, 20)}, "as drawn"},
		{geom.Motion{Turn: math.Pi}, "turned 180.0°"},
		{geom.Motion{Turn: math.Pi / 2, Mirror: true}, "turned 90.0°, mirrored"},
		{geom.Motion{Mirror: true}, "as drawn, mirrored"},
	} {
		if got := b.liesBy(row.motion); got != row.want {
			t.Errorf("%+v: %q, want %q", row.motion, got, row.want)
		}
	}
}

// The roll has a table of places, sheets have none; each is called by its number among
// the sheets.
func TestLay(t *testing.T) {
	b := hangs(t)
	item := export.Item{Piece: pocket(), Motion: geom.Motion{Turn: math.Pi / 2, Shift: geom.Pt(100, 50)}}
	b.Lays = []given.Lay{
		{Material: "taffeta", Width: 2000, Height: 1500, Use: 0.804, Roll: true, Items: []export.Item{item}},
		{Material: "card", Width: 900, Height: 600, Use: 0.5}, {Material: "card", Width: 900, Height: 600, Use: 0.256},
	}
	s, err := b.lay()
	if err != nil {
		t.Fatal(err)
	}
	var captions []string
	for _, f := range ofKind[sheet.Figures](s) {
		captions = append(captions, f[0].Caption)
	}
	want := []string{
		"Cloth lay on taffeta: 2000.0 mm of roll 1500 mm wide, 80 % used.",
		"Template sheet 1 of 2, card, 900 mm × 600 mm, 50 % used.", "Template sheet 2 of 2, card, 900 mm × 600 mm, 26 % used.",
	}
	if !slices.Equal(captions, want) {
		t.Errorf("captions %q, want %q", captions, want)
	}
	tables := ofKind[sheet.Table](s)
	// A quarter turn to the left puts 120 × 80 to the left of the point that it is put at.
	if len(tables) != 1 || !slices.Equal(tables[0].Rows[0], []string{"1 pocket", "20.0", "100.0", "50.0", "170.0", "turned 90.0°"}) {
		t.Errorf("places %+v", tables)
	}
	if len(ofKind[sheet.Para](s)) != 0 {
		t.Error("a laid sheet says that it is not")
	}
	b.Lays, b.Unlaid = nil, true
	if s, err = b.lay(); err != nil || !slices.Equal(s.Blocks, []sheet.Block{sheet.Para(b.Say.Unlaid)}) {
		t.Errorf("unlaid: %v, %v", s.Blocks, err)
	}
}
