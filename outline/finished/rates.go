package finished

import (
	"gonum.org/v1/gonum/mat"

	"slingloft/outline/numeric"
)

// Rates is how the heights of a pose change, mm per mm, by the [Part] that gets
// longer, and mm per mm by which the weight moves to the left.
type Rates struct {
	Part  [Parts]Heights
	Aside Heights
}

// Rates returns how the heights of a pose of this hammock change with every part:
// the pose's equations, differentiated. It is much faster than to hang anew for each.
func (h Hammock) Rates(p Pose) (Rates, error) {
	r := h.run(p.aim)
	n := len(p.unknowns)
	jac := mat.NewDense(n, n, nil)
	moved := make([]Heights, n)
	for j, d := range r.differences(rateStep) {
		up, high, err := r.after(shifted(p.unknowns, j, d))
		if err != nil {
			return Rates{}, err
		}
		down, low, err := r.after(shifted(p.unknowns, j, -d))
		if err != nil {
			return Rates{}, err
		}
		for i := range n {
			jac.Set(i, j, (up[i]-down[i])/(2*d))
		}
		moved[j] = high.plus(low, -1).times(1 / (2 * d))
	}
	var lu mat.LU
	lu.Factorize(jac)
	per := func(more, less aim) (Heights, error) { return r.per(more, less, &lu, moved, p.unknowns) }
	var out Rates
	for k := range out.Part {
		part := Part(k)
		more, less := p.aim, p.aim
		more.change = more.change.Plus(part.Change(1), nudge)
		less.change = less.change.Plus(part.Change(1), -nudge)
		var err error
		if out.Part[k], err = per(more, less); err != nil {
			return Rates{}, err
		}
	}
	more, less := p.aim, p.aim
	more.weight.Aside += nudge
	less.weight.Aside -= nudge
	var err error
	out.Aside, err = per(more, less)
	return out, err
}

// nudge is half the difference in a length for a rate, mm: its square, over the
// lengths of a hammock, is lost against one, and rounding over it too.
const nudge = 0.01

// per returns the rates of the heights between two aims that differ by twice a
// nudge: what they change at once, and what the unknowns, which have to close the
// figure again, change.
func (r *run) per(more, less aim, lu *mat.LU, moved []Heights, x []float64) (Heights, error) {
	a, b := *r, *r
	a.aim, b.aim = more, less
	up, high, err := a.after(x)
	if err != nil {
		return Heights{}, err
	}
	down, low, err := b.after(x)
	if err != nil {
		return Heights{}, err
	}
	opened := mat.NewVecDense(len(x), nil)
	for i := range up {
		opened.SetVec(i, -(up[i]-down[i])/(2*nudge))
	}
	var dx mat.VecDense
	if err := lu.SolveVecTo(&dx, false, opened); err != nil {
		return Heights{}, numeric.ErrNoConvergence
	}
	out := high.plus(low, -1).times(1 / (2 * nudge))
	for j, m := range moved {
		out = out.plus(m, dx.AtVec(j))
	}
	return out, nil
}

// after returns the gaps and the heights with the given unknowns.
func (r *run) after(x []float64) ([]float64, Heights, error) {
	var p Pose
	miss, err := r.hang(x, &p)
	if err != nil {
		return nil, Heights{}, err
	}
	p.Level = p.level(r.Shape.Problem.Bed.Span / 2)
	return miss, p.Heights(), nil
}

func shifted(x []float64, j int, by float64) []float64 {
	y := append([]float64(nil), x...)
	y[j] += by
	return y
}

func (a Heights) plus(b Heights, k float64) Heights {
	a.Middle += float64(k * b.Middle)
	for e := range a.Tips {
		a.Apex[e] += float64(k * b.Apex[e])
		for s := range a.Tips[e] {
			a.Tips[e][s] += float64(k * b.Tips[e][s])
		}
	}
	return a
}

func (a Heights) times(k float64) Heights { return Heights{}.plus(a, k) }
