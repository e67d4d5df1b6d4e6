package outline

import (
	"slingloft/outline/article"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/panel"
	"slingloft/outline/piece"
	"slingloft/outline/sack"
	"slingloft/outline/words"
)

// Further is what is sewn beside the bed, as far as the design asks for it.
type Further struct {
	Sack sack.Sewn // no pieces: none
}

// FurtherPieces builds every piece beside the bed from the bed's own and its cords. Each
// set is lettered with a mark of its own, so that a bed's stays what it is whatever is
// sewn beside it.
func FurtherPieces(d design.Design, s panel.Sewn, cords []cord.Cord, w words.Lettering) Further {
	var f Further
	if d.Sack.On {
		cloth := 0.0
		for _, p := range s.Pieces {
			cloth += d.Cloth.ArealDensity.Grams(float64(p.Count) * p.Cut.Area())
		}
		packed := sack.PackedOf(d, cloth, cords)
		f.Sack = sack.Pieces(d, packed, marked(sack.Pieces(d, packed, "", w).Pieces), w)
	}
	for i := range f.Sack.Pieces {
		f.Sack.Pieces[i].Roll = d.RollOf(article.Sack)
	}
	return f
}

// marked returns the mark of pieces, see [Mark].
func marked(pieces []piece.Piece) string { return Mark(panel.Sewn{Pieces: pieces}, nil) }

// Pieces returns all pieces.
func (f Further) Pieces() []piece.Piece { return f.Sack.Pieces }

// Seams returns all seams.
func (f Further) Seams() []piece.Seam { return f.Sack.Seams }
