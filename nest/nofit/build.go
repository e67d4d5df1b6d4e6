package nofit

import (
	"cmp"
	"math"
	"slices"

	"slingloft/outline/geom"
)

// deepReach is the part of a cell's diagonal by which an edge may be further from
// the middle of a cell deep inside than the nearest one and still be asked. With
// all of it the depth would be exact there too, at a quarter more time for all.
const deepReach = 0.3

// New prepares the region that is the union of patches, at least one, each grown by
// grow mm. With several it keeps none of them, and so little memory.
func New(ps []Patch, grow float64) *Field {
	f := newField(ps, grow)
	if f.cells != nil {
		f.patches = nil
	}
	return f
}

// Plain takes the region that is the union of patches, at least one, each grown by grow,
// as it is: to make it takes next to nothing, to ask it as long as it has patches. The
// depth is that in the patch where it is greatest, which the region's may exceed.
func Plain(ps []Patch, grow float64) *Field {
	f := &Field{patches: ps, grow: grow, box: geom.EmptyBox()}
	for i := range ps {
		f.box = f.box.Union(ps[i].box)
		ps[i].Ring = nil
	}
	f.box = f.box.Expanded(max(grow, 0))
	return f
}

// newField prepares the region that is the union of patches, each grown by grow.
func newField(ps []Patch, grow float64) *Field {
	f := &Field{patches: ps, grow: grow, box: geom.EmptyBox()}
	edges := 0
	for i := range ps {
		f.box = f.box.Union(ps[i].box)
		edges += len(ps[i].planes)
	}
	if len(ps) <= 1 {
		return f
	}
	f.box = f.box.Expanded(1e-3 * (f.box.Width() + f.box.Height()))
	n := min(max(int(2.5*math.Sqrt(float64(edges))), 12), 32)
	f.cols, f.rows = n, n
	f.cell = geom.Pt(f.box.Width()/float64(n), f.box.Height()/float64(n))
	f.perX, f.perY = 1/f.cell.X, 1/f.cell.Y
	f.cells = make([]cell, n*n)
	b := fieldBuilder{Field: f, blur: float64(4*math.Abs(grow)) + float64(1e-11*(f.box.Width()+f.box.Height()))}
	b.cutCells()
	b.outlineCells()
	b.findNear()
	f.planes, f.near = slices.Clone(f.planes), slices.Clone(f.near) // without the room to grow
	return f
}

// fieldBuilder holds what is needed while a field is made.
type fieldBuilder struct {
	*Field
	members []uint16        // of every group: its patch
	edges   []uint16        // of every plane: its edge in the patch
	covers  []geom.Interval // scratch
	dist    []float64       // scratch
	blur    float64         // how deep an edge must lie in a patch to be covered by it
}

// cellBox returns the box of cell (i, j).
func (f *Field) cellBox(i, j int) geom.Box {
	low := geom.Pt(f.box.Min.X+float64(float64(i)*f.cell.X), f.box.Min.Y+float64(float64(j)*f.cell.Y))
	return geom.Box{Min: low, Max: low.Plus(f.cell)}
}

// cutCells finds the cells that lie wholly in one patch, and for the others the
// patches that reach into them and the half planes that cut them.
func (b *fieldBuilder) cutCells() {
	for j := range b.rows {
		for i := range b.cols {
			c := &b.cells[j*b.cols+i]
			groups, planes := len(b.groups), len(b.planes)
			if c.sure = b.cutCell(b.cellBox(i, j)); c.sure {
				b.groups, b.members = b.groups[:groups], b.members[:groups]
				b.planes, b.edges = b.planes[:planes], b.edges[:planes]
			}
			c.groupLo, c.groupHi = uint32(groups), uint32(len(b.groups))
		}
	}
}

// cutCell adds the groups of the cell with the box given. It reports whether one of
// the patches holds all of it; then the groups need not be complete.
func (b *fieldBuilder) cutCell(box geom.Box) bool {
	at := box.Center()
	rx, ry := b.cell.X/2*(1+1e-9), b.cell.Y/2*(1+1e-9)
next:
	for k := range b.patches {
		p := &b.patches[k]
		if !p.box.Overlaps(box) {
			continue
		}
		from := len(b.planes)
		for e, h := range p.planes {
			h.c -= b.grow
			d, r := h.depth(at.X, at.Y), float64(math.Abs(h.nx)*rx)+float64(math.Abs(h.ny)*ry)
			if d <= -r {
				b.planes, b.edges = b.planes[:from], b.edges[:from]
				continue next
			}
			if d < r {
				b.planes = append(b.planes, h)
				b.edges = append(b.edges, uint16(e))
			}
		}
		if from == len(b.planes) {
			return true
		}
		b.members = append(b.members, uint16(k))
		b.groups = append(b.groups, group{uint32(from), uint32(len(b.planes))})
	}
	return false
}

// edgePart is a part of an edge of a patch, between two fractions of it.
type edgePart struct {
	patch, edge uint16
	geom.Interval
}

