package design

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/pelletier/go-toml/v2/unstable"

	"slingloft/outline/quantity"
)

// problem says what is wrong with a value and what would do.
type problem struct{ found, hint string }

// value returns what the node means for the row, as the type that the row
// stores, and the unit that it was written in; pounds says that most of the file is
// in inches and pounds.
func (r row) value(n node, pounds bool) (any, quantity.Unit, *problem) {
	switch r.form {
	case measured:
		return r.measured(n, pounds)
	case ratio, amount:
		return r.number(n)
	case whole:
		v, p := r.whole(n)
		return v, quantity.Unit{}, p
	case words:
		v, p := r.words(n)
		return v, quantity.Unit{}, p
	case choice:
		v, p := r.choice(n)
		return v, quantity.Unit{}, p
	case flag:
		v, p := r.flag(n)
		return v, quantity.Unit{}, p
	}
	v, p := r.names(n)
	return v, quantity.Unit{}, p
}

// measured reads a quantity.
func (r row) measured(n node, pounds bool) (any, quantity.Unit, *problem) {
	none := quantity.Unit{}
	if n.kind == unstable.Integer || n.kind == unstable.Float {
		return nil, none, r.bare(n.text, pounds)
	}
	if n.kind != unstable.String {
		return nil, none, r.wrongType(n)
	}
	q, err := quantity.As(n.text, r.dim)
	var qe *quantity.Error
	if errors.As(err, &qe) {
		if bare, err := quantity.Parse(n.text); err == nil && bare.Unit.Symbol == "" {
			return nil, none, r.bare(strings.TrimSpace(n.text), pounds)
		}
		return nil, none, &problem{qe.Found, qe.Hint}
	}
	v, p := r.within(q.Value, quantity.Quoted(n.text), q.Unit)
	return v, q.Unit, p
}

// Measure reads the value of a key of the design that is a quantity, as its file would
// be read; pounds says that inches and pounds are likelier meant. What is wrong comes
// back as a [quantity.Error].
func Measure(key Key, text string, pounds bool) (quantity.Quantity, error) {
	r := allKeys().byKey[key]
	v, u, p := r.measured(node{kind: unstable.String, text: text}, pounds)
	if p != nil {
		return quantity.Quantity{}, &quantity.Error{Found: p.found, Hint: p.hint}
	}
	return quantity.Quantity{Value: v.(float64), Unit: u}, nil
}

// bare says what to write for a number without unit: the first unit of the row's
// dimension with which it lies in range, those of the file's system first.
func (r row) bare(number string, pounds bool) *problem {
	number = strings.ReplaceAll(number, "_", "")
	p := &problem{number + " has no unit", "write " + r.example(pounds)}
	q, err := quantity.Parse(number)
	if err != nil {
		p.found = quantity.Quoted(number) + " is not a finite number"
		return p
	}
	fits := func(imperial bool) string {
		for _, u := range r.dim.Units() {
			if u.Imperial == imperial && r.holds(q.Value*u.Factor) {
				return strconv.Quote(number + " " + u.Symbol)
			}
		}
		return ""
	}
	switch first, other := fits(pounds), fits(!pounds); {
	case first == "" && other == "":
		p.hint += fmt.Sprintf(" or the like: %s will do", r.limits(pounds))
	case first == "" || other == "":
		p.hint = "write " + first + other
	default:
		p.hint = "write " + first + " or " + other
	}
	return p
}

// plain reads a TOML number that is finite and decimal.
func plain(text string) (float64, bool) {
	text = strings.ReplaceAll(text, "_", "")
	v, err := strconv.ParseFloat(text, 64)
	if err != nil || math.IsNaN(v) || math.IsInf(v, 0) || strings.ContainsAny(text, "xXpP") {
		return 0, false
	}
	if v == 0 {
		v = 0 // never a negative zero
	}
	return v, true
}

// number reads a plain number, or a ratio in per cent.
func (r row) number(n node) (any, quantity.Unit, *problem) {
	none := quantity.Unit{}
	switch n.kind {
	case unstable.Integer, unstable.Float:
		v, ok := plain(n.text)
		if !ok {
			return nil, none, &problem{n.text + " is not a finite decimal number", "write one, such as " + r.example(false)}
		}
		v, p := r.within(v, n.text, none)
		return v, none, p
	case unstable.String:
		if r.form == ratio {
			q, err := quantity.As(n.text, quantity.Ratio)
			var qe *quantity.Error
			if errors.As(err, &qe) {
				return nil, none, &problem{qe.Found, qe.Hint}
			}
			v, p := r.within(q.Value, quantity.Quoted(n.text), none)
			return v, none, p
		}
		return nil, none, &problem{quantity.Quoted(n.text) + " is text", "write a number without quotes, such as " + r.example(false)}
	}
	return nil, none, r.wrongType(n)
}

