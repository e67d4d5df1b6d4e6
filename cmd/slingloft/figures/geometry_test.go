package figures_test

import (
	"fmt"
	"math"
	"testing"

	"slingloft/cmd/slingloft/figures"
	"slingloft/cmd/slingloft/work"
)

// body holds the outlines against each other: corners on the net line, which lies the
// reach inside the cord line, alike on both sides of the warp.
func body(t *testing.T, d figures.Document) {
	b := d.Body
	if area := area(b.NetLine); area <= 0 || area >= areaOf(t, b.CordLine) {
		t.Errorf("net line round %g mm², cord line round %g", area, areaOf(t, b.CordLine))
	}
	for i, c := range b.Corners {
		if distance(c, b.NetLine) > 1e-6 {
			t.Errorf("corner %d lies off the net line", i)
		}
		other := b.Corners[len(b.Corners)-1-i]
		near(t, "the other side's corner, along", other[0], c[0], 1e-9)
		near(t, "the other side's corner, across", other[1], -c[1], 1e-9)
	}
	// Away from corners, sides of the net line lie the reach inside.
	for _, q := range b.NetLine {
		if math.Abs(q[0]) < 600 {
			near(t, fmt.Sprintf("reach at %.0f", q[0]), distance(q, b.CordLine), b.Reach, 0.02)
		}
	}
	for e, bar := range b.Bars {
		first, last := bar[0], bar[len(bar)-1]
		near(t, "bar line from side to side", first[1], -last[1], 1e-9)
		if distance(first, b.NetLine) > 0.05 || (first[0] < 0) != (e == 0) {
			t.Errorf("bar line %d begins at %v", e, first)
		}
	}
}

// pieces holds areas, lengths and sizes against the cut lines, and the lay against both.
func pieces(t *testing.T, p work.Plan, d figures.Document) {
	byID := map[string]figures.Piece{}
	used := 0.0
	for _, q := range d.Pieces {
		byID[q.ID] = q
		near(t, q.ID+", area", q.Area, areaOf(t, q.CutLine), 1e-6*q.Area)
		long := 0.0
		low, high := q.CutLine[0], q.CutLine[0]
		for i, c := range q.CutLine {
			n := q.CutLine[(i+1)%len(q.CutLine)]
			long += math.Hypot(n[0]-c[0], n[1]-c[1])
			for k := range 2 {
				low[k], high[k] = min(low[k], c[k]), max(high[k], c[k])
			}
		}
		near(t, q.ID+", cut length", q.CutLength, long, 1e-9*long)
		near(t, q.ID+", along", q.Size[0], high[0]-low[0], 1e-9)
		near(t, q.ID+", across", q.Size[1], high[1]-low[1], 1e-9)
	}
	for _, place := range d.Lay.Cloth.Placed {
		used += byID[place.ID].Area
		// Turned and moved, the outline stays on the roll.
		sin, cos := math.Sincos(place.Turn)
		for _, c := range byID[place.ID].CutLine {
			if place.Mirror {
				c[1] = -c[1]
			}
			x, y := c[0]*cos-c[1]*sin+place.Shift[0], c[0]*sin+c[1]*cos+place.Shift[1]
			if x < -1e-6 || x > d.Lay.Cloth.Length+1e-6 || y < -1e-6 || y > d.Lay.Cloth.Width+1e-6 {
				t.Fatalf("%s lies at %g, %g on a roll of %g × %g", place.ID, x, y, d.Lay.Cloth.Length, d.Lay.Cloth.Width)
			}
		}
	}
	near(t, "used of the roll", d.Lay.Cloth.Use, used/(d.Lay.Cloth.Length*d.Lay.Cloth.Width), 0.02)
	near(t, "width of the roll", d.Lay.Cloth.Width, p.Design.Cloth.Width, 0)
}

// seams holds each seam against its parts, and offsets against the way along them.
func seams(t *testing.T, d figures.Document) {
	for _, s := range d.Seams {
		var flat [2]float64
		ease := 0.0
		for _, q := range s.Parts {
			flat[0], flat[1], ease = flat[0]+q.Flat[0], flat[1]+q.Flat[1], ease+q.Ease
			near(t, s.Name+", ease of a part", q.Ease, q.Flat[0]-q.Flat[1], 1e-6)
		}
		near(t, s.Name+", first piece", flat[0], s.Flat[0], 1e-6)
		near(t, s.Name+", second piece", flat[1], s.Flat[1], 1e-6)
		near(t, s.Name+", ease", ease, s.Ease, 1e-6)
		near(t, s.Name+", flat", s.Flat[0]-s.Flat[1], s.Difference, 1e-9)
		near(t, s.Name+", remains", s.Remains, s.Hung[0]-s.Hung[1], 1e-6)
		if s.Within != (math.Abs(s.Remains) <= s.Tolerance) {
			t.Errorf("%s: %g remains of %g, within %v", s.Name, s.Remains, s.Tolerance, s.Within)
		}
	}
	for _, o := range d.Offsets {
		first, last := o.Rows[0], o.Rows[len(o.Rows)-1]
		near(t, o.Name+", begins", math.Hypot(first.Station, first.Depth)+first.Arc, 0, 1e-6)
		near(t, o.Name+", chord", last.Station, o.Chord, 1e-6)
		near(t, o.Name+", along", last.Arc, o.Arc, 1e-6)
		deepest := 0
		for i, r := range o.Rows {
			if r.Deepest {
				deepest++
			}
			if i > 0 && r.Arc-o.Rows[i-1].Arc < math.Hypot(r.Station-o.Rows[i-1].Station, r.Depth-o.Rows[i-1].Depth)-1e-6 {
				t.Errorf("%s: at %g the way along is shorter than straight on", o.Name, r.Station)
			}
		}
		if deepest != 1 {
			t.Errorf("%s has %d deepest places", o.Name, deepest)
		}
	}
}

// areaOf returns the area inside a closed line, which has to run counter-clockwise.
func areaOf(t *testing.T, line []figures.Pair) float64 {
	t.Helper()
	a := area(line)
	if a <= 0 {
		t.Errorf("a line of %d points runs clockwise", len(line))
	}
	return a
}

func area(line []figures.Pair) float64 {
	a := 0.0
	for i, p := range line {
		q := line[(i+1)%len(line)]
		a += (p[0]*q[1] - p[1]*q[0]) / 2
	}
	return a
}

// distance returns how far a point lies from a closed line.
func distance(p figures.Pair, line []figures.Pair) float64 {
	best := math.Inf(1)
	for i, a := range line {
		b := line[(i+1)%len(line)]
		dx, dy := b[0]-a[0], b[1]-a[1]
		t := 0.0
		if l := dx*dx + dy*dy; l > 0 {
			t = min(max(((p[0]-a[0])*dx+(p[1]-a[1])*dy)/l, 0), 1)
		}
		best = min(best, math.Hypot(p[0]-a[0]-t*dx, p[1]-a[1]-t*dy))
	}
	return best
}
