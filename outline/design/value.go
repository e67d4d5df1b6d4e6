package design

import (
	"errors"
	"math"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/pelletier/go-toml/v2/unstable"

	"slingloft/outline/quantity"
)

// problem says what is wrong with a value and what would do.
type problem = Advised

// misreadAs returns the problem of a text that is no quantity as it should be.
func misreadAs(e *quantity.Error) *problem {
	return &problem{Found(NoQuantity, misread{e}), Say(QuantityHint, remedy{e})}
}

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
		return nil, none, misreadAs(qe)
	}
	v, p := r.within(q.Value, quantity.Quoted(n.text), q.Unit)
	return v, q.Unit, p
}

// Measure reads the value of a key of the design that is a quantity, as its file would
// be read; pounds says that inches and pounds are likelier meant. The error says what is
// wrong and what would do.
func Measure(key Key, text string, pounds bool) (quantity.Quantity, error) {
	r := allKeys().byKey[key]
	v, u, p := r.measured(node{kind: unstable.String, text: text}, pounds)
	if p != nil {
		return quantity.Quantity{}, p
	}
	return quantity.Quantity{Value: v.(float64), Unit: u}, nil
}

// bare says what to write for a number without unit: the first unit of the row's
// dimension with which it lies in range, those of the file's system first.
func (r row) bare(number string, pounds bool) *problem {
	number = strings.ReplaceAll(number, "_", "")
	q, err := quantity.Parse(number)
	if err != nil {
		return &problem{Found(NotFinite, quantity.Quoted(number)), Say(WriteThis, r.example(pounds))}
	}
	f := Found(BareNumber, number)
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
		return &problem{f, Say(WriteWithin, r.example(pounds), r.limits(pounds))}
	case first == "" || other == "":
		return &problem{f, Say(WriteThis, first+other)}
	default:
		return &problem{f, Say(WriteThis, either{first, other})}
	}
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
			return nil, none, &problem{Found(NotDecimal, n.text), Say(WriteSuchAs, r.example(false))}
		}
		v, p := r.within(v, n.text, none)
		return v, none, p
	case unstable.String:
		if r.form == ratio {
			q, err := quantity.As(n.text, quantity.Ratio)
			var qe *quantity.Error
			if errors.As(err, &qe) {
				return nil, none, misreadAs(qe)
			}
			v, p := r.within(q.Value, quantity.Quoted(n.text), none)
			return v, none, p
		}
		return nil, none, &problem{Found(TextForNumber, quantity.Quoted(n.text)), Say(WriteBare, r.example(false))}
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
	side := TooSmall
	if v > r.hi {
		side = TooLarge
	}
	return 0, &problem{Found(side, text), Say(WillDo, r.limits(u.Imperial))}
}

// whole reads a whole number.
func (r row) whole(n node) (any, *problem) {
	v, ok := plain(n.text)
	if n.kind != unstable.Integer || !ok {
		if n.kind == unstable.Float || n.kind == unstable.Integer {
			return nil, &problem{Found(NotWhole, n.text), Say(WillDo, r.limits(false))}
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
		return &problem{Found(TextEmpty), Say(WriteName)}
	case strings.TrimSpace(text) != text:
		return &problem{Found(BlankAtEnd, quantity.Quoted(text)), Say(WriteThis, quantity.Quoted(strings.TrimSpace(text)))}
	case utf8.RuneCountInString(text) > limit:
		return &problem{Found(TextTooLong, quantity.Quoted(text), utf8.RuneCountInString(text)), Say(AtMostWillDo, limit)}
	}
	for _, c := range text {
		if c == utf8.RuneError || !unicode.IsPrint(c) {
			return &problem{Found(ControlCharacter, quantity.Quoted(text), c), Say(WriteSigns)}
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
	p := &problem{Found(UnknownWord, quantity.Quoted(n.text)), Say(OneWillDo, r.limits(false))}
	if near := Nearest(n.text, r.choices); near != "" {
		p.Hint = Say(WriteNear, near, r.limits(false))
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
		return nil, &problem{Found(FlagFalse), Say(WriteOrTrue)}
	}
	return v, nil
}

// names reads a list of words.
func (r row) names(n node) (any, *problem) {
	if n.kind != unstable.Array {
		return nil, r.wrongType(n)
	}
	if len(n.items) > int(r.hi) {
		return nil, &problem{Found(NamesTooMany, len(n.items)), Say(AtMostWillDo, int(r.hi))}
	}
	var out []string
	for _, item := range n.items {
		if item.kind != unstable.String {
			return nil, &problem{Found(NamesHold, kindName(item)), Say(WriteNames)}
		}
		if p := checkWords(item.text, 60); p != nil {
			return nil, p
		}
		for _, before := range out {
			if before == item.text {
				return nil, &problem{Found(NameTwice, quantity.Quoted(item.text)), Say(NameOnce)}
			}
		}
		out = append(out, item.text)
	}
	return out, nil
}

// wrongType says that a value is of another TOML type than the row wants.
func (r row) wrongType(n node) *problem {
	due := map[form]Phrase{measured: Say(AQuantity), ratio: Say(ANumber), amount: Say(ANumber), whole: Say(AWholeNumber),
		words: Say(AText), choice: Say(OneOf, r.limits(false)), flag: Say(TrueOrFalse), names: Say(AListOfNames)}[r.form]
	return &problem{Found(WrongType, kindName(n)), Say(WriteA, due, r.example(false))}
}

// kindName returns the TOML type of a value, as a part of a message: a [Phrase], or a
// text that needs no words.
func kindName(n node) any {
	switch n.kind {
	case unstable.String:
		return Say(HeldText, quantity.Quoted(n.text))
	case unstable.Integer, unstable.Float:
		return Say(HeldNumber, n.text)
	case unstable.Bool:
		return n.text
	case unstable.Array:
		return Say(HeldList)
	case unstable.InlineTable:
		return Say(HeldTable)
	}
	return Say(HeldTime)
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
