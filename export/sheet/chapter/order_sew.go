package chapter

import (
	"fmt"
	"math"
	"slices"

	"slingloft/export/sheet"
	"slingloft/export/sheet/picture"
	"slingloft/export/sheet/seam"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/panel"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
)

func (b build) pressFacts(s *sheet.Step) {
	say, d := b.Say.Order, b.Design
	s.Add(say.EndsIn, b.Cloth(d.Seam.End))
	s.Add(say.LongEdges, b.Cloth(d.Channel.TurnUnder))
	if p, ok := b.strip(); ok {
		s.Add(say.MiddleLine, b.Cloth(p.Cut.Bounds().Height()/2))
		s.Check(say.Folded, b.Cloth(d.Channel.Foot+d.Channel.Depth))
	}
}

func (b build) hemFacts(s *sheet.Step) {
	if b.Design.Cap.Hollow > 0 {
		insert(s, 2, b.Say.Order.HollowHem)
	}
	s.Add(b.Say.Order.CapHem, b.Cloth(b.Design.Cap.Hem))
}

// joinFacts tells how the panels of a joined body are sewn together.
func (b build) joinFacts(s *sheet.Step) {
	for _, j := range b.Sewn.Joins {
		b.addJoin(s, j, b.bodies())
	}
}

// addJoin tells how long a join of some panels is, where its lines lie and its notches.
func (b build) addJoin(s *sheet.Step, j panel.Join, panels []piece.Piece) {
	say, rim := b.Say.Order, b.rim(j.Place)
	s.Check(fmt.Sprintf(say.Finished, rim), b.Cloth(j.Edge.HungLength()))
	s.Add(fmt.Sprintf(say.Allowance, rim), b.Cloth(b.Design.Seam.Join))
	b.addFell(s, j, panels)
	for _, n := range j.Notches {
		s.Add(fmt.Sprintf(say.JoinNotch, rim, n.Name), b.Cloth(n.At))
	}
}

// addFell tells where a join's fold, trim line and second row lie, as the panels
// have them.
func (b build) addFell(s *sheet.Step, j panel.Join, panels []piece.Piece) {
	say := b.Say.Order
	lines := map[piece.Role]string{piece.FellFold: say.Fold, piece.FellTrim: say.Trim, piece.FellStitch: say.Row}
	done := map[piece.Role]bool{}
	for _, q := range panels {
		for _, l := range q.Lines {
			text, ok := lines[l.Role]
			if ok && l.Of == j.Place.String() && !done[l.Role] {
				done[l.Role] = true
				s.Add(fmt.Sprintf(text, b.rim(j.Place), q.Title), fmt.Sprintf(say.FromFinished, b.Cloth(math.Abs(l.Points[0].Y-j.V))))
			}
		}
	}
}

// openingFacts tells where the openings for the bars' tips lie.
func (b build) openingFacts(s *sheet.Step) {
	say, names := b.Say.Order, b.Say.Names
	if p, ok := b.strip(); ok {
		for _, l := range p.Lines {
			if l.Role == piece.TipOpening {
				s.Check(names.OfEnd(names.Pieces.Opening, l.Index), fmt.Sprintf(say.FromTo, b.Cloth(l.Points[0].X), b.Cloth(l.Points[1].X)))
			}
		}
	}
}

// endFacts tells the hem at the ends of a body that is gathered.
func (b build) endFacts(s *sheet.Step) { s.Add(b.Say.Order.EachFold, b.Cloth(b.Design.Cap.Hem)) }

// capFacts tells the length and the ease of the caps' seams.
func (b build) capFacts(s *sheet.Step) {
	say := b.Say.Order
	for _, q := range b.Sewn.Seams {
		if q.Kind == piece.EndToCap {
			s.Add(b.Say.Names.Seam(q), fmt.Sprintf(say.Eased, b.Cloth(q.Flat[0]), b.Cloth(q.Flat[1])))
		}
	}
	s.Add(say.CornerLeft, b.Cloth(seam.CornerLeft))
	if b.lined() && b.Design.Lining.Opening.AtEnd() {
		s.Do = slices.Insert(s.Do, 1, b.Say.Lining.FoldBack)
	}
}

// pinFacts tells where the notches of the channels' seam lie.
func (b build) pinFacts(s *sheet.Step) {
	say := b.Say.Order
	for _, n := range b.Sewn.SideNotches {
		name := n.Name
		if n.Bar {
			name = fmt.Sprintf(say.AtBar, name)
		}
		s.Add(name, b.Cloth(n.At))
	}
	s.Check(say.FootEnd, b.Cloth(b.Sewn.SideNet.HungLength()))
	if b.strips() {
		s.Add(say.EdgeLine, b.Cloth(b.Design.Seam.Side+b.Design.Channel.Foot))
	}
	if b.lined() && !b.Design.Lining.Opening.AtEnd() {
		s.Do = slices.Insert(s.Do, 1, b.Say.Lining.KeepOut)
	}
}

// stitchFacts tells how the channels are sewn.
func (b build) stitchFacts(s *sheet.Step) {
	say, d := b.Say.Order, b.Design
	s.Add(say.StitchLine, b.Cloth(d.Channel.Foot))
	s.Check(say.ChannelDepth, b.Cloth(d.Channel.Depth))
	b.rowFacts(s)
	for _, e := range hung.Ends() {
		s.Check(b.ofEnd(say.WideAt, e), b.Cloth(b.sewnWide(e)))
	}
	s.Add(say.NearEnough, b.Cloth(2*d.Accuracy.Sewing))
	for _, e := range hung.Ends() {
		if short := b.foldShort(e); short > 0 {
			s.Add(b.ofEnd(say.FoldShort, e), b.Cloth(short))
		}
	}
}

