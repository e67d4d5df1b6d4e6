package numeric_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/numeric"
)

// values returns f at the points of an interval that starts at from and is long
// long.
func values(p *numeric.Panel, f func(float64) float64, from, long float64) (at [numeric.Order]float64, nodes [numeric.Order + 2]float64) {
	for i := range at {
		at[i] = f(from + long*p.At(i))
	}
	for i, x := range p.Nodes() {
		nodes[i] = f(from + long*x)
	}
	return at, nodes
}

// Points and weights of eight on [−1, 1], in whatever order: M. Abramowitz, I. A.
// Stegun, Handbook of Mathematical Functions, table 25.4.
func TestPanelPoints(t *testing.T) {
	p := numeric.NewPanel()
	table := []struct{ x, w float64 }{
		{0.183434642495650, 0.362683783378362}, {0.525532409916329, 0.313706645877887},
		{0.796666477413627, 0.222381034453374}, {0.960289856497536, 0.101228536290376},
	}
	nodes := p.Nodes()
	if nodes[0] != 0 || nodes[numeric.Order+1] != 1 {
		t.Errorf("ends at %g and %g", nodes[0], nodes[numeric.Order+1])
	}
	var met [4][2]int // by row, on either side of the middle
	for i := range numeric.Order {
		x := 2*p.At(i) - 1
		if nodes[i+1] != p.At(i) {
			t.Errorf("node %d at %g, point %d at %g", i+1, nodes[i+1], i, p.At(i))
		}
		var one [numeric.Order]float64
		one[i] = 1
		_, w := p.Integrate(&one, 2)
		for k, r := range table {
			if math.Abs(math.Abs(x)-r.x) > 2e-15 {
				continue
			}
			close(t, "weight", w, r.w, 1e-14)
			if x > 0 {
				met[k][1]++
			} else {
				met[k][0]++
			}
		}
	}
	if met != [4][2]int{{1, 1}, {1, 1}, {1, 1}, {1, 1}} {
		t.Errorf("points of the table met %v times", met)
	}
}

// Powers of x over an interval of 3: the running integrals are exact below degree
// 8, the whole below 16, and neither beyond.
func TestPanelDegrees(t *testing.T) {
	p := numeric.NewPanel()
	const long = 3.0
	for n := range 17 {
		power := func(x float64) float64 { return math.Pow(x, float64(n)) }
		integral := func(x float64) float64 { return math.Pow(x, float64(n+1)) / float64(n+1) }
		at, _ := values(&p, power, 0, long)
		run, whole := p.Integrate(&at, long)
		off := 0.0
		for i, v := range run {
			off = max(off, math.Abs(v-integral(long*p.At(i))))
		}
		scale := integral(long)
		if exact := off <= 1e-13*scale; exact != (n < numeric.Order) {
			t.Errorf("running integral of x^%d off by %g of %g", n, off, scale)
		}
		if exact := math.Abs(whole-scale) <= 1e-13*scale; exact != (n < 2*numeric.Order) {
			t.Errorf("integral of x^%d is %.17g, want %.17g", n, whole, scale)
		}
	}
}

// Smooth functions in closed form.
func TestPanelIntegrals(t *testing.T) {
	p := numeric.NewPanel()
	for _, r := range []struct {
		name              string
		f, integral       func(float64) float64
		from, long, close float64
	}{
		{"sin", math.Sin, func(x float64) float64 { return -math.Cos(x) }, 0, 1, 2e-11},
		{"exp", math.Exp, math.Exp, -0.5, 1, 1e-10},
		{"1/x", func(x float64) float64 { return 1 / x }, math.Log, 4, 1, 1e-10},
		{"backwards", math.Sin, func(x float64) float64 { return -math.Cos(x) }, 1, -1, 2e-11},
	} {
		at, _ := values(&p, r.f, r.from, r.long)
		run, whole := p.Integrate(&at, r.long)
		close(t, r.name, whole, r.integral(r.from+r.long)-r.integral(r.from), 1e-15)
		for i, v := range run {
			close(t, r.name+", running", v, r.integral(r.from+r.long*p.At(i))-r.integral(r.from), r.close)
		}
	}
}

// Ten values carry a polynomial of degree 9, inside the interval and beyond it.
func TestPanelInterpolate(t *testing.T) {
	p := numeric.NewPanel()
	rapid.Check(t, func(t *rapid.T) {
		factors := rapid.SliceOfN(rapid.Float64Range(-1, 1), 1, numeric.Order+2).Draw(t, "polynomial")
		f := func(x float64) float64 {
			v := 0.0
			for _, c := range factors {
				v = v*x + c
			}
			return v
		}
		_, nodes := values(&p, f, 0, 1)
		x := rapid.Float64Range(-0.2, 1.2).Draw(t, "x")
		if got := p.Interpolate(&nodes, x); math.Abs(got-f(x)) > 1e-11 {
			t.Fatalf("at %g: %.15g, want %.15g", x, got, f(x))
		}
	})
	_, nodes := values(&p, math.Exp, 0, 1)
	for i, x := range p.Nodes() {
		if got := p.Interpolate(&nodes, x); got != nodes[i] {
			t.Errorf("at its own node %g: %.17g, want %.17g", x, got, nodes[i])
		}
	}
	close(t, "exp ¼", p.Interpolate(&nodes, 0.25), math.Exp(0.25), 1e-12)
}
