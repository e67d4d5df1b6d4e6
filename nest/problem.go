package nest

import (
	"math"
	"slices"

	"slingloft/nest/cover"
	"slingloft/outline/geom"
)

// problem is what the search works on. Its origin is the lower left corner
// inside the margin of the strip, or of the first bed; beds stand in a row,
// pitch apart, with walls between them.
type problem struct {
	items   []Item
	ground  ground
	pieces  []piece
	atlas   *atlas
	blocks  []block // obstacles in their places
	flaws   []block // the keep-out areas of one bed or strip
	wall    int     // form of the wall between beds
	height  float64 // room across
	length  float64 // room along x in a bed, +Inf on a strip
	pitch   float64 // from one bed to the next, 0 on a strip
	beds    int     // beds in the row, 1 on a strip
	margin  float64
	area    float64 // of all outlines
	covered float64 // the same without holes that may be filled
	safety  float64 // distance kept so that rounding cannot make an overlap
	grid    float64 // unit of all coordinates, 0 where there is none
	ease    float64 // room across that the search has more than the stock
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
	p.atlas = &atlas{gap: g.gap, grow: p.safety}
	for i, it := range items {
		for _, r := range it.rings() {
			p.covered += float64(r.Area() * float64(it.Demand))
		}
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
	p.setGrid()
	p.atlas.ready()
	return p, nil
}

// posesOf returns the poses of item i, plain and, if it is paired, mirrored.
func (p *problem) posesOf(i int, it Item) (plain, mirrored []pose, err error) {
	rings := it.rings()
	parts, ok := cover.Parts(rings, cover.Closely())
	rough, okToo := cover.Parts(rings, cover.Roughly())
	if !ok || !okToo {
		return nil, nil, &InputError{i, "the outline crosses itself"}
	}
	covered := shape{parts: parts, rough: rough}
	if plain, err = p.fitting(i, it, covered, false); err == nil && it.Paired {
		mirrored, err = p.fitting(i, it, covered, true)
	}
	return plain, mirrored, err
}

// fitting returns the poses of item i that fit the stock, a SizeError if there is
// none.
func (p *problem) fitting(i int, it Item, covered shape, mirror bool) ([]pose, error) {
	closest := &SizeError{Item: i, RoomX: p.length, RoomY: p.height, Across: math.Inf(1)}
	for _, turns := range [][]float64{it.turns(), it.askew()} {
		var fit []pose
		for _, turn := range turns {
			box := it.Outline.Moved(geom.Motion{Mirror: mirror, Turn: turn}).Bounds()
			if box.Width() <= p.length && box.Height() <= p.height {
				fit = append(fit, poseIn(p.atlas, it.Outline.CounterClockwise(), covered, mirror, turn))
			} else if box.Height() < closest.Across {
				closest.Along, closest.Across = box.Width(), box.Height()
			}
		}
		if len(fit) > 0 {
			return distinct(fit), nil
		}
	}
	return nil, closest
}

// distinct returns poses without those whose form came before.
func distinct(poses []pose) []pose {
	var out []pose
	for _, q := range poses {
		if !slices.ContainsFunc(out, func(o pose) bool { return o.form == q.form }) {
			out = append(out, q)
		}
	}
	return out
}

// addBlocks registers the keep-out areas and, between beds, the walls, and
// stands up the first bed's.
func (p *problem) addBlocks(g ground) {
	for _, k := range g.keepOut {
		low := geom.Pt(k.Min.X-g.margin, k.Min.Y-g.margin)
		p.flaws = append(p.flaws, block{solidBox(p.atlas, k.Width(), k.Height(), p.safety), low})
	}
	if !math.IsInf(p.length, 1) {
		wall := math.Ceil(g.gap + float64(0.05*p.length)) // whole, so as not to leave the grid
		p.pitch = p.length + wall
		p.wall = solidBox(p.atlas, wall, p.height, p.safety)
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
