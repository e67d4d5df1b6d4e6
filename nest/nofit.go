package nest

import (
	"math"
	"sort"

	"slingloft/outline/geom"
)

// halfPlane holds the points with nx·x + ny·y ≥ c; (nx, ny) has length 1.
type halfPlane struct{ nx, ny, c float64 }

// depth returns how far (x, y) lies inside, negative outside.
func (h halfPlane) depth(x, y float64) float64 { return h.nx*x + h.ny*y - h.c }

// patch is one convex part of a no-fit region.
type patch struct {
	ring   geom.Ring
	planes []halfPlane // one per edge of ring
	box    geom.Box
}

// depth returns how far (x, y) lies inside the patch; ≤ 0 means outside.
func (p *patch) depth(x, y float64) float64 {
	least := math.Inf(1)
	for _, h := range p.planes {
		if d := h.depth(x, y); d < least {
			if d <= 0 {
				return d
			}
			least = d
		}
	}
	return least
}

// span returns the open interval of x that the patch covers at height y; it is
// empty if lo ≥ hi.
func (p *patch) span(y float64) (lo, hi float64) {
	lo, hi = math.Inf(-1), math.Inf(1)
	if y <= p.box.Min.Y || y >= p.box.Max.Y {
		return hi, lo
	}
	for _, h := range p.planes {
		rest := h.c - h.ny*y
		switch {
		case h.nx > 1e-12:
			lo = math.Max(lo, rest/h.nx)
		case h.nx < -1e-12:
			hi = math.Min(hi, rest/h.nx)
		case rest >= 0:
			return hi, lo
		}
	}
	return lo, hi
}

// newPatch builds a patch from a convex counter-clockwise ring, grown by grow.
func newPatch(ring geom.Ring, grow float64) patch {
	p := patch{ring: ring, box: ring.Bounds().Expanded(grow)}
	for i, a := range ring {
		n := ring[(i+1)%len(ring)].Minus(a).Left().Unit()
		p.planes = append(p.planes, halfPlane{n.X, n.Y, n.Dot(a) - grow})
	}
	return p
}

// patches returns the no-fit region of b against a: the displacements of b,
// from a at the origin, at which the two overlap or come closer than gap. It is
// the union of the Minkowski sums of a's parts with b's parts reflected
// (Bennell & Oliveira 2008, "The geometry of nesting problems: a tutorial"),
// widened by a sixteen-sided ring around a disc of radius gap, and grown by
// the tiny safety distance grow.
func patches(a, b []geom.Ring, gap, grow float64) []patch {
	round := disc(gap)
	var out []patch
	for _, p := range a {
		for _, q := range b {
			sum := minkowski(p, reflected(q))
			if gap > 0 {
				sum = minkowski(sum, round)
			}
			out = append(out, newPatch(sum, grow))
		}
	}
	return withoutCovered(out)
}

// disc returns the regular 16-gon around the circle of radius r, with sides square
// to the axes so that gaps along them are exact.
func disc(r float64) geom.Ring {
	const n = 16
	outer := r / math.Cos(math.Pi/n)
	ring := make(geom.Ring, n)
	for i := range ring {
		s, c := math.Sincos(2 * math.Pi * (float64(i) + 0.5) / n)
		ring[i] = geom.Pt(outer*c, outer*s)
	}
	return ring
}

// reflected returns r turned by half a turn about the origin.
func reflected(r geom.Ring) geom.Ring {
	out := make(geom.Ring, len(r))
	for i, p := range r {
		out[i] = geom.Pt(-p.X, -p.Y)
	}
	return out
}

// minkowski returns the sum of two convex counter-clockwise rings: their edges
// merged by direction. Edges of equal direction become one.
func minkowski(p, q geom.Ring) geom.Ring {
	p, q = fromLowest(p), fromLowest(q)
	out := make(geom.Ring, 0, len(p)+len(q))
	for i, j := 0, 0; i < len(p) || j < len(q); {
		out = append(out, p[i%len(p)].Plus(q[j%len(q)]))
		turn := 0.0
		if i < len(p) && j < len(q) {
			turn = edge(p, i).Cross(edge(q, j))
			if math.Abs(turn) <= 1e-12*edge(p, i).Len()*edge(q, j).Len() {
				turn = 0
			}
		}
		if j >= len(q) || (i < len(p) && turn >= 0) {
			i++
			if j < len(q) && turn == 0 {
				j++
			}
		} else {
			j++
		}
	}
	return out
}

func edge(r geom.Ring, i int) geom.Point { return r[(i+1)%len(r)].Minus(r[i%len(r)]) }

// fromLowest returns r started at its lowest vertex, the left one of two, so
// that its edges come in order of direction from 0 to 2π.
func fromLowest(r geom.Ring) geom.Ring {
	at := 0
	for i, p := range r {
		if p.Y < r[at].Y || (p.Y == r[at].Y && p.X < r[at].X) {
			at = i
		}
	}
	return append(append(make(geom.Ring, 0, len(r)), r[at:]...), r[:at]...)
}

// withoutCovered drops the patches that lie wholly in another one; of two equal
// ones the larger index goes.
func withoutCovered(ps []patch) []patch {
	sort.SliceStable(ps, func(i, j int) bool { return ps[i].ring.Area() > ps[j].ring.Area() })
	var out []patch
	for _, p := range ps {
		covered := false
		for k := range out {
			if out[k].holds(p.ring) {
				covered = true
				break
			}
		}
		if !covered {
			out = append(out, p)
		}
	}
	return out
}

// holds reports whether every vertex of the convex ring r lies in the patch.
func (p *patch) holds(r geom.Ring) bool {
	for _, v := range r {
		for _, h := range p.planes {
			if h.depth(v.X, v.Y) < 0 {
				return false
			}
		}
	}
	return true
}
