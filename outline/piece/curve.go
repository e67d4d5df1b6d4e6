package piece

import (
	"slingloft/outline/bed"
	"slingloft/outline/geom"
)

// Curve is a seam line by which the body can be marked by hand.
type Curve struct {
	Kind CurveKind
	Line geom.Polyline // mm, in the piece's coordinates
}

// CurveKind says which seam line a curve is.
type CurveKind int

// The kinds.
const (
	BaySide        CurveKind = iota // the side between the bars
	HeadTailSide                    // the side past the head bar
	FootTailSide                    // the side past the foot bar
	HeadEnd                         // the head end, from the centre line to the corner
	FootEnd                         // the foot end likewise
	TarpSideCurve                   // a side edge of the tarp
	TarpEndCurve                    // an end edge of it, from the ridge to a corner
	TarpRidgeCurve                  // the ridge of a half
	LiningBaySide                   // those of the body, on its lining
	LiningHeadTailSide
	LiningFootTailSide
	LiningHeadEnd
	LiningFootEnd
	CoverBayCurve   // lower edge of the cover between the bars
	CoverHeadCurve  // likewise past the head bar
	CoverFootCurve  // past the foot bar
	CoverRidgeCurve // its ridge
	CoverHeadEnd    // lower edge of its head end
	CoverFootEnd    // of its foot end
	CurveKindCount  // how many kinds there are
)

// EndCurve returns the kind of the seam line at an end of the bed.
func EndCurve(e bed.End) CurveKind {
	return [...]CurveKind{bed.Head: HeadEnd, bed.Foot: FootEnd}[e]
}

// OnLining returns the kind that a curve of the body has on its lining.
func (k CurveKind) OnLining() CurveKind { return k - BaySide + LiningBaySide }

// String returns the kind's identifier, as documents for other programs have it.
func (k CurveKind) String() string {
	return [CurveKindCount]string{"side of the bay", "side of the head tail", "side of the foot tail",
		"head end, centre line to corner", "foot end, centre line to corner",
		"side edge of the tarp", "end edge of the tarp", "ridge of the tarp",
		"lining, side of the bay", "lining, side of the head tail", "lining, side of the foot tail",
		"lining, head end, centre line to corner", "lining, foot end, centre line to corner",
		"lower edge of the cover, between the bars", "lower edge of the cover, past the head bar", "lower edge of the cover, past the foot bar",
		"ridge of the cover", "lower edge of the cover's head end", "lower edge of the cover's foot end"}[k]
}
