package geom

// Side tells on which side of the line from a to b the point p lies: positive to the
// left, negative to the right, twice the area of the triangle in mm². It is subject
// to rounding.
func Side(a, b, p Point) float64 { return b.Minus(a).Cross(p.Minus(a)) }

// Straddle reports whether each of the segments ab and cd has the ends of the other
// on different sides of its line, or on it: whether they cross, touch or lie on one
// line, there also apart.
func Straddle(a, b, c, d Point) bool {
	return Side(a, b, c)*Side(a, b, d) <= 0 && Side(c, d, a)*Side(c, d, b) <= 0
}

// LinesMeet returns where the line from p along u meets that from q along v, as
// multiples of the two: p + s u = q + t v. ok is false where they run side by side.
func LinesMeet(p, u, q, v Point) (s, t float64, ok bool) {
	det := u.Cross(v)
	if det == 0 {
		return 0, 0, false
	}
	w := q.Minus(p)
	return w.Cross(v) / det, w.Cross(u) / det, true
}

// CrossingAt returns the fraction of the way from a to b at which the segment from c
// to d crosses or touches it; ok is false where it does not or runs alongside. At the
// ends there is a little slack, so that a line through the corner of an outline cannot
// slip between the two edges that meet there.
func CrossingAt(a, b, c, d Point) (s float64, ok bool) {
	const slack = 1e-12 // float noise
	s, t, ok := LinesMeet(a, b.Minus(a), c, d.Minus(c))
	return s, ok && s >= -slack && s <= 1+slack && t >= -slack && t <= 1+slack
}

// Crossing returns the point in which segments ab and cd cross or touch, as
// [CrossingAt] has it.
func Crossing(a, b, c, d Point) (p Point, ok bool) {
	s, ok := CrossingAt(a, b, c, d)
	if !ok {
		return Point{}, false
	}
	return a.Towards(b, s), true
}

// DistToSegment returns the distance of p from the segment ab, in mm.
func (p Point) DistToSegment(a, b Point) float64 { return p.Dist(a.Towards(b, project(p, a, b))) }

// project returns the clamped fraction along a→b of the foot of p.
func project(p, a, b Point) float64 {
	d := b.Minus(a)
	n := d.Dot(d)
	if n == 0 {
		return 0
	}
	return min(max(p.Minus(a).Dot(d)/n, 0), 1)
}

// Interval is an open interval of a line's parameter, empty if Lo ≥ Hi.
type Interval struct{ Lo, Hi float64 }

// Where returns the part of s in which room + rate·t ≥ 0.
func (s Interval) Where(rate, room float64) Interval {
	switch {
	case rate > 0:
		s.Lo = max(s.Lo, -room/rate)
	case rate < 0:
		s.Hi = min(s.Hi, -room/rate)
	case room < 0:
		s.Hi = s.Lo
	}
	return s
}

// Cut returns the fractions of the segment from u along d that lie in b (the method
// of Liang and Barsky, 1984).
func (b Box) Cut(u, d Point) Interval {
	return Interval{0, 1}.Where(d.X, u.X-b.Min.X).Where(-d.X, b.Max.X-u.X).
		Where(d.Y, u.Y-b.Min.Y).Where(-d.Y, b.Max.Y-u.Y)
}
