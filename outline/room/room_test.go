package room

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/hung"
	_ "slingloft/outline/rapidtest"
)

func near(t rapid.TB, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %.12g, want %.12g", what, got, want)
	}
}

// Upright cords over the ends of the breadth leave half the ellipse wrapped: a quarter of
// its girth is a E(m) with m = 1 − b²/a² (complete elliptic integral of the second kind,
// Abramowitz & Stegun table 17.1: E(0.5) = 1.35064388, E(0.75) = 1.21105603), and the rest
// of the cloth hangs straight.
func TestUpright(t *testing.T) {
	for m, e := range map[float64]float64{0.5: 1.3506438810, 0.75: 1.2110560276, 0: math.Pi / 2} {
		const a, free = 240.0, 130.0
		b := a * math.Sqrt(1-m)
		w, err := Body{2 * a, 2 * b}.Wrap(a, a*e+free)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "height", w.Height, b+free, 1e-6)
		near(t, "wall", w.Wall, math.Pi/2, 1e-6)
		near(t, "side", w.Side(), b, 1e-6)
	}
}

// Round an ellipse from a point of one that shares its foci, and back, is as long a way
// from each such point (C. Graves, 1841): lower half way and upper half way together.
func TestConfocal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := Body{rapid.Float64Range(150, 600).Draw(t, "breadth"), rapid.Float64Range(150, 600).Draw(t, "depth")}
		more := rapid.Float64Range(1e3, 3e5).Draw(t, "more")
		big, high := math.Sqrt(b.Breadth*b.Breadth/4+more), math.Sqrt(b.Depth*b.Depth/4+more)
		way := func(at float64) float64 {
			sin, cos := math.Sincos(at)
			return b.long(big*cos, high*sin) + b.long(big*cos, -high*sin)
		}
		// Below the body's lowest point the way under it would lead back.
		at := rapid.Float64Range(0, math.Asin(min(1, b.Depth/2/high))).Draw(t, "at")
		// From the end of the longer axis the way is plain: two like halves.
		near(t, "way", way(at), 2*b.long(big, 0), 1e-7*big)
	})
}

// A round body lies as in the design's sections, which have their own closed form.
func TestRound(t *testing.T) {
	for _, r := range [][3]float64{{300, 250, 125}, {450, 420, 125}, {200, 300, 150}} {
		s, err := hung.NewSection(r[0], r[1], r[2])
		if err != nil {
			t.Fatal(err)
		}
		w, err := Body{2 * r[2], 2 * r[2]}.Wrap(r[0], s.Girth()/2)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "height", w.Height, r[1], 1e-8)
		near(t, "wall", w.Wall, s.Wall, 1e-9)
		// The cloth carries the load, and what lies under it is pressed by what turns it.
		near(t, "squeeze", w.Squeeze(0.4), 0.4/(2*math.Sin(s.Wall))*(1-math.Cos(s.Wall)), 1e-9)
	}
}

// What cannot lie between the cords is told apart from cloth that does not reach.
func TestRefuses(t *testing.T) {
	if _, err := (Body{500, 250}).Wrap(300, 299); err != ErrNarrow {
		t.Error(err)
	}
	if _, err := (Body{500, 250}).Wrap(200, 330); err != ErrBetween {
		t.Error(err)
	}
	w, err := Body{500, 250}.Wrap(200, 500)
	if err != nil || !(w.Wall > math.Pi/2) {
		t.Errorf("wall %g, %v: cords nearer than the body lean in", w.Wall, err)
	}
}
