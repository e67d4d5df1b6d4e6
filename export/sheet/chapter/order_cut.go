package chapter

import (
	"fmt"
	"math"
	"slices"

	"slingloft/export"
	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
)

// lineFacts tells where the centre line lies on the roll and where the bar lines cross
// it, as the lay has the pieces.
func (b build) lineFacts(s *sheet.Step) {
	say, bars := b.Say.Order, b.Sewn.BarLines
	if len(bars[hung.Head]) == 0 || len(bars[hung.Foot]) == 0 {
		return
	}
	for _, it := range b.onRoll() {
		at := it.Motion.Apply
		if it.Piece.Kind != piece.WholeBody {
			continue
		}
		add := func(what string, v float64) {
			if len(b.Beds) > 1 {
				what = fmt.Sprintf(b.Say.Lay.OfBed, it.Piece.Bed, what)
			}
			s.Add(what, b.Cloth(v))
		}
		add(say.CentreUp, at(geom.Pt(0, 0)).Y)
		add(b.ofEnd(say.BarFromCut, hung.Head), at(bars[hung.Head][0]).X)
		add(b.ofEnd(say.BarFromCut, hung.Foot), at(bars[hung.Foot][0]).X)
	}
	for _, q := range b.Boards {
		if q.Lie.For.Side() && q.Lie.Rests[0].Off > 0 {
			s.Do = append(s.Do, say.OffCentre)
			s.Add(say.OffLine, b.Cloth(q.Lie.Rests[0].Off))
			break
		}
	}
	for _, j := range b.Sewn.Joins {
		s.Add(fmt.Sprintf(say.JoinAside, b.rim(j.Place)), b.Cloth(math.Abs(j.V)))
	}
	if b.joined() {
		s.Do = append(s.Do, say.JoinedLines)
	}
	s.Check(say.BarToBar, b.Cloth(bars[hung.Foot][0].X-bars[hung.Head][0].X))
}

// capTop returns the middle of a cap's top edge, in its own coordinates; that of its seam
// is their zero.
func (b build) capTop(p piece.Piece) geom.Point {
	for _, e := range hung.Ends() {
		if top := b.Sewn.CapTops[e]; p.ID == "cap-"+e.String() && len(top) > 1 {
			arc := geom.NewArc(top)
			at, _ := arc.At(arc.Length() / 2)
			return at
		}
	}
	return geom.Point{}
}

// onRoll returns the pieces of cloth where they lie on the roll, if they are laid; of beds
// that are laid together, this hammock's.
func (b build) onRoll() []export.Item {
	i := slices.IndexFunc(b.Lays, func(l given.Lay) bool { return l.Roll })
	if i < 0 {
		return nil
	}
	return b.ownOn(b.Lays[i])
}

// onRolls returns those of all rolls.
func (b build) onRolls() []export.Item {
	var out []export.Item
	for _, l := range b.Lays {
		if l.Roll {
			out = append(out, b.ownOn(l)...)
		}
	}
	return out
}

// ownOn returns this hammock's pieces of a lay.
func (b build) ownOn(l given.Lay) []export.Item {
	var out []export.Item
	for _, it := range l.Items {
		if b.Together == 0 || slices.Contains(b.Beds, it.Piece.Bed) {
			bed := it.Piece.Bed
			it.Piece = it.Piece.Alone()
			it.Piece.Bed = bed
			out = append(out, it)
		}
	}
	return out
}

