package geom

import (
	"math"
	"testing"
)

func TestPoint3(t *testing.T) {
	x, y, z := Pt3(1, 0, 0), Pt3(0, 1, 0), Pt3(0, 0, 1)
	for _, c := range [][3]Point3{{x, y, z}, {y, z, x}, {z, x, y}} {
		if got := c[0].Cross(c[1]); got != c[2] {
			t.Errorf("%v × %v = %v, want %v", c[0], c[1], got, c[2])
		}
	}
	p, q := Pt3(2, -3, 6), Pt3(5, 7, -1)
	n := p.Cross(q)
	// Lagrange: |p × q|² + (p · q)² = |p|² |q|².
	if n.Dot(p) != 0 || n.Dot(q) != 0 || n.Dot(n)+p.Dot(q)*p.Dot(q) != p.Dot(p)*q.Dot(q) {
		t.Errorf("%v × %v = %v", p, q, n)
	}
	if p.Len() != 7 || math.Abs(p.Unit().Len()-1) > 1e-15 || (Point3{}).Unit() != (Point3{}) {
		t.Errorf("length %v, unit %v, of zero %v", p.Len(), p.Unit(), Point3{}.Unit())
	}
	if got := p.Plus(q.Times(2)).Minus(p); got != Pt3(10, 14, -2) {
		t.Errorf("p + 2q − p = %v", got)
	}
	if got := p.PlusTimes(q, 2); got != Pt3(12, 11, 4) {
		t.Errorf("p + 2q = %v", got)
	}
}
