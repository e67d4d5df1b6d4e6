package quantity

import "math"

// A value that is no length is kept in a type of its own, named for the one unit that
// it is stored in, so that a mass does not pass for a force. Lengths stay float64,
// in mm.

// Kilograms is a mass.
type Kilograms float64

// Newtons is a force: a pull, a strength, or the stiffness EA of a cord.
type Newtons float64

// Radians is an angle.
type Radians float64

// GramsPerSquareMetre is the mass of cloth per area.
type GramsPerSquareMetre float64

// GramsPerMetre is the mass of cord per length.
type GramsPerMetre float64

// NewtonsPerMillimetre is a force per width: the strength or stiffness of cloth.
type NewtonsPerMillimetre float64

// NewtonsPerSquareMillimetre is a stress, a modulus or a pressure.
type NewtonsPerSquareMillimetre float64

// KilogramsPerCubicMetre is a mass per volume.
type KilogramsPerCubicMetre float64

// MillimetresPerMinute is a speed.
type MillimetresPerMinute float64

// Litres is a volume.
type Litres float64

// PricePerMetre is what a metre of a thing costs, in the maker's own currency.
type PricePerMetre float64

// PriceEach is what one thing costs, in the maker's own currency.
type PriceEach float64

// Stored is a quantity that is kept in the stored unit of its dimension.
type Stored interface {
	~float64
	Dimension() Dimension
}

// Dimension returns [Mass].
func (Kilograms) Dimension() Dimension { return Mass }

// Dimension returns [Force].
func (Newtons) Dimension() Dimension { return Force }

// Dimension returns [Angle].
func (Radians) Dimension() Dimension { return Angle }

// Dimension returns [ArealDensity].
func (GramsPerSquareMetre) Dimension() Dimension { return ArealDensity }

// Dimension returns [LinearDensity].
func (GramsPerMetre) Dimension() Dimension { return LinearDensity }

// Dimension returns [LineForce].
func (NewtonsPerMillimetre) Dimension() Dimension { return LineForce }

// Dimension returns [Stress].
func (NewtonsPerSquareMillimetre) Dimension() Dimension { return Stress }

// Dimension returns [Density].
func (KilogramsPerCubicMetre) Dimension() Dimension { return Density }

// Dimension returns [Volume].
func (Litres) Dimension() Dimension { return Volume }

// Dimension returns [Speed].
func (MillimetresPerMinute) Dimension() Dimension { return Speed }

// Weight returns the force of gravity on the mass.
func (m Kilograms) Weight() Newtons { return Newtons(float64(m) * Gravity) }

// Grams returns the mass in g.
func (m Kilograms) Grams() float64 { return float64(1000 * m) }

// Weight returns the force of gravity per area, of cloth that lies level.
func (a GramsPerSquareMetre) Weight() NewtonsPerSquareMillimetre {
	return NewtonsPerSquareMillimetre(float64(a) * 1e-9 * Gravity)
}

// Grams returns the mass in g of an area in mm².
func (a GramsPerSquareMetre) Grams(area float64) float64 {
	const squareMetre = 1e6 // mm²
	return float64(area / squareMetre * float64(a))
}

// Grams returns the mass in g of a length in mm.
func (l GramsPerMetre) Grams(length float64) float64 {
	const metre = 1000 // mm
	return float64(length / metre * float64(l))
}

// PerCubicMillimetre returns the density in kg/mm³.
func (d KilogramsPerCubicMetre) PerCubicMillimetre() float64 { return float64(d * 1e-9) }

// Degrees returns an angle of so many degrees.
func Degrees(a float64) Radians { return Radians(a * (math.Pi / 180)) }

// Cos returns the cosine of the angle.
func (a Radians) Cos() float64 { return math.Cos(float64(a)) }

// Tan returns the tangent of the angle.
func (a Radians) Tan() float64 { return math.Tan(float64(a)) }
