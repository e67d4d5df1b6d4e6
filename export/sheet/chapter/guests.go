package chapter

import (
	"fmt"

	"slingloft/export/sheet"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
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
		t.Add(g.Name, b.SignedFigure(l.Level.Along), b.SignedFigure(l.Level.Sag), b.SignedFigure(l.Level.Height), ground,
			b.Style.Angle(l.Hang[hung.Head]), b.Style.Angle(l.Hang[hung.Foot]), b.Style.Force(state.HeadLine.Load(l.Loads)),
			b.Style.Force(state.FootLine.Load(l.Loads)), b.Style.Force(state.SideCord.Load(l.Loads)))
		said = append(said, b.guestMargin(g.Name, g.Least))
	}
	return []sheet.Block{t, sentences(append(said, say.How))}
}

// guestMargin says which part has least in hand under a guest.
func (b build) guestMargin(name string, c margin.Check) string {
	say, text := b.Say.Guests, b.Say.Guests.Least
	switch {
	case c.Capacity == 0:
		return fmt.Sprintf(say.Unknown, name)
	case c.Unmet():
		text = say.Unmet
	case c.Bound:
		text = say.AtMost
	}
	return fmt.Sprintf(text, name, b.Say.Names.Margins.CheckName(c), quantity.Decimal(c.Ratio, 2), quantity.Decimal(c.Required, 2))
}
