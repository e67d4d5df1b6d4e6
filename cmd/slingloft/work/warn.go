package work

import (
	"fmt"
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
	"slingloft/outline/state"
)

// usualLocking is the shear at which light woven cloth begins to wrinkle, rad,
// taken where the design names none: 30 degrees, from memory.
const usualLocking = 30 * math.Pi / 180

// longTail is the tail up to which a net cut hangs within 5 mm of level in the
// simulation of package drape: 3.7 mm off at 220 mm, 6.6 mm at 280 mm on a bed of
// 1440 mm span.
const longTail = 240.0

// moreGathers is how much more of the centre line may come to lie in gathers before that is
// said, mm: own choice, what an end seam takes up as ease without being seen.
const moreGathers = 3.0

// Warning is what a maker should know before cutting: no fault, but not what one might
// expect.
type Warning int

// The warnings.
const (
	Wrinkles       Warning = iota // how far the cloth shears, where
	MayWrinkle                    // likewise, by the usual locking angle
	LongTails                     // how long, how long would be well
	Gathers                       // how much more, which end, how much in all
	StraightTails                 // most that they depart from the level girth
	DrawnSide                     // how high and how low of level
	TurnsOver                     // with the sleeper a hair aside
	RollsOver                     // how far aside, how far the bed turns before
	RollsFar                      // how far it turns, how far aside, what the lower cord then carries
	Rocks                         // likewise, but not so far
	HookTooLow                    // by how much
	ShortShelter                  // by how much
	RainReaches                   // kept off, asked, ridge, width that would do
	RainReachesAll                // kept off, asked
	TarpTouches                   // how near, rise that would do
	TarpInGround                  // how deep, width that would do
	LiningEased                   // seam, from which notch to which, per cent
	CoverNearFace                 // how near, how far is well
	CoverCoarse                   // mesh, holes per square inch
	CoverTravels                  // by how much apexes move, what the elastic gives
	CoverGaps                     // how far a loose edge stands off between two ties
	GuestUnmet                    // guest, check, margin, required
	GuestHeavy                    // guest, mass, mass of the sleeper
	Waived                        // check, margin, required
	NotChecked                    // how many checks, without what
	WarningCount                  // how many kinds there are
)

// locking returns the shear at which the cloth begins to wrinkle, rad, and whether the design
// gives it.
func (p *Plan) locking() (limit float64, given bool) {
	if limit = float64(p.Design.Cloth.LockingAngle); limit > 0 {
		return limit, true
	}
	return usualLocking, false
}

// Warnings returns the plan's warnings, one line each; how it rolls stands first.
func (p *Plan) Warnings() []string {
	var out []string
	warn := func(w Warning, a ...any) { out = append(out, fmt.Sprintf(p.Words.Warnings[w], a...)) }
	st, d := p.Style(), p.Design
	percent := func(part float64) string { return quantity.Decimal(100*part, 0) + " %" }

	switch r := p.Roll(); {
	case r.Over && r.Turn == 0:
		warn(TurnsOver)
	case r.Over:
		warn(RollsOver, st.Length(state.AtEdge), st.Angle(r.Turn))
	case r.Rocks:
		warn(Rocks, st.Angle(r.Turn), st.Length(state.AtEdge), percent(r.Share))
	case !r.Stable:
		warn(RollsFar, st.Angle(r.Turn), st.Length(state.AtEdge), percent(r.Share))
	}
	for _, g := range p.Guests() {
		if c := g.Least(); c.Unmet() {
			warn(GuestUnmet, g.Name, p.Words.Margins.CheckName(c), quantity.Decimal(c.Ratio, 2), quantity.Decimal(c.Required, 2))
		}
		if most := d.Sleeper.Mass; g.Mass > most {
			warn(GuestHeavy, g.Name, st.People(float64(g.Mass), true), st.People(float64(most), false))
		}
	}
	limit, given := p.locking()
	shears := MayWrinkle
	if given {
		shears = Wrinkles
	}
	if s := p.Body.Shear; s.Angle > limit {
		warn(shears, st.Angle(s.Angle), st.Length(s.At.X))
	}
	for _, r := range []float64{d.Bed.HeadTail, d.Bed.FootTail} {
		if d.Bed.Cut == design.Net && d.Bed.Level == design.ByMade && r > longTail {
			warn(LongTails, st.Length(r), st.Length(longTail))
			break
		}
	}
	if l := p.Leveled; l != nil {
		for _, e := range hung.Ends() {
			if more := l.After.Gather[e] - l.Before.Gather[e]; more > moreGathers {
				warn(Gathers, st.Length(more), p.Words.Lettering.Ends[e], st.Length(l.After.Gather[e]))
			}
		}
	}
	if d.Bed.Cut == design.Straight {
		most := 0.0
		for _, q := range p.Body.Departures {
			most = max(most, math.Abs(q.Cut-q.True))
		}
		warn(StraightTails, st.Length(most))
	}
	if l := p.Body.Level; l.Curve != design.Balanced {
		warn(DrawnSide, st.Length(l.High), st.Length(-l.Low))
	}
	if p.Place.Beyond > 0 {
		warn(HookTooLow, st.Length(p.Place.Beyond))
	}
	if s := p.Shelter; s.Ridge > 0 && s.Spare < 0 {
		warn(ShortShelter, st.Length(-s.Spare))
	}
	p.warnOfTarp(warn)
	p.warnOfLining(warn)
	p.warnOfCover(warn)
	for _, c := range p.Margins().Waived() {
		warn(Waived, p.Words.Margins.CheckName(c), quantity.Decimal(c.Ratio, 2), quantity.Decimal(c.Required, 2))
	}
	if p.machine.File() != "" { // a shop's file may have jobs for other designs
		for _, f := range d.Misspelt(d.Machine, p.machine) {
			out = append(out, f.Error())
		}
	}
	if r := p.Margins(); len(r.Unknown()) > 0 {
		warn(NotChecked, len(r.Unknown()), p.Words.Margins.Lacking(r.Unknown()))
	}
	return out
}
