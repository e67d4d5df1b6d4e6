package nest

import (
	"math"

	"slingloft/nest/cover"
	"slingloft/outline/geom"
)

// shape is an outline for the search, with the lower left corner of its box at
// the origin.
type shape struct {
	region []geom.Ring // the true outline, to tell shapes apart, and holes that may be filled
	simple []geom.Ring // the same with fewer vertices, covering it
	parts  []geom.Ring // convex, together covering the region
	rough  []geom.Ring // likewise, for the first lay
	solid  bool        // an obstacle: keeps no gap
}

// form is a shape turned by quarters and moved so that the lower left corner of
// its box is the origin again. Equal outlines share one form.
type form struct {
	shape, quarter int
	off            geom.Point // where the turned box had its corner
	size           geom.Point // of the box of the true outline
	area           float64
	ring           geom.Ring // the true outline from its lowest vertex, to tell forms apart
	solid          bool
}

// spot is a form in its place: that of a piece, or an obstacle.
type spot struct {
	form int
	at   geom.Point // of the lower left corner
}

// pose is a way in which an item may lie.
type pose struct {
	form   int
	motion geom.Motion // mirror and turn; the shift takes the form to the origin
}

// covered is a region, its outline first, with what covers it, see shape.
type covered struct{ region, simple, parts []geom.Ring }

// coveredBy returns a region with its covers, and whether they cover it.
func coveredBy(region []geom.Ring) (covered, bool) {
	parts, ok := cover.Parts(region, cover.Most)
	return covered{region, cover.Simplified(region, cover.Most), parts}, ok
}

// poseIn registers the form of a region in the turn given, and returns the pose.
func (a *atlas) poseIn(c covered, mirror bool, turn float64) pose {
	outline := c.region[0]
	quarters := math.Floor(turn/(math.Pi/2) + 1e-9)
	rest := turn - quarters*math.Pi/2
	if math.Abs(rest) < 1e-9 {
		rest = 0
	}
	base, _ := cornered(outline, geom.Motion{Mirror: mirror, Turn: rest})
	m, size := cornered(outline, geom.Motion{Mirror: mirror, Turn: turn})
	s := shape{region: moved(c.region, base), simple: moved(c.simple, base), parts: moved(c.parts, base)}
	s.rough = s.parts
	f := form{shape: a.addShape(s), quarter: int(math.Mod(quarters, 4)) & 3, size: size, area: math.Abs(outline.Area())}
	f.off = s.region[0].Moved(quarterTurn(f.quarter)).Bounds().Min
	f.ring = outline.Moved(m).FromLowest()
	return pose{a.addForm(f), m}
}

// cornered returns m with the shift that takes the lower left corner of the box of
// r to the origin, and the size of that box.
func cornered(r geom.Ring, m geom.Motion) (moved geom.Motion, size geom.Point) {
	box := r.Moved(m).Bounds()
	m.Shift = geom.Point{}.Minus(box.Min)
	return m, geom.Pt(box.Width(), box.Height())
}

// moved returns rings with the motion m applied.
func moved(rings []geom.Ring, m geom.Motion) []geom.Ring {
	out := make([]geom.Ring, len(rings))
	for i, r := range rings {
		out[i] = r.Moved(m)
	}
	return out
}

// quarterTurn returns the turn by n quarters about the origin.
func quarterTurn(n int) geom.Motion { return geom.Motion{Turn: float64(n) * math.Pi / 2} }
