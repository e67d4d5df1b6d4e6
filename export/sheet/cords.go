package sheet

import (
	"fmt"
	"math"

	"slingloft/export/sheet/picture"
	"slingloft/outline/cord"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// cords shows every cord with its marks and the sum that makes its length.
func (b *builder) cords() (Section, error) {
	s := Section{ID: "cords", Title: "The cord set"}
	s.Blocks = append(s.Blocks, Para(fmt.Sprintf("Rigged as %s. Mark every cord before it is spliced; the last column "+
		"of each table is what a tape reads after every splice, without load.", b.words.Cords.Rigging[b.Cords.Variant])))
	for _, c := range b.Cords.Cords {
		s.Blocks = append(s.Blocks,
			Figures{{b.cordPicture(c), fmt.Sprintf("%s, cut %d at %s from %s. Pale: ends that are buried.", capital(b.cordName(c)),
				c.Count, b.long(c.Cut), c.Kind.Name), true}},
			b.termsTable(c))
		if len(c.Marks) > 0 {
			s.Blocks = append(s.Blocks, b.marksTable(c))
		}
		if len(c.Steps) > 0 {
			s.Blocks = append(s.Blocks, b.readingsTable(c))
		}
	}
	if len(b.Cords.Notes) > 0 {
		s.Blocks = append(s.Blocks, sentences(b.words.Cords.NotesOf(b.Cords, b.Style)))
	}
	return s, nil
}

// cordName names a cord.
func (b *builder) cordName(c cord.Cord) string { return b.words.Cords.Parts[c.Part] }

// cordPicture draws a cord as cut, straight, with its marks.
func (b *builder) cordPicture(c cord.Cord) picture.Picture {
	const left, right, below, stem = 8.0, 8.0, 11.0, 7.0
	tall := 0.0
	label := func(m cord.Mark) string { return b.words.Cords.Spot(m.Spot) + " " + b.figure(m.FromStart) }
	for _, m := range c.Marks {
		tall = math.Max(tall, picture.Width(label(m), picture.Small, false))
	}
	p := picture.Picture{ID: "cord-" + safe(c.Part.String()), Title: capital(b.cordName(c)) + " as cut, with its marks",
		Width: wide, Height: below + 3 + stem + tall + 3}
	k := (wide - left - right) / c.Cut
	y := below + 1.5
	x := func(s float64) float64 { return left + s*k }
	box := func(ink picture.Ink, from, to float64) {
		p.Area(ink, geom.Pt(x(from), y-1.1), geom.Pt(x(to), y-1.1), geom.Pt(x(to), y+1.1), geom.Pt(x(from), y+1.1))
	}
	box(picture.Cord, 0, c.Cut)
	lo, hi := buriedEnds(c)
	box(picture.Buried, 0, lo)
	box(picture.Buried, hi, c.Cut)
	want := make([]float64, len(c.Marks))
	for i, m := range c.Marks {
		want[i] = x(m.FromStart)
	}
	for i, at := range picture.Spread(want, 3.4, left, wide-left) {
		m := c.Marks[i]
		p.Line(picture.Main, picture.Thin, geom.Pt(want[i], y-1.8), geom.Pt(want[i], y+1.8), geom.Pt(at, y+stem))
		p.Write(picture.Text{Text: label(m), Size: picture.Small, Turn: math.Pi / 2, Ink: picture.Main,
			At: geom.Pt(at+0.36*picture.Small, y+stem+1), Anchor: piece.Start})
	}
	p.Level(geom.Pt(x(0), y), geom.Pt(x(c.Cut), y), 4, b.long(c.Cut))
	p.Desc = fmt.Sprintf("The cord lies straight from its start at the left; marks at the distances that the table gives. Cut length %s.",
		b.long(c.Cut))
	return p
}

// buriedEnds returns how far from the start the first end is buried in another
// cord and from where the last one is, by the shoulder marks.
func buriedEnds(c cord.Cord) (lo, hi float64) {
	hi = c.Cut
	for _, m := range c.Marks {
		if !m.Buried {
			continue
		}
		for _, n := range c.Marks {
			if n.Buried {
				continue
			}
			if m.FromStart < c.Cut/2 && n.FromStart > m.FromStart && (lo == 0 || n.FromStart < lo) {
				lo = n.FromStart
			}
			if m.FromStart > c.Cut/2 && n.FromStart < m.FromStart && (hi == c.Cut || n.FromStart > hi) {
				hi = n.FromStart
			}
		}
	}
	return lo, hi
}

// termsTable tables the sum of a cut length.
func (b *builder) termsTable(c cord.Cord) Table {
	t := Table{ID: "cord-" + safe(c.Part.String()) + "-terms", Caption: "Cut length of the " + b.cordName(c) + ", term " +
		"by term, in " + b.unitWord(),
		Head: []string{"term", b.unit()}, Words: []bool{true, false}}
	for _, q := range c.Terms {
		t.Rows = append(t.Rows, []string{b.words.Cords.Terms[q.Kind], signed(b.figure(math.Abs(q.Length)), q.Length < 0)})
		t.Strong = append(t.Strong, false)
	}
	t.Rows = append(t.Rows, []string{fmt.Sprintf("cut length, %d of them", c.Count), b.figure(c.Cut)})
	t.Strong = append(t.Strong, true)
	return t
}

func signed(figure string, negative bool) string {
	if negative {
		return "−" + figure
	}
	return figure
}

// signedFigure writes a length without unit, with a true minus.
func (b *builder) signedFigure(mm float64) string {
	f := b.figure(math.Abs(mm))
	return signed(f, mm < 0 && f != b.figure(0))
}

// marksTable tables a cord's marks.
func (b *builder) marksTable(c cord.Cord) Table {
	t := Table{ID: "cord-" + safe(c.Part.String()) + "-marks", Caption: "Marks on the " + b.cordName(c) + ", in " + b.unitWord(),
		Head:  []string{"mark", "from start", "from end", "spliced, from " + b.words.Cords.Spot(c.Datum), ""},
		Words: []bool{true, false, false, false, true}}
	for _, m := range c.Marks {
		note := ""
		if m.Buried {
			note = "buried"
		}
		t.Rows = append(t.Rows, []string{b.words.Cords.Spot(m.Spot), b.figure(m.FromStart), b.figure(m.FromEnd), b.signedFigure(m.Spliced), note})
	}
	return t
}

// readingsTable tables what a tape must show after each splice.
func (b *builder) readingsTable(c cord.Cord) Table {
	t := Table{ID: "cord-" + safe(c.Part.String()) + "-readings",
		Caption: "What the tape must show on the " + b.cordName(c) + " after each splice, in " + b.unitWord(),
		Head:    []string{"splice", "from", "to", "before", "after"}, Words: []bool{true, true, true, false, false}}
	for _, s := range c.Steps {
		for i, r := range s.Reads {
			do, before := "", "–"
			if i == 0 {
				do = b.words.Cords.Steps[s.Do]
			}
			if r.Before != 0 {
				before = b.figure(r.Before)
			}
			t.Rows = append(t.Rows, []string{do, b.words.Cords.Spot(r.From), b.words.Cords.Spot(r.To), before, b.figure(r.After)})
		}
	}
	return t
}
