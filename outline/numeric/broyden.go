package numeric

import (
	"gonum.org/v1/gonum/mat"
)

// Jacobian is an estimate of the derivatives of a system that a solution leaves to the
// next one nearby; nil for none.
type Jacobian = *mat.Dense

// Follow finds x as [Solve] does, from a start near it, by Broyden's method: the
// Jacobian of the solution before, where there is one, is put right by each step's own
// outcome, and found by differences only where a step does not halve the residual, twice
// at most. That takes a fraction of the evaluations, and a start too far away is soon
// known for one. The solution is not polished: figures
// that are printed end with [Solve].
//
// C. G. Broyden, A class of methods for solving nonlinear simultaneous equations,
// Mathematics of Computation 19 (1965), 577–593.
func Follow(f System, start, step []float64, near Jacobian, tol float64) ([]float64, Jacobian, error) {
	const most, anew = 14, 2
	x := append([]float64(nil), start...)
	r, err := f(x)
	if err != nil {
		return nil, nil, err
	}
	jac, fresh := near, false
	found := 0 // by differences
	for range most {
		if Largest(r) <= tol {
			return x, jac, nil
		}
		if jac == nil {
			if found++; found > anew {
				break
			}
			if jac, err = jacobian(f, x, r, step); err != nil {
				return nil, nil, err
			}
			fresh = true
		}
		dx, ok := solved(jac, r)
		if ok {
			y := plus(x, dx)
			if q, err := f(y); err == nil && Largest(q) < Largest(r)/2 {
				jac, fresh = updated(jac, dx, q), false
				x, r = y, q
				continue
			}
		}
		if fresh {
			break
		}
		jac = nil
	}
	return nil, nil, ErrNoConvergence
}

// solved returns the step −J⁻¹ r, and whether there is one.
func solved(jac Jacobian, r []float64) ([]float64, bool) {
	rhs := mat.NewVecDense(len(r), nil)
	for i, v := range r {
		rhs.SetVec(i, -v)
	}
	var dx mat.VecDense
	if dx.SolveVec(jac, rhs) != nil || Largest(dx.RawVector().Data) > 1e12 {
		return nil, false
	}
	return dx.RawVector().Data, true
}

// updated returns the Jacobian after a whole step dx that left the residual q:
// J + q dxᵀ / dx².
func updated(jac Jacobian, dx, q []float64) Jacobian {
	long := 0.0
	for _, v := range dx {
		long += float64(v * v)
	}
	out := mat.DenseCopyOf(jac)
	for i := range q {
		for j := range dx {
			out.Set(i, j, out.At(i, j)+float64(q[i]*dx[j])/long)
		}
	}
	return out
}

func plus(x, dx []float64) []float64 {
	y := make([]float64, len(x))
	for i := range x {
		y[i] = x[i] + dx[i]
	}
	return y
}