// within checks the range of v, which was written as text in unit u.
func (r row) within(v float64, text string, u quantity.Unit) (float64, *problem) {
	const tiny = 1e-12 // below any meaning, but long to write
	if math.Abs(v) < tiny {
		v = 0
	}
	if r.holds(v) {
		return min(max(v, r.lo), r.hi), nil
	}
	side := "too small"
	if v > r.hi {
		side = "too large"
	}
	return 0, &problem{text + " is " + side, r.limits(u.Imperial) + " will do"}
}

// whole reads a whole number.
func (r row) whole(n node) (any, *problem) {
	v, ok := plain(n.text)
	if n.kind != unstable.Integer || !ok {
		if n.kind == unstable.Float || n.kind == unstable.Integer {
			return nil, &problem{n.text + " is not a whole decimal number", r.limits(false) + " will do"}
		}
		return nil, r.wrongType(n)
	}
	if v, p := r.within(v, n.text, quantity.Unit{}); p == nil {
		return int(v), nil
	} else {
		return nil, p
	}
}

// words reads text for people.
func (r row) words(n node) (any, *problem) {
	if n.kind != unstable.String {
		return nil, r.wrongType(n)
	}
	return n.text, checkWords(n.text, int(r.hi))
}

// checkWords finds what cannot be lettered or would not be seen.
func checkWords(text string, limit int) *problem {
	switch {
	case strings.TrimSpace(text) == "":
		return &problem{"the text is empty", "write a name, or leave the key out if it may be"}
	case strings.TrimSpace(text) != text:
		return &problem{quantity.Quoted(text) + " begins or ends with a blank", fmt.Sprintf("write %s", quantity.Quoted(strings.TrimSpace(text)))}
	case utf8.RuneCountInString(text) > limit:
		return &problem{fmt.Sprintf("%s has %d characters", quantity.Quoted(text), utf8.RuneCountInString(text)), fmt.Sprintf("at most %d will do", limit)}
	}
	for _, c := range text {
		if c == utf8.RuneError || !unicode.IsPrint(c) {
			return &problem{fmt.Sprintf("%s has the control character %U in it", quantity.Quoted(text), c), "write letters, digits, signs and blanks on one line"}
		}
	}
	return nil
}

// choice reads one of some words.
func (r row) choice(n node) (any, *problem) {
	if n.kind != unstable.String {
		return nil, r.wrongType(n)
	}
	for _, c := range r.choices {
		if c == n.text {
			return c, nil
		}
	}
	p := &problem{quantity.Quoted(n.text) + " is not known", "one of " + r.limits(false) + " will do"}
	if near := Nearest(n.text, r.choices); near != "" {
		p.hint = fmt.Sprintf("write %q; %s", near, p.hint)
	}
	return nil, p
}

// flag reads true or false.
func (r row) flag(n node) (any, *problem) {
	if n.kind != unstable.Bool {
		return nil, r.wrongType(n)
	}
	v := n.text == "true"
	if r.only && !v {
		return nil, &problem{"false says nothing", "leave the key out, or write true"}
	}
	return v, nil
}

// names reads a list of words.
func (r row) names(n node) (any, *problem) {
	if n.kind != unstable.Array {
		return nil, r.wrongType(n)
	}
	if len(n.items) > int(r.hi) {
		return nil, &problem{fmt.Sprintf("the list has %d names", len(n.items)), fmt.Sprintf("at most %.0f will do", r.hi)}
	}
	var out []string
	for _, item := range n.items {
		if item.kind != unstable.String {
			return nil, &problem{"the list holds " + kindName(item), "write names in quotes, such as [\"one\", \"two\"]"}
		}
		if p := checkWords(item.text, 60); p != nil {
			return nil, p
		}
		for _, before := range out {
			if before == item.text {
				return nil, &problem{quantity.Quoted(item.text) + " is in the list twice", "name it once"}
			}
		}
		out = append(out, item.text)
	}
	return out, nil
}

// wrongType says that a value is of another TOML type than the row wants.
func (r row) wrongType(n node) *problem {
	what := map[form]string{measured: "a quantity in quotes", ratio: "a number", amount: "a number", whole: "a whole number",
		words: "text in quotes", choice: "one of " + r.limits(false), flag: "true or false", names: "a list of names"}[r.form]
	return &problem{"holds " + kindName(n), "write " + what + ", such as " + r.example(false)}
}

// kindName returns the TOML type of a value in words.
func kindName(n node) string {
	switch n.kind {
	case unstable.String:
		return "the text " + quantity.Quoted(n.text)
	case unstable.Integer, unstable.Float:
		return "the number " + n.text
	case unstable.Bool:
		return n.text
	case unstable.Array:
		return "a list"
	case unstable.InlineTable:
		return "a table"
	}
	return "a date or time"
}

// parse reads a value as it stands in the schema.
func (r row) parse(written string) (any, *problem) {
	n := node{kind: unstable.String, text: written}
	switch r.form {
	case ratio, amount:
		if !strings.HasSuffix(written, "%") {
			n.kind = unstable.Float
		}
	case whole:
		n.kind = unstable.Integer
	case flag:
		n.kind = unstable.Bool
	case names:
		n.kind = unstable.Array
	}
	v, _, p := r.value(n, false)
	return v, p
}
