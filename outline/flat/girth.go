package flat

import (
	"math"
	"slices"

	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// Girth returns the length of cloth across the bed as it was cut, without any load,
// from cord centre to cord centre by the shape's station, mm. Of a net cut that is the
// shape's own girth, of a drawn side what the curve leaves in the bay, of straight
// tails what they have; each less the strain that it was shortened by, and as much wider as
// it was cut again.
func (b *Body) Girth(s *hung.Shape) func(x float64) float64 {
	flat, half := s.Problem.Bed.Lift.Cos(), s.Problem.Bed.Span/2
	hangs := func(x float64) float64 {
		g := s.At(x).Section.Girth()
		if b.Cut == design.Straight && math.Abs(x) > half {
			g = b.departed(x)
		}
		g /= 1 + b.strain.at(x/flat)
		if b.recut != nil {
			g *= b.recut(x / flat)
		}
		return g
	}
	if b.Level.Curve == design.Balanced {
		return hangs
	}
	bay := b.Side.Flat[b.TipIndex(hung.Head) : b.TipIndex(hung.Foot)+1]
	return func(x float64) float64 {
		if math.Abs(x) < half {
			return 2 * heightAt(bay, x/flat)
		}
		return hangs(x)
	}
}

// Hangs returns the girth at a station as the bed hangs under its load, mm: that of the
// shape, and as much wider as it was cut again.
func (b *Body) Hangs(s *hung.Shape, x float64) float64 {
	g := s.At(x).Section.Girth()
	if b.recut != nil {
		g *= b.recut(x / s.Problem.Bed.Lift.Cos())
	}
	return g
}

// HungGirth returns the same as it hangs under its load.
func (b *Body) HungGirth(s *hung.Shape) func(x float64) float64 {
	cut, flat := b.Girth(s), s.Problem.Bed.Lift.Cos()
	return func(x float64) float64 { return cut(x) * (1 + b.strain.at(x/flat)) }
}

// departed returns the girth of a straight cut at a station, between those at which it
// was drawn in a straight line, mm.
func (b *Body) departed(x float64) float64 {
	i, _ := slices.BinarySearchFunc(b.Departures, x, func(d Departure, x float64) int {
		if d.X < x {
			return -1
		}
		return 1
	})
	i = min(max(i, 1), len(b.Departures)-1)
	p, q := b.Departures[i-1], b.Departures[i]
	return p.Cut + float64((x-p.X)/(q.X-p.X)*(q.Cut-p.Cut))
}
