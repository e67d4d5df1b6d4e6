package nest

import (
	"cmp"
	"math"
	"slices"

	"slingloft/outline/geom"
)

// heights is how many evenly spaced heights the first placing tries beside
// those at which a piece touches one that lies already.
const heights = 24

// spot is the place of a piece: which pose, and where its form's corner lies.
type spot struct {
	pose int
	at   geom.Point
}

// firstLay places the pieces one after another, the largest first, each as far
// left as it goes (bottom-left filling; Burke, Hellier, Kendall & Whitwell 2006,
// "A new bottom-left-fill heuristic algorithm for the two-dimensional irregular
// packing problem"). On a line across a height the no-fit patches of the pieces
// that lie already are plain intervals, so the leftmost place on it is exact.
// It stands up as many beds as it needs.
func (p *problem) firstLay() []spot {
	order := make([]int, len(p.pieces))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(p.bulk(b), p.bulk(a)) })
	f := filling{p: p, spots: make([]spot, len(p.pieces))}
	f.standBlocks()
	for _, i := range order {
		f.place(i)
	}
	return f.spots
}

// bulk returns the measure by which large pieces come first.
func (p *problem) bulk(i int) float64 {
	f := p.atlas.forms[p.pieces[i].poses[0].form]
	return f.w * f.h
}

// filling is a lay in the making.
type filling struct {
	p     *problem
	spots []spot
	laid  []block // what lies already, pieces and obstacles
	spans []span  // scratch
}

// span is an interval of x that is not free.
type span struct{ lo, hi float64 }

func (f *filling) standBlocks() { f.laid = append(f.laid, f.p.blocks...) }

// place lays piece i in the pose and at the place where it reaches least far
// right, opening beds until it fits.
func (f *filling) place(i int) {
	for {
		best, bestEnd := spot{}, math.Inf(1)
		for k, q := range f.p.pieces[i].poses {
			form := f.p.atlas.forms[q.form]
			for _, y := range f.tries(q.form) {
				x := f.leftmost(q.form, y)
				end := x + form.w
				if x+form.w <= f.end()*(1+1e-12) && (end < bestEnd-1e-9 || (end < bestEnd+1e-9 && y < best.at.Y)) {
					best, bestEnd = spot{k, geom.Pt(x, y)}, end
				}
			}
		}
		if !math.IsInf(bestEnd, 1) {
			f.spots[i] = best
			f.laid = append(f.laid, block{f.p.pieces[i].poses[best.pose].form, best.at})
			return
		}
		f.openBed()
	}
}

// end returns the x up to which pieces may reach.
func (f *filling) end() float64 { return float64(f.p.beds-1)*f.p.pitch + f.p.length }

// openBed adds a bed to the row.
func (f *filling) openBed() {
	had := len(f.p.blocks)
	f.p.setBeds(f.p.beds + 1)
	f.laid = append(f.laid, f.p.blocks[had:]...)
}

// tries returns the heights to try for a form, in rising order.
func (f *filling) tries(id int) []float64 {
	room := f.p.height - f.p.atlas.forms[id].h
	var ys []float64
	for k := range heights {
		ys = append(ys, room*float64(k)/(heights-1))
	}
	for _, l := range f.laid {
		fd, sign := f.p.atlas.between(l.form, id)
		for k := range fd.patches {
			for _, v := range fd.patches[k].ring {
				if y := l.at.Y + sign*v.Y; y > 0 && y < room {
					ys = append(ys, y)
				}
			}
		}
	}
	slices.Sort(ys)
	ys = slices.Compact(ys)
	return thinned(ys, 3*heights)
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
	for _, l := range f.laid {
		fd, sign := f.p.atlas.between(l.form, id)
		dy := sign * (y - l.at.Y)
		for k := range fd.patches {
			lo, hi := fd.patches[k].span(dy)
			if lo >= hi {
				continue
			}
			if sign < 0 {
				lo, hi = -hi, -lo
			}
			f.spans = append(f.spans, span{l.at.X + lo, l.at.X + hi})
		}
	}
	slices.SortFunc(f.spans, func(a, b span) int { return cmp.Compare(a.lo, b.lo) })
	x := 0.0
	for _, s := range f.spans {
		if s.lo >= x {
			return x
		}
		x = math.Max(x, s.hi)
	}
	return x
}