// outlineCells finds the boundary of the union: the parts of the patches'
// edges that lie in no other patch. Only cells that are not sure hold any.
func (b *fieldBuilder) outlineCells() {
	var all []edgePart
	for j := range b.rows {
		for i := range b.cols {
			c := &b.cells[j*b.cols+i]
			for own := c.groupLo; own < c.groupHi; own++ {
				all = b.uncovered(all, own, c, b.cellBox(i, j))
			}
		}
	}
	slices.SortFunc(all, func(s, t edgePart) int {
		return cmp.Or(cmp.Compare(s.patch, t.patch), cmp.Compare(s.edge, t.edge), cmp.Compare(s.Lo, t.Lo))
	})
	for k := 0; k < len(all); {
		s := all[k]
		for k++; k < len(all) && all[k].patch == s.patch && all[k].edge == s.edge && all[k].Lo <= s.Hi+1e-9; k++ {
			s.Hi = max(s.Hi, all[k].Hi)
		}
		r := b.patches[s.patch].Ring
		u, v := r[s.edge], r[(int(s.edge)+1)%len(r)]
		p, q := u.Towards(v, s.Lo), u.Towards(v, s.Hi)
		d := q.Minus(p)
		if len2 := d.Dot(d); len2 > 0 {
			b.segs = append(b.segs, seg{p.X, p.Y, d.X, d.Y, 1 / len2})
		}
	}
}

// uncovered appends the parts in the box of cell c of those edges that the patch of
// group own has in it and no other patch covers.
func (b *fieldBuilder) uncovered(all []edgePart, own uint32, c *cell, box geom.Box) []edgePart {
	k := b.members[own]
	r := b.patches[k].Ring
	for n := b.groups[own].lo; n < b.groups[own].hi; n++ {
		e := b.edges[n]
		u := r[e]
		d := r[(int(e)+1)%len(r)].Minus(u)
		in := box.Cut(u, d)
		if in.Lo >= in.Hi {
			continue
		}
		b.covers = b.covers[:0]
		for g := c.groupLo; g < c.groupHi; g++ {
			if g == own {
				continue
			}
			if s := b.covered(g, u, d); s.Lo < s.Hi && s.Lo < in.Hi && s.Hi > in.Lo {
				b.covers = append(b.covers, s)
			}
		}
		slices.SortFunc(b.covers, func(s, t geom.Interval) int { return cmp.Compare(s.Lo, t.Lo) })
		from := in.Lo
		for _, s := range b.covers {
			if s.Lo > from {
				all = append(all, edgePart{k, e, geom.Interval{Lo: from, Hi: s.Lo}})
			}
			from = max(from, s.Hi)
		}
		if from < in.Hi {
			all = append(all, edgePart{k, e, geom.Interval{Lo: from, Hi: in.Hi}})
		}
	}
	return all
}

// covered returns the fractions of the segment from u along d, an edge of another
// patch, that lie in the patch of group g, as far as the group's cell goes; by more
// than blur where edges run alongside, so that of two equal edges both are uncovered.
func (b *fieldBuilder) covered(g uint32, u, d geom.Point) geom.Interval {
	s := geom.Interval{Lo: 0, Hi: 1}
	along := d.Len() * (1 - 1e-9)
	for _, h := range b.planes[b.groups[g].lo:b.groups[g].hi] {
		deep := h.depth(u.X, u.Y)
		if float64(h.ny*d.X)-float64(h.nx*d.Y) > along {
			deep -= b.blur
		}
		if s = s.Where(float64(h.nx*d.X)+float64(h.ny*d.Y), deep); s.Lo >= s.Hi {
			break
		}
	}
	return s
}

// findNear lists for each cell the boundary edges that can be nearest to a point
// in it: those no further from its middle than the nearest is, and a cell's
// diagonal more. It does so for blocks of cells first.
func (b *fieldBuilder) findNear() {
	const block = 4
	all := make([]uint16, len(b.segs))
	for k := range all {
		all[k] = uint16(k)
	}
	var some []uint16
	for j := 0; j < b.rows; j += block {
		for i := 0; i < b.cols; i += block {
			low, high := b.cellBox(i, j), b.cellBox(i+block-1, j+block-1)
			some = b.nearest(some[:0], all, geom.Box{Min: low.Min, Max: high.Max}, false)
			for k := range block * block {
				b.findNearCell(i+k%block, j+k/block, some)
			}
		}
	}
}

// findNearCell does it for one cell, given the edges that come into question.
func (b *fieldBuilder) findNearCell(i, j int, some []uint16) {
	if i >= b.cols || j >= b.rows {
		return
	}
	c := &b.cells[j*b.cols+i]
	if c.sure || c.groupLo < c.groupHi {
		c.nearLo = uint32(len(b.near))
		b.near = b.nearest(b.near, some, b.cellBox(i, j), c.sure)
		c.nearHi = uint32(len(b.near))
	}
}

// nearest appends to out those of some that can be nearest to a point in box; if
// about is set, only those that are nearest to most of it, which is good enough
// deep inside, where the depth serves to compare bad places.
func (b *fieldBuilder) nearest(out, some []uint16, box geom.Box, about bool) []uint16 {
	at := box.Min.Towards(box.Max, 0.5)
	least := math.Inf(1)
	b.dist = b.dist[:0]
	for _, k := range some {
		d := b.segs[k].dist2(at.X, at.Y)
		b.dist = append(b.dist, d)
		if d < least {
			least = d
		}
	}
	reach := box.Max.Dist(box.Min)
	if about {
		reach *= deepReach
	}
	reach += math.Sqrt(least)
	for n, k := range some {
		if b.dist[n] <= reach*reach {
			out = append(out, k)
		}
	}
	return out
}
