package paper

import (
	"fmt"
	"strings"

	"slingloft/export/sheet"
	"slingloft/export/sheet/picture"
)

// stack sets items below each other as one, which stays whole on its page.
func stack(w float64, items ...item) item {
	h := 0.0
	for _, it := range items {
		h += it.h
	}
	return item{w, h, func(x, y float64) {
		for _, it := range items {
			it.draw(x, y)
			y += it.h
		}
	}}
}

// Measures of steps, mm.
const (
	indent  = 8.0 // of what stands under the number
	boxSize = 3.2 // of a box to tick
	leaf    = 1.0 // between the parts of a step
)

// ticks sets things to tick off in two columns, some at a time, so that a page may end
// between: the second column goes on from the first.
func (p *writer) ticks(ticks sheet.Ticks) []item {
	const wide, some = (content - gap) / 2, 6
	var out []item
	for from := 0; from < len(ticks); from += some {
		var all []item
		for _, t := range ticks[from:min(from+some, len(ticks))] {
			all = append(all, p.tick(t, wide))
		}
		half := (len(all) + 1) / 2
		left, right := stack(wide, all[:half]...), stack(wide, all[half:]...)
		out = append(out, item{content, max(left.h, right.h) - below + 1, func(x, y float64) {
			left.draw(x, y)
			right.draw(x+wide+gap, y)
		}})
	}
	return out
}

// tick sets one thing to tick off behind its box.
func (p *writer) tick(t sheet.Tick, wide float64) item {
	const inset = indent - 2
	quiet := cells
	quiet.ink = picture.Quiet
	name, note := wrap(head, fmt.Sprintf("%d %s", t.No, t.Text), wide-inset), wrap(quiet, t.Note, wide-inset)
	text := stack(wide-inset, p.lines(head, name), p.lines(quiet, note))
	return item{wide, text.h + 1, func(x, y float64) {
		p.square(x, y+0.4)
		text.draw(x+inset, y)
	}}
}

// square draws a box to tick.
func (p *writer) square(x, y float64) {
	c := picture.Main.OnPaper()
	p.pdf.SetDrawColor(int(c[0]), int(c[1]), int(c[2]))
	p.pdf.SetLineWidth(0.25)
	p.pdf.Rect(x, y, boxSize, boxSize, "D")
}

// terms sets words and what they mean in two columns.
func (p *writer) terms(terms sheet.Terms) []item {
	wide := (content - gap) / 2
	var out []item
	for _, t := range terms {
		meaning := wrap(body, t.Meaning, wide)
		out = append(out, item{wide, head.lead() + body.lead()*float64(len(meaning)) - 2, func(x, y float64) {
			p.write(head, x, y+head.mm(), t.Word)
			p.lines(body, meaning).draw(x, y+head.lead())
		}})
	}
	return out
}

// step sets a step of work: a narrow picture beside it, others in pairs and wider ones
// under it. A new page may begin before what stands under it.
func (p *writer) step(s sheet.Step) []item {
	var narrow, under []item
	wide := content - indent
	for i := range s.Figures {
		f := p.figure(&s.Figures[i])
		if s.Figures[i].Wide() {
			under = append(under, f)
			continue
		}
		narrow = append(narrow, f)
	}
	var side item
	if len(narrow) > 0 {
		wide -= picture.Half + gap
		side = narrow[0]
		under = append(pairs(narrow[1:]), under...)
	}
	text := p.stepText(s, wide)
	upper := item{content, max(text.h, side.h), func(x, y float64) {
		text.draw(x+indent, y)
		if side.draw != nil {
			side.draw(x+content-picture.Half, y)
		}
		if s.No > 0 {
			p.write(font{size: 13, ink: picture.Quiet}, x, y+head.mm()+0.6, fmt.Sprint(s.No))
		}
	}}
	return append([]item{upper}, under...)
}

// pairs sets narrow pictures two in a row.
func pairs(narrow []item) []item {
	var out []item
	for len(narrow) > 0 {
		two := narrow[:min(2, len(narrow))]
		narrow = narrow[len(two):]
		high := 0.0
		for _, it := range two {
			high = max(high, it.h)
		}
		out = append(out, item{content, high, func(x, y float64) {
			for i, it := range two {
				it.draw(x+float64(i)*(content-picture.Half), y)
			}
		}})
	}
	return out
}

// stepText sets what is said in a step, in a column.
func (p *writer) stepText(s sheet.Step, wide float64) item {
	quiet := body
	quiet.ink = picture.Quiet
	rows := []item{p.lines(head, wrap(head, s.Title, wide))}
	if len(s.Needs) > 0 {
		rows = append(rows, p.lines(quiet, wrap(quiet, p.sheet.Frame.Needs+" "+strings.Join(s.Needs, ", "), wide)))
	}
	for _, do := range s.Do {
		l := p.lines(body, wrap(body, do, wide-3))
		rows = append(rows, item{wide, l.h + 0.3, func(x, y float64) {
			p.write(body, x, y+body.mm(), "·")
			l.draw(x+3, y)
		}})
	}
	if len(s.Facts) > 0 {
		rows = append(rows, item{h: leaf, draw: func(_, _ float64) {}}, p.facts(s.Facts, wide))
	}
	if s.Done != "" {
		label := p.sheet.Frame.Done + " "
		lines := wrap(body, label+s.Done, wide)
		rows = append(rows, item{h: leaf, draw: func(_, _ float64) {}}, p.lines(body, lines))
	}
	return stack(wide, rows...)
}

// longValue is the part of a column that a value may take before it goes on in a new line.
const longValue = 0.6

// facts sets named figures, in two columns where there is room.
func (p *writer) facts(facts []sheet.Fact, wide float64) item {
	columns := 1
	if wide > 120 {
		columns = 2
	}
	column := (wide - gap*float64(columns-1)) / float64(columns)
	names, values := make([][]string, len(facts)), make([][]string, len(facts))
	var high []float64 // of each row
	for i, f := range facts {
		values[i] = wrap(body, f.Value, column*longValue)
		wide := 0.0
		for _, l := range values[i] {
			wide = max(wide, width(body, l))
		}
		names[i] = wrap(body, f.Name, column-wide-3)
		if i%columns == 0 {
			high = append(high, 0)
		}
		high[i/columns] = max(high[i/columns], body.lead()*float64(max(len(names[i]), len(values[i])))+0.8)
	}
	h := 0.0
	for _, v := range high {
		h += v
	}
	return item{wide, h, func(x, y float64) {
		quiet := body
		quiet.ink = picture.Quiet
		for i := range facts {
			fx := x + float64(i%columns)*(column+gap)
			p.lines(quiet, names[i]).draw(fx, y)
			for k, l := range values[i] {
				p.write(body, fx+column-width(body, l), y+body.lead()*float64(k)+body.mm(), l)
			}
			p.rule(fx, y+high[i/columns]-0.3, column)
			if i%columns == columns-1 {
				y += high[i/columns]
			}
		}
	}}
}
