// Package bed names the ends and the sides of a bed, by which everything that is on it
// twice is told apart.
package bed

// End is one end of the hammock.
type End int

// The two ends.
const (
	Head End = iota
	Foot
)

// String returns "head" or "foot".
func (e End) String() string { return [...]string{"head", "foot"}[e] }

// Sign returns −1 for the head end and 1 for the foot end: the direction
// outwards along x.
func (e End) Sign() float64 { return [...]float64{-1, 1}[e] }

// Side is a side of the bed as the sleeper on the back has it.
type Side int

// The sides: Left is at y > 0, in the flat cloth at v > 0.
const (
	Left Side = iota
	Right
)

// String returns "left" or "right".
func (s Side) String() string { return [...]string{"left", "right"}[s] }

// Letter returns the side's letter in notch names.
func (s Side) Letter() string { return [...]string{"L", "R"}[s] }

// Sign returns 1 for the left and −1 for the right: the direction outwards along y.
func (s Side) Sign() float64 { return [...]float64{1, -1}[s] }
