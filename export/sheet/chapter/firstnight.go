package chapter

import (
	"fmt"
	"math"
	"slices"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/wording"
	"slingloft/outline/accuracy"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/words"
)

func hangingTasks() []task {
	return []task{
		{kind: wording.SetAnchors, tools: []wording.Tool{wording.LevelTools}, facts: build.anchorFacts},
		{kind: wording.HangEmpty, facts: build.apexFacts},
		{kind: wording.ProofLoad, tools: []wording.Tool{wording.ProofBags, wording.LevelTools}, facts: build.proofFacts},
		{kind: wording.LieIn, tools: []wording.Tool{wording.LevelTools}, facts: build.lyingFacts},
		{kind: wording.MeasureTips, tools: []wording.Tool{wording.DeadWeight, wording.LevelTools}, facts: build.weightFacts},
		{kind: wording.WriteHeights, facts: build.writingFacts},
		{kind: wording.SetRight},
		pitchTarp(),
		{kind: wording.ReadAgain, tools: []wording.Tool{wording.DeadWeight, wording.LevelTools}, facts: build.againFacts},
	}
}

// hanging is how it is hung, tried and set right.
func (b build) hanging() (sheet.Section, error) {
	say := b.Say.FirstNight
	s, err := b.stage("hanging")()
	if b.Corrected != nil {
		s.Add(b.correctedBlocks()...)
	}
	t := sheet.Table{ID: "creases", Caption: say.Creases.Caption, Head: say.Creases.Columns[:], Words: []bool{true, true, true}}
	for _, r := range say.Creases.Rows {
		t.Add(r[:]...)
	}
	s.Add(t, sheet.Para(say.Creases.Source))
	return s, err
}

// anchorFacts tells where the anchors stand: what is set comes before what is checked.
func (b build) anchorFacts(s *sheet.Step) {
	say := b.Say.FirstNight
	set := say.SetAngles
	if p := b.Place; p != nil {
		set = say.SetHeights
		s.Add(say.Distance, b.Round(p.Distance))
		for _, e := range hung.Ends() {
			s.Add(b.ofEnd(say.Anchor, e), b.Round(p.Ends[e].Hook))
		}
		high, by := hung.Head, p.HeadAbove
		if by < 0 {
			high, by = hung.Foot, -by
		}
		s.Check(b.ofEnd(say.AnchorAbove, high), b.Round(by))
		for _, e := range hung.Ends() {
			s.Add(b.ofEnd(say.Line, e), b.Round(p.Ends[e].Line))
			s.Add(b.ofEnd(say.Pull, e), b.Force(p.Ends[e].Pull.N))
		}
	}
	for _, e := range hung.Ends() {
		s.Add(b.ofEnd(say.HangLine, e), b.Style.Angle(math.Atan(b.Shape.Ends[e].Slope)))
	}
	s.Add(say.Strap, fmt.Sprintf(say.AtLeast, b.Proof.Strap))
	insert(s, 2, set)
	if b.Place != nil {
		insert(s, 2, say.AnchorsElse)
	}
	if len(b.Cords.Lines) == 0 {
		own := say.OwnLines
		if b.Place == nil {
			own = say.AnyLines
		}
		insert(s, 2, own)
	}
	if b.Margins == nil {
		return
	}
	for _, l := range b.Margins.Leasts {
		if l.Thing == margin.HookThing || l.Thing == margin.LineThing && len(b.Cords.Lines) == 0 {
			s.Add(given.Capital(b.Say.Names.Margins.Least.Things[l.Thing]), fmt.Sprintf(say.AtLeast, words.Strength(l.Value, l.Unit, b.Style)))
		}
		if l.Thing == margin.LineThing && b.mayBeTied(l) {
			s.Add(say.TiedLines, fmt.Sprintf(say.AtLeast, words.Strength(l.Knotted, l.Unit, b.Style)))
		}
	}
}

