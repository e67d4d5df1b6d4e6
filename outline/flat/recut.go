package flat

import (
	"math"

	"slingloft/outline/geom"
	"slingloft/outline/numeric"
)

// Recut returns the body times(u) times as wide at every flat place u: its points move along
// the weft. Hung, every stretch of an edge becomes as much longer as it does flat, see
// [Widened]; the end sections become deeper or flatter between the same cords.
func (b Body) Recut(times func(u float64) float64) Body {
	b.Side, b.Tips = Widened(b.Side, b.Tips, times)
	for e := range b.Ends {
		b.Bars[e] = wider(b.Bars[e], times)
		b.Ends[e] = b.Ends[e].over(wider(b.Ends[e].Flat, times))
		b.Sections[e] = deepened(b.Sections[e], b.Ends[e].HungLength())
	}
	b.recut = times
	return b
}

// Widened returns a side cut again and the running lengths of its bar tips. A side that no
// longer runs as it did is another length from place to place: its cloth slides along the
// cord, which draws it neither long nor short. From bar to bar the cord keeps its length,
// and what the side differs from it is spread evenly; at the ends the corners slide.
func Widened(side Edge, tips [2]float64, times func(u float64) float64) (Edge, [2]float64) {
	out := side.over(wider(side.Flat, times))
	at := func(s float64) float64 {
		i := 1
		for i < len(side.Hung)-1 && side.Hung[i] < s {
			i++
		}
		t := (s - side.Hung[i-1]) / (side.Hung[i] - side.Hung[i-1])
		return out.Hung[i-1] + float64(t*(out.Hung[i]-out.Hung[i-1]))
	}
	a, b := at(tips[0]), at(tips[1])
	long := tips[1] - tips[0]
	for i, s := range out.Hung {
		switch {
		case s > b:
			out.Hung[i] = s - b + a + long
		case s > a:
			out.Hung[i] = a + float64((s-a)/(b-a)*long)
		}
	}
	return out, [2]float64{a, a + long}
}

// wider returns a line with its points moved along the weft.
func wider(l geom.Polyline, times func(u float64) float64) geom.Polyline {
	out := make(geom.Polyline, len(l))
	for i, p := range l {
		out[i] = geom.Pt(p.X, float64(p.Y*times(p.X)))
	}
	return out
}

// over returns the edge over another line of as many points, hung by the same part of every
// stretch.
func (e Edge) over(l geom.Polyline) Edge {
	out := Edge{Flat: l, Hung: make([]float64, len(l))}
	for i := 1; i < len(l); i++ {
		part := l[i].Dist(l[i-1]) / e.Flat[i].Dist(e.Flat[i-1])
		out.Hung[i] = out.Hung[i-1] + float64(part*(e.Hung[i]-e.Hung[i-1]))
	}
	return out
}

// deepened returns a section with its heights stretched until it is as long as given. One
// that cannot be as short stays the line between its ends.
func deepened(l geom.Polyline, long float64) geom.Polyline {
	by := func(k float64) geom.Polyline {
		out := make(geom.Polyline, len(l))
		for i, p := range l {
			out[i] = geom.Pt(p.X, float64(p.Y*k))
		}
		return out
	}
	if !(l.Length() > 0) {
		return l
	}
	k, err := numeric.Root(func(k float64) float64 { return by(k).Length() - long }, 0, 2*math.Max(long/l.Length(), 1), 1e-9)
	if err != nil {
		k = 0
	}
	return by(k)
}
