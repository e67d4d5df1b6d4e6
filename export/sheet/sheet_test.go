package sheet_test

import (
	"slices"
	"testing"

	"slingloft/export/sheet"
	"slingloft/export/sheet/picture"
)

func TestAdd(t *testing.T) {
	var table sheet.Table
	table.AddStrong(false, "a", "1")
	table.AddStrong(true, "b", "2")
	if len(table.Rows) != 2 || !slices.Equal(table.Rows[1], []string{"b", "2"}) || !slices.Equal(table.Strong, []bool{false, true}) {
		t.Errorf("rows %q, strong %v", table.Rows, table.Strong)
	}
	var step sheet.Step
	step.Add("length", "12 mm")
	if !slices.Equal(step.Facts, []sheet.Fact{{Name: "length", Value: "12 mm"}}) {
		t.Errorf("facts %v", step.Facts)
	}
	var section sheet.Section
	section.Add(sheet.Para("one"), sheet.Para("two"))
	section.Add()
	if len(section.Blocks) != 2 || section.Blocks[1] != sheet.Para("two") {
		t.Errorf("blocks %v", section.Blocks)
	}
}

// The writers' own texts are filled in with the sheet's title and digest.
func TestFrame(t *testing.T) {
	s := sheet.Sheet{Title: "First bed", Digest: "0a1b", Frame: sheet.Frame{File: "%s: sheet", Design: "design %s"}}
	for _, row := range [][2]string{{s.File(), "First bed: sheet"}, {s.Design(), "design 0a1b"}, {s.Foot(), "First bed · design 0a1b"}} {
		if row[0] != row[1] {
			t.Errorf("%q, want %q", row[0], row[1])
		}
	}
}

func TestWide(t *testing.T) {
	for width, want := range map[float64]bool{picture.Wide: true, picture.Half: false} {
		if got := (sheet.Figure{Picture: picture.Picture{Width: width}}).Wide(); got != want {
			t.Errorf("%g mm: %v", width, got)
		}
	}
}
