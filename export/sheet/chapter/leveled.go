package chapter

import (
	"fmt"

	"slingloft/export/sheet"
	"slingloft/export/sheet/chart"
	"slingloft/export/sheet/picture"
	"slingloft/export/sheet/scene"
	"slingloft/outline/hung"
	"slingloft/outline/level"
)

// leveled shows what was changed of the cut so that the cloth hangs level, where that was
// asked for.
func (b build) leveled() (sheet.Section, error) {
	say, l := b.Say.Leveled, b.Leveled
	if l == nil {
		return sheet.Section{}, nil
	}
	s := sheet.Section{ID: "cut-again", Title: say.Title}
	s.Add(sheet.Figures{{Picture: scene.CutAgain(b.Data), Caption: say.Outline.Caption}})
	moved, err := chart.Draw(b.movedChart())
	if err != nil {
		return s, err
	}
	lying, err := chart.Draw(b.lyingChart())
	if err != nil {
		return s, err
	}
	s.Add(sheet.Figures{{Picture: moved, Caption: say.Moved.Caption}, {Picture: lying, Caption: say.Lying.Caption}},
		b.leveledTable(), sheet.Para(say.How))
	return s, nil
}

// movedChart is how far the sides move.
func (b build) movedChart() chart.Chart {
	say, l, unit := b.Say.Leveled, b.Leveled, b.Style.Number(1)
	line := chart.Line{Ink: picture.First}
	for _, q := range l.Side {
		line.X, line.Y = append(line.X, q.X*unit), append(line.Y, l.At(q.X)*unit)
	}
	in, out := l.Most()
	half := b.Design.Bed.Span / 2 * unit
	return chart.Chart{ID: "chart-moved", Title: say.Moved.Title, Desc: fmt.Sprintf(say.Moved.Desc, b.SignedRound(in), b.SignedRound(out)),
		X: fmt.Sprintf(say.Place, b.Unit()), Y: fmt.Sprintf(say.Out, b.Unit()), Lines: []chart.Line{line}, At: []float64{-half, half}}
}

// lyingChart is how what lies there lies before and after.
func (b build) lyingChart() chart.Chart {
	say, l, unit := b.Say.Leveled, b.Leveled, b.Style.Number(1)
	curve := func(of level.Lies, name string, ink picture.Ink, dashed bool) chart.Line {
		out := chart.Line{Name: name, Ink: ink, Dashed: dashed}
		for _, q := range of.Body {
			out.X, out.Y = append(out.X, q.X*unit), append(out.Y, (q.Y-l.Bottom(q.X))*unit)
		}
		return out
	}
	half := b.Design.Bed.Span / 2 * unit
	return chart.Chart{ID: "chart-lying", Title: say.Lying.Title,
		Desc: fmt.Sprintf(say.Lying.Desc, b.Round(l.Before.Under), b.Round(l.After.Under)),
		X:    fmt.Sprintf(say.Station, b.Unit()), Y: fmt.Sprintf(say.Above, b.Unit()), At: []float64{-half, half},
		Lines: []chart.Line{curve(l.After, say.After, picture.First, false), curve(l.Before, say.Before, picture.Third, true)}}
}

// leveledTable tells how level it lies before and after.
func (b build) leveledTable() sheet.Table {
	say, l := b.Say.Leveled, b.Leveled
	t := sheet.Table{ID: "cut-again-level", Caption: say.Caption, Head: []string{"", say.Before, say.After}, Words: []bool{true, false, false}}
	add := func(name string, was, now float64) { t.Add(name, b.Round(was), b.Round(now)) }
	add(say.Under, l.Before.Under, l.After.Under)
	add(say.Whole, l.Before.Whole, l.After.Whole)
	add(say.Rim, l.Before.Rim, l.After.Rim)
	for _, e := range hung.Ends() {
		add(fmt.Sprintf(say.Gathers, b.Say.Names.Ends[e]), l.Before.Gather[e], l.After.Gather[e])
	}
	for _, e := range hung.Ends() {
		t.Add(fmt.Sprintf(say.EndSeam, b.Say.Names.Ends[e]), "", b.SignedRound(l.EndSeams[e]))
	}
	t.Add(say.Shear, b.Style.Angle(l.Before.Shear), b.Style.Angle(l.After.Shear))
	return t
}
