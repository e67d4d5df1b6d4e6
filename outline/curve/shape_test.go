package curve_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/curve"
	_ "slingloft/outline/rapidtest"
)

// Lengths over a chord of 1 by sag, in closed form at 25 digits.
func TestUnitChord(t *testing.T) {
	for _, r := range []struct{ sag, parabola, a, catenary, radius, arc float64 }{
		{0.01, 1.0002666027, 12.5016663112, 1.00026661691, 12.505, 1.00026664534},
		{0.02, 1.0010656450, 6.25333049332, 1.00106587142, 6.26, 1.00106632557},
		{0.05, 1.00662722723, 2.50828931760, 1.00663584629, 2.525, 1.00665339016},
		{0.10, 1.02606063043, 1.26632436040, 1.02618686813, 1.3, 1.02645691122},
		{0.15, 1.05711593843, 0.857228566168, 1.05767399486, 0.9083333333, 1.05895968660},
		{0.20, 1.09823008377, 0.655862586753, 1.09971820882, 0.725, 1.10346849363},
		{0.25, 1.14779357470, 0.537160094130, 1.15079111409, 0.625, 1.15911902250},
		{0.30, 1.20434710683, 0.459447070111, 1.20941017371, 0.5666666667, 1.22495086728},
		{0.40, 1.33370540318, 0.364638774960, 1.34418900452, 0.5125, 1.38321893156},
		{0.50, 1.47894285754, 0.309379613887, 1.49583369916, 0.5, 1.57079632679},
	} {
		like(t, "parabola", parabola(t, 1, r.sag).Length(), r.parabola, 1e-10)
		like(t, "a", catenary(t, 1, r.sag).Parameter(), r.a, 1e-10)
		like(t, "catenary", catenary(t, 1, r.sag).Length(), r.catenary, 1e-10)
		like(t, "radius", arc(t, 1, r.sag).Radius(), r.radius, 1e-9)
		like(t, "arc", arc(t, 1, r.sag).Length(), r.arc, 1e-10)
	}
}

// The sags that give a length over 1600 mm, found the other way round at 25 digits.
func TestSagOfLength(t *testing.T) {
	for _, r := range []struct{ length, parabola, a, catenary, arc float64 }{
		{1630, 135.284383797, 2391.81841053, 135.041361786, 134.540586416},
		{1650, 175.599584173, 1856.11910680, 175.088203798, 174.014019864},
		{1680, 223.888691134, 1471.42340806, 222.886730547, 220.722664570},
		{1700, 251.615248935, 1318.46882933, 250.244036020, 247.228795990},
	} {
		like(t, "parabola", parabola(t, 1600, r.parabola).Length(), r.length, 1e-11)
		like(t, "catenary", catenary(t, 1600, r.catenary).Length(), r.length, 1e-11)
		like(t, "catenary a", catenary(t, 1600, r.catenary).Parameter(), r.a, 1e-10)
		like(t, "arc", arc(t, 1600, r.arc).Length(), r.length, 1e-11)
	}
}

// Areas below a chord of 1600 mm: two thirds of the box for the parabola, the
// circular segment for the arc. Integrated here by Simpson's rule over the angle, so
// that steep ends do no harm.
func TestAreaBelowChord(t *testing.T) {
	area := func(c curve.Curve, chord float64) float64 {
		const n = 2000
		f := func(k int) float64 {
			s, cos := math.Sincos(math.Pi * float64(k) / n)
			return c.Depth(-chord/2*cos) * chord / 2 * s
		}
		sum := 0.0
		for k := 0; k < n; k += 2 {
			sum += f(k) + 4*f(k+1) + f(k+2)
		}
		return sum * math.Pi / n / 3
	}
	for _, r := range []struct{ sag, parabola, catenary, arc float64 }{
		{150, 160000, 160364.726077, 161119.415062},
		{180, 192000, 192622.845146, 193930.172650},
		{220, 234666.666667, 235782.893031, 238178.589216},
	} {
		like(t, "parabola", area(parabola(t, 1600, r.sag), 1600), r.parabola, 1e-10)
		like(t, "catenary", area(catenary(t, 1600, r.sag), 1600), r.catenary, 1e-10)
		like(t, "arc", area(arc(t, 1600, r.sag), 1600), r.arc, 1e-10)
	}
}

