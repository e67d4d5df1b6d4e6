package work

import (
	"slingloft/outline/piece"
)

// Pieces returns every piece of the plan, cloth first.
func (p *Plan) Pieces() []piece.Piece {
	return append(append([]piece.Piece(nil), p.Sewn.Pieces...), p.Templates...)
}
