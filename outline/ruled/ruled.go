// Package ruled lays ruled surfaces flat: strips of cloth between two lines in space that
// run side by side, joined by straight rulings.
//
// Each cell between two neighbouring rulings is laid as two triangles. Whichever of its
// diagonals they meet on, the four sides of every cell keep their lengths, and so does all
// of the outline. Where the surface is developable, as a cylinder or a cone, both diagonals
// give the same flat cell. Where it is not, a cell is twisted: between them lies the flat
// cell whose corner opens midway, which is laid out, so that no direction goes before the
// other.
//
// What the cloth has to give is told by the twist τ of a cell, the angle by which one of
// its lines is turned against the other, seen along a ruling. With a and c what the two
// lines go across the ruling, flat and hung the strip at a part v of the ruling is as wide
// as
//
//	(1 − v) a + v c        |(1 − v) a + v c|, as vectors with τ between them
//
// and along the ruling nothing changes. Where (1 − v) |a| = v |c| the hung strip is
// narrower than the flat one by the factor λ = cos(τ/2), and nowhere by more. Threads that
// lie at half a right angle to the ruling then meet at 2 atan λ in place of a right angle:
// the shear that is asked of the cloth is π/2 − 2 atan λ.
//
// Lengths mm, angles rad.
package ruled

import (
	"math"

	"slingloft/outline/geom"
)

// Strip is a ruled surface: ruling i runs from Near[i] to Far[i]. Both have as many points,
// two at least; neighbouring points of one line may coincide, as at the tip of a cone.
type Strip struct{ Near, Far []geom.Point3 }

// Diagonal says on which diagonal the triangles of a cell meet.
type Diagonal int

// The choices.
const (
	Midway   Diagonal = iota // on neither: the cell opens midway between both
	Forward                  // from the near line on to the far one
	Backward                 // from the far line on to the near one
)

// Flat is a strip laid flat, from its first ruling, which runs up from the origin: the near
// line to the right of it, the far line above.
type Flat struct{ Near, Far geom.Polyline }

// Flat lays a strip flat.
func (s Strip) Flat(d Diagonal) Flat {
	n := len(s.Near)
	f := Flat{make(geom.Polyline, n), make(geom.Polyline, n)}
	f.Far[0] = geom.Pt(0, dist(s.Near[0], s.Far[0]))
	for i := 1; i < n; i++ {
		c := s.cell(i)
		f.Near[i], f.Far[i] = c.laid(f.Near[i-1], f.Far[i-1], c.diagonal(d))
	}
	return f
}

// cell is what a cell measures: its first ruling, its near and far side, its last ruling,
// and its diagonals.
type cell struct{ first, near, far, last, forward, backward float64 }

// cell returns the cell before ruling i.
func (s Strip) cell(i int) cell {
	a, b, c, d := s.Near[i-1], s.Near[i], s.Far[i-1], s.Far[i]
	return cell{dist(a, c), dist(a, b), dist(c, d), dist(b, d), dist(a, d), dist(c, b)}
}

func dist(a, b geom.Point3) float64 { return b.Minus(a).Len() }

// diagonal returns how long the backward diagonal is in the flat cell.
func (c cell) diagonal(d Diagonal) float64 {
	if d == Backward || c.near == 0 || c.far == 0 {
		return c.backward
	}
	// The corner where the near side leaves the first ruling is what a diagonal sets.
	back := angle(c.first, c.near, c.backward)
	fore := angle(c.first, c.forward, c.far) + angle(c.near, c.forward, c.last)
	open := fore
	if d == Midway {
		open = (back + fore) / 2
	}
	return math.Sqrt(max(c.first*c.first+c.near*c.near-float64(2*c.first*c.near*math.Cos(open)), 0))
}

// angle returns the angle between two sides of a triangle opposite the third.
func angle(a, b, opposite float64) float64 {
	if a == 0 || b == 0 {
		return 0
	}
	return math.Acos(min(max((a*a+b*b-float64(opposite*opposite))/(2*a*b), -1), 1))
}

// laid returns the ends of the last ruling, with the first one in place: the backward
// diagonal runs from its far end to the next near point.
func (c cell) laid(near, far geom.Point, back float64) (nextNear, nextFar geom.Point) {
	nextNear = apart(near, far, c.near, back)
	return nextNear, apart(nextNear, far, c.last, c.far)
}

// apart returns the point to the right of the way from p to q that lies so far from each.
func apart(p, q geom.Point, fromP, fromQ float64) geom.Point {
	u, base := q.Minus(p).Unit(), p.Dist(q)
	if base == 0 {
		return p.Plus(geom.Pt(fromP, 0))
	}
	along := (float64(fromP*fromP) - float64(fromQ*fromQ) + float64(base*base)) / (2 * base)
	off := math.Sqrt(max(float64(fromP*fromP)-float64(along*along), 0))
	return p.Plus(u.Times(along)).Minus(u.Left().Times(off))
}

// Twist returns the twist of the cell before ruling i, from 0 to π; 0 of a triangle.
func (s Strip) Twist(i int) float64 {
	r := s.Far[i-1].Plus(s.Far[i]).Minus(s.Near[i-1]).Minus(s.Near[i]).Unit()
	across := func(v geom.Point3) geom.Point3 { return v.PlusTimes(r, -v.Dot(r)) }
	a, c := across(s.Near[i].Minus(s.Near[i-1])), across(s.Far[i].Minus(s.Far[i-1]))
	if a.Len() == 0 || c.Len() == 0 {
		return 0
	}
	return math.Atan2(a.Cross(c).Len(), a.Dot(c))
}

// Shear returns the largest shear that a strip asks of its cloth, and the ruling before
// which it does.
func (s Strip) Shear() (most float64, ruling int) {
	for i := 1; i < len(s.Near); i++ {
		if g := ShearOf(s.Twist(i)); g > most {
			most, ruling = g, i
		}
	}
	return most, ruling
}

// ShearOf returns the shear that a twist asks for.
func ShearOf(twist float64) float64 { return math.Pi/2 - 2*math.Atan(Narrowing(twist)) }

// Narrowing returns how many times as wide as it lies flat a strip of a twist hangs, where
// it is narrowest.
func Narrowing(twist float64) float64 { return math.Cos(twist / 2) }
