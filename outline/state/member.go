package state

import (
	"slingloft/outline/bed"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
)

// Member is a part of the hammock that carries. A hook and an anchor carry what
// their hang line does, a side seam what the cloth does.
type Member int

// The members.
const (
	HeadLine Member = iota
	FootLine
	HeadLeg // of the two the one that carries more
	FootLeg
	SideCord // of the two the one that carries more
	HeadBar
	FootBar
	Cloth // across, N/mm
)

// Members is how many there are.
const Members = 8

// Load returns the load of a member, N, or N/mm for the cloth.
func (m Member) Load(l finished.Loads) float64 {
	switch m {
	case HeadLine, FootLine:
		return l.Line[m-HeadLine]
	case HeadLeg, FootLeg:
		leg := l.Leg[m-HeadLeg]
		return max(leg[bed.Left], leg[bed.Right])
	case SideCord:
		return max(l.Side[bed.Left], l.Side[bed.Right])
	case HeadBar, FootBar:
		return l.Bar[m-HeadBar]
	}
	return l.Cloth
}

// End returns the end that a member is of, and whether it is of one.
func (m Member) End() (hung.End, bool) {
	switch m {
	case HeadLine, HeadLeg, HeadBar:
		return hung.Head, true
	case FootLine, FootLeg, FootBar:
		return hung.Foot, true
	}
	return hung.Head, false
}

// Governs returns the state that loads each member most, extremes left out. There has
// to be one that is none.
func Governs(states []State) [Members]State {
	var out [Members]State
	var found [Members]bool
	for _, s := range states {
		if s.Extreme {
			continue
		}
		for m := range Members {
			if !found[m] || Member(m).Load(s.Loads) > Member(m).Load(out[m].Loads) {
				out[m], found[m] = s, true
			}
		}
	}
	return out
}
