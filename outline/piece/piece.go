// Package piece holds the words in which pieces are described: a piece with its
// outline, lines and labels, the kinds of work and stock, seams and notches.
//
// Lengths are mm, angles radians. Outlines are closed, simple and counter-clockwise.
package piece

import "slingloft/outline/geom"

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

// Line is one path on a piece or a sheet.
type Line struct {
	Name   string // what the line is, for ids and for reading back: "cut line", "notch 3"
	Work   Work
	Points geom.Polyline // mm; the first point is not repeated at the end of a closed line
	Closed bool
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

// Label is one line of text.
type Label struct {
	Text   string
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

// Measure is a distance between two named points of a piece, for checking what
// was marked.
type Measure struct {
	Name   string  // "head left to foot right"
	Length float64 // mm
}

// Stock is the kind of material that a piece is cut from.
type Stock int

// The kinds of stock.
const (
	Cloth Stock = iota // the roll, fixed width and open length
	Board              // stiff sheet for templates, fixed beds
)

// Piece is one outline to be cut with all its marks, in its own coordinates.
type Piece struct {
	ID     string // stable lower-case name, unique in a design: "body", "cap-head", "template-side"
	Title  string // what is lettered on it
	Stock  Stock
	Count  int  // how many to cut, at least 1
	Paired bool // every second copy is mirrored

	Cut   geom.Ring   // where to cut, counter-clockwise
	Holes []geom.Ring // cut through inside, counter-clockwise
	Net   geom.Ring   // finished seam line; empty for templates

	Lines  []Line // everything else: folds, stitches, notches, ticks
	Labels []Label
	Checks []Measure // distances that prove the piece true on its stock

	OneWay    bool // may not be turned end for end on the roll
	FreeGrain bool // may be turned by quarters as well
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
