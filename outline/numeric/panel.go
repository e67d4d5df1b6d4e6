package numeric

import (
	"gonum.org/v1/gonum/integrate/quad"
)

// Order is the number of Gauss–Legendre points in a [Panel].
const Order = 8

// Panel integrates functions known at the Gauss–Legendre points of an interval:
// the running integral from the interval's start to each point and to its end,
// exact for polynomials of degree below [Order] (the running ones) and below
// twice [Order] (the whole). The zero value is of no use; see [NewPanel].
type Panel struct {
	at      [Order]float64        // points on [0, 1]
	weight  [Order]float64        // for the whole interval of length 1
	running [Order][Order]float64 // running[i][j]: weight of value j in ∫₀^at[i]
	bary    [Order + 2]float64    // barycentric weights of 0, at…, 1
}

// NewPanel returns the panel's tables.
func NewPanel() Panel {
	var p Panel
	quad.Legendre{}.FixedLocations(p.at[:], p.weight[:], 0, 1)
	sub, w := make([]float64, Order), make([]float64, Order)
	for i, end := range p.at {
		quad.Legendre{}.FixedLocations(sub, w, 0, end)
		for k, x := range sub {
			for j := range Order {
				p.running[i][j] += w[k] * lagrange(p.at[:], j, x)
			}
		}
	}
	nodes := p.Nodes()
	for j, x := range nodes {
		p.bary[j] = 1
		for k, y := range nodes {
			if k != j {
				p.bary[j] /= x - y
			}
		}
	}
	return p
}

// lagrange returns the value at x of the polynomial that is 1 at at[j] and 0 at
// the other points.
func lagrange(at []float64, j int, x float64) float64 {
	v := 1.0
	for k, a := range at {
		if k != j {
			v *= (x - a) / (at[j] - a)
		}
	}
	return v
}

// At returns the place of point i as a fraction of the interval.
func (p *Panel) At(i int) float64 { return p.at[i] }

// Nodes returns both ends and the points between them, as fractions.
func (p *Panel) Nodes() [Order + 2]float64 {
	var n [Order + 2]float64
	copy(n[1:], p.at[:])
	n[Order+1] = 1
	return n
}

// Integrate returns the running integral of f at each point and over the whole
// interval, which is long mm long.
func (p *Panel) Integrate(f *[Order]float64, long float64) (run [Order]float64, whole float64) {
	for i := range Order {
		s := 0.0
		for j := range Order {
			s += float64(p.running[i][j] * f[j])
		}
		run[i] = s * long
		whole += float64(p.weight[i] * f[i])
	}
	return run, whole * long
}

// Interpolate returns the value at fraction t of the polynomial through v, the
// values at both ends and at the points between (see [Panel.Nodes]). For t
// outside [0, 1] it extrapolates.
func (p *Panel) Interpolate(v *[Order + 2]float64, t float64) float64 {
	num, den := 0.0, 0.0
	for j := range v {
		x := 0.0
		switch {
		case j == Order+1:
			x = 1
		case j > 0:
			x = p.at[j-1]
		}
		d := t - x
		if d == 0 {
			return v[j]
		}
		q := p.bary[j] / d
		num += float64(q * v[j])
		den += q
	}
	return num / den
}
