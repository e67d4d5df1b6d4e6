package seam

import (
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/tarp"
)

// TarpFell draws the sections of the tarp's ridge or of a join: as it is sewn, one allowance
// trimmed, and as it is felled. It has no size where its allowance leaves no fell.
func TarpFell(d *given.Data) picture.Picture {
	f, say := tarp.FellOf(d.Design.Tarp.Allowance), d.Say.Tarp
	if f.Fold == 0 {
		return picture.Picture{}
	}
	return drawFell(d, "seam-tarp-fell", fell{d.Design.Tarp.Allowance, f.Fold, f.Trim, f.Second},
		fellWords{say.Fell, say.Covering, say.Covered})
}

// TarpHem draws the section of the tarp's hem.
func TarpHem(d *given.Data) picture.Picture {
	return drawHem(d, "seam-tarp-hem", d.Design.Tarp.Hem, bodyCloth, d.Say.Tarp.Hem, d.Say.Tarp.UnderUp)
}
