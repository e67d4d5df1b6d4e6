package simplify

import (
	"math"
	"testing"

	"slingloft/outline/geom"
)

func parabola(span, sag float64, n int) geom.Polyline {
	var out geom.Polyline
	for i := range n + 1 {
		x := span * float64(i) / float64(n)
		out = append(out, geom.Pt(x, -4*sag*x*(span-x)/(span*span)))
	}
	return out
}

func arcOf(radius, from, turn float64, n int) geom.Polyline {
	var out geom.Polyline
	for i := range n + 1 {
		s, c := math.Sincos(from + turn*float64(i)/float64(n))
		out = append(out, geom.Pt(radius*c, radius*s))
	}
	return out
}

// A chord over a span w of a parabola with curvature 8 sag/span² is off by
// sag·(w/span)², so span·sqrt(tolerance/sag) is the longest: 34 chords for 1600/180
// and 0.15 mm.
func TestChordsOfAParabola(t *testing.T) {
	line := parabola(1600, 180, 4000)
	for _, tolerance := range []float64{0.01, 0.05, 0.15, 1} {
		got := Chords(line, false, tolerance)
		least := math.Sqrt(180 / tolerance)
		if n := float64(len(got) - 1); n < math.Floor(least) || n > 1.1*least+1 {
			t.Errorf("tolerance %g: %g chords, want about %.1f", tolerance, n, least)
		}
		checkWithin(t, line, got, tolerance)
	}
}

func checkWithin(t *testing.T, line, got geom.Polyline, tolerance float64) {
	t.Helper()
	arc := geom.NewArc(got)
	for _, p := range line {
		if _, d := arc.Nearest(p); d > tolerance+1e-9 {
			t.Fatalf("point %v is %g mm from the chords, want %g", p, d, tolerance)
		}
	}
}

func TestCornersAreKept(t *testing.T) {
	square := geom.Polyline{{X: 0, Y: 0}, {X: 5, Y: 0}, {X: 10, Y: 0}, {X: 10, Y: 10}, {X: 5, Y: 10}, {X: 0, Y: 10}}
	got := geom.Ring(Chords(square, true, 100))
	if len(got) != 4 || math.Abs(got.Area()-100) > 1e-12 {
		t.Errorf("square became %v", got)
	}
	if _, pieces := Arcs(square, true, 100); len(pieces) != 4 {
		t.Errorf("square became %v", pieces)
	}
}

// The chords of a true arc become one arc with the bulge tan(turn/4).
func TestArcs(t *testing.T) {
	for _, turn := range []float64{0.1, 0.5, -0.5, 1.5, -3} {
		line := arcOf(300, 0.3, turn, 200)
		start, pieces := Arcs(line, false, 0.01)
		if len(pieces) != 1 || start != line[0] || math.Abs(pieces[0].Bulge-math.Tan(turn/4)) > 1e-6 {
			t.Errorf("turn %g: %d pieces, want one of bulge %g", turn, len(pieces), math.Tan(turn/4))
		}
	}
	line := append(parabola(1600, 180, 400), geom.Pt(1600, 300), geom.Pt(0, 300))
	start, pieces := Arcs(line, true, 0.05)
	if len(pieces) > 30 || len(pieces) < 5 || pieces[len(pieces)-1].To != start {
		t.Errorf("%d pieces from %v to %v", len(pieces), start, pieces[len(pieces)-1].To)
	}
	var flat geom.Polyline
	at := start
	for _, p := range pieces {
		flat = append(flat, at)
		if p.Bulge != 0 {
			centre, radius := Circle(at, p.To, p.Bulge)
			turn, from := 4*math.Atan(p.Bulge), at.Minus(centre).Angle()
			for k := 1; k < 400; k++ {
				s, c := math.Sincos(from + turn*float64(k)/400)
				flat = append(flat, centre.Plus(geom.Pt(c, s).Times(radius)))
			}
		}
		at = p.To
	}
	checkWithin(t, line, append(flat, start), 0.051)
	if got, want := geom.Ring(flat).Perimeter(), geom.Ring(line).Perimeter(); math.Abs(got-want) > 0.05 {
		t.Errorf("arcs are %g mm long, the chords %g", got, want)
	}
}

func TestShortLines(t *testing.T) {
	two := geom.Polyline{{X: 0, Y: 0}, {X: 1, Y: 0}}
	if got := Chords(two, false, 1); len(got) != 2 {
		t.Errorf("two points became %v", got)
	}
	triangle := geom.Polyline{{X: 0, Y: 0}, {X: 1, Y: 0}, {X: 0, Y: 1}}
	if got := Chords(triangle, true, 1); len(got) != 3 {
		t.Errorf("three points became %v", got)
	}
	same := geom.Polyline{{X: 1, Y: 1}, {X: 1, Y: 1}, {X: 1, Y: 1}, {X: 1, Y: 1}}
	if got := Chords(same, true, 1); len(got) < 2 {
		t.Errorf("a dot became %v", got)
	}
}

// A closed line begins at its sharpest corner, wherever it was drawn from.
func TestBeginsAtTheSharpest(t *testing.T) {
	ring := geom.Polyline{geom.Pt(0, 0), geom.Pt(100, 0), geom.Pt(160, 10), geom.Pt(100, 100), geom.Pt(0, 100)}
	for shift := range ring {
		from := append(append(geom.Polyline{}, ring[shift:]...), ring[:shift]...)
		if got := Chords(from, true, 0.1)[0]; got != geom.Pt(160, 10) {
			t.Errorf("from %v it begins at %v", from[0], got)
		}
	}
}

// The corners of a polygon lie on a circle, but not the middles of its sides, which are
// r (1 − cos(π/n)) inside: within less than that there is no arc.
func TestArcThroughMiddles(t *testing.T) {
	const r, n = 100.0, 30
	line := arcOf(r, 0, math.Pi, n/2)
	sagitta := r * (1 - math.Cos(math.Pi/n))
	for tolerance, arcs := range map[float64]bool{0.9 * sagitta: false, 1.1 * sagitta: true} {
		_, pieces := Arcs(line, false, tolerance)
		bent := 0
		for _, p := range pieces {
			if p.Bulge != 0 {
				bent++
			}
		}
		if (bent > 0) != arcs {
			t.Errorf("within %.3f mm of sides that bow by %.3f there are %d arcs", tolerance, sagitta, bent)
		}
	}
}
