package chapter

import (
	"fmt"

	"slingloft/export/sheet"
	"slingloft/outline/accuracy"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// What first load does to the cords is pulled out of them before they are marked, or of
// the spliced chains; or it is cut off or left.

func (b build) pulledFirst() bool {
	a := b.Design.Accuracy
	return a.FirstLoad == design.PullSet && !a.NodesRead
}

func (b build) readPulled() bool {
	a := b.Design.Accuracy
	return a.FirstLoad == design.PullSet && a.NodesRead
}

func (b build) readUnpulled() bool {
	a := b.Design.Accuracy
	return a.FirstLoad != design.PullSet && a.NodesRead
}

func (b build) pullFacts(s *sheet.Step) {
	s.Add(b.Say.Order.PullOf, b.Style.Force(accuracy.Pull(b.Shape)))
}

func (b build) cordFacts(s *sheet.Step) {
	for _, c := range b.Cords.Cords {
		s.Check(b.CordName(c), fmt.Sprintf("%d × %s", c.Count, b.Rope(c.Cut)))
	}
}

func (b build) eyeFacts(s *sheet.Step) {
	say := b.Say.Order
	thick := b.Design.Leg.Diameter
	if loop, _, err := b.Cords.Splicing.Eye(thick); err == nil {
		s.Add(say.EyeLoop, b.Rope(loop))
	}
	s.Add(say.Bury, b.Rope(b.Cords.Splicing.EyeBury(thick)))
	for _, c := range b.Cords.Cords {
		for _, m := range c.Marks {
			if m.Spot == (cord.Spot{Kind: cord.Throat, On: cord.OfEye}) {
				s.Add(fmt.Sprintf(say.Throat, b.CordName(c)), b.Rope(m.FromStart))
			}
		}
	}
}

// threadFacts tells the marks by which cords are threaded.
func (b build) threadFacts(s *sheet.Step) {
	part := cord.SideCord
	if b.looped() {
		part = cord.SideLoop
	}
	if c, ok := b.Cords.Find(part); ok {
		for _, m := range c.Marks {
			if at := m.Spot; !m.Buried && (at.Kind == cord.Tip || at == cord.Spot{Kind: cord.Middle}) {
				s.Add(fmt.Sprintf(b.Say.Order.FromStart, b.Say.Names.Cords.Spot(at)), b.Rope(m.FromStart))
			}
		}
	}
}

func (b build) spliceFacts(s *sheet.Step) {
	say := b.Say.Order
	s.Check(say.TipGap, b.Rope(b.Cords.Splicing.Gap))
	s.Add(say.SideBury, b.Rope(b.Cords.Splicing.Bury(b.Design.Side.Diameter)))
	s.Add(say.LegBury, b.Rope(b.Cords.Splicing.Bury(b.Design.Leg.Diameter)))
}

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

// tackFacts tells how far along the leg from a bar's tip the cloth's corner hangs.
func (b build) tackFacts(s *sheet.Step) {
	for _, e := range hung.Ends() {
		s.Add(b.ofEnd(b.Say.Order.Leg, e), b.Rope(b.cornerRun(e)))
	}
}

// cornerRun returns the cord from a bar's tip to the cloth's corner when it hangs.
func (b build) cornerRun(e hung.End) float64 {
	side := b.Body.Side
	tip := b.Body.Tips[e]
	if e == hung.Head {
		return tip
	}
	return side.HungLength() - tip
}
