package finished

import (
	"errors"
	"fmt"
	"math"

	"slingloft/outline/hung"
	"slingloft/outline/numeric"
)

// tolerance is what may remain of any gap in the closed figure, mm.
const tolerance = 1e-8

// Hang finds how the hammock hangs with the given changes under a weight. It walks
// there from the designed shape and fails with numeric.ErrNoConvergence, or the
// reason a section cannot be, where no such pose is found.
func (h Hammock) Hang(c Change, w Weight) (Pose, error) {
	design := aim{weight: Weight{Load: h.Shape.Problem.Load, Centre: w.Centre}}
	return h.walk(design, h.designed(), aim{c, w})
}

// HangFrom does as [Hammock.Hang], but walks there from a pose of the same hammock,
// which is the faster the nearer that is. The zero pose stands for the design.
func (h Hammock) HangFrom(p Pose, c Change, w Weight) (Pose, error) {
	if p.unknowns == nil {
		return h.Hang(c, w)
	}
	return h.walk(p.aim, p.unknowns, aim{c, w})
}

// LostError says how far a bed was followed on which the weight moves aside. Beyond, it
// turns over, or a cord goes slack.
type LostError struct {
	Aside float64 // of the weight, mm
	Turn  float64 // of the bed, rad
	Cause error
}

// Error says where it was lost.
func (e *LostError) Error() string {
	return fmt.Sprintf("with the weight more than %.0f mm aside, where the bed has turned by %.0f°, it is not found at rest",
		math.Abs(e.Aside), math.Abs(e.Turn)*180/math.Pi)
}

// Unwrap returns the cause.
func (e *LostError) Unwrap() error { return e.Cause }

// errOver is met where a bed does not lean to the side of its weight, or has turned
// past the upright: its rest lies elsewhere.
var errOver = errors.New("the bed turns over")

// walk goes from one pose, whose unknowns are x, to another, in as few strides as
// will do, but with the weight moving aside by little enough in each that it cannot
// step over a place where the bed turns over.
func (h *Hammock) walk(from aim, x []float64, to aim) (Pose, error) {
	const (
		smallest = 1.0 / 64
		aside    = 35.0 // mm
	)
	var last Pose
	stride := min(1, aside/math.Abs(to.weight.Aside-from.weight.Aside))
	for done := 0.0; done < 1; {
		next := done + stride
		if next > 1-smallest/2 {
			next = 1
		}
		r := h.run(between(from, to, next))
		y, p, err := r.solve(x)
		switch {
		case err == nil:
			x, done, last = y, next, p
		case stride > smallest:
			stride /= 2
		case to.weight.Aside != 0 && last.Turn != 0:
			return Pose{}, &LostError{last.weight.Aside, last.Turn, err}
		default:
			return Pose{}, err
		}
	}
	return last, nil
}

// solve finds the unknowns from ones nearby, and the pose.
func (r *run) solve(x []float64) ([]float64, Pose, error) {
	y, err := numeric.Solve(r.misses, x, r.differences(), tolerance)
	if err != nil {
		return nil, Pose{}, err
	}
	p, err := r.pose(y)
	if err == nil && r.weight.Aside != 0 && !(math.Abs(p.Turn) < math.Pi/2 && p.Turn*r.weight.Aside < 0) && r.change == (Change{}) {
		err = errOver
	}
	return y, p, err
}

// pose returns the pose of solved unknowns.
func (r *run) pose(x []float64) (Pose, error) {
	p := Pose{aim: r.aim, unknowns: x}
	if _, err := r.hang(x, &p); err != nil {
		return Pose{}, err
	}
	p.finish(r)
	return p, nil
}

// designed returns the unknowns of the designed shape.
func (h *Hammock) designed() []float64 {
	s := h.Shape
	q := s.At(s.Ends[hung.Head].TailX)
	return []float64{s.Thrust, s.Thrust * q.DY, s.Thrust * q.DZ, s.Thrust, -s.Thrust * q.DY, s.Thrust * q.DZ,
		s.Ends[hung.Head].BarCompression, s.Ends[hung.Foot].BarCompression}
}

// differences returns the steps for differences in the unknowns, N.
func (r *run) differences() []float64 {
	d := make([]float64, 8)
	for i := range d {
		d[i] = 1e-5 * r.Shape.Thrust
	}
	return d
}

func (r *run) misses(x []float64) ([]float64, error) {
	for _, v := range x {
		if math.IsNaN(v) {
			return nil, numeric.ErrNotFinite
		}
	}
	return r.hang(x, nil)
}
