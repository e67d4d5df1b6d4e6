package flat

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/geom"
)

// ErrOpenEdge is returned where the net ends before the cloth does.
const ErrOpenEdge = design.Broken(design.EdgeLeavesNet)

// errLeans is returned where a leaning end section would reach back to the bar.
var errLeans error = &design.Advised{
	Found: design.Found(design.LeansOverBar),
	Hint:  design.Say(design.LongerTail),
}

// near is how close to a tip or a corner the next point of an outline may lie,
// mm: a shorter segment would have no direction to speak of.
const near = 0.5

// sideLine is the side of the half bed on the net: a point on each weft thread, and
// the corner.
type sideLine struct {
	u, v, x []float64
	past    []float64 // how far the point lies outside the end plane, mm
	bar     int       // index of the bar's tip
}

// side finds the cord on the net, from mid-bay to the end section.
func (w *weave) side() (sideLine, error) {
	var r sideLine
	for i := range w.net.U {
		j, ok := crossing(w.edge[i])
		if !ok {
			return r, ErrOpenEdge
		}
		v := rootAt(w.net.V, w.edge[i], j)
		x := cubicAt(w.net.V, w.net.A[i], v)
		y, z := w.s.Cord(w.e.Sign() * x)
		past := w.plane.past(geom.Pt3(x, y, z))
		r.push(w.net.U[i], v, x, past)
		// A few points more, so that the corner lies between points.
		if n := len(r.past); past > 0 && n > 2 && r.past[n-2] > 0 {
			break
		}
	}
	if r.past[len(r.past)-1] <= 0 {
		return r, ErrOpenEdge
	}
	return r.closed(w.s.Problem.Bed.Span / 2)
}

func (r *sideLine) push(u, v, x, past float64) {
	r.u, r.v = append(r.u, u), append(r.v, v)
	r.x, r.past = append(r.x, x), append(r.past, past)
}

// part returns the points from i up to but not including j.
func (r sideLine) part(i, j int) sideLine {
	return sideLine{u: r.u[i:j], v: r.v[i:j], x: r.x[i:j], past: r.past[i:j]}
}

// closed returns the side cut off at the end section, with the bar's tip and the
// corner as points of their own. The curve is read on either side of the bar
// apart, since the cord has a corner there.
func (r sideLine) closed(half float64) (sideLine, error) {
	const same = 1e-6 // a point this close to the tip is the tip
	k := 0
	for k < len(r.x) && r.x[k] < half-same {
		k++
	}
	if k >= len(r.x) {
		return sideLine{}, errLeans
	}
	inner, outer := r.part(0, k), r.part(k, len(r.x))
	if r.x[k] < half+same {
		inner, outer = r.part(0, k+1), r.part(k+1, len(r.x))
	}
	var out sideLine
	for i := range k {
		if r.x[i] < half-near {
			out.push(r.u[i], r.v[i], r.x[i], r.past[i])
		}
	}
	at := func(of []float64) float64 { return cubicAt(inner.x, of, half) }
	out.bar = len(out.x)
	out.push(at(inner.u), at(inner.v), half, at(inner.past))
	tail := out.part(out.bar, out.bar+1)
	for i := range outer.x {
		if outer.x[i] < half+near {
			continue
		}
		tail.push(outer.u[i], outer.v[i], outer.x[i], outer.past[i])
	}
	if tail.past[0] > -near {
		return sideLine{}, errLeans
	}
	for i := 1; tail.past[i] < -near; i++ {
		out.push(tail.u[i], tail.v[i], tail.x[i], tail.past[i])
	}
	end := func(of []float64) float64 { return cubicAt(tail.past, of, 0) }
	out.push(end(tail.u), end(tail.v), end(tail.x), 0)
	return out, nil
}

