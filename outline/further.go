package outline

import (
	"math"
	"slices"

	"slingloft/outline/bed"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/hung"
	"slingloft/outline/insectnet"
	"slingloft/outline/panel"
	"slingloft/outline/piece"
	"slingloft/outline/sack"
	"slingloft/outline/tarp"
	"slingloft/outline/template"
	"slingloft/outline/words"
)

// Further is what is sewn beside the bed, as far as the design asks for it.
type Further struct {
	Sack  sack.Sewn // no pieces: none
	Tarp  tarp.Sewn // likewise
	Cover insectnet.Sewn
	// Lining is sewn into the bed itself.
	Lining panel.Lining
}

// Hanging is what further pieces are built around: the bed as it hangs, its own pieces and
// cords, the size of the tarp over it, and how far its anchors are apart, mm; 0: not known.
type Hanging struct {
	Shape   *hung.Shape
	Sewn    panel.Sewn
	Cords   []cord.Cord
	Over    tarp.Size
	Anchors float64
	// Times is how many times as wide the body was cut again at a flat place; nil: it was not.
	// A lining follows it.
	Times func(u float64) float64
}

// FurtherPieces builds every piece beside the bed. Each set is lettered with a mark of its
// own, so that a bed's stays what it is whatever is sewn beside it. The error is a
// [hung.Impossible], or a [design.Advised] of the place of the cover's zip.
func FurtherPieces(d design.Design, h Hanging, w words.Lettering) (Further, error) {
	var f Further
	var err error
	if f.Lining, err = lined(d, h, w); err != nil {
		return f, err
	}
	if d.Sack.On {
		cloth := 0.0
		for _, p := range append(slices.Clip(h.Sewn.Pieces), f.Lining.Pieces...) {
			cloth += d.ClothFor(p.Article).ArealDensity.Grams(float64(p.Count) * p.Cut.Area())
		}
		packed := sack.PackedOf(d, cloth, h.Cords)
		f.Sack = sack.Pieces(d, packed, marked(sack.Pieces(d, packed, "", w).Pieces), w)
	}
	if d.Tarp.On {
		bare, err := tarp.Pieces(d, h.Over, "", w)
		if err == nil {
			f.Tarp, err = tarp.Pieces(d, h.Over, marked(bare.Pieces), w)
		}
		if err != nil {
			return f, err
		}
	}
	if f.Cover, err = covered(d, h, w); err != nil {
		return f, err
	}
	for _, set := range [][]piece.Piece{f.Sack.Pieces, f.Tarp.Pieces, f.Lining.Pieces, f.Cover.Pieces} {
		for i := range set {
			set[i].Roll = d.RollOf(set[i].Article)
		}
	}
	return f, nil
}

// lined builds the lining of a bed; none where the design asks for none. Where its edges
// cannot be sewn to the body's, a thinner pad that lets them is looked for.
func lined(d design.Design, h Hanging, w words.Lettering) (panel.Lining, error) {
	if !d.Lining.On {
		return panel.Lining{}, nil
	}
	out, err := linedWith(d, h, w)
	if err != nil {
		return out, err
	}
	found, ok := spoils(d, out)
	if !ok {
		return out, nil
	}
	no := &hung.Impossible{Key: design.KeyLiningPadThickness, Found: found}
	for thin := d; thin.Lining.Thickness > 5; {
		thin.Lining.Thickness /= 2
		if try, err := linedWith(thin, h, w); err == nil {
			if _, bad := spoils(thin, try); !bad {
				no.Bound, no.Limit = design.AtMost, thin.Lining.Thickness
				break
			}
		}
	}
	return out, no
}

// spoils returns why a lining cannot be sewn, if it cannot: an edge that hangs longer than
// the body's by more than is allowed, or one that doubles back, so that no offsets mark it.
func spoils(d design.Design, l panel.Lining) (design.Finding, bool) {
	for _, s := range l.Seams {
		if !s.Within() {
			return design.Found(design.LiningHangsOff, math.Abs(s.Remains)), true
		}
	}
	for _, c := range l.Curves() {
		if _, err := template.Offsets(c.Line, d.Template.Tick); err != nil {
			return design.Found(design.LiningTurns), true
		}
	}
	return design.Finding{}, false
}

// linedWith is lined without a look at how its edges come out.
func linedWith(d design.Design, h Hanging, w words.Lettering) (panel.Lining, error) {
	laid := flat.LiningOf(d, h.Shape)
	b, err := flat.LayLining(h.Shape, d.Cap.Kind == design.Leaning, laid)
	if err != nil {
		return panel.Lining{}, err
	}
	if h.Times != nil {
		b = b.Recut(h.Times)
	}
	bare, err := panel.Lined(d, h.Shape, &b, h.Sewn, "", w)
	if err != nil {
		return panel.Lining{}, err
	}
	out, err := panel.Lined(d, h.Shape, &b, h.Sewn, marked(bare.Pieces), w)
	out.Laid = laid
	return out, err
}

// covered builds the cover over a bed; none where the design asks for none.
func covered(d design.Design, h Hanging, w words.Lettering) (insectnet.Sewn, error) {
	if !d.Cover.On {
		return insectnet.Sewn{}, nil
	}
	on := insectnet.Bed{Reach: h.Sewn.Reach, Long: h.Sewn.SideNet.HungLength(), CapTops: h.Sewn.CapTops,
		Notches: [2][]piece.Notch{h.Sewn.NotchesOn(bed.Left), h.Sewn.NotchesOn(bed.Right)}}
	s, err := insectnet.SpaceOf(d, h.Shape, on, h.Anchors)
	if err != nil {
		return insectnet.Sewn{}, err
	}
	bare, err := insectnet.Pieces(d, s, on, "", w)
	if err != nil {
		return insectnet.Sewn{}, err
	}
	return insectnet.Pieces(d, s, on, marked(bare.Pieces), w)
}

// marked returns the mark of pieces, see [Mark].
func marked(pieces []piece.Piece) string { return Mark(panel.Sewn{Pieces: pieces}, nil) }

// Pieces returns all pieces.
func (f Further) Pieces() []piece.Piece {
	return slices.Concat(f.Sack.Pieces, f.Tarp.Pieces, f.Lining.Pieces, f.Cover.Pieces)
}

// Seams returns all seams.
func (f Further) Seams() []piece.Seam {
	return slices.Concat(f.Sack.Seams, f.Tarp.Seams, f.Lining.Seams, f.Cover.Seams)
}

// Curves returns the seam lines by which further pieces can be marked by hand.
func (f Further) Curves() []piece.Curve {
	return slices.Concat(f.Tarp.Curves(), f.Lining.Curves(), f.Cover.ByHand())
}
