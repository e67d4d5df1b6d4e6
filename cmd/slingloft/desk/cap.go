package desk

import (
	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// capRows is how many strips a cap is drawn in, so that each is small enough to be sorted
// by its depth.
const capRows = 6

// capsOf returns the end caps over the cloth's first and last rows.
func capsOf(d *design.Design, s *hung.Shape, rows [][]Point) [][][]Point {
	out := [][][]Point{}
	if d.Cap.Kind == design.Gathered {
		return out
	}
	for e, row := range [2][]Point{rows[0], rows[len(rows)-1]} {
		section := make([]geom.Point3, len(row))
		for j, p := range row {
			section[j] = geom.Pt3(p[0], p[1], p[2])
		}
		top := s.Ending(bed.End(e), d.Cap.Kind == design.Leaning).Hem(section, d.Cap.Hollow)
		var net [][]Point
		for i := range capRows + 1 {
			strip := make([]Point, len(row))
			for j := range row {
				p := section[j].Plus(top[j].Minus(section[j]).Times(float64(i) / capRows))
				strip[j] = at(p.X, p.Y, p.Z)
			}
			net = append(net, strip)
		}
		out = append(out, net)
	}
	return out
}
