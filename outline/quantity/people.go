package quantity

import "math"

// What is told to people goes with the style of its lengths: newtons, metres and
// grams beside millimetres, pounds, yards and ounces beside inches.

// Force returns a force in N with its unit: "912 N" or "205 lbf".
func (s Style) Force(n float64) string { return s.ForceFigure(n) + " " + s.ForceUnit() }

// ForceFigure returns a force in N without its unit.
func (s Style) ForceFigure(n float64) string { return Decimal(s.Pull(n), 0) }

// Pull returns a force in N as a number in [Style.ForceUnit].
func (s Style) Pull(n float64) float64 {
	if s.Inches {
		return n / poundForce
	}
	return n
}

// ForceUnit returns the unit of forces.
func (s Style) ForceUnit() string {
	if s.Inches {
		return "lbf"
	}
	return "N"
}

// PerWidth returns a force per width in N/mm with its unit: "0.76 N/mm" or
// "4.34 lbf/in".
func (s Style) PerWidth(nmm float64) string {
	if s.Inches {
		return s.PerLengthFigure(nmm) + " lbf/in"
	}
	return Decimal(nmm, 2) + " N/mm"
}

// roundedUp returns a figure rounded up to so many decimals, but for a conversion's last
// bits.
func roundedUp(v float64, decimals int) string {
	const exact = 1e-9
	scale := math.Pow10(decimals)
	return Decimal(math.Ceil(v*scale*(1-exact))/scale, decimals)
}

// ForceUp returns a force in N with its unit, rounded up: what must not be less.
func (s Style) ForceUp(n float64) string { return roundedUp(s.Pull(n), 0) + " " + s.ForceUnit() }

// PerWidthUp returns a force per width in N/mm with its unit, rounded up.
func (s Style) PerWidthUp(nmm float64) string {
	if s.Inches {
		return roundedUp(s.PerLength(nmm), 2) + " lbf/in"
	}
	return roundedUp(nmm, 2) + " N/mm"
}

// PerLengthFigure returns a load per length in N/mm as a figure for tables, in
// [Style.PerLengthUnit].
func (s Style) PerLengthFigure(nmm float64) string {
	decimals := 0
	if s.Inches {
		decimals = 2
	}
	return Decimal(s.PerLength(nmm), decimals)
}

// PerLength returns a load per length in N/mm as a number in [Style.PerLengthUnit].
func (s Style) PerLength(nmm float64) float64 {
	if s.Inches {
		return nmm / poundForce * Inch
	}
	return 1000 * nmm
}

// PerLengthUnit returns the unit of loads per length in tables.
func (s Style) PerLengthUnit() string {
	if s.Inches {
		return "lbf/in"
	}
	return "N/m"
}

// Pressure returns a pressure in N/mm² as a figure, in [Style.PressureUnit].
func (s Style) Pressure(nmm2 float64) string {
	if s.Inches {
		return Decimal(nmm2/poundForce*Inch*Inch, 2)
	}
	return Decimal(1000*nmm2, 1)
}

// PressureUnit returns the unit of pressures.
func (s Style) PressureUnit() string {
	if s.Inches {
		return "psi"
	}
	return "kPa"
}

// Weight returns a mass in g as a figure, in [Style.WeightUnit].
func (s Style) Weight(g float64) string {
	if s.Inches {
		return Decimal(s.Grams(g), 1)
	}
	return Decimal(g, 0)
}

// Grams returns a mass in g as a number in [Style.WeightUnit].
func (s Style) Grams(g float64) float64 {
	if s.Inches {
		return g / (1000 * ounce)
	}
	return g
}

// Area returns an area in mm² as a number in [Style.AreaUnit].
func (s Style) Area(mm2 float64) float64 {
	if s.Inches {
		return mm2 / (yard * yard)
	}
	return mm2 / 1e6
}

// AreaUnit returns the unit of areas of cloth.
func (s Style) AreaUnit() string { return s.RunUnit() + "²" }

// AreaMass writes what cloth weighs by its area, given in g/m²: "64 g/m²", "1.9 oz/yd²".
func (s Style) AreaMass(gsm float64) string {
	figure, decimals := s.Grams(gsm)/s.Area(1e6), 0
	if s.Inches {
		decimals = 1
	}
	return Decimal(figure, decimals) + " " + s.WeightUnit() + "/" + s.AreaUnit()
}

// WeightUnit returns the unit of small masses.
func (s Style) WeightUnit() string {
	if s.Inches {
		return "oz"
	}
	return "g"
}

// Metres returns a length in metres to buy, in hundredths of [Style.RunUnit]; in
// yards it is rounded up, so that what is bought is not short.
func (s Style) Metres(m float64) string { return Decimal(s.Run(m), 2) }

// Run returns a length in metres to buy as a number in [Style.RunUnit].
func (s Style) Run(m float64) float64 {
	if !s.Inches {
		return m
	}
	const exact = 1e-6 // of a hundredth: a conversion's last bits buy nothing
	return math.Ceil(m*1000/yard*100-exact) / 100
}

// PerRun returns a price per metre as one per [Style.RunUnit].
func (s Style) PerRun(price float64) float64 {
	if s.Inches {
		return price * yard / 1000
	}
	return price
}

// RunUnit returns the unit of lengths to buy.
func (s Style) RunUnit() string {
	if s.Inches {
		return "yd"
	}
	return "m"
}

// People returns the mass of a person or a load in kg with its unit, in whole
// kilograms or pounds, rounded down, or up where it is to be no less.
func (s Style) People(kg float64, up bool) string {
	unit := " kg"
	if s.Inches {
		kg, unit = kg/Pound, " lb"
	}
	const exact = 1e-6 // a conversion's last bits
	if up {
		return Decimal(math.Ceil(kg-exact), 0) + unit
	}
	return Decimal(math.Floor(kg+exact), 0) + unit
}

// Volume writes litres with their unit, or cubic inches.
func (s Style) Volume(litres float64) string {
	u := Volume.Unit(s.Inches)
	decimals := 1
	if s.Inches {
		decimals = 0
	}
	return Decimal(litres/u.Factor, decimals) + " " + u.Symbol
}
