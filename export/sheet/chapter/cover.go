package chapter

import (
	"fmt"
	"math"
	"slices"

	"slingloft/export/sheet"
	"slingloft/export/sheet/sketch"
	"slingloft/export/sheet/wording"
	"slingloft/outline/design"
	"slingloft/outline/insectnet"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
)

// cover tells how the insect net hangs and opens, and how it is sewn.
func (b build) cover() (sheet.Section, error) {
	if !b.covered() {
		return sheet.Section{}, nil
	}
	say := b.Say.Cover
	s, err := b.stage("cover")()
	blocks := []sheet.Block{
		sheet.Para(say.Lead),
		sheet.Notice{Grade: sheet.Careful, Title: say.Careful, Lines: append(slices.Clip(say.Mind), say.Ridges[b.Design.Cover.Ridge])},
		b.coverTable(),
		sheet.Figures{{Picture: sketch.CoverFromSide(b.Data), Caption: say.FromSide.Caption}},
		figure(sketch.CoverFromEnd(b.Data), say.FromEnd.Caption),
	}
	for i, c := range b.Further.Cover.Corners {
		blocks = append(blocks, b.cornerTable(c, b.Further.Cover.Pieces[i]))
	}
	s.Blocks = append(blocks, s.Blocks...)
	return s, err
}

// coverTable tables how the net hangs, opens, and keeps off the sleeper.
func (b build) coverTable() sheet.Table {
	say, c := b.Say.Cover, b.Further.Cover
	t := sheet.Table{ID: "cover-sizes", Caption: fmt.Sprintf(say.Caption, b.UnitWord()),
		Head: []string{"", say.Figure}, Words: []bool{true, true}}
	l, z := c.Space.Line, c.Zip
	if l.Between > 0 {
		t.Add(say.RidgeHooks, b.Round(l.Between))
		if l.Elastic > 0 {
			t.Add(say.RidgeCord, b.Round(l.Cord))
		}
		t.Add(say.RidgeCut, b.Round(l.Cut))
	} else {
		t.Add(say.RidgeHooks, say.NotKnown)
	}
	if l.Elastic > 0 {
		t.Add(say.Elastic, b.Round(l.Elastic))
		t.Add(say.ElasticCut, b.Round(l.ElasticCut))
		t.Add(say.Stretched, b.Round(l.Stretch))
	}
	t.Add(say.ZipLong, b.Cloth(z.Long))
	t.Add(say.ZipRoom, b.Round(z.Room))
	t.Add(say.ZipStop, b.Cloth(z.Stops[0])+" · "+b.Cloth(z.Stops[1]))
	t.Add(say.ZipHangs, b.Round(z.Hangs))
	if z.Opens > 0 {
		t.Add(say.ZipRolls, b.Round(z.Opens))
		t.Add(say.ZipEase, b.Cloth(z.Rows[0])+" · "+b.Cloth(z.Rows[1]))
	}
	t.Add(say.Shear, b.Style.Angle(c.Shear))
	t.Add(say.Narrower, quantity.Decimal(100*(1-c.Narrows), 1)+" %")
	if c.Gap > 0 {
		t.Add(say.Gap, b.Round(c.Gap))
	}
	if m := b.Design.Cover.Mesh; m > 0 {
		t.Add(say.Mesh, fmt.Sprintf(say.Holes, b.Style.Length(m), quantity.Decimal(quantity.Inch*quantity.Inch/(m*m), 0)))
	}
	b.freeRows(&t)
	if c.Packed > 0 {
		t.Add(say.Packed, b.Style.Volume(float64(c.Packed)))
	}
	return t
}

