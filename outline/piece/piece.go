// Package piece holds the words in which pieces are described: a piece with its
// outline, lines and labels, the kinds of work and stock, seams and notches.
//
// Lengths are mm, angles radians. Outlines are closed, simple and counter-clockwise.
package piece

import (
	"fmt"
	"strings"

	"slingloft/outline/article"
	"slingloft/outline/geom"
)

// Work is the kind of work that is done along a line. Every format sorts its
// layers or groups by it.
type Work int

// The kinds of work, in the order in which a machine does them: lettering
// and marks first, while the material still lies fast, the outline last.
const (
	Register  Work = iota // corner crosses, check bars, title frame: never on a piece
	Lettering             // text as single strokes
	Mark                  // notches, pin points, station ticks, grain arrow
	Stitch                // where a seam runs
	Score                 // fold and press lines
	CutInside             // cut through, inside a piece: holes, slots, worked openings
	CutOut                // cut through, the outline of a piece
	works
)

// Works lists every kind of work in the order in which it is done.
func Works() []Work {
	out := make([]Work, works)
	for i := range out {
		out[i] = Work(i)
	}
	return out
}

// String returns the name under which files show the kind of work, a lower-case
// word that is safe as an id in every format.
func (w Work) String() string {
	switch w {
	case Register:
		return "register"
	case Lettering:
		return "lettering"
	case Mark:
		return "mark"
	case Stitch:
		return "stitch"
	case Score:
		return "score"
	case CutInside:
		return "cut-inside"
	case CutOut:
		return "cut-outline"
	}
	return "unknown"
}

// Role says what a line is on its piece. Later stages decide by it, never by the
// line's name.
type Role int

// The roles. A line that no later stage asks for has none.
const (
	NoRole      Role = iota
	CutLine          // the outline of a piece
	HoleLine         // a hole of a piece
	NetLine          // the finished seam line
	BarLine          // where a bar lies; Index is the end, 0 head, 1 foot
	GrainArrow       // along the warp
	NotchStroke      // a stroke of the notch Of
	TipOpening       // for a bar's tip; Index is the end
	HemFold          // Index 1 is the finished edge, 2 the fold inside it
	FellFold         // of a flat-felled join Of: where the inner panel's allowance is folded
	FellTrim         // where the outer panel's allowance is trimmed to
	FellStitch       // the second row, along the fold
	MatchCross       // of the joint number Index, from 1, of two fields of a long stock, and its number beside it
	TextStroke       // a stroke of the label number Index of a drawing, from 0
)

// Line is one path on a piece or a sheet.
type Line struct {
	Name   string // identifier for files and for reading back: "cut line", "notch 3"
	Role   Role
	Index  int    // which of its role, where there are several
	Of     string // the notch or join that it belongs to, by its name
	Owner  Owner  // the piece that a line of a sheet is on
	Work   Work
	Points geom.Polyline // mm; the first point is not repeated at the end of a closed line
	Closed bool
}

// Owner is one copy of a piece on a sheet; nobody where Copy is 0, as for what
// belongs to the sheet itself.
type Owner struct {
	Piece string // its ID
	Copy  int    // from 1
}

// Moved returns the line with the motion m applied.
func (l Line) Moved(m geom.Motion) Line {
	l.Points = l.Points.Moved(m)
	return l
}

// Anchor says which point of a text stands at its place.
type Anchor int

// Anchors along the writing direction; vertically the base line stands at the
// place, or the middle of the capitals for Centre.
const (
	Start  Anchor = iota // left end of the base line
	Centre               // middle of the text, both ways
	End                  // right end of the base line
)

// LabelRole says what a label is on its piece. Later stages decide by it, never by the
// label's text.
type LabelRole int

// The roles. A label that no later stage asks for has none.
const (
	NoLabelRole LabelRole = iota
	TitleLabel            // the title of a template or gauge, on one line
	FigureLabel           // a number that its neighbours tell as well
	CornerLabel           // the letter of a corner
)

// Label is one line of text.
type Label struct {
	Text   string
	Role   LabelRole
	At     geom.Point
	Height float64 // of a capital letter, mm
	Turn   float64 // writing direction, radians from the x axis
	Anchor Anchor
}

// Moved returns the label with the motion m applied. Text is never mirrored: a
// label on a mirrored piece keeps reading from left to right.
func (l Label) Moved(m geom.Motion) Label {
	l.At = m.Apply(l.At)
	l.Turn = m.Direction(l.Turn)
	return l
}

// Stock is the kind of material that a piece is cut from.
type Stock int

// The kinds of stock.
const (
	Cloth Stock = iota // the roll, fixed width and open length
	Board              // stiff sheet for templates, fixed beds
)

// Stocks lists the kinds of stock.
func Stocks() []Stock { return []Stock{Cloth, Board} }

// String returns the stock's name, as designs and documents have it.
func (s Stock) String() string {
	switch s {
	case Cloth:
		return "cloth"
	case Board:
		return "board"
	}
	return "unknown"
}

// Kind is what a piece is.
type Kind int

// The kinds of pieces.
const (
	Own         Kind = iota // a shape of the maker's own
	WholeBody               // the bed in one panel
	BodyPanel               // one of the panels of a joined bed
	Strip                   // straight strip that makes a channel
	Facing                  // shaped piece that makes a channel
	Cap                     // closes a tail
	Template                // stiff template of a curve or a piece
	Gauge                   // press, allowance, cord or notch gauge
	SackSide                // the wall of a stow sack, or all of a flat one
	SackBase                // its round bottom
	SackBars                // all of the bars' sack
	TarpPanel               // the sheet over the bed, or a panel of it
	TarpPatch               // reinforces a corner of it
	CoverSide               // a side of the net over the bed
	CoverEnd                // an end of it
	WholeLining             // the second layer of the bed in one panel
	LiningPanel             // one of the panels of a joined one
)

