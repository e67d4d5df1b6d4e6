package template

import (
	"errors"
	"fmt"
	"math"

	"slingloft/outline/geom"
)

// Offset is one ordinate of a curve: how deep the curve lies below its chord,
// the straight line between its ends, at one station.
type Offset struct {
	Station float64 // along the chord from the curve's first point, mm
	Depth   float64 // square to the chord, mm; positive to the right of the way along the curve
	Arc     float64 // along the curve from its first point, mm
	Deepest bool    // the curve lies farthest from its chord here
}

// maxSteps bounds how many stations or ticks a curve may carry, so that a step
// mistyped by a factor of a thousand is an error rather than a huge file.
const maxSteps = 4096

// Offsets returns the ordinates of curve at every whole step mm along its chord,
// with both ends and the deepest point among them, in the order of stations.
// Between its points the curve is straight. It fails where the curve has no
// chord, doubles back along it or is not finite, and where the step is not
// positive or far too small.
func Offsets(curve geom.Polyline, step float64) ([]Offset, error) {
	c, err := newChordCurve(curve)
	if err != nil {
		return nil, fmt.Errorf("offsets: %w", err)
	}
	if err := checkStep(step, c.chord()); err != nil {
		return nil, fmt.Errorf("offsets: %w", err)
	}
	deep := c.deepest()
	var out []Offset
	add := func(x float64) {
		depth, arc := c.at(x)
		if n := len(out); n > 0 && x-out[n-1].Station < sameStation {
			return
		}
		out = append(out, Offset{x, depth, arc, math.Abs(x-deep) < sameStation})
	}
	for i := 0; ; i++ {
		x := float64(i) * step
		if x > deep && (i == 0 || x-step < deep) {
			add(deep)
		}
		if x >= c.chord() {
			break
		}
		add(x)
	}
	if n := len(out); n > 1 && c.chord()-out[n-1].Station < sameStation {
		out = out[:n-1]
	}
	add(c.chord())
	return out, nil
}

// sameStation is the distance in mm below which two stations count as one.
const sameStation = 1e-6

// checkStep refuses a step that is not positive or cuts length into too many.
func checkStep(step, length float64) error {
	if !(step > 0) || math.IsInf(step, 0) {
		return fmt.Errorf("step of %g mm is not a positive length", step)
	}
	if length/step > maxSteps {
		return fmt.Errorf("step of %g mm is too small for %.0f mm: at least %.3g mm", step, length, length/maxSteps)
	}
	return nil
}

// chordCurve is a curve seen from a straight line, its chord or an axis: x along the
// line, depth to the right of it.
type chordCurve struct {
	x, depth, arc []float64
}

// newChordCurve lays a curve along its chord.
func newChordCurve(curve geom.Polyline) (chordCurve, error) {
	var c chordCurve
	if err := checkCurve(curve); err != nil {
		return c, err
	}
	first, last := curve[0], curve[len(curve)-1]
	along := last.Minus(first).Unit()
	if along == (geom.Point{}) {
		return c, errors.New("the curve ends where it starts")
	}
	run := 0.0
	for i, p := range curve {
		d := p.Minus(first)
		if i > 0 {
			run += p.Dist(curve[i-1])
		}
		c.x = append(c.x, d.Dot(along))
		c.depth = append(c.depth, d.Cross(along))
		c.arc = append(c.arc, run)
		if i > 0 && c.x[i] <= c.x[i-1] {
			return c, fmt.Errorf("the curve doubles back at point %d, %v", i, p)
		}
	}
	// The end lies on the chord by its definition; rounding must not show.
	c.depth[len(c.depth)-1] = 0
	return c, nil
}

// checkCurve refuses a curve of fewer than two points or one that is not finite.
func checkCurve(curve geom.Polyline) error {
	if len(curve) < 2 {
		return errors.New("the curve has fewer than two points")
	}
	for i, p := range curve {
		if !p.Finite() {
			return fmt.Errorf("point %d of the curve is not finite", i)
		}
	}
	return nil
}

// chord returns the length of the chord, mm.
func (c chordCurve) chord() float64 { return c.x[len(c.x)-1] }

// at returns depth and running length at station x, which is clamped.
func (c chordCurve) at(x float64) (depth, arc float64) {
	lo, hi := 0, len(c.x)-1
	for hi-lo > 1 {
		if mid := (lo + hi) / 2; c.x[mid] <= x {
			lo = mid
		} else {
			hi = mid
		}
	}
	t := min(max((x-c.x[lo])/(c.x[hi]-c.x[lo]), 0), 1)
	return c.depth[lo] + t*(c.depth[hi]-c.depth[lo]), c.arc[lo] + t*(c.arc[hi]-c.arc[lo])
}

// deepest returns the station at which the curve lies farthest from its chord,
// the first one of several.
func (c chordCurve) deepest() float64 {
	best := 0
	for i := range c.x {
		if math.Abs(c.depth[i]) > math.Abs(c.depth[best])+1e-9 {
			best = i
		}
	}
	return c.x[best]
}

// between returns the stretch from station a to station b as points (x, −depth).
func (c chordCurve) between(a, b float64) geom.Polyline {
	point := func(x float64) geom.Point {
		depth, _ := c.at(x)
		return geom.Pt(x, -depth)
	}
	out := geom.Polyline{point(a)}
	for i, x := range c.x {
		if x > a+sameStation && x < b-sameStation {
			out = append(out, geom.Pt(x, -c.depth[i]))
		}
	}
	return append(out, point(b))
}

// alongAxis sees a curve from the x axis: depth is below it.
func alongAxis(curve geom.Polyline) (chordCurve, error) {
	var c chordCurve
	if err := checkCurve(curve); err != nil {
		return c, err
	}
	arc := geom.NewArc(curve)
	for i, p := range curve {
		c.x, c.depth, c.arc = append(c.x, p.X), append(c.depth, -p.Y), append(c.arc, arc.Vertex(i))
		if i > 0 && c.x[i] <= c.x[i-1] {
			return c, fmt.Errorf("the curve doubles back at point %d, %v", i, p)
		}
	}
	return c, nil
}

// depthAt returns the depth at station x, which is clamped.
func (c chordCurve) depthAt(x float64) float64 {
	depth, _ := c.at(x)
	return depth
}
