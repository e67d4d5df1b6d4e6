package chapter

import (
	"math"
	"slingloft/export/sheet"
	"slingloft/export/sheet/chart"
	"slingloft/export/sheet/series"
)

// charts draws the curves behind the figures.
func (b build) charts() (sheet.Section, error) {
	s := sheet.Section{ID: "charts", Title: "Charts"}
	var figs sheet.Figures
	for _, c := range series.All(b.Data) {
		p, err := chart.Draw(c.Chart)
		if err != nil {
			return s, err
		}
		figs = append(figs, sheet.Figure{Picture: p, Caption: c.Caption})
	}
	s.Blocks = append(s.Blocks, sheet.Para("Stations run along the bed from mid-bay, the head end negative; "+
		"upright lines stand at the bars."), figs)
	if len(b.Body.Departures) > 0 {
		s.Blocks = append(s.Blocks, b.departureTable())
	}
	return s, nil
}

// departureTable tells what a straight cut gives up at each station of the tails.
func (b build) departureTable() sheet.Table {
	t := sheet.Table{ID: "departures", Dense: true, Caption: "Girth of the straight tails, in " + b.UnitWord() + ": what " +
		"would hang level, and what the cut has",
		Head: []string{"station", "level", "cut", "departs"}, Words: []bool{false, false, false, false}}
	for _, q := range b.Body.Departures {
		if math.Abs(q.X) >= b.Design.Bed.Span/2 {
			t.Add(b.SignedFigure(q.X), b.Figure(q.True), b.Figure(q.Cut), b.SignedFigure(q.Cut-q.True))
		}
	}
	return t
}
