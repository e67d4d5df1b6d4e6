// Package column holds the handbook formulas for straight bars under thrust:
// Euler's and Johnson's buckling loads and the secant formula for a thrust off
// the axis.
//
// Lengths mm, forces N, stresses and moduli N/mm². A section comes from [Tube]
// or [Rod].
package column

import (
	"math"
)

// Section is a round cross-section.
type Section struct {
	Area    float64 // A, mm²
	Inertia float64 // I, second moment of area, mm⁴
	Edge    float64 // c, from the axis to the outermost fibre, mm
}

// Tube returns the section of a tube with outer diameter and wall in mm; a wall
// of half the diameter or more makes it solid.
func Tube(outer, wall float64) Section {
	inner := max(0, outer-2*wall)
	return Section{
		Area:    math.Pi / 4 * (outer*outer - inner*inner),
		Inertia: math.Pi / 64 * (math.Pow(outer, 4) - math.Pow(inner, 4)),
		Edge:    outer / 2,
	}
}

// Rod returns the section of a solid rod, diameter in mm.
func Rod(diameter float64) Section { return Tube(diameter, diameter/2) }

// Gyration returns k = √(I/A), mm.
func (s Section) Gyration() float64 { return math.Sqrt(s.Inertia / s.Area) }

// Effective lengths as parts of the true length, by how the ends are held.
// FixedPinned is 4.493409458/π inverted: 1/√2.045748516.
const (
	Pinned      = 1.0
	FixedFree   = 2.0
	FixedPinned = 0.6991556596428
	FixedFixed  = 0.5
)

// Euler returns the buckling load π² E I / l² of a slender bar, N; l is the
// effective length.
func Euler(s Section, modulus, l float64) float64 {
	return math.Pi * math.Pi * modulus * s.Inertia / (l * l)
}

// Johnson returns the buckling load A σ (1 − σ (l/k)² / (4 π² E)) of a stocky
// bar, N, with the yield σ.
func Johnson(s Section, modulus, yield, l float64) float64 {
	slender := l / s.Gyration()
	return s.Area * yield * (1 - yield*slender*slender/(4*math.Pi*math.Pi*modulus))
}

// Transition returns the slenderness l/k at which Euler's and Johnson's curves
// meet, both at half the yield: √(2 π² E / σ).
func Transition(modulus, yield float64) float64 {
	return math.Sqrt(2 * math.Pi * math.Pi * modulus / yield)
}

// Buckling returns the load that governs by slenderness, N, and whether it is
// Euler's.
func Buckling(s Section, modulus, yield, l float64) (load float64, euler bool) {
	if l/s.Gyration() > Transition(modulus, yield) {
		return Euler(s, modulus, l), true
	}
	return Johnson(s, modulus, yield, l), false
}
