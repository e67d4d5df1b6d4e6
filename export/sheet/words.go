package sheet

import (
	"fmt"
	"math"
	"strings"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

// long writes a length with its unit, to the style's finest step: for cutting and
// marking.
func (b *builder) long(mm float64) string { return b.Style.Length(mm) }

// figure writes a length without its unit.
func (b *builder) figure(mm float64) string { return b.Style.Figure(mm) }

// round writes a length in whole mm or to an eighth of an inch: for measures
// that are looked at rather than marked.
func (b *builder) round(mm float64) string {
	s := b.Style
	s.Decimals, s.Fraction = 0, 8
	return s.Length(mm)
}

// unit returns the unit of bare length figures.
func (b *builder) unit() string {
	if b.Style.Inches {
		return "in"
	}
	return "mm"
}

// unitWord returns that unit for running text, where "in in" would not do.
func (b *builder) unitWord() string {
	if b.Style.Inches {
		return "inches"
	}
	return "mm"
}

func (b *builder) force(n float64) string { return b.Style.Force(n) }

func (b *builder) mass(m quantity.Kilograms) string {
	if b.Style.Inches {
		return quantity.Decimal(float64(m)/quantity.Pound, 0) + " lb"
	}
	return quantity.Decimal(float64(m), 0) + " kg"
}

func degrees(rad float64) string { return quantity.Decimal(rad*180/math.Pi, 1) + "°" }

func percent(part float64) string { return quantity.Decimal(100*part, 0) + " %" }

// times writes a ratio: "6.24".
func times(v float64) string { return quantity.Decimal(v, 2) }

// decimals writes a plain number.
func decimals(v float64, n int) string { return quantity.Decimal(v, n) }

// ends are both ends with their names.
func ends() [2]hung.End { return [2]hung.End{hung.Head, hung.Foot} }

// capital returns text with its first letter as a capital.
func capital(s string) string {
	if s == "" {
		return ""
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

// sentences sets notes, which are written as messages are, as sentences.
func sentences(notes []string) List {
	var out List
	for _, n := range notes {
		out = append(out, capital(strings.TrimSuffix(n, "."))+".")
	}
	return out
}

// titled returns a title that is lettered in capitals as it is read.
func titled(title string) string {
	if title == strings.ToUpper(title) {
		return capital(strings.ToLower(title))
	}
	return title
}

func (b *builder) subtitle() string {
	s := b.Design.Sleeper
	return fmt.Sprintf("Bridge hammock for a sleeper of %s and %s; build sheet of design %s",
		b.round(s.Stature), b.mass(s.Mass), b.Digest)
}

// capKind names the ends' closing in words.
func capKind(k design.CapKind) string {
	switch k {
	case design.Leaning:
		return "caps square to the rising cords"
	case design.Gathered:
		return "gathered by a drawstring"
	}
	return "upright caps"
}

// safe returns text as an id: letters, digits and dashes.
func safe(s string) string {
	var out strings.Builder
	for _, r := range strings.ToLower(s) {
		if r >= 'a' && r <= 'z' || r >= '0' && r <= '9' {
			out.WriteRune(r)
		} else {
			out.WriteByte('-')
		}
	}
	return out.String()
}
