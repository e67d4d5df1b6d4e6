package outline

import (
	"slices"

	"slingloft/outline/geom"
)

// clipped returns the parts of a line that lie inside the ring and off the holes.
func clipped(l geom.Polyline, ring geom.Ring, holes []geom.Ring) []geom.Polyline {
	var out []geom.Polyline
	var run geom.Polyline
	flush := func() {
		if len(run) > 1 {
			out = append(out, run)
		}
		run = nil
	}
	r := room{ring: ring, holes: holes}
	for i := 1; i < len(l); i++ {
		a, b := l[i-1], l[i]
		cuts := cutsAlong(a, b, ring)
		for _, h := range holes {
			cuts = append(cuts, cutsAlong(a, b, h)...)
		}
		cuts = append(cuts, 0, 1)
		slices.Sort(cuts)
		for k := 1; k < len(cuts); k++ {
			lo, hi := cuts[k-1], cuts[k]
			if (hi-lo)*a.Dist(b) < 1e-9 {
				continue
			}
			if !r.inside(a.Towards(b, (lo+hi)/2)) {
				flush()
				continue
			}
			if len(run) == 0 {
				run = geom.Polyline{a.Towards(b, lo)}
			}
			run = append(run, a.Towards(b, hi))
		}
	}
	flush()
	return out
}

// cutsAlong returns the fractions of the way from a to b at which the ring is met.
func cutsAlong(a, b geom.Point, ring geom.Ring) []float64 {
	var out []float64
	box := geom.BoxOf(a, b)
	for i, p := range ring {
		q := ring[(i+1)%len(ring)]
		if max(p.X, q.X) < box.Min.X || min(p.X, q.X) > box.Max.X ||
			max(p.Y, q.Y) < box.Min.Y || min(p.Y, q.Y) > box.Max.Y {
			continue
		}
		if t, ok := crossing(a, b, p, q); ok {
			out = append(out, t)
		}
	}
	return out
}
