package paper

import (
	"slingloft/export/sheet"
	"slingloft/export/sheet/picture"
)

// How tables are set, mm.
const (
	cellGap = 3.5 // between columns
	rowRoom = 0.9 // of a row beside its lines
	longest = 190 // of a table before it is divided
)

// cells is the font of figures, names that of column heads.
var (
	cells = font{size: 8}
	names = font{size: 7.5, ink: picture.Quiet}
)

// grid is a table with the widths of its columns and its text in lines.
type grid struct {
	sheet.Table
	wide []float64
	head [][]string
	rows [][][]string
}

// table sets a table as one item, or several where it is long.
func (p *writer) table(t sheet.Table) []item {
	g := newGrid(t)
	most := longest
	if t.Dense {
		most = 90 // so that the parts stand beside each other
	}
	var out []item
	caption := t.Caption
	for from := 0; from < len(g.rows); {
		to, h := from, g.headHeight(caption)
		for to < len(g.rows) && (to == from || h+g.rowHeight(to) <= float64(most)) {
			h += g.rowHeight(to)
			to++
		}
		out = append(out, p.part(g, caption, from, to, h))
		from, caption = to, ""
		if t.Dense {
			caption = " " // keeps the heads of the parts on one line
		}
	}
	return out
}

// newGrid finds the widths of the columns: as wide as their longest text, words
// drawn in until the table fits.
func newGrid(t sheet.Table) grid {
	g := grid{Table: t, wide: make([]float64, len(t.Head))}
	for i, h := range t.Head {
		for _, l := range wrap(names, h, 16) {
			g.wide[i] = max(g.wide[i], width(names, l))
		}
	}
	for _, r := range t.Rows {
		for i, c := range r {
			if i < len(g.wide) {
				g.wide[i] = max(g.wide[i], width(bolder(cells), c))
			}
		}
	}
	for over := g.width() - content; over > 0.01; over = g.width() - content {
		widest := 0
		for i := range g.wide {
			if t.Words[i] && (!t.Words[widest] || g.wide[i] > g.wide[widest]) {
				widest = i
			}
		}
		if g.wide[widest] < 25 {
			break
		}
		g.wide[widest] -= min(over, g.wide[widest]-24)
	}
	for i, h := range t.Head {
		g.head = append(g.head, wrap(names, h, max(g.wide[i], 16)))
	}
	for _, r := range t.Rows {
		var row [][]string
		for i, c := range r {
			row = append(row, wrap(bolder(cells), c, g.wide[i]+0.01))
		}
		g.rows = append(g.rows, row)
	}
	return g
}

func bolder(f font) font {
	f.bold = true
	return f
}

func (g grid) width() float64 {
	w := cellGap * float64(len(g.wide)-1)
	for _, c := range g.wide {
		w += c
	}
	return w
}

// captionRoom is how wide a caption may be: as its table, but not too narrow.
func (g grid) captionRoom() float64 { return min(max(g.width(), 60), content) }

func (g grid) headHeight(caption string) float64 {
	most := 1
	for _, h := range g.head {
		most = max(most, len(h))
	}
	h := names.lead()*float64(most) + 1.2
	if caption != "" {
		h += head.lead()*float64(len(wrap(head, caption, g.captionRoom()))) + 0.8
	}
	return h
}

func (g grid) rowHeight(i int) float64 {
	most := 1
	for _, c := range g.rows[i] {
		most = max(most, len(c))
	}
	return cells.lead()*float64(most) + rowRoom
}

// part sets rows from one up to another under their heads.
func (p *writer) part(g grid, caption string, from, to int, h float64) item {
	w := g.width()
	if caption != "" && caption != " " {
		w = max(w, min(g.captionRoom(), width(head, caption)))
	}
	return item{w, h, func(x, y float64) {
		if caption != "" {
			for _, l := range wrap(head, caption, g.captionRoom()) {
				p.write(head, x, y+head.mm(), l)
				y += head.lead()
			}
			y += 0.8
		}
		base := y + g.headHeight("") - 1.2
		for i, lines := range g.head {
			for k, l := range lines {
				p.cell(g, i, names, x, base-names.lead()*float64(len(lines)-k)+names.mm(), l)
			}
		}
		y = base + 1.2
		p.rule(x, y-0.4, g.width())
		for r := from; r < to; r++ {
			f := cells
			f.bold = r < len(g.Strong) && g.Strong[r]
			for i, lines := range g.rows[r] {
				for k, l := range lines {
					p.cell(g, i, f, x, y+cells.lead()*float64(k)+cells.mm()+rowRoom/2, l)
				}
			}
			y += g.rowHeight(r)
			p.rule(x, y-0.1, g.width())
		}
	}}
}

// cell writes a line of a cell in column i of a table at x: words at the left of
// it, figures at the right.
func (p *writer) cell(g grid, i int, f font, x, y float64, text string) {
	for _, w := range g.wide[:i] {
		x += w + cellGap
	}
	if !g.Words[i] {
		x += g.wide[i] - width(f, text)
	}
	p.write(f, x, y, text)
}
