package piece

import (
	"slingloft/outline/bed"
	"slingloft/outline/geom"
)

// Measure is a distance that proves a piece true on its stock, for checking what was
// marked.
type Measure struct {
	Kind     MeasureKind
	From, To Corner    // for [Between]
	Letters  [2]string // for [LetteredCorners]
	Length   float64   // mm
}

// Cornered are the corners of a piece's net line by their letters, in its own coordinates.
type Cornered struct {
	Piece   string // its ID
	Letters []string
	At      []geom.Point
}

// MeasureKind is the kind of a measure.
type MeasureKind int

// The kinds.
const (
	Between         MeasureKind = iota // two corners
	CapTop                             // a cap's top edge, corner to corner
	CapDepth                           // middle of its seam to the middle of its top edge
	CapSeam                            // its seam, corner to corner along the net line
	NetAlong                           // of a rectangle's net line, along the warp
	NetAcross                          // across it
	NetDiagonal                        // either diagonal of it
	NetRound                           // once around a round net line
	NetDiameter                        // across it
	LetteredCorners                    // two corners by their letters
	measureKinds
)

// Corner is where a long edge of the bed or of a panel meets an end or a bar.
type Corner struct {
	End bed.End
	At  CornerKind
	Rim Rim
}

// CornerKind says what a long edge meets.
type CornerKind int

// The kinds.
const (
	AtEnd     CornerKind = iota // the end seam
	AtBarLine                   // the bar line of the whole bed
	AtBar                       // the bar line of a panel
)

// Rim is a long edge of the bed or of a panel.
type Rim int

// The rims; joins are those of a bed in two panels or in three.
const (
	LeftSide Rim = iota
	RightSide
	OnlyJoin
	LeftJoin
	RightJoin
	RimCount // how many rims there are
)

// RimOf returns the rim that is a side of the bed.
func RimOf(s bed.Side) Rim { return [...]Rim{bed.Left: LeftSide, bed.Right: RightSide}[s] }

// JoinOf returns the join on a side, where there are two.
func JoinOf(s bed.Side) Rim { return [...]Rim{bed.Left: LeftJoin, bed.Right: RightJoin}[s] }

// String returns the rim's identifier.
func (r Rim) String() string {
	return [RimCount]string{"left", "right", "join", "left join", "right join"}[r]
}

// String returns the corner's identifier: "head bar line left".
func (c Corner) String() string {
	return c.End.String() + [...]string{" ", " bar line ", " bar "}[c.At] + c.Rim.String()
}

// String returns the measure's identifier, as documents for other programs have it.
func (m Measure) String() string {
	switch m.Kind {
	case Between:
		return m.From.String() + " to " + m.To.String()
	case LetteredCorners:
		return m.Letters[0] + " to " + m.Letters[1]
	}
	return [measureKinds]string{
		CapTop:   "top edge, corner to corner",
		CapDepth: "middle of the seam to the middle of the top edge",
		CapSeam:  "seam, corner to corner along the net line",
		NetAlong: "net line, along", NetAcross: "net line, across", NetDiagonal: "net line, either diagonal",
		NetRound: "net line, once around", NetDiameter: "net line, diameter",
	}[m.Kind]
}
