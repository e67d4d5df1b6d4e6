package sheet

import (
	"fmt"

	"slingloft/outline/template"
)

// offsets tables the curves that are marked by hand.
func (b *builder) offsets() (Section, error) {
	s := Section{ID: "offsets", Title: "Offsets tables"}
	if len(b.Curves) == 0 {
		return s, nil
	}
	s.Blocks = append(s.Blocks, Para("To mark a curve of the finished line by hand: strike a straight line between its "+
		"two ends, set off the distances along it, "+
		"and from each the offset square to it; a batten through the points gives the curve. The last column is the way "+
		"along the curve, to prove it with a tape."))
	for _, c := range b.Curves {
		rows, err := template.Offsets(c.Line, b.Design.Template.Tick)
		if err != nil {
			return s, fmt.Errorf("%s: %w", c.Kind, err)
		}
		chord := c.Line[0].Dist(c.Line[len(c.Line)-1])
		t := Table{ID: "offsets-" + safe(c.Kind.String()), Dense: true,
			Caption: fmt.Sprintf("%s: chord %s, along the curve %s; columns in %s", capital(b.words.Pieces.Curves[c.Kind]), b.long(chord),
				b.long(c.Line.Length()), b.unitWord()),
			Head: []string{"along the chord", "offset", "along the curve"}, Words: []bool{false, false, false}}
		for _, r := range rows {
			t.Rows = append(t.Rows, []string{b.figure(r.Station), b.signedFigure(r.Depth), b.figure(r.Arc)})
			t.Strong = append(t.Strong, r.Deepest)
		}
		s.Blocks = append(s.Blocks, t)
	}
	s.Blocks = append(s.Blocks, Para("The row set bold is where the curve is deepest. A negative offset lies on the "+
		"far side of the chord: the curve bows out there."))
	return s, nil
}
