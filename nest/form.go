package nest

import (
	"math"

	"slingloft/outline/geom"
)

// shape is an outline for the search, with the lower left corner of its box at
// the origin.
type shape struct {
	ring  geom.Ring   // the true outline, to tell shapes apart
	parts []geom.Ring // convex, together covering the outline closely
	rough []geom.Ring // the same roughly, fewer
	solid bool        // an obstacle: keeps no gap
}

// form is a shape turned by quarters and moved so that the lower left corner of
// its box is the origin again. Equal outlines share one form.
type form struct {
	shape, quarter int
	off            geom.Point // where the turned box had its corner
	w, h           float64    // size of the box of the true outline
	area           float64
	ring           geom.Ring // the true outline from its lowest vertex, to tell forms apart
	solid          bool
}

// pose is a way in which an item may lie.
type pose struct {
	form   int
	motion geom.Motion // mirror and turn; the shift takes the form to the origin
}

// piece is one copy of an item, to be placed in one of its poses.
type piece struct {
	item, copy int
	poses      []pose
}

// block is a form in its place.
type block struct {
	form int
	at   geom.Point
}

// poseIn registers the form of an outline in the turn given, with the parts that
// cover it, and returns the pose.
func poseIn(a *atlas, outline geom.Ring, covered shape, mirror bool, turn float64) pose {
	quarters := math.Floor(turn/(math.Pi/2) + 1e-9)
	rest := turn - quarters*math.Pi/2
	if math.Abs(rest) < 1e-9 {
		rest = 0
	}
	base := geom.Motion{Mirror: mirror, Turn: rest}
	low := outline.Moved(base).Bounds().Min
	base.Shift = geom.Pt(-low.X, -low.Y)
	m := geom.Motion{Mirror: mirror, Turn: turn}
	box := outline.Moved(m).Bounds()
	m.Shift = geom.Pt(-box.Min.X, -box.Min.Y)
	f := form{
		shape:   a.addShape(shape{ring: outline.Moved(base), parts: moved(covered.parts, base), rough: moved(covered.rough, base)}),
		quarter: int(math.Mod(math.Mod(quarters, 4)+4, 4)),
		w:       box.Width(), h: box.Height(), area: math.Abs(outline.Area()),
		ring: outline.Moved(m).FromLowest(),
	}
	f.off = turned(outline.Moved(base), f.quarter).Bounds().Min
	return pose{a.addForm(f), m}
}

// solidBox registers an obstacle of the size given, at least least mm each way.
func solidBox(a *atlas, w, h, least float64) int {
	r := geom.Box{Max: geom.Pt(max(w, least), max(h, least))}.Ring()
	s := a.addShape(shape{ring: r, parts: []geom.Ring{r}, rough: []geom.Ring{r}, solid: true})
	return a.addForm(form{shape: s, w: r[2].X, h: r[2].Y, area: r.Area(), ring: r, solid: true})
}

// moved returns rings with the motion m applied.
func moved(rings []geom.Ring, m geom.Motion) []geom.Ring {
	out := make([]geom.Ring, len(rings))
	for i, r := range rings {
		out[i] = r.Moved(m)
	}
	return out
}

// turned returns r turned by quarters about the origin.
func turned(r geom.Ring, quarters int) geom.Ring {
	return r.Moved(geom.Motion{Turn: float64(quarters) * math.Pi / 2})
}
