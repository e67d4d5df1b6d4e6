// Package rig works out how a hung shape is hung up: from the distance between
// the supports, or from the height of its hooks, every other measure.
//
// Supports carry hooks; a hang line runs straight from a hook to an apex of the
// hammock at the angle that the shape fixes. Heights are above ground, mm, with
// the sleeper in the bed; lengths mm, forces N, angles rad.
package rig

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

// Pull is one force in the units that supports and hardware are rated in.
type Pull struct {
	N   float64 `json:"n"`
	Kgf float64 `json:"kgf"`
	Lbf float64 `json:"lbf"`
}

// PullOf returns a force given in N.
func PullOf(n float64) Pull {
	return Pull{n, n / quantity.Gravity, n / (quantity.Gravity * quantity.Pound)}
}

// End is one end as it hangs.
type End struct {
	Run   float64 `json:"run"`   // from apex to hook, level, mm
	Line  float64 `json:"line"`  // hang line from apex to hook, mm
	Apex  float64 `json:"apex"`  // height of the apex, mm
	Hook  float64 `json:"hook"`  // height of the hook on the support, mm
	Angle float64 `json:"angle"` // of the hang line above the level, rad
	Pull  Pull    `json:"pull"`  // along the hang line
}

// Place is a hammock between its supports.
type Place struct {
	Distance  float64 `json:"distance"`   // between the hooks, level, mm
	Ends      [2]End  `json:"ends"`       // by [hung.End]
	HeadAbove float64 `json:"head_above"` // head hook above foot hook, mm
	Lowest    float64 `json:"lowest"`     // bed's lowest point above ground, mm
	Edge      float64 `json:"edge"`       // side cord at mid-bay above ground, where one gets in, mm
	// Beyond is by how much the higher hook stands above the height that the design
	// gives, mm; 0 where it does not.
	Beyond float64 `json:"beyond,omitempty"`
}

// ApexAbove returns by how much the head's apex stands higher than the foot's, mm: for
// looking at afterwards. What is set are the hooks, see HeadAbove.
func (p Place) ApexAbove() float64 { return p.Ends[hung.Head].Apex - p.Ends[hung.Foot].Apex }

// Overall returns the level distance from apex to apex, mm.
func Overall(s *hung.Shape) float64 { return s.Ends[hung.Foot].ApexX - s.Ends[hung.Head].ApexX }

// Lowest returns the height of the bottom line's lowest point within the cloth, mm
// in the shape's own frame.
func Lowest(s *hung.Shape) float64 {
	head, foot := s.TailEnds()
	return min(s.Problem.Bottom(head), s.Problem.Bottom(foot))
}

// Between hangs the shape between hooks a given distance apart, mm, with the bed's
// lowest point at height bed. Share is the part of what the distance leaves over
// that goes to the head's hang line: ½ hangs the apexes in the middle. The error
// is a [hung.Impossible].
func Between(s *hung.Shape, distance, bed, share float64) (Place, error) {
	over := Overall(s)
	if !(distance >= over) || math.IsInf(distance, 0) {
		return Place{}, &hung.Impossible{Key: design.KeyHangDistance, Found: design.Found(design.HooksClose),
			Bound: design.AtLeast, Limit: math.Ceil(over)}
	}
	p := Place{Distance: distance, Lowest: bed}
	ground := Lowest(s) - bed
	for e, part := range [2]float64{share, 1 - share} {
		end := s.Ends[e]
		run := part * (distance - over)
		p.Ends[e] = End{
			Run: run, Line: run * math.Sqrt(1+end.Slope*end.Slope),
			Apex: end.ApexZ - ground, Hook: end.ApexZ - ground + run*end.Slope,
			Angle: math.Atan(end.Slope), Pull: PullOf(math.Hypot(end.Horizontal, end.Vertical)),
		}
	}
	p.HeadAbove = p.Ends[hung.Head].Hook - p.Ends[hung.Foot].Hook
	p.Edge = s.At(0).Z - ground
	return p, nil
}

// Under hangs the shape from hooks as high as height, mm, with equal runs, so that
// the higher hook stands there.
func Under(s *hung.Shape, height, bed float64) (Place, error) {
	ground := Lowest(s) - bed
	run, least := math.Inf(1), math.Inf(-1)
	for _, end := range s.Ends {
		least = max(least, end.ApexZ-ground)
		run = min(run, (height-end.ApexZ+ground)/end.Slope)
	}
	if !(run >= 0) || math.IsInf(run, 0) {
		return Place{}, &hung.Impossible{Key: design.KeyHangHeight, Found: design.Found(design.HooksLow),
			Bound: design.AtLeast, Limit: math.Ceil(least)}
	}
	return Between(s, Overall(s)+2*run, bed, 0.5)
}

// Of hangs the shape as the design asks: by the distance, or else by the height
// of the hooks. Where both are given the distance holds and Beyond says what the
// height lacks. With neither, or a bed that cannot hang so, ok is false and err
// says why, nil for neither.
func Of(s *hung.Shape, h design.Hang) (p Place, ok bool, err error) {
	switch {
	case h.Distance > 0:
		p, err = Between(s, h.Distance, h.Bed, 0.5)
	case h.Height > 0:
		p, err = Under(s, h.Height, h.Bed)
	default:
		return Place{}, false, nil
	}
	if err == nil && h.Height > 0 {
		top := max(p.Ends[hung.Head].Hook, p.Ends[hung.Foot].Hook)
		p.Beyond = max(0, top-h.Height)
		if p.Beyond < 1e-6 {
			p.Beyond = 0
		}
	}
	return p, err == nil, err
}

// Sweep returns the places for n+1 distances evenly from one to another, mm; those
// that are too short are left out.
func Sweep(s *hung.Shape, from, to, bed float64, n int) []Place {
	var out []Place
	for i := range n + 1 {
		p, err := Between(s, from+(to-from)*float64(i)/float64(n), bed, 0.5)
		if err == nil {
			out = append(out, p)
		}
	}
	return out
}

// Overhang is how far a shelter's ridge should reach past each apex, mm: own
// choice.
const Overhang = 200

// Shelter says whether a shelter's ridge covers the hammock.
type Shelter struct {
	Needed float64 `json:"needed"` // least ridge length, mm
	Ridge  float64 `json:"ridge"`  // the one given, mm; 0: none
	Spare  float64 `json:"spare"`  // beyond Needed, mm; negative: too short
}

// Cover compares a ridge length with the hammock from apex to apex.
func Cover(s *hung.Shape, ridge float64) Shelter {
	need := Overall(s) + 2*Overhang
	return Shelter{need, ridge, ridge - need}
}
