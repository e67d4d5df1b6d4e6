package geom

import "slices"

// Ring is a closed outline; the last vertex joins the first, which is not
// repeated. Counter-clockwise rings have positive area.
type Ring []Point

// Area returns the signed area in mm², positive for counter-clockwise rings.
func (r Ring) Area() float64 {
	if len(r) < 3 {
		return 0
	}
	sum := 0.0
	for i := 1; i+1 < len(r); i++ {
		sum += r[i].Minus(r[0]).Cross(r[i+1].Minus(r[0]))
	}
	return sum / 2
}

// Perimeter returns the length of the outline in mm.
func (r Ring) Perimeter() float64 { return r.Closed().Length() }

// Closed returns the ring as a polyline that ends where it starts.
func (r Ring) Closed() Polyline {
	if len(r) == 0 {
		return nil
	}
	return append(slices.Clone(Polyline(r)), r[0])
}

// Bounds returns the smallest box around r.
func (r Ring) Bounds() Box { return BoxOf(r...) }

// Reversed returns r run the other way round.
func (r Ring) Reversed() Ring { return Ring(Polyline(r).Reversed()) }

// CounterClockwise returns r, reversed if it runs clockwise.
func (r Ring) CounterClockwise() Ring {
	if r.Area() < 0 {
		return r.Reversed()
	}
	return r
}

// Moved returns r with the motion m applied; a mirrored ring is run the other
// way round, so that its orientation stays.
func (r Ring) Moved(m Motion) Ring {
	out := Ring(Polyline(r).Moved(m))
	if m.Mirror {
		out = out.Reversed()
	}
	return out
}

// Contains reports whether p lies strictly inside r by the crossing rule;
// points on the outline may fall either way.
func (r Ring) Contains(p Point) bool {
	in := false
	for i, j := 0, len(r)-1; i < len(r); j, i = i, i+1 {
		a, b := r[i], r[j]
		if (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X+(p.Y-a.Y)*(b.X-a.X)/(b.Y-a.Y) {
			in = !in
		}
	}
	return in
}

// LevelCrossings returns the places along x, rising, at which the outline crosses the
// level line at y. There is an even number of them.
func (r Ring) LevelCrossings(y float64) []float64 {
	var out []float64
	for i, a := range r {
		b := r[(i+1)%len(r)]
		if (a.Y > y) != (b.Y > y) {
			out = append(out, a.X+float64((y-a.Y)/(b.Y-a.Y)*(b.X-a.X)))
		}
	}
	slices.Sort(out)
	return out
}

// Deduped returns r without vertices closer than tol mm to the one before.
func (r Ring) Deduped(tol float64) Ring {
	var out Ring
	for _, p := range r {
		if len(out) == 0 || p.Dist(out[len(out)-1]) > tol {
			out = append(out, p)
		}
	}
	for len(out) > 1 && out[0].Dist(out[len(out)-1]) <= tol {
		out = out[:len(out)-1]
	}
	return out
}

// FromLowest returns r started at its lowest vertex, the left one of two, so that
// the edges of a convex counter-clockwise ring come in order of direction from 0 to 2π.
func (r Ring) FromLowest() Ring {
	at := 0
	for i, p := range r {
		if p.Y < r[at].Y || (p.Y == r[at].Y && p.X < r[at].X) {
			at = i
		}
	}
	return append(append(make(Ring, 0, len(r)), r[at:]...), r[:at]...)
}
