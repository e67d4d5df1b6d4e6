package dxf

import (
	"math"

	"slingloft/export"
	"slingloft/outline/geom"
)

// maxFit bounds the points on a spline that is given by them.
const maxFit = 10_000

// fitted returns the curve through the points on it as chords within the tolerance. It
// is the cubic spline over the lengths of the chords between them that CAD programs
// draw, with the directions at its ends where the file gives them and unbent there where
// it does not (de Boor, A Practical Guide to Splines, 1978, chapter IV). How CAD programs
// end a curve without directions is not known: it is looseEnded.
func (s *spline) fitted(tolerance float64, closed bool) (geom.Polyline, error) {
	pts := s.fit
	if n := len(pts); closed && n > 2 && pts[0].Dist(pts[n-1]) > tolerance {
		return nil, export.Refuse(export.SplineParted)
	}
	q := geom.Polyline{pts[0]}
	for _, p := range pts[1:] {
		if p.Dist(q[len(q)-1]) > 1e-9 {
			q = append(q, p)
		}
	}
	if len(q) > maxFit {
		return nil, export.Refuse(export.SplineTooFine, len(q), maxFit)
	}
	if len(q) < 3 {
		return q, nil
	}
	c := cubics{at: q, closed: closed}
	c.solve(s.ends)
	out := geom.Polyline{q[0]}
	for i := range len(q) - 1 {
		if out = c.chords(out, i, tolerance); len(out) > export.MaxPoints {
			return nil, export.Refuse(export.TooManyPoints)
		}
	}
	return out, nil
}

// looseEnded reports whether programs may draw the ends of the curve in ways of their own.
func (s *spline) looseEnded(closed bool) bool {
	return len(s.controls) == 0 && len(s.fit) > 2 && !closed && (s.ends[0].Len() == 0 || s.ends[1].Len() == 0)
}

// cubics is a cubic spline through points.
type cubics struct {
	at     geom.Polyline
	step   []float64    // of the parameter, from each point to the next
	slope  []geom.Point // by the parameter, at each point
	closed bool         // it runs on smoothly from the last point, which is the first
}

// solve finds the slopes at which second derivatives agree: at inner points
// m[i−1]/h[i−1] + 2 (1/h[i−1] + 1/h[i]) m[i] + m[i+1]/h[i] = 3 (d[i−1]/h[i−1] + d[i]/h[i]),
// with d the slopes of the chords.
func (c *cubics) solve(ends [2]geom.Point) {
	n := len(c.at)
	c.step, c.slope = make([]float64, n-1), make([]geom.Point, n)
	chord := make([]geom.Point, n-1)
	for i := range n - 1 {
		c.step[i] = c.at[i].Dist(c.at[i+1])
		chord[i] = c.at[i+1].Minus(c.at[i]).Times(1 / c.step[i])
	}
	if c.closed {
		c.periodic(chord)
		return
	}
	low, mid, high, right := make([]float64, n), make([]float64, n), make([]float64, n), make([]geom.Point, n)
	for i := 1; i < n-1; i++ {
		a, b := 1/c.step[i-1], 1/c.step[i]
		low[i], mid[i], high[i] = a, 2*(a+b), b
		right[i] = chord[i-1].Times(3 * a).Plus(chord[i].Times(3 * b))
	}
	mid[0], high[0], right[0] = 2, 1, chord[0].Times(3) // no bend
	if ends[0].Len() > 0 {
		mid[0], high[0], right[0] = 1, 0, ends[0].Unit()
	}
	low[n-1], mid[n-1], right[n-1] = 1, 2, chord[n-2].Times(3)
	if ends[1].Len() > 0 {
		low[n-1], mid[n-1], right[n-1] = 0, 1, ends[1].Unit()
	}
	copy(c.slope, thomas(low, mid, high, right))
}

// periodic is solve for a curve that runs on from its end: the first unknown stands
// for the last as well, and what it adds is solved for on its own.
func (c *cubics) periodic(chord []geom.Point) {
	n := len(chord) // unknowns
	low, mid, high := make([]float64, n), make([]float64, n), make([]float64, n)
	right, unit := make([]geom.Point, n), make([]geom.Point, n)
	for i := range n {
		before := (i + n - 1) % n
		a, b := 1/c.step[before], 1/c.step[i]
		low[i], mid[i], high[i] = a, 2*(a+b), b
		right[i] = chord[before].Times(3 * a).Plus(chord[i].Times(3 * b))
	}
	// The corners of the matrix are taken off by a rank-one change (Sherman and
	// Morrison): A = T + u vᵀ, u = (g, 0 …, high[n−1]), v = (1, 0 …, low[0]/g).
	g := -mid[0]
	mid[0] -= g
	mid[n-1] -= float64(high[n-1] * low[0] / g)
	unit[0], unit[n-1] = geom.Pt(g, 0), geom.Pt(high[n-1], 0)
	y, z := thomas(low, mid, high, right), thomas(low, mid, high, unit)
	part := low[0] / g
	over := 1 + z[0].X + float64(part*z[n-1].X)
	k := y[0].Plus(y[n-1].Times(part)).Times(1 / over)
	for i := range n {
		c.slope[i] = y[i].Minus(k.Times(z[i].X))
	}
	c.slope[n] = c.slope[0]
}

// thomas solves a system of three diagonals, of which low[0] and high's last are not
// used. They are dominant here, so that no pivots are sought.
func thomas(low, mid, high []float64, right []geom.Point) []geom.Point {
	n := len(mid)
	c, d := make([]float64, n), make([]geom.Point, n)
	for i := range n {
		m, r := mid[i], right[i]
		if i > 0 {
			m -= float64(low[i] * c[i-1])
			r = r.Minus(d[i-1].Times(low[i]))
		}
		c[i], d[i] = high[i]/m, r.Times(1/m)
	}
	for i := n - 2; i >= 0; i-- {
		d[i] = d[i].Minus(d[i+1].Times(c[i]))
	}
	return d
}

// chords adds the points of stretch i behind its first. A chord over a step u of a cubic
// lies within u²/8 of its greatest second derivative, which is at an end.
func (c *cubics) chords(out geom.Polyline, i int, tolerance float64) geom.Polyline {
	const most = 2000
	p, q, h := c.at[i], c.at[i+1], c.step[i]
	m, n := c.slope[i].Times(h), c.slope[i+1].Times(h)
	d := q.Minus(p)
	bend := math.Max(d.Times(6).Minus(m.Times(4)).Minus(n.Times(2)).Len(), d.Times(-6).Plus(m.Times(2)).Plus(n.Times(4)).Len())
	parts := most
	if k := math.Sqrt(bend / (8 * tolerance)); k < most {
		parts = max(1, int(math.Ceil(k)))
	}
	for k := 1; k < parts; k++ {
		u := float64(k) / float64(parts)
		v := 1 - u
		// Hermite's form.
		out = append(out, p.Times(float64(1+2*u)*v*v).Plus(m.Times(u*v*v)).Plus(q.Times(u*u*float64(3-2*u))).Minus(n.Times(u*u*v)))
	}
	return append(out, q)
}
