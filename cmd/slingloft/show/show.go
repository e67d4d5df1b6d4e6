// Package show gathers from a laid plan what the build sheet is made from, for
// the sheet's file and for the live page.
package show

import (
	"path/filepath"

	"slingloft/cmd/slingloft/work"
	"slingloft/export"
	"slingloft/export/sheet"
	"slingloft/export/sheet/chapter"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/wording"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// Of sets out the build sheet of a laid plan in one language.
func Of(p *work.Plan, l work.Lays, say wording.Words) (sheet.Sheet, error) {
	return WithCloth(p, l, nil, say)
}

// WithCloth is [Of] with the cut as it hangs as cloth; nil: without.
func WithCloth(p *work.Plan, l work.Lays, cloth *work.Draped, say wording.Words) (sheet.Sheet, error) {
	return OfShare(p, work.Share{Plan: p}, l, cloth, say)
}

// OfShare is [WithCloth] of one of the designs that a plan lays together: all in it is the
// design's own but the lays and what to buy, which are for all.
func OfShare(all *work.Plan, s work.Share, l work.Lays, cloth *work.Draped, say wording.Words) (sheet.Sheet, error) {
	p := s.Plan
	d := dataOf(p, say)
	d.Beds, d.Together = s.Beds, len(all.Beds())
	if cloth != nil {
		d.Draped = &given.Draped{Hung: cloth.Hung, Crown: cloth.Crown, Soles: cloth.Soles, Bottom: p.Shape.Problem.Bottom, Settled: cloth.Settled}
	}
	d.Lays = laysOf(all, l)
	bill, err := all.Bill(l)
	if err != nil {
		return sheet.Sheet{}, err
	}
	if d.Together > 0 { // what one of them weighs
		own, err := p.Bill(work.Lays{})
		if err != nil {
			return sheet.Sheet{}, err
		}
		bill.Masses, bill.Total = own.Masses, own.Total
	}
	d.Bill = &bill
	// Where the errors cannot be followed through the sheet does without them.
	if r, err := p.Accuracy(); err == nil {
		d.Accuracy = &r
	}
	for _, g := range p.Guests() {
		d.Guests = append(d.Guests, given.Guest{Name: g.Name, Lying: g.Lying, Ground: g.Ground, Cannot: g.Err, Least: g.Least()})
	}
	if p.Design.Hung.Given {
		c := p.Corrected()
		d.Corrected = &c
	}
	return chapter.Sheet(d)
}

// Unlaid sets out the build sheet of a plan that is not laid yet: all of it but what
// takes longest, the lay, what to buy and what working errors do.
func Unlaid(p *work.Plan, say wording.Words) (sheet.Sheet, error) {
	d := dataOf(p, say)
	d.Unlaid = true
	return chapter.Sheet(d)
}

// dataOf gathers what is known at once.
func dataOf(p *work.Plan, say wording.Words) given.Data {
	d := given.Data{
		Design: p.Design, File: fileOf(p), Digest: p.Digest, Mark: p.Mark, Style: p.Style(),
		Shape: &p.Shape, Body: &p.Body, Sewn: p.Sewn, Boards: p.Boards, Templates: p.Templates, Cords: p.Cords,
		Shelter: &p.Shelter, Further: p.Further,
		Say: say, Warnings: p.Warnings(), Curves: p.Curves(),
	}
	margins, roll := p.Margins(), p.Roll()
	d.Margins, d.Roll, d.Cautions, d.Proof = &margins, &roll, p.Cautions(), p.CautionFigures()
	// Where the bed is not found at rest the sheet does without.
	if r, err := p.Room(); err == nil {
		d.Room = &r
	}
	if l := p.Leveled; l != nil {
		d.Leveled = &given.Leveled{Closed: l.Closed, Was: l.Was, EndSeams: l.EndSeams(&p.Body), Bottom: p.Shape.Problem.Bottom}
	}
	if p.Hangs {
		d.Place = &p.Place
	}
	return d
}

// fileOf returns the name of a plan's file, without its folders; empty for the design that
// is built in.
func fileOf(p *work.Plan) string {
	if name, _ := design.Demo(); p.File() == name {
		return ""
	}
	return filepath.Base(p.File())
}

// laysOf returns the roll and every sheet.
func laysOf(p *work.Plan, l work.Lays) []given.Lay {
	s := p.Design.Sheet
	var out []given.Lay
	for roll, c := range p.Rolls() {
		lay := given.Lay{Material: c.Name, Width: l.Rolls[roll].Length, Height: c.Width, Use: l.Rolls[roll].Density,
			Items: work.Placed(p.OnRoll(roll), l.Rolls[roll], 0), Roll: true}
		if roll == 0 {
			lay.Kept = keptClear(p, piece.Cloth)
		}
		out = append(out, lay)
	}
	if len(l.Boards.Placements) == 0 {
		return out
	}
	frame, err := export.Within(s.Width, s.Height)
	if err != nil {
		return out
	}
	kept := keptClear(p, piece.Board)
	for n := range l.Boards.Beds {
		items := work.Placed(p.Templates, l.Boards, n)
		area := 0.0
		for i := range items {
			items[i].Motion.Shift = items[i].Motion.Shift.Plus(frame.Lay.Min)
			area += items[i].Piece.Cut.Area()
		}
		out = append(out, given.Lay{
			Material: s.Name,
			Width:    s.Width, Height: s.Height, Use: area / (s.Width * s.Height), Items: items, Kept: kept,
		})
	}
	return out
}

// keptClear returns what of a stock no piece may touch: flaws of the cloth, and the
// maker's own keep-outs.
func keptClear(p *work.Plan, stock piece.Stock) []given.Kept {
	var out []given.Kept
	if stock == piece.Cloth {
		for _, f := range p.Design.Cloth.Flaws {
			out = append(out, given.Kept{Flaw: true, Outline: f.Ring()})
		}
	}
	for _, r := range p.KeptClear(stock) {
		out = append(out, given.Kept{Outline: r})
	}
	return out
}
