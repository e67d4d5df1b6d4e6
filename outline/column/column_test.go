package column_test

import (
	"math"
	"testing"

	"slingloft/outline/column"
)

func near(t *testing.T, what string, got, want, rel float64) {
	t.Helper()
	if !(math.Abs(got-want) <= rel*math.Abs(want)) {
		t.Errorf("%s = %.8g, want %.8g", what, got, want)
	}
}

// Answers printed in textbooks, to the digits printed there.
func TestTextbooks(t *testing.T) {
	const half = 5e-3 // three digits
	// Gere, Mechanics of Materials, 7th ed., problem 11.4-2: steel pipe 40/36 mm,
	// 1.2 m, E 210 GPa; I 43.22e3 mm⁴, P 62.2, 15.6, 127 and 249 kN.
	pipe := column.Tube(40, 2)
	near(t, "11.4-2 I", pipe.Inertia, 43.22e3, half)
	for k, want := range map[float64]float64{
		column.Pinned: 62.2e3, column.FixedFree: 15.6e3, column.FixedPinned: 127e3, column.FixedFixed: 249e3,
	} {
		near(t, "11.4-2 P", column.Euler(pipe, 210e3, k*1200), want, half)
	}
	// The same book, problem 11.3-15: aluminium tube 2 in, 6 ft, E 10 400 ksi, 4 kip
	// with a factor of 2; I 0.404 in⁴, wall 0.165 in.
	tube := column.Tube(2, 0.165)
	near(t, "11.3-15 I", tube.Inertia, 0.404, half)
	near(t, "11.3-15 P", column.Euler(tube, 10400, 72), 2*4, half)
	// The same book, example 11-2 in US units: pipe 4 in, 128 in, fixed and pinned, E
	// 10 400 ksi, 22.5 kip with a factor of 3; wall 0.254 in.
	near(t, "11-2 P", column.Euler(column.Tube(4, 0.254), 10400, column.FixedPinned*128), 3*22.5, half)
	// The same example in SI: 100 mm, 3.25 m, 72 GPa, 100 kN; wall 6.83 mm.
	near(t, "11-2 SI P", column.Euler(column.Tube(100, 6.83), 72e3, column.FixedPinned*3250), 300e3, half)
	// Hibbeler, Mechanics of Materials (from memory): tube of radii 3 and 2.75 in, 24
	// ft, E 29e3 ksi; P 64.5 kip, stress 14.3 ksi.
	h := column.Tube(6, 0.25)
	near(t, "Hibbeler P", column.Euler(h, 29e3, 288), 64.5, half)
	near(t, "Hibbeler stress", column.Euler(h, 29e3, 288)/h.Area, 14.3, half)
	// Shigley, 8th ed., example 4-17 (from memory): 1.5 m, 22 kN with a factor of 4, yield 500
	// MPa, E 207 GPa; d 37.48 mm, transition 90.4.
	near(t, "Shigley P", column.Euler(column.Rod(37.48), 207e3, 1500), 4*22e3, half)
	near(t, "Shigley transition", column.Transition(207e3, 500), 90.4, half)
}

// A strut of 44.5 × 2.5 mm, statement from a textbook problem; values by a second
// computation at 25 digits.
func TestStrut(t *testing.T) {
	s := column.Tube(44.5, 2.5)
	near(t, "A", s.Area, 329.86723, 1e-7)
	near(t, "I", s.Inertia, 72993.433, 1e-7)
	near(t, "k", s.Gyration(), 14.875525, 1e-7)
	near(t, "P", column.Euler(s, 200e3, 2700), 19764.508, 1e-7)
	near(t, "P", column.Euler(s, 200e3, 1500), 64037.005, 1e-7)
}

