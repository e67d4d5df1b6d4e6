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
// It stands up as many beds as it needs.
func (p *problem) firstLay() []spot {
	order := make([]int, len(p.pieces))
	bulk := make([]float64, len(p.pieces))
	for i, pc := range p.pieces {
		size := p.atlas.forms[pc.poses[0].form].size
		order[i], bulk[i] = i, size.X*size.Y
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(bulk[b], bulk[a]) })
	f := filling{p: p, laid: slices.Clone(p.blocks), made: map[*atomic.Pointer[nofit.Field]][]nofit.Patch{}}
	spots := make([]spot, len(p.pieces))
	for _, i := range order {
		spots[i] = f.place(p.pieces[i])
	}
	return spots
}

// filling is a lay in the making.
type filling struct {
	p     *problem
	laid  []spot          // what lies already, pieces and obstacles
	spans []geom.Interval // of x that are not free; scratch
	made  map[*atomic.Pointer[nofit.Field]][]nofit.Patch
}

// place returns the spot where a piece reaches least far right, opening beds until
// it fits.
func (f *filling) place(pc piece) spot {
	for {
		best, bestEnd := spot{}, math.Inf(1)
		for _, q := range pc.poses {
			for _, y := range f.tries(q.form) {
				x := f.leftmost(q.form, y)
				end := x + f.p.atlas.forms[q.form].size.X
				if end <= f.end()*(1+1e-12) && (end < bestEnd-1e-9 || (end < bestEnd+1e-9 && y < best.at.Y)) {
					best, bestEnd = spot{q.form, geom.Pt(x, y)}, end
				}
			}
		}
		if !math.IsInf(bestEnd, 1) {
			f.laid = append(f.laid, best)
			return best
		}
		had := len(f.p.blocks)
		f.p.setBeds(f.p.beds + 1)
		f.laid = append(f.laid, f.p.blocks[had:]...)
	}
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
	for _, b := range f.laid {
		l, ps := f.patches(b.form, id)
		for k := range ps {
			for _, v := range ps[k].Ring {
				dy := l.outOf(v).Y
				if y := b.at.Y + dy + f.lift(dy); y > 0 && y < room {
					ys = append(ys, y)
				}
			}
		}
	}
	slices.Sort(ys)
	return thinned(slices.Compact(ys), max(min(3*heights, 3*heights*60/len(f.p.pieces)), 16))
}

// patches returns the no-fit patches of form id against form g, and how
// displacements go into them.
func (f *filling) patches(g, id int) (*link, []nofit.Patch) {
	l := f.p.atlas.between(g, id)
	ps, ok := f.made[l.field]
	if !ok {
		ps = f.p.atlas.patches(l)
		f.made[l.field] = ps
	}
	return l, ps
}

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

// leftmost returns the least free x ≥ 0 for a form at height y.
func (f *filling) leftmost(id int, y float64) float64 {
	f.spans = f.spans[:0]
	for _, b := range f.laid {
		l, ps := f.patches(b.form, id)
		x0, y0 := l.into(0, y-b.at.Y)
		u, d := geom.Pt(x0, y0), geom.Pt(l.cos, l.sin)
		for k := range ps {
			if s := ps[k].Span(u, d, f.p.safety); s.Lo < s.Hi {
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
