// Package accuracy says how truly a hammock comes out: how far each cord may be
// off, what that does to the bed, and what to change once it hangs.
//
// Errors are ± mm. The worst case adds them up; the root of the sum of squares
// takes them to be independent. See [Of]. [Stack] has every error of the made bed,
// bars and cloth too, [Outcomes] what they come to and which does most, and
// [Bed.Advise] what to set, from the heights of the bar tips.
package accuracy

import (
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
)

// Source is one cause of error of a length; Count of them are alike.
type Source struct {
	Kind  SourceKind `json:"name"`
	Error float64    `json:"error"` // ± of one, mm
	Count int        `json:"count"`
}

// Length is how far a finished cord may be off, from node to node.
type Length struct {
	Part    cord.Part `json:"name"`
	Nominal float64   `json:"nominal"` // mm
	Sources []Source  `json:"sources"`
	// Set is by how much the first load makes it longer, mm. It is the same part of
	// every cord.
	Set   float64 `json:"set"`
	Worst float64 `json:"worst"` // all at once, set included, mm
	RSS   float64 `json:"rss"`   // root of the sum of squares, set included, mm
}

// sum completes a length from its sources.
func (l Length) sum() Length {
	l.Worst, l.RSS = l.Set, l.Set*l.Set
	for _, s := range l.Sources {
		l.Worst += float64(s.Count) * s.Error
		l.RSS += float64(s.Count) * s.Error * s.Error
	}
	l.RSS = math.Sqrt(l.RSS)
	return l
}

// Lengths returns the stack of errors of every cord between its nodes: side cord,
// head leg, foot leg. A tip's place on a cord is good to one mark, since the gap's
// two edges share it; an eye's throat to one; its reach to half its loop's. A node that
// is read off a tape under load is as good as the reading.
func Lengths(s *hung.Shape, d design.Design, sp cord.Splicing, w Working) []Length {
	set := func(long float64) float64 { return w.Set * w.Taken.remains() * long }
	side := Length{Part: cord.SideCord, Nominal: s.SideArc, Set: set(s.SideArc), Sources: w.sideSources(d, sp)}
	out := []Length{side.sum()}
	for e, end := range s.Ends {
		leg := Length{Part: cord.LegAt(hung.End(e)), Nominal: end.Leg, Set: set(end.Leg), Sources: w.legSources(d, sp)}
		out = append(out, leg.sum())
	}
	return out
}

// Play returns by how much an opening in a channel is to be longer than the tip gap
// that is drawn out there, for the side cord of lengths as [Lengths] returns them, mm:
// twice by what a gap may lie off its place. The cord is centred in its channel, so
// that at each bar it is off by half of what it may be off as a whole.
func Play(side Length) float64 { return side.Worst }

// sideSources returns the errors of a side cord that are its own.
func (w Working) sideSources(d design.Design, sp cord.Splicing) []Source {
	switch {
	case w.Tape > 0:
		return []Source{{NodesRead, w.Tape, 2}}
	case d.Splice.Whole:
		return []Source{{TipsSeized, w.Marking, 2}, {OverJoin, w.Scatter * sp.Bury(d.Side.Diameter) / 2, 2}}
	}
	return []Source{{TipGaps, w.Marking, 2}, {OverLegBury, w.Scatter * sp.Bury(d.Leg.Diameter), 2}}
}

// legSources returns those of a leg.
func (w Working) legSources(d design.Design, sp cord.Splicing) []Source {
	switch {
	case w.Tape > 0:
		return []Source{{NodesRead, w.Tape, 2}}
	case d.Splice.Whole:
		return []Source{{TipsSeized, w.Marking, 1}}
	}
	return []Source{{TipGap, w.Marking, 1}, {EyeThroat, w.Marking, 1}, {EyeLoop, w.Marking / 2, 1},
		{OverSideBury, w.Scatter * sp.Bury(d.Side.Diameter), 1},
		{OverEyeBury, w.Scatter * sp.EyeBury(d.Leg.Diameter), 1}}
}

// Effect is what one cord does to the bed for every mm that it is too long.
type Effect struct {
	Part cord.Part `json:"name"` // of one side where there are two
	// Corner is by how much its own corner drops, mm per mm: a leg's bar tip, the
	// head one for a side cord, both tips of the end for a hang line.
	Corner float64 `json:"corner"`
	// Level is how the bed's level changes, mm per mm; of a left cord where there are
	// two, so that a right one's changes across have the other sign.
	Level finished.Level `json:"level"`
}

// step is the difference of length for the effects, mm: far above what the solver
// leaves over, far below what bends their line.
const step = 1.0

// Effects returns what each cord's length does: head leg, foot leg, side cord, head
// and foot hang line; level is what [LevelRates] returns.
func Effects(heights finished.Rates, level [finished.Parts]finished.Level) []Effect {
	var out []Effect
	for _, row := range []struct {
		part cord.Part
		made finished.Part
		end  hung.End
	}{
		{cord.HeadLeg, finished.HeadLeftLeg, hung.Head},
		{cord.FootLeg, finished.FootLeftLeg, hung.Foot},
		{cord.SideCord, finished.LeftSide, hung.Head},
		{cord.HeadLine, finished.HeadLine, hung.Head},
		{cord.FootLine, finished.FootLine, hung.Foot},
	} {
		out = append(out, Effect{row.part, -heights.Part[row.made].Tips[row.end][bed.Left], level[row.made]})
	}
	return out
}