// sewnWide returns how wide the bed is at a bar's line when its channels are sewn, mm, from
// the seam line of one side to that of the other: the fold outside of it gapes there.
func (b build) sewnWide(e hung.End) float64 {
	l := b.Sewn.BarLines[e]
	if len(l) == 0 {
		return 0 // no piece is laid out then
	}
	return 2 * l[len(l)-1].Y
}

// foldShort returns by how much the fold of a channel strip is too short at a bar, where the
// side turns and the strip is straight, mm.
func (b build) foldShort(e hung.End) float64 {
	for _, q := range b.Sewn.Seams {
		if q.Kind == piece.SideToStrip && len(q.Parts) > 0 {
			part := q.Parts[0]
			if e == hung.Foot {
				part = q.Parts[len(q.Parts)-1]
			}
			return -part.Fold
		}
	}
	return 0
}

// rowFacts tells the rows of a side's seam.
func (b build) rowFacts(s *sheet.Step) {
	say, d := b.Say.Order, b.Design
	s.Add(say.Rows, fmt.Sprint(d.Seam.Rows))
	if d.Seam.Rows > 1 {
		s.Add(say.RowsApart, b.Cloth(d.Seam.RowSpacing))
	}
	s.Add(say.StitchLength, b.Long(d.Seam.StitchLength))
}

// testFacts tells with what the seams are sewn, as far as the design names it.
func (b build) testFacts(s *sheet.Step) {
	say, thread := b.Say.Order, b.Design.Seam.ThreadName
	if thread == "" {
		thread = say.AnyThread
	}
	needle := b.Design.Seam.Needle
	if needle == "" {
		needle = fmt.Sprintf(say.AnyNeedle, b.Style.AreaMass(lightCloth), b.Style.AreaMass(middleCloth))
	}
	s.Add(say.ClothMass, b.areaMass(b.Design.Cloth.ArealDensity))
	s.Add(say.Needle, needle)
	s.Add(say.Thread, thread)
	if f := b.Design.Seam.ThreadStrength; f > 0 {
		s.Add(say.ThreadBreaks, b.Force(float64(f)))
	}
	b.rowFacts(s)
	if b.Margins == nil {
		return
	}
	wide := testWide
	if b.Style.Inches {
		wide = 2 * quantity.Inch
	}
	for _, l := range b.Margins.Leasts {
		if l.Thing == margin.SeamThing {
			insert(s, 2, say.TestStrip)
			insert(s, 2, say.TestHang)
			s.Add(say.TestWide, b.Cloth(wide))
			s.Add(say.TestHolds, b.weighed(l.Value*wide, true))
		}
	}
}

// Up to which mass cloth is sewn with the thinner needles, g/m²: common practice, no source.
const lightCloth, middleCloth = 50, 100

// areaMass tells what cloth weighs by its area.
func (b build) areaMass(m quantity.GramsPerSquareMetre) string {
	if m == 0 {
		return b.Say.NotGiven
	}
	return b.Style.AreaMass(float64(m))
}

// testWide is how wide a strip is cut across a test seam, mm: shop practice, no source.
const testWide = 50.0

// weighed tells a force, and the weight that pulls as hard, or at least as hard.
func (b build) weighed(n float64, least bool) string {
	kg, unit := n/quantity.Gravity, 1.0
	if b.Style.Inches {
		unit = quantity.Pound
	}
	if !least {
		kg = math.Round(kg/unit) * unit
	}
	return fmt.Sprintf(b.Say.Order.Weighs, b.Style.Force(n), b.Style.People(kg, least))
}

// frays reports whether raw edges in a channel reach past its innermost row.
func (b build) frays() bool { return b.Design.Passage().Loose > 0 }

func (b build) edgeFacts(s *sheet.Step) {
	if b.facings() {
		s.Do = append(s.Do, b.Say.Order.FinishFacings)
	}
	s.Add(b.Say.Order.PastRow, b.Cloth(b.Design.Passage().Loose))
}

// figure returns a picture with its caption, as a list that is empty where there is no such
// picture.
func figure(p picture.Picture, caption string) sheet.Figures {
	if p.Width == 0 {
		return nil
	}
	return sheet.Figures{{Picture: p, Caption: caption}}
}

func (b build) showHem() sheet.Figures {
	words := b.Say.Stitching.CapHem
	if b.gathered() {
		words = b.Say.Stitching.EndHem
	}
	return figure(seam.Hem(b.Data), words.Caption)
}

func (b build) showJoin() sheet.Figures {
	return figure(seam.Join(b.Data), b.Say.Stitching.Join.Caption)
}

func (b build) showCapSeam() sheet.Figures {
	return figure(seam.CapSeam(b.Data), b.Say.Stitching.CapSeam.Caption)
}

func (b build) showChannel() sheet.Figures {
	words := b.Say.Stitching.Bound
	if b.facings() {
		words = b.Say.Stitching.Faced
	}
	return figure(seam.Channel(b.Data), words.Caption)
}

// showSides shows the finished side at its corner, and a facing's section, which is not to
// be seen before.
func (b build) showSides() sheet.Figures {
	words := b.Say.Stitching.Corner
	if b.gathered() {
		words = b.Say.Stitching.BareCorner
	}
	corner := figure(seam.Corner(b.Data), words.Caption)
	if b.facings() {
		return append(b.showChannel(), corner...)
	}
	return corner
}
