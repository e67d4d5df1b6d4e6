package cord

import (
	"fmt"
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// Sample sums up several measurements of one thing.
type Sample struct {
	N     int     `json:"n"`
	Mean  float64 `json:"mean"`
	SD    float64 `json:"sd"`    // standard deviation of the sample (n − 1), 0 for one
	Range float64 `json:"range"` // largest less smallest
}

// Trials is what test splices show.
type Trials struct {
	Kappa Sample `json:"kappa"` // κ, length lost by the host per length buried
	Loss  Sample `json:"loss"`  // k, length lost in an eye's crossing, mm
}

// Calibrate works out contraction and loss from test splices: κ = (before −
// after) / buried. A trial with nothing buried is a crossing alone and gives k =
// before − after. The error is a [hung.Impossible] for splice.trial.
func Calibrate(trials []design.Trial) (Trials, error) {
	var kappa, loss []float64
	for i, t := range trials {
		lost := t.Before - t.After
		if !(t.Before > 0) || !(t.After > 0) || !(t.Buried >= 0) || math.IsInf(t.Before+t.Buried, 0) {
			return Trials{}, trialFault(i, "lengths must be above zero")
		}
		if lost < 0 {
			return Trials{}, trialFault(i, "the host is longer after the splice than before it")
		}
		if t.Buried == 0 {
			loss = append(loss, lost)
			continue
		}
		if lost >= t.Buried {
			return Trials{}, trialFault(i, "the host lost more than was buried in it")
		}
		kappa = append(kappa, lost/t.Buried)
	}
	return Trials{sample(kappa), sample(loss)}, nil
}

func trialFault(i int, reason string) error {
	return &hung.Impossible{Key: design.KeySpliceTrial, Reason: fmt.Sprintf("trial %d: %s", i+1, reason), Limit: math.NaN()}
}

func sample(v []float64) Sample {
	s := Sample{N: len(v)}
	if s.N == 0 {
		return s
	}
	low, high := v[0], v[0]
	for _, x := range v {
		s.Mean += x / float64(s.N)
		low, high = min(low, x), max(high, x)
	}
	s.Range = high - low
	if s.N > 1 {
		for _, x := range v {
			s.SD += (x - s.Mean) * (x - s.Mean) / float64(s.N-1)
		}
		s.SD = math.Sqrt(s.SD)
	}
	return s
}
