package chapter

import (
	"slingloft/export/sheet"
	"slingloft/export/sheet/wording"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// order is the work step by step with this design's figures.
func (b build) order() (sheet.Section, error) {
	s := sheet.Section{ID: "order", Title: b.Say.Order.Title}
	steps := sheet.Steps{b.stepMark(), b.stepCut(), b.stepPress()}
	if len(b.Sewn.Joins) > 0 {
		steps = append(steps, b.stepJoin())
	}
	if b.Design.Channel.Kind == design.Strip {
		steps = append(steps, b.stepOpenings())
	}
	steps = append(steps, b.stepEnds(), b.stepPin(), b.stepStitch())
	steps = append(append(steps, b.stepsPull()...), b.stepCords())
	if !b.Design.Splice.Whole {
		steps = append(steps, b.stepEyes())
	}
	steps = append(append(steps, b.stepThread(), b.stepSplice()), b.stepsRead()...)
	steps = append(steps, b.stepBars(), b.stepTack(), b.stepHang(), b.stepCorrect())
	s.Add(steps)
	if b.Corrected != nil {
		s.Add(b.correctedBlocks()...)
	}
	if b.Accuracy != nil {
		s.Add(b.effectsTable())
	}
	return s, nil
}

// step begins a step of work.
func step(say wording.Step) sheet.Step { return sheet.Step{Title: say.Title, Text: say.Text} }

// bodies returns the panels of the body: one, unless it is joined.
func (b build) bodies() []piece.Piece {
	var out []piece.Piece
	for _, p := range b.Sewn.Pieces {
		if p.Kind.Body() {
			out = append(out, p)
		}
	}
	return out
}

// strip returns the first channel strip.
func (b build) strip() (piece.Piece, bool) {
	for _, p := range b.Sewn.Pieces {
		if p.Kind == piece.Strip {
			return p, true
		}
	}
	return piece.Piece{}, false
}
