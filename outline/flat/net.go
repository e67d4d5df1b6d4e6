package flat

import (
	"fmt"
	"math"

	"slingloft/outline/design"
	"slingloft/outline/geom"
)

// Surface is a smooth surface over two parameters of about a millimetre each.
// It returns an error where the surface has no such point.
type Surface func(a, b float64) (geom.Point3, error)

// Threads is a piece of a Chebyshev net on a surface: node (i, j) is where warp
// thread j crosses weft thread i. Between neighbours along a thread the distance
// in space is the step of that thread (P. L. Chebyshev, Sur la coupe des
// vêtements, 1878), so that (U[i], V[j]) is the node's place in the flat cloth.
type Threads struct {
	U, V  []float64   // flat places of the weft and the warp threads, mm, from 0
	A, B  [][]float64 // surface parameters of node [i][j]
	Point [][]geom.Point3
}

// ErrLocked is returned where the threads would have to close up altogether.
const ErrLocked = design.Broken(design.ThreadsClose)

// maxNodes bounds a net's size, far above what a hammock needs.
const maxNodes = 4_000_000

// Weave covers a surface with a net whose warp thread 0 is the line b = 0 and
// whose weft thread 0 is the line a = 0, both from (0, 0) towards positive
// parameters. u and v are the rising flat places of the threads, from 0.
func Weave(s Surface, u, v []float64) (Threads, error) {
	if len(u)*len(v) > maxNodes || len(u) < 2 || len(v) < 2 {
		return Threads{}, fmt.Errorf("a net of %d × %d threads is out of bounds", len(u), len(v))
	}
	t := Threads{U: u, V: v}
	for range u {
		t.A = append(t.A, make([]float64, len(v)))
		t.B = append(t.B, make([]float64, len(v)))
		t.Point = append(t.Point, make([]geom.Point3, len(v)))
	}
	var err error
	if t.Point[0][0], err = s(0, 0); err != nil {
		return t, err
	}
	for j := 1; j < len(v); j++ {
		if err := t.along(s, 0, j, 0, j-1, v[j]-v[j-1], false); err != nil {
			return t, err
		}
	}
	for i := 1; i < len(u); i++ {
		if err := t.along(s, i, 0, i-1, 0, u[i]-u[i-1], true); err != nil {
			return t, err
		}
		for j := 1; j < len(v); j++ {
			if err := t.cell(s, i, j); err != nil {
				return t, err
			}
		}
	}
	return t, nil
}

// settled is how closely a node keeps its distances, mm.
const settled = 1e-9

// along places node (i, j) at a distance from node (k, l) on the same axis,
// moving in a for the warp, in b for the weft.
func (t *Threads) along(s Surface, i, j, k, l int, step float64, warp bool) error {
	a, b := t.A[k][l], t.B[k][l]
	from := t.Point[k][l]
	d := step
	at := func(d float64) (geom.Point3, error) {
		if warp {
			return s(a+d, b)
		}
		return s(a, b+d)
	}
	for range 50 {
		p, err := at(d)
		if err != nil {
			return err
		}
		miss := p.Minus(from).Len() - step
		if math.Abs(miss) < settled {
			if warp {
				a += d
			} else {
				b += d
			}
			t.A[i][j], t.B[i][j], t.Point[i][j] = a, b, p
			return nil
		}
		// The distance grows by nearly the parameter on both axes.
		d -= miss
	}
	return ErrLocked
}

// cell places node (i, j) on the surface at the weft step from (i, j−1) and at
// the warp step from (i−1, j), by Newton's method from the parallelogram that the
// last cell suggests.
func (t *Threads) cell(s Surface, i, j int) error {
	weft, warp := t.V[j]-t.V[j-1], t.U[i]-t.U[i-1]
	left, below := t.Point[i-1][j], t.Point[i][j-1]
	a := t.A[i][j-1] + t.A[i-1][j] - t.A[i-1][j-1]
	b := t.B[i][j-1] + t.B[i-1][j] - t.B[i-1][j-1]
	const delta = 1e-4 // of the differences, mm: their error stays far below a step's
	for range 40 {
		p, err := s(a, b)
		if err != nil {
			return err
		}
		toBelow, toLeft := p.Minus(below), p.Minus(left)
		lb, ll := toBelow.Len(), toLeft.Len()
		f, g := lb-weft, ll-warp
		if math.Abs(f) < settled && math.Abs(g) < settled {
			t.A[i][j], t.B[i][j], t.Point[i][j] = a, b, p
			return nil
		}
		pb, err := s(a, b+delta)
		if err != nil {
			return err
		}
		pa, err := s(a+delta, b)
		if err != nil {
			return err
		}
		sa, sb := pa.Minus(p).Times(1/delta), pb.Minus(p).Times(1/delta)
		fa, fb := toBelow.Dot(sa)/lb, toBelow.Dot(sb)/lb
		ga, gb := toLeft.Dot(sa)/ll, toLeft.Dot(sb)/ll
		det := fa*gb - fb*ga
		if !(math.Abs(det) > 1e-6) {
			return ErrLocked
		}
		da, db := (fb*g-f*gb)/det, (f*ga-fa*g)/det
		// A step longer than a cell leaves the neighbourhood of the answer.
		if big := max(math.Abs(da), math.Abs(db)) / max(weft, warp); big > 1 {
			da, db = da/big, db/big
		}
		a, b = a+da, b+db
	}
	return ErrLocked
}

// Angle returns the thread angle at node (i, j), rad, between the warp thread
// towards u = 0 and the weft thread towards v = 0: both lie in the net already.
// i and j are at least 1.
func (t *Threads) Angle(i, j int) float64 {
	p := t.Point[i][j]
	warp, weft := t.Point[i-1][j].Minus(p), t.Point[i][j-1].Minus(p)
	cos := warp.Dot(weft) / (warp.Len() * weft.Len())
	return math.Acos(min(max(cos, -1), 1))
}
