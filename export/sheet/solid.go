package sheet

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"slingloft/export/sheet/picture"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// vec is a point or direction in space, mm.
type vec struct{ x, y, z float64 }

func (a vec) minus(b vec) vec { return vec{a.x - b.x, a.y - b.y, a.z - b.z} }

func (a vec) times(k float64) vec { return vec{a.x * k, a.y * k, a.z * k} }

func (a vec) plus(b vec) vec { return vec{a.x + b.x, a.y + b.y, a.z + b.z} }

func (a vec) dot(b vec) float64 { return a.x*b.x + a.y*b.y + a.z*b.z }

func (a vec) cross(b vec) vec {
	return vec{a.y*b.z - a.z*b.y, a.z*b.x - a.x*b.z, a.x*b.y - a.y*b.x}
}

func (a vec) unit() vec {
	if l := math.Sqrt(a.dot(a)); l > 0 {
		return a.times(1 / l)
	}
	return a
}

// camera is a parallel view: unit vectors to the right and up on paper, and
// towards the viewer.
type camera struct{ right, up, out vec }

// newCamera looks from the given bearing round z, counted from x, and height.
func newCamera(bearing, height float64) camera {
	sb, cb := math.Sincos(bearing)
	sh, ch := math.Sincos(height)
	out := vec{cb * ch, sb * ch, sh}
	right := vec{-sb, cb, 0}
	return camera{right, out.cross(right), out}
}

func (c camera) flat(p vec) geom.Point { return geom.Pt(p.dot(c.right), p.dot(c.up)) }

// facet is a flat part of the scene: a lit area or a stroke.
type facet struct {
	layer  int     // painted after all of a lower layer
	depth  float64 // towards the viewer
	points []vec
	ink    picture.Ink
	width  float64 // of a stroke; 0: an area
}

