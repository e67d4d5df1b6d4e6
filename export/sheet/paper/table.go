package paper

import (
	"fmt"
	"math"

	"slingloft/export/sheet"
	"slingloft/export/sheet/picture"
)

// How tables are set, mm.
const (
	cellGap = 3.5   // between columns
	rowRoom = 0.9   // of a row beside its lines
	longest = 190.0 // of a table before it is divided
)

// cells is the font of figures, names that of column heads.
var (
	cells = font{size: 8}
	names = font{size: 7.5, ink: picture.Quiet}
)

// grid is a table with the widths of its columns and its text in lines.
type grid struct {
	sheet.Table
	wide    []float64
	head    [][]string
	rows    [][][]string
	caption []string
}

// table sets a table as one item, or several where it is long. Parts that stand beside
// each other are one item under one caption, so that no other table comes between
// them; those in the next row begin with the caption again.
func (p *writer) table(t sheet.Table) []item {
	g := newGrid(t)
	ends := g.divided()
	beside := max(1, int((content+gap)/(g.width()+gap)))
	var out []item
	from := 0
	for i := 0; i < len(ends); i += beside {
		n := min(beside, len(ends)-i)
		wide := float64(n)*g.width() + float64(n-1)*gap
		caption := t.Caption
		if i > 0 {
			caption = fmt.Sprintf(p.sheet.Frame.Continued, caption)
		}
		g.caption = wrap(head, caption, min(max(wide, 60), content))
		row := item{w: wide}
		for _, l := range g.caption {
			row.w = max(row.w, width(head, l))
		}
		var parts []item
		for k, to := range ends[i : i+n] {
			parts = append(parts, p.part(g, k == 0, from, to))
			row.h = max(row.h, parts[k].h)
			from = to
		}
		row.draw = func(x, y float64) {
			for k, q := range parts {
				q.draw(x+float64(k)*(g.width()+gap), y)
			}
		}
		out = append(out, row)
	}
	return out
}

// divided returns the numbers of the rows behind which the table is divided, the last
// one among them: into parts of about the same height, as few as will do.
func (g grid) divided() []int {
	tallest := longest
	if g.Dense {
		tallest = 90 // so that the parts stand beside each other
	}
	whole := 0.0
	for i := range g.rows {
		whole += g.rowHeight(i)
	}
	room := tallest - g.headHeight()
	parts := math.Ceil(whole / room)
	if g.Paired {
		parts = max(parts, 2)
	}
	var ends []int
	done := 0.0
	for from := 0; from < len(g.rows); {
		to, h := from, 0.0
		due := whole*float64(len(ends)+1)/parts + 1e-6 // behind this part; half a row over counts as in it
		for to < len(g.rows) && (to == from || done+h+g.rowHeight(to)/2 <= due && h+g.rowHeight(to) <= room) {
			h += g.rowHeight(to)
			to++
		}
		ends = append(ends, to)
		from, done = to, done+h
	}
	return ends
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
	g.drawIn()
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

// drawIn takes room from the widest columns of words, a little at a time, until
// the table fits, or half of the width of one that is set in two columns.
func (g *grid) drawIn() {
	const least, little = 24.0, 1.0
	room := content
	if g.Paired {
		room = (content - gap) / 2
	}
	for g.width() > room {
		widest := -1
		for i := range g.wide {
			if g.Words[i] && g.wide[i] > least && (widest < 0 || g.wide[i] > g.wide[widest]) {
				widest = i
			}
		}
		if widest < 0 {
			return
		}
		g.wide[widest] -= little
	}
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

// headHeight is the height of the columns' names, captionHeight that of the
// caption over them.
func (g grid) headHeight() float64 {
	lines := 1
	for _, h := range g.head {
		lines = max(lines, len(h))
	}
	return names.lead()*float64(lines) + 1.2
}

func (g grid) captionHeight() float64 { return head.lead()*float64(len(g.caption)) + 0.8 }

func (g grid) rowHeight(i int) float64 {
	lines := 1
	for _, c := range g.rows[i] {
		lines = max(lines, len(c))
	}
	return cells.lead()*float64(lines) + rowRoom
}

// part sets rows from one up to another under their heads, with the caption if it
// is the first part.
func (p *writer) part(g grid, first bool, from, to int) item {
	h := g.captionHeight() + g.headHeight()
	for r := from; r < to; r++ {
		h += g.rowHeight(r)
	}
	return item{g.width(), h, func(x, y float64) {
		if first {
			for i, l := range g.caption {
				p.write(head, x, y+head.lead()*float64(i)+head.mm(), l)
			}
		}
		base := y + g.captionHeight() + g.headHeight() - 1.2
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
