package geom

import "slices"

// Clipped returns the parts of the line that lie inside the ring and off the holes.
func (l Polyline) Clipped(ring Ring, holes []Ring) []Polyline {
	var out []Polyline
	var run Polyline
	flush := func() {
		if len(run) > 1 {
			out = append(out, run)
		}
		run = nil
	}
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
			if !OnMaterial(a.Towards(b, (lo+hi)/2), ring, holes) {
				flush()
				continue
			}
			if len(run) == 0 {
				run = Polyline{a.Towards(b, lo)}
			}
			if hi == 1 {
				run = append(run, b) // exactly
			} else {
				run = append(run, a.Towards(b, hi))
			}
		}
	}
	flush()
	return out
}

// Inside returns the longest part of l that lies inside r, ending where it crosses
// r; empty if none does. A line that only touches r stays whole.
func (l Polyline) Inside(r Ring) Polyline {
	var longest Polyline
	for _, part := range l.Clipped(r, nil) {
		if part.Length() > longest.Length() {
			longest = part
		}
	}
	return longest
}

// cutsAlong returns the fractions of the way from a to b at which the ring is met.
func cutsAlong(a, b Point, ring Ring) []float64 {
	var out []float64
	box := BoxOf(a, b)
	for i, p := range ring {
		q := ring[(i+1)%len(ring)]
		if max(p.X, q.X) < box.Min.X || min(p.X, q.X) > box.Max.X ||
			max(p.Y, q.Y) < box.Min.Y || min(p.Y, q.Y) > box.Max.Y {
			continue
		}
		if t, ok := CrossingAt(a, b, p, q); ok {
			out = append(out, t)
		}
	}
	return out
}

// OnMaterial reports whether p lies inside the ring and in none of the holes.
func OnMaterial(p Point, ring Ring, holes []Ring) bool {
	if !ring.Contains(p) {
		return false
	}
	for _, h := range holes {
		if h.Contains(p) {
			return false
		}
	}
	return true
}
