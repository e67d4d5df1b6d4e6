package chapter

import (
	"fmt"

	"slingloft/export/sheet"
	"slingloft/export/sheet/splice"
	"slingloft/outline/hung"
)

// barCut is the length to cut a bar to.
func (b build) barCut(e hung.End) float64 { return b.Design.Bar.CutFor(b.Shape.Ends[e].Bar) }

// ofEnd fills the name of an end into a text.
func (b build) ofEnd(text string, e hung.End) string { return fmt.Sprintf(text, b.Say.Names.Ends[e]) }

func (b build) barFacts(s *sheet.Step) {
	say := b.Say.Order
	for _, e := range hung.Ends() {
		s.Check(b.ofEnd(say.BarCut, e), b.Cloth(b.barCut(e)))
	}
	if b.Design.Bar.TipReach > 0 {
		s.Add(say.TipReach, b.Cloth(b.Design.Bar.TipReach))
	}
}

func (b build) showTip() sheet.Figures {
	return figure(splice.Tip(b.Data), splice.TipWords(b.Data).Caption)
}

// tackFacts tells how far along the leg from a bar's tip the cloth's corner hangs.
func (b build) tackFacts(s *sheet.Step) {
	for _, e := range hung.Ends() {
		s.Add(b.ofEnd(b.Say.Order.Leg, e), b.Rope(b.CornerRun(e)))
	}
}
