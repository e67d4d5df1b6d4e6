package chapter

import (
	"fmt"

	"slingloft/export/sheet"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
	"slingloft/outline/state"
)

// guestBlocks tables what other sleepers find in the bed.
func (b build) guestBlocks() []sheet.Block {
	say := b.Say.Guests
	t := sheet.Table{ID: "guests", Caption: fmt.Sprintf(say.Caption, b.UnitWord()), Head: say.Columns[:],
		Words: []bool{true, false, false, false, false, false, false, false, false, false}}
	var said []string
	for _, g := range b.Guests {
		if g.Cannot != nil {
			said = append(said, fmt.Sprintf(say.Cannot, g.Name, g.Cannot))
			continue
		}
		ground := "–"
		if g.Ground != 0 {
			ground = b.Figure(g.Ground)
		}
		l := g.Lying
		t.Add(g.Name, b.SignedFigure(l.Level.Along), b.Figure(l.Level.Sag), b.SignedFigure(l.Level.Height), ground,
			b.Style.Angle(l.Hang[hung.Head]), b.Style.Angle(l.Hang[hung.Foot]), b.Style.Force(state.HeadLine.Load(l.Loads)),
			b.Style.Force(state.FootLine.Load(l.Loads)), b.Style.Force(state.SideCord.Load(l.Loads)))
		if c := g.Least; c.Capacity > 0 {
			text := say.Least
			if c.Unmet() {
				text = say.Unmet
			}
			said = append(said, fmt.Sprintf(text, g.Name, b.Say.Names.Margins.CheckName(c), quantity.Decimal(c.Ratio, 2), quantity.Decimal(c.Required, 2)))
		}
	}
	return []sheet.Block{t, sentences(append(said, say.How))}
}
