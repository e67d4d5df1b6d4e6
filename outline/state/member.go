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

// LineOf, LegOf and BarOf return the hang line, the leg and the bar of an end.
func LineOf(e hung.End) Member { return [2]Member{hung.Head: HeadLine, hung.Foot: FootLine}[e] }
func LegOf(e hung.End) Member  { return [2]Member{hung.Head: HeadLeg, hung.Foot: FootLeg}[e] }
func BarOf(e hung.End) Member  { return [2]Member{hung.Head: HeadBar, hung.Foot: FootBar}[e] }

// Load returns the load of a member, N, or N/mm for the cloth.
func (m Member) Load(l finished.Loads) float64 {
	switch m {
	case HeadLine:
		return l.Line[hung.Head]
	case FootLine:
		return l.Line[hung.Foot]
	case HeadLeg:
		return max(l.Leg[hung.Head][bed.Left], l.Leg[hung.Head][bed.Right])
	case FootLeg:
		return max(l.Leg[hung.Foot][bed.Left], l.Leg[hung.Foot][bed.Right])
	case SideCord:
		return max(l.Side[bed.Left], l.Side[bed.Right])
	case HeadBar:
		return l.Bar[hung.Head]
	case FootBar:
		return l.Bar[hung.Foot]
	}
	return l.Cloth
}
