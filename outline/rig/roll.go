package rig

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// Depth of the body front to back: mean of chest depth and buttock depth of men
// and women, at the mean of their statures and masses, in C. C. Gordon et al.,
// 2012 Anthropometric Survey of U.S. Army Personnel, NATICK/TR-15/007 (an army
// sample, fitter than others).
const (
	depthMean   = (253.8 + 247.4 + 245.8 + 232.9) / 4 // mm
	statureMean = (1756.2 + 1628.5) / 2               // mm
	massMean    = (85.52 + 67.76) / 2                 // kg
	// shouldersMean is bideltoid breadth from the same source, mm.
	shouldersMean = (510.4 + 450.3) / 2
	// hipsMean is hip breadth, sitting, from the same source, mm.
	hipsMean = (379.3 + 399.0) / 2
)

// GirthFactor returns how many times as broad and deep as the mean body a sleeper is, as
// if people were cylinders of like density: an estimate.
func GirthFactor(s design.Sleeper) float64 {
	return math.Sqrt(float64(s.Mass/massMean) * statureMean / s.Stature)
}

// leastSeat is the shortest seat that is counted with, mm: a little under the 5th
// percentile of men's hip breadth, sitting, which is the smaller of the sexes'.
const leastSeat = 330

// SeatLength returns the length of bed, mm, on which one sits who sits along it or
// across: the hip breadth, sitting, estimated as [CentreHeight] does, and at least
// 330 mm.
func SeatLength(s design.Sleeper) float64 { return max(leastSeat, hipsMean*GirthFactor(s)) }

// CentreHeight returns how high the sleeper's centre of mass lies above the bed's
// bottom line, mm, on the back and on the side: half the depth and half the
// breadth of the body. Where the breadth is not given it is, as the depth always
// is, the mean body's times √(mass / stature): an estimate.
func CentreHeight(s design.Sleeper) (back, side float64) {
	back = depthMean / 2 * GirthFactor(s)
	side = s.Shoulders / 2
	if side == 0 {
		side = shouldersMean / 2 * GirthFactor(s)
	}
	return back, side
}

// Roll says how steady the bed is against turning over. Heights of the line through the
// apexes are necessary, not enough: what counts is the turn.
type Roll struct {
	X     float64 `json:"x"`     // station of the weight's centre, mm
	Hooks float64 `json:"hooks"` // the apexes' line there above the bottom line, mm
	Back  float64 `json:"back"`  // that line above the centre of mass of one who lies on the back, mm
	Side  float64 `json:"side"`  // and on the side
	// Turn is by how much the made bed turns when one on the back has the centre of mass
	// 100 mm aside, rad: as far as it could be followed where Over says that it turns over
	// before. Share is the part of the weight that the lower cord then carries.
	Turn   float64 `json:"turn"`
	Share  float64 `json:"share"`
	Over   bool    `json:"over,omitempty"`
	Stable bool    `json:"stable"` // it turns by less than 20°
	Rocks  bool    `json:"-"`      // by more, but less than 30°
}

// Steadiness returns the heights that the roll stability of a shape under the sleeper
// hangs on; its turn is left to the made bed.
func Steadiness(s *hung.Shape, sleeper design.Sleeper) Roll {
	_, x := s.Problem.Load.Total()
	h, f := s.Ends[hung.Head], s.Ends[hung.Foot]
	t := (x - h.ApexX) / (f.ApexX - h.ApexX)
	r := Roll{X: x, Hooks: h.ApexZ + t*(f.ApexZ-h.ApexZ) - s.Problem.Bottom(x)}
	back, side := CentreHeight(sleeper)
	r.Back, r.Side = r.Hooks-back, r.Hooks-side
	return r
}
