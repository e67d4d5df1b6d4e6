package desk

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// Who lies in it is a rough drawing, as in the build sheet's side view: parts of the
// stature from memory. Only the breadth over the shoulders is the design's own, where it
// is given.

// girths is the body from the crown down: part of the stature, half breadth and height
// over the back as parts of the stature. Half the breadth of the shoulders stands as 0.
func girths() [][3]float64 {
	return [][3]float64{{0.002, 0.012, 0.06}, {0.02, 0.03, 0.11}, {0.06, 0.043, 0.13}, {0.1, 0.04, 0.12}, {0.13, 0.032, 0.075}, {0.15, 0.036, 0.07},
		{0.18, 0.09, 0.1}, {0.22, 0, 0.12}, {0.28, 0.12, 0.125}, {0.36, 0.1, 0.115}, {0.44, 0.095, 0.115}, {0.5, 0.1, 0.12}, {0.58, 0.1, 0.1},
		{0.68, 0.085, 0.085}, {0.73, 0.08, 0.08}, {0.8, 0.075, 0.075}, {0.9, 0.06, 0.05}, {0.95, 0.05, 0.055}, {0.97, 0.055, 0.13}, {0.99, 0.055, 0.14}, {1, 0.03, 0.03}}
}

// usualShoulders is the breadth over the shoulders as a part of the stature where the
// design names none; from memory.
const usualShoulders = 0.26

// ringAt returns the ring round the body at a station in space, from its left side over
// it and back below it; nil where nobody lies.
func ringAt(d *design.Design, s *hung.Shape, x float64) []Point {
	tall, crown := d.Sleeper.Stature, d.Sleeper.Crown-d.Bed.Span/2
	if tall <= 0 {
		return nil
	}
	part := (x - crown) / tall
	g := girths()
	for i := 1; i < len(g); i++ {
		a, b := g[i-1], g[i]
		if part < a[0] || part > b[0] {
			continue
		}
		t := (part - a[0]) / (b[0] - a[0])
		half := func(v [3]float64) float64 {
			if v[1] > 0 {
				return v[1] * tall
			}
			if d.Sleeper.Shoulders > 0 {
				return d.Sleeper.Shoulders / 2
			}
			return usualShoulders / 2 * tall
		}
		wide, high := half(a)+(half(b)-half(a))*t, (a[2]+(b[2]-a[2])*t)*tall
		if d.Sleeper.Lies == design.OnSide && part > 0.13 {
			wide, high = high/2, 2*wide
		}
		return ring(s.At(x), wide, high)
	}
	return nil
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

// sleeperOf returns rings along the body, as far as it lies on the cloth.
func sleeperOf(d *design.Design, s *hung.Shape) [][]Point {
	tall, crown := d.Sleeper.Stature, d.Sleeper.Crown-d.Bed.Span/2
	head, foot := s.TailEnds()
	var out [][]Point
	for _, g := range girths() {
		if x := crown + g[0]*tall; tall > 0 && x >= head && x <= foot {
			out = append(out, ringAt(d, s, x))
		}
	}
	return out
}
