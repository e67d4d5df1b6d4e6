package hung

import (
	"errors"
	"math"

	"slingloft/outline/design"
	"slingloft/outline/numeric"
)

// candidate is what the solver tries next: a thrust and the cord's slopes at the head tip, with
// the curves that follow from them.
type candidate struct {
	thrust float64
	dy, dz float64 // slopes along x in the bay at the head bar's tip
	bay    []segment
	end    state // at the foot bar's tip
	tails  [2]tail
}

// solver holds what stays the same from candidate to candidate.
type solver struct {
	p      *Problem
	tables numeric.Panel
	head   Section // at the head bar
	start  state   // at the head bar's tip, slopes unset
	marks  []float64
	breaks []float64
}

// bayPanels is how many panels the bay is divided into at least. With eight
// points each the residual of the equilibrium is then below 1e-9.
const bayPanels = 12

func newSolver(p *Problem) (*solver, error) {
	s := &solver{p: p, tables: numeric.NewPanel()}
	half := p.Bed.HeadBar / 2
	drop, err := headDrop(p)
	if err != nil {
		return nil, err
	}
	x := -p.Bed.Span / 2
	s.head, err = p.section(x, half, drop+p.Bottom(x))
	if err != nil {
		return nil, &Impossible{Key: p.Bed.HeadKey(), Found: design.Found(design.SectionMissing), Cause: err}
	}
	if b := &p.Bed; b.Second == design.SameWall && b.FootBar != b.HeadBar && s.head.upright() {
		return nil, &Impossible{Key: design.KeyBedHeadBar, Found: design.Found(design.WallsUpright), Bound: design.AtLeast,
			Limit: 2 * wider * s.head.Radius}
	}
	s.start = state{y: half, z: drop + p.Bottom(x)}
	s.breaks = append(p.Load.Breaks(), 0)
	sortFloats(s.breaks)
	s.marks = stations(x, -x, s.breaks, p.Bed.Span/bayPanels)
	return s, nil
}

// wider is by what a bar is longer than the round under it is wide, so that the walls lean
// out enough for a foot bar of another length: own choice, since what else the bed asks
// for decides how much it takes.
const wider = 1.05

// headDrop returns the height of the cords at the head bar, from the girth there
// if that is what is given.
func headDrop(p *Problem) (float64, error) {
	b := &p.Bed
	if b.Head == design.Drop {
		return b.HeadValue, nil
	}
	return DropOfGirth(b.HeadValue, b.HeadBar/2, b.HeadRadius)
}

// DropOfGirth returns the cord height at which a section with the given half
// opening and underbody radius has the given girth, all mm. The girth rises with
// the height, so that there is one answer at most; where there is none the error
// is an [Impossible] for bed.head_girth.
func DropOfGirth(girth, half, radius float64) (float64, error) {
	over := func(h float64) float64 {
		s, err := NewSection(half, h, radius)
		if err != nil {
			return -1 // only at the low end, where the wall lies flat
		}
		return s.Girth() - girth
	}
	const flattest = 1e-3
	high := girth/2 + radius
	for ; high > flattest; high *= 0.98 {
		if _, err := NewSection(half, high, radius); err == nil {
			break
		}
	}
	h, err := numeric.Root(over, flattest, high, 1e-11)
	if err != nil {
		return 0, &Impossible{Key: design.KeyBedHeadGirth, Found: design.Found(design.GirthFitsNone),
			Bound: design.AtLeast, Limit: 2 * half * 1.02}
	}
	return h, nil
}

// hang integrates the bay and, where a condition looks at them, the tails.
func (s *solver) hang(thrust, dy, dz float64, withTails bool) (candidate, error) {
	t := candidate{thrust: thrust, dy: dy, dz: dz}
	r := integrator{&s.tables, thrust, s.p.pull}
	from := s.start
	from.dy, from.dz = dy, dz
	var err error
	if t.bay, t.end, err = r.path(from, s.marks); err != nil {
		return t, err
	}
	if withTails {
		for _, e := range [2]End{Head, Foot} {
			if t.tails[e], err = s.tail(&t, e); err != nil {
				return t, err
			}
		}
	}
	return t, nil
}

