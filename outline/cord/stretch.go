package cord

import (
	"gonum.org/v1/gonum/integrate/quad"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

// Stretch returns by how much the cord from station a to station b, a < b, is
// longer under the sleeper than under a pull, N, of 0 than without load, mm:
// ∫ (T − pull) ds / EA along one side's cord. A stiffness EA of 0 gives 0. The strain is small, so that its
// square is left out (0.03 mm on a side cord at 0.5 %). Where a cord is filled
// by a tail both carry, so that the true value is the smaller by some tenths of
// what falls on those lengths.
func Stretch(s *hung.Shape, a, b float64, stiffness quantity.Newtons, pull float64) float64 {
	if stiffness == 0 {
		return 0
	}
	// ds = T / H dx, since T = H ds/dx.
	f := func(x float64) float64 {
		t := s.At(x).Tension
		return t * (t - pull) / s.Thrust
	}
	const panels, points = 48, 8
	marks := []float64{a}
	for _, x := range s.Stations(panels) {
		if x > a && x < b {
			marks = append(marks, x)
		}
	}
	marks = append(marks, b)
	sum := 0.0
	for i := 1; i < len(marks); i++ {
		sum += quad.Fixed(f, marks[i-1], marks[i], points, quad.Legendre{}, 0)
	}
	return sum / float64(stiffness)
}

// set returns by how much a cord of the given length is cut shorter, since the first
// load stretches it for good, mm.
func (r rigger) set(long float64) float64 {
	if r.design.Accuracy.FirstLoad != design.CutSet {
		return 0
	}
	return r.design.Accuracy.Set * long
}

// legStretch returns the stretch of one leg from bar tip to apex beyond that of a pull, mm.
func legStretch(s *hung.Shape, e hung.End, stiffness quantity.Newtons, pull float64) float64 {
	tip := e.Sign() * s.Problem.Bed.Span / 2
	apex := s.Ends[e].ApexX
	return Stretch(s, min(tip, apex), max(tip, apex), stiffness, pull)
}
