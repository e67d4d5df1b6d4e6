package cord

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// loop returns one side's endless loop: from the join at the channel's middle notch
// along one run to the foot hook, back along the other to the head hook and to
// the join, where each end is drawn into the other. The join lies in the middle
// because the pull is least there and the cord straightest. Each run carries
// half the pull; the bar's tips stand between the runs, held by seizings half a
// gap to either side.
func (r rigger) loop() (Cord, error) {
	s, sp, kind := r.shape, r.splice, r.design.Side
	bury := sp.Bury(kind.Diameter)
	spread, err := sp.Spread(kind.Diameter)
	if err != nil {
		return Cord{}, err
	}
	half := s.Problem.Bed.Span / 2
	pin := (sp.Hook + kind.Diameter) / 2
	// The lengths of one run under the light pull, both together under twice as much, from the join outwards.
	ea := 2 * r.stiffness(kind)
	var tip, hook [2]float64
	stretch, hooks := 0.0, 0.0
	set := 2 * r.set(s.SideArc+s.Ends[hung.Head].Leg+s.Ends[hung.Foot].Leg)
	for _, e := range hung.Ends() {
		x := e.Sign() * half
		side := Stretch(s, min(r.mid, x), max(r.mid, x), ea, 2*LightPull)
		leg := legStretch(s, e, ea, 2*LightPull)
		round := roundPin(s.Ends[e].Leg, pin) - s.Ends[e].Leg
		arc := math.Abs(s.Arc(r.mid, x))
		tip[e] = arc - r.set(arc) - side + spread/2
		hook[e] = tip[e] + s.Ends[e].Leg - r.set(s.Ends[e].Leg) - leg + round + spread/2
		stretch += 2 * (side + leg)
		hooks += 2 * round
	}
	if room := min(tip[hung.Head], tip[hung.Foot]) - sp.Gap/2; bury > room {
		return Cord{}, &hung.Impossible{Key: design.KeySpliceBury, Found: design.Found(design.BuryAtTip),
			Bound: design.AtMost, Limit: math.Floor(room)}
	}
	c := Cord{Part: SideLoop, Count: 2, Kind: kind, Runs: 2, Datum: Spot{Kind: Shoulder, On: AtStart}}
	c.Terms = compact([]Term{
		{RunsTipToTip, 2 * s.SideArc},
		{RunsToHead, 2 * s.Ends[hung.Head].Leg},
		{RunsToFoot, 2 * s.Ends[hung.Foot].Leg},
		{RoundHooks, hooks},
		{BuriesAtJoin, 2 * bury},
		{OverBuries, 2 * sp.Kappa * bury},
		{RunsSpread, 4 * spread},
		{LessStretch, -stretch},
		{LessSet, -set},
	})
	c.Cut = sum(c.Terms)
	ch := loopChain(tip, hook, bury, sp)
	c.Marks = ch.list(c.Datum)
	c.Steps = []Step{
		{DrawEndTail,
			[]Reading{ch.reading(Spot{Kind: Shoulder, On: AtStart}, Spot{Kind: Tip, On: AtFoot}, 1)}},
		{DrawStartTail,
			[]Reading{ch.reading(Spot{Kind: Tip, On: AtHead}, Spot{Kind: Shoulder, On: AtEnd}, 2),
				ch.reading(Spot{Kind: Tip, On: AtFoot, Second: true}, Spot{Kind: Tip, On: AtHead, Second: true}, 2)}},
	}
	return c, nil
}

// loopChain lays the loop out from the tail at its start; tip and hook are the
// distances from the join along one run, by [hung.End].
func loopChain(tip, hook [2]float64, bury float64, sp Splicing) chain {
	var ch chain
	ch.tail(AtStart, bury, sp.Taper(bury), 2, false)
	ch.host(bury, sp.Kappa, 1)
	ch.mark(Spot{Kind: BuryEnd, On: AtStart}, 0)
	round := 2 * (hook[hung.Head] + hook[hung.Foot])
	ch.add(zone{raw: round - 2*bury})
	end := ch.length()
	f := hung.Foot
	for _, m := range []struct {
		spot Spot
		at   float64
	}{
		{Spot{Kind: Tip, On: AtFoot}, tip[f]},
		{Spot{Kind: Hook, On: AtFoot}, hook[f]},
		{Spot{Kind: Tip, On: AtFoot, Second: true}, 2*hook[f] - tip[f]},
		{Spot{Kind: Middle, Second: true}, 2 * hook[f]},
		{Spot{Kind: Tip, On: AtHead, Second: true}, 2*hook[f] + tip[hung.Head]},
		{Spot{Kind: Hook, On: AtHead}, 2*hook[f] + hook[hung.Head]},
		{Spot{Kind: Tip, On: AtHead}, round - tip[hung.Head]},
	} {
		ch.mark(m.spot, ch.place(bury+m.at)-end)
	}
	ch.mark(Spot{Kind: BuryEnd, On: AtEnd}, 0)
	ch.host(bury, sp.Kappa, 2)
	ch.tail(AtEnd, bury, sp.Taper(bury), 1, true)
	return ch
}
