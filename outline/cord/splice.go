package cord

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/numeric"
)

// Defaults of a splice by the diameter of the cord that is buried.
const (
	// BuryDiameters is three fids of 21 diameters: common practice, no source.
	BuryDiameters = 3 * FidDiameters
	// FidDiameters is a fid's length: common practice, no source.
	FidDiameters = 21
	// TaperShare is the tapered part of a bury: common practice, no source.
	TaperShare = 1.0 / 3
	// EyeFittings is the length of an eye, throat to fitting, in diameters of the
	// fitting (US Naval Ships' Technical Manual, S9086-UU-STM-010 rev. 3, §613-2.5).
	EyeFittings = 5
)

// Splicing holds the measures of all splices with the defaults filled in. The
// buries that follow from a diameter come from its methods.
type Splicing struct {
	Gap     float64 `json:"gap"`      // g, mm
	Kappa   float64 `json:"kappa"`    // κ
	Loss    float64 `json:"eye_loss"` // k, mm
	Hook    float64 `json:"hook"`     // mm
	Shown   Shown   `json:"shown"`
	bury    float64
	eye     float64
	eyeBury float64
	taper   float64
	tip     float64
	unsized bool // the hook's size is not given
}

// Resolve fills in what a design leaves open. What test splices show goes before the
// stated contraction and loss. The error is a [hung.Impossible].
func Resolve(d design.Design, o Options) (Splicing, error) {
	shown, err := ShownBy(d)
	if err != nil {
		return Splicing{}, err
	}
	s := d.Splice
	r := Splicing{Gap: s.TipGap, Kappa: shown.Kappa.Value, Loss: shown.Loss.Value, Hook: o.Hook, Shown: shown,
		bury: s.Bury, eye: s.Eye, eyeBury: s.EyeBury, taper: s.Taper, tip: o.Tip}
	if r.Hook == 0 {
		r.Hook, r.unsized = DefaultHook, true
	}
	return r, nil
}

// Bury returns the length that a cord of the given diameter is buried in its
// partner, mm.
func (s Splicing) Bury(diameter float64) float64 {
	if s.bury > 0 {
		return s.bury
	}
	return BuryDiameters * diameter
}

// EyeBury returns the length of an eye's own bury, mm.
func (s Splicing) EyeBury(diameter float64) float64 {
	if s.eyeBury > 0 {
		return s.eyeBury
	}
	return s.Bury(diameter)
}

// Taper returns the tapered length at the end of a bury, mm.
func (s Splicing) Taper(bury float64) float64 {
	if s.taper > 0 {
		return min(s.taper, bury)
	}
	return TaperShare * bury
}

// Eye returns the cord in an eye's loop and how far the hook's centre lies from
// its throat, mm, for cord of the given diameter.
func (s Splicing) Eye(diameter float64) (loop, reach float64, err error) {
	q := (s.Hook + diameter) / 2
	if s.eye == 0 {
		reach = EyeFittings*s.Hook + s.Hook/2
		return 2 * roundPin(reach, q), reach, nil
	}
	if least := 2 * math.Pi * q; s.eye <= least {
		return 0, 0, &hung.Impossible{Key: design.KeySpliceEye, Found: design.Found(design.EyeUnderHook),
			Bound: design.AtLeast, Limit: math.Ceil(least + 1)}
	}
	reach, err = numeric.Root(func(r float64) float64 { return 2*roundPin(r, q) - s.eye }, q, s.eye/2, 1e-9)
	return s.eye, reach, err
}

// roundPin returns the length of one half of a loop from its throat, reach away
// from the centre of a pin, to the far side of the pin; q is the radius of the
// cord's centre line round it. Tangent, then arc.
func roundPin(reach, q float64) float64 {
	return math.Sqrt(reach*reach-q*q) + q*(math.Pi-math.Acos(q/reach))
}

// Spread returns how much shorter a tip gap of the given cord gets when its two
// cords part round the tip, mm. Each runs from the gap's edge tangent to the tip
// and half round it:
//
//	g/2 = √(G² − q²) + q asin(q/G)      spread = g − 2 G
func (s Splicing) Spread(diameter float64) (float64, error) {
	if s.tip == 0 || s.Gap == 0 {
		return 0, nil
	}
	q := (s.tip + diameter) / 2
	half := func(reach float64) float64 { return math.Sqrt(max(0, reach*reach-q*q)) + q*math.Asin(q/reach) }
	if least := math.Pi * q; s.Gap <= least {
		return 0, &hung.Impossible{Key: design.KeySpliceTipGap, Found: design.Found(design.GapUnderTip),
			Bound: design.AtLeast, Limit: math.Ceil(least + 1)}
	}
	reach, err := numeric.Root(func(r float64) float64 { return half(r) - s.Gap/2 }, q, s.Gap/2, 1e-9)
	return s.Gap - 2*reach, err
}
