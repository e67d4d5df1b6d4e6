package curve_test

import (
	"math"
	"testing"

	"slingloft/outline/curve"
)

func like(t *testing.T, what string, got, want, rel float64) {
	t.Helper()
	if !(math.Abs(got-want) <= rel*math.Abs(want)) {
		t.Errorf("%s = %.12g, want %.12g within %g", what, got, want, rel)
	}
}

func parabola(t *testing.T, l, s float64) curve.Parabola {
	t.Helper()
	c, err := curve.NewParabola(l, s)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func catenary(t *testing.T, l, s float64) curve.Catenary {
	t.Helper()
	c, err := curve.NewCatenary(l, s)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func arc(t *testing.T, l, s float64) curve.Arc {
	t.Helper()
	c, err := curve.NewArc(l, s)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// Lengths over a chord of 1600 mm in closed form, computed apart at 25 digits.
func TestLengths(t *testing.T) {
	rows := []struct{ sag, parabola, a, catenary, radius, arc float64 }{
		{60, 1605.97991097, 5343.30349696, 1605.98433322, 5363.33333333, 1605.99326622},
		{150, 1636.74619689, 2157.88002049, 1636.90440301, 2208.33333333, 1637.24022496},
		{180, 1652.46789927, 1807.00552368, 1652.78188340, 1867.77777778, 1653.46478927},
		{220, 1677.35217390, 1489.83338517, 1678.00678125, 1564.54545455, 1679.48454171},
		{300, 1739.35699260, 1113.35803941, 1741.28093500, 1216.66666667, 1746.01726198},
	}
	for _, r := range rows {
		like(t, "parabola", parabola(t, 1600, r.sag).Length(), r.parabola, 1e-11)
		like(t, "catenary a", catenary(t, 1600, r.sag).Parameter(), r.a, 1e-11)
		like(t, "catenary", catenary(t, 1600, r.sag).Length(), r.catenary, 1e-11)
		like(t, "radius", arc(t, 1600, r.sag).Radius(), r.radius, 1e-11)
		like(t, "arc", arc(t, 1600, r.sag).Length(), r.arc, 1e-11)
	}
	// A quarter as deep as wide, a parabola is half the universal parabolic constant.
	like(t, "universal parabola", parabola(t, 1, 0.25).Length(), 2.295587149392638/2, 1e-14)
	like(t, "half circle", arc(t, 1, 0.5).Length(), math.Pi/2, 1e-14)
}

// End slopes over 1600 mm, in degrees, computed apart.
func TestEndSlopes(t *testing.T) {
	const deg = math.Pi / 180
	rows := []struct{ sag, parabola, catenary, arc float64 }{
		{150, 20.556045, 20.771001, 42.47862110 / 2},
		{180, 24.227745, 24.575859, 50.72153397 / 2},
		{220, 28.810794, 29.386145, 61.50500500 / 2},
	}
	for _, r := range rows {
		like(t, "parabola", parabola(t, 1600, r.sag).EndSlope(), r.parabola*deg, 1e-7)
		like(t, "catenary", catenary(t, 1600, r.sag).EndSlope(), r.catenary*deg, 1e-7)
		like(t, "arc", arc(t, 1600, r.sag).EndSlope(), r.arc*deg, 1e-7)
	}
}

// Worked problems from teaching material. Statements as cited; answers computed
// from the statement at 25 digits, the printed ones agree to their own digits.
func TestHandbook(t *testing.T) {
	// Southern Illinois University Edwardsville, worked examples 6.7, no. 1: length
	// 140 m, span 120 m, 3 kg/m, g 9.81; printed c 61.45 m, sag 31.70 m, 2.74 kN.
	c := catenary(t, 120, 31.697051)
	like(t, "SIUE length", c.Length(), 140, 1e-7)
	like(t, "SIUE c", c.Parameter(), 61.44573, 1e-6)
	like(t, "SIUE tension", 3*9.81*(c.Parameter()+31.697051), 2741.192, 1e-6)
	// Beer and Johnston, Vector Mechanics for Engineers, ISBN 978-0073398242, problem
	// 7.128: 500 ft, sag 125 ft: c 187.5 ft, span 375 ln 3, tension 875 lb at 2.8 lb/ft.
	c = catenary(t, 375*math.Log(3), 125)
	like(t, "7.128 c", c.Parameter(), 187.5, 1e-11)
	like(t, "7.128 length", c.Length(), 500, 1e-11)
	like(t, "7.128 tension", 2.8*(c.Parameter()+125), 875, 1e-11)
	// 7.127: chain 25 ft, sag 10 ft: c 2.8125 ft, span 12.359388 ft.
	c = catenary(t, 12.359388, 10)
	like(t, "7.127 c", c.Parameter(), 2.8125, 1e-6)
	like(t, "7.127 length", c.Length(), 25, 1e-7)
	// 7.136: 90 m wire over 60 m: sag 30.157996 m.
	like(t, "7.136 length", catenary(t, 60, 30.157996).Length(), 90, 1e-7)
	// 7.107: 0.6 kg/m, 60 m, sag 1.5 m as a parabola: 60.09985053 m, 1774.607 N.
	p := parabola(t, 60, 1.5)
	like(t, "7.107 length", p.Length(), 60.09985053, 1e-9)
	like(t, "7.107 tension", 0.6*9.81*60*60/(8*1.5)/math.Cos(p.EndSlope()), 1774.607, 1e-6)
	// Elementary theory of statically determinate structures, 6.14.1, problem 1: span
	// 50 ft, sag 10 ft, at most 10 000 lb: load 12 493.901 lb.
	p = parabola(t, 50, 10)
	like(t, "6.14.1 load", 2*10000*math.Sin(p.EndSlope()), 12493.901, 1e-7)
}

// Each curve starts and ends on its chord, is as deep as its sag in the middle,
// and is as long as its points; of the same sag the parabola is the shortest and
// the arc the longest.
func TestCurvesByPoints(t *testing.T) {
	const l = 1400.0
	for sag := 20.0; sag < l/2; sag += 45 {
		curves := []curve.Curve{parabola(t, l, sag), catenary(t, l, sag), arc(t, l, sag)}
		for i, c := range curves {
			if d := math.Abs(c.Depth(l/2)) + math.Abs(c.Depth(-l/2)) + math.Abs(c.Depth(0)-sag); d > 1e-9 {
				t.Errorf("curve %d, sag %g: ends or middle off by %g", i, sag, d)
			}
			const n = 40000
			walked := 0.0
			for k := range n {
				// Even steps in the angle, so that steep ends have short steps.
				a, b := -l/2*math.Cos(math.Pi*float64(k)/n), -l/2*math.Cos(math.Pi*float64(k+1)/n)
				walked += math.Hypot(b-a, c.Depth(b)-c.Depth(a))
			}
			like(t, "walked", c.Length(), walked, 1e-8)
			if i > 0 && !(c.Length() > curves[i-1].Length()) {
				t.Errorf("sag %g: curve %d is not longer than the one before", sag, i)
			}
		}
	}
	if _, err := curve.NewArc(100, 51); err == nil {
		t.Error("an arc of more than half a circle was accepted")
	}
	if _, err := curve.NewCatenary(100, math.NaN()); err == nil {
		t.Error("a catenary without sag was accepted")
	}
}
