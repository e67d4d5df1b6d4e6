package travel

import "slingloft/outline/geom"

// Idle returns the travel between the paths in the order of the steps, in mm,
// the way from the place from to the first path with it.
func Idle(paths []Path, steps []Step, from geom.Point) float64 {
	t := tour{paths: paths, from: from}
	sum := 0.0
	for i, s := range steps {
		t.add(s)
		sum += t.gap(i)
	}
	return sum
}
