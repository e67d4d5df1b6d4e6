package chapter

import (
	"fmt"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/quantity"
	"slingloft/outline/template"
)

// offsets tables the curves that are marked by hand.
func (b build) offsets() (sheet.Section, error) {
	say := b.Say.Offsets
	s := sheet.Section{ID: "offsets", Title: say.Title}
	if len(b.Curves) == 0 {
		return s, nil
	}
	s.Add(sheet.Para(say.How), sheet.Para(b.Say.Boards.Offsets))
	for _, c := range b.Curves {
		rows, err := template.Offsets(c.Line, b.Design.Template.Tick)
		if err != nil {
			return s, fmt.Errorf("%s: %w", c.Kind, err)
		}
		chord := c.Line[0].Dist(c.Line[len(c.Line)-1])
		t := sheet.Table{ID: "offsets-" + picture.SafeID(c.Kind.String()), Dense: true,
			Caption: fmt.Sprintf(say.Caption, given.Capital(b.Say.Names.Pieces.Curves[c.Kind]), b.Long(chord), b.Long(c.Line.Length()),
				b.UnitWord()),
			Head: say.Columns[:], Words: []bool{false, false, false}}
		for i, r := range rows {
			if i > 0 && i+1 < len(rows) && !r.Deepest && rows[i+1].Station-r.Station < sameStation {
				continue
			}
			t.AddStrong(r.Deepest, b.Figure(r.Station), b.SignedFigure(r.Depth), b.Figure(r.Arc))
		}
		s.Add(t)
	}
	s.Add(sheet.Para(say.Read))
	return s, nil
}

// sameStation is how near stations of an offsets table may be, mm: nearer ones read alike in
// sixteenths of an inch.
const sameStation = quantity.Inch / 16
