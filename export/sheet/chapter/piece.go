package chapter

import (
	"fmt"
	"slices"
	"strings"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/export/sheet/sketch"
	"slingloft/outline/piece"
)

// pieces shows every cloth piece and, smaller, every template.
func (b build) pieces() (sheet.Section, error) {
	s := sheet.Section{ID: "pieces", Title: "The pieces"}
	s.Blocks = append(s.Blocks, sheet.Para("Orange: cut. Green, dash and dot: stitch line. Blue, dashed: fold or press. Dark "+
		"blue: notches and marks. "+
		"Notches have one stroke on the left side and two on the right, the sides as a sleeper on the back has them. The "+
		"warp runs along the grain arrow."))
	for _, p := range b.Sewn.Pieces {
		pic := sketch.Piece(b.Data, p)
		caption := fmt.Sprintf("%s, cut %d.", given.Capital(p.Title), p.Count)
		if f := sketch.Across(p.Cut.Bounds()); f > 1 {
			caption += fmt.Sprintf(" Across it is drawn %d times as wide as along.", f)
		}
		s.Blocks = append(s.Blocks, sheet.Figures{{Picture: pic, Caption: caption}}, b.pieceTable(p))
		if len(p.Checks) > 0 {
			s.Blocks = append(s.Blocks, b.squareTable(p))
		}
	}
	if len(b.Templates) > 0 {
		s.Blocks = append(s.Blocks, b.templateTable())
	}
	return s, nil
}

// pieceTable tables what is needed to mark and cut a piece.
func (b build) pieceTable(q piece.Piece) sheet.Table {
	t := sheet.Table{ID: "piece-" + picture.SafeID(q.ID) + "-figures", Caption: given.Capital(q.Title), Head: []string{"", "figure"}, Words: []bool{true, true}}

	box := q.Cut.Bounds()
	count := fmt.Sprint(q.Count)
	if q.Paired {
		count += ", every second one mirrored"
	}
	t.Add("how many", count)
	t.Add("as cut, along and across", b.Long(box.Width())+" × "+b.Long(box.Height()))
	if len(q.Net) > 0 {
		net := q.Net.Bounds()
		t.Add("finished, along and across", b.Long(net.Width())+" × "+b.Long(net.Height()))
	}
	for _, m := range q.Margins {
		t.Add(b.marginWords(m), b.Long(m.Wide))
	}
	if n := notchList(q); n != "" {
		t.Add("notches", n)
	}
	t.Add("grain", b.grain(q))
	return t
}

// grain says how a piece lies on the roll.
func (b build) grain(q piece.Piece) string {
	switch {
	case q.FreeGrain:
		return "any way"
	case q.OneWay:
		return "warp along the arrow, all pieces the same way"
	}
	return "warp along the arrow, either end first"
}

// notchList lists the names of a piece's notches, each once.
func notchList(q piece.Piece) string {
	var names []string
	for _, l := range q.Lines {
		if l.Role == piece.NotchStroke && !slices.Contains(names, l.Of) {
			names = append(names, l.Of)
		}
	}
	return strings.Join(names, ", ")
}

// squareTable tables the distances that prove a piece true on the cloth.
func (b build) squareTable(q piece.Piece) sheet.Table {
	t := sheet.Table{ID: "piece-" + picture.SafeID(q.ID) + "-checks", Caption: given.Capital(q.Title) + ": measure these on the marked finished line before cutting",
		Head: []string{"from and to", b.Unit()}, Words: []bool{true, false}}
	for _, c := range q.Checks {
		t.Add(b.Names.Measure(c), b.Figure(c.Length))
	}
	return t
}

// templateTable lists the stiff templates.
func (b build) templateTable() sheet.Table {
	t := sheet.Table{ID: "templates", Caption: "Stiff templates and gauges, from " + b.Design.Sheet.Name,
		Head: []string{"template", "number", "along, " + b.Unit(), "across, " + b.Unit()}, Words: []bool{true, false, false, false}}
	for _, q := range b.Templates {
		box := q.Cut.Bounds()
		t.Add(titled(q.Title), fmt.Sprint(q.Count), b.Figure(box.Width()), b.Figure(box.Height()))
	}
	return t
}

// titled returns a title that is lettered in capitals as it is read.
func titled(title string) string {
	if title == strings.ToUpper(title) {
		return given.Capital(strings.ToLower(title))
	}
	return title
}