// A parallel at a distance d is longer by d times the whole turning angle, for 20 mm
// and a chord of 1600 mm.
func TestTurning(t *testing.T) {
	for _, r := range []struct{ sag, parabola, catenary, arc float64 }{
		{150, 14.35082681, 14.50089419, 14.82783600},
		{180, 16.91415705, 17.15718620, 17.70515539},
		{220, 20.11372844, 20.51539949, 21.46929687},
	} {
		like(t, "parabola", 20*2*parabola(t, 1600, r.sag).EndSlope(), r.parabola, 1e-9)
		like(t, "catenary", 20*2*catenary(t, 1600, r.sag).EndSlope(), r.catenary, 1e-9)
		like(t, "arc", 20*2*arc(t, 1600, r.sag).EndSlope(), r.arc, 1e-9)
	}
}

// A curve's end slope is the slope of its depth there, depths are alike on both
// sides, and a curve twice as large is twice as long and as steep.
func TestCurveLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		chord := rapid.Float64Range(100, 3000).Draw(t, "chord")
		sag := chord * rapid.Float64Range(0.01, 0.45).Draw(t, "sag over chord")
		all := func(k float64) []curve.Curve {
			c, err := curve.NewCatenary(k*chord, k*sag)
			if err != nil {
				t.Fatal(err)
			}
			a, err := curve.NewArc(k*chord, k*sag)
			if err != nil {
				t.Fatal(err)
			}
			p, err := curve.NewParabola(k*chord, k*sag)
			if err != nil {
				t.Fatal(err)
			}
			return []curve.Curve{p, c, a}
		}
		small, large := all(1), all(2)
		x := chord / 2 * rapid.Float64Range(0, 1).Draw(t, "x")
		for i, c := range small {
			if math.Abs(c.Depth(x)-c.Depth(-x)) > 1e-9 {
				t.Fatalf("curve %d: %g and %g deep at ±%g", i, c.Depth(x), c.Depth(-x), x)
			}
			const h = 1e-5
			inside := chord / 2 * (1 - h)
			slope := math.Atan((c.Depth(inside*(1-h)) - c.Depth(inside)) / (inside * h))
			if math.Abs(slope-c.EndSlope()) > 2e-3 {
				t.Fatalf("curve %d: slope %g at the end, said to be %g", i, slope, c.EndSlope())
			}
			if l := large[i]; math.Abs(l.Length()-2*c.Length()) > 1e-9*chord || math.Abs(l.EndSlope()-c.EndSlope()) > 1e-9 ||
				math.Abs(l.Depth(2*x)-2*c.Depth(x)) > 1e-9*chord {
				t.Fatalf("curve %d: twice as large is %g long, %g steep", i, l.Length(), l.EndSlope())
			}
			if !(c.Length() > math.Hypot(chord/2, sag)*2) {
				t.Fatalf("curve %d is no longer than two straight lines", i)
			}
		}
	})
}

func TestNoCurve(t *testing.T) {
	inf, nan := math.Inf(1), math.NaN()
	for _, r := range []struct{ chord, sag float64 }{
		{0, 100}, {-100, 10}, {100, 0}, {100, -5}, {nan, 10}, {100, nan}, {inf, 10}, {100, inf}, {inf, inf},
	} {
		if _, err := curve.NewCatenary(r.chord, r.sag); err == nil {
			t.Errorf("a catenary of chord %g and sag %g was accepted", r.chord, r.sag)
		}
		if _, err := curve.NewArc(r.chord, r.sag); err == nil {
			t.Errorf("an arc of chord %g and sag %g was accepted", r.chord, r.sag)
		}
	}
	// A half circle is the deepest arc; a parabola and a catenary may be deeper.
	if a, err := curve.NewArc(100, 50); err != nil || a.Radius() != 50 {
		t.Errorf("a half circle: radius %g, %v", a.Radius(), err)
	}
	if _, err := curve.NewArc(100, 50.001); err == nil {
		t.Error("an arc of more than half a circle was accepted")
	}
	if c, err := curve.NewCatenary(100, 500); err != nil || !(c.Length() > 1000) {
		t.Errorf("a deep catenary: %g, %v", c.Length(), err)
	}
}
