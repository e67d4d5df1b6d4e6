package finished

import (
	"errors"
	"math"
)

// errNarrow is met where the cords stand further apart than the cloth is wide or
// cross over.
var errNarrow = errors.New("the cloth does not reach between the cords")

// cloth is what the cloth is at one station: half its girth unstretched, the
// radius of the round part, and give = w cos φ / (2 K), by which over sin θ its weft
// stretches.
type cloth struct{ half, radius, give float64 }

// wall returns θ and h for half an opening y; guess is a θ nearby, 0 for none.
func (c cloth) wall(y, guess float64) (theta, height float64, err error) {
	if !(y > 0) || c.give == 0 && !(y < c.half) {
		return 0, 0, errNarrow
	}
	theta = guess
	if theta == 0 {
		theta = math.Acos(min(y/c.half, 0.99))
	}
	var t, sin, cos float64
	for range 50 {
		sin, cos = math.Sincos(theta)
		long := c.half
		if c.give != 0 {
			long *= 1 + c.give/sin
		}
		t = long - float64(c.radius*theta)
		if !(t > 0) || !(sin > 0) {
			return 0, 0, errNarrow
		}
		// dy/dθ = −t sin θ − (P/2) give (cot θ)².
		slope := float64(t * sin)
		if c.give != 0 {
			slope += float64(c.half * c.give * cos * cos / (sin * sin))
		}
		d := (float64(t*cos) + float64(c.radius*sin) - y) / slope
		step := min(max(d, -0.2), 0.2)
		theta += max(step, -0.5*theta)
		if math.Abs(d) < 1e-14 {
			break
		}
	}
	sin, cos = math.Sincos(theta)
	long := c.half
	if c.give != 0 {
		long *= 1 + c.give/sin
	}
	t = long - float64(c.radius*theta)
	if !(theta > 0 && theta < math.Pi/2 && t > 0) {
		return 0, 0, errNarrow
	}
	return theta, float64(t*sin) + float64(c.radius*(1-cos)), nil
}

// frame is a section with its cords at any height: as in the design, but tilted as
// a whole.
type frame struct {
	mid      Vec // between the cords
	sin, cos float64
	half     float64 // half the opening, along the tilted line from cord to cord
	theta    float64 // of the walls against that line
	height   float64 // cords above the bottom, square to that line
	outwards Vec     // unit vector to the left cord
	upwards  Vec     // unit vector from the bottom to mid
}

// frame returns the section between two cords at node k of a step.
func (r *run) frame(st *step, at [2]Vec, k int, guess float64) (frame, error) {
	l, r2 := at[Left], at[Right]
	across := math.Sqrt(float64((l.Y-r2.Y)*(l.Y-r2.Y)) + float64((l.Z-r2.Z)*(l.Z-r2.Z)))
	f := frame{mid: Vec{}.Plus(l.Plus(r2, 1), 0.5), half: across / 2, sin: (l.Z - r2.Z) / across, cos: (l.Y - r2.Y) / across}
	f.outwards, f.upwards = Vec{0, f.cos, f.sin}, Vec{0, -f.sin, f.cos}
	c := cloth{half: st.half[k] + r.change.Girth/2, radius: st.radius[k]}
	if r.Weft > 0 {
		c.give = max(0, st.w[k]*f.cos/(2*r.Weft))
	}
	var err error
	f.theta, f.height, err = c.wall(f.half, guess)
	return f, err
}

// pull returns the force per mm of the design's x with which the section's cloth
// and weight at node k of a step pull each cord, by [Side]: the weight w is
// held by both cords, square to the line between them
//
//	w/2 cos φ ± (w (h − c) sin φ + w a cos φ) / 2y
//
// by moments, and along it w/2 cos φ cot θ inwards by the slope of the walls and
// w/2 sin φ down.
func (r *run) pull(st *step, f *frame, k int) [2]Vec {
	half := st.w[k] / 2
	apart := half * f.cos / math.Tan(f.theta)
	more := half * f.sin * (f.height - r.weight.Centre) / f.half
	if r.weight.Aside != 0 {
		more += float64(st.body[k]/2*r.weight.Aside) * f.cos / f.half
	}
	var out [2]Vec
	for s := range out {
		sign := Side(s).sign()
		out[s] = Vec{}.Plus(f.outwards, -(float64(sign*apart)+float64(half*f.sin))).Plus(f.upwards, -(float64(half*f.cos) + float64(sign*more)))
	}
	return out
}
