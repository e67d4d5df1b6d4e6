package nest

import (
	"math"
	"slices"

	"slingloft/outline/geom"
)

// problem is what the search works on. Its origin is the lower left corner
// inside the margin of the strip, or of the first bed; beds stand in a row,
// pitch apart, with walls between them.
type problem struct {
	items    []Item
	stock    Bed // without an end if it is a strip
	pieces   []piece
	atlas    *atlas
	blocks   []spot  // obstacles
	flaws    []spot  // the keep-out areas of one bed or strip
	wall     int     // form of the wall between beds
	height   float64 // room across
	length   float64 // room along x in a bed, +Inf on a strip
	pitch    float64 // from one bed to the next, 0 on a strip
	beds     int     // beds in the row, 1 on a strip
	area     float64 // of all outlines
	covered  float64 // the same without holes that may be filled
	safety   float64 // distance kept so that rounding cannot make an overlap
	grid     float64 // unit of all coordinates, 0 where there is none
	widening float64 // room across that the search has more than the stock
}

// piece is one copy of an item, to be placed in one of its poses.
type piece struct {
	item, copy int
	poses      []pose
	slim       float64 // least extent along x in any of them
}

// newProblem prepares items for stock b. The poses of every item that fit are
// kept; an item without any gives a SizeError.
func newProblem(items []Item, b Bed) (*problem, error) {
	if err := check(items, b); err != nil {
		return nil, err
	}
	p := &problem{
		items:  items,
		stock:  b,
		height: b.Height - 2*b.Margin,
		length: b.Width - 2*b.Margin,
		area:   totalArea(items),
		safety: 1e-9 * b.Height,
	}
	p.atlas = &atlas{gap: b.Gap, grow: p.safety}
	for i := range items {
		if err := p.addPieces(i); err != nil {
			return nil, err
		}
	}
	p.addObstacles()
	p.setGrid()
	p.atlas.ready()
	return p, nil
}

// addPieces adds all copies of item i.
func (p *problem) addPieces(i int) error {
	it := p.items[i]
	for _, r := range it.rings() {
		p.covered += float64(r.Area() * float64(it.Demand))
	}
	region, ok := coveredBy(it.rings())
	if !ok {
		return &InputError{i, "the outline crosses itself"}
	}
	made := map[bool][]pose{} // mirrored or not
	for c := range it.Demand {
		mirror := it.mirrored(c)
		if made[mirror] == nil {
			poses, err := p.posesOf(i, region, mirror)
			if err != nil {
				return err
			}
			made[mirror] = poses
		}
		pc := piece{i, c, made[mirror], math.Inf(1)}
		for _, q := range pc.poses {
			pc.slim = min(pc.slim, p.atlas.forms[q.form].size.X)
		}
		p.pieces = append(p.pieces, pc)
	}
	return nil
}

// posesOf returns the poses of item i that fit the stock, each form once, a
// SizeError if there is none.
func (p *problem) posesOf(i int, region covered, mirror bool) ([]pose, error) {
	it := p.items[i]
	closest := &SizeError{Item: i, RoomX: p.length, RoomY: p.height, Across: math.Inf(1)}
	for _, turns := range [][]float64{it.turns(), it.askew()} {
		var fit []pose
		for _, turn := range turns {
			_, size := cornered(it.Outline, geom.Motion{Mirror: mirror, Turn: turn})
			if size.X <= p.length && size.Y <= p.height {
				q := p.atlas.poseIn(region, mirror, turn)
				if !slices.ContainsFunc(fit, func(o pose) bool { return o.form == q.form }) {
					fit = append(fit, q)
				}
			} else if size.Y < closest.Across {
				closest.Along, closest.Across = size.X, size.Y
			}
		}
		if len(fit) > 0 {
			return fit, nil
		}
	}
	return nil, closest
}

// addObstacles registers the keep-out areas and, between beds, the walls, and
// stands up the first bed's.
func (p *problem) addObstacles() {
	for _, k := range p.stock.KeepOut {
		low := k.Min.Minus(geom.Pt(p.stock.Margin, p.stock.Margin))
		p.flaws = append(p.flaws, spot{p.obstacle(k.Width(), k.Height()), low})
	}
	if !math.IsInf(p.length, 1) {
		wall := math.Ceil(p.stock.Gap + float64(0.05*p.length)) // whole, so as not to leave the grid
		p.pitch = p.length + wall
		p.wall = p.obstacle(wall, p.height)
	}
	p.setBeds(1)
}

// obstacle registers a solid rectangle and returns its form.
func (p *problem) obstacle(w, h float64) int {
	r := geom.Box{Max: geom.Pt(max(w, p.safety), max(h, p.safety))}.Ring()
	s := p.atlas.addShape(shape{region: []geom.Ring{r}, parts: []geom.Ring{r}, rough: []geom.Ring{r}, solid: true})
	return p.atlas.addForm(form{shape: s, size: r[2], area: r.Area(), ring: r, solid: true})
}

// setBeds stands n beds in a row, with their keep-out areas and the walls
// between them.
func (p *problem) setBeds(n int) {
	p.beds, p.blocks = n, nil
	for k := range n {
		shift := geom.Pt(float64(k)*p.pitch, 0)
		for _, f := range p.flaws {
			p.blocks = append(p.blocks, spot{f.form, f.at.Plus(shift)})
		}
		if k > 0 {
			p.blocks = append(p.blocks, spot{p.wall, geom.Pt(shift.X-p.wallWidth(), 0)})
		}
	}
}
