package chapter

import (
	"fmt"
	"math"
	"slices"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/export/sheet/seam"
	"slingloft/export/sheet/sketch"
	"slingloft/export/sheet/wording"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/rig"
	"slingloft/outline/tarp"
)

// tarp tells how large the tarp is, what it keeps off, and how it is sewn and pitched.
func (b build) tarp() (sheet.Section, error) {
	if !b.tarped() {
		return sheet.Section{}, nil
	}
	say := b.Say.Tarp
	s, err := b.stage("tarp")()
	blocks := []sheet.Block{
		sheet.Para(say.Lead),
		sheet.Notice{Grade: sheet.Careful, Title: say.Careful, Lines: append(append([]string{}, say.Mind...), say.Unknown)},
		b.tarpTable(),
		sheet.Figures{{Picture: sketch.TarpFlat(b.Data), Caption: say.Flat.Caption}},
		sheet.Figures{{Picture: sketch.TarpFromSide(b.Data), Caption: say.FromSide.Caption}},
		figure(sketch.TarpFromEnd(b.Data), say.FromEnd.Caption),
	}
	for i, c := range b.Further.Tarp.Corners {
		blocks = append(blocks, b.cornerTable(c, b.Further.Tarp.Pieces[i]))
	}
	s.Blocks = append(blocks, s.Blocks...)
	return s, err
}

// tarpTable tables the sizes of the tarp and what it keeps off.
func (b build) tarpTable() sheet.Table {
	say, f := b.Say.Tarp, b.Further.Tarp
	z := f.Size
	t := sheet.Table{ID: "tarp-sizes", Caption: fmt.Sprintf(say.Caption, b.UnitWord()),
		Head: []string{"", say.Figure}, Words: []bool{true, true}}
	t.Add(say.Ridge, b.Cloth(z.Ridge))
	t.Add(say.Width, b.Cloth(z.Width))
	t.Add(say.SideEdge, b.Cloth(z.Side))
	end := math.Hypot((z.Ridge-z.Side)/2, z.Width/2)
	t.Add(say.EndEdge, b.Cloth(end))
	if h := b.Design.Tarp.Hollow; h > 0 {
		t.Add(say.SideHollow, b.Cloth(h*z.Side))
		t.Add(say.EndHollow, b.Cloth(h*end))
	}
	if z.Dip > 0 {
		t.Add(say.Dip, b.Round(z.Dip))
	}
	t.Add(say.Rise, b.Round(z.Rise))
	t.Add(say.RidgeUp, b.Round(b.ridgeUp()))
	t.Add(say.Slope, b.Style.Angle(float64(b.Design.Tarp.Pitch)))
	t.Add(say.EdgeUp, b.Round(z.EdgeUp+b.Design.Hang.Bed))
	t.Add(say.Rain, fmt.Sprintf(say.Asked, b.Style.Angle(z.Keeps), b.Style.Angle(float64(b.Design.Tarp.Rain))))
	t.Add(say.Clear, b.Round(z.Clear))
	if f.Packed > 0 {
		t.Add(say.Packed, b.Style.Volume(float64(f.Packed)))
	}
	return t
}

// cornerTable tables where the corners of a panel lie on the cloth.
func (b build) cornerTable(c piece.Cornered, q piece.Piece) sheet.Table {
	say := b.Say.Tarp
	t := sheet.Table{ID: "corners-" + picture.SafeID(q.ID), Caption: fmt.Sprintf(say.Corners, given.Capital(q.Title), b.UnitWord()),
		Head: say.Columns[:], Words: []bool{true, false, false}}
	lies, laid := b.lying(q.ID)
	if laid {
		t.Head, t.Words = append(slices.Clip(t.Head), say.OnRoll[:]...), append(t.Words, false, false)
	}
	low := q.Net.Bounds().Min
	for i, at := range c.At {
		d := at.Minus(low)
		row := []string{c.Letters[i], b.ClothFigure(d.X), b.ClothFigure(d.Y)}
		if laid {
			on := lies.Apply(at)
			row = append(row, b.ClothFigure(on.X), b.ClothFigure(on.Y))
		}
		t.Add(row...)
	}
	return t
}

// lying returns how a piece lies on its roll; ok is false where it is not laid, or lies
// more than once.
func (b build) lying(id string) (m geom.Motion, ok bool) {
	for _, it := range b.onRolls() {
		if it.Piece.ID == id {
			if ok {
				return m, false
			}
			m, ok = it.Motion, true
		}
	}
	return m, ok
}

