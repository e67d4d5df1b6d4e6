package chapter

import (
	"fmt"
	"math"

	"slingloft/export/sheet"
	"slingloft/outline/panel"
	"slingloft/outline/piece"
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

func (b build) hemFacts(s *sheet.Step) { s.Add(b.Say.Order.CapHem, b.Cloth(b.Design.Cap.Hem)) }

// joinFacts tells how the panels of a joined body are sewn together.
func (b build) joinFacts(s *sheet.Step) {
	say := b.Say.Order
	for _, j := range b.Sewn.Joins {
		rim := b.rim(j.Place)
		s.Check(fmt.Sprintf(say.Finished, rim), b.Cloth(j.Edge.HungLength()))
		s.Add(fmt.Sprintf(say.Allowance, rim), b.Cloth(b.Design.Seam.Join))
		b.addFell(s, j)
		for _, n := range j.Notches {
			s.Add(fmt.Sprintf(say.JoinNotch, rim, n.Name), b.Cloth(n.At))
		}
	}
}

// addFell tells where a join's fold, trim line and second row lie, as the panels
// have them.
func (b build) addFell(s *sheet.Step, j panel.Join) {
	say := b.Say.Order
	lines := map[piece.Role]string{piece.FellFold: say.Fold, piece.FellTrim: say.Trim, piece.FellStitch: say.Row}
	done := map[piece.Role]bool{}
	for _, q := range b.bodies() {
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
			s.Add(b.Say.Names.Seam(q), fmt.Sprintf(say.Eased, b.Cloth(q.Hung[1]), b.SignedFigure(q.Ease), b.Unit()))
		}
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
}

// stitchFacts tells how the channels are sewn.
func (b build) stitchFacts(s *sheet.Step) {
	say, d := b.Say.Order, b.Design
	s.Add(say.StitchLine, b.Cloth(d.Channel.Foot))
	s.Check(say.ChannelDepth, b.Cloth(d.Channel.Depth))
	s.Add(say.Rows, fmt.Sprint(d.Seam.Rows))
	if d.Seam.Rows > 1 {
		s.Add(say.RowsApart, b.Cloth(d.Seam.RowSpacing))
	}
	s.Add(say.StitchLength, b.Long(d.Seam.StitchLength))
	if d.Seam.ThreadName != "" {
		s.Add(say.Thread, d.Seam.ThreadName)
	}
}
