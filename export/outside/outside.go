// Package outside brings in outlines that a maker has drawn with another program,
// as pieces to lay or as areas to keep clear.
//
// A drawing is SVG or DXF at true size. Its closed paths become outlines, each with
// those that lie in it as its holes; an outline in a hole is a piece of its own.
// Lines, arcs and curves whose ends meet are joined first. What lies in a group or
// layer named mark, stitch, score or lettering is kept as such a line of the piece
// around it, and what lies in one named register is left out.
package outside

import (
	"cmp"
	"io"
	"path/filepath"
	"slices"
	"strings"

	"slingloft/export"
	"slingloft/export/dxf"
	"slingloft/export/simplify"
	"slingloft/export/svg"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Bounds of what is brought in: far more than anybody draws for a hammock, and
// little enough for the lay.
const (
	maxBytes  = 32 << 20
	maxPaths  = 5000
	maxShapes = 100
	maxPoints = 5000   // of one outline, after those that are not needed are gone
	maxEdges  = 50_000 // of all outlines together
	maxSize   = 10_000 // mm
)

// Thin is how far an outline may lie from what was drawn, mm, when points that are
// not needed are left out. With the chords of curves, see the readers, it stays
// within a twentieth.
const Thin = 0.02

// Shape is one outline in the drawing's coordinates, mm, y up.
type Shape struct {
	Name    string // of the path, as far as the drawing names it
	Outline geom.Ring
	Holes   []geom.Ring
	Lines   []piece.Line // marks, folds and stitches in it
}

// Size returns the width and height of the box around the outline, mm.
func (s Shape) Size() (width, height float64) {
	box := s.Outline.Bounds()
	return box.Width(), box.Height()
}

// Drawn is what a drawing holds.
type Drawn struct {
	Shapes []Shape
	Left   export.Left     // objects that were left out
	Doubts []*export.Fault // what may look otherwise in the program that it was drawn with
}

// Read reads a drawing of outlines; name is the file's, whose ending tells the
// format. unit is the length of a unit, mm, in a DXF file that names none or an SVG
// file that does not say how wide it is, or 0. An error names the path that is at
// fault by its number, from 1, in the order of the file.
func Read(name string, r io.Reader, unit float64) (Drawn, error) {
	limited := &io.LimitedReader{R: r, N: maxBytes + 1}
	var d export.Drawing
	var out Drawn
	var err error
	switch strings.ToLower(filepath.Ext(name)) {
	case ".svg":
		d, out.Left, err = svg.ReadOutlines(limited, unit)
	case ".dxf":
		var o dxf.Outlines
		o, err = dxf.ReadOutlines(limited, unit)
		d, out.Left, out.Doubts = o.Drawing, o.Left, o.Doubts
	case ".svgz":
		return out, export.Refuse(export.Compressed)
	default:
		return out, export.Refuse(export.EndingUnknown)
	}
	if limited.N <= 0 {
		return out, export.Refuse(export.TooLarge, maxBytes>>20)
	}
	if err != nil {
		return out, err
	}
	lines := make([]piece.Line, 0, len(d.Lines))
	for _, l := range d.Lines {
		if l.Points.Length() < samePlace {
			out.Left[export.Lengthless]++
			continue
		}
		lines = append(lines, l)
	}
	if out.Shapes, err = shapes(lines); err != nil && out.Left.Any() {
		err = export.Refuse(export.WithLeftOut, err, out.Left)
	}
	return out, err
}

// samePlace is how close points lie that are taken for one, mm.
const samePlace = 1e-6

// path is a line of the file that makes an outline, with its number.
type path struct {
	number int
	name   string
	points geom.Polyline
	closed bool
}

// fault names the path in what is wrong with it.
func (p path) fault() error {
	if p.name == "" {
		return export.Refuse(export.PathNumber, p.number)
	}
	return export.Refuse(export.PathNamed, p.number, p.name)
}

// shapes turns lines into outlines.
func shapes(lines []piece.Line) ([]Shape, error) {
	var paths []path
	var marks []piece.Line
	for _, l := range lines {
		switch l.Work {
		case piece.CutOut, piece.CutInside:
			p := path{len(paths) + 1, l.Name, l.Points, l.Closed}
			if box := l.Points.Bounds(); !export.Inside(box.Width(), 0, maxSize) || !export.Inside(box.Height(), 0, maxSize) {
				return nil, export.Refuse(export.PathHuge, p.fault(), box.Width(), box.Height())
			}
			paths = append(paths, p)
		case piece.Register:
		default:
			l.Role = roleOf(l)
			marks = append(marks, l)
		}
	}
	if len(paths) > maxPaths {
		return nil, export.Refuse(export.PathsTooMany, len(paths), maxPaths)
	}
	rings, err := closed(paths)
	if err != nil {
		return nil, err
	}
	if len(rings) == 0 {
		return nil, export.Refuse(export.NoClosedPath)
	}
	if err := checkRings(rings); err != nil {
		return nil, err
	}
	return nested(rings, marks)
}

// ring is a closed path.
type ring struct {
	path
	ring geom.Ring
	box  geom.Box
}

func newRing(p path) (ring, error) {
	r := geom.Ring(p.points).Deduped(samePlace)
	if len(r) < 3 {
		return ring{}, export.Refuse(export.PathEmpty, p.fault())
	}
	r = geom.Ring(simplify.Chords(geom.Polyline(r), true, Thin)).CounterClockwise()
	const smallest = 1.0 // mm²
	if len(r) < 3 || r.Area() < smallest {
		// What the halves of a figure of eight enclose may cancel out.
		if at, ok := eight(r); ok {
			return ring{}, crossed(p, at)
		}
		return ring{}, export.Refuse(export.PathSmall, p.fault())
	}
	if len(r) > maxPoints {
		return ring{}, export.Refuse(export.PathTooFine, p.fault(), len(r), maxPoints)
	}
	return ring{p, r, r.Bounds()}, nil
}

// nested makes outlines of the rings that lie in no other, or in a hole.
func nested(rings []ring, marks []piece.Line) ([]Shape, error) {
	depth := make([]int, len(rings))
	around := make([]int, len(rings)) // the smallest ring around, −1 for none
	for i, inner := range rings {
		around[i] = -1
		for k, outer := range rings {
			if i == k || !outer.box.ContainsBox(inner.box) || !outer.ring.Contains(inner.ring[0]) {
				continue
			}
			depth[i]++
			if around[i] < 0 || outer.ring.Area() < rings[around[i]].ring.Area() {
				around[i] = k
			}
		}
	}
	var out []Shape
	place := map[int]int{} // of a ring's shape in out
	for i, r := range rings {
		if depth[i]%2 == 0 {
			place[i] = len(out)
			out = append(out, Shape{Name: r.name, Outline: r.ring})
		}
	}
	if len(out) > maxShapes {
		return nil, export.Refuse(export.OutlinesTooMany, len(out), maxShapes)
	}
	for i, r := range rings {
		if depth[i]%2 == 1 {
			s := &out[place[around[i]]]
			s.Holes = append(s.Holes, r.ring)
		}
	}
	return out, keep(out, marks)
}

// keep gives every mark to the smallest outline around it.
func keep(shapes []Shape, marks []piece.Line) error {
	order := make([]int, len(shapes))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int {
		return cmp.Compare(shapes[a].Outline.Area(), shapes[b].Outline.Area())
	})
next:
	for _, l := range marks {
		for _, i := range order {
			if inside(shapes[i].Outline, l.Points) {
				shapes[i].Lines = append(shapes[i].Lines, l)
				continue next
			}
		}
		return export.Refuse(export.LineOutside, l.Work, l.Name)
	}
	return nil
}

// inside reports whether all points lie in the ring or within a tenth of its edge.
func inside(r geom.Ring, pts geom.Polyline) bool {
	const edge = 0.1 // mm
	if !r.Bounds().Expanded(edge).ContainsBox(pts.Bounds()) {
		return false
	}
	for _, p := range pts {
		if r.Contains(p) {
			continue
		}
		if _, d := geom.NewArc(r.Closed()).Nearest(p); d > edge {
			return false
		}
	}
	return true
}

// roleOf returns what a maker's own mark is, by the name that the maker gave it.
func roleOf(l piece.Line) piece.Role {
	switch {
	case l.Work == piece.Mark && strings.Contains(l.Name, "notch"):
		return piece.NotchStroke
	case l.Work == piece.Mark && strings.Contains(l.Name, "grain"):
		return piece.GrainArrow
	}
	return piece.NoRole
}
