package chapter

import (
	"fmt"
	"strings"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/export/sheet/sketch"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// pieces shows every cloth piece.
func (b build) pieces() (sheet.Section, error) {
	say := b.Say.Pieces
	s := sheet.Section{ID: "pieces", Title: say.Title}
	s.Add(sheet.Para(say.Key))
	for _, p := range b.Sewn.Pieces {
		caption := fmt.Sprintf(say.Flat.Caption, given.Capital(p.Title), p.Count)
		if f := sketch.Across(p.Cut.Bounds()); f > 1 {
			caption += " " + fmt.Sprintf(say.Across, f)
		}
		s.Add(sheet.Figures{{Picture: sketch.Piece(b.Data, p), Caption: caption}}, b.pieceTable(p))
		if len(p.Checks) > 0 {
			s.Add(b.squareTable(p))
		}
	}
	return s, nil
}

// pieceTable tables what is needed to mark and cut a piece.
func (b build) pieceTable(q piece.Piece) sheet.Table {
	say := b.Say.Pieces
	t := sheet.Table{ID: "piece-" + picture.SafeID(q.ID) + "-figures", Caption: given.Capital(q.Title),
		Head: []string{"", say.Figure}, Words: []bool{true, true}}
	sides := func(r geom.Ring) string {
		box := r.Bounds()
		return b.Cloth(box.Width()) + " × " + b.Cloth(box.Height())
	}
	t.Add(say.HowMany, b.count(q))
	t.Add(say.AsCut, sides(q.Cut))
	if len(q.Net) > 0 {
		t.Add(say.Finished, sides(q.Net))
	}
	for _, m := range q.Margins {
		t.Add(b.marginWords(m), b.Cloth(m.Wide))
	}
	if n := notchesOf(q); len(n) > 0 {
		t.Add(say.Notches, strings.Join(n, ", "))
	}
	t.Add(say.Lies, b.lies(q))
	return t
}

// count says how many there are of a piece.
func (b build) count(q piece.Piece) string {
	if q.Paired {
		return fmt.Sprintf(b.Say.Pieces.Mirrored, q.Count)
	}
	return fmt.Sprint(q.Count)
}

// marginWords says what a piece has at one of its edges.
func (b build) marginWords(m piece.Margin) string {
	text := b.Say.Pieces.Margins[m.At]
	if m.At == piece.AtJoin {
		return fmt.Sprintf(text, b.rim(m.Join))
	}
	return text
}

// rim names a long edge of a panel.
func (b build) rim(r piece.Rim) string { return b.Say.Names.Pieces.Rims[r] }

// lies says how a piece lies on the roll.
func (b build) lies(q piece.Piece) string {
	switch {
	case q.FreeGrain:
		return b.Say.Pieces.AnyWay
	case q.OneWay:
		return b.Say.Pieces.SameWay
	}
	return b.Say.Pieces.EitherWay
}

// squareTable tables the distances that prove a piece true on the cloth.
func (b build) squareTable(q piece.Piece) sheet.Table {
	say := b.Say.Pieces
	t := sheet.Table{ID: "piece-" + picture.SafeID(q.ID) + "-checks", Caption: fmt.Sprintf(say.Checks, given.Capital(q.Title)),
		Head: []string{say.FromTo, b.Unit()}, Words: []bool{true, false}}
	for _, c := range q.Checks {
		t.Add(b.Say.Names.Measure(c), b.ClothFigure(c.Length))
	}
	return t
}

// templateTable lists the stiff templates.
func (b build) templateTable() sheet.Table {
	say := b.Say.Pieces
	t := sheet.Table{ID: "templates", Caption: fmt.Sprintf(say.Templates, b.Design.Sheet.Name),
		Head:  []string{say.Template, say.Number, fmt.Sprintf(say.Along, b.Unit()), fmt.Sprintf(say.Wide, b.Unit())},
		Words: []bool{true, false, false, false}}
	for _, q := range b.Templates {
		box := q.Cut.Bounds()
		t.Add(sketch.Titled(q), fmt.Sprint(q.Count), b.ClothFigure(box.Width()), b.ClothFigure(box.Height()))
	}
	return t
}
