package hung

import (
	"math"

	"slingloft/outline/geom"
)

// Point returns the point of the bed at a station, a part t of half the girth off the
// bottom line, -1 to 1.
func (s *Shape) Point(x, t float64) geom.Point3 {
	q := s.At(x)
	y, z := q.Section.Point(math.Abs(t) * q.Section.Girth() / 2)
	return geom.Pt3(x, math.Copysign(y, t), q.Bottom+z)
}

// Ending is an end of the cloth: the plane through the end of a tail's centre line that
// the tail ends in.
type Ending struct {
	s       *Shape
	end     End
	At      geom.Point3 // the end of the centre line
	Out, Up geom.Point3 // unit vectors: across the plane, off the bed, and upwards in it
}

// Ending returns an end of the cloth: upright, or square to the rising cords, as the flat
// pattern has it.
func (s *Shape) Ending(e End, leaning bool) Ending {
	x := s.Ends[e].TailX
	rise := 0.0
	if leaning {
		rise = math.Atan(e.Sign() * s.At(x).DZ)
	}
	sin, cos := math.Sincos(rise)
	return Ending{s, e, geom.Pt3(x, 0, s.Problem.Bottom(x)), geom.Pt3(e.Sign()*cos, 0, sin), geom.Pt3(-e.Sign()*sin, 0, cos)}
}

// Point returns a point of the plane: across the bed, and up from the bottom line.
func (e Ending) Point(q geom.Point) geom.Point3 {
	return e.At.Plus(geom.Point3{Y: q.X}).Plus(e.Up.Times(q.Y))
}

// Station returns the station at which the bed, a part t of half the girth off the bottom
// line, reaches the plane, by halving between the bar and the end of the centre line.
func (e Ending) Station(t float64) float64 {
	in, out := e.end.Sign()*e.s.Problem.Bed.Span/2, e.At.X
	if e.Up.X == 0 {
		return out // upright
	}
	const halvings = 30 // a tail of a metre to a millionth of a millimetre
	for range halvings {
		x := (in + out) / 2
		if e.s.Point(x, t).Minus(e.At).Dot(e.Out) < 0 {
			in = x
		} else {
			out = x
		}
	}
	return out
}

// Hem returns a cap's top edge over points of the cloth's end, which go from one cord to
// the other: as high as the cords, but for what it dips between them, a parabola as deep
// as the hollow, mm.
func (e Ending) Hem(section []geom.Point3, hollow float64) []geom.Point3 {
	first, last := section[0], section[len(section)-1]
	out := make([]geom.Point3, len(section))
	for j, p := range section {
		t := (p.Y - first.Y) / (last.Y - first.Y)
		out[j] = e.Point(geom.Pt(p.Y, first.Minus(e.At).Dot(e.Up)-float64(hollow*4*t*(1-t))))
	}
	return out
}
