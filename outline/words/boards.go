package words

import (
	"fmt"

	"slingloft/outline/hung"
)

// Boards is what stands on stiff templates and gauges.
type Boards struct {
	Side                         string // title of the side curve's template
	Half, HeadHalf, FootHalf     string // that title
	Tails, Caps                  [2]string
	Facing                       string
	SackBase                     string
	TarpSide, TarpEnd, TarpRidge string
	LiningSide                   string
	LiningTails                  [2]string
	CoverBay, CoverRidge         string // of templates of a cover
	CoverTails, CoverEnds        [2]string
	Part                         string // title, number of the part, how many there are
	PartNumber                   string // number of the part, how many there are
	Shape                        string // mark
	Edges                        map[BoardEdge]string
	FromCentre                   string // what the figures across a side curve are
	Straight                     string // how far from the centre line its straight edge lies
	OnCentre                     string // that it lies on it
	FromEdge, AlongSelvedge      string // what the figures across a facing are, how its straight edge lies
	FromChord                    string // how far inside of the line between the corners a hollow edge's straight edge lies

	Press, Allowance, Notches string // titles of gauges
	Marks                     map[GaugeMark]string
	Notch                     string // number of a notch
}

// BoardEdge is an edge of a template.
type BoardEdge int

// The edges.
const (
	BarLineEdge    BoardEdge = iota // a bar line
	SideEdge                        // the side of a tail
	EndSeamEdge                     // the end seam of the body
	CentreEdge                      // the centre line
	CapSeamEdge                     // the seam of a cap
	CapTopEdge                      // its hemmed edge
	HeadBarEdge                     // the end of a side curve at the head bar
	FootBarEdge                     // at the foot bar
	BarEdge                         // at either
	MiddleEdge                      // in the middle
	HeadEndEdge                     // the end of a facing at the head
	FootEndEdge                     // at the foot
	RoundSeamEdge                   // the seam of a round piece
	CornerEdge                      // an end of a hollow edge, at a corner
	BoardEdgeCount                  // how many there are
)

// String returns the edge's identifier, as lines of files have it.
func (e BoardEdge) String() string {
	return [BoardEdgeCount]string{"BAR LINE", "SIDE", "END SEAM", "CENTRE LINE", "SEAM", "TOP, HEM",
		"HEAD BAR", "FOOT BAR", "BAR", "MIDDLE", "HEAD END", "FOOT END", "SEAM", "CORNER"}[e]
}

// GaugeMark is a step or mark of the press, allowance and notch gauges.
type GaugeMark int

// The marks.
const (
	TurnUnderStep  GaugeMark = iota
	ChannelStep              // the fold of a channel
	HemStep                  // of a cap
	SideStep                 // allowance at the body's sides
	EndStep                  // at its ends
	CapStep                  // at a cap's seam
	TopHemStep               // at its top edge
	SackHemStep              // folds of the mouth of a sack
	SackSeamStep             // allowance at its seams
	TarpHemStep              // folds of a tarp's edges
	TarpEdgeStep             // allowance for both of them
	TarpJoinStep             // at its joins, and turned under at patches
	HeadEndMark              // where the side seam begins
	FootEndMark              // and ends
	GoOnMark                 // where the next strip goes on
	GaugeMarkCount           // how many there are
)

// String returns the mark's identifier, as lines of files have it.
func (m GaugeMark) String() string {
	return [GaugeMarkCount]string{"TURN-UNDER", "CHANNEL FOLD", "HEM", "SIDE", "END", "CAP", "TOP HEM",
		"SACK HEM", "SACK SEAM", "TARP HEM", "TARP EDGE", "TARP JOIN", "HEAD END", "FOOT END", "GO ON"}[m]
}

// PartTitle is the title of one of the parts of a divided template.
func (b Boards) PartTitle(title string, n, of int) string { return fmt.Sprintf(b.Part, title, n, of) }

func englishBoards() Boards {
	return Boards{
		Side: "SIDE CURVE",
		Half: "%s (HALF)", HeadHalf: "%s (HEAD HALF)", FootHalf: "%s (FOOT HALF)",
		Tails:    [2]string{hung.Head: "HEAD TAIL", hung.Foot: "FOOT TAIL"},
		Caps:     [2]string{hung.Head: "HEAD CAP", hung.Foot: "FOOT CAP"},
		Facing:   "FACING",
		SackBase: "SACK BASE",
		CoverBay: "COVER LOWER EDGE", CoverRidge: "COVER RIDGE",
		CoverTails: [2]string{hung.Head: "COVER LOWER EDGE, HEAD TAIL", hung.Foot: "COVER LOWER EDGE, FOOT TAIL"},
		CoverEnds:  [2]string{hung.Head: "COVER HEAD END", hung.Foot: "COVER FOOT END"},
		LiningSide: "LINING SIDE CURVE", LiningTails: [2]string{hung.Head: "LINING HEAD TAIL", hung.Foot: "LINING FOOT TAIL"},
		TarpSide: "TARP SIDE EDGE", TarpEnd: "TARP END EDGE", TarpRidge: "TARP RIDGE",
		Part:       "%s %d OF %d",
		Shape:      "shape %s",
		Edges:      identified(BoardEdgeCount),
		FromCentre: "WIDTHS FROM THE CENTRE LINE",
		Straight:   "STRAIGHT EDGE %s FROM THE CENTRE LINE",
		OnCentre:   "STRAIGHT EDGE ON THE CENTRE LINE",
		FromEdge:   "WIDTHS FROM THE STRAIGHT EDGE", AlongSelvedge: "STRAIGHT EDGE ALONG THE SELVEDGE",
		FromChord: "STRAIGHT EDGE %s INSIDE THE LINE BETWEEN THE CORNERS",
		Press:     "PRESS GAUGE", Allowance: "ALLOWANCE GAUGE", Notches: "NOTCHES OF THE SIDE SEAM",
		Marks:      identified(GaugeMarkCount),
		Notch:      "NOTCH %d",
		PartNumber: "%d/%d",
	}
}
