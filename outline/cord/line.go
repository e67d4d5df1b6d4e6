package cord

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// line returns a straight line with an eye at each end, of so many mm from hook to
// hook and pulled with a tension, N: a hang line, or a ridge line that nothing pulls.
func (r rigger) line(part Part, kind design.Cord, long, tension float64) (Cord, error) {
	sp := r.splice
	bury := sp.EyeBury(kind.Diameter)
	loop, reach, err := sp.Eye(kind.Diameter)
	if err != nil {
		return Cord{}, err
	}
	stretch, set := 0.0, 0.0
	if ea := r.stiffness(kind); ea > 0 && tension > 0 {
		stretch = (tension - LightPull) * long / float64(ea)
	}
	if tension > 0 {
		set = r.set(long)
	}
	plain := long - stretch - set - 2*(reach+bury)
	if plain < 0 {
		return Cord{}, r.overlap(part, -plain, math.Floor((long-stretch-set)/2-reach))
	}
	c := Cord{Part: part, Count: 1, Kind: kind, Runs: 1, Datum: Spot{Kind: Throat, On: NearEye}}
	c.Terms = compact([]Term{
		{HookToHook, long},
		{OverEyesBuries, 2 * sp.Kappa * bury},
		{EyesLoops, 2 * loop},
		{EyesCrossings, 2 * sp.Loss},
		{EyesBuries, 2 * bury},
		{LessEyesReach, -2 * reach},
		{LessStretch, -stretch},
		{LessSet, -set},
	})
	c.Cut = sum(c.Terms)

	eye := eyeSize{bury, sp.Taper(bury), loop, reach}
	var ch chain
	ch.startEye(NearEye, eye, sp, 1)
	ch.add(zone{raw: plain})
	ch.eye(FarEye, eye, sp, 2)
	c.Marks = ch.list(c.Datum)
	c.Steps = []Step{
		{MakeNearEye, []Reading{ch.reading(Spot{Kind: Throat, On: NearEye}, Spot{Kind: Throat, On: FarEye}, 1)}},
		{MakeFarEye,
			[]Reading{ch.reading(Spot{Kind: Throat, On: NearEye}, Spot{Kind: Throat, On: FarEye}, 2),
				ch.hook(Spot{Kind: Throat, On: NearEye}, Spot{Kind: Throat, On: FarEye}, reach, 2)}},
	}
	return c, nil
}

// startEye puts an eye at the start of the cord: the mirror of [chain.eye].
func (c *chain) startEye(on Branch, s eyeSize, sp Splicing, splice int) {
	c.tail(on, s.bury, s.taper, splice, false)
	c.add(zone{raw: s.loop})
	c.add(zone{raw: sp.Loss, lost: sp.Loss, splice: splice})
	c.mark(Spot{Kind: Throat, On: on}, 0)
	c.host(s.bury, sp.Kappa, splice)
	c.mark(Spot{Kind: BuryEnd, On: on}, 0)
}

// overlap is the fault of a line whose two eyes overlap by so many mm; bury is the
// longest with which they would not.
func (r rigger) overlap(part Part, by, bury float64) error {
	const useful = 40.0 // mm; a shorter bury is no advice
	e := &hung.Impossible{Key: design.KeySpliceEyeBury,
		Found: design.Found(design.EyesOverlap, part), Bound: design.AtMost, Limit: bury}
	if d := r.design.Hang.Distance; bury < useful && d > 0 {
		// Each line grows by at least half of what the supports move apart.
		e.Key, e.Found = design.KeyHangDistance, design.Found(design.NoRoomForEyes, part)
		e.Bound, e.Limit = design.AtLeast, math.Ceil(d+2*by)
	}
	return e
}
