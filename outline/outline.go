// Package outline builds what is cut: its builders emit closed outlines with their
// marks for every cloth panel and stiff template of a bridge hammock.
//
// This package says which there are. How each is made stands in the rooms below:
// outline/panel has a builder for each cloth piece, outline/template one for each kind
// of template and gauge, outline/divide divides what is longer than a sheet. They
// share the words of outline/piece (piece, line, label, seam) and the room for
// lettering of outline/label; the mechanics and curves that they need sit beside them.
//
// All lengths are mm, forces N, angles radians. In a piece's own coordinates u
// (x) runs along the hammock with the head end negative and v (y) across it, so
// that the warp runs along u unless the piece says otherwise. Outlines are
// closed, simple and counter-clockwise.
package outline

import (
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/hung"
	"slingloft/outline/panel"
	"slingloft/outline/template"
	"slingloft/outline/words"
)

// Panels builds every cloth piece of a design from its hung shape and flat body and
// walks its seams; see [panel.Pieces]. mark is lettered on each.
func Panels(d design.Design, s *hung.Shape, b *flat.Body, mark string, w words.Lettering) (panel.Sewn, error) {
	return panel.Pieces(d, s, b, mark, w)
}

// Cutting is what the templates and gauges of a bed are made for: its cloth pieces and
// its cords.
type Cutting struct {
	Design design.Design
	Mark   string // lettered on each
	Sewn   panel.Sewn
	Cords  []cord.Cord
	// Further is what is sewn beside the bed.
	Further Further
	Words   words.Lettering
	Room    template.Room // on a sheet
}
