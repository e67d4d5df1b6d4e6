package chapter

import (
	"fmt"

	"slingloft/export/sheet"
	"slingloft/outline/design"
)

// assumptions says what the figures take for granted.
func (b build) assumptions() (sheet.Section, error) {
	say := b.Say.Assumed
	l := append(sheet.List{}, say.Mechanics...)
	l = append(l, fmt.Sprintf(say.Reach, b.Long(b.Sewn.Reach)))
	if b.Body.Cut == design.Net {
		l = append(l, b.shearWords())
	} else {
		l = append(l, say.Straight)
	}
	l = append(append(l, b.stretchWords()), say.Strengths...)
	return sheet.Section{ID: "assumptions", Title: say.Title, Blocks: []sheet.Block{l}}, nil
}

// shearWords says how much the cloth shears when it hangs.
func (b build) shearWords() string {
	s := b.Body.Shear
	angle, along, aside := b.Style.Angle(s.Angle), b.Round(max(s.At.X, -s.At.X)), b.Round(max(s.At.Y, -s.At.Y))
	if limit := b.Design.Cloth.LockingAngle; limit > 0 {
		return fmt.Sprintf(b.Say.Assumed.ShearOf, angle, b.Style.Angle(float64(limit)), along, aside)
	}
	return fmt.Sprintf(b.Say.Assumed.Shear, angle, along, aside)
}

// stretchWords says whether stretch was taken off.
func (b build) stretchWords() string {
	d := b.Design
	switch {
	case d.Side.Stiffness > 0 && d.Leg.Stiffness > 0:
		return b.Say.Assumed.Stretch
	case d.Side.Stiffness > 0 || d.Leg.Stiffness > 0:
		return b.Say.Assumed.OneStretch
	}
	return b.Say.Assumed.NoStretch
}

// sources names what published figures and methods stand behind the sheet.
func (b build) sources() (sheet.Section, error) {
	say := b.Say.Sources
	return sheet.Section{ID: "sources", Title: say.Title, Blocks: []sheet.Block{sheet.List(say.List)}}, nil
}
