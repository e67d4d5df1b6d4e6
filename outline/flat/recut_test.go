package flat

import (
	"math"
	"testing"

	"slingloft/outline/design"
	"slingloft/outline/geom"
)

// Cut again as wide as it was, a body is what it was. Cut wider in its middle and narrower at
// its ends it is so by every measure: the girth, the seams at its ends with the sections
// that close them, while the cord keeps its length from bar to bar.
func TestRecut(t *testing.T) {
	for _, leaning := range []bool{false, true} {
		s := bed(t, func(b *design.Bed) { b.HeadTail, b.FootTail, b.HeadLeg, b.FootLeg = 420, 420, 1500, 1500 })
		b, err := Lay(&s, leaning)
		if err != nil {
			t.Fatal(err)
		}
		same := b.Recut(func(float64) float64 { return 1 })
		about(t, "side alike", furthest(same.Side.Flat, b.Side.Flat), 0, 1e-9)
		about(t, "cord alike", same.Side.HungLength(), b.Side.HungLength(), 1e-9)
		times := func(u float64) float64 { return 1 + 0.04*math.Cos(u/300) }
		c := b.Recut(times)
		for x := -700.0; x <= 700; x += 70 {
			about(t, "girth", c.Girth(&s)(x), times(x)*s.At(x).Section.Girth(), 1e-9)
			about(t, "width", 2*widthAt(c.Side.Flat, x), times(x)*2*widthAt(b.Side.Flat, x), 0.05)
		}
		about(t, "cord from bar to bar", c.Tips[1]-c.Tips[0], b.Tips[1]-b.Tips[0], 1e-9)
		for e := range 2 {
			about(t, "end seam", c.Ends[e].HungLength()/b.Ends[e].HungLength(), c.Ends[e].FlatLength()/b.Ends[e].FlatLength(), 1e-3)
			about(t, "end section", c.Sections[e].Length(), c.Ends[e].HungLength(), 1e-6)
			last := func(l geom.Polyline) float64 { return l[len(l)-1].X }
			about(t, "between the same cords", last(c.Sections[e]), last(b.Sections[e]), 0)
		}
	}
}
