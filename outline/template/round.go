package template

import (
	"slingloft/outline/bed"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/words"
)

// RoundHalf is half the seam line of a round piece, from its right corner over the top to
// its left one, in the piece's own coordinates.
type RoundHalf struct {
	Piece   string // ID of the round piece
	Seam    geom.Polyline
	Notches []Notch // running lengths along Seam
}

// Round returns the stiff template of half a round piece, to be turned over on its centre
// line.
func Round(id, title string, c RoundHalf, opts Options) (piece.Piece, error) {
	seam := opts.Edge(words.RoundSeamEdge, c.Seam, true)
	seam.Notches = c.Notches
	centre := geom.Polyline{c.Seam[len(c.Seam)-1], c.Seam[0]}
	p, err := Shape(id, title, []Edge{seam, opts.Edge(words.CentreEdge, centre, false)}, opts)
	if err != nil {
		return p, err
	}
	p.Lie = piece.Lie{For: piece.RoundBoard, Net: []geom.Polyline{c.Seam}, Rests: []piece.Rest{{On: piece.OnCentreLine, Edge: centre}},
		Places: []piece.Place{
			{Piece: c.Piece, Side: bed.Left},
			{Piece: c.Piece, Side: bed.Right, Over: true, Motion: geom.Motion{Mirror: true}},
		}}
	return p, nil
}
