package scene

import (
	"slices"
	"strings"
	"testing"

	"slingloft/export/sheet/giventest"
	"slingloft/export/sheet/picture"
	"slingloft/outline/finished"
	"slingloft/outline/room"
)

// A part of the body lies inside its cloth, touches it, and both stay in the picture; a
// part that only has to find room has no picture.
func TestInside(t *testing.T) {
	d := giventest.Hung(t)
	made := finished.Make(finished.Made{Shape: d.Shape, Lines: [2]float64{900, 900}})
	lying, err := made.Hang(finished.Change{}, finished.Weight{Load: d.Shape.Problem.Load, Centre: 120})
	if err != nil {
		t.Fatal(err)
	}
	drawn := 0
	for _, f := range room.Of(room.Input{Shape: d.Shape, Sleeper: d.Design.Sleeper, Lying: lying}).Fits {
		p, ok := Inside(&d, f)
		if ok != (f.Part != room.Knees) {
			t.Errorf("%v is drawn: %v", f.Part, ok)
		}
		if !ok {
			continue
		}
		drawn++
		if c := p.Clashes(); len(c) > 0 || strings.Contains(p.Title+p.Desc, "%!") {
			t.Errorf("%v: %q, %q", f.Part, c, p.Desc)
		}
		if !slices.Contains(lettered(p), d.Round(f.Opening)) {
			t.Errorf("%v: the opening is not lettered in %q", f.Part, lettered(p))
		}
		for _, it := range p.Items {
			path, _ := it.(picture.Path)
			for _, l := range path.Lines {
				for _, q := range l {
					if !q.Finite() || q.X < 0 || q.Y < 0 || q.X > p.Width || q.Y > p.Height {
						t.Fatalf("%v: %v lies outside of %g by %g", f.Part, q, p.Width, p.Height)
					}
				}
			}
		}
	}
	if drawn != 5 {
		t.Errorf("%d parts are drawn", drawn)
	}
}
