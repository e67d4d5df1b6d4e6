package geom

import "math"

// maxChords bounds the chords of one arc, whatever radius a file asks for.
const maxChords = 4000

// ArcPoints returns the arc that begins at centre + arm and turns about centre by
// turn radians, counter-clockwise if positive, as points from its start to its end.
// No chord lies further than tolerance mm from the arc, unless that took more than
// 4000 of them; none spans more than a third of a full turn, so that the smallest
// circle still has three corners.
func ArcPoints(centre, arm Point, turn, tolerance float64) Polyline {
	n := arcChords(arm.Len(), math.Abs(turn), tolerance)
	out := make(Polyline, 0, n+1)
	for i := range n + 1 {
		out = append(out, centre.Plus(arm.Turned(turn*float64(i)/float64(n))))
	}
	return out
}

// CirclePoints returns the circle of the given radius, in mm, as a counter-clockwise
// ring from its rightmost point, with chords as those of [ArcPoints].
func CirclePoints(centre Point, radius, tolerance float64) Ring {
	l := ArcPoints(centre, Point{radius, 0}, 2*math.Pi, tolerance)
	return Ring(l[:len(l)-1])
}

// arcChords returns into how many chords an arc is to be cut. A chord over the angle
// 2φ lies r (1 − cos φ) from its arc in the middle.
func arcChords(radius, turn, tolerance float64) int {
	n := turn / (2 * math.Pi / 3) * (1 - 1e-12) // a full turn is three thirds, not four
	if radius > tolerance {
		n = math.Max(n, turn/(2*math.Acos(1-tolerance/radius)))
	}
	if !(n < maxChords) {
		return maxChords
	}
	return max(1, int(math.Ceil(n)))
}
