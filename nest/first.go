package nest

import (
	"cmp"
	"math"
	"slices"
	"sync/atomic"

	"slingloft/nest/nofit"
	"slingloft/outline/geom"
)

// heights is how many evenly spaced heights the first placing tries beside
// those at which a piece touches one that lies already.
const heights = 24

// firstLay places the pieces one after another, the largest first, each as far
// left as it goes (bottom-left filling; Burke, Hellier, Kendall & Whitwell 2006,
// "A new bottom-left-fill heuristic algorithm for the two-dimensional irregular
// packing problem"). On a line across a height the no-fit patches of the pieces
// that lie already are plain intervals, so the leftmost place on it is exact.
// It stands up as many beds as it needs. A piece that does not go onto an empty bed is
// an error.
func (p *problem) firstLay() ([]spot, error) {
	order := make([]int, len(p.pieces))
	bulk := make([]float64, len(p.pieces))
	for i, pc := range p.pieces {
		size := p.atlas.forms[pc.poses[0].form].size
		order[i], bulk[i] = i, size.X*size.Y
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(bulk[b], bulk[a]) })
	f := filling{p: p, laid: slices.Clone(p.blocks), made: map[*atomic.Pointer[nofit.Field]]*region{}}
	spots := make([]spot, len(p.pieces))
	for _, i := range order {
		var ok bool
		if spots[i], ok = f.place(p.pieces[i]); !ok {
			return nil, &KeptOffError{p.pieces[i].item}
		}
	}
	return spots, nil
}

// filling is a lay in the making.
type filling struct {
	p     *problem
	laid  []spot          // what lies already, pieces and obstacles
	spans []geom.Interval // of x that are not free; scratch
	made  map[*atomic.Pointer[nofit.Field]]*region
	faces []face // of a form against all that lies; scratch
}

// region is a no-fit region in patches.
type region struct {
	patches  []nofit.Patch
	box      geom.Box
	vertices int
}

// mostMade is how many regions are kept: of simple outlines some 100 MB of them.
const mostMade = 100_000

// face is how a form meets one of those that lie.
type face struct {
	at        geom.Point // of the one that lies
	link      *link
	region    *region
	low, high float64 // heights over it between which the two can meet
}

// face gathers how a form meets all that lies.
func (f *filling) face(id int) {
	f.faces = f.faces[:0]
	for _, b := range f.laid {
		l := f.p.atlas.between(b.form, id)
		r := f.made[l.field]
		if r == nil {
			if len(f.made) >= mostMade {
				clear(f.made)
			}
			r = f.p.roughRegion(l)
			f.made[l.field] = r
		}
		u, v := l.outOf(r.box.Min).Y, l.outOf(r.box.Max).Y
		f.faces = append(f.faces, face{b.at, l, r, min(u, v), max(u, v)})
	}
}

// roughRegion returns the no-fit region of the two shapes of l by their rough covers.
func (p *problem) roughRegion(l *link) *region {
	r := &region{patches: p.atlas.patches(l, func(s *shape) []geom.Ring { return s.rough }), box: geom.EmptyBox()}
	for _, q := range r.patches {
		r.box = r.box.Union(q.Ring.Bounds())
		r.vertices += len(q.Ring)
	}
	return r
}

// place returns the spot where a piece reaches least far right, on a new bed where it
// fits on none, and reports whether it does there.
func (f *filling) place(pc piece) (at spot, ok bool) {
	for range 2 {
		best, bestEnd := spot{}, math.Inf(1)
		for _, q := range pc.poses {
			f.face(q.form)
			for _, y := range f.tries(q.form) {
				x := f.leftmost(y)
				end := x + f.p.atlas.forms[q.form].size.X
				if end <= f.end()*(1+1e-12) && (end < bestEnd-1e-9 || (end < bestEnd+1e-9 && y < best.at.Y)) {
					best, bestEnd = spot{q.form, geom.Pt(x, y)}, end
				}
			}
		}
		if !math.IsInf(bestEnd, 1) {
			f.laid = append(f.laid, best)
			return best, true
		}
		had := len(f.p.blocks)
		f.p.setBeds(f.p.beds + 1)
		f.laid = append(f.laid, f.p.blocks[had:]...)
	}
	// It may be just as long as the bed, when rounding alone keeps it off the walls.
	best := spot{pc.poses[0].form, geom.Pt(float64(f.p.beds-1)*f.p.pitch, 0)}
	f.laid = append(f.laid, best)
	return best, len(f.p.flaws) == 0
}

