package sheet

import (
	"fmt"
	"math"

	"slingloft/export/sheet/chart"
	"slingloft/export/sheet/picture"
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

// charts draws the curves behind the figures.
func (b *builder) charts() (Section, error) {
	s := Section{ID: "charts", Title: "Charts"}
	var figs Figures
	sw := b.sweep()
	for _, f := range []func() (chart.Chart, string, bool){
		b.sideChart, b.girthChart, b.cordChart, b.clothChart, b.straightChart, b.levelChart,
		func() (chart.Chart, string, bool) { return b.angleChart(sw) },
		func() (chart.Chart, string, bool) { return b.forceChart(sw) },
	} {
		c, caption, ok := f()
		if !ok {
			continue
		}
		p, err := chart.Draw(c)
		if err != nil {
			return s, err
		}
		figs = append(figs, Figure{Picture: p, Caption: caption})
	}
	s.Blocks = append(s.Blocks, Para("Stations run along the bed from mid-bay, the head end negative; upright lines stand at the bars."), figs)
	if len(b.Body.Departures) > 0 {
		s.Blocks = append(s.Blocks, b.departureTable())
	}
	return s, nil
}

// axis returns a length as a plain number in the unit of the sheet.
func (b *builder) axis(mm float64) float64 {
	if b.Style.Inches {
		return mm / quantity.Inch
	}
	return mm
}

// bars returns the places of the bars on an axis.
func (b *builder) bars() []float64 {
	half := b.Design.Bed.Span / 2
	return []float64{b.axis(-half), b.axis(half)}
}

// along reads a value at every station of the bed.
func (b *builder) along(of func(hung.Station) float64) (x, y []float64) {
	for _, s := range b.Shape.Stations(160) {
		q := b.Shape.At(s)
		if q.Section.Half == 0 {
			continue
		}
		x, y = append(x, b.axis(s)), append(y, of(q))
	}
	return x, y
}

func (b *builder) stationAxis() string { return "station, " + b.unit() }

// sideChart compares the side's curve with a parabola and an arc of its depth.
func (b *builder) sideChart() (chart.Chart, string, bool) {
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
		return chart.Chart{}, "", false
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
	return chart.Chart{
		ID: "chart-side", Title: "Side curve less the parabola of its depth",
		Desc: fmt.Sprintf("Along the chord from the head bar to the foot bar, by how much the flat side edge and a "+
			"circular arc lie deeper than a parabola of the same greatest depth, %s. The side departs by at most %s.", b.long(deep),
			b.long(b.back(worst))),
		X: "along the chord from the head bar, " + b.unit(), Y: "deeper, " + b.unit(),
		Lines: []chart.Line{{Name: "this side", X: xs, Y: own, Ink: picture.First},
			{Name: "circular arc", X: xs, Y: arc, Ink: picture.Second, Dashed: true}},
	}, "The side curve of the bay against the parabola of the same depth, which lies at zero, and against an arc.", true
}

// back returns mm for a number on an axis.
func (b *builder) back(v float64) float64 {
	if b.Style.Inches {
		return v * quantity.Inch
	}
	return v
}

// extreme returns the value of largest magnitude, as a magnitude.
func extreme(y []float64) float64 {
	m := 0.0
	for _, v := range y {
		m = max(m, math.Abs(v))
	}
	return m
}

func (b *builder) girthChart() (chart.Chart, string, bool) {
	x, y := b.along(func(q hung.Station) float64 { return b.axis(q.Section.Girth()) })
	_, open := b.along(func(q hung.Station) float64 { return b.axis(2 * q.Y) })
	h, f := b.Shape.Ends[hung.Head], b.Shape.Ends[hung.Foot]
	return chart.Chart{
		ID: "chart-girth", Title: "Girth and opening along the bed",
		Desc: fmt.Sprintf("Length of cloth across the bed from cord to cord, and the opening between the cords. Girth %s "+
			"at the head bar, %s at mid-bay, %s at the foot bar.", b.long(h.Section.Girth()), b.long(b.Shape.At(0).Section.Girth()),
			b.long(f.Section.Girth())),
		X: b.stationAxis(), Y: b.unit(), At: b.bars(), FromZero: true,
		Lines: []chart.Line{{Name: "girth", X: x, Y: y, Ink: picture.First}, {Name: "opening", X: x, Y: open, Ink: picture.Third, Dashed: true}},
	}, "Girth: cloth across the bed, cord to cord; opening: between the cords.", true
}

func (b *builder) cordChart() (chart.Chart, string, bool) {
	x, y := b.along(func(q hung.Station) float64 { return b.Style.Pull(q.Tension) })
	peak, at := b.Shape.MaxTension()
	return chart.Chart{
		ID: "chart-cord", Title: "Tension along the cord",
		Desc: fmt.Sprintf("Tension of one side's cord over the bed. Largest %s, at %s from mid-bay; least near the middle, %s.",
			b.force(peak), b.round(at), b.force(b.Shape.At(b.Shape.DepthX).Tension)),
		X: b.stationAxis(), Y: "tension, " + b.Style.ForceUnit(), At: b.bars(), FromZero: true,
		Lines: []chart.Line{{Name: "one side's cord", X: x, Y: y, Ink: picture.First}},
	}, "Tension along one side's cord, over tails and bay.", true
}

func (b *builder) clothChart() (chart.Chart, string, bool) {
	unit := b.Style.PerLengthUnit()
	x, y := b.along(func(q hung.Station) float64 { return b.Style.PerLength(q.Cloth) })
	return chart.Chart{
		ID: "chart-cloth", Title: "Tension of the cloth across the bed",
		Desc: fmt.Sprintf("Tension of the cloth across the bed per length along it; largest %s %s.", decimals(extreme(y), 1), unit),
		X:    b.stationAxis(), Y: "tension, " + unit, At: b.bars(), FromZero: true,
		Lines: []chart.Line{{Name: "across, per length of bed", X: x, Y: y, Ink: picture.First}},
	}, "Tension of the cloth across the bed, from the sleeper's load and the walls' angle.", true
}

// straightChart shows what straight tails would give up.
func (b *builder) straightChart() (chart.Chart, string, bool) {
	s := *b.Shape
	s.Problem.Bed.Cut = design.Straight
	cut, err := flat.Lay(&s, false)
	if err != nil || len(cut.Departures) < 2 {
		return chart.Chart{}, "", false
	}
	var x, y []float64
	for _, d := range cut.Departures {
		x, y = append(x, b.axis(d.X)), append(y, b.axis(d.Cut-d.True))
	}
	return chart.Chart{
		ID: "chart-straight", Title: "Girth of straight tails less the true girth",
		Desc: fmt.Sprintf("By how much the cloth across the bed would be too long, or where negative too short, if the "+
			"tails were cut straight: nothing in the bay, up to %s in the tails.", b.long(b.back(extreme(y)))),
		X: b.stationAxis(), Y: "too long, " + b.unit(), At: b.bars(),
		Lines: []chart.Line{{Name: "straight cut less true cut", X: x, Y: y, Ink: picture.Second}},
	}, "Straight tails against the true cut: girth too long, or too short, at each station.", true
}

// departureTable tells what a straight cut gives up at each station of the tails.
func (b *builder) departureTable() Table {
	t := Table{ID: "departures", Dense: true, Caption: "Girth of the straight tails, in " + b.unitWord() + ": what " +
		"would hang level, and what the cut has",
		Head: []string{"station", "level", "cut", "departs"}, Words: []bool{false, false, false, false}}
	for _, q := range b.Body.Departures {
		if math.Abs(q.X) >= b.Design.Bed.Span/2 {
			t.Rows = append(t.Rows, []string{b.signedFigure(q.X), b.figure(q.True), b.figure(q.Cut), b.signedFigure(q.Cut - q.True)})
		}
	}
	return t
}

// levelChart shows how a drawn side curve hangs.
func (b *builder) levelChart() (chart.Chart, string, bool) {
	l := b.Body.Level
	if len(l.Stations) < 2 {
		return chart.Chart{}, "", false
	}
	var x, y []float64
	for _, q := range l.Stations {
		x, y = append(x, b.axis(q.X)), append(y, b.axis(q.Off))
	}
	return chart.Chart{
		ID: "chart-level", Title: "Bottom line above level, with the side curve as drawn",
		Desc: fmt.Sprintf("The side curve is drawn and not in balance: the bed's bottom stands up to %s high and %s low of level.",
			b.long(l.High), b.long(-l.Low)),
		X: b.stationAxis(), Y: "above level, " + b.unit(), At: b.bars(),
		Lines: []chart.Line{{Name: "bottom line", X: x, Y: y, Ink: picture.Second}},
	}, "How far the bed hangs off level with the side curve that was asked for.", true
}

// swept are shapes of the same bed with its control a part more or less.
type swept struct {
	name   string    // of the control, with its unit
	x      []float64 // its values
	shapes []hung.Shape
	own    float64 // this design's value
}

// sweep solves the shape again with the control a part more or less.
func (b *builder) sweep() swept {
	names := [4]string{"side depth, " + b.unit(), "head hang angle, °", "foot hang angle, °", "thrust of one side, " + b.Style.ForceUnit()}
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
func (b *builder) angleChart(w swept) (chart.Chart, string, bool) {
	x, shapes, name := w.x, w.shapes, w.name
	if len(shapes) < 2 {
		return chart.Chart{}, "", false
	}
	var head, foot []float64
	for i := range shapes {
		head = append(head, toDegrees(atan(shapes[i].Ends[hung.Head].Slope)))
		foot = append(foot, toDegrees(atan(shapes[i].Ends[hung.Foot].Slope)))
	}
	return chart.Chart{
		ID: "chart-angles", Title: "Hang angles against the " + name,
		Desc: fmt.Sprintf("Hang angles if the %s were up to a fifth less or more: head from %s° to %s°, foot from %s° to %s°.",
			name, decimals(head[0], 1), decimals(head[len(head)-1], 1), decimals(foot[0], 1), decimals(foot[len(foot)-1], 1)),
		X: name, Y: "hang angle, °", At: []float64{w.own},
		Lines: []chart.Line{{Name: "head", X: x, Y: head, Ink: picture.First}, {Name: "foot", X: x, Y: foot, Ink: picture.Second, Dashed: true}},
	}, "Sensitivity: the hang angles if the control of the shape were a fifth less or more. The upright line is this design.", true
}

// forceChart shows how forces follow the control.
func (b *builder) forceChart(w swept) (chart.Chart, string, bool) {
	x, shapes, name := w.x, w.shapes, w.name
	if len(shapes) < 2 {
		return chart.Chart{}, "", false
	}
	var cord, bar []float64
	for i := range shapes {
		cord = append(cord, b.Style.Pull(first(shapes[i].MaxTension())))
		bar = append(bar, b.Style.Pull(max(shapes[i].Ends[hung.Head].BarCompression, shapes[i].Ends[hung.Foot].BarCompression)))
	}
	return chart.Chart{
		ID: "chart-forces", Title: "Forces against the " + name,
		Desc: fmt.Sprintf("Largest cord tension and larger bar thrust if the %s were up to a fifth less or more: cord "+
			"from %s to %s %s, bar from %s to %s.", name, decimals(cord[0], 0), decimals(cord[len(cord)-1], 0), b.Style.ForceUnit(),
			decimals(bar[0], 0), decimals(bar[len(bar)-1], 0)),
		X: name, Y: "force, " + b.Style.ForceUnit(), At: []float64{w.own}, FromZero: true,
		Lines: []chart.Line{{Name: "largest cord tension", X: x, Y: cord, Ink: picture.First},
			{Name: "bar thrust", X: x, Y: bar, Ink: picture.Second, Dashed: true}},
	}, "Sensitivity: forces if the control of the shape were a fifth less or more. The upright line is this design.", true
}
