// Package quantity reads and prints quantities with their units.
//
// A quantity is always written with its unit: "1650 mm", "65 in", "7 1/2 in",
// "5 ft 8 in", "82 kg", "48 g/m²". Inside the program each dimension has one
// stored unit. Lengths and ratios are plain float64 there, the others types named for
// that unit, such as [Kilograms], so that none passes for another:
//
//	length mm · mass kg · force N · angle rad · mass per area g/m² · mass per
//	length g/m · force per width N/mm · stress N/mm² · density kg/m³ · speed mm/min · volume l ·
//	ratio 1
//
// Read one with [Parse] or, where the dimension is known, with [As]; print
// lengths for people with [Style]. Neither accepts or prints a value that is
// not finite.
package quantity

import "sync"

// Exact factors, each stated once; every other factor is built from these.
const (
	// Inch is the international inch in mm: exact since the international yard
	// and pound agreement of 1959 (NIST SP 811, appendix B).
	Inch = 25.4
	// Pound is the international avoirdupois pound in kg: exact, same source.
	Pound = 0.45359237
	// Gravity is the standard acceleration of free fall in m/s²: exact, third
	// CGPM, 1901.
	Gravity = 9.80665
)

const (
	foot       = 12 * Inch  // mm
	yard       = 36 * Inch  // mm
	ounce      = Pound / 16 // kg
	poundForce = Pound * Gravity
	degree     = 3.14159265358979323846264338327950288 / 180
)

// Dimension is the kind of a quantity.
type Dimension int

// The dimensions, each with the unit in which values are stored.
const (
	Ratio         Dimension = iota // plain number, or per cent
	Length                         // mm
	Mass                           // kg
	Force                          // N
	Angle                          // rad
	ArealDensity                   // g/m²
	LinearDensity                  // g/m
	LineForce                      // N/mm: strength or stiffness of cloth per width
	Stress                         // N/mm²
	Density                        // kg/m³
	Speed                          // mm/min
	Volume                         // l
	dimensions
)

// String returns the dimension in words: "length", "mass per area".
func (d Dimension) String() string {
	if d < 0 || d >= dimensions {
		return "unknown dimension"
	}
	return [...]string{"ratio", "length", "mass", "force", "angle", "mass per area",
		"mass per length", "force per width", "stress", "density", "speed", "volume"}[d]
}

// Unit is a named multiple of the stored unit of its dimension.
type Unit struct {
	Symbol    string // as printed
	Dimension Dimension
	Factor    float64 // stored units in one of this unit
	Imperial  bool    // inch, pound or one built from them
	also      []string
}

