package outline

import (
	"slices"
	"testing"

	"slingloft/outline/cord"
	"slingloft/outline/words"
)

// Ends that are marked at the same distances share a gauge, and its marks say only
// what they have in common.
func TestCordGauges(t *testing.T) {
	at := func(k cord.SpotKind, on cord.Branch, start, end float64) cord.Mark {
		return cord.Mark{Spot: cord.Spot{Kind: k, On: on}, FromStart: start, FromEnd: end}
	}
	cords := []cord.Cord{
		{Part: cord.SideCord, Marks: []cord.Mark{
			at(cord.Taper, cord.AtHead, 60, 1940), at(cord.Entry, cord.AtHead, 200, 1800),
			at(cord.Middle, cord.Alone, 1000, 1000),
			at(cord.Entry, cord.AtFoot, 1800, 200.02), at(cord.Taper, cord.AtFoot, 1940, 60),
		}},
		{Part: cord.HeadLeg, Marks: []cord.Mark{
			at(cord.Taper, cord.InSide, 60, 900), at(cord.Entry, cord.Alone, 200, 760),
			at(cord.Throat, cord.OfEye, 720, 240), at(cord.Taper, cord.OfEye, 900, 60),
		}},
		{Part: cord.RidgeLine, Marks: []cord.Mark{
			at(cord.Taper, cord.Alone, 60, 900), at(cord.Entry, cord.Alone, 200.2, 760),
		}},
	}
	got := cordGauges(cords)
	w := words.EnglishLettering()
	titles := []string{
		"CORD GAUGE 1: SIDE CORD BOTH ENDS, HEAD LEG START", "CORD GAUGE 2: HEAD LEG END",
		"CORD GAUGE 3: RIDGE LINE START", "CORD GAUGE 4: RIDGE LINE END",
	}
	for i, g := range got {
		if i >= len(titles) || g.title(i+1, w) != titles[i] {
			t.Fatalf("gauge %q", g.title(i+1, w))
		}
	}
	if len(got) != len(titles) {
		t.Fatalf("%d gauges", len(got))
	}
	var names []string
	for _, m := range got[0].lettered(w) {
		names = append(names, m.Name)
	}
	if want := []string{"END", "TAPER", "ENTRY"}; !slices.Equal(names, want) {
		t.Errorf("marks %q, want %q", names, want)
	}
	if m := got[1].lettered(w)[2]; m.Name != "EYE THROAT" || m.At != 240 {
		t.Errorf("mark %+v", m)
	}
}
