package chapter

import (
	"fmt"
	"math"
	"slices"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/seam"
	"slingloft/export/sheet/sketch"
	"slingloft/export/sheet/wording"
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
)

// lining tells where the second layer lies, what it holds, and how the pad is put in; how
// it is sewn stands among the steps of sewing.
func (b build) lining() (sheet.Section, error) {
	if !b.lined() {
		return sheet.Section{}, nil
	}
	say := b.Say.Lining
	s, err := b.stage("lining")()
	mind := slices.Clone(say.Mind)
	if b.Design.Lining.Place == design.AboveBody {
		mind = append(mind, say.Higher)
	}
	blocks := []sheet.Block{
		sheet.Para(say.Lead[b.Design.Lining.Place]),
		sheet.Notice{Grade: sheet.Careful, Title: say.Careful, Lines: mind},
		b.liningTable(), b.girthTable(),
		sheet.Figures{{Picture: sketch.LiningFlat(b.Data), Caption: say.Flat.Caption}},
		sheet.Figures{{Picture: sketch.LiningAlong(b.Data), Caption: say.Along.Caption}},
		figure(sketch.LiningAcross(b.Data), say.Across.Caption),
	}
	s.Blocks = append(blocks, s.Blocks...)
	return s, err
}

// liningTable tables the pad and the opening.
func (b build) liningTable() sheet.Table {
	say, l, d := b.Say.Lining, b.Further.Lining, b.Design.Lining
	t := sheet.Table{ID: "lining-sizes", Caption: fmt.Sprintf(say.Caption, b.UnitWord()), Head: []string{"", say.Figure}, Words: []bool{true, true}}
	t.Add(say.Pad, b.Cloth(d.Thickness))
	wide := say.AsRound
	if d.Width > 0 {
		wide = b.Cloth(d.Width)
	}
	t.Add(say.Wide, wide)
	t.Add(say.Long, b.Cloth(l.Laid.Foot-l.Laid.Head))
	for e, at := range b.padEnds() {
		t.Add([2]string{say.FromHead, say.FromFoot}[e], b.Cloth(at))
	}
	t.Add(say.Play, b.Cloth(d.Play))
	if d.Place == design.BelowBody {
		t.Add(say.Lower, b.Cloth(l.Laid.Out))
	}
	t.Add(say.Opens, say.Edges[l.Opening.Edge])
	t.Add(say.Between, fmt.Sprintf(b.Say.Both, l.Opening.From.Name, l.Opening.To.Name))
	t.Add(say.OpenLong, b.Cloth(l.Opening.Length()))
	return t
}

// padEnds returns how far the ends of the pad lie inside of the bar lines along the centre
// line, mm; negative past them.
func (b build) padEnds() [2]float64 {
	half := b.Shape.Problem.Bed.Span / 2
	l := b.Further.Lining.Laid
	return [2]float64{hung.Head: l.Head + half, hung.Foot: half - l.Foot}
}

// girthTable tables how long both layers are across.
func (b build) girthTable() sheet.Table {
	say, l := b.Say.Lining, b.Further.Lining
	t := sheet.Table{ID: "lining-girths", Caption: fmt.Sprintf(say.Girths, b.UnitWord()), Head: append([]string{""}, say.Columns[:]...), Words: []bool{true, false, false, false}}
	for i, x := range l.Stations() {
		section := b.Shape.At(x).Section
		if over, err := l.Laid.Over(section); err == nil { // it was built over it
			body, more := b.Body.HungGirth(b.Shape)(x), over.Girth()-section.Girth()
			t.Add(say.At[i], b.ClothFigure(body), b.ClothFigure(body+more), b.ClothFigure(more))
		}
	}
	return t
}

func liningTasks() []task {
	return []task{{kind: wording.PadIn, when: build.lined, tools: []wording.Tool{wording.TapeMeasure}, facts: build.padFacts}}
}