// freeRows tables how far net and head bar keep off the sleeper.
func (b build) freeRows(t *sheet.Table) {
	say, f := b.Say.Cover, b.Further.Cover.Space.Free
	for _, lies := range []design.Posture{design.OnBack, design.OnSide} {
		for at, text := range [insectnet.PlaceCount]string{say.Face, say.Shoulders, say.Elbows, say.Feet} {
			if off := f.From[lies][at]; !math.IsInf(off, 1) {
				t.Add(fmt.Sprintf(text, say.Lies[lies]), b.Round(off))
			}
		}
		t.Add(fmt.Sprintf(say.FaceBar, say.Lies[lies]), b.Round(f.Bar[lies]))
	}
}

func coverTasks() []task {
	sew := []wording.Tool{wording.SewingMachine, wording.SeamThread}
	pin := append([]wording.Tool{wording.Clips, wording.TapeMeasure}, sew...)
	return []task{
		{kind: wording.MarkCover, when: build.coverByHand, needs: []piece.BoardUse{piece.CoverBoard},
			tools: []wording.Tool{wording.TapeMeasure, wording.LongRule, wording.Chalk}, facts: build.markCoverFacts},
		{kind: wording.ZipCover, when: build.covered, tools: append([]wording.Tool{wording.Shears}, pin...), facts: build.zipFacts, shows: build.showZip},
		{kind: wording.RidgeCover, when: build.covered, tools: pin, facts: build.ridgeCoverFacts},
		{kind: wording.EndsCover, when: build.covered, tools: append([]wording.Tool{wording.Shears}, pin...), facts: build.endsCoverFacts},
		{kind: wording.EdgeCover, when: build.coverOnStrip, tools: append([]wording.Tool{wording.Iron}, pin...), facts: build.edgeCoverFacts,
			shows: build.showOnStrip},
		{kind: wording.FacedCover, when: build.coverFaced, tools: pin, facts: build.edgeCoverFacts},
		{kind: wording.CapsCover, when: build.coverSewn, tools: append([]wording.Tool{wording.Iron}, pin...), facts: build.capsCoverFacts},
		{kind: wording.LooseCover, when: build.coverLoose, tools: pin, facts: build.looseFacts},
		{kind: wording.HangCover, when: build.covered, tools: []wording.Tool{wording.TapeMeasure}, facts: build.hangCoverFacts},
	}
}

func (b build) covered() bool      { return b.Design.Cover.On && len(b.Further.Cover.Pieces) > 0 }
func (b build) coverByHand() bool  { return b.covered() && b.hasBoards() }
func (b build) coverSewn() bool    { return b.covered() && b.Design.Cover.Edge == design.SewnEdge }
func (b build) coverOnStrip() bool { return b.coverSewn() && b.Design.Channel.Kind == design.Strip }
func (b build) coverFaced() bool   { return b.coverSewn() && b.Design.Channel.Kind == design.Facing }
func (b build) coverLoose() bool   { return b.covered() && b.Design.Cover.Edge == design.LooseEdge }

func (b build) markCoverFacts(s *sheet.Step) {
	say, c := b.Say.Cover, b.Design.Cover
	s.Add(say.CutOut, b.Cloth(c.Allowance))
	if b.coverLoose() {
		s.Add(say.Lap, b.Cloth(c.Lap))
		s.Add(say.LowerCut, b.Cloth(c.Lap+2*c.Hem))
	} else {
		s.Add(say.LowerCut, b.Cloth(2*c.Hem))
	}
	s.Add(say.Hem, b.Cloth(c.Hem))
	for _, q := range b.Further.Cover.Seams {
		at := 0.0
		for _, part := range q.Parts {
			if at += part.Flat[0]; part.To != "" {
				s.Add(fmt.Sprintf(say.NotchAt, part.To), b.Cloth(at))
			}
		}
	}
}

func (b build) zipFacts(s *sheet.Step) {
	say, z := b.Say.Cover, b.Further.Cover.Zip
	s.Add(say.ZipLong, b.Cloth(z.Long))
	s.Add(say.ZipWide, b.Cloth(b.Design.Cover.ZipWidth))
	if z.Opens > 0 {
		s.Add(say.ZipUp, b.Cloth(b.Design.Cover.ZipUp))
		s.Add(say.ZipEase, b.Cloth(z.Rows[0])+" · "+b.Cloth(z.Rows[1]))
	}
	s.Add(say.ZipStop, b.Cloth(z.Stops[0])+" · "+b.Cloth(z.Stops[1]))
}

