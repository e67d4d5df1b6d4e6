package template

import (
	"fmt"

	"slingloft/outline/bed"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/words"
)

// TailCurves bounds half a tail of the body at its net line: all three curves on
// the left of the centre line, in the body's own coordinates.
type TailCurves struct {
	At   bed.End
	Bar  geom.Polyline // bar line, from the centre line to the side
	Side geom.Polyline // from the bar's corner outwards to the tail's corner
	End  geom.Polyline // end seam, from the centre line to the corner

	SideNotches, EndNotches []Notch // from the first points of Side and End
}

// Tail returns the stiff template of half a tail, to be turned over on
// the centre line: side and end seam with ticks by their running lengths, the
// centre line with ticks from the bar line.
func Tail(id, title string, tail TailCurves, opts Options) (piece.Piece, error) {
	if len(tail.Bar) == 0 || len(tail.End) == 0 {
		return piece.Piece{}, fmt.Errorf("%s: the tail has no bar line or no end seam", id)
	}
	centre := geom.Polyline{tail.Bar[0], tail.End[0]}
	side, end := opts.Edge(words.SideEdge, tail.Side, true), opts.Edge(words.EndSeamEdge, tail.End, true)
	side.Notches, end.Notches = tail.SideNotches, tail.EndNotches
	p, err := Shape(id, title, []Edge{
		opts.Edge(words.BarLineEdge, tail.Bar, false), side, end, opts.Edge(words.CentreEdge, centre, true),
	}, opts)
	if err != nil {
		return p, err
	}
	p.Lie = piece.Lie{For: piece.TailBoard, Net: []geom.Polyline{tail.Side, tail.End},
		Rests: []piece.Rest{{On: piece.OnCentreLine, Edge: centre}, {On: piece.OnBarLine, Edge: tail.Bar}},
		Places: []piece.Place{
			{Piece: "body", End: tail.At, Side: bed.Left},
			{Piece: "body", End: tail.At, Side: bed.Right, Over: true, Motion: geom.Motion{Mirror: true}},
		}}
	return p, nil
}
