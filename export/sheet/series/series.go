// Package series works out the curves behind the figures, each for a chart with its
// caption.
package series

import (
	"fmt"

	"slingloft/export/sheet/chart"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

// Captioned is a chart with its caption.
type Captioned struct {
	chart.Chart
	Caption string
}

// All returns the charts of a bed, those that it has no curves for left out.
func All(d *given.Data) []Captioned {
	b, sw := bed{d}, bed{d}.sweep()
	var out []Captioned
	for _, f := range []func() (Captioned, bool){
		b.sideChart, b.girthChart, b.cordChart, b.clothChart, b.straightChart, b.levelChart,
		func() (Captioned, bool) { return b.angleChart(sw) },
		func() (Captioned, bool) { return b.forceChart(sw) },
	} {
		if c, ok := f(); ok {
			out = append(out, c)
		}
	}
	return out
}

// bed is the bed whose curves are drawn.
type bed struct{ *given.Data }

// axis returns a length as a plain number in the unit of the sheet.
func (b bed) axis(mm float64) float64 {
	if b.Style.Inches {
		return mm / quantity.Inch
	}
	return mm
}

// bars returns the places of the bars on an axis.
func (b bed) bars() []float64 {
	half := b.Design.Bed.Span / 2
	return []float64{b.axis(-half), b.axis(half)}
}

// along reads a value at every station of the bed.
func (b bed) along(of func(hung.Station) float64) (x, y []float64) {
	for _, s := range b.Shape.Stations(160) {
		q := b.Shape.At(s)
		if q.Section.Half == 0 {
			continue
		}
		x, y = append(x, b.axis(s)), append(y, of(q))
	}
	return x, y
}

func (b bed) stationAxis() string { return fmt.Sprintf(b.Say.Charts.Station, b.Unit()) }

// back returns mm for a number on an axis.
func (b bed) back(v float64) float64 {
	if b.Style.Inches {
		return v * quantity.Inch
	}
	return v
}

func (b bed) girthChart() (Captioned, bool) {
	x, y := b.along(func(q hung.Station) float64 { return b.axis(b.Body.Hangs(b.Shape, q.X)) })
	_, open := b.along(func(q hung.Station) float64 { return b.axis(2 * q.Y) })
	half := b.Shape.Problem.Bed.Span / 2
	say := b.Say.Charts
	return Captioned{chart.Chart{
		ID: "chart-girth", Title: say.Girth.Title,
		Desc: fmt.Sprintf(say.Girth.Desc, b.Long(b.Body.Hangs(b.Shape, -half)), b.Long(b.Body.Hangs(b.Shape, 0)),
			b.Long(b.Body.Hangs(b.Shape, half))),
		X: b.stationAxis(), Y: b.Unit(), At: b.bars(), FromZero: true,
		Lines: []chart.Line{{Name: say.GirthName, X: x, Y: y, Ink: picture.First},
			{Name: say.Opening, X: x, Y: open, Ink: picture.Third, Dashed: true}},
	}, say.Girth.Caption}, true
}

func (b bed) cordChart() (Captioned, bool) {
	x, y := b.along(func(q hung.Station) float64 { return b.Style.Pull(q.Tension) })
	peak, at := b.Shape.MaxTension()
	say := b.Say.Charts
	return Captioned{chart.Chart{
		ID: "chart-cord", Title: say.Cord.Title,
		Desc: fmt.Sprintf(say.Cord.Desc,
			b.Force(peak), b.Round(at), b.Force(b.Shape.At(b.Shape.DepthX).Tension)),
		X: b.stationAxis(), Y: fmt.Sprintf(say.Cord.Y, b.Style.ForceUnit()), At: b.bars(), FromZero: true,
		Lines: []chart.Line{{Name: say.Cord.Name, X: x, Y: y, Ink: picture.First}},
	}, say.Cord.Caption}, true
}

func (b bed) clothChart() (Captioned, bool) {
	unit := b.Style.PerLengthUnit()
	x, y := b.along(func(q hung.Station) float64 { return b.Style.PerLength(q.Cloth) })
	say := b.Say.Charts
	return Captioned{chart.Chart{
		ID: "chart-cloth", Title: say.Cloth.Title,
		Desc: fmt.Sprintf(say.Cloth.Desc, quantity.Decimal(extreme(y), 1), unit),
		X:    b.stationAxis(), Y: fmt.Sprintf(say.Cloth.Y, unit), At: b.bars(), FromZero: true,
		Lines: []chart.Line{{Name: say.Cloth.Name, X: x, Y: y, Ink: picture.First}},
	}, say.Cloth.Caption}, true
}