// levels reports whether a second condition asks for level apexes or anchors.
func levels(s design.Second) bool { return s == design.LevelHooks || s == design.LevelAnchors }

// needsTails reports whether a condition of the bay looks at the tails.
func (s *solver) needsTails() bool {
	b := &s.p.Bed
	return levels(b.Second) || b.Control == design.HeadAngle || b.Control == design.FootAngle
}

// mmPerRad is what a residual in radians is multiplied by, so that it weighs as much
// as one in mm.
const mmPerRad = 1000

// closing returns by how much the bay misses the foot bar's tip, in mm, and the
// second condition.
func (s *solver) closing(t *candidate) ([]float64, error) {
	b := &s.p.Bed
	x := b.Span / 2
	miss := t.end.y - b.FootBar/2
	if b.Second == design.FootDrop {
		return []float64{miss, t.end.z - s.p.Bottom(x) - b.SecondValue}, nil
	}
	if levels(b.Second) {
		head, foot := &t.tails[Head], &t.tails[Foot]
		run := s.hangRun(t)
		return []float64{miss, head.apexZ - foot.apexZ + float64(run*head.slope) - float64(run*foot.slope)}, nil
	}
	foot, err := s.p.section(x, t.end.y, t.end.z)
	if err != nil {
		return nil, err
	}
	if b.Second == design.FootGirth {
		return []float64{miss, foot.Girth() - b.SecondValue}, nil
	}
	return []float64{miss, mmPerRad * (foot.Wall - s.head.Wall)}, nil
}

// hangRun returns the level length of each hang line that the level is looked at
// past, mm; 0 where the apexes are to be level.
func (s *solver) hangRun(t *candidate) float64 {
	if s.p.Anchors == 0 {
		return 0
	}
	return max(0, s.p.Anchors-(t.tails[Foot].apexX-t.tails[Head].apexX)) / 2
}

// controlled returns the measure that the control fixes, in its own unit.
func (s *solver) controlled(t *candidate) float64 {
	switch s.p.Bed.Control {
	case design.SideDepth:
		return s.sideDepth(t)
	case design.HeadAngle:
		return math.Atan(t.tails[Head].slope)
	case design.FootAngle:
		return math.Atan(t.tails[Foot].slope)
	}
	return t.thrust
}

// guess returns slopes at the head tip for a thrust, from the bay as a beam
// between walls at the head bar's angle.
func (s *solver) guess(thrust float64) (dy, dz float64) {
	b := &s.p.Bed
	left, _ := s.beam()
	cot := s.head.cot()
	rise := (b.FootBar - b.HeadBar) / 2 / cot
	switch b.Second {
	case design.FootDrop:
		rise = b.SecondValue + s.p.Bottom(b.Span/2) - s.start.z
	case design.FootGirth:
		if h, err := DropOfGirth(b.SecondValue, b.FootBar/2, b.FootRadius); err == nil {
			rise = h + s.p.Bottom(b.Span/2) - s.start.z
		}
	}
	dz = rise/b.Span - left/(2*thrust)
	dy = (b.FootBar-b.HeadBar)/2/b.Span - left/(2*thrust)*cot
	return dy, dz
}

// beam returns the reaction at the head bar of the bay's load as a simple beam,
// N, and the largest bending moment, N mm.
func (s *solver) beam() (left, moment float64) {
	half := s.p.Bed.Span / 2
	cloth := s.p.ClothWeight * s.head.Girth()
	const n = 400
	dx := 2 * half / n
	w := make([]float64, n)
	for i := range w {
		x := -half + (float64(i)+0.5)*dx
		w[i] = (s.p.Load.At(x) + cloth) * dx
		left += w[i] * (half - x) / (2 * half)
	}
	shear, m := left, 0.0
	for i := range w {
		shear -= w[i]
		m += shear * dx
		moment = max(moment, m)
	}
	return left, moment
}

