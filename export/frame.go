package export

import (
	"fmt"

	"slingloft/outline/geom"
)

// Frame is the room on a sheet: the lay area for the pieces and around it a band
// for crosses, check bars and title block, so that these never lie on a piece.
//
//	+------------------------------------------+
//	| x              top band                x |
//	|   +----------------------------------+   |
//	| | |                                  |   |
//	| | |            lay area              |   |
//	| | |                                  |   |
//	|   +----------------------------------+   |
//	|       ----- bars       [ title block ]   |
//	| x     -----            [             ] x |
//	+------------------------------------------+
//
// Band and lettering are sized on paper: at 1:5 they take five times the room in
// the true measure that a Frame is in, so that they can still be read.
type Frame struct {
	Width, Height float64  // whole sheet, mm true
	Lay           geom.Box // lay area in the sheet, mm true
	Scale         float64  // length on paper over true length

	// Inside says that the sheet is the stock, band and all, as a machine's bed is.
	// Otherwise the lay area alone is the stock.
	Inside bool
	bare   bool // no band: what belongs there lies in the waste
	empty  bool // nor in the waste: nothing belongs there
}

// Widths of the band in mm on paper.
const (
	bandLeft   = 20.0
	bandBottom = 30.0
	bandRight  = 10.0
	bandTop    = 10.0
)

// What the band has to hold in mm on paper beside the longest bar, which keeps
// its true length; see [crosses], [barPlaces] and [titleBlock] for the places.
const (
	beforeBarX = 12.0
	afterBarX  = 5.0
	minBlock   = 60.0
	maxBlock   = 150.0
	beforeBarY = bandBottom + 2
	afterBarY  = 12.0
)

// unit is the true length of a millimetre on paper.
func (f Frame) unit() float64 { return 1 / f.Scale }

// longestBar returns the length of the longest check bar, mm true.
func longestBar() float64 {
	longest := 0.0
	for _, b := range Bars() {
		longest = max(longest, b.Length)
	}
	return longest
}

// minSize returns the smallest sheet that holds the band, mm true.
func (f Frame) minSize() (width, height float64) {
	u, bar := f.unit(), longestBar()
	return bar + float64((beforeBarX+afterBarX+minBlock+bandRight)*u), bar + float64((beforeBarY+afterBarY)*u)
}

// Around returns the frame whose lay area has the given size in mm true, with
// the band added outside, for a drawing at the given scale (1 for true size).
func Around(width, height, scale float64) Frame {
	f := Frame{Scale: scale}
	u := f.unit()
	f.Lay = geom.Box{Min: geom.Pt(bandLeft*u, bandBottom*u), Max: geom.Pt(float64(bandLeft*u)+width, float64(bandBottom*u)+height)}
	minWidth, minHeight := f.minSize()
	f.Width = max(f.Lay.Max.X+float64(bandRight*u), minWidth)
	f.Height = max(f.Lay.Max.Y+float64(bandTop*u), minHeight)
	return f
}

// Empty returns the frame of a stock of the given size in mm, at true size, that holds
// what is laid on it and nothing else: no band, no crosses, no check bars, no title.
func Empty(width, height float64) Frame {
	return Frame{Width: width, Height: height, Lay: geom.Box{Max: geom.Pt(width, height)}, Scale: 1, Inside: true, empty: true}
}

// BedError says that a bed is too small for what has to be on every sheet. Sizes in mm.
type BedError struct {
	Width, Height         float64
	NeedWidth, NeedHeight float64
}

func (e *BedError) Error() string {
	return fmt.Sprintf("bed of %g × %g mm: a sheet needs at least %.1f × %.1f mm",
		e.Width, e.Height, e.NeedWidth, e.NeedHeight)
}

// Within returns the frame for true size that fits into a machine's bed of the
// given size in mm, the band taken off the bed. One that is too small is a [BedError].
func Within(width, height float64) (Frame, error) {
	f := Frame{Width: width, Height: height, Scale: 1, Inside: true}
	minWidth, minHeight := f.minSize()
	if !Inside(width, minWidth, MaxSize) || !Inside(height, minHeight, MaxSize) {
		return Frame{}, &BedError{width, height, minWidth, minHeight}
	}
	f.Lay = geom.Box{Min: geom.Pt(bandLeft, bandBottom), Max: geom.Pt(width-bandRight, height-bandTop)}
	return f, nil
}
