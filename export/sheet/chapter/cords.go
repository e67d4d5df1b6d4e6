package chapter

import (
	"fmt"
	"math"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/export/sheet/sketch"
	"slingloft/outline/cord"
)

// cords shows every cord with its marks and the sum that makes its length.
func (b build) cords() (sheet.Section, error) {
	s := sheet.Section{ID: "cords", Title: "The cord set"}
	s.Blocks = append(s.Blocks, sheet.Para(fmt.Sprintf("Rigged as %s. Mark every cord before it is spliced; the last column "+
		"of each table is what a tape reads after every splice, without load.", b.Names.Cords.Rigging[b.Cords.Variant])))
	for _, c := range b.Cords.Cords {
		caption := fmt.Sprintf("%s, cut %d at %s from %s. Pale: ends that are buried.", given.Capital(b.CordName(c)), c.Count,
			b.Long(c.Cut), c.Kind.Name)
		s.Blocks = append(s.Blocks, sheet.Figures{{Picture: sketch.Cord(b.Data, c), Caption: caption}}, b.termsTable(c))
		if len(c.Marks) > 0 {
			s.Blocks = append(s.Blocks, b.marksTable(c))
		}
		if len(c.Steps) > 0 {
			s.Blocks = append(s.Blocks, b.readingsTable(c))
		}
	}
	if len(b.Cords.Notes) > 0 {
		s.Blocks = append(s.Blocks, sentences(b.Names.Cords.NotesOf(b.Cords, b.Style)))
	}
	return s, nil
}

// termsTable tables the sum of a cut length.
func (b build) termsTable(c cord.Cord) sheet.Table {
	t := sheet.Table{ID: "cord-" + picture.SafeID(c.Part.String()) + "-terms", Caption: "Cut length of the " + b.CordName(c) + ", term " +
		"by term, in " + b.UnitWord(),
		Head: []string{"term", b.Unit()}, Words: []bool{true, false}}
	for _, q := range c.Terms {
		t.AddStrong(false, b.Names.Cords.Terms[q.Kind], given.Signed(b.Figure(math.Abs(q.Length)), q.Length < 0))
	}
	t.AddStrong(true, fmt.Sprintf("cut length, %d of them", c.Count), b.Figure(c.Cut))
	return t
}

// marksTable tables a cord's marks.
func (b build) marksTable(c cord.Cord) sheet.Table {
	t := sheet.Table{ID: "cord-" + picture.SafeID(c.Part.String()) + "-marks",
		Caption: "Marks on the " + b.CordName(c) + ", in " + b.UnitWord(),
		Head:    []string{"mark", "from start", "from end", "spliced, from " + b.Names.Cords.Spot(c.Datum), ""},
		Words:   []bool{true, false, false, false, true}}
	for _, m := range c.Marks {
		note := ""
		if m.Buried {
			note = "buried"
		}
		t.Add(b.Names.Cords.Spot(m.Spot), b.Figure(m.FromStart), b.Figure(m.FromEnd), b.SignedFigure(m.Spliced), note)
	}
	return t
}

// readingsTable tables what a tape must show after each splice.
func (b build) readingsTable(c cord.Cord) sheet.Table {
	t := sheet.Table{ID: "cord-" + picture.SafeID(c.Part.String()) + "-readings",
		Caption: "What the tape must show on the " + b.CordName(c) + " after each splice, in " + b.UnitWord(),
		Head:    []string{"splice", "from", "to", "before", "after"}, Words: []bool{true, true, true, false, false}}
	for _, s := range c.Steps {
		for i, r := range s.Reads {
			do, before := "", "–"
			if i == 0 {
				do = b.Names.Cords.Steps[s.Do]
			}
			if r.Before != 0 {
				before = b.Figure(r.Before)
			}
			t.Add(do, b.Names.Cords.Spot(r.From), b.Names.Cords.Spot(r.To), before, b.Figure(r.After))
		}
	}
	return t
}
