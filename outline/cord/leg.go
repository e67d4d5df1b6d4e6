package cord

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// leg returns a builder for one end's legs, from the tail that goes into the
// side cord to the tail of the eye.
func (r rigger) leg(e hung.End) func() (Cord, error) {
	return func() (Cord, error) { return r.legAt(e) }
}

func (r rigger) legAt(e hung.End) (Cord, error) {
	sp, kind := r.splice, r.design.Leg
	own, taken := sp.Bury(kind.Diameter), sp.Bury(r.design.Side.Diameter)
	eyeBury := sp.EyeBury(kind.Diameter)
	loop, reach, err := sp.Eye(kind.Diameter)
	if err != nil {
		return Cord{}, err
	}
	spread, err := sp.Spread(kind.Diameter)
	if err != nil {
		return Cord{}, err
	}
	long := r.shape.Ends[e].Leg
	stretch := legStretch(r.shape, e, r.stiffness(kind), LightPull)
	set := r.set(long)
	plain := long - stretch - set + spread/2 - reach - sp.Gap/2 - taken - eyeBury
	if plain < 0 {
		return Cord{}, &hung.Impossible{Key: design.LegKey(e),
			Found: design.Found(design.LegHoldsNoEye),
			Bound: design.AtLeast, Limit: math.Ceil(long - plain)}
	}
	c := Cord{Part: LegAt(e), Count: 2, Kind: kind, Runs: 1, Datum: Spot{Kind: Tip}}
	c.Terms = compact([]Term{
		{TipToHook, long},
		{BuryInSide, own},
		{TipGapHalf, sp.Gap / 2},
		{OverSideBury, sp.Kappa * taken},
		{OverEyeOwnBury, sp.Kappa * eyeBury},
		{EyeLoop, loop},
		{EyeCrossing, sp.Loss},
		{EyeOwnBury, eyeBury},
		{LessEyeReach, -reach},
		{GapSpread, spread / 2},
		{LessStretch, -stretch},
		{LessSet, -set},
	})
	c.Cut = sum(c.Terms)

	var ch chain
	ch.tail(InSide, own, sp.Taper(own), 3, false)
	ch.mark(Spot{Kind: Tip}, sp.Gap/2)
	ch.add(zone{raw: sp.Gap})
	ch.mark(Spot{Kind: Entry}, 0)
	ch.host(taken, sp.Kappa, 2)
	ch.mark(Spot{Kind: BuryEnd}, 0)
	ch.add(zone{raw: plain})
	ch.eye(OfEye, eyeSize{eyeBury, sp.Taper(eyeBury), loop, reach}, sp, 1)
	c.Marks = ch.list(c.Datum)
	c.Steps = []Step{
		{MakeEye,
			[]Reading{ch.reading(Spot{Kind: Entry}, Spot{Kind: Throat, On: OfEye}, 1),
				ch.hook(Spot{Kind: Entry}, Spot{Kind: Throat, On: OfEye}, reach, 1)}},
		{DrawSideTail,
			[]Reading{ch.reading(Spot{Kind: Tip}, Spot{Kind: Throat, On: OfEye}, 2),
				ch.hook(Spot{Kind: Tip}, Spot{Kind: Throat, On: OfEye}, reach, 2)}},
	}
	return c, nil
}

// eyeSize holds one eye's measures, mm.
type eyeSize struct{ bury, taper, loop, reach float64 }

// eye puts an eye at the end of the cord: the length that takes its tail, its
// crossing, its loop and the tail.
func (c *chain) eye(on Branch, s eyeSize, sp Splicing, splice int) {
	c.mark(Spot{Kind: BuryEnd, On: on}, 0)
	c.host(s.bury, sp.Kappa, splice)
	c.mark(Spot{Kind: Throat, On: on}, 0)
	c.marks[len(c.marks)-1].made = splice
	c.add(zone{raw: sp.Loss, lost: sp.Loss, splice: splice})
	c.add(zone{raw: s.loop})
	c.tail(on, s.bury, s.taper, splice, true)
}

// hook returns the reading from a mark to the centre of the hook that lies reach
// mm past an eye's throat. Before the splice that makes the eye there is none.
func (c *chain) hook(from, throat Spot, reach float64, splice int) Reading {
	r := c.reading(from, throat, splice)
	r.To = Spot{Kind: Hook}
	r.After += reach
	r.Before += reach
	if c.at(throat).made == splice {
		r.Before = 0
	}
	return r
}
