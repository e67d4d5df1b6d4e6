package nest

import (
	"math"
	"slices"

	"slingloft/outline/geom"
)

// form is an outline in one turn, moved so that the lower left corner of its
// box is the origin. Equal outlines share one form.
type form struct {
	parts []geom.Ring // convex, together covering the outline
	w, h  float64     // size of the box of the true outline
	area  float64
	ring  geom.Ring // the true outline from its lowest vertex, to tell forms apart
	solid bool      // an obstacle: keeps no gap
}

// pose is a way in which an item may lie.
type pose struct {
	form   int
	motion geom.Motion // turn and mirror; the shift takes the form to the origin
}

// piece is one copy of an item, to be placed in one of its poses.
type piece struct {
	item, copy int
	poses      []pose
}

// block is an immovable obstacle.
type block struct {
	form int
	at   geom.Point
}

// problem is what the search works on. Its origin is the lower left corner
// inside the margin of the strip, or of the first bed; beds stand in a row,
// pitch apart, with walls between them.
type problem struct {
	items  []Item
	ground ground
	pieces []piece
	atlas  *atlas
	blocks []block // obstacles in their places
	flaws  []block // the keep-out areas of one bed or strip
	wall   int     // form of the wall between beds
	height float64 // room across
	length float64 // room along x in a bed, +Inf on a strip
	pitch  float64 // from one bed to the next, 0 on a strip
	beds   int     // beds in the row, 1 on a strip
	margin float64
	area   float64 // of all pieces
	safety float64 // distance kept so that rounding cannot make an overlap
	grid   float64 // unit of all coordinates, 0 where there is none
	ease   float64 // room across that the search has more than the stock
}

// newProblem prepares items for stock g. The poses of every item that fit are
// kept; an item without any gives a SizeError.
func newProblem(items []Item, g ground) (*problem, error) {
	if err := check(items, g); err != nil {
		return nil, err
	}
	p := &problem{
		items:  items,
		ground: g,
		height: g.height - 2*g.margin,
		length: g.width - 2*g.margin,
		beds:   1,
		margin: g.margin,
		area:   totalArea(items),
		safety: 1e-9 * g.height,
	}
	p.atlas = &atlas{gap: g.gap, safety: p.safety}
	for i, it := range items {
		plain, mirrored, err := p.posesOf(i, it)
		if err != nil {
			return nil, err
		}
		for c := range it.Demand {
			poses := plain
			if it.mirrored(c) {
				poses = mirrored
			}
			p.pieces = append(p.pieces, piece{i, c, poses})
		}
	}
	p.addBlocks(g)
	if p.grid = p.gridOf(); p.grid > 0 {
		p.ease = easeShare * p.height
		p.atlas.safety = -p.safety // pieces on the grid touch without overlap
	}
	p.atlas.ready()
	return p, nil
}

// posesOf returns the poses of item i, plain and, if it is paired, mirrored.
func (p *problem) posesOf(i int, it Item) (plain, mirrored []pose, err error) {
	rings := it.rings()
	whole := convexParts(simplified(rings))
	if !covers(whole, rings) {
		return nil, nil, &InputError{i, "the outline crosses itself"}
	}
	best := &SizeError{Item: i, RoomX: p.length, RoomY: p.height, Across: math.Inf(1)}
	for _, mirror := range []bool{false, true} {
		if mirror && !it.Paired {
			continue
		}
		var poses []pose
		for _, turn := range it.turns() {
			f, m := newForm(rings[0], whole, geom.Motion{Mirror: mirror, Turn: turn})
			if f.w > p.length || f.h > p.height {
				if f.h < best.Across {
					best.Along, best.Across = f.w, f.h
				}
				continue
			}
			id := p.atlas.add(f)
			if !slices.ContainsFunc(poses, func(q pose) bool { return q.form == id }) {
				poses = append(poses, pose{id, m})
			}
		}
		if len(poses) == 0 {
			return nil, nil, best
		}
		if mirror {
			mirrored = poses
		} else {
			plain = poses
		}
	}
	return plain, mirrored, nil
}

// covers reports whether the parts have at least the area of the region, which
// they miss where an outline crosses itself.
func covers(parts []geom.Ring, rings []geom.Ring) bool {
	sum, want := 0.0, 0.0
	for _, q := range parts {
		sum += q.Area()
	}
	for _, r := range rings {
		want += r.Area()
	}
	return sum >= want*(1-1e-9)
}

// newForm moves an outline and its parts by m and then to the origin, and
// returns the whole motion with it.
func newForm(outline geom.Ring, parts []geom.Ring, m geom.Motion) (form, geom.Motion) {
	box := outline.Moved(m).Bounds()
	m.Shift = geom.Pt(-box.Min.X, -box.Min.Y)
	f := form{w: box.Width(), h: box.Height(), ring: fromLowest(outline.Moved(m))}
	for _, q := range parts {
		f.parts = append(f.parts, q.Moved(m))
		f.area += f.parts[len(f.parts)-1].Area()
	}
	return f, m
}

// addBlocks registers the keep-out areas and, between beds, the walls, and
// stands up the first bed's.
func (p *problem) addBlocks(g ground) {
	for _, k := range g.keepOut {
		low := geom.Pt(k.Min.X-g.margin, k.Min.Y-g.margin)
		p.flaws = append(p.flaws, block{p.atlas.add(solidBox(k.Width(), k.Height(), p.safety)), low})
	}
	if !math.IsInf(p.length, 1) {
		wall := g.gap + 0.05*p.length
		p.pitch = p.length + wall
		p.wall = p.atlas.add(solidBox(wall, p.height, p.safety))
	}
	p.setBeds(1)
}

// setBeds stands n beds in a row, with their keep-out areas and the walls
// between them.
func (p *problem) setBeds(n int) {
	p.beds, p.blocks = n, nil
	for k := range n {
		shift := geom.Pt(float64(k)*p.pitch, 0)
		for _, f := range p.flaws {
			p.blocks = append(p.blocks, block{f.form, f.at.Plus(shift)})
		}
		if k > 0 {
			p.blocks = append(p.blocks, block{p.wall, geom.Pt(shift.X-(p.pitch-p.length), 0)})
		}
	}
}

// solidBox returns an obstacle of the size given, at least least mm each way.
func solidBox(w, h, least float64) form {
	r := geom.Box{Max: geom.Pt(max(w, least), max(h, least))}.Ring()
	return form{parts: []geom.Ring{r}, w: r[2].X, h: r[2].Y, ring: r, solid: true}
}