// LiningID is the ID of a whole lining, and stands for all panels of a joined one.
const LiningID = "lining-body"

// Lining reports whether the kind is the second layer of the bed or a panel of it.
func (k Kind) Lining() bool { return k == WholeLining || k == LiningPanel }

// Body reports whether the kind is the bed or a panel of it.
func (k Kind) Body() bool { return k == WholeBody || k == BodyPanel }

// Panel is which panel of a joined bed a piece is.
type Panel int

// The panels of a bed in two and in three.
const (
	WidePanel   Panel = iota // the wider of two
	NarrowPanel              // the narrower of two
	CentrePanel              // the middle one of three
	LeftPanel
	RightPanel
	PanelCount // how many there are
)

// String returns the panel's identifier, as ids of pieces have it.
func (p Panel) String() string {
	return [PanelCount]string{"wide", "narrow", "centre", "left", "right"}[p]
}

// Margin is what a piece has at one of its edges outside or beside the finished line,
// or where it is folded, stitched or left open: what the sewing table needs.
type Margin struct {
	At   Edge
	Wide float64 // mm
	Join Rim     // for AtJoin
}

// Edge says where a piece has a [Margin].
type Edge int

// The places of margins.
const (
	AtSide          Edge = iota // allowance at the one side of the bed that a panel has
	AtSides                     // at both
	AtJoin                      // allowance at a join, flat-felled
	AtEnds                      // allowance at the body's ends
	TurnedEnds                  // the body's ends, turned in two times
	AtLongEdges                 // turn-under at each long edge of a strip
	AtFoot                      // stitch line from the folded edge
	AtDepth                     // finished depth of a channel, stitch line to fold
	AtTurnedEnds                // allowance at the ends of a channel, turned in
	AtOpening                   // worked opening of a strip at each bar tip
	AtOuterEdge                 // allowance at a facing's outer edge
	AtInnerEdge                 // turn-under at its inner edge
	AtSeamOpening               // opening in a facing's seam at each bar tip
	AtSeam                      // allowance at a cap's seam
	AtHem                       // hem at a cap's top edge, folded two times
	AtDip                       // dip of a cap's top edge
	AtSackSeam                  // allowance at every seam of a sack
	AtMouth                     // hem at a sack's mouth, folded two times
	AtCorner                    // across a sack's corner, from its tip
	AtTarpEdge                  // hem round a tarp, folded two times
	AtTarpJoin                  // allowance at its joins, flat-felled
	AtPatch                     // turn-under at a patch's inner edges
	AtCoverSeam                 // allowance at the ridge and corners of a cover
	AtCoverEdge                 // what its lower edge has past the net line, the hem not counted
	AtCoverHem                  // its hem
	AtLiningOpening             // hem at the opening of a lining, folded two times
)

// Piece is one outline to be cut with all its marks, in its own coordinates.
type Piece struct {
	ID      string // stable lower-case name, unique in a design: "body", "cap-head", "template-side"
	Kind    Kind
	Title   string // what is lettered on it, in the language of the words
	Stock   Stock
	Article article.Article // that a cloth piece is sewn into
	Roll    int             // of a cloth piece: the roll that it is cut from, from 0, the body's
	Count   int             // how many to cut, at least 1
	Paired  bool            // every second copy is mirrored

	Cut   geom.Ring   // where to cut, counter-clockwise
	Holes []geom.Ring // cut through inside, counter-clockwise
	Net   geom.Ring   // finished seam line; empty for templates

	Lines  []Line // everything else: folds, stitches, notches, ticks
	Labels []Label
	Checks []Measure // distances that prove the piece true on its stock

	Margins []Margin // at its edges, in the order in which they are told
	Hem     float64  // length of the hem to be sewn on it, mm; 0: none

	Lie Lie // of templates and gauges

	OneWay    bool // may not be turned end for end on the roll
	FreeGrain bool // may be turned by quarters as well

	Bed int // its number among beds that are laid together, from 1; 0: it is laid alone
}

// OfBed returns the piece as that of a bed, by its number from 1, among several that are
// laid together: its id tells it from theirs.
func (p Piece) OfBed(bed int) Piece {
	p.Bed = bed
	p.ID = p.bedID() + p.ID
	return p
}

// Alone returns the piece as it is in its own design.
func (p Piece) Alone() Piece {
	p.ID = strings.TrimPrefix(p.ID, p.bedID())
	p.Bed = 0
	return p
}

// bedID returns what the id of a bed's piece begins with.
func (p Piece) bedID() string {
	if p.Bed == 0 {
		return ""
	}
	return fmt.Sprintf("bed-%d-", p.Bed)
}

// Moved returns the piece with the motion m applied to all of it.
func (p Piece) Moved(m geom.Motion) Piece {
	p.Cut = p.Cut.Moved(m)
	p.Net = p.Net.Moved(m)
	holes := make([]geom.Ring, len(p.Holes))
	for i, h := range p.Holes {
		holes[i] = h.Moved(m)
	}
	lines := make([]Line, len(p.Lines))
	for i, l := range p.Lines {
		lines[i] = l.Moved(m)
	}
	labels := make([]Label, len(p.Labels))
	for i, l := range p.Labels {
		labels[i] = l.Moved(m)
	}
	p.Holes, p.Lines, p.Labels = holes, lines, labels
	return p
}
