package chapter

import (
	"fmt"
	"math"

	"slingloft/export/sheet"
	"slingloft/outline/cord"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

func (b build) stepCords() sheet.Step {
	s := step(b.Say.Order.Cords)
	for _, c := range b.Cords.Cords {
		s.Add(b.CordName(c), fmt.Sprintf("%d × %s", c.Count, b.Long(c.Cut)))
	}
	return s
}

func (b build) stepEyes() sheet.Step {
	say := b.Say.Order
	s := step(say.Eyes)
	thick := b.Design.Leg.Diameter
	if loop, _, err := b.Cords.Splicing.Eye(thick); err == nil {
		s.Add(say.EyeLoop, b.Long(loop))
	}
	s.Add(say.Bury, b.Long(b.Cords.Splicing.EyeBury(thick)))
	for _, c := range b.Cords.Cords {
		for _, m := range c.Marks {
			if m.Spot == (cord.Spot{Kind: cord.Throat, On: cord.OfEye}) {
				s.Add(fmt.Sprintf(say.Throat, b.CordName(c)), b.Long(m.FromStart))
			}
		}
	}
	return s
}

// stepThread draws the side cords into their channels.
func (b build) stepThread() sheet.Step {
	say := b.Say.Order
	s, part := step(say.ThreadCords), cord.SideCord
	if b.Design.Splice.Whole {
		s, part = step(say.ThreadLoops), cord.SideLoop
	}
	if c, ok := b.Cords.Find(part); ok {
		for _, m := range c.Marks {
			if at := m.Spot; !m.Buried && (at.Kind == cord.Tip || at == cord.Spot{Kind: cord.Middle}) {
				s.Add(fmt.Sprintf(say.FromStart, b.Say.Names.Cords.Spot(at)), b.Long(m.FromStart))
			}
		}
	}
	return s
}

// stepSplice joins legs and side cords.
func (b build) stepSplice() sheet.Step {
	say := b.Say.Order
	s := step(say.Splice)
	if b.Design.Splice.Whole {
		s = step(say.SpliceLoops)
	}
	s.Add(say.TipGap, b.Long(b.Cords.Splicing.Gap))
	s.Add(say.SideBury, b.Long(b.Cords.Splicing.Bury(b.Design.Side.Diameter)))
	s.Add(say.LegBury, b.Long(b.Cords.Splicing.Bury(b.Design.Leg.Diameter)))
	return s
}

// barCut is the length to cut a bar to.
func (b build) barCut(e hung.End) float64 { return b.Design.Bar.CutFor(b.Shape.Ends[e].Bar) }

// ofEnd fills the name of an end into a text.
func (b build) ofEnd(text string, e hung.End) string { return fmt.Sprintf(text, b.Say.Names.Ends[e]) }

func (b build) stepBars() sheet.Step {
	say := b.Say.Order
	s := step(say.Bars)
	for _, e := range hung.Ends() {
		s.Add(b.ofEnd(say.BarCut, e), b.Long(b.barCut(e)))
	}
	if b.Design.Bar.TipReach > 0 {
		s.Add(say.TipReach, b.Long(b.Design.Bar.TipReach))
	}
	return s
}

func (b build) stepTack() sheet.Step {
	say := b.Say.Order
	s := step(say.Tack)
	for _, e := range hung.Ends() {
		s.Add(b.ofEnd(say.Leg, e), b.Long(b.cornerRun(e)))
	}
	return s
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

func (b build) stepHang() sheet.Step {
	say := b.Say.Order
	s := step(say.Hang)
	for _, e := range hung.Ends() {
		s.Add(b.ofEnd(say.HangLine, e), b.Style.Angle(math.Atan(b.Shape.Ends[e].Slope)))
	}
	// What is set comes first, the apexes after it, to check.
	if b.Place != nil {
		for _, e := range hung.Ends() {
			s.Add(b.ofEnd(say.Support, e), b.Round(b.Place.Ends[e].Hook))
		}
	}
	higher, by := hung.Head, b.Shape.Offset
	if by < 0 {
		higher, by = hung.Foot, -by
	}
	s.Add(b.ofEnd(say.Higher, higher), b.Round(by))
	return s
}

func (b build) stepCorrect() sheet.Step {
	say, sh := b.Say.Order, b.Shape
	mid := sh.At(0)
	s := step(say.Correct)
	s.Add(say.HookToHook, b.Round(sh.Ends[hung.Foot].ApexX-sh.Ends[hung.Head].ApexX))
	s.Add(say.CordsAtHead, b.Round(sh.Ends[hung.Head].Section.Height))
	s.Add(say.CordsAtMiddle, b.Round(mid.Z-mid.Bottom))
	s.Add(say.CordsAtFoot, b.Round(sh.Ends[hung.Foot].Section.Height))
	s.Add(say.Apart, b.Round(2*mid.Y))
	s.Add(say.BarToBar, b.Round(b.bottomSpan()))
	return s
}

// bottomSpan is the distance of the bars along the bottom line.
func (b build) bottomSpan() float64 {
	half := b.Design.Bed.Span / 2
	a := geom.Pt(-half, b.Shape.Problem.Bottom(-half))
	return a.Dist(geom.Pt(half, b.Shape.Problem.Bottom(half)))
}
