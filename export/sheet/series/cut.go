package series

import (
	"fmt"
	"math"
	"slices"

	"slingloft/export/sheet/chart"
	"slingloft/export/sheet/picture"
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/hung"
)

// sideChart compares the side's curve with a parabola and an arc of its depth.
func (b bed) sideChart() (Captioned, bool) {
	x, depth, long := b.sideDepths()
	deep := slices.Max(depth)
	if !(deep > 0) {
		return Captioned{}, false
	}
	r := (long*long/4 + deep*deep) / (2 * deep)
	var xs, own, arc []float64
	for i := range x {
		parabola := 4 * deep * x[i] * (long - x[i]) / (long * long)
		xs = append(xs, b.axis(x[i]))
		own = append(own, b.axis(depth[i]-parabola))
		arc = append(arc, b.axis(math.Sqrt(r*r-(x[i]-long/2)*(x[i]-long/2))-(r-deep)-parabola))
	}
	say := b.Say.Charts.Side
	return Captioned{chart.Chart{
		ID: "chart-side", Title: say.Title,
		Desc: fmt.Sprintf(say.Desc, b.Long(deep), b.Long(b.back(extreme(own)))),
		X:    fmt.Sprintf(b.Say.Charts.SideChord, b.Unit()), Y: fmt.Sprintf(say.Y, b.Unit()),
		Lines: []chart.Line{{Name: say.Name, X: xs, Y: own, Ink: picture.First},
			{Name: b.Say.Charts.SideArc, X: xs, Y: arc, Ink: picture.Second, Dashed: true}},
	}, say.Caption}, true
}

// sideDepths returns the flat side edge of the bay, along its chord and off it, and how
// long the chord is.
func (b bed) sideDepths() (x, depth []float64, long float64) {
	side := b.Body.Side.Flat[b.Body.TipIndex(hung.Head) : b.Body.TipIndex(hung.Foot)+1]
	from, to := side[0], side[len(side)-1]
	dir := to.Minus(from).Unit()
	for _, p := range side {
		d := p.Minus(from)
		x, depth = append(x, d.Dot(dir)), append(depth, d.Cross(dir))
	}
	return x, depth, from.Dist(to)
}

// extreme returns the value of largest magnitude, as a magnitude.
func extreme(y []float64) float64 {
	m := 0.0
	for _, v := range y {
		m = max(m, math.Abs(v))
	}
	return m
}

// straightChart shows what straight tails would give up.
func (b bed) straightChart() (Captioned, bool) {
	s := *b.Shape
	s.Problem.Bed.Cut = design.Straight
	cut, err := flat.Lay(&s, false)
	if err != nil || len(cut.Departures) < 2 {
		return Captioned{}, false
	}
	var x, y []float64
	for _, d := range cut.Departures {
		x, y = append(x, b.axis(d.X)), append(y, b.axis(d.Cut-d.True))
	}
	say := b.Say.Charts.StraightTails
	return Captioned{chart.Chart{
		ID: "chart-straight", Title: say.Title,
		Desc: fmt.Sprintf(say.Desc, b.Long(b.back(extreme(y)))),
		X:    b.stationAxis(), Y: fmt.Sprintf(say.Y, b.Unit()), At: b.bars(),
		Lines: []chart.Line{{Name: say.Name, X: x, Y: y, Ink: picture.Second}},
	}, say.Caption}, true
}

// levelChart shows how a drawn side curve hangs.
func (b bed) levelChart() (Captioned, bool) {
	l := b.Body.Level
	if len(l.Stations) < 2 {
		return Captioned{}, false
	}
	var x, y []float64
	for _, q := range l.Stations {
		x, y = append(x, b.axis(q.X)), append(y, b.axis(q.Off))
	}
	say := b.Say.Charts.Level
	return Captioned{chart.Chart{
		ID: "chart-level", Title: say.Title,
		Desc: fmt.Sprintf(say.Desc,
			b.Long(l.High), b.Long(-l.Low)),
		X: b.stationAxis(), Y: fmt.Sprintf(say.Y, b.Unit()), At: b.bars(),
		Lines: []chart.Line{{Name: say.Name, X: x, Y: y, Ink: picture.Second}},
	}, say.Caption}, true
}
