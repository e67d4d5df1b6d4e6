package cord

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// Shown is what a design's test splices show, and what they leave open.
type Shown struct {
	Estimate
	Odd   []int   `json:"odd"`   // pieces, from 1, that are worth another look; see [Odd]
	Apart Further `json:"apart"` // what would tell bury and crossing apart; a count of 0: nothing is needed
}

// ShownBy reads the test splices of a design. The error is a [hung.Impossible] for
// splice.trial.
func ShownBy(d design.Design) (Shown, error) {
	said := Stated{Kappa: d.Splice.Contraction, Loss: d.Splice.EyeLoss, Scatter: d.Accuracy.Scatter, Reading: d.Accuracy.Reading}
	var pieces []TestPiece
	for _, t := range d.Splice.Trials {
		pieces = append(pieces, TestPiece(t))
	}
	e, err := EstimateOf(pieces, said)
	if err != nil {
		return Shown{}, err
	}
	odd, err := Odd(pieces, said)
	if err != nil {
		return Shown{}, err
	}
	out := Shown{Estimate: e, Odd: []int{}, Apart: e.Apart(pieces, said)}
	for _, i := range odd {
		out.Odd = append(out.Odd, i+1)
	}
	return out, nil
}

func trialFault(i int, why design.Rule) error {
	return &hung.Impossible{Key: design.KeySpliceTrial, Found: design.Found(design.OfTrial, i+1, design.Found(why)), Limit: math.NaN()}
}
