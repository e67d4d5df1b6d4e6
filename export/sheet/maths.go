package sheet

import (
	"math"
	"slices"

	"slingloft/outline/geom"
)

func atan(slope float64) float64 { return math.Atan(slope) }

func first(a, _ float64) float64 { return a }

// crossings returns where an outline crosses the level line at y, rising.
func crossings(r geom.Ring, y float64) []float64 {
	var out []float64
	for i, q := range r {
		p := r[(i+len(r)-1)%len(r)]
		if (p.Y > y) != (q.Y > y) {
			out = append(out, p.X+(q.X-p.X)*(y-p.Y)/(q.Y-p.Y))
		}
	}
	slices.Sort(out)
	return out
}
