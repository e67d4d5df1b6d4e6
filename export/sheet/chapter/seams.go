package chapter

import (
	"fmt"
	"math"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
)

// seams tables the seam walk.
func (b build) seams() (sheet.Section, error) {
	say := b.Say.Seams
	s := sheet.Section{ID: "seams", Title: say.Title}
	if len(b.Sewn.Seams) == 0 {
		return s, nil
	}
	t := sheet.Table{ID: "seam-walk", Caption: fmt.Sprintf(say.Caption, b.UnitWord()), Head: say.Columns[:],
		Words: []bool{true, false, false, false, false, false, false, false, false}}
	for _, q := range b.Sewn.Seams {
		t.AddStrong(!q.Within(), b.Say.Names.Seam(q), b.Figure(q.Flat[0]), b.Figure(q.Flat[1]), b.Figure(q.Hung[0]), b.Figure(q.Hung[1]),
			b.SignedFigure(q.Ease), signedDecimal(q.EasePer100, 2), b.SignedFigure(q.Remains), b.Figure(q.Tolerance))
	}
	s.Add(sheet.Para(say.How), t)
	for i, q := range b.Sewn.Seams {
		s.Add(b.partsTable(i, q))
	}
	return s, nil
}

// signedDecimal writes a plain number with a true minus.
func signedDecimal(v float64, n int) string {
	f := quantity.Decimal(math.Abs(v), n)
	return given.Signed(f, v < 0 && f != quantity.Decimal(0, n))
}

// partsTable walks one seam from notch to notch.
func (b build) partsTable(i int, q piece.Seam) sheet.Table {
	say, names := b.Say.Seams, b.Say.Names
	t := sheet.Table{ID: fmt.Sprintf("seam-%d-parts", i+1), Caption: fmt.Sprintf(say.Parts, given.Capital(names.Seam(q)), b.UnitWord()),
		Head: []string{say.From, say.To, q.IDs[0], q.IDs[1], say.Ease}, Words: []bool{true, true, false, false, false}}
	folds := false
	for _, p := range q.Parts {
		folds = folds || p.Fold != 0
	}
	if folds {
		t.Head, t.Words = append(t.Head, say.Gathers), append(t.Words, false)
	}
	for _, p := range q.Parts {
		row := []string{names.SeamMark(p.From), names.SeamMark(p.To), b.Figure(p.Flat[0]), b.Figure(p.Flat[1]), b.SignedFigure(p.Ease)}
		if folds {
			row = append(row, b.SignedFigure(p.Fold))
		}
		t.Add(row...)
	}
	return t
}
