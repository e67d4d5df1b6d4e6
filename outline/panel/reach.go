package panel

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/numeric"
)

// Reach returns how far the centre of a cord of the given diameter lies outside
// the seam of a channel with the given finished depth, both mm. The channel's
// two layers run from the seam straight to the cord and half round it each:
// depth = √(e²−r²) + r (π − acos(r/e)) with r the cord's radius. A channel below
// half the cord's girth holds no cord and is an error.
func Reach(depth, diameter float64) (float64, error) {
	r := diameter / 2
	if !(depth > math.Pi*r) {
		return 0, &design.Breach{Found: design.Found(design.ChannelHoldsNo, depth, diameter, math.Pi*r)}
	}
	miss := func(e float64) float64 {
		return math.Sqrt(max(e*e-r*r, 0)) + r*(math.Pi-math.Acos(min(r/e, 1))) - depth
	}
	return numeric.Root(miss, r, depth, 1e-12)
}
