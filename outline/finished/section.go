package finished

import (
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/geom"
)

// errNarrow is met where the cords stand further apart than the cloth is wide or
// cross over.
var errNarrow error = design.Broken(design.ClothOffCords)

// cloth is what the cloth is at one station: half its girth unstretched, the
// radius of the round part, and give = w cos φ / (2 K), by which over sin θ its weft
// stretches.
type cloth struct{ half, radius, give float64 }

// The walls' angles between which a section is followed, rad: past the upright as far
// as the walls do not meet; flatter than flattest, which no loaded part comes near, the
// cloth is a band between the cords, see [cloth.flat].
const (
	steepest = 0.9 * math.Pi
	flattest = 0.1
)

// band is by how much flat cloth pulls each cord per mm by which it is too narrow for
// half the opening, N/mm of length: own choice, softer than any cloth. Only parts
// without load can feel it, where it keeps the cords from spreading by more than a hand;
// the stiffness of real cloth would throw a walk along the bed off its way.
const band = 0.02

// shape is a section in its own frame.
type shape struct {
	theta  float64 // θ of the walls
	cot    float64 // cot θ, the inward slope of the walls' pull
	height float64 // h, cords above the bottom
	past   float64 // by how much half the opening is more than that of the flattest section, mm
}

// at returns the length t of a wall at angle θ, and by how much the half opening
// falls per rad: dy/dθ = −t sin θ − (P/2) give (cot θ)².
func (c cloth) at(theta float64) (t, sin, cos, fall float64) {
	sin, cos = math.Sincos(theta)
	long, fall := c.half, 0.0
	if c.give != 0 {
		long = float64(long * (1 + c.give/sin))
		fall = c.half * c.give * cos * cos / float64(sin*sin)
	}
	t = long - float64(c.radius*theta)
	return t, sin, cos, fall + float64(t*sin)
}

// wall returns the section with half an opening y; guess is a θ nearby, 0 for none.
func (c cloth) wall(y, guess float64) (shape, error) {
	if !(y > 0) {
		return shape{}, errNarrow
	}
	if y > 0.99*c.half {
		if s := c.flat(y); s.past > 0 {
			return s, nil
		}
	}
	theta := guess
	if theta == 0 {
		theta = math.Acos(min(y/c.half, 0.99))
	}
	for range 50 {
		t, sin, cos, fall := c.at(theta)
		if !(t > 0) || !(sin > 0) {
			return shape{}, errNarrow
		}
		d := (float64(t*cos) + float64(c.radius*sin) - y) / fall
		theta += max(min(max(d, -0.2), 0.2), -theta/2)
		if math.Abs(d) < 1e-14 {
			break
		}
	}
	t, sin, cos, _ := c.at(theta)
	if !(theta > 0 && theta < steepest && t > 0) {
		return shape{}, errNarrow
	}
	return shape{theta, cos / sin, float64(t*sin) + float64(c.radius*(1-cos)), 0}, nil
}

// flat returns the section with half an opening y past that of the flattest one. The
// cotangent goes on growing there as it does at that one, which holds the cords
// together as taut cloth does and has no end at which a search could fall over.
func (c cloth) flat(y float64) shape {
	t, sin, cos, fall := c.at(flattest)
	past := y - float64(t*cos) - float64(c.radius*sin)
	cot := cos / sin
	more := past / (float64(sin*sin) * fall)
	return shape{flattest, cot + more, float64(t*sin) + float64(c.radius*(1-cos)) - float64(past*(cot+more/2)), past}
}

// frame is a section with its cords at any height: as in the design, but tilted as
// a whole.
type frame struct {
	mid      geom.Point3 // between the cords
	sin, cos float64
	half     float64     // half the opening, along the tilted line from cord to cord
	shape                // against that line and square to it
	outwards geom.Point3 // unit vector to the left cord
	upwards  geom.Point3 // unit vector from the bottom to mid
}

// frame returns the section between two cords at node k of a step.
func (r *run) frame(st *step, at [2]geom.Point3, k int, guess float64) (frame, error) {
	l, r2 := at[bed.Left], at[bed.Right]
	across := math.Sqrt(float64((l.Y-r2.Y)*(l.Y-r2.Y)) + float64((l.Z-r2.Z)*(l.Z-r2.Z)))
	f := frame{mid: l.Plus(r2).Times(0.5), half: across / 2, sin: (l.Z - r2.Z) / across, cos: (l.Y - r2.Y) / across}
	f.outwards, f.upwards = geom.Pt3(0, f.cos, f.sin), geom.Pt3(0, -f.sin, f.cos)
	c := cloth{half: st.half[k] + r.change.Girth/2, radius: st.radius[k]}
	if r.Weft > 0 {
		c.give = max(0, st.w[k]*f.cos/(2*r.Weft))
	}
	var err error
	f.shape, err = c.wall(f.half, guess)
	return f, err
}

// pull returns the force per mm of the design's x with which the section's cloth
// and weight at node k of a step pull each cord, by [bed.Side]: the weight w is
// held by both cords, square to the line between them
//
//	w/2 cos φ ± (w (h − c) sin φ + w a cos φ) / 2y
//
// by moments, and along it w/2 cos φ cot θ inwards by the slope of the walls and
// w/2 sin φ down.
func (r *run) pull(st *step, f *frame, k int) [2]geom.Point3 {
	half := st.w[k] / 2
	apart := float64(half*f.cos*f.cot) + float64(band*f.past)
	more := half * f.sin * (f.height - r.weight.Centre) / f.half
	if r.weight.Aside != 0 {
		more += float64(st.body[k]/2*r.weight.Aside) * f.cos / f.half
	}
	var out [2]geom.Point3
	for s := range out {
		sign := bed.Side(s).Sign()
		out[s] = f.outwards.Times(-(float64(sign*apart) + float64(half*f.sin))).PlusTimes(f.upwards, -(float64(half*f.cos) + float64(sign*more)))
	}
	return out
}
