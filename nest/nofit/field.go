// Package nofit tells how deep two outlines overlap for a given displacement. The
// displacements at which they do are a region, the union of convex patches ([Patches]);
// a [Field] made from it answers in a few nanoseconds. Lengths are mm.
package nofit

import (
	"math"

	"slingloft/outline/geom"
)

// Field answers how deep a displacement lies inside a no-fit region: the length
// of the shortest move that separates the two pieces, 0 where they are apart.
// That is the penetration depth of Dobkin, Hershberger, Kirkpatrick & Suri 1993,
// "Computing the intersection-depth of polyhedra".
//
// A region that is one convex patch is asked directly, as is one of [Plain]. Any other is cut into a
// grid of cells, each of which knows whether it lies inside, outside or across
// the boundary, which half planes decide there, and which boundary edges can be
// the nearest, so that the answer is exact and its cost does not grow with the
// number of vertices.
type Field struct {
	patches []Patch
	grow    float64 // how far the region reaches past the patches
	box     geom.Box

	cols, rows int
	cell       geom.Point // size of a cell
	perX, perY float64    // cells per mm
	cells      []cell     // rows of cols, from the lower left corner
	groups     []group
	planes     []halfPlane
	near       []uint16 // indices of segs
	segs       []seg
}

// cell is one cell of the grid. A point in it is inside the region if it
// lies in all half planes of one of the groups, or always if sure.
type cell struct {
	groupLo, groupHi uint32
	nearLo, nearHi   uint32
	sure             bool
}

// group is a run of planes: those of one patch that cut a cell.
type group struct{ lo, hi uint32 }

// seg is a part of the region's boundary, from (x, y) along (dx, dy).
type seg struct{ x, y, dx, dy, perLen2 float64 }

// dist2 returns the squared distance of (x, y) from the segment.
func (s *seg) dist2(x, y float64) float64 {
	x -= s.x
	y -= s.y
	t := (float64(x*s.dx) + float64(y*s.dy)) * s.perLen2
	if t > 0 {
		if t > 1 {
			t = 1
		}
		x -= float64(t * s.dx)
		y -= float64(t * s.dy)
	}
	return float64(x*x) + float64(y*y)
}

// Depth returns how deep the displacement (x, y) lies in the region.
func (f *Field) Depth(x, y float64) float64 {
	if f.cells == nil {
		return f.plainDepth(x, y)
	}
	u, v := (x-f.box.Min.X)*f.perX, (y-f.box.Min.Y)*f.perY
	if !(u >= 0 && v >= 0) {
		return 0
	}
	i, j := int(u), int(v)
	if i >= f.cols || j >= f.rows {
		return 0
	}
	c := &f.cells[j*f.cols+i]
	if !c.sure && !f.inGroups(c, x, y) {
		return 0
	}
	least := math.Inf(1)
	for _, k := range f.near[c.nearLo:c.nearHi] {
		if d := f.segs[k].dist2(x, y); d < least {
			least = d
		}
	}
	return math.Sqrt(least)
}

// plainDepth returns how deep (x, y) lies in the patch in which it lies deepest.
func (f *Field) plainDepth(x, y float64) float64 {
	deepest := 0.0
	for k := range f.patches {
		deepest = max(deepest, f.patches[k].depth(x, y)+f.grow)
	}
	return deepest
}

func (f *Field) inGroups(c *cell, x, y float64) bool {
next:
	for _, g := range f.groups[c.groupLo:c.groupHi] {
		for k := g.lo; k < g.hi; k++ {
			if p := &f.planes[k]; float64(p.nx*x)+float64(p.ny*y) <= p.c {
				continue next
			}
		}
		return true
	}
	return false
}
