package geom

import (
	"cmp"
	"slices"
)

// Inside returns the longest stretch of l that lies inside r, ending where it
// crosses r; empty if none does. A line that only touches r stays whole.
func (l Polyline) Inside(r Ring) Polyline {
	var best, run Polyline
	end := func() {
		if run.Length() > best.Length() {
			best = run
		}
		run = nil
	}
	for i := 1; i < len(l); i++ {
		stops := append([]Point{l[i-1]}, crossings(l[i-1], l[i], r)...)
		stops = append(stops, l[i])
		for k := 1; k < len(stops); k++ {
			if !r.Contains(stops[k-1].Towards(stops[k], 0.5)) {
				end()
				continue
			}
			if len(run) == 0 {
				run = append(run, stops[k-1])
			}
			run = append(run, stops[k])
		}
	}
	end()
	return best
}

// crossings returns the points between a and b in which r crosses the segment, in
// their order from a.
func crossings(a, b Point, r Ring) []Point {
	var out []Point
	box := BoxOf(a, b).Expanded(1e-9)
	for i, c := range r {
		d := r[(i+1)%len(r)]
		if !box.Overlaps(BoxOf(c, d).Expanded(1e-9)) {
			continue
		}
		if p, ok := Crossing(a, b, c, d); ok && p.Dist(a) > 1e-9 && p.Dist(b) > 1e-9 {
			out = append(out, p)
		}
	}
	slices.SortFunc(out, func(p, q Point) int { return cmp.Compare(p.Dist(a), q.Dist(a)) })
	return out
}
