package level

import (
	"math"
	"testing"

	"slingloft/outline/drape"
	"slingloft/outline/geom"
)

func within(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %.8g, want %.8g within %g", what, got, want, tol)
	}
}

// The spline has the value of control values that are alike, the line through those that
// rise evenly, and over a single one a sixth, four sixths and a sixth at its three knots.
func TestRecutAt(t *testing.T) {
	within(t, "nothing", Recut{}.At(17), 0, 0)
	within(t, "nothing, wider", Recut{}.Times(17), 1, 0)
	even := Recut{Start: -100, Knot: 50, Out: []float64{7, 7, 7, 7, 7}}
	line := Recut{Start: -100, Knot: 50, Out: []float64{-2, -1, 0, 1, 2, 3}}
	one := Recut{Start: -100, Knot: 50, Out: []float64{0, 0, 6, 0, 0}}
	for u := -140.0; u <= 140; u += 3 {
		within(t, "even", even.At(u), 7, 1e-12)
		if u >= -50 && u <= 100 {
			within(t, "line", line.At(u), u/50, 1e-12)
		}
	}
	within(t, "beside", one.At(-50), 1, 1e-12)
	within(t, "over", one.At(0), 4, 1e-12)
	within(t, "beside", one.At(50), 1, 1e-12)
	within(t, "off", one.At(100), 0, 1e-12)
	within(t, "past the end", one.At(500), one.At(100), 0)
}

// A recut moves the side by what it says and the cloth within by its share; from bar to bar
// the cord keeps its length, and so do the places of the bars along the cloth.
func TestRecutCut(t *testing.T) {
	p := drape.Pattern{}
	run := 0.0
	for u := -900.0; u <= 900; u += 10 {
		q := geom.Pt(u, 400+100*u*u/810000)
		if n := len(p.Side); n > 0 {
			run += q.Dist(p.Side[n-1])
		}
		p.Side, p.Cord = append(p.Side, q), append(p.Cord, run)
		if u == -700 {
			p.Tips[0] = run
		}
		if u == 700 {
			p.Tips[1] = run
		}
	}
	p.Ends = [2][]geom.Point{{geom.Pt(-880, 0), geom.Pt(-890, 250), p.Side[0]}, {geom.Pt(880, 0), p.Side[len(p.Side)-1]}}
	r := Recut{Side: p.Side, Start: -900, Knot: 50, Out: make([]float64, 37)}
	for k := range r.Out {
		r.Out[k] = 12 * math.Sin(float64(k)/3)
	}
	q := r.Cut(&p)
	for i, at := range p.Side {
		within(t, "u", q.Side[i].X, at.X, 0)
		within(t, "side", q.Side[i].Y-at.Y, r.At(at.X), 1e-9)
	}
	within(t, "within", q.Ends[0][1].Y, 250*(1+r.At(-890)/(400+100*890.0*890/810000)), 0.01)
	within(t, "cord from bar to bar", q.Tips[1]-q.Tips[0], p.Tips[1]-p.Tips[0], 1e-9)
	for e, i := range [2]int{20, 160} {
		within(t, "cord at a bar", q.Cord[i], q.Tips[e], 1e-9)
	}
	// The side was as long as its cord everywhere: past the bars it still is.
	long := 0.0
	for i := 1; i <= 20; i++ {
		long += q.Side[i].Dist(q.Side[i-1])
	}
	within(t, "cord over the tail", q.Tips[0], long, 1e-9)
}
