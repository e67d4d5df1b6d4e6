package geom

// Within returns the stretches of the line that lie in the box.
func (l Polyline) Within(box Box) []Polyline {
	var out []Polyline
	var run Polyline
	for i := 1; i < len(l); i++ {
		a, b, ok := box.Part(l[i-1], l[i])
		if !ok {
			continue
		}
		if n := len(run); n > 0 && run[n-1] != a {
			out = append(out, run)
			run = nil
		}
		if len(run) == 0 {
			run = Polyline{a}
		}
		run = append(run, b)
	}
	if len(run) > 0 {
		out = append(out, run)
	}
	return out
}

// Within returns the stretches of the ring that lie in the box, open; one that passes the
// ring's first point is in one part.
func (r Ring) Within(box Box) []Polyline {
	pts := r.Closed()
	runs := pts.Within(box)
	if n := len(runs); n > 1 && runs[0][0] == pts[0] && runs[n-1][len(runs[n-1])-1] == pts[0] {
		runs[0] = append(runs[n-1], runs[0][1:]...)
		runs = runs[:n-1]
	}
	return runs
}

// Part returns the part of the segment from p to q that lies in the box, exactly where it
// is not cut. A part without length counts as none, except of a segment that has none
// itself.
func (b Box) Part(p, q Point) (from, to Point, ok bool) {
	in := b.Cut(p, q.Minus(p))
	if p != q && in.Lo >= in.Hi || p == q && !b.Contains(p) {
		return p, q, false
	}
	from, to = p, q
	if in.Lo > 0 {
		from = p.Towards(q, in.Lo)
	}
	if in.Hi < 1 {
		to = p.Towards(q, in.Hi)
	}
	return from, to, true
}
