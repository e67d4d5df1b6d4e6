package chapter

import (
	"fmt"
	"math"

	"slingloft/export/sheet"
	"slingloft/export/sheet/chart"
	"slingloft/export/sheet/series"
)

// charts draws the curves behind the figures.
func (b build) charts() (sheet.Section, error) {
	say := b.Say.Charts
	s := sheet.Section{ID: "charts", Title: say.Title}
	var figs sheet.Figures
	for _, c := range series.All(b.Data) {
		p, err := chart.Draw(c.Chart)
		if err != nil {
			return s, err
		}
		figs = append(figs, sheet.Figure{Picture: p, Caption: c.Caption})
	}
	s.Add(sheet.Para(say.How), figs)
	if len(b.Body.Departures) > 0 {
		s.Add(b.departureTable())
	}
	return s, nil
}

// departureTable tells what a straight cut gives up at each station of the tails.
func (b build) departureTable() sheet.Table {
	say := b.Say.Charts
	t := sheet.Table{ID: "departures", Dense: true, Caption: fmt.Sprintf(say.Departures, b.UnitWord()), Head: say.Columns[:],
		Words: []bool{false, false, false, false}}
	for _, q := range b.Body.Departures {
		if math.Abs(q.X) >= b.Design.Bed.Span/2 {
			t.Add(b.SignedFigure(q.X), b.Figure(q.True), b.Figure(q.Cut), b.SignedFigure(q.Cut-q.True))
		}
	}
	return t
}
