package hung

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/numeric"
)

// tail is one end's cord from the bar's tip outwards: along the cloth, then
// straight to the apex.
type tail struct {
	path  []segment
	start state // at the tip, slopes outwards
	end   state // where the cloth's tail ends, slopes outwards
	endX  float64
	apexX float64 // station of the apex
	apexZ float64
	slope float64 // rise per horizontal mm at the apex, tan of the hang angle
	arc   float64 // cord from tip to apex, mm
}

// tail solves one end of a candidate for the slope at the tip with which the cord
// from tip to apex has its given length.
func (s *solver) tail(t *candidate, e End) (tail, error) {
	return fitTail(s.tailTry(t, e), e)
}

// tailTry returns the function that integrates an end's tail of a candidate from an
// inward slope at the tip, with how much the leg is longer than that.
func (s *solver) tailTry(t *candidate, e End) func(inward float64) (tail, float64, error) {
	p := s.p
	tip := s.start
	dz := -t.dz
	if e == Foot {
		tip, dz = t.end, t.end.dz
	}
	// The bar hangs from its tips: half its weight kinks each side's cord.
	tip.dz = dz + p.BarWeight[e]/(2*t.thrust)
	r := integrator{&s.tables, t.thrust, p.pull}
	marks := stations(e.Sign()*p.Bed.Span/2, p.TailEnd(e), s.breaks, p.Bed.Span/bayPanels)
	want := p.leg(e)
	return func(inward float64) (tail, float64, error) {
		start := tip
		start.dy = -inward
		got, err := r.tailFrom(start, marks, e.Sign())
		return got, want - got.arc, err
	}
}

// fitTail finds the inward slope with which try's tail has the wanted length. A
// steeper slope makes a shorter tail, until the cloth has no room.
func fitTail(try func(float64) (tail, float64, error), e End) (tail, error) {
	const flattest, steepest = 1e-6, 50.0
	spare := func(inward float64) float64 {
		_, short, err := try(inward)
		switch {
		case err == nil:
			return short
		case err == errNeverMeets:
			return -1e9
		default:
			return 1e9 // too steep: the section runs out of room
		}
	}
	inward, err := numeric.Root(spare, flattest, steepest, 1e-15)
	if err != nil {
		return tail{}, legFault(try, e)
	}
	got, short, err := try(inward)
	if err != nil || math.Abs(short) > 1e-6 {
		return tail{}, legFault(try, e)
	}
	return got, nil
}

// legFault returns the error for a leg that is too short for its tail, with the
// shortest length that has a shape.
func legFault(try func(float64) (tail, float64, error), e End) error {
	key := design.LegKey(e)
	lo, hi := 1e-6, 50.0
	var cause error
	least := math.NaN()
	for range 60 {
		mid := math.Sqrt(lo * hi)
		got, _, err := try(mid)
		switch err {
		case nil:
			lo, least = mid, got.arc
		case errNeverMeets:
			lo = mid
		default:
			hi, cause = mid, err
		}
	}
	if math.IsNaN(least) {
		return &Impossible{Key: design.TailKey(e), Found: design.Found(design.NoLegMeets), Cause: cause}
	}
	const beyond = 1.01 // a little beyond the limit, so that the value named does work
	return &Impossible{Key: key, Found: design.Found(design.LegUnderTail), Bound: design.AtLeast, Limit: least * beyond, Cause: cause}
}

// tailFrom integrates a tail from the tip and runs it on straight until both
// sides meet.
func (r *integrator) tailFrom(start state, marks []float64, sign float64) (tail, error) {
	t := tail{start: start, endX: marks[len(marks)-1]}
	var err error
	if t.path, t.end, err = r.path(start, marks); err != nil {
		return t, err
	}
	// The path asks inside its segments only; the section has to exist at the end too.
	if _, _, err := r.pull(t.endX, t.end.y, t.end.z); err != nil {
		return t, err
	}
	if t.end.dy >= 0 {
		return t, errNeverMeets
	}
	run := t.end.y / -t.end.dy
	for i := range t.path {
		t.arc += t.path[i].arc[nodes-1]
	}
	t.arc += run * math.Sqrt(1+t.end.dy*t.end.dy+t.end.dz*t.end.dz)
	t.apexX = t.endX + sign*run
	t.apexZ = t.end.z + t.end.dz*run
	t.slope = t.end.dz
	return t, nil
}
