package paper

import (
	"slingloft/export/sheet"
	"slingloft/export/sheet/picture"
)

// item is something with a size that can be put anywhere on a page.
type item struct {
	w, h float64
	draw func(x, y float64) // from its upper left corner
}

// place puts items beside each other, in rows, and begins a new page where a row
// does not fit.
func (p *writer) place(items []item) {
	for i := 0; i < len(items); {
		n, wide, high := i, 0.0, 0.0
		for n < len(items) && (n == i || wide+gap+items[n].w <= content+0.01) {
			if n > i {
				wide += gap
			}
			wide += items[n].w
			high = max(high, items[n].h)
			n++
		}
		p.room(high)
		x := p.left
		for _, it := range items[i:n] {
			it.draw(x, p.y)
			x += it.w + gap
		}
		p.y += high + below
		i = n
	}
}

// items turns blocks into runs of items; those of one run may stand beside each
// other. A picture begins a run: the tables after it belong to it.
func (p *writer) items(blocks []sheet.Block) [][]item {
	var out [][]item
	free := false // the last run may go on
	for _, block := range blocks {
		its, small := p.itemsOf(block)
		_, picture := block.(sheet.Figures)
		if small && free && !picture {
			out[len(out)-1] = append(out[len(out)-1], its...)
			continue
		}
		if len(its) > 0 {
			out = append(out, its)
		}
		free = small && len(its) > 0
	}
	return out
}

// itemsOf returns a block's items and whether others may stand beside them.
func (p *writer) itemsOf(block sheet.Block) (its []item, small bool) {
	switch t := block.(type) {
	case sheet.Para:
		return []item{p.lines(body, wrap(body, string(t), content*0.8))}, false
	case sheet.List:
		return p.list(t, content*0.9), false
	case sheet.Notice:
		return p.notice(t), false
	case sheet.Steps:
		for _, s := range t {
			its = append(its, p.step(s)...)
		}
		return its, false
	case sheet.Ticks:
		return p.ticks(t), false
	case sheet.Terms:
		return p.terms(t), false
	case sheet.Table:
		return p.table(t), true
	case sheet.Figures:
		for i := range t {
			its = append(its, p.figure(&t[i]))
		}
		return its, true
	}
	return nil, false
}

// body is how running text is set, head how a heading is.
var (
	body = font{size: 9}
	head = font{size: 9, bold: true}
)

// lines sets lines of text.
func (p *writer) lines(f font, text []string) item {
	return item{content, f.lead() * float64(len(text)), func(x, y float64) {
		for i, l := range text {
			p.write(f, x, y+f.lead()*float64(i)+f.mm(), l)
		}
	}}
}

// list sets points below each other.
func (p *writer) list(points []string, room float64) []item {
	var out []item
	for _, text := range points {
		l := wrap(body, text, room-4)
		it := p.lines(body, l)
		out = append(out, item{content, it.h, func(x, y float64) {
			p.write(body, x+0.8, y+body.mm(), "·")
			it.draw(x+4, y)
		}})
	}
	// Points stand closer than rows of other things do.
	for i := range out {
		if i < len(out)-1 {
			out[i].h -= below - 1
		}
	}
	return out
}

// shade is a grade's colour.
func shade(g sheet.Grade) picture.Ink {
	return [...]picture.Ink{picture.Third, picture.Inside, picture.Cut}[g]
}

// notice sets a remark with a bar at its left, a line of it an item; its title stays with
// the first one.
func (p *writer) notice(n sheet.Notice) []item {
	const inset = 4.0
	f := head
	f.ink = shade(n.Grade)
	title := item{content, head.lead() + 1, func(x, y float64) { p.write(f, x+inset, y+1+f.mm(), n.Title) }}
	all := []item{title}
	for i, l := range n.Lines {
		text := p.lines(body, wrap(body, l, content-inset-5))
		line := item{content, text.h, func(x, y float64) {
			if len(n.Lines) > 1 {
				p.write(body, x+inset, y+body.mm(), "·")
			}
			text.draw(x+inset+3, y)
		}}
		if i == 0 {
			all[0] = stack(content, title, line)
			continue
		}
		all = append(all, line)
	}
	for i, it := range all {
		all[i].draw = func(x, y float64) {
			c := shade(n.Grade).OnPaper()
			p.pdf.SetFillColor(int(c[0]), int(c[1]), int(c[2]))
			p.pdf.Rect(x, y, 1, it.h, "F")
			it.draw(x, y)
		}
		if i < len(all)-1 {
			all[i].h -= below // one bar at all of them
		}
	}
	return all
}

// rule draws a thin level line.
func (p *writer) rule(x, y, long float64) {
	c := picture.Ghost.OnPaper()
	p.pdf.SetDrawColor(int(c[0]), int(c[1]), int(c[2]))
	p.pdf.SetLineWidth(0.15)
	p.pdf.Line(x, y, x+long, y)
}
