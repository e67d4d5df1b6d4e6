// Package drape hangs a flat pattern of limp cloth with its cords, bars and
// sleeper by simulation, which judges from outside how level the emitted pattern
// lies. It takes lengths as they are cut and shares no formula with the packages
// that found them.
//
// The cloth is a mesh of triangles that is stiff along warp and weft, slack in
// compression along both, and weak in shear. The cord, likewise slack in
// compression, is tied to the cloth's edge at the running lengths that the
// pattern gives, from tail corner to tail corner, and runs on to apexes, which are
// fixed or hang on lines from fixed anchors.
// Bars hold their tips apart and do nothing else; tips move freely along and up.
// The sleeper is a row of upright discs, one on each weft line of the mesh, free
// to move up and down only, each with the weight that lies on its part of the
// bed, wherever that part now is; cloth touches the rims without friction. Weight
// past the last disc rests on it. Where a [Body] is given its discs are ellipses,
// which rigid links from joint to joint hold in line. End caps are left out.
//
// Axes: x along the hammock with the head end negative, y across, z up. Both
// sides are alike: only y ≥ 0 is kept, with half the weight. Lengths mm, forces N.
package drape

import (
	"math"

	"slingloft/outline/geom"
)

// Pattern is the cloth as cut, at the cord centres, for v ≥ 0. X of its points
// is u along the warp, Y is v along the weft.
type Pattern struct {
	Side []geom.Point    // from the head end's corner to the foot end's, u rising
	Cord []float64       // slack cord from the head corner to each point of Side
	Tips [2]float64      // of it, where the head and the foot bar's tips lie
	Ends [2][]geom.Point // from the centre line to the corner, v rising, head and foot
}

// Weight is a stretch of line load, both sides together, N/mm: linear from From
// to To, mm.
type Weight struct {
	From, To   float64
	Start, End float64
}

// Rig is what the pattern is hung with.
type Rig struct {
	Bars   [2]float64            // between cord centres, head and foot
	Legs   [2]float64            // slack cord from tip to apex, tail edge included
	Apex   [2]geom.Point         // x and z
	Load   []Weight              // of the sleeper
	Radius func(float64) float64 // of the discs, by station
	Body   *Body                 // in place of the discs where it lies; nil: none
	// Lines are slack hang lines from apex to anchor; 0: the apex is fixed.
	Lines     [2]float64
	Anchors   [2]geom.Point // x and z
	Cloth     float64       // own weight, N/mm²
	BarWeight [2]float64    // of whole bars, N
}

// Body is a sleeper as a chain of rigid links with rounded sections.
type Body struct {
	// Limp says that every section lies by itself, as if nothing held the links straight.
	Limp   bool
	Joints []float64 // stations along the cloth, rising, from crown to soles
	// Round returns breadth and depth of the section at a station, mm.
	Round func(float64) (breadth, depth float64)
}

// Stiffness is how the materials stretch.
type Stiffness struct {
	Side, Leg  float64 // EA of side cords and legs, N
	Line       float64 // EA of hang lines, N
	Warp, Weft float64 // N/mm of width per unit strain
	Shear      float64 // N/mm per radian, small beside the others
}

// Times returns the stiffness with everything but the shear k times as stiff.
func (s Stiffness) Times(k float64) Stiffness {
	return Stiffness{s.Side * k, s.Leg * k, s.Line * k, s.Warp * k, s.Weft * k, s.Shear}
}

// Settings say how finely and how long to compute.
type Settings struct {
	Cell  float64 // of the mesh, mm
	Step  float64 // it has settled when no node moves more than this in a step, mm
	Steps int     // at most
	// Watch, if set, is told now and then how many steps were made and how far a node
	// still moves, mm; an error of it ends the simulation.
	Watch func(steps int, far float64) error
}

// Part returns about what part of the way to rest is done where a node moved first, at most,
// and now moves far, and rest is where it moves by step, mm: it comes to rest by about as
// many tenfold steps as are in between.
func Part(first, far, step float64) float64 {
	if !(far > 0 && first > step) {
		return 0
	}
	return min(max(math.Log(first/far)/math.Log(first/step), 0), 1)
}