// atThrust solves for the slopes at one thrust, starting from near.
func (s *solver) atThrust(thrust, dy, dz float64) (candidate, error) {
	f := func(x []float64) ([]float64, error) {
		t, err := s.hang(thrust, x[0], x[1], levels(s.p.Bed.Second))
		if err != nil {
			return nil, err
		}
		return s.closing(&t)
	}
	x, err := numeric.Solve(f, []float64{dy, dz}, []float64{1e-6, 1e-6}, tolerance)
	if err != nil {
		return candidate{}, err
	}
	return s.hang(thrust, x[0], x[1], s.needsTails())
}

// tolerance of every residual, mm (or rad / [mmPerRad]): a millionth of a micron.
const tolerance = 1e-9

// direct solves for thrust and slopes together, from a beam's estimate. Where a
// condition looks at the tails their slopes at the tips are unknowns as well.
func (s *solver) direct(thrust float64) (candidate, error) {
	dy, dz := s.guess(thrust)
	start, step := []float64{1, dy, dz}, []float64{1e-6, 1e-6, 1e-6}
	tails := s.needsTails()
	if tails {
		for _, e := range [2]End{Head, Foot} {
			start, step = append(start, s.steepness(e)), append(step, 1e-6)
		}
	}
	want, unit := float64(s.p.Bed.ControlValue), s.controlUnit()
	f := func(x []float64) ([]float64, error) {
		if x[0] <= 0 {
			return nil, numeric.ErrNotFinite
		}
		t, err := s.hang(thrust*x[0], x[1], x[2], false)
		if err != nil {
			return nil, err
		}
		var legs []float64
		if tails {
			if legs, err = s.hangTails(&t, x[3:]); err != nil {
				return nil, err
			}
		}
		r, err := s.closing(&t)
		return append(append(r, unit*(s.controlled(&t)-want)), legs...), err
	}
	x, err := numeric.Solve(f, start, step, tolerance)
	if err != nil {
		return candidate{}, err
	}
	return s.hang(thrust*x[0], x[1], x[2], false)
}

// steepness estimates the inward slope of an end's leg at the tip: half the bar
// over the run that the leg's length leaves.
func (s *solver) steepness(e End) float64 {
	half, leg := s.p.bar(e)/2, s.p.leg(e)
	return half / math.Sqrt(max(leg*leg-half*half, leg*leg/16))
}

// hangTails integrates both tails with the given inward slopes and returns by how
// much their cords miss the legs' lengths, mm.
func (s *solver) hangTails(t *candidate, inward []float64) ([]float64, error) {
	miss := make([]float64, 2)
	for _, e := range [2]End{Head, Foot} {
		try := s.tailTry(t, e)
		got, short, err := try(inward[e])
		if err != nil {
			return nil, err
		}
		t.tails[e], miss[e] = got, short
	}
	return miss, nil
}

func (s *solver) controlUnit() float64 {
	switch s.p.Bed.Control {
	case design.HeadAngle, design.FootAngle:
		return mmPerRad
	case design.Thrust:
		return mmPerRad / float64(s.p.Bed.ControlValue)
	}
	return 1
}

// firstThrust estimates the thrust that the control asks for.
func (s *solver) firstThrust() float64 {
	b := &s.p.Bed
	_, moment := s.beam()
	switch b.Control {
	case design.Thrust:
		return float64(b.ControlValue)
	case design.HeadAngle, design.FootAngle:
		force, _ := s.p.Load.Total()
		return force / 4 / math.Tan(float64(b.ControlValue))
	}
	return moment / (2 * math.Sin(s.head.Wall) * float64(b.ControlValue))
}

// solve finds the candidate that meets every condition: at once from the estimate
// or, where that fails, by walking the thrust down from a nearly straight cord
// and halving in on the control.
func (s *solver) solve() (candidate, error) {
	thrust := s.firstThrust()
	if t, err := s.direct(thrust); err == nil {
		return t, nil
	}
	return s.walk(thrust)
}

