package given

import (
	"fmt"
	"math"
	"strings"
	"unicode"
	"unicode/utf8"

	"slingloft/outline/margin"
	"slingloft/outline/quantity"
)

// Long writes a length with its unit, to the style's finest step: for cutting and
// marking.
func (d *Data) Long(mm float64) string { return d.Style.Length(mm) }

// Cloth writes a length as it can be set on cloth: to half a mm or 1/32 in.
func (d *Data) Cloth(mm float64) string { return d.ClothFigure(mm) + " " + d.Unit() }

// ClothFigure is the same without its unit.
func (d *Data) ClothFigure(mm float64) string { return d.Style.ClothFigure(mm) }

// Rope writes a length as it can be set on cord: to whole mm or 1/16 in.
func (d *Data) Rope(mm float64) string { return d.RopeFigure(mm) + " " + d.Unit() }

// RopeFigure is the same without its unit.
func (d *Data) RopeFigure(mm float64) string { return d.Style.CordFigure(mm) }

// Thick writes the thickness of a cord, a pin, a ring: to a tenth of a mm, as far as it
// needs one, or to 1/64 in.
func (d *Data) Thick(mm float64) string { return d.Style.Thick(mm) }

// Round writes a length in whole mm or to an eighth of an inch: for measures
// that are looked at rather than marked.
func (d *Data) Round(mm float64) string {
	s := d.Style
	s.Decimals, s.Fraction = 0, 8
	return s.Length(mm)
}

// Figure writes a length without its unit.
func (d *Data) Figure(mm float64) string { return d.Style.Figure(mm) }

// SignedFigure writes a length without unit, with a true minus.
func (d *Data) SignedFigure(mm float64) string {
	f := d.Figure(math.Abs(mm))
	return Signed(f, mm < 0 && f != d.Figure(0))
}

// SignedRound writes a length as [Data.Round] does, with a true minus.
func (d *Data) SignedRound(mm float64) string {
	f := d.Round(math.Abs(mm))
	return Signed(f, mm < 0 && f != d.Round(0))
}

// Unit returns the unit of bare length figures.
func (d *Data) Unit() string { return d.Style.LengthUnit() }

// UnitWord returns that unit for running text, where "in in" would not do.
func (d *Data) UnitWord() string {
	if d.Style.Inches {
		return d.Say.Inches
	}
	return d.Unit()
}

// Force writes a force in N with its unit.
func (d *Data) Force(n float64) string { return d.Style.Force(n) }

// Load writes a load in a check's unit.
func (d *Data) Load(v float64, unit margin.Unit) string {
	if unit == margin.Force {
		return d.Force(v)
	}
	return d.Style.PerWidth(v)
}

// Mass writes a person's mass in whole units.
func (d *Data) Mass(m quantity.Kilograms) string {
	if d.Style.Inches {
		return quantity.Decimal(float64(m)/quantity.Pound, 0) + " " + d.MassUnit()
	}
	return quantity.Decimal(float64(m), 0) + " " + d.MassUnit()
}

// MassUnit returns the unit of people's masses.
func (d *Data) MassUnit() string {
	if d.Style.Inches {
		return "lb"
	}
	return "kg"
}

// Percent writes a part of one.
func Percent(part float64) string { return quantity.Decimal(100*part, 0) + " %" }

// Times writes a ratio: "6.24".
func Times(v float64) string { return quantity.Decimal(v, 2) }

// Signed puts a true minus before a figure that is negative.
func Signed(figure string, negative bool) string {
	if negative {
		return "−" + figure
	}
	return figure
}

// Both writes two things, one and the other.
func (d *Data) Both(one, other string) string { return fmt.Sprintf(d.Say.Both, one, other) }

// Capital returns text with its first letter as a capital.
func Capital(s string) string {
	first, n := utf8.DecodeRuneInString(s)
	if n == 0 || unicode.IsUpper(first) {
		return s
	}
	return strings.ToUpper(s[:n]) + s[n:]
}