// sewnInTasks are the steps of a lining before channels and caps are sewn on.
func sewnInTasks(sew, both []wording.Tool) []task {
	clips := append(slices.Clip(sew), wording.Clips)
	return []task{
		{kind: wording.JoinLining, when: build.liningJoined, tools: append(slices.Clip(both), wording.Clips), facts: build.joinLiningFacts},
		{kind: wording.HemLining, when: build.lined, tools: append(slices.Clip(both), wording.Shears), facts: build.hemLiningFacts,
			shows: build.showLiningHem},
		{kind: wording.BasteLining, when: build.lined, tools: clips, facts: build.basteFacts, shows: build.showBaste},
	}
}

func (b build) lined() bool        { return b.Design.Lining.On && len(b.Further.Lining.Pieces) > 0 }
func (b build) linedByHand() bool  { return b.lined() && b.hasBoards() }
func (b build) liningJoined() bool { return b.lined() && len(b.Further.Lining.Joins) > 0 }

func (b build) markLiningFacts(s *sheet.Step) {
	say, l := b.Say.Lining, b.Further.Lining
	bars := [2]float64{l.BarLines[hung.Head][0].X, l.BarLines[hung.Foot][0].X}
	s.Check(say.BarToBar, b.Cloth(bars[1]-bars[0]))
	ends := [2]float64{l.EndNets[hung.Head].At(l.EndNets[hung.Head].HungLength() / 2).X, l.EndNets[hung.Foot].At(l.EndNets[hung.Foot].HungLength() / 2).X}
	s.Add(say.CentreLong, b.Cloth(ends[1]-ends[0]))
	s.Add(b.Say.Order.SideAllowance, b.Cloth(b.Design.Seam.Side))
	b.addEnds(s)
	for _, j := range l.Joins {
		s.Add(fmt.Sprintf(b.Say.Order.JoinAside, b.rim(j.Place)), b.Cloth(math.Abs(j.V)))
	}
	s.Add(say.Between, fmt.Sprintf(b.Say.Both, l.Opening.From.Name, l.Opening.To.Name))
}

func (b build) joinLiningFacts(s *sheet.Step) {
	for _, j := range b.Further.Lining.Joins {
		b.addJoin(s, j, b.Further.Lining.Pieces)
	}
}

func (b build) hemLiningFacts(s *sheet.Step) {
	say, o := b.Say.Lining, b.Further.Lining.Opening
	s.Add(say.Between, fmt.Sprintf(b.Say.Both, o.From.Name, o.To.Name))
	s.Check(say.OpenLong, b.Cloth(o.Line.Length()))
	s.Add(say.HemEach, b.Cloth(o.Hem))
}

// basteFacts tells how the layers lie on each other and where one is longer.
func (b build) basteFacts(s *sheet.Step) {
	say := b.Say.Lining
	lay := say.LayBelow
	if b.Design.Lining.Place == design.AboveBody {
		lay = say.LayAbove
	}
	s.Do = slices.Insert(s.Do, 0, lay)
	s.Add(say.BasteRow, b.Cloth(b.Design.Seam.Side/2))
	for _, q := range b.Further.Lining.Seams {
		if q.Kind == piece.LiningJoin {
			continue
		}
		for _, part := range q.Parts {
			if eased := math.Abs(part.Ease); eased >= leastEase {
				longer := 0
				if part.Ease < 0 {
					longer = 1
				}
				names := b.Say.Names
				s.Add(fmt.Sprintf(say.Stretch, given.Capital(names.Seam(q)), names.SeamMark(part.From), names.SeamMark(part.To)),
					fmt.Sprintf(say.Longer[longer], b.Cloth(eased)))
			}
		}
	}
}

// leastEase is the least difference of two edges that is told, mm: what a hand sees.
const leastEase = 1.0

func (b build) padFacts(s *sheet.Step) {
	s.Do = append(s.Do, b.Say.Lining.Feel[b.Design.Lining.Place])
	for e, at := range b.padEnds() {
		s.Check([2]string{b.Say.Lining.FromHead, b.Say.Lining.FromFoot}[e], b.Cloth(at))
	}
}

func (b build) showLiningHem() sheet.Figures {
	return figure(seam.LiningHem(b.Data), b.Say.Lining.Hem.Caption)
}

func (b build) showBaste() sheet.Figures {
	return figure(seam.Basted(b.Data), b.Say.Lining.Baste.Caption)
}
