package figures

import (
	"cmp"
	"fmt"
	"slices"

	"slingloft/cmd/slingloft/work"
	"slingloft/export/sheet"
	"slingloft/export/sheet/chart"
	"slingloft/export/sheet/picture"
	"slingloft/outline/design"
	"slingloft/outline/quantity"
)

// Sheet sets the variants out as a page: a curve of each trait over the first key, one
// line for each value of the second, and the table. The frame is that of the build sheet.
func (d Varied) Sheet(p *work.Plan, frame sheet.Frame, say Words) (sheet.Sheet, error) {
	s := p.Style()
	out := sheet.Sheet{Title: fmt.Sprintf(say.Vary.Title, d.Name), Digest: p.Digest, Frame: frame,
		Verdict: sheet.Verdict{Grade: sheet.Careful, Title: say.Vary.Compare, Text: say.Vary.How}}
	var cannot sheet.List
	for _, v := range d.Variants {
		if v.Buys == nil {
			cannot = append(cannot, fmt.Sprintf(say.Vary.Cannot, v.named(d.Keys), v.Cannot))
		}
	}
	figs, err := d.charts(s, say)
	if err != nil {
		return out, err
	}
	sec := sheet.Section{ID: "vary", Part: sheet.Appendix, Title: say.Vary.Charts}
	if len(figs) > 0 {
		sec.Add(figs)
	}
	half := len(d.Keys) + int(LineTrait)
	sec.Add(d.table(say.Vary.Lies, len(d.Keys), half, s, say), d.table(say.Vary.Carries, half, half+len(say.Vary.Columns), s, say))
	if len(cannot) > 0 {
		sec.Add(cannot)
	}
	sec.Add(sheet.Para(say.Vary.Careful))
	out.Sections = []sheet.Section{sec}
	return out, nil
}

// table sets some of the columns beside the keys.
func (d Varied) table(caption string, from, to int, s quantity.Style, say Words) sheet.Table {
	names, units := d.heads(s, say)
	keys := len(d.Keys)
	some := func(row []string) []string { return append(slices.Clone(row[:keys]), row[from:min(to, len(row))]...) }
	t := sheet.Table{ID: fmt.Sprintf("variants-%d", from), Caption: caption}
	for i := range names {
		if units[i] != "" {
			names[i] += ", " + units[i]
		}
	}
	t.Head = some(names)
	for i := range t.Head {
		t.Words = append(t.Words, i == len(t.Head)-1 && to > len(names)-1)
	}
	for _, v := range d.Variants {
		if v.Buys != nil {
			t.AddStrong(v.Now, some(d.cells(v, s, say))...)
		}
	}
	return t
}

// charts draws each trait over the first key, but those in which no two variants differ by
// what can be read; none where fewer than two of its values can be made.
func (d Varied) charts(s quantity.Style, say Words) (sheet.Figures, error) {
	var figs sheet.Figures
	for m := range TraitCount {
		lines := d.lines(m, s)
		if len(lines) == 0 || !d.differ(m, s) {
			continue
		}
		low, high := lines[0].Y[0], lines[0].Y[0]
		for _, l := range lines {
			low, high = min(low, slices.Min(l.Y)), max(high, slices.Max(l.Y))
		}
		name, axis := say.Vary.Columns[m], d.axis(s)
		if u := m.kind().unit(s); u != "" {
			name += ", " + u
		}
		c := chart.Chart{ID: fmt.Sprintf("vary-%d", m), Title: fmt.Sprintf(say.Vary.Chart, say.Vary.Columns[m], d.Keys[0]),
			Desc: fmt.Sprintf(say.Vary.Desc, name, axis, quantity.Decimal(low, 2), quantity.Decimal(high, 2)), X: axis, Y: name, Lines: lines}
		p, err := chart.Draw(c)
		if err != nil {
			return nil, err
		}
		figs = append(figs, sheet.Figure{Picture: p, Caption: c.Title})
	}
	return figs, nil
}

// differ reports whether any two variants differ in a trait as people read it.
func (d Varied) differ(m Trait, s quantity.Style) bool {
	first := ""
	for _, v := range d.Variants {
		if v.Buys == nil {
			continue
		}
		text := m.kind().text(m.of(v.Buys), s)
		if first == "" {
			first = text
		}
		if text != first {
			return true
		}
	}
	return false
}

// lines returns a trait's curves, one for each value of the second key.
func (d Varied) lines(m Trait, s quantity.Style) []chart.Line {
	inks := []picture.Ink{picture.First, picture.Second, picture.Third, picture.Main, picture.Quiet}
	var out []chart.Line
	var of []string // values of the second key
	for i, v := range d.Variants {
		second := v.Values[len(v.Values)-1]
		if len(d.Keys) == 1 {
			second = ""
		}
		n := slices.Index(of, second)
		if n < 0 {
			n, of = len(of), append(of, second)
			out = append(out, chart.Line{Name: second, Ink: inks[n%len(inks)], Dashed: n/len(inks)%2 == 1})
		}
		if v.Buys == nil || m == MarginTrait && v.Buys.Required == 0 {
			continue
		}
		out[n].X = append(out[n].X, d.place(i, s))
		out[n].Y = append(out[n].Y, m.kind().number(m.of(v.Buys), s))
	}
	for i, l := range out {
		out[i].X, out[i].Y = rising(l.X, l.Y)
	}
	return slices.DeleteFunc(out, func(l chart.Line) bool { return len(l.X) < 2 })
}

// rising returns points in the order of their places.
func rising(x, y []float64) (xs, ys []float64) {
	order := make([]int, len(x))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(x[a], x[b]) })
	for _, i := range order {
		xs, ys = append(xs, x[i]), append(ys, y[i])
	}
	return xs, ys
}

// place returns where a variant stands along the axis of the first key: at its value, or
// at its number where that is none.
func (d Varied) place(i int, s quantity.Style) float64 {
	v, unit, ok := number(d.Keys[0], d.Variants[i].Values[0], s)
	if !ok || unit != unitOf(d, s) {
		at := 1
		for k := 1; k <= i; k++ {
			if d.Variants[k].Values[0] != d.Variants[k-1].Values[0] {
				at++
			}
		}
		return float64(at)
	}
	return v
}

// axis names the axis of the first key.
func (d Varied) axis(s quantity.Style) string {
	if u := unitOf(d, s); u != "" {
		return d.Keys[0] + ", " + u
	}
	return d.Keys[0]
}

// unitOf returns the unit of the first key's values.
func unitOf(d Varied, s quantity.Style) string {
	_, unit, _ := number(d.Keys[0], d.Variants[0].Values[0], s)
	return unit
}

// number returns the value of a key as a number with its unit, that of the style for a
// length.
func number(key, text string, s quantity.Style) (v float64, unit string, ok bool) {
	q, err := design.Measure(design.Key(key).Unnumbered(), text, s.Inches)
	if err != nil || q.Unit.Factor == 0 {
		return 0, "", false
	}
	return q.Value / q.Unit.Factor, q.Unit.Symbol, true
}
