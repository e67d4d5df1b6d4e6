package cord

import (
	"math"

	"slingloft/outline/hung"
)

// leg returns a builder for one end's legs, from the tail that goes into the
// side cord to the tail of the eye.
func (b bench) leg(e hung.End) func() (Cord, error) {
	return func() (Cord, error) { return b.legAt(e) }
}

func (b bench) legAt(e hung.End) (Cord, error) {
	sp, kind, name := b.splice, b.design.Leg, e.String()
	own, taken := sp.Bury(kind.Diameter), sp.Bury(b.design.Side.Diameter)
	eyeBury := sp.EyeBury(kind.Diameter)
	loop, reach, err := sp.Eye(kind.Diameter)
	if err != nil {
		return Cord{}, err
	}
	spread, err := sp.Spread(kind.Diameter)
	if err != nil {
		return Cord{}, err
	}
	long := b.shape.Ends[e].Leg
	stretch := legStretch(b.shape, e, b.stiffness(kind))
	plain := long - stretch + spread/2 - reach - sp.Gap/2 - taken - eyeBury
	if plain < 0 {
		return Cord{}, &hung.Impossible{Key: "bed." + name + "_leg",
			Reason: "too short for the side cord's bury, the eye's own bury and the eye",
			Bound:  "at least", Limit: math.Ceil(long - plain)}
	}
	c := Cord{Name: name + " leg", Count: 2, Kind: kind, Runs: 1, Datum: "tip"}
	c.Terms = compact([]Term{
		{"bar tip to hook", long},
		{"bury in the side cord", own},
		{"half the tip gap", sp.Gap / 2},
		{"contraction over the side cord's bury", sp.Kappa * taken},
		{"contraction over the eye's own bury", sp.Kappa * eyeBury},
		{"loop of the eye", loop},
		{"loss in the eye's crossing", sp.Loss},
		{"the eye's own bury", eyeBury},
		{"less the eye's reach to the hook", -reach},
		{"spread of the gap round the tip", spread / 2},
		{"less stretch under the sleeper", -stretch},
	})
	c.Cut = sum(c.Terms)

	var ch chain
	ch.tail("side", own, sp.Taper(own), 3, false)
	ch.mark("tip", sp.Gap/2)
	ch.add(zone{raw: sp.Gap})
	ch.mark("entry", 0)
	ch.host(taken, sp.Kappa, 2)
	ch.mark("bury end", 0)
	ch.add(zone{raw: plain})
	ch.eye("eye", eyeSize{eyeBury, sp.Taper(eyeBury), loop, reach}, sp, 1)
	c.Marks = ch.list(c.Datum)
	c.Steps = []Step{
		{"make the eye", []Reading{ch.reading("entry", "eye throat", 1), ch.hook("entry", "eye throat", reach, 1)}},
		{"draw the side cord's tail into the leg to its shoulder",
			[]Reading{ch.reading("tip", "eye throat", 2), ch.hook("tip", "eye throat", reach, 2)}},
	}
	return c, nil
}

// eyeSize holds one eye's measures, mm.
type eyeSize struct{ bury, taper, loop, reach float64 }

// eye puts an eye at the end of the cord: the length that takes its tail, its
// crossing, its loop and the tail.
func (c *chain) eye(name string, s eyeSize, sp Splicing, splice int) {
	c.mark(name+" bury end", 0)
	c.host(s.bury, sp.Kappa, splice)
	c.mark(name+" throat", 0)
	c.marks[len(c.marks)-1].made = splice
	c.add(zone{raw: sp.Loss, lost: sp.Loss, splice: splice})
	c.add(zone{raw: s.loop})
	c.tail(name, s.bury, s.taper, splice, true)
}

// hook returns the reading from a mark to the centre of the hook that lies reach
// mm past an eye's throat. Before the splice that makes the eye there is none.
func (c *chain) hook(from, throat string, reach float64, splice int) Reading {
	r := c.reading(from, throat, splice)
	r.To = "hook"
	r.After += reach
	r.Before += reach
	if c.at(throat).made == splice {
		r.Before = 0
	}
	return r
}