// coverSeams checks the finished lengths of the net's seams of some kinds.
func (b build) coverSeams(s *sheet.Step, kinds ...piece.SeamKind) {
	for _, q := range b.Further.Cover.Seams {
		for _, k := range kinds {
			if q.Kind == k {
				s.Check(fmt.Sprintf(b.Say.Cover.SeamLong, b.Say.Names.Seam(q)), b.Cloth(q.Flat[0]))
			}
		}
	}
}

func (b build) ridgeCoverFacts(s *sheet.Step) {
	say := b.Say.Cover
	s.Add(say.Allowance, b.Cloth(b.Design.Cover.Allowance))
	s.Add(say.RowsApart, b.Cloth(b.Design.Seam.RowSpacing))
	s.Add(say.Loops, fmt.Sprint(b.Further.Cover.Loops))
	s.Add(say.LoopLong, b.Cloth(b.Design.Cover.Loop))
	b.coverSeams(s, piece.CoverRidge)
}

func (b build) endsCoverFacts(s *sheet.Step) {
	s.Add(b.Say.Cover.Allowance, b.Cloth(b.Design.Cover.Allowance))
	s.Add(b.Say.Cover.RowsApart, b.Cloth(b.Design.Seam.RowSpacing))
	b.coverSeams(s, piece.CoverLeft, piece.CoverRight)
}

func (b build) edgeCoverFacts(s *sheet.Step) {
	s.Add(b.Say.Cover.Hem, b.Cloth(b.Design.Cover.Hem))
	b.coverSeams(s, piece.CoverToChannel)
}

func (b build) capsCoverFacts(s *sheet.Step) {
	s.Add(b.Say.Cover.Hem, b.Cloth(b.Design.Cover.Hem))
	b.coverSeams(s, piece.CoverToCap)
}

func (b build) looseFacts(s *sheet.Step) {
	say, c := b.Say.Cover, b.Further.Cover
	s.Add(say.Hem, b.Cloth(b.Design.Cover.Hem))
	s.Add(say.HemElastic, b.Round(c.Elastic))
	for i, long := range c.Ties {
		s.Add(fmt.Sprintf(say.TieLong, b.Sewn.SideNotches[i].Name), b.Round(long))
	}
}

func (b build) hangCoverFacts(s *sheet.Step) {
	say, c := b.Say.Cover, b.Further.Cover
	l := c.Space.Line
	tied, hooks, set := say.Tied[0], say.Hooks, say.Set[0]
	if b.Design.Cover.Height > 0 {
		hooks = say.OwnLine
	}
	if b.Design.Cover.Carries() {
		tied, hooks, set = say.Tied[1], say.Fixed, say.Set[1]
	}
	s.Do = append(s.Do, tied, hooks)
	if b.coverLoose() {
		s.Do = append(s.Do, say.Tie)
	}
	s.Do = append(s.Do, set)
	way := say.Zipped[0]
	if c.Zip.Opens == 0 {
		way = say.Zipped[1]
	}
	s.Do = append(s.Do, way)
	if l.Between > 0 {
		s.Add(say.Between, b.Round(l.Between))
		s.Add(say.RidgeCut, b.Round(l.Cut))
	}
	if l.Elastic > 0 {
		s.Add(say.ElasticCut, b.Round(l.ElasticCut))
		s.Check(say.Stretched, b.Round(l.Stretch))
	}
}

func (b build) showZip() sheet.Figures {
	return figure(sketch.ZipEnd(b.Data), b.Say.Cover.ZipSlit.Caption)
}

func (b build) showOnStrip() sheet.Figures {
	return figure(sketch.CoverOnStrip(b.Data), b.Say.Cover.OnStrip.Caption)
}
