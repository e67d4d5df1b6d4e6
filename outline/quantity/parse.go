package quantity

import (
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
		return Quantity{}, fault(text, TooLong)
	}
	if !utf8.ValidString(text) {
		return Quantity{}, fault(text, NotText)
	}
	s := scanner{text: text, rest: text}
	q, err := s.quantity()
	if err != nil {
		return Quantity{}, err
	}
	if math.IsNaN(q.Value) || math.IsInf(q.Value, 0) {
		return Quantity{}, fault(text, NotFinite)
	}
	return q, nil
}

// As reads a quantity that has to be of dimension d.
// The error is an *[Error] that knows the dimension.
func As(text string, d Dimension) (Quantity, error) {
	q, err := Parse(text)
	if err != nil {
		return Quantity{}, asked(err, d)
	}
	if q.Unit.Symbol == "" && d != Ratio {
		return Quantity{}, fault(text, UnitMissing, strconv.Quote(strings.TrimSpace(text)+" "+d.Unit(false).Symbol)).wanted(d)
	}
	if q.Unit.Dimension != d {
		e := fault(text, OtherDimension).wanted(d)
		e.Have = q.Unit.Dimension
		if meant := likely(q.Unit, d); meant != "" {
			e.Data = []string{withUnit(text, q.Unit, meant)}
		}
		return Quantity{}, e
	}
	return q, nil
}

// likely returns the unit of d that was probably meant by one of another dimension, as
// data sheets commonly shorten it, or "".
func likely(have Unit, d Dimension) string {
	switch {
	case d == ArealDensity && have.Symbol == "oz":
		return "oz/yd²"
	case d == ArealDensity && have.Symbol == "g":
		return "g/m²"
	case d == LinearDensity && have.Symbol == "oz":
		return "oz/yd"
	case d == LinearDensity && have.Symbol == "g":
		return "g/m"
	case d == Force:
		return map[string]string{"kg": "kgf", "lb": "lbf"}[have.Symbol]
	}
	return ""
}

// withUnit returns the text of a quantity with another unit in place of its own.
func withUnit(text string, own Unit, other string) string {
	number := strings.TrimRight(text, " ")
	for _, s := range own.spellings() {
		number = strings.TrimSuffix(number, s)
	}
	return strings.TrimSpace(number) + " " + other
}
