package finished

import (
	"math"

	"slingloft/outline/design"
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

// Error says in English where it was lost.
func (e *LostError) Error() string { return design.English().Found(e.Finding()) }

// Finding returns where it was lost.
func (e *LostError) Finding() design.Finding {
	return design.Found(design.LostAside, math.Abs(e.Aside), math.Abs(e.Turn)*180/math.Pi)
}

// Unwrap returns the cause.
func (e *LostError) Unwrap() error { return e.Cause }

// errOver is met where a bed does not lean to the side of its weight, or has turned
// past the upright: its rest lies elsewhere.
var errOver error = design.Broken(design.BedTurnsOver)

// walk goes from one pose, whose unknowns are x, to another, in as few strides as
// will do, but with the weight moving aside by little enough in each that it cannot
// step over a place where the bed turns over.
func (h *Hammock) walk(from aim, x []float64, to aim) (Pose, error) {
	const (
		smallest = 1.0 / 64
		aside    = 35.0 // mm
	)
	t := trail{Hammock: h, from: from, to: to, at: x}
	longest := min(1, aside/math.Abs(to.weight.Aside-from.weight.Aside))
	stride := longest
	for t.done < 1 {
		next := t.done + stride
		if next > 1-smallest/2 {
			next = 1
		}
		err := t.reach(next, numeric.Follow)
		if err != nil && stride <= smallest {
			err = t.reach(next, thorough)
		}
		switch {
		case err == nil:
			stride = min(longest, 1.5*stride)
		case stride > smallest:
			stride /= 2
		case to.weight.Aside != 0 && t.last.Turn != 0:
			return Pose{}, &LostError{t.last.weight.Aside, t.last.Turn, err}
		default:
			return Pose{}, err
		}
	}
	return t.last, nil
}

// trail is a walk under way.
type trail struct {
	*Hammock
	from, to   aim
	done       float64 // part of the way
	at, before []float64
	step       float64          // part of the way from before to at
	jac        numeric.Jacobian // at the last pose
	last       Pose
}

// errJumped is met where a search lands on another branch of rest, which no bed that
// is loaded little by little comes to.
var errJumped error = design.Broken(design.NoRestNearby)

// search finds unknowns near others, as [numeric.Follow] does.
type search func(f numeric.System, start, step []float64, near numeric.Jacobian, tol float64) ([]float64, numeric.Jacobian, error)

// thorough is a search for where the last strides are as short as may be: it takes
// its time.
func thorough(f numeric.System, start, step []float64, _ numeric.Jacobian, tol float64) ([]float64, numeric.Jacobian, error) {
	x, err := numeric.Solve(f, start, step, tol)
	return x, nil, err
}

// reach walks to a part of the way.
func (t *trail) reach(next float64, find search) error {
	const rough = 1e-4 // mm, on the way
	r := t.run(between(t.from, t.to, next))
	guess := t.at
	if t.before != nil {
		// Along the line through the last two.
		k := (next - t.done) / t.step
		guess = make([]float64, len(t.at))
		for i := range guess {
			guess[i] = t.at[i] + float64(k*(t.at[i]-t.before[i]))
		}
	}
	left := rough
	if next == 1 {
		left = tolerance
	}
	x, jac, err := find(r.misses, guess, r.differences(searchStep), t.jac, left)
	if err == nil && next == 1 {
		x, err = numeric.Solve(r.misses, x, r.differences(searchStep), tolerance)
	}
	if err != nil {
		return err
	}
	p, err := r.pose(x)
	if err != nil {
		return err
	}
	if t.jumped(p) {
		return errJumped
	}
	if r.weight.Aside != 0 && !(math.Abs(p.Turn) < math.Pi/2 && p.Turn*r.weight.Aside < 0) && r.change == (Change{}) {
		return errOver
	}
	t.before, t.step, t.done = t.at, next-t.done, next
	t.at, t.jac, t.last = x, jac, p
	return nil
}

// jumped reports whether a pose lies on another branch than the one before: its thrust
// against its weight is another by much.
func (t *trail) jumped(p Pose) bool {
	const much = 1.5
	of := func(w Weight, x []float64) float64 {
		all, _ := w.Load.Total()
		return (x[0] + x[3]) / (all + t.own())
	}
	now, then := of(p.weight, p.unknowns), of(between(t.from, t.to, t.done).weight, t.at)
	return now > much*then || then > much*now
}

// own returns the weight of cloth and bars, N, roughly.
func (h *Hammock) own() float64 {
	s := h.Shape
	head, foot := s.TailEnds()
	return s.Problem.BarWeight[0] + s.Problem.BarWeight[1] + float64(s.Problem.ClothWeight*s.At(0).Section.Girth()*(foot-head))
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

// Steps for differences in the unknowns, as parts of the thrust. A search takes them to
// one side, and a narrow bed moves its far end by metres for a newton at the head: a
// step has to be so small that the curve between does not count. Rates take them to
// both sides, where it cancels, and rounding counts for more.
const (
	searchStep = 1e-7
	rateStep   = 1e-5
)

// differences returns the steps for differences in the unknowns, N.
func (r *run) differences(part float64) []float64 {
	d := make([]float64, 8)
	for i := range d {
		d[i] = part * r.Shape.Thrust
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
