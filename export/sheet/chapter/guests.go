package chapter

import (
	"fmt"

	"slingloft/export/sheet"
	"slingloft/outline/hung"
	"slingloft/outline/state"
)

// guestBlocks tables what other sleepers find in the bed.
func (b build) guestBlocks() []sheet.Block {
	say := b.Say.Names.Guests
	t := sheet.Table{ID: "guests", Caption: fmt.Sprintf(b.Say.Guests.Caption, b.UnitWord()), Head: say.Columns[:],
		Words: []bool{true, false, false, false, false, false, false, false, false, false}}
	var said []string
	for _, g := range b.Guests {
		if g.Cannot != nil {
			said = append(said, fmt.Sprintf(say.Cannot, g.Name, b.Say.Names.Why(g.Cannot)))
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
		said = append(said, b.Say.Names.GuestMargin(g.Name, g.Least, say.Unmet))
	}
	return []sheet.Block{t, sentences(append(said, say.How))}
}