// markFacts tells what is marked by hand beside the body.
func (b build) markFacts(s *sheet.Step) {
	say := b.Say.Order
	const letters = 3 // the lines on notches and allowances come last
	if b.strips() {
		insert(s, letters, say.MarkStrips)
		insert(s, letters, say.NameStrips)
	} else {
		insert(s, letters, say.MarkFacings)
	}
	if b.capped() {
		insert(s, letters, say.MarkCaps)
	}
	for _, it := range b.onRoll() {
		at := it.Motion.Apply
		switch p := it.Piece; p.Kind {
		case piece.Strip:
			box := p.Cut.Moved(it.Motion).Bounds()
			s.Add(fmt.Sprintf(say.AlongRoll, p.Title), fmt.Sprintf(say.FromTo, b.Cloth(box.Min.X), b.Cloth(box.Max.X)))
			s.Add(fmt.Sprintf(say.AcrossRoll, p.Title), fmt.Sprintf(say.FromTo, b.Cloth(box.Min.Y), b.Cloth(box.Max.Y)))
		case piece.Cap:
			seam, top := at(geom.Pt(0, 0)), at(b.capTop(p))
			s.Add(fmt.Sprintf(say.CapCentre, p.Title), b.Cloth(seam.X))
			s.Add(fmt.Sprintf(say.CapSeam, p.Title), b.Cloth(seam.Y))
			s.Add(fmt.Sprintf(say.CapTop, p.Title), b.Cloth(top.Y))
		}
	}
}

// proveFacts tells the distances that prove the body: its diagonals and both ends; the
// rest stands with the piece.
func (b build) proveFacts(s *sheet.Step) {
	say := b.Say.Order
	const shown = 4
	bodies, prove := b.bodies(), say.Diagonals
	if len(bodies) > 1 {
		prove = say.Corners
	}
	insert(s, 1, prove)
	if b.capped() {
		insert(s, 1, say.CapsToo)
	}
	for _, q := range bodies {
		for _, c := range q.Checks[:min(shown, len(q.Checks))] {
			s.Check(b.of(len(bodies), q, b.Say.Names.Measure(c)), b.Cloth(c.Length))
		}
	}
	for _, q := range b.Sewn.Pieces {
		if q.Kind != piece.Cap {
			continue
		}
		for _, c := range q.Checks {
			s.Add(fmt.Sprintf(say.OfPanel, q.Title, b.Say.Names.Measure(c)), b.Cloth(c.Length))
		}
	}
	s.Add(say.NearEnough, b.Cloth(2*b.Design.Accuracy.Marking))
}

func (b build) cutFacts(s *sheet.Step) {
	say := b.Say.Order
	count := 0
	for _, p := range b.Sewn.Pieces {
		count += p.Count
	}
	s.Check(say.ClothPieces, fmt.Sprint(count))
	s.Add(say.SnipDeep, b.Cloth(b.snip()))
	s.Add(say.NotchIn, b.Round(notchIn))
	if b.capped() {
		s.Do = append(s.Do, say.SnipMiddle)
	}
	if b.joined() {
		s.Do = append(s.Do, say.SnipJoins)
	}
}

// notchIn is how far a line at a notch runs inwards from the net line, mm, to be seen beside
// what covers the edge: own choice.
const notchIn = 20.0

// snip is how deep a notch may be cut, mm: half of the least allowance that has one.
func (b build) snip() float64 {
	d := b.Design.Seam
	least := d.Side
	if b.capped() {
		least = min(least, d.End, d.Cap)
	}
	if b.joined() {
		least = min(least, d.Join)
	}
	return least / 2
}

// allowanceFacts tells the allowances beside the net lines.
func (b build) allowanceFacts(s *sheet.Step) {
	say, d := b.Say.Order, b.Design
	s.Add(say.SideAllowance, b.Cloth(d.Seam.Side))
	b.addEnds(s)
	if b.joined() {
		s.Add(say.JoinAllowance, b.Cloth(d.Seam.Join))
	}
	if b.capped() {
		s.Add(say.CapAllowance, b.Cloth(d.Seam.Cap))
		s.Add(say.CapTopHem, b.Cloth(2*d.Cap.Hem))
	}
}

// addEnds adds what the body has at its ends.
func (b build) addEnds(s *sheet.Step) {
	for _, q := range b.bodies() {
		for _, m := range q.Margins {
			if m.At == piece.AtEnds || m.At == piece.TurnedEnds {
				s.Add(b.marginWords(m), b.Cloth(m.Wide))
				return
			}
		}
	}
}
