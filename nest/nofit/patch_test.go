package nofit

import (
	"testing"

	"slingloft/nest/nesttest"
	"slingloft/outline/geom"
)

func TestMinkowskiOfBoxes(t *testing.T) {
	got := minkowski(nesttest.Box(3, 2), reflected(nesttest.Box(5, 7)))
	want := geom.Ring{{X: -5, Y: -7}, {X: 3, Y: -7}, {X: 3, Y: 2}, {X: -5, Y: 2}}
	if len(got) != 4 {
		t.Fatalf("got %v, want %v", got, want)
	}
	for i := range want {
		if got[i] != want[i] {
			t.Errorf("got %v, want %v", got, want)
		}
	}
}
