package cord

import (
	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// Part says which cord of a hammock a cord is.
type Part int

// The parts.
const (
	SideCord  Part = iota
	HeadLeg        // from a head bar tip to the head hook
	FootLeg        // likewise at the foot
	SideLoop       // one side's cord and legs in one, two runs
	HeadLine       // the head's hang line
	FootLine       // the foot's
	RidgeLine      // of a shelter
	PartCount      // how many parts there are
)

// LegAt returns the part that the legs of an end are.
func LegAt(e hung.End) Part { return [...]Part{hung.Head: HeadLeg, hung.Foot: FootLeg}[e] }

// LineAt returns the part that the hang line of an end is.
func LineAt(e hung.End) Part { return [...]Part{hung.Head: HeadLine, hung.Foot: FootLine}[e] }

// String returns the part's identifier, as documents for other programs have it.
func (p Part) String() string {
	return [...]string{"side cord", "head leg", "foot leg", "side loop", "head hang line", "foot hang line", "ridge line"}[p]
}

// MarshalText writes the part's identifier.
func (p Part) MarshalText() ([]byte, error) { return []byte(p.String()), nil }

// Key returns the table of the design that says what the part is cut from.
func (p Part) Key() design.Key {
	switch p {
	case SideCord, SideLoop:
		return design.KeyCordSide
	case HeadLeg, FootLeg:
		return design.KeyCordLeg
	}
	return design.KeyHangLine
}
