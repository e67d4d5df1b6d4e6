package template

import (
	"fmt"
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/words"
)

// CapCurves bounds half an end cap at its net line: what of it lies at x > 0 in the
// cap's own coordinates, both curves from the centre line outwards.
type CapCurves struct {
	Piece       string // ID of the cap
	End         bed.End
	Side        bed.Side // which half of the bed's it is
	Seam, Top   geom.Polyline
	SeamNotches []Notch // running lengths from the centre line
}

// Cap returns the stiff template of half an end cap, to be turned over on its centre
// line, which is drawn on the cloth square to the selvedge: seam and top edge with ticks
// by their running lengths.
func Cap(id, title string, c CapCurves, opts Options) (piece.Piece, error) {
	if len(c.Seam) == 0 || len(c.Top) == 0 {
		return piece.Piece{}, fmt.Errorf("%s: the cap has no seam or no top edge", id)
	}
	centre := geom.Polyline{c.Seam[0], c.Top[0]}
	seam := opts.Edge(words.CapSeamEdge, c.Seam, true)
	seam.Notches = c.SeamNotches
	p, err := Shape(id, title, []Edge{seam, opts.Edge(words.CapTopEdge, c.Top, true), opts.Edge(words.CentreEdge, centre, true)}, opts)
	if err != nil {
		return p, err
	}
	p.Lie = piece.Lie{For: piece.CapBoard, Net: []geom.Polyline{c.Seam, c.Top}, Rests: []piece.Rest{{On: piece.OnCentreLine, Edge: centre}},
		Places: []piece.Place{
			{Piece: c.Piece, End: c.End, Side: c.Side},
			{Piece: c.Piece, End: c.End, Side: bed.Right - c.Side, Over: true, Motion: geom.Motion{Mirror: true, Turn: math.Pi}},
		}}
	return p, nil
}
