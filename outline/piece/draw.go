package piece

import (
	"math"

	"slingloft/outline/geom"
)

// Readable returns the direction angle or its opposite, whichever reads from
// below or from the right, as on a drawing.
func Readable(angle float64) float64 {
	a := math.Remainder(angle, 2*math.Pi)
	const eps = 1e-9 // straight down counts as straight up
	if a > math.Pi/2+eps || a <= -math.Pi/2+eps {
		a = math.Remainder(a+math.Pi, 2*math.Pi)
	}
	return a
}

// ReadableAlong returns the direction angle of a text along an edge or its opposite, so
// that every text along the edge reads the same way: that of the whole edge, whose
// direction is whole, is readable.
func ReadableAlong(angle, whole float64) float64 {
	base := Readable(whole)
	return base + Readable(angle-base)
}

// Arrow returns a double-headed arrow along the grain, from a to b, as marks.
func Arrow(a, b geom.Point) []Line { return ArrowWith(14, a, b) }

// ArrowWith returns the same with barbs of a length, mm, for a piece that is narrow.
func ArrowWith(barb float64, a, b geom.Point) []Line {
	const name = "grain"
	const open = 0.35 // rad
	dir := b.Minus(a).Unit()
	head := func(tip, back geom.Point) Line {
		return Line{Name: name, Role: GrainArrow, Work: Mark, Points: geom.Polyline{
			tip.Plus(back.Turned(open).Times(barb)), tip, tip.Plus(back.Turned(-open).Times(barb))}}
	}
	return []Line{
		{Name: name, Role: GrainArrow, Work: Mark, Points: geom.Polyline{a, b}},
		head(a, dir), head(b, dir.Times(-1)),
	}
}

// Cross returns a pin point: a small upright cross.
func Cross(name string, p geom.Point) []Line {
	const arm = 3.0
	return []Line{
		{Name: name, Work: Mark, Points: geom.Polyline{{X: p.X - arm, Y: p.Y}, {X: p.X + arm, Y: p.Y}}},
		{Name: name, Work: Mark, Points: geom.Polyline{{X: p.X, Y: p.Y - arm}, {X: p.X, Y: p.Y + arm}}},
	}
}

// Stacked returns lines of text below each other from the top, left-aligned.
func Stacked(at geom.Point, height, turn float64, texts ...string) []Label {
	const lead = 1.7 // line pitch over letter height: descenders stay clear
	down := geom.Pt(0, -1).Turned(turn)
	var out []Label
	for i, t := range texts {
		out = append(out, Label{Text: t, At: at.Plus(down.Times(float64(i) * lead * height)), Height: height, Turn: turn})
	}
	return out
}
