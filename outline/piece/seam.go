package piece

import (
	"fmt"
	"math"
	"slingloft/outline/bed"
)

// Seam is a pair of edges that are sewn together, walked along their net lines.
type Seam struct {
	Kind SeamKind
	Rim  Rim     // the side or join that it runs along, or
	End  bed.End // the end
	// Number tells joins of a tarp apart, from 1.
	Number int
	// IDs are the two pieces; "body" stands for the joined panels together.
	IDs   [2]string
	Flat  [2]float64 // lengths in the flat cloth, mm
	Hung  [2]float64 // lengths when it hangs, mm
	Parts []SeamPart // from notch to notch

	Difference float64 // first flat length less the second, mm
	Ease       float64 // of it, planned: what the two edges change when they hang
	EasePer100 float64 // planned ease per 100 mm of seam
	Remains    float64 // what is left over, which no shape explains
	Tolerance  float64
}

// SeamKind is what a seam joins.
type SeamKind int

// The kinds.
const (
	SideToStrip    SeamKind = iota // a side of the body to its channel strip
	SideToFacing                   // a side of the body to its facing
	EndToCap                       // an end of the body to its cap
	BodyJoin                       // two panels of the body, flat-felled
	SackWall                       // a sack's wall to itself
	SackBottom                     // the wall to a round bottom
	SackEdge                       // a flat sack's long edge to itself, by its rim
	SackCorner                     // across its corner, by the rim
	BarsEdge                       // the bars' sack along
	BarsEnd                        // and at its end
	TarpRidge                      // two halves of a tarp, flat-felled
	TarpJoin                       // two of its panels, by the number
	SideToLining                   // a side of the body to that of its lining, by the rim
	EndToLining                    // an end of the body to that of its lining
	LiningJoin                     // two panels of the lining, by the rim
	CoverRidge                     // both sides of a cover
	CoverLeft                      // its left side to an end
	CoverRight                     // its right side to an end
	CoverToChannel                 // its side to the channel of the bed, by the rim
	CoverToCap                     // its end to a cap
	seamKinds
)

// Side reports whether the seam is one of the sides, which carry the bed.
func (k SeamKind) Side() bool { return k == SideToStrip || k == SideToFacing }

// String returns the seam's identifier, as documents for other programs have it.
func (s Seam) String() string {
	switch s.Kind {
	case SideToStrip:
		return "body " + s.Rim.String() + " side to channel"
	case SideToFacing:
		return "body " + s.Rim.String() + " side to facing"
	case EndToCap:
		return "body " + s.End.String() + " end to cap"
	case EndToLining, CoverLeft, CoverRight, CoverToCap:
		return fmt.Sprintf(s.Kind.id(), s.End)
	case SackEdge, SackCorner, SideToLining, LiningJoin, CoverToChannel:
		return fmt.Sprintf(s.Kind.id(), s.Rim)
	case SackWall, SackBottom, BarsEdge, BarsEnd, TarpRidge, CoverRidge:
		return s.Kind.id()
	case TarpJoin:
		return fmt.Sprintf(s.Kind.id(), s.Number)
	}
	return "body " + s.Rim.String()
}

// id returns what the seams beside the bed's are called in documents.
func (k SeamKind) id() string {
	return [seamKinds]string{SackWall: "sack wall", SackBottom: "sack wall to base", SackEdge: "sack %s edge", SackCorner: "sack %s corner",
		BarsEdge: "bars' sack edge", BarsEnd: "bars' sack end", TarpRidge: "tarp ridge", TarpJoin: "tarp join %d",
		SideToLining: "body %s side to lining", EndToLining: "body %s end to lining", LiningJoin: "lining %s",
		CoverRidge: "cover ridge", CoverLeft: "cover left side to %s end", CoverRight: "cover right side to %s end",
		CoverToChannel: "cover to %s channel", CoverToCap: "cover to %s cap"}[k]
}

// Named reports what the seam's name has to say beside its kind: nothing or its number,
// its end, or its rim.
func (s Seam) Named() (end, rim bool) {
	switch s.Kind {
	case SackWall, SackBottom, BarsEdge, BarsEnd, TarpRidge, TarpJoin, CoverRidge:
		return false, false
	}
	switch s.Kind {
	case EndToCap, EndToLining, CoverLeft, CoverRight, CoverToCap:
		return true, false
	}
	return false, true
}

// Within reports whether what remains is within the tolerance.
func (s Seam) Within() bool { return math.Abs(s.Remains) <= s.Tolerance }

// SeamPart is the stretch of a seam between two neighbouring notches.
type SeamPart struct {
	From, To string     // names of notches; empty: an end of the seam
	Flat     [2]float64 // mm
	Ease     float64    // flat length of the first edge less the second's
	// Fold is how much longer a straight strip is than the cord at its fold: the
	// reach times the turning of the curve. It gathers inside the channel.
	Fold float64
}

// Notch is a matching mark on a seam: the same name stands at the same hung
// length on both edges that are sewn together.
type Notch struct {
	Name   string  // its identifier, which is lettered: a letter and the number
	Number int     // on its seam, from 1
	At     float64 // hung length along the seam, mm
	Double bool    // two strokes rather than one
	Bar    bool    // at a bar's tip
}

// NotchPitch is the distance of the strokes of a double notch, mm: told apart at arm's
// length.
const NotchPitch = 4.0

// HemGives is the part of its length by which a hem may have to be stretched or eased
// to lie flat: what a sleeve's head is eased by, 4 %. Above 2 % a trial is wise, and
// cloth that is coated gives less (shop practice, no source).
const HemGives = 0.04
