// Package finished hangs a hammock that is made: cloth and cords have their
// lengths, and the shape is found. It shows what a length that came out wrong
// does to the bed, what another sleeper finds in it, and what it carries when the
// weight lies elsewhere.
//
// The two sides are free to differ. Hang lines swing from fixed anchors, bars are
// rigid and may tilt and slew, cords run freely in their channels and give by
// T/EA, where EA is known. Along the bed the cloth carries nothing and lies without
// friction, as in package hung. Across, the sleeper keeps the place on the cloth: a
// section tilts as a whole with its two cords. (Were the cloth free to run
// round the sleeper like a rope round a pulley, a bed with hooks no higher than this
// kind has would not lie steady at all.) With opening 2y between the cords and the
// girth P that the cloth has there
//
//	y = t cos θ + R sin θ      P/2 = t + R θ
//
// give the walls' angle θ, and the bottom lies h = t sin θ + R (1 − cos θ) from the
// line between the cords. Every station keeps its place on the cord and its share
// of the load. A weight w per length with its centre c above the bottom and a to
// the left of the middle, in a section tilted by φ whose cords have their middle at
// height m, has the potential energy
//
//	w (m + a sin φ − (h − c) cos φ)
//
// and the cloth, where its stiffness is known, gives by w cos φ / (2 sin θ) over
// that. All forces follow from this energy.
//
// Axes as in package hung, y positive to the left of one who lies on the back
// with the head at negative x. Lengths mm, forces N, angles rad.
package finished

import (
	"math"

	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// Made is what a hammock is made of.
type Made struct {
	Shape *hung.Shape // as designed and hung
	Lines [2]float64  // hang lines from apex to anchor under the designed load, mm, by [hung.End]
	// Stiffness EA of side cords, legs and hang lines, N; 0: not known, they keep their
	// length.
	SideEA, LegEA, LineEA float64
	Weft                  float64 // of the cloth, N/mm per unit strain; 0: not known, it keeps its length
	// Plain says that cords and cloth were cut as long as they are designed to hang,
	// so that they hang longer. Else they were shortened by their strain in the
	// designed shape. Hang lines are set under load either way.
	Plain bool
	// Girth returns the length of cloth across the bed as it was cut, mm from cord
	// centre to cord centre, at a station of the shape; nil: that of the shape, less its
	// strain unless Plain.
	Girth func(x float64) float64
}

// Hammock is a made hammock on its anchors.
type Hammock struct {
	Made
	anchors [2]geom.Point3
	leg     [2]float64 // unstretched length of cord past the cloth, mm
	line    [2]float64 // unstretched hang lines, mm
}

// Make returns a made hammock on the anchors on which it hangs as designed under
// the designed load.
func Make(m Made) Hammock {
	h := Hammock{Made: m}
	for e, end := range m.Shape.Ends {
		run := m.Lines[e] / math.Sqrt(1+float64(end.Slope*end.Slope))
		h.anchors[e] = geom.Pt3(end.ApexX+float64(hung.End(e).Sign()*run), 0, end.ApexZ+float64(run*end.Slope))
		h.leg[e] = m.cut(end.Leg-end.TailArc, m.Shape.At(end.ApexX).Tension, m.LegEA)
		h.line[e] = m.Lines[e] / longer(math.Hypot(end.Horizontal, end.Vertical), m.LineEA)
	}
	return h
}

// Anchor returns where an end's hang line is tied.
func (h Hammock) Anchor(e hung.End) geom.Point3 { return h.anchors[e] }

// longer returns how many times its unstretched length a cord of stiffness ea has
// under a pull.
func longer(pull, ea float64) float64 {
	if ea == 0 {
		return 1
	}
	return 1 + pull/ea
}

// cut returns the unstretched length of a cord that is designed to be long mm
// under a pull.
func (m Made) cut(long, pull, ea float64) float64 {
	if m.Plain {
		return long
	}
	return long / longer(pull, ea)
}
