package chapter

import (
	"fmt"
	"math"
	"strings"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/sketch"
	"slingloft/outline/geom"
)

// lay shows every roll and sheet with the pieces on it.
func (b build) lay() (sheet.Section, error) {
	s := sheet.Section{ID: "lay", Title: b.Say.Lay.Title}
	if b.Unlaid {
		s.Add(sheet.Para(b.Say.Unlaid))
	}
	if b.Together > 0 && len(b.Lays) > 0 {
		s.Add(sheet.Para(fmt.Sprintf(b.Say.Lay.Together, b.Together, b.own())))
	}
	for i, l := range b.Lays {
		text := b.Say.Lay.OnSheet
		if l.Roll {
			text = b.Say.Lay.OnRoll
		}
		caption := fmt.Sprintf(text, b.LayName(i), l.Material, sketch.Long(b.Data, l), b.Round(l.Height), given.Percent(l.Use))
		s.Add(sheet.Figures{{Picture: sketch.Lay(b.Data, i), Caption: caption}})
		if l.Roll {
			s.Add(b.placesTable(i, l))
		}
	}
	return s, nil
}

// own names the beds of this hammock among those that are laid together.
func (b build) own() string {
	var numbers []string
	for _, n := range b.Beds {
		numbers = append(numbers, fmt.Sprintf(b.Say.Lay.Bed, n))
	}
	return strings.Join(numbers, ", ")
}

// placesTable tells where each piece lies on the roll.
func (b build) placesTable(i int, l given.Lay) sheet.Table {
	say := b.Say.Lay
	t := sheet.Table{ID: fmt.Sprintf("lay-%d-places", i+1), Caption: fmt.Sprintf(say.Places, b.UnitWord()), Head: say.Columns[:],
		Words: []bool{true, false, false, false, false, true}}
	for n, it := range l.Items {
		box := it.Piece.Cut.Moved(it.Motion).Bounds()
		t.Add(fmt.Sprintf("%d %s", n+1, sketch.Titled(it.Piece)), b.ClothFigure(box.Min.X), b.ClothFigure(box.Max.X),
			b.ClothFigure(box.Min.Y), b.ClothFigure(box.Max.Y), b.liesBy(it.Motion))
	}
	return t
}

// liesBy says how a piece lies that was moved.
func (b build) liesBy(m geom.Motion) string {
	say := b.Say.Lay
	lies := say.AsDrawn
	if math.Abs(math.Remainder(m.Turn, 2*math.Pi)) > 1e-9 {
		lies = fmt.Sprintf(say.Turned, b.Style.Angle(m.Turn))
	}
	if m.Mirror {
		return fmt.Sprintf(say.Mirrored, lies)
	}
	return lies
}
