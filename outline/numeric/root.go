// Package numeric holds the few numerical methods that the mechanics needs and
// that no library in use offers: a bracketing root finder, a damped Newton
// iteration for small systems and a spectral panel for integrating twice.
package numeric

import (
	"errors"
	"math"
)

// ErrNoBracket is returned where a function has the same sign at both ends of
// the interval in which a root is sought.
var ErrNoBracket = errors.New("numeric: no sign change")

// ErrNotFinite is returned where a function gives NaN or infinity inside the
// interval in which a root is sought.
var ErrNotFinite = errors.New("numeric: not finite")

// Root finds x between a and b with f(x) = 0 to within tol in x, by Brent's
// method (R. P. Brent, Algorithms for Minimization without Derivatives, 1973,
// chapter 4). f must differ in sign at a and b.
func Root(f func(float64) float64, a, b, tol float64) (float64, error) {
	fa, fb := f(a), f(b)
	if math.IsNaN(fa) || math.IsNaN(fb) {
		return 0, ErrNotFinite
	}
	if fa == 0 {
		return a, nil
	}
	if fb == 0 {
		return b, nil
	}
	if math.Signbit(fa) == math.Signbit(fb) {
		return 0, ErrNoBracket
	}
	const mostSteps = 200 // bisection alone needs about 60 for a double
	c, fc := a, fa
	d := b - a
	e := d
	for range mostSteps {
		if math.Signbit(fb) == math.Signbit(fc) {
			c, fc = a, fa
			d = b - a
			e = d
		}
		if math.Abs(fc) < math.Abs(fb) {
			a, b, c = b, c, b
			fa, fb, fc = fb, fc, fb
		}
		limit := 2*ulp*math.Abs(b) + tol/2
		half := (c - b) / 2
		if math.Abs(half) <= limit || fb == 0 {
			return b, nil
		}
		if math.Abs(e) >= limit && math.Abs(fa) > math.Abs(fb) {
			d, e = brentStep(brentState{a, b, c, fa, fb, fc, d, e}, half, limit)
		} else {
			d, e = half, half
		}
		a, fa = b, fb
		if math.Abs(d) > limit {
			b += d
		} else {
			b += math.Copysign(limit, half)
		}
		fb = f(b)
		if math.IsNaN(fb) {
			return 0, ErrNotFinite
		}
	}
	return b, nil
}

// ulp is the relative spacing of doubles, 2⁻⁵².
const ulp = 2.220446049250313e-16

// brentState is the current triple of points with their values and the last
// two steps.
type brentState struct{ a, b, c, fa, fb, fc, d, e float64 }

// brentStep proposes a step by inverse quadratic or linear interpolation, or
// half the interval where that would be the safer one.
func brentStep(s brentState, half, limit float64) (d, e float64) {
	var p, q float64
	t := s.fb / s.fa
	if s.a == s.c {
		p = 2 * half * t
		q = 1 - t
	} else {
		u, r := s.fa/s.fc, s.fb/s.fc
		p = t * (2*half*u*(u-r) - (s.b-s.a)*(r-1))
		q = (u - 1) * (r - 1) * (t - 1)
	}
	if p > 0 {
		q = -q
	}
	p = math.Abs(p)
	if 2*p < math.Min(3*half*q-math.Abs(limit*q), math.Abs(s.e*q)) {
		return p / q, s.d
	}
	return half, half
}
