package outline

import (
	"slices"
	"testing"

	"slingloft/outline/cord"
)

func TestCordGauges(t *testing.T) {
	cords := []cord.Cord{
		{Name: "side cord", Marks: []cord.Mark{
			{Name: "head taper", FromStart: 60, FromEnd: 1940}, {Name: "head entry", FromStart: 200, FromEnd: 1800},
			{Name: "middle", FromStart: 1000, FromEnd: 1000},
			{Name: "foot entry", FromStart: 1800, FromEnd: 200.02}, {Name: "foot taper", FromStart: 1940, FromEnd: 60},
		}},
		{Name: "leg", Marks: []cord.Mark{
			{Name: "side taper", FromStart: 60, FromEnd: 900}, {Name: "entry", FromStart: 200, FromEnd: 760},
			{Name: "eye throat", FromStart: 720, FromEnd: 240}, {Name: "eye taper", FromStart: 900, FromEnd: 60},
		}},
		{Name: "line", Marks: []cord.Mark{
			{Name: "taper", FromStart: 60, FromEnd: 900}, {Name: "entry", FromStart: 200.2, FromEnd: 760},
		}},
	}
	got := cordGauges(cords)
	serve := [][]string{{"side cord both ends", "leg start"}, {"leg end"}, {"line start"}, {"line end"}}
	for i, g := range got {
		if i >= len(serve) || !slices.Equal(g.serves, serve[i]) {
			t.Fatalf("gauge %d serves %q", i+1, g.serves)
		}
	}
	if len(got) != len(serve) {
		t.Fatalf("%d gauges", len(got))
	}
	var names []string
	for _, m := range got[0].marks {
		names = append(names, m.Name)
	}
	if want := []string{"END", "TAPER", "ENTRY"}; !slices.Equal(names, want) {
		t.Errorf("marks %q, want %q", names, want)
	}
	if m := got[1].marks[2]; m.Name != "EYE THROAT" || m.At != 240 {
		t.Errorf("mark %+v", m)
	}
}
