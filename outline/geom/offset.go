package geom

import (
	"math"
	"slices"
)

// Offset returns the curve at distance d mm to the right of l's direction of
// travel (to the left if negative), vertex by vertex: exact for each segment, no
// loops removed. It suits curves whose radius is well above |d|; [OffsetEdges]
// joins such curves at corners.
func (l Polyline) Offset(d float64) Polyline {
	if len(l) < 2 {
		return slices.Clone(l)
	}
	out := make(Polyline, len(l))
	for i := range l {
		var before, after Point // unit directions
		if i > 0 {
			before = l[i].Minus(l[i-1]).Unit()
		}
		if i+1 < len(l) {
			after = l[i+1].Minus(l[i]).Unit()
		}
		if i == 0 {
			before = after
		}
		if i+1 == len(l) {
			after = before
		}
		n := before.Plus(after).Unit()
		// The bisector's offset is longer by 1/cos of half the turn.
		mitre := 1 / math.Max(n.Dot(before), 0.2)
		out[i] = l[i].Minus(n.Left().Times(d * mitre))
	}
	return out
}

// mitreLimit is how far a mitred corner may stand out, in offsets; beyond it the
// corner is cut off square, so that a sharp corner grows no spike.
const mitreLimit = 3

// OffsetEdges returns the ring at distance d[i] mm to the right of each edge:
// outside a counter-clockwise outline. The edges are smooth curves, each ending
// where the next starts, the last where the first does. Where the moved edges
// cross they are cut off at the crossing, where they part they are run on
// straight to meet, and where they would meet far out the corner is cut off.
func OffsetEdges(edges []Polyline, d []float64) Ring { return RingOf(MovedEdges(edges, d)) }

// RingOf returns the ring of edges that each end where the next starts.
func RingOf(edges []Polyline) Ring {
	var ring Ring
	for _, e := range edges {
		ring = append(ring, e...)
	}
	return ring.Deduped(1e-9)
}

// MovedEdges does the same as [OffsetEdges] and keeps the edges apart, each ending
// where the next starts.
func MovedEdges(edges []Polyline, d []float64) []Polyline {
	n := len(edges)
	moved := make([]Polyline, n)
	for i, e := range edges {
		moved[i] = forward(e.Offset(d[i]), e)
	}
	// Every corner is found on whole edges before any is cut.
	corners := make([]corner, n)
	for i := range n {
		k := (i + 1) % n
		limit := mitreLimit * max(math.Abs(d[i]), math.Abs(d[k]), 1e-9)
		corners[i] = cornerOf(moved[i], moved[k], edges[i][len(edges[i])-1], limit)
	}
	out := make([]Polyline, n)
	for i, m := range moved {
		before, after := corners[(i+n-1)%n], corners[i]
		out[i] = append(out[i], before.start)
		if before.first <= after.last {
			out[i] = append(out[i], m[before.first:after.last+1]...)
		}
		out[i] = append(out[i], after.end)
	}
	return out
}

// forward returns a moved line without the points that the move has carried past
// their neighbours, as it does with those of a segment much shorter than the
// distance beside a turn: it would run backwards and lead the corner astray. The
// line's ends stay.
func forward(moved, from Polyline) Polyline {
	back := func(i, k int) bool { return moved[k].Minus(moved[i]).Dot(from[k].Minus(from[i])) < 0 }
	kept := []int{0}
	for i := 1; i < len(moved); i++ {
		if !back(kept[len(kept)-1], i) {
			kept = append(kept, i)
		} else if i == len(moved)-1 {
			for len(kept) > 1 && back(kept[len(kept)-1], i) {
				kept = kept[:len(kept)-1]
			}
			kept = append(kept, i)
		}
	}
	out := make(Polyline, len(kept))
	for k, i := range kept {
		out[k] = moved[i]
	}
	return out
}

// corner is how edge a goes over into edge b: a is kept up to its point last and
// ends at end, b starts at start and is kept from its point first on. Start and
// end differ only where the corner is cut off.
type corner struct {
	last, first int
	end, start  Point
}

// cornerOf returns the corner between a and b near the given point; limit is how
// far from it a mitre may reach, in mm. Both are run on straight by that much; of
// several crossings the one nearest to the point counts.
func cornerOf(a, b Polyline, near Point, limit float64) corner {
	last := len(a) - 1
	out := a[last].Minus(a[last-1]).Unit()
	in := b[0].Minus(b[1]).Unit()
	longA, longB := slices.Clone(a), slices.Clone(b)
	longA[last] = a[last].Plus(out.Times(limit))
	longB[0] = b[0].Plus(in.Times(limit))
	if i, j, p, ok := crossingNearest(longA, longB, near); ok && p.Dist(near) <= limit {
		return corner{i, j + 1, p, p}
	}
	// Square: both run on by half an offset, then join straight.
	run := limit / mitreLimit / 2
	return corner{last - 1, 1, a[last].Plus(out.Times(run)), b[0].Plus(in.Times(run))}
}

// crossingNearest returns the segments of a and b whose crossing lies nearest to
// near, and the crossing.
func crossingNearest(a, b Polyline, near Point) (i, j int, at Point, ok bool) {
	best := math.Inf(1)
	boxes := segmentBoxes(b)
	for k, box := range segmentBoxes(a) {
		for l := range boxes {
			if !box.Overlaps(boxes[l]) {
				continue
			}
			p, hit := Crossing(a[k], a[k+1], b[l], b[l+1])
			if hit && p.Dist(near) < best {
				best, i, j, at, ok = p.Dist(near), k, l, p, true
			}
		}
	}
	return i, j, at, ok
}

// segmentBoxes returns the box around each segment of l, a little wider than it is,
// so that a segment along an axis has an area.
func segmentBoxes(l Polyline) []Box {
	out := make([]Box, max(len(l)-1, 0))
	for i := range out {
		out[i] = BoxOf(l[i], l[i+1]).Expanded(1e-9)
	}
	return out
}
