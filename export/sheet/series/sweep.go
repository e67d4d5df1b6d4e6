package series

import (
	"fmt"
	"math"
	"slingloft/export/sheet/chart"
	"slingloft/export/sheet/picture"
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
	names := [4]string{"side depth, " + b.Unit(), "head hang angle, °", "foot hang angle, °",
		"thrust of one side, " + b.Style.ForceUnit()}
	scale := [4]func(float64) float64{b.axis, toDegrees, toDegrees, b.Style.Pull}
	c := b.Shape.Problem.Bed.Control
	out := swept{name: names[c], own: scale[c](b.Shape.Problem.Bed.ControlValue)}
	for _, part := range []float64{0.8, 0.85, 0.9, 0.95, 1, 1.05, 1.1, 1.15, 1.2} {
		p := b.Shape.Problem
		p.Bed.ControlValue *= part
		s, err := hung.Solve(p)
		if err != nil {
			continue
		}
		out.x, out.shapes = append(out.x, scale[c](p.Bed.ControlValue)), append(out.shapes, s)
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
	return Captioned{chart.Chart{
		ID: "chart-angles", Title: "Hang angles against the " + name,
		Desc: fmt.Sprintf("Hang angles if the %s were up to a fifth less or more: head from %s° to %s°, foot from %s° to %s°.",
			name, quantity.Decimal(head[0], 1), quantity.Decimal(head[len(head)-1], 1), quantity.Decimal(foot[0], 1), quantity.Decimal(foot[len(foot)-1], 1)),
		X: name, Y: "hang angle, °", At: []float64{w.own},
		Lines: []chart.Line{{Name: "head", X: x, Y: head, Ink: picture.First}, {Name: "foot", X: x, Y: foot, Ink: picture.Second, Dashed: true}},
	}, "Sensitivity: the hang angles if the control of the shape were a fifth less or more. The upright line is this design."}, true
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
	return Captioned{chart.Chart{
		ID: "chart-forces", Title: "Forces against the " + name,
		Desc: fmt.Sprintf("Largest cord tension and larger bar thrust if the %s were up to a fifth less or more: cord "+
			"from %s to %s %s, bar from %s to %s.", name, quantity.Decimal(cord[0], 0), quantity.Decimal(cord[len(cord)-1], 0), b.Style.ForceUnit(),
			quantity.Decimal(bar[0], 0), quantity.Decimal(bar[len(bar)-1], 0)),
		X: name, Y: "force, " + b.Style.ForceUnit(), At: []float64{w.own}, FromZero: true,
		Lines: []chart.Line{{Name: "largest cord tension", X: x, Y: cord, Ink: picture.First},
			{Name: "bar thrust", X: x, Y: bar, Ink: picture.Second, Dashed: true}},
	}, "Sensitivity: forces if the control of the shape were a fifth less or more. The upright line is this design."}, true
}
