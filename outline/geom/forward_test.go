package geom_test

import (
	"math"
	"testing"

	"github.com/peterstace/simplefeatures/geom"

	g "slingloft/outline/geom"
)

// An edge that begins or ends with a segment of some micrometres, as one cut off at
// a corner may, is moved as if it had none: the corner is mitred, without a loop.
func TestOffsetOfAnEdgeWithATinySegment(t *testing.T) {
	long := g.Polyline{{X: 0, Y: 0}, {X: 90, Y: -30}, {X: 100, Y: -34}}
	for _, tiny := range []float64{0, 1e-6, 0.0015, 0.06, 0.5} {
		flatter := g.Polyline{{X: 100, Y: -34}}
		if tiny > 0 {
			flatter = append(flatter, g.Pt(100+tiny, -34+0.2*tiny))
		}
		flatter = append(flatter, g.Pt(110, -32.8), g.Pt(200, -25))
		for _, mirrored := range []bool{false, true} {
			edges := []g.Polyline{long, flatter, {{X: 200, Y: -25}, {X: 100, Y: 100}, {X: 0, Y: 0}}}
			if mirrored {
				turn := func(l g.Polyline) g.Polyline { return l.Moved(g.Motion{Mirror: true}).Reversed() }
				edges = []g.Polyline{turn(edges[2]), turn(edges[1]), turn(edges[0])}
			}
			r := g.OffsetEdges(edges, []float64{10, 10, 10})
			var flat []float64
			for _, p := range r.Closed() {
				flat = append(flat, p.X, p.Y)
			}
			polygon := geom.NewPolygon([]geom.LineString{geom.NewLineString(geom.NewSequence(flat, geom.DimXY))})
			if err := polygon.Validate(); err != nil {
				t.Errorf("tiny segment of %g mm, mirrored %v: %v", tiny, mirrored, err)
			}
			without := []g.Polyline{long, {{X: 100, Y: -34}, {X: 110, Y: -32.8}, {X: 200, Y: -25}},
				{{X: 200, Y: -25}, {X: 100, Y: 100}, {X: 0, Y: 0}}}
			if a := g.OffsetEdges(without, []float64{10, 10, 10}).Area(); math.Abs(r.Area()-a) > 1 {
				t.Errorf("tiny segment of %g mm, mirrored %v: area %g, without it %g", tiny, mirrored, r.Area(), a)
			}
		}
	}
}
