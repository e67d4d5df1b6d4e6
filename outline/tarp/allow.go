package tarp

import (
	"math"
	"slices"

	"slingloft/outline/geom"
)

// bent is the turn from which two edges that meet have a corner between them, rad: half a
// degree. At less, as where straight end edges of a rectangle meet on its ridge, what lies
// outside of them is moved as of one.
const bent = math.Pi / 360

// smooth joins neighbouring edges that run on into each other and are moved alike.
func smooth(edges []geom.Polyline, out []float64) ([]geom.Polyline, []float64) {
	var lines []geom.Polyline
	var moved []float64
	for i, e := range edges {
		if n := len(lines); n > 0 && moved[n-1] == out[i] && runsOn(lines[n-1], e) {
			lines[n-1] = append(slices.Clip(lines[n-1]), e[1:]...)
			continue
		}
		lines, moved = append(lines, e), append(moved, out[i])
	}
	if n := len(lines); n > 2 && moved[0] == moved[n-1] && runsOn(lines[n-1], lines[0]) {
		lines[0] = append(slices.Clip(lines[n-1]), lines[0][1:]...)
		lines, moved = lines[:n-1], moved[:n-1]
	}
	return lines, moved
}

// runsOn reports whether an edge runs on into the next without a corner.
func runsOn(a, b geom.Polyline) bool {
	return math.Abs(a[len(a)-1].Minus(a[len(a)-2]).AngleTo(b[1].Minus(b[0]))) < bent
}

// outside returns the ring that lies so far outside of each edge.
func outside(edges []geom.Polyline, out []float64) geom.Ring {
	return geom.OffsetEdges(smooth(edges, out))
}
