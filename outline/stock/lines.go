package stock

import (
	"slices"

	"slingloft/outline/cord"
	"slingloft/outline/design"
)

// tipOf returns how large the tips of the bars have to be.
func tipOf(d design.Design) TipSize {
	t := TipSize{Pin: d.Bar.TipDiameter, Most: d.MostTip(), Past: d.TipPast()}
	if d.Bar.Wall > 0 {
		t.Plug = d.Bar.Outer - 2*d.Bar.Wall
	}
	return t
}

// lines lists the lines that are not made of cord of the designs': hang lines where one
// gives none, and what ties a shelter's ridge line.
func (b *Bill) lines(in Input) {
	var rows []Row
	for _, h := range in.Hammocks {
		has := func(p cord.Part) bool {
			return slices.ContainsFunc(h.Cords, func(c cord.Cord) bool { return c.Part == p })
		}
		if !has(cord.HeadLine) {
			rows = together(rows, Row{Kind: CordRow, Thing: OwnLine, Quantity: 2, Unit: Single, Note: Note{Kind: AsStrong}})
		}
		if has(cord.RidgeLine) {
			rows = together(rows, Row{Kind: CordRow, Thing: RidgeTie, Quantity: 2, Unit: Single, Note: Note{Kind: ToReach}})
		}
	}
	for _, r := range rows {
		b.row(r)
	}
}
