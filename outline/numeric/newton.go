package numeric

import (
	"errors"
	"math"

	"gonum.org/v1/gonum/mat"
)

// ErrNoConvergence is returned where an iteration does not settle.
var ErrNoConvergence = errors.New("numeric: no convergence")

// System is a set of n equations in n unknowns. It returns the residuals, or an
// error where x lies outside the region in which they exist.
type System func(x []float64) ([]float64, error)

// Solve finds x with every residual of f at most tol, by Newton's method with
// differences for the Jacobian and steps halved until the residual falls. step
// gives the size of a difference in each unknown. The result is a new slice.
func Solve(f System, start, step []float64, tol float64) ([]float64, error) {
	const mostSteps = 60
	x := append([]float64(nil), start...)
	r, err := f(x)
	if err != nil {
		return nil, err
	}
	for range mostSteps {
		if Largest(r) <= tol {
			return polished(f, x, r, step), nil
		}
		dx, err := newtonStep(f, x, r, step)
		if err != nil {
			return nil, err
		}
		next, nr, ok := backtrack(f, x, dx, r)
		if !ok {
			return nil, ErrNoConvergence
		}
		x, r = next, nr
	}
	return nil, ErrNoConvergence
}

// polished takes one step more from a solution, which doubles its digits: what is
// left is rounding, so that other processors and other starts end at the same
// figures. A step that makes the residual no smaller is not taken.
func polished(f System, x, r, step []float64) []float64 {
	dx, err := newtonStep(f, x, r, step)
	if err != nil {
		return x
	}
	y := make([]float64, len(x))
	for i := range x {
		y[i] = x[i] + dx[i]
	}
	if q, err := f(y); err == nil && Largest(q) < Largest(r) {
		return y
	}
	return x
}

// newtonStep solves J dx = −r.
func newtonStep(f System, x, r, step []float64) ([]float64, error) {
	jac, err := jacobian(f, x, r, step)
	if err != nil {
		return nil, err
	}
	n := len(x)
	rhs := mat.NewVecDense(n, nil)
	for i, v := range r {
		rhs.SetVec(i, -v)
	}
	var dx mat.VecDense
	if err := dx.SolveVec(jac, rhs); err != nil {
		var bad mat.Condition
		if !errors.As(err, &bad) || math.IsInf(float64(bad), 1) {
			return nil, ErrNoConvergence
		}
	}
	return dx.RawVector().Data, nil
}

// jacobian returns the derivatives at x, where the residual is r, by one-sided
// differences, taken to the other side where the first lies outside the region.
func jacobian(f System, x, r, step []float64) (Jacobian, error) {
	n := len(x)
	jac := mat.NewDense(n, n, nil)
	for j := range n {
		h := step[j]
		q, err := f(shifted(x, j, h))
		if err != nil {
			h = -h
			if q, err = f(shifted(x, j, h)); err != nil {
				return nil, err
			}
		}
		for i := range n {
			jac.Set(i, j, (q[i]-r[i])/h)
		}
	}
	return jac, nil
}

func shifted(x []float64, j int, h float64) []float64 {
	y := append([]float64(nil), x...)
	y[j] += h
	return y
}

// backtrack tries x + t dx for t = 1, ½, ¼ … until the residual falls.
func backtrack(f System, x, dx, r []float64) (next, nr []float64, ok bool) {
	before := Largest(r)
	for t := 1.0; t > 1e-6; t /= 2 {
		y := make([]float64, len(x))
		for i := range x {
			y[i] = x[i] + float64(t*dx[i])
		}
		q, err := f(y)
		if err == nil && Largest(q) < before {
			return y, q, true
		}
	}
	return nil, nil, false
}

// Largest returns the largest magnitude in r, +Inf if any is NaN.
func Largest(r []float64) float64 {
	m := 0.0
	for _, v := range r {
		if math.IsNaN(v) {
			return math.Inf(1)
		}
		m = math.Max(m, math.Abs(v))
	}
	return m
}