// end returns the x up to which pieces may reach.
func (f *filling) end() float64 { return float64(float64(f.p.beds-1)*f.p.pitch) + f.p.length }

// tries returns the heights to try for a form, in rising order.
func (f *filling) tries(id int) []float64 {
	room := f.p.height - f.p.atlas.forms[id].size.Y
	var ys []float64
	for k := range heights {
		y := room * float64(k) / (heights - 1)
		if f.p.grid > 0 {
			y = math.Floor(y/f.p.grid) * f.p.grid
		}
		ys = append(ys, y)
	}
	all, n := 0, 0
	for _, b := range f.faces {
		all += b.region.vertices
	}
	each := 1 + all/mostHeights
	for _, b := range f.faces {
		for k := range b.region.patches {
			for _, v := range b.region.patches[k].Ring {
				if n++; n%each != 0 {
					continue
				}
				dy := b.link.outOf(v).Y
				if y := b.at.Y + dy + f.lift(dy); y > 0 && y < room {
					ys = append(ys, y)
				}
			}
		}
	}
	slices.Sort(ys)
	return thinned(slices.Compact(ys), f.p.triesOf())
}

// triesOf returns how many heights are tried for each piece.
func (p *problem) triesOf() int { return max(min(3*heights, 3*heights*60/max(len(p.pieces), 1)), 16) }

// mostHeights is how many heights at which a form touches others are gathered; of more,
// every so many count.
const mostHeights = 200_000

// lift returns what a touch at height dy above a piece needs so that rounding
// cannot make it an overlap: nothing on the grid, where sums are exact.
func (f *filling) lift(dy float64) float64 {
	if f.p.grid > 0 {
		return 0
	}
	return math.Copysign(f.p.safety, dy)
}

// thinned returns at most n of ys, evenly picked, the ends among them.
func thinned(ys []float64, n int) []float64 {
	if len(ys) <= n {
		return ys
	}
	out := make([]float64, n)
	for i := range out {
		out[i] = ys[i*(len(ys)-1)/(n-1)]
	}
	return out
}

// leftmost returns the least free x ≥ 0 at height y for the form that faces what lies.
func (f *filling) leftmost(y float64) float64 {
	f.spans = f.spans[:0]
	for i := range f.faces {
		b := &f.faces[i]
		if y <= b.at.Y+b.low-f.p.safety || y >= b.at.Y+b.high+f.p.safety {
			continue
		}
		x0, y0 := b.link.into(0, y-b.at.Y)
		u, d := geom.Pt(x0, y0), geom.Pt(b.link.cos, b.link.sin)
		for k := range b.region.patches {
			if s := b.region.patches[k].Span(u, d, f.p.safety); s.Lo < s.Hi {
				f.spans = append(f.spans, geom.Interval{Lo: b.at.X + s.Lo, Hi: b.at.X + s.Hi})
			}
		}
	}
	slices.SortFunc(f.spans, func(a, b geom.Interval) int { return cmp.Compare(a.Lo, b.Lo) })
	x := 0.0
	for _, s := range f.spans {
		if s.Lo >= x {
			return x
		}
		x = math.Max(x, s.Hi)
	}
	if f.p.grid > 0 {
		if on := float64(math.Round(x/f.p.grid) * f.p.grid); math.Abs(on-x) <= 2*f.p.safety {
			return on
		}
	}
	return x
}
