package chapter

import (
	"slingloft/outline/piece"
)

// marginWords says what a piece has at one of its edges.
func (b build) marginWords(m piece.Margin) string {
	switch m.At {
	case piece.AtSide:
		return "allowance at the side"
	case piece.AtSides:
		return "allowance at the sides"
	case piece.AtJoin:
		return "allowance at the " + b.rim(m.Join) + ", flat-felled"
	case piece.AtEnds:
		return "allowance at the body's ends"
	case piece.TurnedEnds:
		return "turned in at the body's ends, two times"
	case piece.AtLongEdges:
		return "turn-under at each long edge"
	case piece.AtFoot:
		return "stitch line from the folded edge"
	case piece.AtDepth:
		return "finished depth, stitch line to fold"
	case piece.AtTurnedEnds:
		return "allowance at the ends, turned in"
	case piece.AtOpening:
		return "worked opening at each bar tip"
	case piece.AtOuterEdge:
		return "allowance at the outer edge"
	case piece.AtInnerEdge:
		return "turn-under at the inner edge"
	case piece.AtSeamOpening:
		return "opening at each bar tip"
	case piece.AtSeam:
		return "allowance at the seam"
	case piece.AtHem:
		return "hem at the top edge, folded two times"
	case piece.AtDip:
		return "dip of the top edge"
	}
	return ""
}

// fellWords says what is done along a line of a flat-felled join, before the panel's
// name.
func (b build) fellWords(r piece.Role) (string, bool) {
	switch r {
	case piece.FellFold:
		return "fold the allowance of the ", true
	case piece.FellTrim:
		return "trim the allowance of the ", true
	case piece.FellStitch:
		return "second row on the ", true
	}
	return "", false
}
