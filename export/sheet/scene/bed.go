package scene

import (
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// ending returns an end of the cloth.
func (b bed) ending(e hung.End) hung.Ending {
	return b.Shape.Ending(e, b.Design.Cap.Kind == design.Leaning)
}

// corner returns where the cloth's end meets the cord at y > 0.
func (b bed) corner(e hung.End) geom.Point3 { return b.Shape.Point(b.ending(e).Station(1), 1) }

// endRim returns an end of the cloth from above: from the left corner to the right one
// at the foot, and the other way at the head, so that both go on round the bed.
func (b bed) endRim(e hung.End) geom.Polyline {
	const n = 32
	var out geom.Polyline
	end := b.ending(e)
	for i := range n + 1 {
		t := e.Sign() * (1 - 2*float64(i)/n)
		p := b.Shape.Point(end.Station(t), t)
		out = append(out, geom.Pt(p.X, p.Y))
	}
	return out
}

// bedRows returns the bed as rows of points across it, from the head end to the foot
// end, and the numbers of the rows at the bars.
func (b bed) bedRows(across int) (rows [][]geom.Point3, bars [2]int) {
	const tail, bay = 10, 32 // steps; tails twist and need narrower ones
	half, head, foot := b.Design.Bed.Span/2, b.ending(hung.Head), b.ending(hung.Foot)
	rows = make([][]geom.Point3, 2*tail+bay+1)
	for i := range rows {
		rows[i] = make([]geom.Point3, across+1)
	}
	for j := range across + 1 {
		t := 2*float64(j)/float64(across) - 1
		at := [...]float64{head.Station(t), -half, half, foot.Station(t)}
		for i := range rows {
			part, step := 1, float64(i-tail)/bay
			if i < tail {
				part, step = 0, float64(i)/tail
			} else if i > tail+bay {
				part, step = 2, float64(i-tail-bay)/tail
			}
			rows[i][j] = b.Shape.Point(at[part]+(at[part+1]-at[part])*step, t)
		}
	}
	return rows, [2]int{tail, tail + bay}
}
