package work

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"

	"slingloft/export"
	"slingloft/nest"
	"slingloft/outline/geom"
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
