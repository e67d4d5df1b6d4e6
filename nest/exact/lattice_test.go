package exact

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/geom"
	_ "slingloft/outline/rapidtest"
)

// cell is a unit square of the lattice by its lower left corner.
type cell struct{ x, y int }

// columns is a region of columns of unit squares beside each other, each from its low
// row to before its high one, on one base: whether two of them overlap is seen by
// counting squares.
type columns struct {
	left  int
	cols  []int // how high each column reaches, at least 1
	turns int   // of the whole about the origin, quarters
}

func drawn(t *rapid.T, name string) columns {
	return columns{
		left:  rapid.IntRange(-6, 6).Draw(t, name+" left"),
		cols:  rapid.SliceOfN(rapid.IntRange(1, 7), 1, 7).Draw(t, name),
		turns: rapid.IntRange(0, 3).Draw(t, name+" turns"),
	}
}

// corner turns a lattice point.
func (c columns) corner(x, y int) geom.Point {
	for range c.turns {
		x, y = -y, x
	}
	return geom.Pt(float64(x), float64(y))
}

// ring returns the outline, counter-clockwise.
func (c columns) ring() geom.Ring {
	out := geom.Ring{c.corner(c.left, 0), c.corner(c.left+len(c.cols), 0)}
	for i := len(c.cols) - 1; i >= 0; i-- {
		for _, x := range []int{c.left + i + 1, c.left + i} {
			if p := c.corner(x, c.cols[i]); p != out[len(out)-1] {
				out = append(out, p)
			}
		}
	}
	return out
}

// cells returns the squares of the region.
func (c columns) cells() map[cell]bool {
	out := map[cell]bool{}
	for i, high := range c.cols {
		for y := range high {
			p, q := c.corner(c.left+i, y), c.corner(c.left+i+1, y+1)
			out[cell{int(min(p.X, q.X)), int(min(p.Y, q.Y))}] = true
		}
	}
	return out
}

// Two regions of lattice squares overlap where they share a square, however their
// edges run along each other.
func TestOverlapOfLatticeRegions(t *testing.T) {
	overlaps := 0
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawn(t, "a"), drawn(t, "b")
		want := false
		others := b.cells()
		for c := range a.cells() {
			want = want || others[c]
		}
		if want {
			overlaps++
		}
		ra, rb := []geom.Ring{a.ring()}, []geom.Ring{b.ring()}
		if got := Overlap(ra, rb); got != want {
			t.Fatalf("%v and %v: overlap %v, want %v", ra, rb, got, want)
		}
		if got := Overlap(rb, ra); got != want {
			t.Fatalf("%v and %v: overlap %v the other way, want %v", ra, rb, got, want)
		}
		// A region in a hole of the size of another: the frame round a's outline.
		frame := []geom.Ring{geom.BoxOf(geom.Pt(-20, -20), geom.Pt(20, 20)).Ring(), a.ring().Reversed()}
		beyond := false
		mine := a.cells()
		for c := range others {
			beyond = beyond || !mine[c]
		}
		if got := Overlap(frame, rb); got != beyond {
			t.Fatalf("a frame round %v and %v: overlap %v, want %v", ra, rb, got, beyond)
		}
	})
	if overlaps == 0 {
		t.Error("no two regions overlapped")
	}
}

// Where the middle of a square lies is where the square belongs.
func TestLocateInLatticeRegions(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := drawn(t, "a")
		ring, cells := []geom.Ring{a.ring()}, a.cells()
		x, y := rapid.IntRange(-9, 9).Draw(t, "x"), rapid.IntRange(-9, 9).Draw(t, "y")
		want := outside
		if cells[cell{x, y}] {
			want = inside
		}
		low, high := geom.Pt(float64(x), float64(y)), geom.Pt(float64(x+1), float64(y+1))
		if got, _, _ := locate(mid{low, high}, ring); got != want {
			t.Fatalf("the middle of square %d, %d of %v is %v, want %v", x, y, ring, got, want)
		}
		// The middle of a square's lower edge: on the boundary where one side belongs.
		want = outside
		switch above, below := cells[cell{x, y}], cells[cell{x, y - 1}]; {
		case above != below:
			want = boundary
		case above:
			want = inside
		}
		got, p, q := locate(mid{low, geom.Pt(high.X, low.Y)}, ring)
		if got != want {
			t.Fatalf("the lower edge of square %d, %d of %v is %v, want %v", x, y, ring, got, want)
		}
		if got == boundary && (p.Y != low.Y || q.Y != low.Y || min(p.X, q.X) > low.X || max(p.X, q.X) < high.X) {
			t.Fatalf("the lower edge of square %d, %d of %v lies on %v to %v", x, y, ring, p, q)
		}
	})
}

