package state

import (
	"slingloft/outline/bed"
	"slingloft/outline/finished"
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