// apexFacts tells how what meets at an apex is joined.
func (b build) apexFacts(s *sheet.Step) {
	join := b.Say.FirstNight.JoinEyes
	if b.looped() {
		join = b.Say.FirstNight.JoinLoops
	}
	s.Do = slices.Insert(s.Do, 0, join)
	say := b.Say.FirstNight
	far, lines := say.OwnFar, b.Cords.Lines
	if len(lines) > 0 {
		if far = say.HangFar; lines[0].Knotted {
			far = say.TieFar
		}
	}
	s.Do = slices.Insert(s.Do, 1, far)
	if len(lines) > 0 && lines[0].Fastening.Adjustable() {
		s.Do = slices.Insert(s.Do, 2, say.SetLines)
	}
	if b.ridged() {
		insert(s, 1, say.TieRidge)
	}
	if p := b.Place; p != nil && p.Lowest > b.Proof.LowAt {
		s.Add(say.DownBy, b.Round(p.Lowest-b.Proof.LowAt))
		return
	}
	s.Add(say.DownBy, say.DownTill)
}

// wait is how long the proof load lies, minutes: shop practice, no source.
const wait = 15

func (b build) proofFacts(s *sheet.Step) {
	say, p := b.Say.FirstNight, b.Proof
	s.Add(say.Proof, p.Proof)
	s.Add(say.Bag, p.Bag)
	s.Add(say.Low, fmt.Sprintf(say.AtMost, p.Low))
	s.Add(say.Spread, b.Round(b.bottomSpan()))
	s.Add(say.Seat, p.Seat)
	s.Add(say.Wait, fmt.Sprintf(say.Minutes, wait))
	s.Add(say.Moved, b.Round(b.Design.Accuracy.Level))
}

// lyingFacts are the design's measures with the sleeper in the bed.
func (b build) lyingFacts(s *sheet.Step) {
	say, sh := b.Say.FirstNight, b.Shape
	mid := sh.At(0)
	higher, by := hung.Head, sh.Offset
	if by < 0 {
		higher, by = hung.Foot, -by
	}
	s.Check(b.ofEnd(say.Higher, higher), b.Round(by))
	s.Add(say.HookToHook, b.Round(sh.Ends[hung.Foot].ApexX-sh.Ends[hung.Head].ApexX))
	s.Add(say.CordsAtHead, b.Round(sh.Ends[hung.Head].Section.Height))
	s.Add(say.CordsAtMiddle, b.Round(mid.Z-mid.Bottom))
	s.Add(say.CordsAtFoot, b.Round(sh.Ends[hung.Foot].Section.Height))
	s.Add(say.Apart, b.Round(2*mid.Y))
	s.Check(say.BarToBar, b.Round(b.bottomSpan()))
	if b.Design.Load.Model != design.Even {
		past := 0
		if b.Design.Sleeper.Crown < 0 {
			past = 1
		}
		s.Add(say.Crown[past], b.Round(math.Abs(b.Design.Sleeper.Crown)))
	}
	s.Add(b.Say.Order.NearEnough, b.Round(b.Design.Accuracy.Level))
}

// againFacts tells what counts as level, and as moved.
func (b build) againFacts(s *sheet.Step) {
	s.Add(b.Say.FirstNight.Moved, b.Round(b.Design.Accuracy.Level))
}

// bottomSpan is the distance of the bars along the bottom line.
func (b build) bottomSpan() float64 {
	half := b.Design.Bed.Span / 2
	a := geom.Pt(-half, b.Shape.Problem.Bottom(-half))
	return a.Dist(geom.Pt(half, b.Shape.Problem.Bottom(half)))
}

// weightFacts tells what the tips are measured under.
func (b build) weightFacts(s *sheet.Step) {
	say := b.Say.FirstNight
	s.Add(say.Weight, fmt.Sprintf(say.AtLeast, b.Style.People(float64(design.LeastWeight), true)))
	s.Add(say.Aside, fmt.Sprintf(say.AtMost, b.Rope(accuracy.WeightAside)))
}

// writingFacts tells the lines to write into the design.
func (b build) writingFacts(s *sheet.Step) {
	say := b.Say.FirstNight
	length := "… " + b.Unit()
	for i, k := range []design.Key{design.KeyHungHeadLeft, design.KeyHungHeadRight, design.KeyHungFootLeft, design.KeyHungFootRight} {
		s.Add(b.ofEnd(say.Tip[i%2], hung.Ends()[i/2]), b.line(k, length))
	}
	s.Add(say.Under, b.line(design.KeyHungUnder, design.DeadWeight.String()))
	s.Add(say.Heavy, b.line(design.KeyHungMass, "… "+b.MassUnit()))
	s.Add(say.Begins, b.line(design.KeyHungFrom, length))
	s.Add(say.Ends, b.line(design.KeyHungTo, length))
	s.Add(b.Say.Order.PrintAnew, b.anew())
}
