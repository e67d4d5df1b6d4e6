package flat

import (
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// The girth of every cut is the width of the flat outline over the station, as a tape
// finds it; in a net cut's tails, whose corners stand further out than their middle,
// that holds in the bay alone.
func TestGirthIsWidth(t *testing.T) {
	with := func(cut design.Cut) hung.Shape {
		p := bed(t, func(b *design.Bed) { b.Control, b.ControlValue = design.SideDepth, 213 }).Problem
		p.Bed.Cut = cut
		s, err := hung.Solve(p)
		if err != nil {
			t.Fatal(err)
		}
		return s
	}
	for _, row := range []struct {
		name  string
		cut   design.Cut
		curve design.Curve
		weft  float64
		out   float64 // furthest station looked at
	}{
		{"net", design.Net, design.Balanced, 0, 720},
		{"net, shortened", design.Net, design.Balanced, 60, 720},
		{"straight", design.Straight, design.Balanced, 0, 870},
		{"straight, shortened", design.Straight, design.Balanced, 60, 870},
		{"catenary", design.Net, design.Catenary, 0, 715},
		{"arc, shortened", design.Net, design.Arc, 60, 715},
	} {
		s := with(row.cut)
		b, err := Lay(&s, false)
		if err == nil {
			b, err = b.Drawn(&s, row.curve)
		}
		if err != nil {
			t.Fatal(err)
		}
		b = b.Compensated(&s, row.weft)
		girth := b.Girth(&s)
		for x := -row.out + 5; x < row.out; x += 35 {
			about(t, row.name, girth(x), 2*widthAt(b.Side.Flat, x), 0.05)
		}
		if row.weft > 0 && girth(0) > 0.995*s.At(0).Section.Girth() {
			t.Errorf("%s: %g mm at mid-bay, not shortened", row.name, girth(0))
		}
	}
}

// widthAt returns v where a line passes u, by looking at every part of it.
func widthAt(l geom.Polyline, u float64) float64 {
	for i := 1; i < len(l); i++ {
		if a, b := l[i-1], l[i]; a.X <= u && u <= b.X {
			return a.Y + (b.Y-a.Y)*(u-a.X)/(b.X-a.X)
		}
	}
	return 0
}
