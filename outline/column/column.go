// Package column holds the handbook formulas for straight bars under thrust:
// Euler's and Johnson's buckling loads and the secant formula for a thrust off
// the axis.
//
// Lengths mm, forces N, stresses and moduli N/mm². A section comes from [Tube]
// or [Rod].
package column

import (
	"math"

	"slingloft/outline/numeric"
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

// Secant returns the largest stress, N/mm², and the deflection at mid-length,
// mm, of a bar with pinned ends whose thrust acts e mm off the axis at both ends:
//
//	σ = P/A (1 + e c/k² sec φ)    δ = e (sec φ − 1)    φ = (l/2k) √(P/(E A))
//
// At Euler's load and past it, where no such shape exists, both are infinite.
func Secant(s Section, modulus, l, thrust, e float64) (stress, deflection float64) {
	k := s.Gyration()
	phi := l / (2 * k) * math.Sqrt(thrust/(modulus*s.Area))
	if phi >= math.Pi/2 {
		return math.Inf(1), math.Inf(1)
	}
	sec := 1 / math.Cos(phi)
	return thrust / s.Area * (1 + e*s.Edge/(k*k)*sec), e * (sec - 1)
}

// Yielding returns the thrust at which the secant formula reaches the yield, N.
func Yielding(s Section, modulus, yield, l, e float64) float64 {
	limit := min(s.Area*yield, Euler(s, modulus, l))
	if e == 0 {
		return limit
	}
	over := func(p float64) float64 {
		stress, _ := Secant(s, modulus, l, p, e)
		return min(stress, 2*yield) - yield
	}
	p, err := numeric.Root(over, 0, limit, 1e-9*limit)
	if err != nil {
		return limit
	}
	return p
}
