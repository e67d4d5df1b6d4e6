package flat

import (
	"errors"
	"math"

	"slingloft/outline/geom"
)

// errOpenEdge is returned where the net ends before the cloth does.
var errOpenEdge = errors.New("the cloth's edge leaves its thread net")

// rim is the side of the half bed on the net: a point on each weft thread, and
// the corner.
type rim struct {
	u, v, x []float64
	bar     int // index of the first point at or past the bar's tip, which is a point itself
}

// side finds the cord on the net, from mid-bay to the end section.
func (w *weave) side() (rim, error) {
	var r rim
	end := math.Abs(w.s.Ends[w.e].TailX)
	half := w.s.Problem.Bed.Span / 2
	row := make([]float64, len(w.net.V))
	for i := range w.net.U {
		copy(row, w.edge[i])
		j, ok := crossing(row)
		if !ok {
			return r, errOpenEdge
		}
		v := rootAt(w.net.V, row, j)
		x := cubicAt(w.net.V, w.net.A[i], v)
		r.u, r.v, r.x = append(r.u, w.net.U[i]), append(r.v, v), append(r.x, x)
		if x > end {
			break
		}
	}
	if r.x[len(r.x)-1] <= end {
		return r, errOpenEdge
	}
	return r.closed(half, end), nil
}

// closed returns the rim cut off at the end section, with the bar's tip and the
// corner as points of their own. The curve is read on either side of the bar
// apart, since the cord has a corner there.
func (r rim) closed(half, end float64) rim {
	k := 0
	for k < len(r.x) && r.x[k] < half-1e-7 {
		k++
	}
	inner := rim{u: r.u[:k], v: r.v[:k], x: r.x[:k]}
	outer := rim{u: r.u[k:], v: r.v[k:], x: r.x[k:]}
	if math.Abs(r.x[k]-half) < 1e-6 {
		inner = rim{u: r.u[:k+1], v: r.v[:k+1], x: r.x[:k+1]}
	}
	uBar, vBar := inner.at(half)
	out := rim{bar: k}
	out.append(r.u[:k], r.v[:k], r.x[:k])
	out.append([]float64{uBar}, []float64{vBar}, []float64{half})
	if outer.x[0]-half < 1e-6 {
		outer = rim{u: outer.u[1:], v: outer.v[1:], x: outer.x[1:]}
	}
	// With the tip in front the outer part reads from the bar on.
	outer = rim{u: prepend(uBar, outer.u), v: prepend(vBar, outer.v), x: prepend(half, outer.x)}
	uEnd, vEnd := outer.at(end)
	for i := 1; i < len(outer.x) && outer.x[i] < end-1e-7; i++ {
		out.append(outer.u[i:i+1], outer.v[i:i+1], outer.x[i:i+1])
	}
	out.append([]float64{uEnd}, []float64{vEnd}, []float64{end})
	return out
}

func prepend(x float64, s []float64) []float64 { return append([]float64{x}, s...) }

func (r *rim) append(u, v, x []float64) {
	r.u, r.v, r.x = append(r.u, u...), append(r.v, v...), append(r.x, x...)
}

// at returns the flat point of the rim at station x, by cubics through the four
// nearest points; it runs on past the last.
func (r rim) at(x float64) (u, v float64) { return cubicAt(r.x, r.u, x), cubicAt(r.x, r.v, x) }

// cut reads the rest of the outline off the net and turns it to the body's
// coordinates.
func (w *weave) cut(r rim) (halfBody, error) {
	sign := w.e.Sign()
	var h halfBody
	n := len(r.u)
	for i := range n {
		h.side.Flat = append(h.side.Flat, geom.Pt(sign*r.u[i], r.v[i]))
		h.side.Hung = append(h.side.Hung, math.Abs(w.s.Arc(0, sign*r.x[i])))
	}
	h.cornerX = sign * r.x[n-1]
	end := math.Abs(w.s.Ends[w.e].TailX)
	var err error
	if h.end, err = w.across(end, r.u[n-1], r.v[n-1], w.barI); err != nil {
		return h, err
	}
	bar, err := w.across(w.s.Problem.Bed.Span/2, r.u[r.bar], r.v[r.bar], 0)
	if err != nil {
		return h, err
	}
	h.bar = bar.Flat
	h.shear = w.shear(end)
	return h, nil
}

// across finds the line of cloth that hangs at station x, from the centre line
// to the corner (u, v) on the rim. from is the first weft thread of the part of
// the net, bay or tail, that is read.
func (w *weave) across(x, u, v float64, from int) (Edge, error) {
	sec, err := w.s.SectionAt(w.e.Sign() * x)
	if err != nil {
		return Edge{}, err
	}
	var e Edge
	sign := w.e.Sign()
	col, along := make([]float64, len(w.net.U)), make([]float64, len(w.net.U))
	for j := 0; j < len(w.net.V) && w.net.V[j] < v-1e-7; j++ {
		for i := range w.net.U {
			col[i] = x - w.net.A[i][j]
			along[i] = w.net.B[i][j]
		}
		i, ok := crossing(col[from:])
		if !ok {
			return e, errOpenEdge
		}
		at := rootAt(w.net.U[from:], col[from:], i)
		e.Flat = append(e.Flat, geom.Pt(sign*at, w.net.V[j]))
		e.Hung = append(e.Hung, cubicAt(w.net.U[from:], along[from:], at))
	}
	e.Flat = append(e.Flat, geom.Pt(sign*u, v))
	e.Hung = append(e.Hung, sec.Girth()/2)
	return e, nil
}

// shear returns the largest shear at a node within the cloth.
func (w *weave) shear(end float64) Shear {
	var s Shear
	for i := 1; i < len(w.net.U); i++ {
		for j := 1; j < len(w.net.V); j++ {
			if w.net.A[i][j] > end || w.edge[i][j] < 0 {
				continue
			}
			if a := math.Abs(math.Pi/2 - w.net.Angle(i, j)); a > s.Angle {
				s = Shear{a, geom.Pt(w.e.Sign()*w.net.U[i], w.net.V[j])}
			}
		}
	}
	return s
}

// crossing returns the index before which row falls from positive to zero or
// below for the first time.
func crossing(row []float64) (int, bool) {
	for j := 1; j < len(row); j++ {
		if row[j] <= 0 {
			return j, true
		}
	}
	return 0, false
}

// rootAt returns the place at which the cubic through the points around j, where
// f falls through zero between j−1 and j, is zero.
func rootAt(at, f []float64, j int) float64 {
	lo, hi := at[j-1], at[j]
	for range 60 {
		mid := (lo + hi) / 2
		if cubicAt(at, f, mid) > 0 {
			lo = mid
		} else {
			hi = mid
		}
	}
	return (lo + hi) / 2
}

// cubicAt returns the value at x of the cubic through the four points nearest to
// x, of fewer where there are fewer; at rises.
func cubicAt(at, f []float64, x float64) float64 {
	lo, hi := 0, len(at)
	for lo < hi { // first place past x
		if mid := (lo + hi) / 2; at[mid] <= x {
			lo = mid + 1
		} else {
			hi = mid
		}
	}
	from := min(max(lo-2, 0), max(len(at)-4, 0))
	to := min(from+4, len(at))
	sum := 0.0
	for j := from; j < to; j++ {
		v := f[j]
		for k := from; k < to; k++ {
			if k != j {
				v *= (x - at[k]) / (at[j] - at[k])
			}
		}
		sum += v
	}
	return sum
}
