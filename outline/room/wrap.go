package room

import (
	"errors"
	"math"

	"gonum.org/v1/gonum/integrate/quad"

	"slingloft/outline/geom"
	"slingloft/outline/numeric"
)

// Body is a part of a body seen along the bed: an ellipse as broad and as deep as it.
type Body struct {
	Breadth float64 // across the bed, mm
	Depth   float64 // up, mm
}

// Errors of [Body.Wrap].
var (
	ErrNarrow  = errors.New("the cloth does not reach between the cords")
	ErrBetween = errors.New("the body does not go in between the cords")
)

// Wrapped is a body that lies in a section: cloth from one cord straight down to the body,
// under it, and up to the other.
type Wrapped struct {
	Body
	Half   float64 // half the opening between the cords, mm
	Height float64 // of the cords above the body's lowest point, mm
	Wall   float64 // angle of the straight cloth above the horizontal, rad
	touch  float64 // angle of the ellipse at which the cloth leaves it
}

// point returns the ellipse's point at an angle, 0 at the bottom and rising along its right
// side, from its middle.
func (b Body) point(a float64) geom.Point {
	sin, cos := math.Sincos(a)
	return geom.Pt(b.Breadth/2*sin, -b.Depth/2*cos)
}

// arc returns the length of the ellipse from its bottom to an angle.
func (b Body) arc(to float64) float64 {
	return quad.Fixed(func(a float64) float64 {
		sin, cos := math.Sincos(a)
		return math.Hypot(b.Breadth/2*cos, b.Depth/2*sin)
	}, 0, to, 64, quad.Legendre{}, 0)
}

// touching returns the angle at which a line from a point beside or above the ellipse, mm
// from its middle, comes to it from below: with u and v the place in half axes the tangent
// at angle a runs where u sin a − v cos a = 1.
func (b Body) touching(half, up float64) float64 {
	u, v := half/(b.Breadth/2), up/(b.Depth/2)
	return max(0, math.Atan2(v, u)+math.Asin(min(1, 1/math.Hypot(u, v))))
}

// long returns half the length of cloth with the cords half apart and up above the middle.
func (b Body) long(half, up float64) float64 {
	a := b.touching(half, up)
	return b.arc(a) + b.point(a).Dist(geom.Pt(half, up))
}

// Wrap lays a body into cloth of the given half girth between cords that stand half to
// either side, mm. Nothing rubs: the body sinks until the cloth is taut.
func (b Body) Wrap(half, girth float64) (Wrapped, error) {
	low := -b.Depth / 2
	if u := half / (b.Breadth / 2); u < 1 {
		low = b.Depth / 2 * math.Sqrt(1-float64(u*u))
	}
	if girth <= half {
		return Wrapped{}, ErrNarrow
	}
	if b.long(half, low) > girth {
		return Wrapped{}, ErrBetween
	}
	up, err := numeric.Root(func(up float64) float64 { return b.long(half, up) - girth }, low, girth+b.Depth, 1e-10)
	if err != nil {
		return Wrapped{}, ErrNarrow
	}
	w := Wrapped{Body: b, Half: half, Height: up + b.Depth/2, touch: b.touching(half, up)}
	sin, cos := math.Sincos(w.touch)
	w.Wall = math.Atan2(b.Depth*sin, b.Breadth*cos)
	return w, nil
}

// Squeeze returns what presses the body from each side under a load, per length as that
// is: its cloth pulls w/(2 sin θ) everywhere, sideways by all of it under the body and by
// cos θ of it at the wall, and the body bears the difference, w/2 tan(θ/2).
func (w Wrapped) Squeeze(load float64) float64 { return load / 2 * math.Tan(w.Wall/2) }

// Side returns how much of the body's height the cloth lies on at each side, mm.
func (w Wrapped) Side() float64 { return w.Depth/2 + w.point(w.touch).Y }

// Cloth returns the cloth from the left cord to the right one, over the body's lowest
// point.
func (w Wrapped) Cloth() geom.Polyline {
	const steps = 40
	out := geom.Polyline{geom.Pt(-w.Half, w.Height)}
	for i := -steps; i <= steps; i++ {
		q := w.point(w.touch * float64(i) / steps)
		out = append(out, geom.Pt(q.X, q.Y+w.Depth/2))
	}
	return append(out, geom.Pt(w.Half, w.Height))
}

// Outline returns the body's outline over its lowest point.
func (b Body) Outline() geom.Ring {
	const steps = 72
	var out geom.Ring
	for i := range steps {
		q := b.point(2 * math.Pi * float64(i) / steps)
		out = append(out, geom.Pt(q.X, q.Y+b.Depth/2))
	}
	return out
}