// solidView draws the hung shape in space, farthest parts first.
func (b *builder) solidView() picture.Picture {
	c := newCamera(-0.95, 0.5)
	scene := append(b.clothFacets(c), b.cordFacets(c)...)
	slices.SortStableFunc(scene, func(p, q facet) int {
		return cmp.Or(cmp.Compare(p.layer, q.layer), cmp.Compare(p.depth, q.depth))
	})
	box := geom.EmptyBox()
	for _, f := range scene {
		for _, q := range f.points {
			box = box.With(c.flat(q))
		}
	}
	k := (wide - 16) / box.Width()
	p := picture.Picture{ID: "view-solid", Title: "The hung hammock in space", Width: wide, Height: k*box.Height() + 8}
	v := picture.Fit(box, geom.BoxOf(geom.Pt(8, 4), geom.Pt(wide-8, p.Height-4)))
	for _, f := range scene {
		line := make(geom.Polyline, len(f.points))
		for i, q := range f.points {
			line[i] = v.At(c.flat(q))
		}
		p.Items = appendFacet(p.Items, f, line)
	}
	sh := b.Shape
	p.Desc = fmt.Sprintf("A trough of cloth between two cords, held open by two bars %s apart, narrowest near the middle, its walls at %s; past each bar the tail's walls rise and close in towards the hook.",
		b.round(b.Design.Bed.Span), degrees(sh.At(0).Section.Wall))
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

// The layers from the back: what lies past the head tail's end, the bed, the foot's
// cap, and what lies past it. The viewer stands at the foot end.
const (
	far = iota - 1
	bed
	near
	nearest
)

func onLayer(layer int, fs []facet) []facet {
	for i := range fs {
		fs[i].layer = layer
	}
	return fs
}

// clothFacets returns the bed and its caps as lit quadrangles.
func (b *builder) clothFacets(c camera) []facet {
	const along, across = 44, 18
	xs := b.stations(along)
	rows := make([][]vec, len(xs))
	for i, x := range xs {
		rows[i] = b.sectionAt(x, across)
	}
	var out []facet
	for i := 1; i < len(rows); i++ {
		for j := 1; j <= across; j++ {
			out = append(out, lit(c, rows[i-1][j-1], rows[i-1][j], rows[i][j], rows[i][j-1]))
		}
	}
	if b.Design.Cap.Kind != design.Gathered {
		out = append(out, onLayer(far, b.capFacets(c, rows[0]))...)
		out = append(out, onLayer(near, b.capFacets(c, rows[len(rows)-1]))...)
	}
	return out
}

// sectionAt returns the section at a station in space, from cord to cord.
func (b *builder) sectionAt(x float64, parts int) []vec {
	q := b.Shape.At(x)
	out := make([]vec, parts+1)
	for j := range out {
		t := 2*float64(j)/float64(parts) - 1
		y, z := q.Section.Point(math.Abs(t) * q.Section.Girth() / 2)
		out[j] = vec{x, math.Copysign(y, t), q.Bottom + z}
	}
	return out
}

// capFacets closes an end by strips from its section up to the top edge.
func (b *builder) capFacets(c camera, section []vec) []facet {
	last := len(section) - 1
	top := func(j int) vec {
		p := section[j]
		t := (p.y - section[0].y) / (section[last].y - section[0].y)
		p.z = section[0].z - b.Design.Cap.Hollow*4*t*(1-t)
		return p
	}
	var out []facet
	for j := 1; j <= last; j++ {
		out = append(out, lit(c, section[j-1], section[j], top(j), top(j-1)))
	}
	return out
}

// lit returns a quadrangle with the shade that a light from above gives the side
// of it that the viewer sees. Where it is seen almost edge on, both sides count, so
// that neighbours do not jump from one to the other.
func lit(c camera, pts ...vec) facet {
	n := pts[2].minus(pts[0]).cross(pts[3].minus(pts[1])).unit()
	source := c.out.times(0.25).plus(c.up.times(0.9)).plus(c.right.times(-0.5)).unit()
	facing := min(max(0.5+3*n.dot(c.out), 0), 1)
	light := facing*max(0, n.dot(source)) + (1-facing)*max(0, -n.dot(source))
	centre := pts[0].plus(pts[1]).plus(pts[2]).plus(pts[3]).times(0.25)
	return facet{depth: centre.dot(c.out), points: pts, ink: picture.Shade(0.15 + 0.8*light)}
}

// nearer is by how much cords and bars count as nearer than the cloth that they
// touch, mm.
const nearer = 12.0

// cordFacets returns cords, legs and bars as short strokes.
func (b *builder) cordFacets(c camera) []facet {
	var out []facet
	add := func(ink picture.Ink, width float64, line []vec) {
		for i := 1; i < len(line); i++ {
			mid := line[i-1].plus(line[i]).times(0.5)
			layer := bed
			if mid.x > b.Shape.Ends[hung.Foot].TailX {
				layer = nearest
			} else if mid.x < b.Shape.Ends[hung.Head].TailX {
				layer = far
			}
			out = append(out, facet{layer, mid.dot(c.out) + nearer, []vec{line[i-1], line[i]}, ink, width})
		}
	}
	for _, side := range []float64{-1, 1} {
		var line []vec
		for _, x := range b.cordStations() {
			q := b.Shape.At(x)
			line = append(line, vec{x, side * q.Y, q.Z})
		}
		add(picture.Cord, 0.6, line)
	}
	for _, e := range ends() {
		x := e.Sign() * b.Design.Bed.Span / 2
		q := b.Shape.At(x)
		var bar, hang []vec
		for i := range 17 {
			bar = append(bar, vec{x, q.Y * (float64(i)/8 - 1), q.Z})
		}
		add(picture.Bar, 1.3, bar)
		end := b.Shape.Ends[e]
		for i := range 4 {
			r := stub * float64(i) / 3
			hang = append(hang, vec{end.ApexX + e.Sign()*r, 0, end.ApexZ + r*end.Slope})
		}
		add(picture.Cord, 0.6, hang)
	}
	return out
}

// cordStations are stations from apex to apex.
func (b *builder) cordStations() []float64 {
	h, f := b.Shape.Ends[hung.Head], b.Shape.Ends[hung.Foot]
	out := []float64{}
	for i := range 8 {
		out = append(out, h.ApexX+(h.TailX-h.ApexX)*float64(i)/8)
	}
	out = append(out, b.stations(44)...)
	for i := range 8 {
		out = append(out, f.TailX+(f.ApexX-f.TailX)*float64(i+1)/8)
	}
	return out
}
