package cord

import (
	"math"

	"slingloft/outline/hung"
)

// side returns the side cord with separate legs, from the head tail's end to the
// foot tail's end.
func (b bench) side() (Cord, error) {
	s, sp, kind := b.shape, b.splice, b.design.Side
	own, taken := sp.Bury(kind.Diameter), sp.Bury(b.design.Leg.Diameter)
	spread, err := sp.Spread(kind.Diameter)
	if err != nil {
		return Cord{}, err
	}
	half := s.Problem.Bed.Span / 2
	ea := b.stiffness(kind)
	stretch := Stretch(s, -half, half, ea)
	// Between the gaps' centres, measured on the spliced cord without load.
	between := s.SideArc - stretch + spread
	plain := between - sp.Gap - 2*taken
	if plain < 0 {
		return Cord{}, &hung.Impossible{Key: "splice.bury", Reason: "the buries of both legs overlap in the side cord",
			Bound: "at most", Limit: math.Floor((between - sp.Gap) / 2)}
	}
	c := Cord{Name: "side cord", Count: 2, Kind: kind, Runs: 1, Datum: "head tip"}
	c.Terms = compact([]Term{
		{"arc from tip to tip", s.SideArc},
		{"two buries in the legs", 2 * own},
		{"two halves of a tip gap", sp.Gap},
		{"contraction over the legs' two buries", 2 * sp.Kappa * taken},
		{"spread of the gaps round the tips", spread},
		{"less stretch under the sleeper", -stretch},
	})
	c.Cut = sum(c.Terms)

	var ch chain
	ch.tail("head", own, sp.Taper(own), 1, false)
	ch.mark("head tip", sp.Gap/2)
	ch.add(zone{raw: sp.Gap})
	ch.mark("head entry", 0)
	ch.host(taken, sp.Kappa, 2)
	ch.mark("head bury end", 0)
	ch.add(zone{raw: plain})
	ch.mark("foot bury end", 0)
	ch.host(taken, sp.Kappa, 4)
	ch.mark("foot entry", 0)
	ch.mark("foot tip", sp.Gap/2)
	ch.add(zone{raw: sp.Gap})
	ch.tail("foot", own, sp.Taper(own), 3, true)
	ch.middle("head tip", s.Arc(-half, 0)-Stretch(s, -half, 0, ea)+spread/2)
	c.Marks = ch.list(c.Datum)
	c.Steps = []Step{
		{"draw the side cord's head tail into the head leg to its shoulder, then the leg's tail into the side cord",
			[]Reading{ch.reading("head tip", "middle", 2), ch.reading("head tip", "foot tip", 2)}},
		{"the same at the foot end",
			[]Reading{ch.reading("middle", "foot tip", 4), ch.reading("head tip", "foot tip", 4)}},
	}
	return c, nil
}

// middle puts the mark that meets the middle notch of the bed, after mm past the
// datum on the spliced cord, among the others by place.
func (c *chain) middle(datum string, after float64) {
	at := c.place(c.spliced(c.at(datum).at, all) + after)
	i := 0
	for i < len(c.marks) && c.marks[i].at < at {
		i++
	}
	c.marks = append(c.marks[:i], append([]spot{{name: "middle", at: at}}, c.marks[i:]...)...)
}

// compact leaves out terms that are nil.
func compact(terms []Term) []Term {
	out := terms[:0]
	for _, t := range terms {
		if t.Length != 0 {
			out = append(out, t)
		}
	}
	return out
}
