package chapter

import (
	"slices"
	"testing"

	"slingloft/outline/cord"
)

// A sum of two terms, the second taken off.
func TestTermsTable(t *testing.T) {
	b := hangs(t)
	c := cord.Cord{Part: cord.SideCord, Count: 2, Cut: 950.2, Terms: []cord.Term{{Kind: 0, Length: 1000.2}, {Kind: 1, Length: -50}}}
	table := b.termsTable(c)
	var got []string
	for _, r := range table.Rows {
		got = append(got, r[1])
	}
	if want := []string{"1000.2", "−50.0", "950.2"}; !slices.Equal(got, want) {
		t.Errorf("terms %q, want %q", got, want)
	}
	if want := []bool{false, false, true}; !slices.Equal(table.Strong, want) || table.Rows[2][0] != "cut length, 2 of them" {
		t.Errorf("rows %q, strong %v", table.Rows, table.Strong)
	}
}

// Cords are marked to whole mm.
func TestMarksTable(t *testing.T) {
	b := hangs(t)
	tip, middle := cord.Spot{Kind: cord.Tip}, cord.Spot{Kind: cord.Middle}
	c := cord.Cord{Part: cord.SideCord, Datum: middle, Marks: []cord.Mark{
		{Spot: tip, FromStart: 100, FromEnd: 900, Spliced: -390.6, Buried: true}, {Spot: middle, FromStart: 500, FromEnd: 500},
	}}
	name := b.Say.Names.Cords.Spot
	table := b.marksTable(c)
	if got, want := table.Head[3], "spliced, from "+name(middle); got != want {
		t.Errorf("head %q, want %q", got, want)
	}
	for i, want := range [][]string{{name(tip), "100", "900", "−391", "buried"}, {name(middle), "500", "500", "0", ""}} {
		if !slices.Equal(table.Rows[i], want) {
			t.Errorf("row %d: %q, want %q", i, table.Rows[i], want)
		}
	}
}

// A splice is named at its first reading; a place that is not there before it has no
// distance.
func TestReadingsTable(t *testing.T) {
	b := hangs(t)
	tip, middle := cord.Spot{Kind: cord.Tip}, cord.Spot{Kind: cord.Middle}
	c := cord.Cord{Part: cord.SideCord, Steps: []cord.Step{{Do: 0, Reads: []cord.Reading{
		{From: tip, To: middle, After: 400}, {From: middle, To: tip, Before: 410, After: 400.6},
	}}, {Do: 1, Reads: []cord.Reading{{From: tip, To: tip, Before: 1, After: 2}}}}}
	names := b.Say.Names.Cords
	var got [][]string
	for _, r := range b.readingsTable(c).Rows {
		got = append(got, []string{r[0], r[3], r[4]})
	}
	for i, want := range [][]string{{names.Steps[0], "–", "400"}, {"", "410", "401"}, {names.Steps[1], "1", "2"}} {
		if !slices.Equal(got[i], want) {
			t.Errorf("row %d: %q, want %q", i, got[i], want)
		}
	}
}

// A cord without marks or splices has no table of them.
func TestCordsSection(t *testing.T) {
	b := hangs(t)
	bare := cord.Cord{Part: cord.SideCord, Count: 2, Cut: 1000, Terms: []cord.Term{{Length: 1000}}}
	marked := bare
	marked.Part, marked.Marks = cord.HeadLeg, []cord.Mark{{FromStart: 10, FromEnd: 990}}
	b.Cords.Cords = []cord.Cord{bare, marked}
	s, err := b.cords()
	if err != nil || len(s.Blocks) != 1+2+3 {
		t.Errorf("%d blocks, %v", len(s.Blocks), err)
	}
	b.Cords.Notes = []cord.Note{{Kind: cord.TaperByThird}}
	if s, err = b.cords(); err != nil || len(s.Blocks) != 7 {
		t.Errorf("%d blocks with a remark, %v", len(s.Blocks), err)
	}
}
