package geom_test

import (
	"math"
	"testing"

	"github.com/peterstace/simplefeatures/geom"
	"github.com/tdewolff/canvas"

	g "slingloft/outline/geom"
)

// arc returns n+1 points on a circle of radius r about c from angle a to b.
func arc(c g.Point, r, a, b float64, n int) g.Polyline {
	var l g.Polyline
	for i := range n + 1 {
		t := a + (b-a)*float64(i)/float64(n)
		l = append(l, c.Plus(g.Pt(r*math.Cos(t), r*math.Sin(t))))
	}
	return l
}

// An offset changes a smooth curve's length by distance times turning angle.
func TestOffsetTurning(t *testing.T) {
	const n, turn = 400, 1.1
	l := arc(g.Pt(0, 0), 1000, 0.2, 0.2+turn, n)
	for _, d := range []float64{-30, 12.5, 40} {
		got := l.Offset(d).Length() - l.Length()
		if want := d * turn * (n - 1) / n; math.Abs(got-want) > 1e-3 {
			t.Errorf("offset by %g changes the length by %.5f, want %.5f", d, got, want)
		}
	}
}

func valid(r g.Ring) error {
	var c []float64
	for _, p := range r.Closed() {
		c = append(c, p.X, p.Y)
	}
	return geom.NewPolygon([]geom.LineString{geom.NewLineString(geom.NewSequence(c, geom.DimXY))}).Validate()
}

// waist is a counter-clockwise outline of two concave and two convex edges.
func waist() []g.Polyline {
	low := arc(g.Pt(0, -1000), 1000, math.Pi/2+0.5, math.Pi/2-0.5, 120)
	var high g.Polyline
	for _, p := range low.Reversed() {
		high = append(high, g.Pt(p.X, 900-p.Y))
	}
	bulge := func(p, q g.Point) g.Polyline {
		n := q.Minus(p).Unit().Left().Times(-60)
		var l g.Polyline
		for i := range 41 {
			t := float64(i) / 40
			l = append(l, p.Towards(q, t).Plus(n.Times(4*t*(1-t))))
		}
		return l
	}
	return []g.Polyline{low, bulge(low[120], high[0]), high, bulge(high[120], low[0])}
}

func TestOffsetEdgesAgreesWithCanvas(t *testing.T) {
	edges := waist()
	whole := g.OffsetEdges(edges, []float64{0, 0, 0, 0})
	if err := valid(whole); err != nil {
		t.Fatal(err)
	}
	for _, d := range []float64{-18, 10, 25} {
		got := g.OffsetEdges(edges, []float64{d, d, d, d})
		if err := valid(got); err != nil {
			t.Fatalf("offset by %g: %v", d, err)
		}
		p := &canvas.Path{}
		for i, q := range whole {
			if i == 0 {
				p.MoveTo(q.X, q.Y)
			} else {
				p.LineTo(q.X, q.Y)
			}
		}
		p.Close()
		// Every point of the round-cornered offset lies on ours or, at a corner,
		// inside the mitre.
		ring := g.NewArc(got.Closed())
		off := 0.0
		var n int
		for _, q := range p.Offset(d, 0.01).Coords() {
			_, dist := ring.Nearest(g.Pt(q.X, q.Y))
			if dist > 0.02 && !got.Contains(g.Pt(q.X, q.Y)) {
				off = max(off, dist)
			}
			if dist < 0.02 {
				n++
			}
		}
		if off > 0 || n < 200 {
			t.Errorf("offset by %g: the other offsetter's outline stands out by %.4f mm, %d points agree", d, off, n)
		}
	}
}

func TestOffsetEdgesCorners(t *testing.T) {
	sq := []g.Polyline{{g.Pt(0, 0), g.Pt(10, 0)}, {g.Pt(10, 0), g.Pt(10, 10)}, {g.Pt(10, 10), g.Pt(0, 10)}, {g.Pt(0, 10), g.Pt(0, 0)}}
	got := g.OffsetEdges(sq, []float64{1, 2, 3, 4})
	if b := got.Bounds(); len(got) != 4 || b != (g.Box{Min: g.Pt(-4, -1), Max: g.Pt(12, 13)}) {
		t.Errorf("square with four allowances = %v", got)
	}
	if a := g.OffsetEdges(sq, []float64{-1, -1, -1, -1}).Area(); math.Abs(a-64) > 1e-9 {
		t.Errorf("area of the square 1 mm inside = %g, want 64", a)
	}
}
