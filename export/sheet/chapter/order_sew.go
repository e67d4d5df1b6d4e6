package chapter

import (
	"fmt"
	"math"

	"slingloft/export/sheet"
	"slingloft/outline/design"
	"slingloft/outline/panel"
	"slingloft/outline/piece"
)

func (b build) stepMark() sheet.Step {
	say := b.Say.Order
	const shown = 4 // the diagonals and both ends; the rest stands with the piece
	bodies, s, prove := b.bodies(), step(say.Mark), say.Diagonals
	if len(bodies) > 1 {
		prove = say.Corners
	}
	s.Text = fmt.Sprintf(s.Text, prove)
	for _, q := range bodies {
		for _, c := range q.Checks[:min(shown, len(q.Checks))] {
			name := b.Say.Names.Measure(c)
			if len(bodies) > 1 {
				name = fmt.Sprintf(say.OfPanel, q.Title, name)
			}
			s.Add(name, b.Long(c.Length))
		}
	}
	return s
}

func (b build) stepCut() sheet.Step {
	say, d := b.Say.Order, b.Design
	s := step(say.Cut)
	count := 0
	for _, p := range b.Sewn.Pieces {
		count += p.Count
	}
	s.Add(say.ClothPieces, fmt.Sprint(count))
	s.Add(say.SideAllowance, b.Long(d.Seam.Side))
	b.addEnds(&s)
	if len(b.Sewn.Joins) > 0 {
		s.Add(say.JoinAllowance, b.Long(d.Seam.Join))
	}
	if d.Cap.Kind != design.Gathered {
		s.Add(say.CapAllowance, b.Long(d.Seam.Cap))
	}
	return s
}

// addEnds adds what the body has at its ends.
func (b build) addEnds(s *sheet.Step) {
	for _, q := range b.bodies() {
		for _, m := range q.Margins {
			if m.At == piece.AtEnds || m.At == piece.TurnedEnds {
				s.Add(b.marginWords(m), b.Long(m.Wide))
				return
			}
		}
	}
}

func (b build) stepPress() sheet.Step {
	say, d := b.Say.Order, b.Design
	s := step(say.PressStrip)
	if d.Channel.Kind == design.Facing {
		s = step(say.PressFacing)
	}
	s.Add(say.EndsIn, b.Long(d.Seam.End))
	s.Add(say.LongEdges, b.Long(d.Channel.TurnUnder))
	if p, ok := b.strip(); ok {
		s.Add(say.MiddleLine, b.Long(p.Cut.Bounds().Height()/2))
	}
	if d.Cap.Kind != design.Gathered {
		s.Text += " " + say.PressHem
		s.Add(say.CapHem, b.Long(d.Cap.Hem))
	}
	return s
}

// stepJoin sews the panels of a joined body together.
func (b build) stepJoin() sheet.Step {
	say := b.Say.Order
	s := step(say.Join)
	for _, j := range b.Sewn.Joins {
		rim := b.rim(j.Place)
		s.Add(fmt.Sprintf(say.Finished, rim), b.Long(j.Edge.HungLength()))
		s.Add(fmt.Sprintf(say.Allowance, rim), b.Long(b.Design.Seam.Join))
		b.addFell(&s, j)
		for _, n := range j.Notches {
			s.Add(fmt.Sprintf(say.JoinNotch, rim, n.Name), b.Long(n.At))
		}
	}
	return s
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
				s.Add(fmt.Sprintf(text, b.rim(j.Place), q.Title), fmt.Sprintf(say.FromFinished, b.Long(math.Abs(l.Points[0].Y-j.V))))
			}
		}
	}
}

// stepOpenings works the openings for the bars' tips.
func (b build) stepOpenings() sheet.Step {
	say, names := b.Say.Order, b.Say.Names
	s := step(say.Openings)
	if p, ok := b.strip(); ok {
		for _, l := range p.Lines {
			if l.Role == piece.TipOpening {
				s.Add(names.OfEnd(names.Pieces.Opening, l.Index), fmt.Sprintf(say.FromTo, b.Long(l.Points[0].X), b.Long(l.Points[1].X)))
			}
		}
	}
	return s
}

// stepEnds closes the tails.
func (b build) stepEnds() sheet.Step {
	say, d := b.Say.Order, b.Design
	if d.Cap.Kind == design.Gathered {
		s := step(say.TurnEnds)
		s.Add(say.EachFold, b.Long(d.Cap.Hem))
		return s
	}
	s := step(say.Caps)
	for _, q := range b.Sewn.Seams {
		if q.Kind == piece.EndToCap {
			s.Add(b.Say.Names.Seam(q), fmt.Sprintf(say.Eased, b.Long(q.Hung[1]), b.SignedFigure(q.Ease), b.Unit()))
		}
	}
	return s
}

// stepPin pins the channels to the body's sides.
func (b build) stepPin() sheet.Step {
	say := b.Say.Order
	s := step(say.PinStrip)
	if b.Design.Channel.Kind == design.Facing {
		s = step(say.PinFacing)
	}
	for _, n := range b.Sewn.SideNotches {
		name := n.Name
		if n.Bar {
			name = fmt.Sprintf(say.AtBar, name)
		}
		s.Add(name, b.Long(n.At))
	}
	s.Add(say.FootEnd, b.Long(b.Sewn.SideNet.HungLength()))
	return s
}

// stepStitch sews the channels.
func (b build) stepStitch() sheet.Step {
	say, d := b.Say.Order, b.Design
	s := step(say.StitchStrip)
	if d.Channel.Kind == design.Facing {
		s = step(say.StitchFacing)
	}
	s.Add(say.StitchLine, b.Long(d.Channel.Foot))
	s.Add(say.ChannelDepth, b.Long(d.Channel.Depth))
	s.Add(say.Rows, fmt.Sprint(d.Seam.Rows))
	s.Add(say.StitchLength, b.Long(d.Seam.StitchLength))
	if d.Seam.ThreadName != "" {
		s.Add(say.Thread, d.Seam.ThreadName)
	}
	return s
}