// ridgeUp returns the height of the tarp's ridge above the ground, mm.
func (b build) ridgeUp() float64 {
	z := b.Further.Tarp.Size
	return b.Design.Hang.Bed + z.EdgeUp + z.Width/2*math.Sin(float64(b.Design.Tarp.Pitch))
}

func tarpTasks() []task {
	sew := []wording.Tool{wording.SewingMachine, wording.SeamThread, wording.Iron, wording.Clips}
	cut := append(slices.Clip(sew), wording.Shears)
	press := []piece.BoardUse{piece.PressBoard}
	return []task{
		{kind: wording.JoinTarp, when: build.tarpJoined, tools: cut, facts: build.joinTarpFacts, shows: build.showFell},
		{kind: wording.RidgeTarp, when: build.tarpHalves, tools: cut, facts: build.ridgeTarpFacts, shows: build.showRidge},
		{kind: wording.PatchTarp, when: build.tarped, needs: press, tools: cut, facts: build.patchFacts},
		{kind: wording.HemTarp, when: build.tarped, needs: press, tools: cut, facts: build.hemTarpFacts, shows: build.showTarpHem},
		{kind: wording.LoopTarp, when: build.tarped, tools: []wording.Tool{wording.SewingMachine, wording.SeamThread, wording.LoopTools},
			facts: build.loopFacts, shows: build.showTarpCorner},
		{kind: wording.SealTarp, when: build.tarped, tools: []wording.Tool{wording.Sealer}},
	}
}

// markTarp is how the tarp is marked where its cloth is not plotted: with all else that is
// cut.
func markTarp() task {
	return task{kind: wording.MarkTarp, when: build.tarpByHand, needs: []piece.BoardUse{piece.HollowBoard, piece.AllowBoard},
		tools: []wording.Tool{wording.TapeMeasure, wording.LongRule, wording.SetSquare, wording.Chalk}, facts: build.markTarpFacts}
}

// pitchTarp is how the tarp is pitched over the bed that hangs as it should.
func pitchTarp() task {
	return task{kind: wording.PitchTarp, when: build.tarped,
		tools: []wording.Tool{wording.TapeMeasure, wording.GuyLines}, facts: build.pitchFacts}
}

func (b build) tarped() bool     { return b.Design.Tarp.On && len(b.Further.Tarp.Pieces) > 0 }
func (b build) tarpByHand() bool { return b.tarped() && b.hasBoards() }
func (b build) tarpHalves() bool { return b.tarped() && b.Design.Tarp.Join == design.RidgeJoin }
func (b build) tarpJoined() bool { return b.tarped() && len(b.tarpSeams(piece.TarpJoin)) > 0 }

// tarpSeams returns the seams of the tarp of a kind.
func (b build) tarpSeams(kind piece.SeamKind) []piece.Seam {
	var out []piece.Seam
	for _, s := range b.Further.Tarp.Seams {
		if s.Kind == kind {
			out = append(out, s)
		}
	}
	return out
}

// tarpPiece names a panel of the tarp by its ID.
func (b build) tarpPiece(id string) string {
	for _, q := range b.Further.Tarp.Pieces {
		if q.ID == id {
			return q.Title
		}
	}
	return id
}

func (b build) markTarpFacts(s *sheet.Step) {
	say, t := b.Say.Tarp, b.Design.Tarp
	if t.RidgeHollow > 0 {
		insert(s, 2, say.MarkRidge)
	}
	if b.tarpJoined() && t.Hollow > 0 {
		insert(s, 2, say.PartEdges)
	}
	s.Add(say.HemCut, b.Cloth(2*t.Hem))
	if t.Join != design.WholeTarp {
		s.Add(say.JoinCut, b.Cloth(t.Allowance))
	}
	s.Add(say.PatchReach, b.Cloth(t.Patch))
	s.Add(say.TurnUnder, b.Cloth(t.Allowance))
	for _, q := range b.Further.Tarp.Seams {
		at := 0.0
		for _, part := range q.Parts {
			if at += part.Flat[0]; part.To != "" {
				s.Add(fmt.Sprintf(say.NotchAt, part.To), b.Cloth(at))
			}
		}
	}
}

