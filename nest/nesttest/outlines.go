// Package nesttest makes outlines for tests.
package nesttest

import (
	"math"

	"slingloft/outline/geom"
)

// Box returns the rectangle from (0, 0) to (w, h).
func Box(w, h float64) geom.Ring { return geom.Box{Max: geom.Pt(w, h)}.Ring() }

// Blob returns a star-shaped outline of n vertices about size mm across, some
// of its corners reflex.
func Blob(rnd func() float64, n int, size float64) geom.Ring {
	var r geom.Ring
	for k := range n {
		s, c := math.Sincos(2 * math.Pi * float64(k) / float64(n))
		r = append(r, geom.Pt(c, s).Times(size*(0.25+0.25*rnd())))
	}
	return r
}

// Wavy returns a smooth outline with n vertices and some hollows.
func Wavy(rnd func() float64, n int) geom.Ring {
	a, b := rnd(), rnd()
	var r geom.Ring
	for k := range n {
		u := 2 * math.Pi * float64(k) / float64(n)
		s, c := math.Sincos(u)
		r = append(r, geom.Pt(2*c, s).Times(400+100*a*math.Sin(3*u)+60*b*math.Cos(5*u)))
	}
	return r
}
