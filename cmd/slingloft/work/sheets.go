package work

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"math"

	"slingloft/export"
	"slingloft/nest"
	"slingloft/outline/geom"
	"slingloft/outline/label"
	"slingloft/outline/piece"
)

// Drawings composes every sheet of a laid plan for a drawing scale: the cloth's
// lay first, then the template sheets.
func (p *Plan) Drawings(l Lays, scale float64) ([]export.Drawing, error) {
	var out []export.Drawing
	for roll, lay := range l.Rolls {
		cloth, err := p.clothSheet(roll, lay, scale)
		if err != nil {
			return nil, err
		}
		out = append(out, cloth)
	}
	for n := range l.Boards.Beds {
		if len(l.Boards.Placements) == 0 {
			break
		}
		d, err := p.boardSheet(l.Boards, n, scale)
		if err != nil {
			return nil, err
		}
		out = append(out, d)
	}
	return out, nil
}

// clothSheet composes the lay on a roll, flaws and all.
func (p *Plan) clothSheet(roll int, l nest.Lay, scale float64) (export.Drawing, error) {
	c, pieces := p.Rolls()[roll], p.OnRoll(roll)
	s := export.Sheet{
		Name: "cloth-lay", Stock: piece.Cloth, Roll: roll, Title: p.Words.Sheets.Cloth,
		Frame: export.Around(l.Length, c.Width, scale),
		Items: Placed(pieces, l, 0), Edge: true,
		Block: p.block(c.Name, roll+1, len(p.Rolls()), layMark(pieces, l, l.Length, c.Width)), Words: &p.Words.Sheets,
	}
	if roll == 0 {
		s.Lines = p.keepOutLines(piece.Cloth, geom.Point{}, geom.Box{Max: geom.Pt(l.Length, c.Width)})
	} else {
		s.Name = fmt.Sprintf("cloth-lay-roll-%d", roll+1)
	}
	s.Notes = p.rollNotes(s.Frame, c.Flaws, l.Length)
	for i, f := range c.Flaws {
		if f.Min.X < l.Length {
			f.Max.X = min(f.Max.X, l.Length)
			name := fmt.Sprintf("flaw %d", i+1)
			s.Lines = append(s.Lines,
				piece.Line{Name: name, Work: piece.Register, Points: geom.Polyline(f.Ring()), Closed: true},
				piece.Line{Name: name + " stroke", Work: piece.Register, Points: geom.Polyline{f.Min, f.Max}})
		}
	}
	return export.Compose(s)
}

// rollNotes letters the edges of a roll from outside, the end it is cut off at, from which
// lengths along it are counted, and both selvedges; and its flaws.
func (p *Plan) rollNotes(f export.Frame, flaws []geom.Box, long float64) []piece.Label {
	const (
		letter = 4.0   // mm on paper, as is what follows
		beside = 3.0   // from the edge
		busy   = 300.0 // at the lower left are check bars and the title block
	)
	say, u := p.Words.Sheets, 1/f.Scale
	wide, high := f.Lay.Width(), f.Lay.Height()
	out := []piece.Label{{Text: say.UpperSelvedge, At: geom.Pt(wide-10*u, high+beside*u), Height: letter * u, Anchor: piece.End}}
	if wide > busy*u+label.Width(say.LowerSelvedge, letter*u) {
		out = append(out, piece.Label{Text: say.LowerSelvedge, At: geom.Pt(wide-10*u, -(beside+letter)*u), Height: letter * u, Anchor: piece.End})
	}
	if high > busy/2*u+label.Width(say.CutEnd, letter*u) {
		out = append(
			out,
			piece.Label{Text: say.CutEnd, At: geom.Pt(-beside*u, high-10*u), Height: letter * u, Turn: math.Pi / 2, Anchor: piece.End},
		)
	}
	for _, b := range flaws {
		if l, ok := flawNote(say.Flaw, b); ok && b.Max.X <= long {
			out = append(out, l)
		}
	}
	return out
}

// flawNote letters a flaw at its upper left, over the stroke across it, and reports whether
// there is room.
func flawNote(text string, b geom.Box) (piece.Label, bool) {
	for _, h := range label.Sizes(6) {
		right, foot := 2*h+label.Width(text, h), b.Height()-2*h
		if right < b.Width() && foot-h*label.UnderLine > right*b.Height()/b.Width() {
			return piece.Label{Text: text, At: b.Min.Plus(geom.Pt(h, foot)), Height: h}, true
		}
	}
	return piece.Label{}, false
}

// boardSheet composes one sheet of templates within the machine's bed. Drawn small it
// is all of it smaller by the scale, so that the drawing is the bed's in every measure.
func (p *Plan) boardSheet(l nest.Lay, n int, scale float64) (export.Drawing, error) {
	b := p.Design.Sheet
	frame, err := export.Within(b.Width, b.Height)
	if err != nil {
		return export.Drawing{}, err
	}
	block := p.block(b.Name, n+1, l.Beds, layMark(p.boards(), l, b.Width, b.Height))
	block.Scale = scale
	return export.Compose(export.Sheet{
		Name: fmt.Sprintf("template-sheet-%d", n+1), Stock: piece.Board, Title: p.Words.Sheets.Boards, Words: &p.Words.Sheets,
		Frame: frame, Items: Placed(p.boards(), l, n), Block: block,
		Lines: p.keepOutLines(piece.Board, frame.Lay.Min, geom.Box{Max: frame.Lay.Max.Minus(frame.Lay.Min)}),
	})
}

// block returns the title block's fields; lay is the lay's own mark.
func (p *Plan) block(material string, sheet, sheets int, lay string) export.Block {
	return export.Block{Design: p.Design.Name, Sheet: sheet, Sheets: sheets, Material: material,
		Marks: fmt.Sprintf(p.Words.Sheets.Marks, p.Mark, lay)}
}

// layMark returns eight hex digits that change with the places of the pieces and with
// what they lie on, of a width and height in mm.
func layMark(pieces []piece.Piece, l nest.Lay, width, height float64) string {
	sum := sha256.New()
	fmt.Fprintf(sum, "%.3f %.3f\n", width, height)
	for _, s := range spots(pieces, l) {
		fmt.Fprintf(sum, "%s %d %d %t %.6f %.3f %.3f\n", s.Piece, s.Copy, s.Bed, s.Mirror, s.Turn, s.At[0], s.At[1])
	}
	return hex.EncodeToString(sum.Sum(nil)[:4])
}

// Placed returns the pieces that lie on one bed where the lay put them.
func Placed(pieces []piece.Piece, l nest.Lay, bed int) []export.Item {
	var out []export.Item
	for _, q := range l.Placements {
		if q.Bed == bed {
			out = append(out, export.Item{Piece: pieces[q.Item], Copy: q.Copy + 1, Motion: q.Motion})
		}
	}
	return out
}
