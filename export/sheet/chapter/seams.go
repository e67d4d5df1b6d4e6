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
	s := sheet.Section{ID: "seams", Title: "Seam walk"}
	if len(b.Sewn.Seams) == 0 {
		return s, nil
	}
	s.Blocks = append(s.Blocks, sheet.Para("Both edges of every seam, measured along the finished line. Planned ease is what "+
		"the two change against each other when the cloth shears to its hung shape; "+
		"it is spread between the notches. What remains has to stay within the tolerance."))
	t := sheet.Table{ID: "seam-walk", Caption: "Seams, in " + b.UnitWord() + "; a and b are the two pieces",
		Head:  []string{"seam", "flat a", "flat b", "hung a", "hung b", "ease", "per 100", "remains", "allowed"},
		Words: []bool{true, false, false, false, false, false, false, false, false}}
	for _, q := range b.Sewn.Seams {
		t.AddStrong(!q.Within(), b.Names.Seam(q), b.Figure(q.Flat[0]), b.Figure(q.Flat[1]), b.Figure(q.Hung[0]), b.Figure(q.Hung[1]),
			b.SignedFigure(q.Ease), signedDecimal(q.EasePer100, 2), b.SignedFigure(q.Remains), b.Figure(q.Tolerance))
	}
	s.Blocks = append(s.Blocks, t)
	for i, q := range b.Sewn.Seams {
		s.Blocks = append(s.Blocks, b.partsTable(i, q))
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
	t := sheet.Table{ID: fmt.Sprintf("seam-%d-parts", i+1), Caption: given.Capital(b.Names.Seam(q)) + ", notch to notch, in " + b.UnitWord(),
		Head: []string{"from", "to", q.IDs[0], q.IDs[1], "ease"}, Words: []bool{true, true, false, false, false}}
	folds := false
	for _, p := range q.Parts {
		folds = folds || p.Fold != 0
	}
	if folds {
		t.Head, t.Words = append(t.Head, "gathers at the fold"), append(t.Words, false)
	}
	for _, p := range q.Parts {
		row := []string{b.Names.SeamMark(p.From), b.Names.SeamMark(p.To), b.Figure(p.Flat[0]), b.Figure(p.Flat[1]), b.SignedFigure(p.Ease)}
		if folds {
			row = append(row, b.SignedFigure(p.Fold))
		}
		t.Add(row...)
	}
	return t
}
