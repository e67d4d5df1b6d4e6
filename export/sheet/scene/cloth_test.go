package scene

import (
	"slices"
	"strings"
	"testing"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/giventest"
	"slingloft/export/sheet/picture"
	"slingloft/outline/drape"
	"slingloft/outline/geom"
)

// Both sides of the cloth are drawn, each triangle once on either; what is slack has its
// own colour, and the part of the area that it takes is told.
func TestDrawn(t *testing.T) {
	d := giventest.Hung(t)
	d.Draped = &given.Draped{Hung: drape.Hung{
		Points: []geom.Point3{geom.Pt3(-500, 0, 0), geom.Pt3(500, 0, 0), geom.Pt3(500, 400, 200), geom.Pt3(-500, 400, 200)},
		Edge:   []geom.Point3{geom.Pt3(-500, 400, 200), geom.Pt3(500, 400, 200)},
		Faces:  [][3]int{{0, 1, 2}, {0, 2, 3}},
		Cloth:  []drape.Cloth{{Weft: 0.8, Area: 3}, {Weft: 0, Area: 1}},
	}}
	p := Drawn(&d)
	triangles, slack := 0, 0
	for _, it := range p.Items {
		path, _ := it.(picture.Path)
		for _, l := range path.Lines {
			if path.Filled && len(l) == 3 {
				triangles++
				if path.Fill == picture.Second {
					slack++
				}
			}
			for _, q := range l {
				if !q.Finite() || q.X < 0 || q.Y < 0 || q.X > p.Width || q.Y > p.Height {
					t.Fatalf("%v lies outside of %g by %g", q, p.Width, p.Height)
				}
			}
		}
	}
	if triangles != 4 || slack != 2 {
		t.Errorf("%d triangles are drawn, %d of them slack", triangles, slack)
	}
	if !slices.Contains(lettered(p), "up to 0.80 N/mm") || !strings.Contains(p.Desc, "25 %") || len(p.Clashes()) > 0 {
		t.Errorf("%q, %q, %q", lettered(p), p.Desc, p.Clashes())
	}
}
