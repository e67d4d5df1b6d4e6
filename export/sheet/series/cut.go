package series

import (
	"fmt"
	"math"
	"slingloft/export/sheet/chart"
	"slingloft/export/sheet/picture"
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/hung"
)

// sideChart compares the side's curve with a parabola and an arc of its depth.
func (b bed) sideChart() (Captioned, bool) {
	side := b.Body.Side.Flat[b.Body.TipIndex(hung.Head) : b.Body.TipIndex(hung.Foot)+1]
	from, to := side[0], side[len(side)-1]
	dir := to.Minus(from).Unit()
	long := from.Dist(to)
	deep := 0.0
	var x, depth []float64
	for _, p := range side {
		d := p.Minus(from)
		x, depth = append(x, d.Dot(dir)), append(depth, d.Cross(dir))
		deep = max(deep, d.Cross(dir))
	}
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
	worst := extreme(own)
	return Captioned{chart.Chart{
		ID: "chart-side", Title: "Side curve less the parabola of its depth",
		Desc: fmt.Sprintf("Along the chord from the head bar to the foot bar, by how much the flat side edge and a "+
			"circular arc lie deeper than a parabola of the same greatest depth, %s. The side departs by at most %s.", b.Long(deep),
			b.Long(b.back(worst))),
		X: "along the chord from the head bar, " + b.Unit(), Y: "deeper, " + b.Unit(),
		Lines: []chart.Line{{Name: "this side", X: xs, Y: own, Ink: picture.First},
			{Name: "circular arc", X: xs, Y: arc, Ink: picture.Second, Dashed: true}},
	}, "The side curve of the bay against the parabola of the same depth, which lies at zero, and against an arc."}, true
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
	return Captioned{chart.Chart{
		ID: "chart-straight", Title: "Girth of straight tails less the true girth",
		Desc: fmt.Sprintf("By how much the cloth across the bed would be too long, or where negative too short, if the "+
			"tails were cut straight: nothing in the bay, up to %s in the tails.", b.Long(b.back(extreme(y)))),
		X: b.stationAxis(), Y: "too long, " + b.Unit(), At: b.bars(),
		Lines: []chart.Line{{Name: "straight cut less true cut", X: x, Y: y, Ink: picture.Second}},
	}, "Straight tails against the true cut: girth too long, or too short, at each station."}, true
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
	return Captioned{chart.Chart{
		ID: "chart-level", Title: "Bottom line above level, with the side curve as drawn",
		Desc: fmt.Sprintf("The side curve is drawn and not in balance: the bed's bottom stands up to %s high and %s low of level.",
			b.Long(l.High), b.Long(-l.Low)),
		X: b.stationAxis(), Y: "above level, " + b.Unit(), At: b.bars(),
		Lines: []chart.Line{{Name: "bottom line", X: x, Y: y, Ink: picture.Second}},
	}, "How far the bed hangs off level with the side curve that was asked for."}, true
}