// walk follows the shapes from a high thrust down. Every measure that a control
// fixes grows as the thrust falls, the thrust itself apart.
func (s *solver) walk(thrust float64) (candidate, error) {
	b := &s.p.Bed
	if b.Control == design.Thrust {
		return s.walkTo(float64(b.ControlValue))
	}
	high := 3 * thrust
	near, err := s.firstOnWalk(&high)
	if err != nil {
		return candidate{}, err
	}
	if s.controlled(&near) > float64(b.ControlValue) {
		return candidate{}, &Impossible{Key: b.ControlKey(), Found: design.Found(design.ShapeTooFlat),
			Bound: design.AtLeast, Limit: s.controlled(&near)}
	}
	const slower = 0.88
	for next := high * slower; ; next *= slower {
		t, err := s.atThrust(next, near.dy/slower, near.dz/slower)
		if err != nil {
			t, err = s.atThrust(next, near.dy, near.dz)
		}
		if err != nil || next < thrust/50 {
			return candidate{}, s.limit(near, next, err)
		}
		if s.controlled(&t) >= float64(b.ControlValue) {
			return s.between(t, near)
		}
		near = t
	}
}

// firstOnWalk finds a thrust high enough for a shape to start from.
func (s *solver) firstOnWalk(high *float64) (candidate, error) {
	var first error
	for range 12 {
		t, err := s.atThrust(*high, 0, 0)
		if err == nil {
			return t, nil
		}
		dy, dz := s.guess(*high)
		if t, err = s.atThrust(*high, dy, dz); err == nil {
			return t, nil
		}
		if first == nil {
			first = err
		}
		*high *= 2
	}
	return candidate{}, s.blame(first)
}

// walkTo finds the shape at a given thrust by following it down.
func (s *solver) walkTo(thrust float64) (candidate, error) {
	high := 8 * thrust
	near, err := s.firstOnWalk(&high)
	if err != nil {
		return candidate{}, err
	}
	const slower = 0.88
	for next := high; next > thrust; {
		next = max(next*slower, thrust)
		t, err := s.atThrust(next, near.dy/slower, near.dz/slower)
		if err != nil {
			return candidate{}, &Impossible{Key: design.KeyBedThrust, Found: design.Found(design.CordsTooDeep),
				Bound: design.AtLeast, Limit: near.thrust, Cause: ofUse(err)}
		}
		near = t
	}
	return near, nil
}

// between halves in on the control between a candidate that has too much of it and
// one that has too little.
func (s *solver) between(much, little candidate) (candidate, error) {
	var failed error
	best := little
	miss := func(h float64) float64 {
		k := little.thrust / h
		t, err := s.atThrust(h, little.dy*k, little.dz*k)
		if err != nil {
			if t, err = s.atThrust(h, much.dy, much.dz); err != nil {
				failed = err
				return math.NaN()
			}
		}
		best = t
		return s.controlled(&t) - float64(s.p.Bed.ControlValue)
	}
	h, err := numeric.Root(miss, much.thrust, little.thrust, 1e-12*little.thrust)
	if failed != nil {
		return candidate{}, s.blame(failed)
	}
	if err != nil {
		return candidate{}, err
	}
	if best.thrust != h {
		miss(h)
	}
	return best, s.blame(failed)
}

// limit returns the error for a control that asks for more than the bay can
// have; near is the last shape that exists and past a thrust that is too low.
func (s *solver) limit(near candidate, past float64, cause error) error {
	for range 8 {
		h := (near.thrust + past) / 2
		t, err := s.atThrust(h, near.dy, near.dz)
		if err != nil {
			past, cause = h, err
			continue
		}
		near = t
	}
	cause = ofUse(cause)
	// A little inside the limit, so that the value named does work.
	inside := 0.995
	if s.needsTails() {
		inside = 0.98 // an angle's limit is less sharply found
	}
	return &Impossible{Key: s.p.Bed.ControlKey(), Found: design.Found(design.MoreThanBayHas),
		Bound: design.AtMost, Limit: s.controlled(&near) * inside, Cause: cause}
}

// ofUse returns a cause that a maker can make something of, nil for the search's
// own trouble.
func ofUse(cause error) error {
	var place SectionError
	if errors.As(cause, &place) {
		return cause
	}
	return nil
}

// blame names the key to look at for a fault met where no thrust helps.
func (s *solver) blame(err error) error {
	if err == nil {
		return nil
	}
	if bad, ok := err.(*Impossible); ok {
		return bad
	}
	return &Impossible{Key: s.p.Bed.SecondKey(), Found: design.Found(design.NoShapeMeets), Cause: err}
}
