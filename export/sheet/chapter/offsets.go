package chapter

import (
	"fmt"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/template"
)

// offsets tables the curves that are marked by hand.
func (b build) offsets() (sheet.Section, error) {
	s := sheet.Section{ID: "offsets", Title: "Offsets tables"}
	if len(b.Curves) == 0 {
		return s, nil
	}
	s.Blocks = append(s.Blocks, sheet.Para("To mark a curve of the finished line by hand: strike a straight line between its "+
		"two ends, set off the distances along it, "+
		"and from each the offset square to it; a batten through the points gives the curve. The last column is the way "+
		"along the curve, to prove it with a tape."))
	for _, c := range b.Curves {
		rows, err := template.Offsets(c.Line, b.Design.Template.Tick)
		if err != nil {
			return s, fmt.Errorf("%s: %w", c.Kind, err)
		}
		chord := c.Line[0].Dist(c.Line[len(c.Line)-1])
		t := sheet.Table{ID: "offsets-" + picture.SafeID(c.Kind.String()), Dense: true,
			Caption: fmt.Sprintf("%s: chord %s, along the curve %s; columns in %s", given.Capital(b.Names.Pieces.Curves[c.Kind]), b.Long(chord),
				b.Long(c.Line.Length()), b.UnitWord()),
			Head: []string{"along the chord", "offset", "along the curve"}, Words: []bool{false, false, false}}
		for _, r := range rows {
			t.AddStrong(r.Deepest, b.Figure(r.Station), b.SignedFigure(r.Depth), b.Figure(r.Arc))
		}
		s.Blocks = append(s.Blocks, t)
	}
	s.Blocks = append(s.Blocks, sheet.Para("The row set bold is where the curve is deepest. A negative offset lies on the "+
		"far side of the chord: the curve bows out there."))
	return s, nil
}
