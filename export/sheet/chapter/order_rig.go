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

// barFacts tells how the bars are cut and what their tips have to be.
func (b build) barFacts(s *sheet.Step) {
	say, bar := b.Say.Order, b.Design.Bar
	cord := b.Design.Side.Diameter
	if b.corded() {
		cord = max(cord, b.Design.Leg.Diameter)
	}
	for _, e := range hung.Ends() {
		s.Add(b.ofEnd(say.BarCut, e), b.Cloth(b.barCut(e)))
	}
	for _, e := range hung.Ends() {
		s.Add(b.ofEnd(say.CordToCord, e), b.Cloth(b.Shape.Ends[e].Bar))
	}
	for _, e := range hung.Ends() {
		s.Check(b.ofEnd(say.OverShoulders, e), b.Cloth(b.Shape.Ends[e].Bar-cord))
	}
	s.Add(say.NearEnough, b.Cloth(b.Design.Accuracy.Bar))
	if bar.TipReach > 0 {
		s.Add(say.TipReach, b.Cloth(bar.TipReach))
	}
	if face := bar.TipReach - cord/2; face > 0 {
		s.Add(say.TipFace, b.Cloth(face))
	}
	s.Add(say.TipPin, b.tipPin())
	s.Add(say.PinLong, fmt.Sprintf(b.Say.FirstNight.AtLeast, b.Cloth(b.Design.TipPast())))
	if bar.Wall > 0 {
		s.Add(say.PlugThick, b.Thick(bar.Outer-2*bar.Wall))
	}
	hole := say.NoHole
	if bar.Hole > 0 {
		hole = fmt.Sprintf(say.Hole, b.Thick(bar.Hole))
	}
	insert(s, 1, hole)
}

// tipPin tells how thick the pin of a tip is, or has to be.
func (b build) tipPin() string {
	if pin := b.Design.Bar.TipDiameter; pin > 0 {
		return b.Thick(pin)
	}
	if most := b.Design.MostTip(); most > 0 {
		return fmt.Sprintf(b.Say.FirstNight.AtMost, b.Style.ThickDown(most))
	}
	return b.Say.NotGiven
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
