package piece

import "math"

// Seam is a pair of edges that are sewn together, walked along their net lines.
type Seam struct {
	Name string
	// IDs are the two pieces; "body" stands for the joined panels together.
	IDs    [2]string
	Side   bool       // a side seam, which carries the bed
	Felled bool       // a join of the body, sewn twice as a flat-felled seam
	Flat   [2]float64 // lengths in the flat cloth, mm
	Hung   [2]float64 // lengths when it hangs, mm
	Parts  []SeamPart // from notch to notch

	Difference float64 // first flat length less the second, mm
	Ease       float64 // of it, planned: what the two edges change when they hang
	EasePer100 float64 // planned ease per 100 mm of seam
	Remains    float64 // what is left over, which no shape explains
	Tolerance  float64
}

// Within reports whether what remains is within the tolerance.
func (s Seam) Within() bool { return math.Abs(s.Remains) <= s.Tolerance }

// SeamPart is the stretch of a seam between two neighbouring notches.
type SeamPart struct {
	From, To string     // notch names, or "end"
	Flat     [2]float64 // mm
	Ease     float64    // flat length of the first edge less the second's
	// Fold is how much longer a straight strip is than the cord at its fold: the
	// reach times the turning of the curve. It gathers inside the channel.
	Fold float64
}

// Notch is a matching mark on a seam: the same name stands at the same hung
// length on both edges that are sewn together.
type Notch struct {
	Name   string
	At     float64 // hung length along the seam, mm
	Double bool    // two strokes rather than one
	Bar    bool    // at a bar's tip
}

// NotchPitch is the distance of the strokes of a double notch, mm: told apart at arm's
// length.
const NotchPitch = 4.0