// fellFacts tells where the lines of the tarp's fells lie.
func (b build) fellFacts(s *sheet.Step) {
	say, a := b.Say.Tarp, b.Design.Tarp.Allowance
	s.Add(say.Allowance, b.Cloth(a))
	if f := tarp.FellOf(a); f.Fold > 0 {
		s.Add(say.Trim, b.Cloth(f.Trim))
		s.Add(say.Fold, b.Cloth(f.Fold))
		s.Add(say.Row, b.Cloth(f.Second))
	}
}

func (b build) joinTarpFacts(s *sheet.Step) {
	b.fellFacts(s)
	for _, q := range b.tarpSeams(piece.TarpJoin) {
		s.Do = append(s.Do, fmt.Sprintf(b.Say.Tarp.Covers, b.Say.Names.Seam(q), b.tarpPiece(q.IDs[0]), b.tarpPiece(q.IDs[1])))
		s.Check(fmt.Sprintf(b.Say.Tarp.SeamLong, b.Say.Names.Seam(q)), b.Cloth(q.Flat[0]))
	}
}

func (b build) ridgeTarpFacts(s *sheet.Step) {
	b.fellFacts(s)
	for _, q := range b.tarpSeams(piece.TarpRidge) {
		s.Check(fmt.Sprintf(b.Say.Tarp.SeamLong, b.Say.Names.Seam(q)), b.Cloth(q.Flat[0]))
	}
}

func (b build) patchFacts(s *sheet.Step) {
	s.Add(b.Say.Tarp.TurnUnder, b.Cloth(b.Design.Tarp.Allowance))
	s.Add(b.Say.Tarp.PatchReach, b.Cloth(b.Design.Tarp.Patch))
	s.Add(b.Say.Order.StitchLine, b.Cloth(b.Design.Channel.Foot))
	s.Add(b.Say.Order.RowsApart, b.Cloth(b.Design.Seam.RowSpacing))
}

func (b build) hemTarpFacts(s *sheet.Step) {
	say, z := b.Say.Tarp, b.Further.Tarp.Size
	if b.Design.Tarp.Hollow > 0 {
		insert(s, 2, say.HollowHem)
	}
	s.Add(say.HemFold, b.Cloth(b.Design.Tarp.Hem))
	s.Check(say.CornersApart, b.Cloth(z.Side))
}

func (b build) loopFacts(s *sheet.Step) {
	s.Add(b.Say.Tarp.Loops, fmt.Sprint(b.Further.Tarp.Loops))
	s.Add(b.Say.Tarp.LoopLong, b.Cloth(b.Design.Tarp.Loop))
	s.Add(b.Say.Tarp.LoopOut, b.Cloth(b.Design.Tarp.LoopOut()))
}

func (b build) pitchFacts(s *sheet.Step) {
	say, z, pitch := b.Say.Tarp, b.Further.Tarp.Size, float64(b.Design.Tarp.Pitch)
	if b.ridged() {
		s.Do[0] = say.OnRidgeLine
	}
	if p := b.Place; p != nil {
		s.Add(say.RidgeTie, b.Round((p.Distance-z.Ridge)/2))
	}
	s.Add(say.RidgeUp, b.Round(b.ridgeUp()))
	s.Add(say.Guy, b.Round((z.EdgeUp+b.Design.Hang.Bed)*math.Sqrt2))
	s.Add(say.RidgeLevel, b.Round(z.Ridge))
	s.Add(say.Past, b.Round((z.Ridge-rig.Overall(b.Shape))/2))
	s.Check(say.Rise, b.Round(z.Rise))
	s.Add(say.CornersOut, b.Round(z.Width/2*math.Cos(pitch)))
	s.Add(say.CornersAlong, b.Round((z.Ridge-z.Side)/2))
	s.Check(say.EdgeUp, b.Round(z.EdgeUp+b.Design.Hang.Bed))
}

func (b build) showFell() sheet.Figures {
	return figure(seam.TarpFell(b.Data), b.Say.Tarp.Fell.Caption)
}

// showRidge shows the fell, unless the joins did.
func (b build) showRidge() sheet.Figures {
	if b.tarpJoined() {
		return nil
	}
	return b.showFell()
}

func (b build) showTarpHem() sheet.Figures {
	return figure(seam.TarpHem(b.Data), b.Say.Tarp.Hem.Caption)
}

func (b build) showTarpCorner() sheet.Figures {
	return figure(sketch.TarpCorner(b.Data), b.Say.Tarp.Corner.Caption)
}
