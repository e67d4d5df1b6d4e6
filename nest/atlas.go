package nest

import (
	"math"
	"sync/atomic"

	"slingloft/outline/geom"
)

// atlas holds the forms of a problem and the no-fit field of every pair of them,
// made when it is first asked for. Several goroutines may ask at once; they would
// make the same field.
type atlas struct {
	forms  []form
	gap    float64 // between two pieces
	safety float64
	fields []atomic.Pointer[field] // row a, column b, for a ≤ b
}

// add returns the index of a form with the geometry of f, adding f if there is none.
func (a *atlas) add(f form) int {
	for i, g := range a.forms {
		if f.solid == g.solid && sameRing(f.ring, g.ring, 1e-9*(f.w+f.h)) {
			return i
		}
	}
	a.forms = append(a.forms, f)
	return len(a.forms) - 1
}

// sameRing reports whether p is q moved by some shift, within tol.
func sameRing(p, q geom.Ring, tol float64) bool {
	if len(p) != len(q) {
		return false
	}
	for i := range p {
		d := p[i].Minus(p[0]).Minus(q[i].Minus(q[0]))
		if math.Abs(d.X) > tol || math.Abs(d.Y) > tol {
			return false
		}
	}
	return true
}

// ready makes room for the fields once all forms are known.
func (a *atlas) ready() {
	a.fields = make([]atomic.Pointer[field], len(a.forms)*len(a.forms))
}

// field returns the no-fit field of form b against form a, a ≤ b.
func (a *atlas) field(i, j int) *field {
	at := &a.fields[i*len(a.forms)+j]
	if f := at.Load(); f != nil {
		return f
	}
	gap := a.gap
	if a.forms[i].solid || a.forms[j].solid {
		gap = 0
	}
	f := newField(patches(a.forms[i].parts, a.forms[j].parts, gap, a.safety), a.safety)
	at.Store(f)
	return f
}

// between returns the field of form b against form a in any order, and the sign
// with which the displacement of b from a goes into it.
func (a *atlas) between(i, j int) (f *field, sign float64) {
	if i <= j {
		return a.field(i, j), 1
	}
	return a.field(j, i), -1
}
