package series

import (
	"fmt"
	"math"

	"slingloft/export/sheet/chart"
	"slingloft/export/sheet/picture"
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

// swept are shapes of the same bed with its control a part more or less.
type swept struct {
	name   string    // of the control, with its unit
	x      []float64 // its values
	shapes []hung.Shape
	own    float64 // this design's value
}

// sweep solves the shape again with the control a part more or less.
func (b bed) sweep() swept {
	units := [4]string{b.Unit(), "°", "°", b.Style.ForceUnit()}
	scale := [4]func(float64) float64{b.axis, toDegrees, toDegrees, b.Style.Pull}
	c := b.Shape.Problem.Bed.Control
	out := swept{name: fmt.Sprintf(b.Say.Charts.Control, b.Say.Charts.Controls[c], units[c]),
		own: scale[c](float64(b.Shape.Problem.Bed.ControlValue))}
	for _, part := range []float64{0.8, 0.85, 0.9, 0.95, 1, 1.05, 1.1, 1.15, 1.2} {
		p := b.Shape.Problem
		p.Bed.ControlValue *= design.ControlMeasure(part)
		s, err := hung.Solve(p)
		if err != nil {
			continue
		}
		out.x, out.shapes = append(out.x, scale[c](float64(p.Bed.ControlValue))), append(out.shapes, s)
	}
	return out
}

func toDegrees(rad float64) float64 { return rad * 180 / math.Pi }

// angleChart shows how the hang angles follow the control.
func (b bed) angleChart(w swept) (Captioned, bool) {
	x, shapes, name := w.x, w.shapes, w.name
	if len(shapes) < 2 {
		return Captioned{}, false
	}
	var head, foot []float64
	for i := range shapes {
		head = append(head, toDegrees(math.Atan(shapes[i].Ends[hung.Head].Slope)))
		foot = append(foot, toDegrees(math.Atan(shapes[i].Ends[hung.Foot].Slope)))
	}
	headLow, headHigh := fromTo(head, 1)
	footLow, footHigh := fromTo(foot, 1)
	say, ends := b.Say.Charts, b.Say.Names.Ends
	return Captioned{chart.Chart{
		ID: "chart-angles", Title: fmt.Sprintf(say.Angles.Title, name),
		Desc: fmt.Sprintf(say.Angles.Desc, name, headLow, headHigh, footLow, footHigh),
		X:    name, Y: say.Angle, At: []float64{w.own},
		Lines: []chart.Line{{Name: ends[hung.Head], X: x, Y: head, Ink: picture.First},
			{Name: ends[hung.Foot], X: x, Y: foot, Ink: picture.Second, Dashed: true}},
	}, say.Angles.Caption}, true
}

// fromTo writes the first and the last of some figures.
func fromTo(y []float64, decimals int) (from, to string) {
	return quantity.Decimal(y[0], decimals), quantity.Decimal(y[len(y)-1], decimals)
}

// forceChart shows how forces follow the control.
func (b bed) forceChart(w swept) (Captioned, bool) {
	x, shapes, name := w.x, w.shapes, w.name
	if len(shapes) < 2 {
		return Captioned{}, false
	}
	var cord, bar []float64
	for i := range shapes {
		pull, _ := shapes[i].MaxTension()
		cord = append(cord, b.Style.Pull(pull))
		bar = append(bar, b.Style.Pull(max(shapes[i].Ends[hung.Head].BarCompression, shapes[i].Ends[hung.Foot].BarCompression)))
	}
	cordLow, cordHigh := fromTo(cord, 0)
	barLow, barHigh := fromTo(bar, 0)
	say := b.Say.Charts
	return Captioned{chart.Chart{
		ID: "chart-forces", Title: fmt.Sprintf(say.Forces.Title, name),
		Desc: fmt.Sprintf(say.Forces.Desc, name, cordLow, cordHigh, b.Style.ForceUnit(), barLow, barHigh),
		X:    name, Y: fmt.Sprintf(say.Forces.Y, b.Style.ForceUnit()), At: []float64{w.own}, FromZero: true,
		Lines: []chart.Line{{Name: say.Forces.Name, X: x, Y: cord, Ink: picture.First},
			{Name: say.Thrust, X: x, Y: bar, Ink: picture.Second, Dashed: true}},
	}, say.Forces.Caption}, true
}