// Tubes as bars are made of; values by a second computation at 25 digits.
func TestTubes(t *testing.T) {
	for _, r := range []struct {
		outer, wall, l, e, yield float64
		area, inertia, slender   float64
		euler                    bool
		load                     float64
	}{
		{16, 1.0, 900, 69000, 240, 47.123890, 1331.2499, 169.32976, true, 1119.2405},
		{20, 1.5, 1000, 69000, 240, 87.179196, 3754.1541, 152.38786, true, 2556.5891},
		{25, 1.5, 900, 69000, 240, 110.74114, 7675.7453, 108.10275, true, 6453.3374},
		{25, 2.0, 500, 69000, 240, 144.51326, 9628.1961, 61.256389, false, 23216.861},
		{30, 1.5, 500, 69000, 240, 134.30309, 13673.733, 49.552943, false, 25259.437},
		{14, 0.8, 900, 71700, 455, 33.175218, 725.21027, 192.4941, true, 633.57471},
		{25, 1.0, 400, 71700, 455, 75.398224, 5438.0969, 47.099585, false, 22073.017},
	} {
		s := column.Tube(r.outer, r.wall)
		near(t, "A", s.Area, r.area, 1e-7)
		near(t, "I", s.Inertia, r.inertia, 1e-7)
		near(t, "slenderness", r.l/s.Gyration(), r.slender, 1e-7)
		load, euler := column.Buckling(s, r.e, r.yield, r.l)
		if euler != r.euler {
			t.Errorf("tube %g × %g, %g long: Euler %v, want %v", r.outer, r.wall, r.l, euler, r.euler)
		}
		near(t, "P", load, r.load, 1e-7)
	}
}

// Both curves meet at half the squash load: a Johnson term with 2 in place of 4
// fails here.
func TestTransition(t *testing.T) {
	for _, m := range []struct{ e, yield, want float64 }{
		{69000, 240, 75.332745}, {68900, 241, 75.121796}, {68900, 276, 70.197224},
		{71700, 503, 53.044512}, {71700, 455, 55.772325},
	} {
		near(t, "transition", column.Transition(m.e, m.yield), m.want, 1e-7)
		s := column.Tube(25, 1.5)
		l := column.Transition(m.e, m.yield) * s.Gyration()
		near(t, "Euler", column.Euler(s, m.e, l), s.Area*m.yield/2, 1e-12)
		near(t, "Johnson", column.Johnson(s, m.e, m.yield, l), s.Area*m.yield/2, 1e-12)
	}
}

// secant returns the largest stress, N/mm², and the deflection at mid-length,
// mm, of a bar with pinned ends whose thrust acts e mm off the axis at both ends:
//
//	σ = P/A (1 + e c/k² sec φ)    δ = e (sec φ − 1)    φ = (l/2k) √(P/(E A))
//
// At Euler's load and past it, where no such shape exists, both are infinite.
func secant(s column.Section, modulus, l, thrust, e float64) (stress, deflection float64) {
	k := s.Gyration()
	phi := l / (2 * k) * math.Sqrt(thrust/(modulus*s.Area))
	if phi >= math.Pi/2 {
		return math.Inf(1), math.Inf(1)
	}
	sec := 1 / math.Cos(phi)
	return thrust / s.Area * (1 + e*s.Edge/(k*k)*sec), e * (sec - 1)
}

// crooked returns the thrust at which a bar of one section yields that is bowed by bow and
// whose thrust acts e off its axis.
func crooked(s column.Section, modulus, yield, l, bow, e float64) float64 {
	return column.Weakened(column.Strut{Section: s, Modulus: modulus, Length: l, Bow: bow, Off: e}, s, yield)
}

// The secant formula on a tube 20 × 1.5, 1000 long, E 69 000; values by a second
// computation at 25 digits.
func TestSecant(t *testing.T) {
	s := column.Tube(20, 1.5)
	for _, r := range []struct{ p, e, stress, bow float64 }{
		{400, 2, 7.2090271, 0.45969969}, {400, 5, 11.140192, 1.1492492}, {800, 5, 25.872668, 2.8349979},
	} {
		stress, bow := secant(s, 69000, 1000, r.p, r.e)
		near(t, "stress", stress, r.stress, 1e-7)
		near(t, "deflection", bow, r.bow, 1e-7)
	}
	if stress, _ := secant(s, 69000, 1000, 2557, 1); !math.IsInf(stress, 1) {
		t.Errorf("past Euler's load the stress is %g", stress)
	}
}

// At the thrust returned the stress is the yield; without eccentricity it is the
// lesser of squash and Euler load.
func TestYielding(t *testing.T) {
	s := column.Tube(25, 1.5)
	for _, l := range []float64{60, 300, 900, 2000} {
		last := math.Inf(1)
		for _, e := range []float64{0, 0.01, 1, 5, 20} {
			p := crooked(s, 68900, 241, l, 0, e)
			if p >= last {
				t.Errorf("l %g, e %g: %g is no less than %g", l, e, p, last)
			}
			last = p
			if e > 0 {
				stress, _ := secant(s, 68900, l, p, e)
				near(t, "stress", stress, 241, 1e-6)
			}
		}
		near(t, "central", crooked(s, 68900, 241, l, 0, 0), min(s.Area*241, column.Euler(s, 68900, l)), 1e-12)
	}
}
