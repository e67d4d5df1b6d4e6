package geom

import (
	"math"
	"testing"
)

func TestInside(t *testing.T) {
	square := Ring{Pt(0, 0), Pt(10, 0), Pt(10, 10), Pt(0, 10)}
	notched := Ring{Pt(0, 0), Pt(10, 0), Pt(10, 10), Pt(6, 10), Pt(6, 5), Pt(4, 5), Pt(4, 10), Pt(0, 10)}
	for _, c := range []struct {
		what       string
		line       Polyline
		ring       Ring
		start, end Point
		points     int
	}{
		{"inside", Polyline{Pt(1, 1), Pt(5, 2), Pt(9, 9)}, square, Pt(1, 1), Pt(9, 9), 3},
		{"from edge to edge", Polyline{Pt(0, 5), Pt(10, 5)}, square, Pt(0, 5), Pt(10, 5), 2},
		{"past both ends", Polyline{Pt(-3, 5), Pt(13, 5)}, square, Pt(0, 5), Pt(10, 5), 2},
		{"bent past one end", Polyline{Pt(2, 2), Pt(8, 2), Pt(8, 12)}, square, Pt(2, 2), Pt(8, 10), 3},
		{"the longer of two", Polyline{Pt(1, 8), Pt(9, 8), Pt(9, 1)}, notched, Pt(6, 8), Pt(9, 1), 3},
		{"outside", Polyline{Pt(-3, 5), Pt(-1, 5)}, square, Point{}, Point{}, 0},
	} {
		got := c.line.Inside(c.ring)
		if len(got) != c.points {
			t.Errorf("%s: %v", c.what, got)
			continue
		}
		if c.points > 0 && math.Max(got[0].Dist(c.start), got[len(got)-1].Dist(c.end)) > 1e-9 {
			t.Errorf("%s: from %v to %v, want %v to %v", c.what, got[0], got[len(got)-1], c.start, c.end)
		}
	}
}
