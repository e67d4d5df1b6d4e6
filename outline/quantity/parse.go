package quantity

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// MaxLength is the greatest length in bytes of a quantity's text.
const MaxLength = 64

// Quantity is a value with the unit that it was written in.
type Quantity struct {
	Value float64 // in the stored unit of its dimension
	Unit  Unit    // the unit written last; the zero Unit for a plain number
}

// Error says what is wrong with a quantity's text and what would do.
type Error struct {
	Found string // what was found
	Hint  string // what to write instead

	vague bool // the hint does not know the dimension that is wanted
}

// Error returns both parts on one line.
func (e *Error) Error() string { return e.Found + "; " + e.Hint }

// fault builds an Error about text.
func fault(text, found, hint string) *Error {
	return &Error{Found: Quoted(text) + " " + found, Hint: hint}
}

// formless builds an Error about text that is no quantity at all.
func formless(text, found string) *Error {
	f := fault(text, found, "write a number and a unit")
	f.vague = true
	return f
}

// Quoted returns text in double quotes on one line: control characters escaped,
// inner quotes left alone and long text cut.
func Quoted(text string) string {
	const limit = 40
	var b strings.Builder
	n := 0
	for _, r := range text {
		if n++; n > limit {
			b.WriteString("…")
			break
		}
		if r == utf8.RuneError || !unicode.IsPrint(r) {
			q := strconv.QuoteRune(r)
			b.WriteString(q[1 : len(q)-1])
			continue
		}
		b.WriteRune(r)
	}
	return `"` + b.String() + `"`
}

// Parse reads a quantity: one number and its unit, or feet and inches, or
// pounds and ounces. Numbers are decimals without exponent, fractions ("1/2")
// or mixed fractions ("7 1/2", "7-1/2", "7½"); one sign may lead. A plain number
// without unit is a [Ratio]. The error is an *[Error].
func Parse(text string) (Quantity, error) {
	if len(text) > MaxLength {
		return Quantity{}, fault(text, "is too long", fmt.Sprintf("write a number and a unit, at most %d characters", MaxLength))
	}
	if !utf8.ValidString(text) {
		return Quantity{}, formless(text, "is not valid text")
	}
	s := scanner{text: text, rest: text}
	q, err := s.quantity()
	if err != nil {
		return Quantity{}, err
	}
	if math.IsNaN(q.Value) || math.IsInf(q.Value, 0) {
		return Quantity{}, formless(text, "is not a finite number")
	}
	return q, nil
}

// As reads a quantity that has to be of dimension d.
// The error is an *[Error] that names the units that would do.
func As(text string, d Dimension) (Quantity, error) {
	q, err := Parse(text)
	var f *Error
	if errors.As(err, &f) && f.vague {
		f.Hint = "write " + article(d.String()) + inUnits(d)
	}
	if err != nil {
		return Quantity{}, err
	}
	if q.Unit.Symbol == "" && d != Ratio {
		return Quantity{}, fault(text, "has no unit",
			fmt.Sprintf("write %q%s", strings.TrimSpace(text)+" "+d.Unit(false).Symbol, orUnits(d)))
	}
	if q.Unit.Dimension != d {
		return Quantity{}, fault(text, "is "+article(q.Unit.Dimension.String()), "write "+article(d.String())+wanted(text, q.Unit, d))
	}
	return q, nil
}

// orUnits lists the other units of d.
func orUnits(d Dimension) string {
	units := d.Units()
	if len(units) < 2 {
		return ""
	}
	var names []string
	for _, u := range units[1:] {
		names = append(names, u.Symbol)
	}
	return " (or " + strings.Join(names, ", ") + ")"
}

// wanted gives an example for a quantity of the wrong dimension. Where data
// sheets commonly shorten the unit, it is the unit that was probably meant.
func wanted(text string, have Unit, d Dimension) string {
	meant := map[string]string{"kg": "kgf", "lb": "lbf"}[have.Symbol]
	switch {
	case d == ArealDensity && have.Symbol == "oz":
		meant = "oz/yd²"
	case d == ArealDensity && have.Symbol == "g":
		meant = "g/m²"
	case d == LinearDensity && have.Symbol == "oz":
		meant = "oz/yd"
	case d == LinearDensity && have.Symbol == "g":
		meant = "g/m"
	case d != Force:
		meant = ""
	}
	number := strings.TrimRight(text, " ")
	for _, s := range have.spellings() {
		number = strings.TrimSuffix(number, s)
	}
	if meant == "" {
		return inUnits(d)
	}
	return fmt.Sprintf(", such as %q", strings.TrimSpace(number)+" "+meant)
}

// inUnits says in which units a quantity of d is written.
func inUnits(d Dimension) string {
	if d == Ratio {
		return `, such as 0.15 or "15 %"`
	}
	var names []string
	for _, u := range d.Units() {
		names = append(names, u.Symbol)
	}
	return " in " + strings.Join(names, ", ")
}

// article puts a or an before a noun.
func article(noun string) string {
	if strings.ContainsAny(noun[:1], "aeiou") {
		return "an " + noun
	}
	return "a " + noun
}
