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
	say, names := b.Say.Cords, b.Say.Names.Cords
	s := sheet.Section{ID: "cords", Title: say.Title}
	s.Add(sheet.Para(fmt.Sprintf(say.How, names.Rigging[b.Cords.Variant], b.Force(cord.LightPull))))
	if b.looped() {
		s.Add(sheet.Para(say.Loops))
	}
	for _, c := range b.Cords.Cords {
		caption := fmt.Sprintf(say.Straight.Caption, given.Capital(b.CordName(c)), c.Count, b.Rope(c.Cut), c.Kind.Name)
		s.Add(sheet.Figures{{Picture: sketch.Cord(b.Data, c), Caption: caption}}, b.termsTable(c))
		if len(c.Marks) > 0 {
			s.Add(b.marksTable(c))
		}
		if len(c.Steps) > 0 {
			s.Add(b.readingsTable(c))
		}
	}
	if len(b.Cords.Notes) > 0 {
		s.Add(sentences(names.NotesOf(b.Cords, b.Style)))
	}
	return s, nil
}

// ofCord begins a table of a cord; its caption holds the cord and the unit.
func (b build) ofCord(c cord.Cord, id, caption string) sheet.Table {
	return sheet.Table{ID: "cord-" + picture.SafeID(c.Part.String()) + "-" + id, Caption: fmt.Sprintf(caption, b.CordName(c), b.UnitWord())}
}

// termsTable tables the sum of a cut length.
func (b build) termsTable(c cord.Cord) sheet.Table {
	t := b.ofCord(c, "terms", b.Say.Cords.Terms)
	t.Head, t.Words = []string{b.Say.Cords.Term, b.Unit()}, []bool{true, false}
	for _, q := range c.Terms {
		t.AddStrong(false, b.Say.Names.Cords.Terms[q.Kind], given.Signed(b.Figure(math.Abs(q.Length)), q.Length < 0))
	}
	t.AddStrong(true, fmt.Sprintf(b.Say.Cords.CutLength, c.Count), b.Figure(c.Cut))
	return t
}

// marksTable tables a cord's marks.
func (b build) marksTable(c cord.Cord) sheet.Table {
	say, names := b.Say.Cords, b.Say.Names.Cords
	t := b.ofCord(c, "marks", say.Marks)
	t.Head = []string{say.Mark, say.FromStart, say.FromEnd, fmt.Sprintf(say.Spliced, names.Spot(c.Datum)), ""}
	t.Words = []bool{true, false, false, false, true}
	for _, m := range c.Marks {
		note := ""
		if m.Buried {
			note = say.Buried
		}
		t.Add(names.Spot(m.Spot), b.RopeFigure(m.FromStart), b.RopeFigure(m.FromEnd), b.signedRope(m.Spliced), note)
	}
	return t
}

// signedRope writes a place on a cord without its unit, with a true minus.
func (b build) signedRope(mm float64) string {
	f := b.RopeFigure(math.Abs(mm))
	return given.Signed(f, mm < 0 && f != b.RopeFigure(0))
}

// readingsTable tables what a tape must show after each splice.
func (b build) readingsTable(c cord.Cord) sheet.Table {
	say, names := b.Say.Cords, b.Say.Names.Cords
	t := b.ofCord(c, "readings", say.Readings)
	t.Head, t.Words = say.Columns[:], []bool{true, true, true, false, false}
	for _, s := range c.Steps {
		for i, r := range s.Reads {
			do, before := "", "–"
			if i == 0 {
				do = names.Steps[s.Do]
			}
			if r.Before != 0 {
				before = b.RopeFigure(r.Before)
			}
			t.Add(do, names.Spot(r.From), names.Spot(r.To), before, b.RopeFigure(r.After))
		}
	}
	return t
}
