package flat

import (
	"math"
	"sort"

	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// endPlane is the plane in which a tail ends, in its half's own coordinates, x
// outwards: through the end of the centre line, vertical or square to the rising
// cords.
type endPlane struct {
	at       geom.Point3
	out, up  geom.Point3 // unit vectors: across the plane, and upwards within it
	vertical bool
}

func newEndPlane(s *hung.Shape, e hung.End, leaning bool) endPlane {
	x := s.Ends[e].TailX
	rise := 0.0
	if leaning {
		rise = math.Atan(e.Sign() * s.At(x).DZ)
	}
	sin, cos := math.Sincos(rise)
	return endPlane{
		at:  geom.Pt3(math.Abs(x), 0, s.Problem.Bottom(x)),
		out: geom.Pt3(cos, 0, sin), up: geom.Pt3(-sin, 0, cos),
		vertical: !leaning,
	}
}

// past returns how far p lies outside the plane, mm.
func (p endPlane) past(q geom.Point3) float64 { return q.Minus(p.at).Dot(p.out) }

// sectionCurve is the line in which the hung bed meets an end plane, from the
// bottom line to the cord.
type sectionCurve struct {
	q      []float64 // length along the section of that station, mm
	runs   []float64 // length along the curve, mm
	points geom.Polyline
}

// run returns the length along the curve at which its point has the section
// length q; past its end, the whole length.
func (c sectionCurve) run(q float64) float64 {
	i := sort.SearchFloat64s(c.q, q)
	if i == 0 {
		return 0
	}
	if i == len(c.q) {
		return c.runs[i-1]
	}
	t := (q - c.q[i-1]) / (c.q[i] - c.q[i-1])
	return c.runs[i-1] + t*(c.runs[i]-c.runs[i-1])
}

// curve follows the bed from the bottom line up to the cord, which lies at
// section length last.
func (p endPlane) curve(bed Surface, last float64) (sectionCurve, error) {
	// Chords of about 2 mm stay within 0.01 mm of the length in all over an
	// underbody of 100 mm.
	const step = 2.0
	n := int(math.Ceil(last / step))
	var c sectionCurve
	a := p.at.X
	for i := range n + 1 {
		q := last * float64(i) / float64(n)
		pt, at, err := p.meet(bed, a, q)
		if err != nil {
			return c, err
		}
		a = at
		d := pt.Minus(p.at)
		c.q = append(c.q, q)
		c.points = append(c.points, geom.Pt(d.Y, d.Dot(p.up)))
		run := 0.0
		if i > 0 {
			run = c.runs[i-1] + c.points[i].Dist(c.points[i-1])
		}
		c.runs = append(c.runs, run)
	}
	return c, nil
}

// meet finds the point of the bed at section length q that lies in the plane,
// starting from station a.
func (p endPlane) meet(bed Surface, a, q float64) (geom.Point3, float64, error) {
	if p.vertical {
		pt, err := bed(p.at.X, q)
		return pt, p.at.X, err
	}
	const delta, maxSteps = 1e-4, 30
	for range maxSteps {
		pt, err := bed(a, q)
		if err != nil {
			return pt, a, err
		}
		miss := p.past(pt)
		if math.Abs(miss) < settled {
			return pt, a, nil
		}
		next, err := bed(a+delta, q)
		if err != nil {
			return pt, a, err
		}
		a -= miss * delta / (p.past(next) - miss)
	}
	return geom.Point3{}, a, ErrOpenEdge
}
