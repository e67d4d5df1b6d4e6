package scene

import (
	"fmt"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// facet is a flat part of the scene: a lit area or a stroke.
type facet struct {
	points []geom.Point3
	ink    picture.Ink
	width  float64 // of a stroke; 0: an area
}

// Solid draws the hung shape in space, what lies behind first. The bed is cut
// across into slabs, from end to end, and each slab along into strips; two
// neighbours always have a plane between them, so that their order is known and
// nothing is sorted by its distance, which goes wrong where one part is long.
func Solid(d *given.Data) picture.Picture {
	b := bed{d}
	c := newCamera(-0.95, 0.5)
	scene := b.scene(c)
	box := geom.EmptyBox()
	for _, f := range scene {
		for _, q := range f.points {
			box = box.With(c.flat(q))
		}
	}
	k := (picture.Wide - 16) / box.Width()
	p := picture.Picture{ID: "view-solid", Title: b.Say.Hung.Solid.Title, Width: picture.Wide, Height: k*box.Height() + 8}
	v := picture.Fit(box, geom.BoxOf(geom.Pt(8, 4), geom.Pt(picture.Wide-8, p.Height-4)))
	for _, f := range scene {
		line := make(geom.Polyline, len(f.points))
		for i, q := range f.points {
			line[i] = v.At(c.flat(q))
		}
		p.Items = appendFacet(p.Items, f, line)
	}
	sh := b.Shape
	p.Desc = fmt.Sprintf(b.Say.Hung.Solid.Desc, b.Round(b.Design.Bed.Span), b.Style.Angle(sh.At(0).Section.Wall))
	return p
}

// appendFacet adds a facet; neighbours in the order of painting that look alike
// share one path.
func appendFacet(items []picture.Item, f facet, line geom.Polyline) []picture.Item {
	path := picture.Path{Lines: []geom.Polyline{line}, Stroke: f.ink, Width: f.width}
	if f.width == 0 {
		// The stroke closes the hair's breadth that smoothing leaves between areas.
		path.Closed, path.Filled, path.Fill, path.Width = true, true, f.ink, 0.25
	}
	if n := len(items); n > 0 {
		if last, ok := items[n-1].(picture.Path); ok && last.Stroke == path.Stroke && last.Width == path.Width {
			last.Lines = append(last.Lines, line)
			items[n-1] = last
			return items
		}
	}
	return append(items, path)
}

// Strokes of the scene, mm on paper.
const (
	cordStroke = 0.6
	barStroke  = 1.3
	hemStroke  = 0.3
)

// part is what lies between two rows of the bed, or at one of them.
type part struct {
	facets []facet
	row    int // behind which the next part lies
}

// scene returns all facets in the order of painting.
func (b bed) scene(c camera) []facet {
	const across = 36
	rows, bars := b.bedRows(across)
	last := len(rows) - 1
	parts := []part{{b.legs(hung.Head), 0}, {b.capFacets(c, hung.Head, rows[0]), 0}}
	for i := 1; i <= last; i++ {
		parts = append(parts, part{slab(c, rows[i-1], rows[i]), i})
		for _, r := range bars {
			if r == i {
				parts = append(parts, part{bar(rows[i]), i})
			}
		}
	}
	parts = append(parts, part{b.capFacets(c, hung.Foot, rows[last]), last}, part{b.legs(hung.Foot), last})
	var out []facet
	for _, k := range backToFront(len(parts), func(k int) bool {
		row := rows[parts[k].row]
		up := row[0].Plus(row[across]).Times(0.5).Minus(row[across/2])
		return c.out.Dot(geom.Pt3(up.Z, 0, -up.X)) > 0
	}) {
		out = append(out, parts[k].facets...)
	}
	return out
}

// slab returns the bed between two rows: its strips, and the cord at either edge.
func slab(c camera, a, b []geom.Point3) []facet {
	n := len(a) - 1 // strips 1 to n lie between the cords 0 and n + 1
	order := backToFront(n+2, func(k int) bool {
		d := b[k].Minus(a[k])
		return c.out.Dot(geom.Pt3(-d.Y, d.X, 0)) > 0
	})
	// A cord behind its strip lies on the strip's very edge and is drawn on it.
	if k := order[0]; k == 0 || k == n+1 {
		order[0], order[1] = order[1], order[0]
	}
	shade := func(k int) picture.Ink { return lit(c, a[k-1], a[k], b[k], b[k-1]).ink }
	var out []facet
	for i := 0; i < len(order); i++ {
		k := order[i]
		switch k {
		case 0:
			out = append(out, cordFacet(a[0], b[0]))
		case n + 1:
			out = append(out, cordFacet(a[n], b[n]))
		default:
			ink, low, high := shade(k), k, k
			for ; i+1 < len(order); i++ { // strips that look alike are one
				next := order[i+1]
				if next != low-1 && next != high+1 || next < 1 || next > n || shade(next) != ink {
					break
				}
				low, high = min(low, next), max(high, next)
			}
			out = append(out, facet{between(a[low-1:high+1], b[low-1:high+1]), ink, 0})
		}
	}
	return out
}

// between returns the outline of what lies between two rows.
func between(a, b []geom.Point3) []geom.Point3 {
	out := append([]geom.Point3{}, a...)
	for j := len(b) - 1; j >= 0; j-- {
		out = append(out, b[j])
	}
	return out
}

func cordFacet(a, b geom.Point3) facet { return facet{[]geom.Point3{a, b}, picture.Cord, cordStroke} }

func bar(row []geom.Point3) []facet {
	return []facet{{[]geom.Point3{row[0], row[len(row)-1]}, picture.Bar, barStroke}}
}

// capFacets closes an end by strips from its section up to the cap's top edge, and
// draws both edges; a gathered end stays open.
func (b bed) capFacets(c camera, e hung.End, section []geom.Point3) []facet {
	edge := []facet{{section, picture.Main, hemStroke}}
	if b.Design.Cap.Kind == design.Gathered {
		return edge
	}
	last, top := len(section)-1, b.ending(e).Hem(section, b.Design.Cap.Hollow)
	var out []facet
	for j := 1; j <= last; j++ {
		out = append(out, lit(c, section[j-1], section[j], top[j], top[j-1]))
	}
	return append(append(out, edge...), facet{top, picture.Main, hemStroke})
}

// lit returns a quadrangle with the shade that a light from above gives the side
// of it that the viewer sees. Where it is seen almost edge on, both sides count, so
// that neighbours do not jump from one to the other.
func lit(c camera, pts ...geom.Point3) facet {
	n := pts[2].Minus(pts[0]).Cross(pts[3].Minus(pts[1])).Unit()
	source := c.out.Times(0.4).Plus(c.up.Times(0.8)).Plus(c.right.Times(0.35)).Unit()
	facing := min(max(0.5+10*n.Dot(c.out), 0), 1)
	light := facing*max(0, n.Dot(source)) + (1-facing)*max(0, -n.Dot(source))
	return facet{points: pts, ink: picture.Shade(0.12 + 0.95*light)}
}

// legs returns the cords from an end's corners to the hook and the start of its hang
// line.
func (b bed) legs(e hung.End) []facet {
	end := b.Shape.Ends[e]
	var out []facet
	for _, side := range []float64{-1, 1} {
		from, line := b.corner(e).X, []geom.Point3{}
		const steps = 12
		for i := range steps + 1 {
			x := from + (end.ApexX-from)*float64(i)/steps
			q := b.Shape.At(x)
			line = append(line, geom.Pt3(x, side*q.Y, q.Z))
		}
		out = append(out, facet{line, picture.Cord, cordStroke})
	}
	apex := geom.Pt3(end.ApexX, 0, end.ApexZ)
	return append(out, facet{[]geom.Point3{apex, apex.Plus(geom.Pt3(e.Sign()*stub, 0, stub*end.Slope))}, picture.Cord, cordStroke})
}
