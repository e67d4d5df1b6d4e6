package room

import (
	"slingloft/outline/design"
	"slingloft/outline/rig"
)

// Part is a part of the body that has to find room.
type Part int

// The parts, from the head on.
const (
	Shoulders Part = iota
	Elbows         // with the trunk between them; on the back alone
	Hips
	Knees     // drawn up at a right angle, on the side alone: they only have to find room
	PartCount // how many there are
)

// String returns the part as documents name it.
func (p Part) String() string { return [PartCount]string{"shoulders", "elbows", "hips", "knees"}[p] }

// Heights above the soles over the stature: R. Drillis and R. Contini, Body Segment
// Parameters, 1966, as drawn in D. A. Winter, Biomechanics and Motor Control of Human
// Movement, figure 4.1 (shoulder and elbow; the numbers from memory). The hips lie at the
// trochanter, the trunk ends at the crotch and begins a head's depth under the crown, as
// for the load, see [slingloft/outline/hung.SleeperLoad].
const (
	shoulderHeight = 0.818
	elbowHeight    = 0.630
	hipHeight      = (900.9 + 845.4) / 2 / statureMean
	crotchHeight   = (845.9 + 782.3) / 2 / statureMean
	headEnd        = (199.5 + 189.8) / 2 / statureMean
)

// place returns where a part lies, as a part of the stature from the crown.
func (p Part) place() float64 {
	return [PartCount]float64{1 - shoulderHeight, 1 - elbowHeight, 1 - hipHeight, 1 - hipHeight}[p]
}

// reach returns the stretch of the trunk that counts to a part: each takes it up to half
// way to the next, own choice.
func (p Part) reach() (from, to float64) {
	marks := [...]float64{headEnd, 1 - (shoulderHeight+elbowHeight)/2, 1 - (elbowHeight+hipHeight)/2, 1 - crotchHeight}
	if p == Knees {
		p = Hips
	}
	return marks[p], marks[p+1]
}

// Breadths and depths of the mean body, men and women, in C. C. Gordon et al., 2012
// Anthropometric Survey of U.S. Army Personnel, NATICK/TR-15/007 (an army sample, fitter
// than others), mm.
const (
	statureMean     = (1756.2 + 1628.5) / 2
	shouldersMean   = (510.4 + 450.3) / 2 // bideltoid
	elbowsMean      = (579.9 + 494.8) / 2 // forearm to forearm
	chestMean       = (253.8 + 247.4) / 2 // depth
	abdomenMean     = (254.7 + 229.7) / 2 // depth
	hipsMean        = (345.7 + 353.8) / 2 // breadth
	buttocksMean    = (245.8 + 232.9) / 2 // depth
	kneesMean       = (618.0 + 590.6) / 2 // buttock to knee
	sittingMean     = (918.3 + 856.6) / 2 // height
	headMean        = (199.5 + 189.8) / 2 // length, front to back
	headBreadthMean = (154.3 + 147.8) / 2
)

// person is a sleeper's measures, mm.
type person struct {
	breadth, depth [Hips + 1]float64
	knees          float64 // from the back of the buttocks to the knee
	sitting        float64
	headDepth      float64
}

// measure estimates what is not given: breadths and depths of the mean body as if people
// were cylinders of like density, lengths by the stature, the head as it is. Breadths over
// the arms follow the shoulders where those are given.
func measure(s design.Sleeper) person {
	girth, tall := rig.GirthFactor(s), s.Stature/statureMean
	arms := girth
	if s.Shoulders > 0 {
		arms = s.Shoulders / shouldersMean
	}
	return person{
		breadth: [...]float64{arms * shouldersMean, arms * elbowsMean, girth * hipsMean},
		depth:   [...]float64{girth * chestMean, girth * abdomenMean, girth * buttocksMean},
		knees:   tall * kneesMean, sitting: tall * sittingMean, headDepth: headMean,
	}
}

// body returns a part as it lies, and whether it is looked at in that posture. On the side
// what was broad is high; arms lie in front. Knees drawn up at a right angle reach from
// the back to in front of the trunk.
func (p person) body(part Part, lies design.Posture) (Body, bool) {
	switch {
	case part == Knees:
		return Body{Breadth: p.knees}, lies == design.OnSide
	case lies == design.OnBack:
		return Body{p.breadth[part], p.depth[part]}, true
	}
	return Body{p.depth[part], p.breadth[part]}, part != Elbows
}

// Profile is a sleeper as a chain of rounded parts, by places from the crown as parts of
// the stature.
type Profile struct {
	p    person
	lies design.Posture
}

// ProfileOf returns a sleeper's profile, lying as the design has it.
func ProfileOf(s design.Sleeper) Profile { return Profile{measure(s), s.Lies} }

// kneeHeight is that of the knee over the stature, from the same figure, from memory.
const kneeHeight = 0.285

// Joints returns the places between which a body stays straight: crown, neck, waist at the
// elbows' height, hips, knees, soles.
func (Profile) Joints() []float64 {
	return []float64{0, headEnd, 1 - elbowHeight, 1 - hipHeight, 1 - kneeHeight, 1}
}

// Round returns breadth and depth of the body at a place, as it lies: those of the head,
// and from shoulders to hips of the parts, with a straight line in between. The survey has
// nothing of legs that lie side by side: they narrow to half the hips at the soles, own
// choice. On the side breadth and depth change places, arms lie in front.
func (q Profile) Round(place float64) (breadth, depth float64) {
	p := q.p
	elbows := p.breadth[Elbows]
	if q.lies == design.OnSide {
		elbows = p.breadth[Hips]
	}
	at := [...]float64{headEnd, Shoulders.place(), Elbows.place(), Hips.place(), 1}
	wide := [...]float64{headBreadthMean, p.breadth[Shoulders], elbows, p.breadth[Hips], p.breadth[Hips] / 2}
	deep := [...]float64{p.headDepth, p.depth[Shoulders], p.depth[Elbows], p.depth[Hips], p.depth[Hips] / 2}
	k := 1
	for k < len(at)-1 && place > at[k] {
		k++
	}
	t := min(max((place-at[k-1])/(at[k]-at[k-1]), 0), 1)
	breadth, depth = wide[k-1]+float64(t*(wide[k]-wide[k-1])), deep[k-1]+float64(t*(deep[k]-deep[k-1]))
	if q.lies == design.OnSide {
		return depth, breadth
	}
	return breadth, depth
}

// Place returns where a part of a sleeper lies in a bed, mm from mid-bay, and its body.
func Place(part Part, lies design.Posture, s design.Sleeper, b design.Bed) (x float64, body Body) {
	body, _ = measure(s).body(part, lies)
	flat := b.Lift.Cos()
	return -b.Span/2 + float64(s.Crown*flat) + float64(part.place()*s.Stature*flat), body
}
