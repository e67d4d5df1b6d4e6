package cord

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// lineSize says how long a line is from hook to hook and what is added for
// adjusting, mm, and how hard it is pulled, N.
type lineSize struct{ long, tension, spare float64 }

// line returns a straight line with an eye at each end: a hang line or a ridge
// line.
func (b bench) line(name string, kind design.Cord, size lineSize) (Cord, error) {
	sp := b.splice
	long, spare := size.long, size.spare
	bury := sp.EyeBury(kind.Diameter)
	loop, reach, err := sp.Eye(kind.Diameter)
	if err != nil {
		return Cord{}, err
	}
	stretch := 0.0
	if ea := b.stiffness(kind); ea > 0 {
		stretch = size.tension * long / ea
	}
	plain := long + spare - stretch - 2*(reach+bury)
	if plain < 0 {
		return Cord{}, b.overlap(name, -plain, math.Floor((long+spare-stretch)/2-reach))
	}
	c := Cord{Name: name, Count: 1, Kind: kind, Runs: 1, Datum: "near throat"}
	c.Terms = compact([]Term{
		{"hook to hook", long},
		{"spare for adjusting", spare},
		{"contraction over the eyes' two buries", 2 * sp.Kappa * bury},
		{"loops of two eyes", 2 * loop},
		{"loss in two crossings", 2 * sp.Loss},
		{"the eyes' two buries", 2 * bury},
		{"less the reach of two eyes to their hooks", -2 * reach},
		{"less stretch under the sleeper", -stretch},
	})
	c.Cut = sum(c.Terms)

	eye := eyeSize{bury, sp.Taper(bury), loop, reach}
	var ch chain
	ch.startEye("near", eye, sp, 1)
	ch.add(zone{raw: plain})
	ch.eye("far", eye, sp, 2)
	c.Marks = ch.list(c.Datum)
	c.Steps = []Step{
		{"make the near eye", []Reading{ch.reading("near throat", "far throat", 1)}},
		{"make the far eye", []Reading{ch.reading("near throat", "far throat", 2), ch.hook("near throat", "far throat", reach, 2)}},
	}
	return c, nil
}

// startEye puts an eye at the start of the cord: the mirror of [chain.eye].
func (c *chain) startEye(name string, s eyeSize, sp Splicing, splice int) {
	c.tail(name, s.bury, s.taper, splice, false)
	c.add(zone{raw: s.loop})
	c.add(zone{raw: sp.Loss, lost: sp.Loss, splice: splice})
	c.mark(name+" throat", 0)
	c.host(s.bury, sp.Kappa, splice)
	c.mark(name+" bury end", 0)
}

// overlap is the fault of a line whose two eyes overlap by so many mm; bury is the
// longest with which they would not.
func (b bench) overlap(name string, by, bury float64) error {
	const useful = 40.0 // mm; a shorter bury is no advice
	e := &hung.Impossible{Key: "splice.eye_bury", Reason: "the eyes at both ends of the " + name + " overlap", Bound: "at most", Limit: bury}
	if d := b.design.Hang.Distance; bury < useful && d > 0 {
		// Each line grows by at least half of what the supports move apart.
		e.Key, e.Reason = "hang.distance", "leaves no room for the eyes at both ends of the "+name
		e.Bound, e.Limit = "at least", math.Ceil(d+2*by)
	}
	return e
}
