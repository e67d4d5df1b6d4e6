package drape

import (
	"math"
	"testing"
)

func within(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %.8g, want %.8g within %g", what, got, want, tol)
	}
}

func noLoad(int, float64) error { return nil }

// chainBody returns n nodes, the last tied to a fixed point by as long a tie as
// joins each to the next, and the first to another point if it is given.
func chainBody(n int, long, ea float64, first *[3]float64, last [3]float64) *body {
	b := &body{width: 1}
	b.resize(n)
	tieTo := func(node int, to [3]float64) {
		p := tie{node: [3]int{node}, part: [3]float64{-1 / long}, stiffness: ea * long, penalty: 100 * long}
		for a := range 3 {
			p.offset[a] = to[a] / long
		}
		b.ties = append(b.ties, p)
	}
	if first != nil {
		tieTo(0, *first)
	}
	for i := 1; i < n; i++ {
		b.ties = append(b.ties, tie{node: [3]int{i - 1, i}, part: [3]float64{-1 / long, 1 / long},
			stiffness: ea * long, penalty: 100 * long})
	}
	tieTo(n-1, last)
	for i := range n {
		f := (float64(i) + 0.5) / float64(n)
		b.place[0][i], b.place[2][i] = f*last[0], last[2]-100*f
	}
	return b
}

// A cord that hangs under its own even weight between two level points is a
// catenary: length 2a sinh(l/2a), sag a (cosh(l/2a) − 1), tension at the ends
// w a cosh(l/2a) (J. Bernoulli, 1691; any statics text).
func TestCordIsCatenary(t *testing.T) {
	const (
		a, span, w = 600.0, 1000.0, 0.5
		n          = 120 // ties
	)
	whole := 2 * a * math.Sinh(span/2/a)
	long := whole / n
	b := chainBody(n-1, long, 1e9, &[3]float64{}, [3]float64{span, 0, 0})
	for i := range b.weight {
		b.weight[i] = w * long
	}
	s, ok := newSplitting(b)
	if !ok {
		t.Fatal("loose")
	}
	steps, far, _ := s.settle(1e-5, 20000, noLoad)
	t.Logf("%d steps, %.1e mm", steps, far)
	// The chain's error falls with the square of its ties.
	within(t, "sag", -b.place[2][n/2-1], a*(math.Cosh(span/2/a)-1), 0.02)
	v, _ := s.force(0)
	within(t, "thrust", math.Abs(v.X), w*a, 0.05)
	within(t, "lift of one end", math.Abs(v.Z), w*long*(n-1)/2, 0.01)
	for i := range b.n {
		within(t, "height", b.place[2][i]-b.place[2][n/2-1],
			a*(math.Cosh((b.place[0][i]-span/2)/a)-1), 0.02)
	}
}

// A weight on a plumb line stretches it by W l/EA; a line that is not pulled has
// no force.
func TestPullStretches(t *testing.T) {
	b := chainBody(10, 50, 2000, nil, [3]float64{0, 0, 0})
	b.weight[0], b.weight[5] = 30, 10
	s, _ := newSplitting(b)
	s.settle(1e-7, 20000, noLoad)
	// Five ties of 50 mm carry 30 N, five carry 40 N.
	within(t, "height", b.place[2][0], -500-5*50*(30+40)/2000.0, 1e-4)
	_, up := s.force(len(b.ties) - 1)
	within(t, "upper force", up, 40, 1e-3)
	b.weight[0] = 0
	s.settle(1e-7, 20000, noLoad)
	_, low := s.force(0)
	within(t, "slack force", low, 0, 1e-3)
}

// A belt over the underside of a heavy disc is round where it touches and
// straight from there to its ends: with the wall at θ above the horizontal the
// half belt is R θ + (y − R sin θ)/cos θ long, carries W/(2 sin θ), and its end lies
// R (1 − cos θ) + (y − R sin θ) tan θ above its lowest point.
func TestBeltUnderDisc(t *testing.T) {
	const (
		r, y, theta, weight = 125.0, 400.0, 0.8, 100.0
		n                   = 96
	)
	sin, cos := math.Sincos(theta)
	long := (r*theta + (y-r*sin)/cos) / n
	up := r*(1-cos) + (y-r*sin)*math.Tan(theta)
	b := chainBody(n, long, 1e8, nil, [3]float64{0, y, 0})
	b.resize(n + 1)
	b.width = n
	b.weight[n] = weight / 2
	b.fixed[1][0], b.fixed[1][n] = true, true
	b.fixed[0][n] = true
	for i := range n {
		b.place[1][i], b.place[2][i] = 0.7*long*float64(i), -0.7*long*float64(n-i)
		if i < 2*n/3 {
			b.contacts = append(b.contacts, contact{node: i, disc: n, penalty: 10 * r * r, wide: r, high: r})
		}
	}
	b.place[2][n] = -r
	s, ok := newSplitting(b)
	if !ok {
		t.Fatal("loose")
	}
	steps, far, _ := s.settle(1e-5, 20000, noLoad)
	t.Logf("%d steps, %.1e mm", steps, far)
	within(t, "lowest point", b.place[2][0], -up, 0.05)
	within(t, "disc", b.place[2][n], -up, 0.05)
	for _, i := range []int{0, n / 4, n - 1} {
		_, f := s.force(i)
		within(t, "pull", f, weight/2/sin, 0.02)
	}
	// Round a cylinder a pull T lies with T/R per length (the ring's law, T = p R).
	const at = n / 8
	k := 3*len(b.ties) + 2*at
	press := b.contacts[at].penalty / r * math.Hypot(s.q[k]-s.proj[k], s.q[k+1]-s.proj[k+1])
	within(t, "pressure", press/long, weight/2/sin/r, 0.002*weight/2/sin/r)
}

// A bar holds its tip out and no further.
func TestSpread(t *testing.T) {
	b := chainBody(1, 300, 1e7, &[3]float64{-200, 0, 0}, [3]float64{200, 0, 0})
	b.struts = []strut{{0, 100, 5}}
	b.weight[0] = 50
	s, _ := newSplitting(b)
	s.settle(1e-7, 20000, noLoad)
	// A leg of 300 from 200 along and 100 across leaves 200 down.
	within(t, "across", b.place[1][0], 100, 1e-3)
	within(t, "down", b.place[2][0], -200, 1e-2)
	within(t, "thrust", b.struts[0].penalty*(s.proj[6]-s.q[6]), 50.0/2, 1e-2)
}