// cut reads the rest of the outline off the net and turns it to the body's
// coordinates.
func (w *weave) cut(r sideLine) (halfBody, error) {
	sign := w.e.Sign()
	var h halfBody
	n := len(r.u)
	for i := range n {
		h.side.Flat = append(h.side.Flat, geom.Pt(sign*r.u[i], r.v[i]))
		h.side.Hung = append(h.side.Hung, math.Abs(w.s.Arc(0, sign*r.x[i])))
	}
	h.cornerX = sign * r.x[n-1]
	last, err := w.s.SectionAt(h.cornerX)
	if err != nil {
		return h, err
	}
	curve, err := w.plane.curve(bedSurface(w.s, w.e), last.Girth()/2)
	if err != nil {
		return h, err
	}
	h.section = curve.points
	corner := geom.Pt(r.u[n-1], r.v[n-1])
	if h.end, err = w.across(w.plane.past, corner, w.barI); err != nil {
		return h, err
	}
	for i, q := range h.end.Hung {
		h.end.Hung[i] = curve.run(q)
	}
	atBar := func(p geom.Point3) float64 { return p.X - w.s.Problem.Bed.Span/2 }
	bar, err := w.across(atBar, geom.Pt(r.u[r.bar], r.v[r.bar]), 0)
	if err != nil {
		return h, err
	}
	h.bar = bar.Flat
	h.shear = w.shear(corner)
	return h, nil
}

// across finds the line of cloth on which past is 0, from the centre line to the
// corner on the side, given in the half's own coordinates. from is the first weft
// thread of the part of the net, bay or tail, that is read. The hung values are
// the lengths along the section from the bottom line.
func (w *weave) across(past func(geom.Point3) float64, corner geom.Point, from int) (Edge, error) {
	var e Edge
	sign := w.e.Sign()
	u := w.net.U[from:]
	col, along := make([]float64, len(u)), make([]float64, len(u))
	for j := 0; j < len(w.net.V) && w.net.V[j] < corner.Y-near; j++ {
		for i := range u {
			col[i] = -past(w.net.Point[from+i][j])
			along[i] = w.net.B[from+i][j]
		}
		i, ok := crossing(col)
		if !ok {
			return e, ErrOpenEdge
		}
		at := rootAt(u, col, i)
		e.Flat = append(e.Flat, geom.Pt(sign*at, w.net.V[j]))
		e.Hung = append(e.Hung, cubicAt(u, along, at))
	}
	e.Flat = append(e.Flat, geom.Pt(sign*corner.X, corner.Y))
	e.Hung = append(e.Hung, math.Inf(1)) // the cord itself
	return e, nil
}

// shear returns the largest shear within the cloth: at a node, or at the corner,
// to which the angles of the last cells are carried on.
func (w *weave) shear(corner geom.Point) Shear {
	n := &w.net
	var s Shear
	take := func(angle float64, at geom.Point) {
		if a := math.Abs(math.Pi/2 - angle); a > s.Angle {
			s = Shear{a, geom.Pt(w.e.Sign()*at.X, at.Y)}
		}
	}
	last := [2]int{}
	for i := 1; i < len(n.U); i++ {
		for j := 1; j < len(n.V); j++ {
			if w.plane.past(n.Point[i][j]) > 0 || w.edge[i][j] < 0 {
				continue
			}
			take(n.Angle(i, j), geom.Pt(n.U[i], n.V[j]))
			if geom.Pt(n.U[i], n.V[j]).Dist(corner) < geom.Pt(n.U[last[0]], n.V[last[1]]).Dist(corner) {
				last = [2]int{i, j}
			}
		}
	}
	if i, j := last[0], last[1]; i > 1 && j > 1 {
		// A node's angle is that of the cell behind it.
		a := n.Angle(i, j)
		u := (corner.X-n.U[i])/(n.U[i]-n.U[i-1]) + 0.5
		v := (corner.Y-n.V[j])/(n.V[j]-n.V[j-1]) + 0.5
		take(a+u*(a-n.Angle(i-1, j))+v*(a-n.Angle(i, j-1)), corner)
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
