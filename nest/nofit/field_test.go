package nofit

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"slingloft/nest/cover"
	"slingloft/nest/nesttest"
	"slingloft/outline/geom"
)

// The depth of a field must be that of the union of its patches: right about
// inside and outside, no shorter way out in any direction, and a way out of just
// that length; deep inside, to the size of a cell.
func TestFieldDepthIsShortestWayOut(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 11))
	for n := range 100 {
		grow := []float64{0, 1e-7, -1e-7}[n%3]
		checkField(t, newField(region(rng, 3+n%20, 3+n%7, float64(n%2)), grow), rng)
	}
}

// region returns the no-fit region of two random outlines of m and n vertices.
func region(rng *rand.Rand, m, n int, gap float64) []Patch {
	a, _ := cover.Parts([]geom.Ring{nesttest.Blob(rng.Float64, m, 100)}, cover.Most)
	b, _ := cover.Parts([]geom.Ring{nesttest.Blob(rng.Float64, n, 60)}, cover.Most)
	return Patches(a, b, gap)
}

func checkField(t *testing.T, f *Field, rng *rand.Rand) {
	inside := func(p geom.Point) bool {
		for k := range f.patches {
			if f.patches[k].depth(p.X, p.Y)+f.grow > 0 {
				return true
			}
		}
		return false
	}
	size := f.box.Width() + f.box.Height()
	for range 100 {
		p := geom.Pt(f.box.Min.X+rng.Float64()*f.box.Width(), f.box.Min.Y+rng.Float64()*f.box.Height())
		d := f.Depth(p.X, p.Y)
		if (d > 0) != inside(p) {
			t.Fatalf("depth(%v) = %v, inside is %v", p, d, inside(p))
		}
		if d == 0 {
			continue
		}
		off := 1e-7 * size
		if f.sureAt(p) { // where it need not be exact
			off += f.cell.Len()
		}
		for k := range 720 {
			s, c := math.Sincos(float64(k) * math.Pi / 360)
			if dir := geom.Pt(c, s); !inside(p.Plus(dir.Times(max(d-off, 0)))) {
				t.Fatalf("from %v the way out along %v is shorter than depth %v", p, dir, d)
			}
		}
		if len(f.patches) > 1 && !f.sureAt(p) {
			least := math.Inf(1)
			var way geom.Point
			for _, s := range f.segs {
				u := min(max((p.X-s.x)*s.dx*s.perLen2+(p.Y-s.y)*s.dy*s.perLen2, 0), 1)
				if q := geom.Pt(s.x+u*s.dx, s.y+u*s.dy); q.Dist(p) < least {
					least, way = q.Dist(p), q.Minus(p)
				}
			}
			free := false // at the end of the way, some direction leads outside
			for k := range 3600 {
				s, c := math.Sincos(float64(k) * math.Pi / 1800)
				free = free || !inside(p.Plus(way).Plus(geom.Pt(c, s).Times(1e-6*size)))
			}
			if !free {
				t.Fatalf("no way out of %v at depth %v", p, d)
			}
		}
	}
}

// sureAt reports whether p lies in a cell that is wholly inside.
func (f *Field) sureAt(p geom.Point) bool {
	if f.cells == nil {
		return false
	}
	i, j := int((p.X-f.box.Min.X)*f.perX), int((p.Y-f.box.Min.Y)*f.perY)
	return f.cells[j*f.cols+i].sure
}

func BenchmarkNew(b *testing.B) {
	for _, n := range []int{8, 28} {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			ps := region(rand.New(rand.NewPCG(1, 2)), n, n, 0)
			for b.Loop() {
				New(ps, 0)
			}
		})
	}
}

func BenchmarkDepth(b *testing.B) {
	for _, n := range []int{8, 28} {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			rng := rand.New(rand.NewPCG(1, 2))
			f := New(region(rng, n, n, 0), 0)
			pts := make([]geom.Point, 1024)
			for i := range pts {
				pts[i] = geom.Pt(f.box.Min.X+rng.Float64()*f.box.Width(), f.box.Min.Y+rng.Float64()*f.box.Height())
			}
			sum := 0.0
			n := 0
			for b.Loop() {
				q := pts[n&1023]
				n++
				sum += f.Depth(q.X, q.Y)
			}
			if sum == 0 {
				b.Fatal("nothing inside")
			}
		})
	}
}
