package quantity

import (
	"math"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// scanner takes a quantity's text apart from the left.
type scanner struct {
	text, rest string
}

// quantity reads the whole text.
func (s *scanner) quantity() (Quantity, error) {
	s.space()
	if s.rest == "" {
		return Quantity{}, fault(s.text, Empty)
	}
	sign := s.sign()
	q, err := s.term()
	if err != nil {
		return Quantity{}, err
	}
	s.space()
	for s.rest != "" {
		if !isDigit(s.rest) {
			return Quantity{}, fault(s.text, GoesOn, Quoted(s.rest))
		}
		next, err := s.term()
		if err != nil {
			return Quantity{}, err
		}
		if err := s.joins(q, next); err != nil {
			return Quantity{}, err
		}
		q = Quantity{q.Value + next.Value, next.Unit}
		s.space()
	}
	q.Value *= sign
	if q.Value == 0 {
		q.Value = 0 // never a negative zero
	}
	return q, nil
}

// smaller returns the unit that a number after one in u most likely has.
func smaller(u Unit) string {
	if s := map[string]string{"ft": "in", "yd": "in", "lb": "oz", "m": "cm", "cm": "mm", "kg": "g"}[u.Symbol]; s != "" {
		return s
	}
	return u.Symbol
}

// joins reports an error unless next may follow first.
func (s *scanner) joins(first, next Quantity) error {
	u := first.Unit
	if next.Unit.Symbol == "" {
		return fault(s.text, UnitMissingLast, Quoted(strings.TrimSpace(s.text)+" "+smaller(u)))
	}
	if whole := first.Value / u.Factor; whole != math.Round(whole) {
		return fault(s.text, PartOfFirst, u.Symbol, next.Unit.Symbol)
	}
	pair := u.Symbol + " " + next.Unit.Symbol
	if pair != "ft in" && pair != "lb oz" {
		return fault(s.text, SeveralNumbers)
	}
	if next.Value*(1+1e-12) >= u.Factor { // 12 in may fall a bit short of 1 ft
		return fault(s.text, NotCarried, u.Symbol, next.Unit.Symbol)
	}
	return nil
}

// term reads a number and the unit after it.
func (s *scanner) term() (Quantity, error) {
	v, err := s.number()
	if err != nil {
		return Quantity{}, err
	}
	s.space()
	if s.rest == "" {
		return Quantity{Value: v, Unit: Unit{Dimension: Ratio, Factor: 1}}, nil
	}
	u, err := s.unit()
	if err != nil {
		return Quantity{}, err
	}
	return Quantity{v * u.Factor, u}, nil
}

// number reads a decimal, a fraction or a mixed fraction without sign.
func (s *scanner) number() (float64, error) {
	if f, ok := s.vulgar(); ok {
		return f, nil
	}
	word := s.digits()
	if word == "" || strings.Trim(word, ".") == "" {
		return 0, fault(s.text, NumberMissing)
	}
	if strings.HasPrefix(s.rest, ",") {
		return 0, fault(s.text, Comma)
	}
	if strings.HasPrefix(s.rest, "/") && isDigit(s.rest[1:]) {
		return s.fraction(word)
	}
	v, err := strconv.ParseFloat(word, 64)
	if err != nil {
		return 0, fault(s.text, NumberBroken)
	}
	if strings.Contains(word, ".") {
		return v, nil
	}
	part, err := s.mixed()
	return v + part, err
}

// mixed reads the fraction after a whole number, 0 where there is none.
func (s *scanner) mixed() (float64, error) {
	before := s.rest
	if strings.HasPrefix(s.rest, "-") {
		s.rest = s.rest[1:]
	} else {
		s.space()
	}
	if f, ok := s.vulgar(); ok {
		return f, nil
	}
	word := s.digits()
	if word == "" || !strings.HasPrefix(s.rest, "/") || !isDigit(s.rest[1:]) {
		s.rest = before
		return 0, nil
	}
	f, err := s.fraction(word)
	if err == nil && f >= 1 {
		err = fault(s.text, FractionTooLarge)
	}
	return f, err
}

// fraction reads "/denominator" after a numerator.
func (s *scanner) fraction(numerator string) (float64, error) {
	s.rest = s.rest[1:]
	denominator := s.digits()
	n, err1 := strconv.ParseUint(numerator, 10, 32)
	d, err2 := strconv.ParseUint(denominator, 10, 32)
	if err1 != nil || err2 != nil || d == 0 {
		return 0, fault(s.text, FractionBroken)
	}
	return float64(n) / float64(d), nil
}

// vulgar reads a fraction that is one character.
func (s *scanner) vulgar() (float64, bool) {
	signs := []struct {
		sign  string
		value float64
	}{{"½", 0.5}, {"¼", 0.25}, {"¾", 0.75}, {"⅛", 0.125}, {"⅜", 0.375}, {"⅝", 0.625}, {"⅞", 0.875}}
	for _, v := range signs {
		if rest, ok := strings.CutPrefix(s.rest, v.sign); ok {
			s.rest = rest
			return v.value, true
		}
	}
	return 0, false
}

// unit reads the longest unit that stands here.
func (s *scanner) unit() (Unit, error) {
	var best Unit
	length := 0
	for _, u := range catalogue() {
		for _, name := range u.spellings() {
			if len(name) > length && strings.HasPrefix(s.rest, name) {
				best, length = u, len(name)
			}
		}
	}
	if length > 0 && ends(s.rest[:length], s.rest[length:]) {
		s.rest = s.rest[length:]
		return best, nil
	}
	return Unit{}, s.unknown()
}

// ends reports whether a unit may end before rest.
func ends(unit, rest string) bool {
	r, _ := utf8.DecodeRuneInString(rest)
	if rest == "" || unicode.IsSpace(r) {
		return true
	}
	return r >= '0' && r <= '9' && !strings.Contains(unit, "/")
}

// unknown builds the error for a unit that is not in the catalogue.
func (s *scanner) unknown() error {
	word := s.rest
	if i := strings.IndexFunc(word, unicode.IsSpace); i >= 0 {
		word = word[:i]
	}
	for _, u := range catalogue() {
		for _, name := range u.spellings() {
			if strings.EqualFold(name, word) {
				return s.misspelt(word, name)
			}
		}
	}
	if word == "" {
		return fault(s.text, TabBeforeUnit)
	}
	if strings.ContainsAny(word[:1], "eE") && isDigit(strings.TrimLeft(word[1:], "+-")) {
		return fault(s.text, Exponent)
	}
	known := map[string]string{"gsm": "g/m²", "lb/in": "lbf/in", "kg/m2": "g/m²", "kg/m²": "g/m²",
		"millimetres": "mm", "millimeters": "mm", "metres": "m", "meters": "m", "pounds": "lb",
		"degrees": "deg", "percent": "%", "ins": "in", "in.": "in", "ft.": "ft", "lb.": "lb", "lbs.": "lb", "oz.": "oz",
		"centimetres": "cm", "centimeters": "cm", "yard": "yd", "yards": "yd", "pound": "lb", "ounce": "oz", "ounces": "oz",
		"kilogram": "kg", "kilograms": "kg", "kgs": "kg", "gram": "g", "grams": "g", "newton": "N", "newtons": "N"}
	if u, ok := known[strings.ToLower(word)]; ok {
		return s.misspelt(word, u)
	}
	return fault(s.text, UnitUnknown, Quoted(word))
}

// misspelt builds the error for a unit that is likely meant as another.
func (s *scanner) misspelt(word, unit string) error {
	meant := strings.TrimSpace(strings.TrimSuffix(s.text, s.rest)) + " " + unit + strings.TrimPrefix(s.rest, word)
	return fault(s.text, UnitMisspelt, Quoted(word), Quoted(meant))
}

// digits takes the leading digits and points.
func (s *scanner) digits() string {
	i := 0
	for i < len(s.rest) && (s.rest[i] >= '0' && s.rest[i] <= '9' || s.rest[i] == '.') {
		i++
	}
	word := s.rest[:i]
	s.rest = s.rest[i:]
	return word
}

// sign takes one leading sign and returns it as a factor.
func (s *scanner) sign() float64 {
	for _, minus := range []string{"-", "−"} {
		if rest, ok := strings.CutPrefix(s.rest, minus); ok {
			s.rest = rest
			s.space()
			return -1
		}
	}
	s.rest = strings.TrimPrefix(s.rest, "+")
	return 1
}

// space takes blanks; tabs and line ends are not part of a quantity.
func (s *scanner) space() { s.rest = strings.TrimLeft(s.rest, " \u00a0\u202f") }

// isDigit reports whether text begins with a digit.
func isDigit(text string) bool { return text != "" && text[0] >= '0' && text[0] <= '9' }
