package chapter

import (
	"slices"
	"testing"

	"slingloft/export/sheet"
	"slingloft/outline/hung"
	"slingloft/outline/rig"
)

// A table by ends has the head's figure before the foot's.
func TestEndsTable(t *testing.T) {
	b := hangs(t)
	h, f := &b.Shape.Ends[hung.Head], &b.Shape.Ends[hung.Foot]
	h.Bar, f.Bar = 900.04, 820
	h.ApexX, f.ApexX = -1234.5, 1111.1
	h.Slope, f.Slope = 1, 0
	say := b.Say.Ends
	got := b.endsTable()
	if want := []string{"", "head", "foot"}; !slices.Equal(got.Head, want) {
		t.Errorf("heads %q, want %q", got.Head, want)
	}
	for name, want := range map[string][]string{
		say.Bar: {"900.0 mm", "820.0 mm"}, say.ApexOut: {"1234.5 mm", "1111.1 mm"}, say.Angle: {"45.0°", "0.0°"},
	} {
		if c := cells(got, name); !slices.Equal(c, want) {
			t.Errorf("%s: %q, want %q", name, c, want)
		}
	}
}

// What is not asked for has no row: a height of support that is kept to, a shelter without
// a ridge, and a weight where pounds are one already.
func TestPlaceTable(t *testing.T) {
	place := rig.Place{Distance: 3500, Lowest: 450, Edge: 700, Ends: [2]rig.End{
		{Line: 300.4, Hook: 1500, Apex: 1300, Pull: rig.Pull{N: 490.3325, Kgf: 50}},
		{Line: 280, Hook: 1400, Apex: 1250, Pull: rig.Pull{N: 980.665, Kgf: 100}},
	}}
	for _, row := range []struct {
		name    string
		beyond  float64
		shelter *rig.Shelter
		inches  bool
		want    []string // names of rows that may be missing
	}{
		{"plain", 0, nil, false, []string{"weight"}},
		{"beyond", 20, nil, false, []string{"weight", "beyond"}},
		{"no ridge", 0, &rig.Shelter{Needed: 3400}, false, []string{"weight"}},
		{"shelter", 0, &rig.Shelter{Needed: 3400, Ridge: 3000}, false, []string{"weight", "ridge", "covers"}},
		{"inches", 20, &rig.Shelter{Needed: 3400, Ridge: 3000}, true, []string{"beyond", "ridge", "covers"}},
	} {
		b := hangs(t)
		place.Beyond = row.beyond
		b.Place, b.Shelter = &place, row.shelter
		if row.inches {
			b = b.inches()
		}
		say, table := b.Say.Place, b.placeTable()
		for key, name := range map[string]string{"weight": say.Weight, "beyond": say.Beyond, "ridge": say.Ridge, "covers": say.Covers} {
			if got, want := cells(table, name) != nil, slices.Contains(row.want, key); got != want {
				t.Errorf("%s: %q stands there: %v, want %v", row.name, name, got, want)
			}
		}
		if row.inches {
			continue
		}
		for name, want := range map[string][]string{
			say.Line: {"300 mm", "280 mm"}, say.Pull: {"490 N", "981 N"}, say.Weight: {"50 kgf", "100 kgf"}, say.Lowest: {"450 mm", ""},
		} {
			if c := cells(table, name); !slices.Equal(c, want) {
				t.Errorf("%s: %s: %q, want %q", row.name, name, c, want)
			}
		}
	}
}

func TestRollNotice(t *testing.T) {
	b := hangs(t)
	for _, row := range []struct {
		roll  rig.Roll
		grade sheet.Grade
		title string
		lines int
	}{
		{rig.Roll{Turn: 0.3, Share: 0.6, Stable: true}, sheet.Good, b.Say.Roll.Steady, 1},
		{rig.Roll{Turn: 0.4, Share: 0.6, Rocks: true}, sheet.Careful, b.Say.Roll.Rocks, 2},
		{rig.Roll{Turn: 0.6, Share: 0.7}, sheet.Bad, b.Say.Roll.NotSteady, 2},
		{rig.Roll{Turn: 0.9, Over: true}, sheet.Bad, b.Say.Roll.TurnsOver, 2},
	} {
		b.Roll = &row.roll
		if n := b.rollNotice(); n.Grade != row.grade || n.Title != row.title || len(n.Lines) != row.lines {
			t.Errorf("%+v: %+v", row.roll, n)
		}
	}
}

// Only what is known is told: places and roll are, where they are given.
func TestHungShape(t *testing.T) {
	b := hangs(t)
	s, err := b.hungShape()
	if err != nil {
		t.Fatal(err)
	}
	if len(ofKind[sheet.Figures](s)) != 4 || len(ofKind[sheet.Table](s)) != 1 || len(s.Blocks) != 5 {
		t.Errorf("%d blocks with nothing but the shape", len(s.Blocks))
	}
	s, err = made(t).hungShape()
	if err != nil {
		t.Fatal(err)
	}
	if len(ofKind[sheet.Para](s)) != 1 || len(ofKind[sheet.Table](s)) != 2 || len(ofKind[sheet.Notice](s)) != 1 {
		t.Errorf("%d blocks with place and roll", len(s.Blocks))
	}
}
