package outline

import (
	"slingloft/outline/panel"
	"slingloft/outline/piece"
	"slingloft/outline/template"
)

// side returns the templates of a layer's side curve: whole ones that are asked for come in
// halves where a sheet has no room for them.
func (c Cutting) side(id, title string, s panel.Sewn, o template.Options) ([]piece.Piece, error) {
	build := func() ([]piece.Piece, error) { return template.Side(id, title, sideCurve(s), o) }
	whole, err := build()
	if err != nil || !o.Whole || o.Room.Fits(whole[0]) {
		return whole, err
	}
	o.Whole = false
	return build()
}
