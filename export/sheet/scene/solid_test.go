package scene

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"slingloft/export/sheet/giventest"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// up returns the built-in bed with some lines of its design replaced.
func up(t *testing.T, lines ...string) bed {
	d := giventest.Hung(t, lines...)
	return bed{&d}
}

// shapes are beds with ends of every kind.
func shapes(t *testing.T) map[string]bed {
	long := []string{`head_tail = "160 mm"`, `head_tail = "260 mm"`, `foot_tail = "180 mm"`, `foot_tail = "240 mm"`}
	return map[string]bed{
		"upright":  up(t),
		"leaning":  up(t, append(long, `kind = "upright"`, `kind = "leaning"`)...),
		"gathered": up(t, `kind = "upright"`, `kind = "gathered"`, `hollow = `, `#`),
		"unequal":  up(t, `head_bar = "900 mm"`, `head_bar = "1000 mm"`, `foot_bar = "820 mm"`, `foot_bar = "520 mm"`),
		"straight": up(t, `cut = "net"`, `cut = "straight"`),
	}
}

// The ends of the drawn bed are those that the flat pattern was made for; a straight
// cut gives them up.
func TestBedEnds(t *testing.T) {
	for name, b := range shapes(t) {
		if b.Body.Cut == design.Straight {
			continue
		}
		rows, bars := b.bedRows(24)
		for e, row := range [2][]geom.Point3{rows[0], rows[len(rows)-1]} {
			plane := b.ending(hung.End(e))
			for _, p := range row {
				d := p.Minus(plane.At)
				q := geom.Pt(math.Abs(p.Y), d.Dot(plane.Up))
				if off := distance(b.Body.Sections[e], q); math.Abs(d.Dot(plane.Out)) > 0.01 || off > 0.1 {
					t.Errorf("%s: %s end: %v lies %g mm off the plane and %g mm off the section", name, hung.End(e), p, d.Dot(plane.Out), off)
				}
			}
			if half := b.Design.Bed.Span / 2; math.Abs(rows[bars[e]][0].X) != half {
				t.Errorf("%s: the %s bar stands at %g", name, hung.End(e), rows[bars[e]][0].X)
			}
		}
	}
}

// distance returns that of a point from a line.
func distance(l geom.Polyline, p geom.Point) float64 {
	best := math.Inf(1)
	for i := 1; i < len(l); i++ {
		a, d := l[i-1], l[i].Minus(l[i-1])
		t := 0.0
		if n := d.Dot(d); n > 0 {
			t = min(max(p.Minus(a).Dot(d)/n, 0), 1)
		}
		best = min(best, p.Dist(a.Plus(d.Times(t))))
	}
	return best
}

// What is painted last at a point of the picture is what lies nearest to the viewer
// there, by the depth of every facet, from the camera of the picture and from others.
func TestNearestIsPaintedLast(t *testing.T) {
	const slack = 14.0 // mm: facets are flat for the bed's curve, and twist
	r := rand.New(rand.NewPCG(7, 7))
	for name, b := range shapes(t) {
		for _, c := range []camera{newCamera(-0.95, 0.5), newCamera(-2.2, 0.4), newCamera(0.6, 0.9), newCamera(2.4, 1.2)} {
			scene := b.scene(c)
			tried := 0
			for range 600 {
				f := scene[r.IntN(len(scene))]
				if f.width > 0 {
					continue
				}
				n := len(f.points)
				aim := f.points[0].Plus(f.points[1]).Plus(f.points[n-2]).Plus(f.points[n-1]).Times(0.25)
				last, nearest := math.Inf(-1), math.Inf(-1)
				for _, g := range scene {
					if d, ok := depthAt(c, g, c.flat(aim)); ok {
						last, nearest = d, math.Max(nearest, d)
						tried++
					}
				}
				if last < nearest-slack {
					t.Errorf("%s: at %v a part %g mm behind is painted last", name, aim, nearest-last)
					break
				}
			}
			if tried < 300 {
				t.Errorf("%s: only %d facets were met", name, tried)
			}
		}
	}
}

// depthAt returns how near an area lies to the viewer at a point of the picture. Its
// points run along one row and back along the next.
func depthAt(c camera, f facet, at geom.Point) (float64, bool) {
	if f.width > 0 {
		return 0, false
	}
	best, found := math.Inf(-1), false
	n := len(f.points)
	for i := range n/2 - 1 {
		p, q, s, u := f.points[i], f.points[i+1], f.points[n-2-i], f.points[n-1-i]
		for _, tri := range [][3]geom.Point3{{p, q, s}, {p, s, u}} {
			a, b, d := c.flat(tri[0]), c.flat(tri[1]), c.flat(tri[2])
			whole := b.Minus(a).Cross(d.Minus(a))
			v, w := at.Minus(a).Cross(d.Minus(a))/whole, b.Minus(a).Cross(at.Minus(a))/whole
			if v >= 0 && w >= 0 && v+w <= 1 {
				depth := tri[0].Dot(c.out)*(1-v-w) + tri[1].Dot(c.out)*v + tri[2].Dot(c.out)*w
				best, found = math.Max(best, depth), true
			}
		}
	}
	return best, found
}

func TestBackToFront(t *testing.T) {
	for _, row := range []struct {
		later []bool
		want  string
	}{
		{nil, "[0]"},
		{[]bool{true, true, true}, "[0 1 2 3]"},
		{[]bool{false, false, false}, "[3 2 1 0]"},
		{[]bool{false, true, true}, "[1 2 3 0]"},
		{[]bool{true, false}, "[0 2 1]"},
	} {
		got := fmt.Sprint(backToFront(len(row.later)+1, func(k int) bool { return row.later[k] }))
		if got != row.want {
			t.Errorf("viewer later %v: %s, want %s", row.later, got, row.want)
		}
	}
}
