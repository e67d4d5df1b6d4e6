package outline

import (
	"slices"

	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/panel"
	"slingloft/outline/piece"
	"slingloft/outline/sack"
	"slingloft/outline/tarp"
	"slingloft/outline/words"
)

// Further is what is sewn beside the bed, as far as the design asks for it.
type Further struct {
	Sack sack.Sewn // no pieces: none
	Tarp tarp.Sewn // likewise
}

// FurtherPieces builds every piece beside the bed from the bed's own, its cords and the
// size of the tarp over it. Each set is lettered with a mark of its own, so that a bed's
// stays what it is whatever is sewn beside it. The error is a [hung.Impossible].
func FurtherPieces(d design.Design, s panel.Sewn, cords []cord.Cord, over tarp.Size, w words.Lettering) (Further, error) {
	var f Further
	if d.Sack.On {
		cloth := 0.0
		for _, p := range s.Pieces {
			cloth += d.Cloth.ArealDensity.Grams(float64(p.Count) * p.Cut.Area())
		}
		packed := sack.PackedOf(d, cloth, cords)
		f.Sack = sack.Pieces(d, packed, marked(sack.Pieces(d, packed, "", w).Pieces), w)
	}
	if d.Tarp.On {
		bare, err := tarp.Pieces(d, over, "", w)
		if err == nil {
			f.Tarp, err = tarp.Pieces(d, over, marked(bare.Pieces), w)
		}
		if err != nil {
			return f, err
		}
	}
	for _, set := range [][]piece.Piece{f.Sack.Pieces, f.Tarp.Pieces} {
		for i := range set {
			set[i].Roll = d.RollOf(set[i].Article)
		}
	}
	return f, nil
}

// marked returns the mark of pieces, see [Mark].
func marked(pieces []piece.Piece) string { return Mark(panel.Sewn{Pieces: pieces}, nil) }

// Pieces returns all pieces.
func (f Further) Pieces() []piece.Piece { return append(slices.Clip(f.Sack.Pieces), f.Tarp.Pieces...) }

// Seams returns all seams.
func (f Further) Seams() []piece.Seam { return append(slices.Clip(f.Sack.Seams), f.Tarp.Seams...) }
