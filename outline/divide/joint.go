package divide

import (
	"fmt"
	"math"

	"slingloft/outline/design"
	"slingloft/outline/geom"
)

// Joint says how the parts of a divided template are joined: a dovetail tongue
// in a socket holds them, their straight shoulders butt, and two holes, one on
// either side, prove the joint.
//
// Outlines are the finished edges, as all outlines are: a machine that follows
// them offsets its path by half its kerf.
type Joint struct {
	Kerf      float64 // width of cut, mm: corners and holes are made no tighter
	Clearance float64 // gap between tongue and socket, mm; the shoulders touch
}

// JointHoles is the distance between the centres of the two alignment holes of a
// joint, mm.
const JointHoles = 40.0

// Proportions of the tongue, own choice. With them a flank leans by
// atan((1 − neck)/(2 · depth)) = 23.6 degrees, so that a tongue with clearance c
// can be drawn out by no more than c/sin 23.6° = 2.5 c.
const (
	largestHead  = 30.0     // mm
	smallestHead = 12.0     // mm
	headShare    = 0.4      // of the width that a tongue has for itself
	neckShare    = 16. / 30 // of the head
	depthShare   = 16. / 30 // of the head
	cornerShare  = 0.06     // corner radius, of the head
	jointWall    = 3.0      // least material beside a tongue or a hole, mm
	smallestHole = 3.0      // diameter, mm
	largestKerf  = 6.0      // mm
)

// trueWithin is how far a joined template may be off, mm.
const trueWithin = 0.2

// NewJoint returns the joint for a machine of the given kerf, mm. The clearance is
// a quarter of the kerf, about as well as makers know theirs (own choice), but no
// more than lets the joined outline be true within 0.2 mm wherever the play goes.
func NewJoint(kerf float64) Joint {
	return Joint{Kerf: kerf, Clearance: min(max(kerf/4, 0.03), trueWithin*math.Sin(flank()))}
}

// flank returns the angle by which a tongue's sides lean, rad.
func flank() float64 { return math.Atan((1 - neckShare) / (2 * depthShare)) }

func (j Joint) check() error {
	if !(j.Kerf >= 0 && j.Kerf <= largestKerf) {
		return &design.Breach{Found: design.Found(design.KerfOfJoint, j.Kerf, largestKerf)}
	}
	if limit := trueWithin; !(j.Clearance >= 0 && j.Clearance <= limit) {
		return fmt.Errorf("joint clearance of %g mm: it takes 0 to %g mm", j.Clearance, limit)
	}
	return nil
}

// minHead returns the least head of a tongue whose corners the cutter can round:
// on a flank of 0.58 heads two tangents of 1.53 radii find room.
func (j Joint) minHead() float64 { return max(smallestHead, 5.6*j.radius(0)) }

// radius returns the radius of the corners of a tongue.
func (j Joint) radius(head float64) float64 {
	const over = 0.1 // mm, so that the cutter's path turns rather than stops
	return max(cornerShare*head, j.Kerf/2+over)
}

// hole returns the diameter of an alignment hole, mm.
func (j Joint) hole() float64 { return max(smallestHole, 1.5*j.Kerf) }

// least returns the least length of a seam that takes the joint, mm: a tongue in
// the middle and a hole beside it.
func (j Joint) least() float64 {
	const slack = 1.0 // mm, for outlines that are not quite square to the seam
	return max(j.minHead()/headShare, 2*(j.hole()+2*jointWall+slack)/(1-headShare))
}

// reach returns how far the largest tongue and its socket go beyond the seam, mm.
func (j Joint) reach() float64 { return max(largestHead, j.minHead())*depthShare + j.Clearance }

// chain returns the seam along x = s from y = low to y = high with tongues towards
// +x at the heights at. With a gap it is the socket's side.
func (j Joint) chain(seam seamPlan, gap float64) geom.Polyline {
	corners := geom.Polyline{geom.Pt(seam.s, seam.low)}
	radii := []float64{0}
	tan := math.Tan(flank())
	depth := seam.head*depthShare + gap
	neck := seam.head*neckShare/2 + gap/math.Cos(flank())
	head := neck + depth*tan
	r := j.radius(seam.head)
	for _, y := range seam.tongues {
		corners = append(corners, geom.Pt(seam.s, y-neck), geom.Pt(seam.s+depth, y-head),
			geom.Pt(seam.s+depth, y+head), geom.Pt(seam.s, y+neck))
		radii = append(radii, r, r+gap, r+gap, r)
	}
	corners, radii = append(corners, geom.Pt(seam.s, seam.high)), append(radii, 0)
	out := geom.Polyline{corners[0]}
	for i := 1; i+1 < len(corners); i++ {
		out = append(out, rounded(corners[i-1], corners[i], corners[i+1], radii[i])...)
	}
	return append(out, corners[len(corners)-1])
}

// chordError is how far the chords of an arc may lie from it, mm: half of what files
// are true to.
const chordError = 0.005

// rounded returns the arc of radius r that rounds the corner at b between a and c.
func rounded(a, b, c geom.Point, r float64) geom.Polyline {
	in, out := b.Minus(a).Unit(), c.Minus(b).Unit()
	turn := in.AngleTo(out)
	tangent := r * math.Tan(math.Abs(turn)/2)
	side := math.Copysign(1, turn)
	start := b.Minus(in.Times(tangent))
	center := start.Plus(in.Left().Times(side * r))
	return geom.ArcPoints(center, start.Minus(center), turn, chordError)
}

// circle returns a round hole.
func circle(center geom.Point, diameter float64) geom.Ring {
	return geom.CirclePoints(center, diameter/2, chordError)
}