// catalogue lists the units that are understood. The first metric and the first
// imperial unit of a dimension are the ones that messages are written in.
// It is built once and never changed.
var catalogue = sync.OnceValue(func() []Unit {
	return []Unit{
		{Symbol: "%", Dimension: Ratio, Factor: 0.01},

		{Symbol: "mm", Dimension: Length, Factor: 1},
		{Symbol: "cm", Dimension: Length, Factor: 10},
		{Symbol: "m", Dimension: Length, Factor: 1000},
		{Symbol: "in", Dimension: Length, Factor: Inch, Imperial: true, also: []string{`"`, "″", "inch", "inches"}},
		{Symbol: "ft", Dimension: Length, Factor: foot, Imperial: true, also: []string{"'", "′", "foot", "feet"}},
		{Symbol: "yd", Dimension: Length, Factor: yard, Imperial: true},

		{Symbol: "kg", Dimension: Mass, Factor: 1},
		{Symbol: "g", Dimension: Mass, Factor: 0.001},
		{Symbol: "lb", Dimension: Mass, Factor: Pound, Imperial: true, also: []string{"lbs"}},
		{Symbol: "oz", Dimension: Mass, Factor: ounce, Imperial: true},

		{Symbol: "N", Dimension: Force, Factor: 1},
		{Symbol: "daN", Dimension: Force, Factor: 10},
		{Symbol: "kN", Dimension: Force, Factor: 1000},
		{Symbol: "kgf", Dimension: Force, Factor: Gravity},
		{Symbol: "lbf", Dimension: Force, Factor: poundForce, Imperial: true},

		{Symbol: "deg", Dimension: Angle, Factor: degree, also: []string{"°"}},
		{Symbol: "rad", Dimension: Angle, Factor: 1},

		{Symbol: "g/m²", Dimension: ArealDensity, Factor: 1, also: []string{"g/m2", "g/m^2"}},
		{Symbol: "oz/yd²", Dimension: ArealDensity, Factor: ounce * 1e9 / (yard * yard), Imperial: true,
			also: []string{"oz/yd2", "oz/yd^2"}},

		{Symbol: "g/m", Dimension: LinearDensity, Factor: 1},
		{Symbol: "oz/yd", Dimension: LinearDensity, Factor: ounce * 1e6 / yard, Imperial: true},

		{Symbol: "N/mm", Dimension: LineForce, Factor: 1},
		{Symbol: "N/cm", Dimension: LineForce, Factor: 0.1},
		{Symbol: "N/m", Dimension: LineForce, Factor: 0.001},
		{Symbol: "kN/m", Dimension: LineForce, Factor: 1},
		// Strip tests report the force on a strip 50 mm wide.
		{Symbol: "N/50 mm", Dimension: LineForce, Factor: 1.0 / 50, also: []string{"N/50mm", "N/5 cm", "N/5cm"}},
		{Symbol: "daN/50 mm", Dimension: LineForce, Factor: 10.0 / 50, also: []string{"daN/50mm", "daN/5 cm", "daN/5cm"}},
		{Symbol: "lbf/in", Dimension: LineForce, Factor: poundForce / Inch, Imperial: true},

		{Symbol: "MPa", Dimension: Stress, Factor: 1},
		{Symbol: "N/mm²", Dimension: Stress, Factor: 1, also: []string{"N/mm2", "N/mm^2"}},
		{Symbol: "GPa", Dimension: Stress, Factor: 1000},
		{Symbol: "psi", Dimension: Stress, Factor: poundForce / (Inch * Inch), Imperial: true},
		{Symbol: "ksi", Dimension: Stress, Factor: 1000 * poundForce / (Inch * Inch), Imperial: true},

		{Symbol: "kg/m³", Dimension: Density, Factor: 1, also: []string{"kg/m3", "kg/m^3"}},
		{Symbol: "g/cm³", Dimension: Density, Factor: 1000, also: []string{"g/cm3", "g/cm^3"}},
		{Symbol: "lb/in³", Dimension: Density, Factor: Pound * 1e9 / (Inch * Inch * Inch), Imperial: true,
			also: []string{"lb/in3", "lb/in^3"}},

		{Symbol: "l", Dimension: Volume, Factor: 1, also: []string{"L", "dm³", "dm3"}},
		{Symbol: "ml", Dimension: Volume, Factor: 0.001, also: []string{"mL", "cm³", "cm3"}},
		{Symbol: "in³", Dimension: Volume, Factor: Inch * Inch * Inch * 1e-6, Imperial: true, also: []string{"in3", "in^3"}},

		{Symbol: "mm/min", Dimension: Speed, Factor: 1},
		{Symbol: "mm/s", Dimension: Speed, Factor: 60},
		{Symbol: "m/min", Dimension: Speed, Factor: 1000},
		{Symbol: "in/min", Dimension: Speed, Factor: Inch, Imperial: true},
		{Symbol: "in/s", Dimension: Speed, Factor: 60 * Inch, Imperial: true},
	}
})

// Units returns the units of d, those that messages prefer first.
func (d Dimension) Units() []Unit {
	var out []Unit
	for _, u := range catalogue() {
		if u.Dimension == d {
			out = append(out, u)
		}
	}
	return out
}

// Unit returns the unit of d in which messages are written: the metric one, or
// the imperial one where it is asked for and exists. A ratio has none.
func (d Dimension) Unit(imperial bool) Unit {
	var metric Unit
	for _, u := range d.Units() {
		if u.Imperial && imperial {
			return u
		}
		if metric.Symbol == "" {
			metric = u
		}
	}
	if d == Ratio {
		return Unit{Dimension: Ratio, Factor: 1}
	}
	return metric
}

// spellings returns every way in which u may be written.
func (u Unit) spellings() []string { return append([]string{u.Symbol}, u.also...) }
