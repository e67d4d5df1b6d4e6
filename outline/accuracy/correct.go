package accuracy

import (
	"errors"

	"gonum.org/v1/gonum/mat"

	"slingloft/outline/bed"
	"slingloft/outline/finished"
)

// Correction is what to change on a hammock that hangs.
type Correction struct {
	Line [2]float64 `json:"line"` // hang lines, by [hung.End], mm; positive: longer
	Leg  [2]float64 `json:"leg"`  // one leg of each end, negative: shorter
	Side [2]string  `json:"side"` // which one: "left" or "right", of one who lies on the back
}

// errSingular is met where heights do not depend on the lengths, which no hammock
// that hangs shows.
var errSingular = errors.New("the bar tips' heights do not follow the lengths")

// Correct returns the changes that bring the four bar tips to their designed
// heights, from how much higher each stands than designed, mm, by [hung.End] and
// [bed.Side], measured with the sleeper in the bed. At each end the longer leg
// is taken in, since a spliced leg can be shortened and not let out; hang lines do
// the rest.
func Correct(h finished.Hammock, w finished.Weight, high [2][2]float64) (Correction, error) {
	var sides [2]bed.Side
	c, err := solve(h, w, high, sides)
	if err != nil {
		return c, err
	}
	for e := range sides {
		if c.Leg[e] > 0 {
			sides[e] = bed.Right
		}
	}
	return solve(h, w, high, sides)
}

// solve finds the changes of both hang lines and of one given leg at each end.
func solve(h finished.Hammock, w finished.Weight, high [2][2]float64, sides [2]bed.Side) (Correction, error) {
	var out Correction
	var unknowns [4]finished.Change
	for e, s := range sides {
		out.Side[e] = [2]string{"left", "right"}[s]
		unknowns[e].Line[e] = step
		unknowns[2+e].Leg[e][s] = step
	}
	rates := mat.NewDense(4, 4, nil)
	wanted := mat.NewVecDense(4, nil)
	for k, u := range unknowns {
		more, err := h.Hang(u, w)
		if err != nil {
			return out, err
		}
		less, err := h.Hang(u.Times(-1), w)
		if err != nil {
			return out, err
		}
		for i := range 4 {
			e, s := i/2, i%2
			rates.Set(i, k, (more.Tips[e][s].Z-less.Tips[e][s].Z)/(2*step))
			wanted.SetVec(i, -high[e][s])
		}
	}
	var x mat.VecDense
	if err := x.SolveVec(rates, wanted); err != nil {
		return out, errSingular
	}
	for e := range sides {
		out.Line[e], out.Leg[e] = x.AtVec(e), x.AtVec(2+e)
	}
	return out, nil
}
