package template

import (
	"fmt"
	"math"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
	"slingloft/outline/words"
)

// HollowEdge is an edge that is hollow towards its cloth: Line runs from a corner, or all
// along the straight line between both corners on the x axis, the cloth below it.
type HollowEdge struct {
	Line   geom.Polyline // from a corner to the middle, or to the other corner
	Places []piece.Place // their motions from those coordinates
	For    piece.BoardUse
}

// Hollow returns the stiff template of a hollow edge, or of half of it, to be turned over
// in its middle: the curve against a straight edge that is parallel to the straight line
// between the corners and lies inside of it by the distance lettered.
func Hollow(id, title string, h HollowEdge, opts Options) (piece.Piece, error) {
	half := !opts.Whole
	opts.Whole = true
	// The draft counts from a line far inside, on which the straight edge falls on a step.
	step := straightStep
	if opts.Style.Inches {
		step = straightStepIn
	}
	far := math.Ceil((opts.Backing+10*quantity.Inch-h.Line.Bounds().Min.Y)/step) * step
	raised := geom.Motion{Shift: geom.Pt(0, far)}
	s, err := newSideDraft(SideCurve{Line: h.Line.Moved(raised)}, opts)
	if err != nil {
		return piece.Piece{}, design.Of(id, err)
	}
	deep := far - s.edge
	r := s.parts(id, title)[0]
	r.ends, r.on = [2]words.BoardEdge{words.CornerEdge, words.CornerEdge}, [2]piece.Seen{}
	if half {
		r.ends[1], r.on[1] = words.MiddleEdge, piece.OnMidEdge
	}
	r.from, r.notes = s.edge, []string{opts.Words.FromEdge, fmt.Sprintf(opts.Words.FromChord, depthFigure(opts.Style, deep))}
	r.lie = piece.Lie{For: h.For, Rests: []piece.Rest{{On: piece.OnChord, Off: -deep}}}
	for _, p := range h.Places {
		p.Motion.Shift = p.Motion.Apply(geom.Pt(0, -far))
		r.lie.Places = append(r.lie.Places, p)
	}
	return s.draw(r)
}
