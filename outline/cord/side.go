package cord

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// side returns the side cord with separate legs, from the head tail's end to the
// foot tail's end.
func (r rigger) side() (Cord, error) {
	s, sp, kind := r.shape, r.splice, r.design.Side
	own, taken := sp.Bury(kind.Diameter), sp.Bury(r.design.Leg.Diameter)
	spread, err := sp.Spread(kind.Diameter)
	if err != nil {
		return Cord{}, err
	}
	half := s.Problem.Bed.Span / 2
	ea := r.stiffness(kind)
	stretch := Stretch(s, -half, half, ea, LightPull)
	// Between the gaps' centres, measured on the spliced cord under the light pull.
	set := r.set(s.SideArc)
	between := s.SideArc - stretch - set + spread
	plain := between - sp.Gap - 2*taken
	if plain < 0 {
		return Cord{}, &hung.Impossible{Key: design.KeySpliceBury, Found: design.Found(design.BuriesOverlap),
			Bound: design.AtMost, Limit: math.Floor((between - sp.Gap) / 2)}
	}
	c := Cord{Part: SideCord, Count: 2, Kind: kind, Runs: 1, Datum: Spot{Kind: Tip, On: AtHead}}
	c.Terms = compact([]Term{
		{ArcTipToTip, s.SideArc},
		{BuriesInLegs, 2 * own},
		{TipGapHalves, sp.Gap},
		{OverLegsBuries, 2 * sp.Kappa * taken},
		{GapsSpread, spread},
		{LessStretch, -stretch},
		{LessSet, -set},
	})
	c.Cut = sum(c.Terms)

	var ch chain
	ch.tail(AtHead, own, sp.Taper(own), 1, false)
	ch.mark(Spot{Kind: Tip, On: AtHead}, sp.Gap/2)
	ch.add(zone{raw: sp.Gap})
	ch.mark(Spot{Kind: Entry, On: AtHead}, 0)
	ch.host(taken, sp.Kappa, 2)
	ch.mark(Spot{Kind: BuryEnd, On: AtHead}, 0)
	ch.add(zone{raw: plain})
	ch.mark(Spot{Kind: BuryEnd, On: AtFoot}, 0)
	ch.host(taken, sp.Kappa, 4)
	ch.mark(Spot{Kind: Entry, On: AtFoot}, 0)
	ch.mark(Spot{Kind: Tip, On: AtFoot}, sp.Gap/2)
	ch.add(zone{raw: sp.Gap})
	ch.tail(AtFoot, own, sp.Taper(own), 3, true)
	toMiddle := s.Arc(-half, r.mid)
	ch.middle(Spot{Kind: Tip, On: AtHead}, toMiddle-r.set(toMiddle)-Stretch(s, -half, r.mid, ea, LightPull)+spread/2)
	c.Marks = ch.list(c.Datum)
	c.Steps = []Step{
		{DrawHeadTails,
			[]Reading{ch.reading(Spot{Kind: Tip, On: AtHead}, Spot{Kind: Middle}, 2),
				ch.reading(Spot{Kind: Tip, On: AtHead}, Spot{Kind: Tip, On: AtFoot}, 2)}},
		{DrawFootTails,
			[]Reading{ch.reading(Spot{Kind: Middle}, Spot{Kind: Tip, On: AtFoot}, 4),
				ch.reading(Spot{Kind: Tip, On: AtHead}, Spot{Kind: Tip, On: AtFoot}, 4)}},
	}
	return c, nil
}

// middle puts the mark that meets the middle notch of the bed, after mm past the
// datum on the spliced cord, among the others by place.
func (c *chain) middle(datum Spot, after float64) {
	at := c.place(c.spliced(c.at(datum).at, all) + after)
	i := 0
	for i < len(c.marks) && c.marks[i].at < at {
		i++
	}
	c.marks = append(c.marks[:i], append([]marked{{Spot: Spot{Kind: Middle}, at: at}}, c.marks[i:]...)...)
}
