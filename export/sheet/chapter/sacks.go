package chapter

import (
	"fmt"
	"slices"

	"slingloft/export/sheet"
	"slingloft/export/sheet/sketch"
	"slingloft/export/sheet/wording"
	"slingloft/outline/design"
	"slingloft/outline/piece"
	"slingloft/outline/stock"
)

// sacks tells how large the stow sacks are and how they are sewn.
func (b build) sacks() (sheet.Section, error) {
	if !b.sacked() {
		return sheet.Section{}, nil
	}
	say, f := b.Say.Sacks, b.Further.Sack
	s, err := b.stage("sacks")()
	t := sheet.Table{
		ID:      "sack-sizes",
		Caption: fmt.Sprintf(say.Caption, b.UnitWord()),
		Head:    []string{"", say.Figure},
		Words:   []bool{true, true},
	}
	t.Add(say.Holds, b.Style.Volume(float64(f.Size.Volume)))
	thick := say.Thick
	if b.flatSack() {
		thick = say.Square
	}
	t.Add(thick, b.Cloth(f.Size.Thick))
	t.Add(say.Long, b.Cloth(f.Size.Long))
	shows := sheet.Figures{{Picture: sketch.FilledSack(b.Data), Caption: say.Filled.Caption}}
	if b.barsSack() {
		lie := say.InBars[0]
		if f.Bundle.Parts > 2 {
			lie = say.InBars[1]
		}
		t.Add(say.Bars, lie)
		t.Add(say.BarsLie, fmt.Sprintf(say.Size, b.Cloth(f.Flat[0]), b.Cloth(f.Flat[1])))
		shows = append(shows, sheet.Figure{Picture: sketch.BarsSack(b.Data), Caption: say.BarsFilled.Caption})
	}
	s.Blocks = append([]sheet.Block{sheet.Para(say.Lead), t, shows}, s.Blocks...)
	return s, err
}

func sackTasks() []task {
	sew := []wording.Tool{wording.SewingMachine, wording.SeamThread, wording.Clips, wording.Shears}
	press, iron := []piece.BoardUse{piece.PressBoard}, append(slices.Clip(sew), wording.Iron)
	return []task{
		{kind: wording.SewWall, when: build.roundSack, tools: iron, facts: build.wallFacts},
		{kind: wording.SewEdges, when: build.flatSack, tools: iron, facts: build.wallFacts},
		{kind: wording.SewCorners, when: build.flatSack, tools: sew, facts: build.cornerFacts, shows: build.showCorners},
		{kind: wording.HemMouth, when: build.sacked, needs: press, tools: iron, facts: build.mouthFacts, shows: build.showMouth},
		{kind: wording.SewBase, when: build.roundSack, tools: sew, facts: build.baseFacts},
		{kind: wording.SewBarsSack, when: build.barsSack, needs: press, tools: iron, facts: build.barsSackFacts},
		{kind: wording.DrawCords, when: build.sacked, tools: []wording.Tool{wording.StrongThread}, facts: build.drawcordFacts},
	}
}

// markSacks is how the sacks are marked where their cloth is not plotted.
func markSacks() task {
	return task{kind: wording.MarkSacks, when: build.sacksByHand, needs: []piece.BoardUse{piece.RoundBoard, piece.AllowBoard},
		tools: []wording.Tool{wording.TapeMeasure, wording.LongRule, wording.SetSquare, wording.Chalk}, facts: build.markSackFacts}
}

func (b build) sacksByHand() bool { return b.sacked() && b.hasBoards() }

func (b build) markSackFacts(s *sheet.Step) {
	say, hem := b.Say.Order, b.Design.Sack.Hem
	if b.roundSack() {
		insert(s, 1, b.Say.Sacks.RoundBase)
	}
	for _, it := range b.onRolls() {
		switch p := it.Piece; p.Kind {
		case piece.SackSide, piece.SackBase, piece.SackBars:
			box := p.Cut.Moved(it.Motion).Bounds()
			s.Add(fmt.Sprintf(say.AlongRoll, p.Title), fmt.Sprintf(say.FromTo, b.Cloth(box.Min.X), b.Cloth(box.Max.X)))
			s.Add(fmt.Sprintf(say.AcrossRoll, p.Title), fmt.Sprintf(say.FromTo, b.Cloth(box.Min.Y), b.Cloth(box.Max.Y)))
		}
	}
	s.Add(b.Say.Sacks.Allowance, b.Cloth(b.Design.Sack.Allowance))
	s.Add(b.Say.Sacks.Folds, b.Both(b.Cloth(hem), b.Cloth(2*hem)))
}

func (b build) sacked() bool    { return b.Design.Sack.On && len(b.Further.Sack.Pieces) > 0 }
func (b build) flatSack() bool  { return b.sacked() && b.Design.Sack.Base == design.FlatBase }
func (b build) roundSack() bool { return b.sacked() && !b.flatSack() }
func (b build) barsSack() bool  { return b.sacked() && b.Further.Sack.Bundle.Parts > 0 }

func (b build) wallFacts(s *sheet.Step) {
	say, z := b.Say.Sacks, b.Further.Sack.Size
	s.Add(say.Allowance, b.Cloth(b.Design.Sack.Allowance))
	long := z.Wall - b.Design.Sack.Hem
	if b.flatSack() {
		long += z.Thick / 2
	}
	s.Check(say.Side, b.Cloth(long))
}

func (b build) cornerFacts(s *sheet.Step) {
	s.Check(b.Say.Sacks.CornerLine, b.Cloth(b.Further.Sack.Size.Thick/2))
}

func (b build) mouthFacts(s *sheet.Step) {
	s.Add(b.Say.Sacks.HemWide, b.Cloth(b.Design.Sack.Hem))
	s.Check(b.Say.Sacks.Height, b.Cloth(b.Further.Sack.Size.Wall))
}

func (b build) baseFacts(s *sheet.Step) {
	s.Add(b.Say.Sacks.Around, b.Cloth(b.Further.Sack.Mouths[0]))
}

func (b build) barsSackFacts(s *sheet.Step) {
	say := b.Say.Sacks
	s.Add(say.Allowance, b.Cloth(b.Design.Sack.Allowance))
	s.Add(say.HemWide, b.Cloth(b.Design.Sack.Hem))
	s.Add(say.StitchTo, b.Cloth(b.Further.Sack.Flat[0]-b.Design.Sack.Hem))
}

func (b build) drawcordFacts(s *sheet.Step) { s.Add(b.Say.Sacks.CutCord, b.Round(stock.TieLength)) }

func (b build) showCorners() sheet.Figures {
	return figure(sketch.SackCorner(b.Data), b.Say.Sacks.Corner.Caption)
}

func (b build) showMouth() sheet.Figures {
	return figure(sketch.SackMouth(b.Data), b.Say.Sacks.Mouth.Caption)
}
