package piece

import (
	"slingloft/outline/bed"
	"slingloft/outline/geom"
)

// Lie says what a stiff template or gauge is for and how a template lies on the cloth.
// Its edge is the finished line; allowance comes on outside. The zero Lie is that of
// what is not laid.
type Lie struct {
	For BoardUse
	// Rests are the edges that lie on something seen on the cloth: the straight edge
	// first, then what it is pushed along to. Points are those of the template before it
	// is divided for its sheets.
	Rests []Rest
	// Net are the edges, and lines to prick through, that give the finished line.
	Net []geom.Polyline
	// Places are where it is laid, in the order of work.
	Places []Place
}

// BoardUse is what a template or gauge is for.
type BoardUse int

// The uses.
const (
	NoBoard         BoardUse = iota
	SideBoard                // the side of the bay
	TailBoard                // half a tail
	CapBoard                 // half an end cap
	FacingBoard              // a facing
	PressBoard               // folds are pressed over it
	AllowBoard               // sets allowances off from the finished line
	CordBoard                // marks on a cord's end
	NotchBoard               // notches along the side seam
	RoundBoard               // half a round piece
	HollowBoard              // half a hollow edge of the tarp, or all of it
	CoverBoard               // an edge of the cover
	LiningSideBoard          // the side of the lining's bay
	LiningTailBoard          // half a tail of the lining
	BoardUseCount            // how many there are
)

// Side reports whether the use is to give the side of a bay.
func (u BoardUse) Side() bool { return u == SideBoard || u == LiningSideBoard }

// Tail reports whether the use is to give half a tail.
func (u BoardUse) Tail() bool { return u == TailBoard || u == LiningTailBoard }

// OnLining returns the use that a template of the body has when it is cut for the lining.
func (u BoardUse) OnLining() BoardUse {
	if u == TailBoard {
		return LiningTailBoard
	}
	return LiningSideBoard
}

// Rest is an edge of a template that lies on, or beside, a line of the cloth.
type Rest struct {
	On   Seen
	Edge geom.Polyline
	Off  float64 // how far outside of the line the edge lies, parallel to it, mm; negative: inside
}

// Seen is a line that can be seen on the cloth.
type Seen int

// The lines.
const (
	OnNothing    Seen = iota
	OnCentreLine      // of the body, drawn along the warp; of a cap, drawn across it
	OnBarLine         // of the end at which it is laid
	OnHeadBarLine
	OnFootBarLine
	OnMidBay      // drawn square to the centre line, midway between the bar lines
	AlongSelvedge // any line parallel to the selvedge
	OnChord       // straight between the corners of a hollow edge
	OnMidEdge     // square to that, through its middle
)

// Bar reports whether the line is a bar's.
func (s Seen) Bar() bool { return s == OnBarLine || s == OnHeadBarLine || s == OnFootBarLine }

// Place is one laying of a template on a piece.
type Place struct {
	Piece string   // its ID; "body" stands for all panels of a joined one
	End   bed.End  // of what is laid at one end
	Side  bed.Side // of the half that it gives
	Part  Stretch
	Over  bool // turned over: the lettered face lies on the cloth
	// Motion takes the undivided template's coordinates to those of the piece.
	Motion geom.Motion
}

// Stretch is how much of an edge a template gives where it is laid.
type Stretch int

// The stretches.
const (
	AllOfIt  Stretch = iota
	HeadHalf         // of the bay, to its middle
	FootHalf
)
