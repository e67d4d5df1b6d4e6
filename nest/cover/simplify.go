package cover

import (
	"cmp"
	"math"
	"slices"

	"slingloft/outline/geom"
)

// A simplified outline may gain growth of its area, or more of it as long as the
// region has more than corners vertices: next to no room is lost. A region with no
// more than plainCorners is searched as it is.
const (
	plainCorners = 20
	corners      = 28
	growth, more = 0.001, 0.004
)

// Simplified returns rings with fewer vertices that cover all of the region
// and at most a little more. Two steps add area and never take any: cutting
// across a reflex corner, and replacing an edge between two convex corners by
// the meeting point of its neighbours. The step that adds least goes first, as
// long as the budget lasts. With more than most vertices area counts for nothing; where
// no step leads on from there, the hull's vertices are taken, and the box at last.
func Simplified(rings []geom.Ring, most int) []geom.Ring {
	s := simplifierOf(rings, most)
	if s.have <= min(plainCorners, most) {
		return rings
	}
	s.run()
	if s.have > most {
		s = simplifierOf([]geom.Ring{hull(rings[0])}, most)
		s.run()
	}
	if s.have > most {
		return []geom.Ring{rings[0].Bounds().Ring()}
	}
	return s.rings
}

// simplifierOf returns what simplifies a copy of rings.
func simplifierOf(rings []geom.Ring, most int) simplifier {
	s := simplifier{area: rings[0].Area(), most: most}
	for _, r := range rings {
		s.have += len(r)
		s.rings = append(s.rings, slices.Clone(r))
	}
	return s
}

// hull returns the convex hull of a ring, counter-clockwise (Andrew 1979, "Another
// efficient algorithm for convex hulls in two dimensions").
func hull(r geom.Ring) geom.Ring {
	pts := slices.Clone(r)
	slices.SortFunc(pts, func(a, b geom.Point) int { return cmp.Or(cmp.Compare(a.X, b.X), cmp.Compare(a.Y, b.Y)) })
	var out geom.Ring
	for _, half := range [2]int{0, 1} {
		from := len(out)
		for k := range pts {
			p := pts[k]
			if half == 1 {
				p = pts[len(pts)-1-k]
			}
			for len(out) > from+1 && geom.Side(out[len(out)-2], out[len(out)-1], p) <= 0 {
				out = out[:len(out)-1]
			}
			out = append(out, p)
		}
		out = out[:len(out)-1] // the other half begins with it
	}
	return out
}

type simplifier struct {
	rings []geom.Ring
	area  float64 // of the outline
	have  int     // vertices
	most  int     // as many as there may be
	grown float64 // area added so far
}

// step is one way to lose a vertex: of ring, at vertex at; tip is the meeting
// point where the edge from at on is replaced, and the zero point otherwise.
type step struct {
	ring, at int
	edge     bool
	tip      geom.Point
	cost     float64
}

func (s *simplifier) run() {
	costs := make([][]step, len(s.rings))
	for i, r := range s.rings {
		costs[i] = make([]step, len(r))
		for k := range r {
			costs[i][k] = s.cheapest(i, k)
		}
	}
	for {
		best := step{cost: math.Inf(1)}
		for _, ring := range costs {
			for _, c := range ring {
				if c.cost < best.cost {
					best = c
				}
			}
		}
		if best.cost > s.left() {
			return
		}
		i := best.ring
		if len(s.rings[i]) <= 4 || !s.free(best) {
			costs[i][best.at].cost = math.Inf(1)
			continue
		}
		s.grown += best.cost
		s.have--
		costs[i] = s.apply(best, costs[i])
	}
}

// left returns the area that may still be added.
func (s *simplifier) left() float64 {
	if s.have > s.most {
		return math.MaxFloat64
	}
	if s.have > corners {
		return float64(more*s.area) - s.grown
	}
	return float64(growth*s.area) - s.grown
}

// cheapest returns the step at vertex k of ring i that adds least area.
func (s *simplifier) cheapest(i, k int) step {
	r := s.rings[i]
	n := len(r)
	a, b, c, d := r[(k+n-1)%n], r[k], r[(k+1)%n], r[(k+2)%n]
	none := step{ring: i, at: k, cost: math.Inf(1)}
	if turn := geom.Side(a, b, c); turn <= 0 {
		none.cost = -turn / 2
		return none
	}
	if geom.Side(b, c, d) <= 0 {
		return none
	}
	u, v := b.Minus(a), c.Minus(d)
	t, _, ok := geom.LinesMeet(b, u, c, v)
	tip := b.Plus(u.Times(t))
	if !ok || u.Cross(v) > 0 || t <= 0 || !tip.Finite() || tip.Dist(b)+tip.Dist(c) > 1.5*b.Dist(c) {
		return none
	}
	return step{i, k, true, tip, geom.Ring{b, tip, c}.Area()}
}

// free reports whether the area that the step adds holds no part of a ring.
func (s *simplifier) free(st step) bool {
	r := s.rings[st.ring]
	n := len(r)
	a, b, c := r[(st.at+n-1)%n], r[st.at], r[(st.at+1)%n]
	tri := []geom.Point{a, c, b} // counter-clockwise
	if st.edge {
		tri = []geom.Point{b, st.tip, c}
	}
	for _, q := range s.rings {
		for i, p := range q {
			if slices.Contains(tri, p) {
				continue
			}
			if inTriangle(tri[0], tri[1], tri[2], p) {
				return false
			}
			next := q[(i+1)%len(q)]
			if st.edge && !slices.Contains(tri, next) && (geom.Straddle(b, st.tip, p, next) || geom.Straddle(st.tip, c, p, next)) {
				return false
			}
		}
	}
	return true
}

// apply takes the step and returns the costs of the changed ring.
func (s *simplifier) apply(st step, costs []step) []step {
	i, n := st.ring, len(s.rings[st.ring])
	gone := st.at
	if st.edge {
		s.rings[i][st.at] = st.tip
		gone = (st.at + 1) % n
	}
	s.rings[i] = slices.Delete(s.rings[i], gone, gone+1)
	costs = slices.Delete(costs, gone, gone+1)
	n--
	for k := range costs {
		costs[k].at = k
	}
	for k := gone - 3; k <= gone+1; k++ {
		costs[(k+n)%n] = s.cheapest(i, (k+n)%n)
	}
	return costs
}
