package chapter

import (
	"fmt"
	"math"

	"slingloft/export/sheet"
	"slingloft/export/sheet/chart"
	"slingloft/export/sheet/picture"
	"slingloft/export/sheet/scene"
	"slingloft/outline/hung"
)

// cloth shows the cut as it hangs as cloth, where that was asked for.
func (b build) cloth() (sheet.Section, error) {
	say, h := b.Say.Cloth, b.Draped
	if h == nil {
		return sheet.Section{}, nil
	}
	s := sheet.Section{ID: "as-cloth", Title: say.Title}
	if !h.Settled {
		s.Add(sheet.Notice{Grade: sheet.Careful, Title: say.Moves, Lines: []string{say.Guide}})
	}
	s.Add(sheet.Figures{{Picture: scene.Drawn(b.Data), Caption: say.Drawn.Caption}})
	line := chart.Line{Ink: picture.First}
	unit := b.Style.Number(1)
	for i, q := range h.Hung.Bottom {
		if x := h.Along[i]; math.Abs(x) <= math.Max(-h.Crown, h.Soles) {
			line.X, line.Y = append(line.X, q.X*unit), append(line.Y, h.Off(x)*unit)
		}
	}
	low, high := h.Level()
	half := b.Design.Bed.Span / 2
	p, err := chart.Draw(chart.Chart{
		ID: "chart-bottom", Title: say.Bottom.Title,
		Desc: fmt.Sprintf(say.Bottom.Desc, b.SignedRound(low), b.SignedRound(high)),
		X:    fmt.Sprintf(say.Station, b.Unit()), Y: fmt.Sprintf(say.Higher, b.Unit()),
		Lines: []chart.Line{line}, At: []float64{-half * unit, half * unit},
	})
	if err != nil {
		return s, err
	}
	s.Add(sheet.Figures{{Picture: p, Caption: say.Bottom.Caption}}, b.asClothTable(low, high), sheet.Para(b.asClothWords()))
	return s, nil
}

// asClothWords says how the cloth is hung, and what that has to do with the other figures.
func (b build) asClothWords() string {
	say := b.Say.Cloth
	if b.Leveled != nil {
		return say.How + " " + say.CutAgain
	}
	return say.How + " " + say.Elsewhere
}

// asClothTable tells how level it lies and what it pulls.
func (b build) asClothTable(low, high float64) sheet.Table {
	say, h := b.Say.Cloth, b.Draped
	t := sheet.Table{ID: "cloth-hangs", Caption: say.Caption, Head: []string{"", ""}, Words: []bool{true, false}}
	_, mid := b.Shape.Problem.Load.Total()
	t.Add(say.Crown, b.SignedRound(h.Off(h.Crown)))
	t.Add(say.Seat, b.SignedRound(h.Off(mid)))
	t.Add(say.Soles, b.SignedRound(h.Off(h.Soles)))
	t.Add(say.Level, b.Round(high-low))
	names := b.Say.Names.Ends
	for _, e := range hung.Ends() {
		t.Add(fmt.Sprintf(say.Line, names[e]), b.Force(h.Line[e]))
		t.Add(fmt.Sprintf(say.Bar, names[e]), b.Force(h.Bar[e]))
	}
	t.Add(say.Shear, b.Style.Angle(h.MostShear()))
	t.Add(say.Slack, b.Data.Slack())
	return t
}
