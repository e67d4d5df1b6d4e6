package tarp

import (
	"math"

	"slingloft/outline/curve"
	"slingloft/outline/design"
	"slingloft/outline/geom"
)

// Edge is an edge of a sheet, or its ridge, between two corners, counter-clockwise round
// the sheet or the half: hollow towards the cloth on its left.
type Edge struct {
	From, To geom.Point
	Sag      float64     // in its middle, from the straight line; 0: straight
	chord    float64     // straight from corner to corner
	along    geom.Point  // direction of that line
	curve    curve.Curve // nil: straight
}

// edgeOf returns the edge between two corners that is hollow by a part of their distance.
func edgeOf(from, to geom.Point, hollow float64, c design.TarpCurve) (Edge, error) {
	chord := from.Dist(to)
	e := Edge{From: from, To: to, Sag: hollow * chord, chord: chord, along: to.Minus(from).Unit()}
	if hollow == 0 {
		return e, nil
	}
	var err error
	switch c {
	case design.ParabolaEdge:
		e.curve, err = curve.NewParabola(chord, e.Sag)
	case design.ArcEdge:
		e.curve, err = curve.NewArc(chord, e.Sag)
	default:
		e.curve, err = curve.NewCatenary(chord, e.Sag)
	}
	return e, err
}

// turn returns the angle between the edge and the straight line at either corner.
func (e Edge) turn() float64 {
	if e.curve == nil {
		return 0
	}
	return e.curve.EndSlope()
}

// depth returns how far inside of the straight line the edge lies at a distance along it
// from its first corner.
func (e Edge) depth(at float64) float64 {
	half := e.chord / 2
	if e.curve == nil || at <= 0 || at >= 2*half {
		return 0
	}
	return e.curve.Depth(at - half)
}

// inside reports whether a point lies on the cloth's side of the edge, run on straight.
func (e Edge) inside(p geom.Point) bool {
	d := p.Minus(e.From)
	in := e.along.Cross(d)
	return in >= e.Sag || in >= 0 && in >= e.depth(e.along.Dot(d))
}

// edgeTolerance is how far the chords of an edge lie from its curve, mm: half of what any
// file keeps.
const edgeTolerance = 0.005

// Line returns the edge as points from its first corner to its last.
func (e Edge) Line() geom.Polyline {
	if e.curve == nil {
		return geom.Polyline{e.From, e.To}
	}
	// The sharpest radius is that of the parabola, L²/8s, or less for the others by the
	// part that s is of it; a chord c lies c²/8R off.
	chord, u := e.chord, e.along
	radius := float64(chord*chord)/(8*e.Sag) - e.Sag
	n := int(math.Ceil(chord / math.Sqrt(8*radius*edgeTolerance)))
	n += n % 2 // the middle is a point
	out := make(geom.Polyline, n+1)
	for i := range out {
		at := chord * float64(i) / float64(n)
		out[i] = e.From.Plus(u.Times(at)).Plus(u.Left().Times(e.depth(at)))
	}
	out[0], out[n] = e.From, e.To
	return out
}