func TestCrossesItself(t *testing.T) {
	for _, r := range []struct {
		name string
		ring geom.Ring
		want bool
	}{
		{"triangle", geom.Ring{{X: 0, Y: 0}, {X: 4, Y: 0}, {X: 0, Y: 4}}, false},
		{"bow tie", geom.Ring{{X: 0, Y: 0}, {X: 4, Y: 4}, {X: 4, Y: 0}, {X: 0, Y: 4}}, true},
		{"hollow", geom.Ring{{X: 0, Y: 0}, {X: 10, Y: 0}, {X: 10, Y: 10}, {X: 5, Y: 1}, {X: 0, Y: 10}}, false},
		{"hollow through its base", geom.Ring{{X: 0, Y: 0}, {X: 10, Y: 0}, {X: 10, Y: 10}, {X: 5, Y: -1}, {X: 0, Y: 10}}, true},
		{"hollow that touches its base", geom.Ring{{X: 0, Y: 0}, {X: 10, Y: 0}, {X: 10, Y: 10}, {X: 5, Y: 0}, {X: 0, Y: 10}}, false},
		{"a hair through its base", geom.Ring{{X: 0, Y: 0}, {X: 10, Y: 0}, {X: 10, Y: 10}, {X: 5, Y: -5e-324}, {X: 0, Y: 10}}, true},
		{"star of five points, drawn in one go", star(5, 2), true},
		{"pentagon", star(5, 1), false},
	} {
		if got := CrossesItself(r.ring); got != r.want {
			t.Errorf("%s: crosses itself %v, want %v", r.name, got, r.want)
		}
	}
}

// star returns n points of a circle, going on by step each time.
func star(n, step int) geom.Ring {
	var r geom.Ring
	for k := range n {
		s, c := math.Sincos(2 * math.Pi * float64(k*step) / float64(n))
		r = append(r, geom.Pt(c, s))
	}
	return r
}

// Distances of squares in closed form, as far as the reach goes.
func TestDistance(t *testing.T) {
	box := func(x, y, w, h float64) []geom.Ring {
		return []geom.Ring{geom.BoxOf(geom.Pt(x, y), geom.Pt(x+w, y+h)).Ring()}
	}
	tilted := []geom.Ring{{{X: 20, Y: 0}, {X: 25, Y: 5}, {X: 20, Y: 10}, {X: 15, Y: 5}}}
	for _, r := range []struct {
		name        string
		a, b        []geom.Ring
		reach, want float64
	}{
		{"side by side", box(0, 0, 10, 10), box(13, 2, 4, 4), 50, 3},
		{"over each other", box(0, 0, 10, 10), box(2, 17.5, 4, 4), 50, 7.5},
		{"corner to corner", box(0, 0, 10, 10), box(13, 14, 4, 4), 50, 5},
		{"touching", box(0, 0, 10, 10), box(10, 4, 4, 4), 50, 0},
		{"tip to side", box(0, 0, 10, 10), tilted, 50, 5},
		{"tip to corner's edge", box(0, 0, 10, 4), tilted, 50, math.Hypot(5, 1)},
		{"corner to slope", box(0, 0, 16, 1), tilted, 50, 3 / math.Sqrt2},
		{"out of reach", box(0, 0, 10, 10), box(13, 2, 4, 4), 2, 2},
		{"just in reach", box(0, 0, 10, 10), box(13, 2, 4, 4), 3.5, 3},
		{"in a hole", append(box(0, 0, 20, 20), box(5, 5, 10, 10)[0].Reversed()), box(7, 8, 4, 4), 50, 2},
	} {
		if got := Distance(r.a, r.b, r.reach); math.Abs(got-r.want) > 1e-12 {
			t.Errorf("%s: %g, want %g", r.name, got, r.want)
		}
		if got := Distance(r.b, r.a, r.reach); math.Abs(got-r.want) > 1e-12 {
			t.Errorf("%s, the other way: %g, want %g", r.name, got, r.want)
		}
	}
}

// Signs of sums where rounding hides what is left.
func TestCompareSum(t *testing.T) {
	const tiny = 0x1p-60
	for _, r := range []struct {
		u, v, a float64
		want    int
	}{
		{1, 3, 2, 0}, {1, 3, 2.5, -1}, {1, 3, 1.5, 1}, {1, 1, 1, 0}, {-1, 1, 0, 0}, {-1, 1, tiny, -1}, {-1, 1, -tiny, 1},
		{1, -1 + 0x1p-53, 0, 1}, {1, -1 - 0x1p-52, 0, -1}, {1e300, -1e300, 0, 0}, {1e300, -1e300, 1e-300, -1},
	} {
		if got := compareSum(r.u, r.v, r.a); got != r.want {
			t.Errorf("sign of %g + %g − 2·%g = %d, want %d", r.u, r.v, r.a, got, r.want)
		}
	}
}
