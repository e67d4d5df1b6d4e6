package desk

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/room"
)

// Who lies in it is a rough drawing: the body that package room knows, with its ends
// rounded, laid along the bottom line, so that in a lifted bed it covers less of x.

// lying is a sleeper in a bed.
type lying struct {
	s      *hung.Shape
	body   room.Profile
	crown  float64 // station, mm
	covers float64 // of the bed, mm; 0: nobody lies there
}

func lies(d *design.Design, s *hung.Shape) lying {
	flat := d.Bed.Lift.Cos()
	return lying{s, room.ProfileOf(d.Sleeper), d.Sleeper.Crown*flat - d.Bed.Span/2, max(d.Sleeper.Stature, 0) * flat}
}

// roundedSoles is the part of the stature over which the drawn body is rounded at the
// soles, own choice; at the crown it is half a head.
const roundedSoles = 0.03

// round returns half breadth and height of the drawn body at a place, a part of the
// stature from the crown.
func (l lying) round(place float64) (wide, high float64) {
	breadth, depth := l.body.Round(place)
	part := 1.0
	for _, end := range [2][2]float64{{place, l.body.Joints()[1] / 2}, {1 - place, roundedSoles}} {
		if in := max(1-end[0]/end[1], 0); in > 0 {
			part = math.Sqrt(max(1-in*in, 0))
		}
	}
	return part * breadth / 2, part * depth
}

// ringAt returns the ring round the body at a station, from its left side over it and
// back below it; nil where nobody lies.
func (l lying) ringAt(x float64) []Point {
	place := (x - l.crown) / l.covers
	if !(l.covers > 0 && place > 0 && place < 1) {
		return nil
	}
	wide, high := l.round(place)
	return ring(l.s.At(x), wide, high)
}

// above is by how much the body is drawn over the cloth, mm, so that it is seen.
const above = 4.0

// ring lays a body of a half breadth and a height into a section: below it follows the
// cloth, and it is no broader than where the cloth reaches over half its height.
func ring(st hung.Station, wide, high float64) []Point {
	s := st.Section
	floor := func(y float64) float64 {
		if t := s.Radius * math.Sin(s.Wall); y > t {
			return s.Radius*(1-math.Cos(s.Wall)) + (y-t)*math.Tan(min(s.Wall, 1.5)) + above
		}
		return s.Radius - math.Sqrt(s.Radius*s.Radius-y*y) + above
	}
	for wide > 1 && floor(wide) > high/2 {
		wide -= 2
	}
	rim := floor(wide)
	const steps = 8
	out := make([]Point, 0, 4*steps)
	for i := range 2 * steps {
		y := -wide * math.Cos(math.Pi*float64(i)/(2*steps))
		out = append(out, at(st.X, y, st.Bottom+rim+(high-rim)*math.Sqrt(max(0, 1-y*y/(wide*wide)))))
	}
	for i := range 2 * steps {
		y := wide * math.Cos(math.Pi*float64(i)/(2*steps))
		out = append(out, at(st.X, y, st.Bottom+floor(math.Abs(y))))
	}
	return out
}

// rings returns rings along the body, as far as it lies on the cloth.
func (l lying) rings() [][]Point {
	const steps = 40
	head, foot := l.s.TailEnds()
	var out [][]Point
	for i := range steps + 1 {
		// Nearer to each other at both ends, which are round.
		x := l.crown + l.covers*(1-math.Cos(math.Pi*(0.02+0.96*float64(i)/steps)))/2
		if x >= head && x <= foot && l.covers > 0 {
			out = append(out, l.ringAt(x))
		}
	}
	return out
}
