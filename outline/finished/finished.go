// Package finished hangs a hammock that is made: cloth and cords have their
// lengths, and the shape is found. It shows what a length that came out wrong
// does to the bed, and what another sleeper finds in it.
//
// The two sides are free to differ. Hang lines swing from fixed hooks, bars are
// rigid and may tilt and slew, cords do not stretch and run freely in their
// channels. Along the bed the cloth carries nothing and lies without friction, as
// in package hung. Across, the sleeper lies in the middle of the cloth and stays
// there: a section tilts as a whole with its two cords. (Were the cloth free to run
// round the sleeper like a rope round a pulley, a bed with hooks no higher than this
// kind has would not lie steady at all.) With opening 2y between the cords and the
// girth P that the cloth has there
//
//	y = t cos θ + R sin θ      P/2 = t + R θ
//
// give the walls' angle θ, and the bottom lies h = t sin θ + R (1 − cos θ) from the
// line between the cords. Every station keeps its place on the cord and its share
// of the load.
//
// Axes as in package hung, y positive to the left of one who lies on the back
// with the head at negative x. Lengths mm, forces N.
package finished

import (
	"math"

	"slingloft/outline/hung"
	"slingloft/outline/numeric"
)

// Vec is a place or a force in space.
type Vec struct{ X, Y, Z float64 }

// Plus returns a + k b.
func (a Vec) Plus(b Vec, k float64) Vec { return Vec{a.X + k*b.X, a.Y + k*b.Y, a.Z + k*b.Z} }

// Len returns the length of a.
func (a Vec) Len() float64 { return math.Sqrt(a.X*a.X + a.Y*a.Y + a.Z*a.Z) }

// Unit returns a scaled to length 1.
func (a Vec) Unit() Vec { return Vec{}.Plus(a, 1/a.Len()) }

// Side names a side of the hammock.
type Side int

// The sides.
const (
	Left Side = iota
	Right
)

// sign returns 1 for the left and −1 for the right.
func (s Side) sign() float64 { return 1 - 2*float64(s) }

// Change is by how much lengths differ from the design, mm; too long is positive.
type Change struct {
	Leg  [2][2]float64 // by [hung.End] and [Side]
	Side [2]float64    // side cords from tip to tip, by [Side]
	Line [2]float64    // hang lines from apex to hook, by [hung.End]
	Bar  [2]float64    // by [hung.End]
}

// Hammock is a made hammock on its hooks.
type Hammock struct {
	shape *hung.Shape
	hooks [2]Vec
	lines [2]float64
}

// Of returns the hammock that a shape describes, on hang lines of the given
// lengths, mm, by [hung.End].
func Of(s *hung.Shape, lines [2]float64) Hammock {
	h := Hammock{shape: s, lines: lines}
	for e, end := range s.Ends {
		run := lines[e] / math.Sqrt(1+end.Slope*end.Slope)
		h.hooks[e] = Vec{end.ApexX + hung.End(e).Sign()*run, 0, end.ApexZ + run*end.Slope}
	}
	return h
}

// Station is the bed at one station of the design.
type Station struct {
	X      float64    // station of the design, mm
	Bottom Vec        // the bottom line there; X as it hangs
	Cords  [2]Vec     // by [Side]
	Pull   [2]float64 // in them, N
	Tilt   float64    // across the bed, left side up, rad
	Wall   float64    // θ, rad
}

// Pose is how a made hammock hangs.
type Pose struct {
	Tips  [2][2]Vec     // bar tips, by [hung.End] and [Side]
	Apex  [2]Vec        // by [hung.End]
	Bed   []Station     // from the head tail's end to the foot tail's end
	Line  [2]float64    // pull in the hang lines, N
	Bar   [2]float64    // thrust along the bars, N
	Leg   [2][2]float64 // pull in the legs at the apex, N
	Cord  [2]float64    // largest pull in a side cord, N
	Level Level
}

// Weight is one who lies in the hammock.
type Weight struct {
	Load   hung.Load
	Centre float64 // height of the centre of mass above the bed, mm
}

// Hang finds how the hammock hangs with the given changes under a weight. It walks
// there from the designed shape and fails with numeric.ErrNoConvergence, or the
// reason a section cannot be, where no such pose is found.
func (h Hammock) Hang(c Change, w Weight) (Pose, error) {
	x := h.designed()
	const smallest = 1.0 / 64
	for done, stride := 0.0, 1.0; done < 1; {
		next := min(done+stride, 1)
		r := run{Hammock: h, change: c.Times(next), centre: w.Centre, steps: h.steps(blend(h.shape.Problem.Load, w.Load, next))}
		y, err := numeric.Solve(r.misses, x, r.differences(), tolerance)
		switch {
		case err == nil:
			x, done = y, next
		case stride > smallest:
			stride /= 2
		default:
			return Pose{}, err
		}
	}
	r := run{Hammock: h, change: c, centre: w.Centre, steps: h.steps(w.Load)}
	p, _, err := r.hang(x)
	p.Level = p.level(h.shape.Problem.Bed.Span / 2)
	return p, err
}

// blend returns a load between two others: a for part 0, b for part 1.
func blend(a, b hung.Load, part float64) hung.Load {
	var out hung.Load
	add := func(l hung.Load, k float64) {
		for _, s := range l {
			if k > 0 {
				out = append(out, hung.Stretch{From: s.From, To: s.To, Start: k * s.Start, End: k * s.End})
			}
		}
	}
	add(a, 1-part)
	add(b, part)
	return out
}

// Times returns the change with every length times k.
func (c Change) Times(k float64) Change {
	for e := range 2 {
		for s := range 2 {
			c.Leg[e][s] *= k
		}
		c.Side[e] *= k
		c.Line[e] *= k
		c.Bar[e] *= k
	}
	return c
}

// tolerance is what may remain of any gap in the closed figure, mm.
const tolerance = 1e-8

// run is one search for a pose.
type run struct {
	Hammock
	change Change
	centre float64
	steps  []step
}

// designed returns the unknowns of the designed shape: the pulls of both cords at
// the head apex and the thrusts of both bars.
func (h Hammock) designed() []float64 {
	s := h.shape
	q := s.At(s.Ends[hung.Head].TailX)
	return []float64{s.Thrust, s.Thrust * q.DY, s.Thrust * q.DZ, s.Thrust, -s.Thrust * q.DY, s.Thrust * q.DZ,
		s.Ends[hung.Head].BarCompression, s.Ends[hung.Foot].BarCompression}
}

// differences returns the steps for differences in the unknowns, N.
func (r *run) differences() []float64 {
	d := make([]float64, 8)
	for i := range d {
		d[i] = 1e-5 * r.shape.Thrust
	}
	return d
}

// misses returns by how much the figure does not close, mm: both bars' lengths,
// the two legs at the foot apex, the foot hook.
func (r *run) misses(x []float64) ([]float64, error) {
	_, miss, err := r.hang(x)
	return miss, err
}
