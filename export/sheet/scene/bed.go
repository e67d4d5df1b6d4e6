package scene

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// endPlane is the plane that a tail ends in: through the end of the centre line,
// upright, or square to the rising cords where the caps lean, as the flat pattern has
// it.
type endPlane struct {
	at      geom.Point3
	out, up geom.Point3 // unit vectors: across it, off the bed, and upwards in it
}

func (b bed) endPlane(e hung.End) endPlane {
	x := b.Shape.Ends[e].TailX
	rise := 0.0
	if b.Design.Cap.Kind == design.Leaning {
		rise = math.Atan(e.Sign() * b.Shape.At(x).DZ)
	}
	sin, cos := math.Sincos(rise)
	return endPlane{geom.Pt3(x, 0, b.Shape.Problem.Bottom(x)), geom.Pt3(e.Sign()*cos, 0, sin), geom.Pt3(-e.Sign()*sin, 0, cos)}
}

// point returns a point of the plane: across the bed, and up from the bottom line.
func (p endPlane) point(q geom.Point) geom.Point3 {
	return p.at.Plus(geom.Point3{Y: q.X}).Plus(p.up.Times(q.Y))
}

// corner returns where the cloth's end meets the cord at y > 0.
func (b bed) corner(e hung.End) geom.Point3 { return b.bedPoint(b.endStation(e, 1), 1) }

// endRim returns an end of the cloth from above: from the left corner to the right one
// at the foot, and the other way at the head, so that both go on round the bed.
func (b bed) endRim(e hung.End) geom.Polyline {
	const n = 32
	var out geom.Polyline
	for i := range n + 1 {
		t := e.Sign() * (1 - 2*float64(i)/n)
		p := b.bedPoint(b.endStation(e, t), t)
		out = append(out, geom.Pt(p.X, p.Y))
	}
	return out
}

// bedPoint returns the point of the bed at a station, a part t of half the girth off
// the bottom line, -1 to 1.
func (b bed) bedPoint(x, t float64) geom.Point3 {
	q := b.Shape.At(x)
	y, z := q.Section.Point(math.Abs(t) * q.Section.Girth() / 2)
	return geom.Pt3(x, math.Copysign(y, t), q.Bottom+z)
}

// endStation returns the station at which the bed reaches an end's plane, by halving
// between the bar and the end of the centre line.
func (b bed) endStation(e hung.End, t float64) float64 {
	p := b.endPlane(e)
	in, out := e.Sign()*b.Design.Bed.Span/2, p.at.X
	const halvings = 30 // a tail of a metre to a millionth of a millimetre
	for range halvings {
		x := (in + out) / 2
		if b.bedPoint(x, t).Minus(p.at).Dot(p.out) < 0 {
			in = x
		} else {
			out = x
		}
	}
	return out
}

// bedRows returns the bed as rows of points across it, from the head end to the foot
// end, and the numbers of the rows at the bars.
func (b bed) bedRows(across int) (rows [][]geom.Point3, bars [2]int) {
	const tail, bay = 10, 32 // steps; tails twist and need narrower ones
	half := b.Design.Bed.Span / 2
	rows = make([][]geom.Point3, 2*tail+bay+1)
	for i := range rows {
		rows[i] = make([]geom.Point3, across+1)
	}
	for j := range across + 1 {
		t := 2*float64(j)/float64(across) - 1
		at := [...]float64{b.endStation(hung.Head, t), -half, half, b.endStation(hung.Foot, t)}
		for i := range rows {
			part, step := 1, float64(i-tail)/bay
			if i < tail {
				part, step = 0, float64(i)/tail
			} else if i > tail+bay {
				part, step = 2, float64(i-tail-bay)/tail
			}
			rows[i][j] = b.bedPoint(at[part]+(at[part+1]-at[part])*step, t)
		}
	}
	return rows, [2]int{tail, tail + bay}
}
