package nofit

import (
	"cmp"
	"math"
	"slices"

	"slingloft/outline/geom"
)

// halfPlane holds the points with nx·x + ny·y ≥ c; (nx, ny) has length 1.
type halfPlane struct{ nx, ny, c float64 }

// depth returns how far (x, y) lies inside, negative outside.
func (h halfPlane) depth(x, y float64) float64 { return float64(h.nx*x) + float64(h.ny*y) - h.c }

// Patch is one convex part of a no-fit region.
type Patch struct {
	Ring   geom.Ring
	planes []halfPlane // one per edge of Ring
	box    geom.Box
	area   float64 // set where patches are sorted by it
}

// depth returns how far (x, y) lies inside the patch; ≤ 0 means outside.
func (p *Patch) depth(x, y float64) float64 {
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

// Span returns the open interval of t in which u + t·d lies in the patch; it is
// empty if Lo ≥ Hi. Where the line meets the patch, the interval is that of the
// patch grown by grow; a line that only touches it meets nothing.
func (p *Patch) Span(u, d geom.Point, grow float64) geom.Interval {
	if p.passes(u, d) {
		return geom.Interval{}
	}
	line := geom.Interval{Lo: math.Inf(-1), Hi: math.Inf(1)}
	ungrown, s := line, line
	for _, h := range p.planes {
		rate, room := float64(h.nx*d.X)+float64(h.ny*d.Y), h.depth(u.X, u.Y)
		if math.Abs(rate) < 1e-12 {
			rate = 0
			room -= 1e-15 // touching is outside
		}
		ungrown = ungrown.Where(rate, room)
		if rate != 0 {
			room += grow
		}
		if s = s.Where(rate, room); ungrown.Lo >= ungrown.Hi {
			return ungrown
		}
	}
	return s
}

// passes reports whether a line along an axis passes the patch's box by more than rounding.
func (p *Patch) passes(u, d geom.Point) bool {
	b := &p.box
	near := 1e-9 * (b.Max.X - b.Min.X + b.Max.Y - b.Min.Y)
	return d.Y == 0 && (u.Y < b.Min.Y-near || u.Y > b.Max.Y+near) || d.X == 0 && (u.X < b.Min.X-near || u.X > b.Max.X+near)
}

// newPatch builds a patch from a convex counter-clockwise ring.
func newPatch(ring geom.Ring) Patch {
	p := Patch{Ring: ring, box: ring.Bounds(), planes: make([]halfPlane, 0, len(ring))}
	for i, a := range ring {
		n := edge(ring, i).Left().Unit()
		p.planes = append(p.planes, halfPlane{n.X, n.Y, n.Dot(a)})
	}
	return p
}

// Patches returns the no-fit region of b against a: the displacements of b,
// from a at the origin, at which the two overlap or come closer than gap. It is
// the union of the Minkowski sums of a's parts with b's parts reflected
// (Bennell & Oliveira 2008, "The geometry of nesting problems: a tutorial"),
// widened by a sixteen-sided ring around a disc of radius gap.
func Patches(a, b []geom.Ring, gap float64) []Patch {
	round := disc(gap)
	var out []Patch
	for _, p := range a {
		for _, q := range b {
			sum := minkowski(p, reflected(q))
			if gap > 0 {
				sum = minkowski(sum, round)
			}
			out = append(out, newPatch(sum))
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
		ring[i] = geom.Direction(2 * math.Pi * (float64(i) + 0.5) / n).Times(outer)
	}
	return ring
}

// reflected returns r turned by half a turn about the origin.
func reflected(r geom.Ring) geom.Ring { return r.Moved(geom.Motion{Turn: math.Pi}) }

// minkowski returns the sum of two convex counter-clockwise rings: their edges
// merged by direction. Edges of equal direction become one.
func minkowski(p, q geom.Ring) geom.Ring {
	p, q = p.FromLowest(), q.FromLowest()
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

// withoutCovered drops the patches that lie wholly in another one; of two equal
// ones the larger index goes.
func withoutCovered(ps []Patch) []Patch {
	for i := range ps {
		ps[i].area = ps[i].Ring.Area()
	}
	slices.SortStableFunc(ps, func(p, q Patch) int { return cmp.Compare(q.area, p.area) })
	var out []Patch
	for i := range ps {
		covered := false
		for k := 0; k < len(out) && !covered; k++ {
			covered = out[k].holds(&ps[i])
		}
		if !covered {
			out = append(out, ps[i])
		}
	}
	return out
}

// holds reports whether q lies in p.
func (p *Patch) holds(q *Patch) bool {
	if !p.box.ContainsBox(q.box) {
		return false
	}
	for _, v := range q.Ring {
		for _, h := range p.planes {
			if h.depth(v.X, v.Y) < 0 {
				return false
			}
		}
	}
	return true
}
