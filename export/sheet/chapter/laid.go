package chapter

import (
	"fmt"
	"math"
	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/sketch"
)

// lay shows every roll and sheet with the pieces on it.
func (b build) lay() (sheet.Section, error) {
	s := sheet.Section{ID: "lay", Title: "The lay"}
	if b.Unlaid {
		s.Blocks = append(s.Blocks, sheet.Para(unlaid))
	}
	for i, l := range b.Lays {
		kind := "sheet"
		if l.Roll {
			kind = "roll"
		}
		caption := fmt.Sprintf("%s on %s: %s of %s %s wide, %s used.", l.Name, l.Material, b.Round(l.Width), kind,
			b.Round(l.Height), given.Percent(l.Use))
		if !l.Roll {
			caption = fmt.Sprintf("%s, %s, %s × %s, %s used.", l.Name, l.Material, b.Round(l.Width), b.Round(l.Height), given.Percent(l.Use))
		}
		s.Blocks = append(s.Blocks, sheet.Figures{{Picture: sketch.Lay(b.Data, i), Caption: caption}})
		if l.Roll {
			s.Blocks = append(s.Blocks, b.placesTable(i, l))
		}
	}
	return s, nil
}

// unlaid stands where the lay is not known yet.
const unlaid = "The pieces are not laid yet."

// placesTable tells where each piece lies on the roll.
func (b build) placesTable(i int, l given.Lay) sheet.Table {
	t := sheet.Table{ID: fmt.Sprintf("lay-%d-places", i+1), Caption: "Where each piece's outermost points lie: from the " +
		"roll's cut end, and from the lower selvedge, in " + b.UnitWord(),
		Head: []string{"piece", "from", "to", "from selvedge", "to", "lies"}, Words: []bool{true, false, false, false, false, true}}
	for n, it := range l.Items {
		box := it.Piece.Cut.Moved(it.Motion).Bounds()
		lies := "as drawn"
		if math.Abs(math.Remainder(it.Motion.Turn, 2*math.Pi)) > 1e-9 {
			lies = "turned " + given.Degrees(it.Motion.Turn)
		}
		if it.Motion.Mirror {
			lies += ", mirrored"
		}
		t.Add(fmt.Sprintf("%d %s", n+1, it.Piece.ID), b.Figure(box.Min.X), b.Figure(box.Max.X),
			b.Figure(box.Min.Y), b.Figure(box.Max.Y), lies)
	}
	return t
}
