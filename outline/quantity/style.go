package quantity

import (
	"fmt"
	"math"
	"strconv"
)

// Style says how lengths are written for people.
type Style struct {
	Inches bool
	// Fraction is the finest fraction of an inch, a power of two to 128; 0 and
	// anything else means 16.
	Fraction int
	// Decimals is the number of decimals of a millimetre, 0 to 6.
	Decimals int
}

// Length returns a length with its unit: "1650.0 mm" or "64 15/16 in". Both
// round to the nearest step, halves away from zero.
func (s Style) Length(mm float64) string { return s.Figure(mm) + " " + s.LengthUnit() }

// Thick writes the thickness of a cord, a pin, a ring: to a tenth of a mm, as far as it
// needs one, or to 1/64 in.
func (s Style) Thick(mm float64) string {
	s.Decimals, s.Fraction = 1, 64
	if mm == math.Trunc(mm) {
		s.Decimals = 0
	}
	return s.Length(mm)
}

// ThickDown writes a thickness that must not be more, rounded down: to half a mm, or to
// 1/32 in.
func (s Style) ThickDown(mm float64) string {
	step := 0.5
	if s.Inches {
		step = Inch / 32
	}
	return s.Thick(math.Floor(mm/step+1e-9) * step)
}

// LengthUnit returns the unit of lengths.
func (s Style) LengthUnit() string {
	if s.Inches {
		return "in"
	}
	return "mm"
}

// Number returns a length as a number in [Style.LengthUnit].
func (s Style) Number(mm float64) float64 {
	if s.Inches {
		return mm / Inch
	}
	return mm
}

// Figure returns a length without its unit, for columns whose head names it.
func (s Style) Figure(mm float64) string {
	if s.Inches {
		return Inches(mm, s.Fraction)
	}
	return Decimal(mm, s.Decimals)
}

// ClothFigure writes a length as it can be set on cloth, without its unit: to half a mm or
// 1/32 in.
func (s Style) ClothFigure(mm float64) string {
	s.Decimals, s.Fraction = 1, 32
	if !s.Inches {
		mm = math.Round(2*mm) / 2
	}
	return s.Figure(mm)
}

// CordFigure writes a length as it can be set on cord, without its unit: to whole mm or
// 1/16 in.
func (s Style) CordFigure(mm float64) string {
	s.Decimals, s.Fraction = 0, 16
	return s.Figure(mm)
}

// Decimal returns v with a fixed number of decimals (0 to 6), halves rounded
// away from zero and never as a negative zero. A value that is not finite gives
// "not finite", which no quantity can be read from.
func Decimal(v float64, decimals int) string {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return "not finite"
	}
	decimals = min(max(decimals, 0), 6)
	step := math.Pow10(decimals)
	if scaled := math.Round(v * step); math.Abs(scaled) < 1<<53 {
		v = scaled / step
	}
	if v == 0 {
		v = 0
	}
	return strconv.FormatFloat(v, 'f', decimals, 64)
}

// Angle returns an angle in rad in degrees, "43.7°", whatever the style of lengths.
func (s Style) Angle(rad float64) string { return Decimal(rad*180/math.Pi, 1) + "°" }

// Inches returns a length in mm as inches with a mixed fraction in lowest terms:
// "7 1/2", "-3/16", "0". The finest fraction is a power of two to 128; anything
// else means 16.
func Inches(mm float64, fraction int) string {
	if fraction < 1 || fraction > 128 || fraction&(fraction-1) != 0 {
		fraction = 16
	}
	steps := math.Round(mm / Inch * float64(fraction))
	if math.IsNaN(steps) || math.Abs(steps) >= 1<<53 {
		return "not finite"
	}
	sign := ""
	if steps < 0 {
		sign, steps = "-", -steps
	}
	n := int64(steps)
	whole, part, over := n/int64(fraction), n%int64(fraction), int64(fraction)
	for part > 0 && part%2 == 0 {
		part, over = part/2, over/2
	}
	switch {
	case part == 0:
		return sign + strconv.FormatInt(whole, 10)
	case whole == 0:
		return fmt.Sprintf("%s%d/%d", sign, part, over)
	}
	return fmt.Sprintf("%s%d %d/%d", sign, whole, part, over)
}

// Text returns v, in the stored unit of d, exactly: [As] reads the same value
// back. It is the form for files that programs write.
func (d Dimension) Text(v float64) string {
	number := strconv.FormatFloat(v, 'f', -1, 64)
	for _, u := range d.Units() {
		if u.Factor == 1 {
			return number + " " + u.Symbol
		}
	}
	return number
}

// Rounding is the direction in which [Unit.Format] rounds.
type Rounding int

// The directions.
const (
	Nearest Rounding = iota
	Up               // towards +∞: for least values
	Down             // towards −∞: for greatest values
)

// Format returns v, in the stored unit of u's dimension, in unit u with four
// significant digits and no trailing zeros: "1650 mm", "98.42 in".
func (u Unit) Format(v float64, r Rounding) string {
	x := v / u.Factor
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return "not finite"
	}
	digits := 0.0
	if x != 0 {
		digits = 3 - math.Floor(math.Log10(math.Abs(x)))
	}
	digits = min(max(digits, 0), 12)
	step := math.Pow(10, digits)
	scaled := x * step
	// A conversion's last bits must not push a whole figure to the next one.
	if near := math.Round(scaled); r == Nearest || math.Abs(scaled-near) <= 1e-9*math.Abs(scaled) {
		scaled = near
	} else if r == Up {
		scaled = math.Ceil(scaled)
	} else {
		scaled = math.Floor(scaled)
	}
	x = scaled / step
	if x == 0 {
		x = 0
	}
	text := strconv.FormatFloat(x, 'f', -1, 64)
	if u.Symbol == "" {
		return text
	}
	return text + " " + u.Symbol
}
