package sheet

import (
	"fmt"
	"math"

	"slingloft/outline/piece"
)

// seams tables the seam walk.
func (b *builder) seams() (Section, error) {
	s := Section{ID: "seams", Title: "Seam walk"}
	if len(b.Sewn.Seams) == 0 {
		return s, nil
	}
	s.Blocks = append(s.Blocks, Para("Both edges of every seam, measured along the finished line. Planned ease is what "+
		"the two change against each other when the cloth shears to its hung shape; "+
		"it is spread between the notches. What remains has to stay within the tolerance."))
	t := Table{ID: "seam-walk", Caption: "Seams, in " + b.unitWord() + "; a and b are the two pieces",
		Head:  []string{"seam", "flat a", "flat b", "hung a", "hung b", "ease", "per 100", "remains", "allowed"},
		Words: []bool{true, false, false, false, false, false, false, false, false}}
	for _, q := range b.Sewn.Seams {
		t.Rows = append(t.Rows, []string{b.words.Seam(q), b.figure(q.Flat[0]), b.figure(q.Flat[1]), b.figure(q.Hung[0]), b.figure(q.Hung[1]),
			b.signedFigure(q.Ease), signedDecimal(q.EasePer100, 2), b.signedFigure(q.Remains), b.figure(q.Tolerance)})
		t.Strong = append(t.Strong, !q.Within())
	}
	s.Blocks = append(s.Blocks, t)
	for i, q := range b.Sewn.Seams {
		s.Blocks = append(s.Blocks, b.partsTable(i, q))
	}
	return s, nil
}

// signedDecimal writes a plain number with a true minus.
func signedDecimal(v float64, n int) string {
	f := decimals(math.Abs(v), n)
	return signed(f, v < 0 && f != decimals(0, n))
}

// partsTable walks one seam from notch to notch.
func (b *builder) partsTable(i int, q piece.Seam) Table {
	t := Table{ID: fmt.Sprintf("seam-%d-parts", i+1), Caption: capital(b.words.Seam(q)) + ", notch to notch, in " + b.unitWord(),
		Head: []string{"from", "to", q.IDs[0], q.IDs[1], "ease"}, Words: []bool{true, true, false, false, false}}
	folds := false
	for _, p := range q.Parts {
		folds = folds || p.Fold != 0
	}
	if folds {
		t.Head, t.Words = append(t.Head, "gathers at the fold"), append(t.Words, false)
	}
	for _, p := range q.Parts {
		row := []string{b.words.SeamMark(p.From), b.words.SeamMark(p.To), b.figure(p.Flat[0]), b.figure(p.Flat[1]), b.signedFigure(p.Ease)}
		if folds {
			row = append(row, b.signedFigure(p.Fold))
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}
