package finished

import (
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
// which is the faster the nearer that is.
func (h Hammock) HangFrom(p Pose, c Change, w Weight) (Pose, error) {
	return h.walk(p.aim, p.unknowns, aim{c, w})
}

// walk goes from one pose, whose unknowns are x, to another, in as few strides as
// will do.
func (h *Hammock) walk(from aim, x []float64, to aim) (Pose, error) {
	const smallest = 1.0 / 64
	for done, stride := 0.0, 1.0; done < 1; {
		next := min(done+stride, 1)
		r := h.run(between(from, to, next))
		y, err := numeric.Solve(r.misses, x, r.differences(), tolerance)
		switch {
		case err == nil:
			x, done = y, next
		case stride > smallest:
			stride /= 2
		default:
			return Pose{}, err
		}
	}
	return h.run(to).pose(x)
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
