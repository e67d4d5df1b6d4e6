package design

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"slingloft/outline/quantity"
)

// form is how the value of a key is written.
type form int

// The forms.
const (
	measured form = iota // quantity with unit, in quotes
	ratio                // number, or per cent in quotes
	amount               // number of a currency
	whole                // whole number
	words                // text for people, in quotes
	choice               // one of some words, in quotes
	flag                 // true or false
	names                // list of words
)

// row is one key of a design file: all that reading, messages, starter file,
// reference and writing need to know of it.
type row struct {
	key     Key
	form    form
	dim     quantity.Dimension // of a measured row
	lo, hi  float64            // least and greatest value in the stored unit
	choices []string
	must    bool   // has to be given
	only    bool   // a flag that can only be set
	usual   string // value where the key is left out, as it would be written; "": not given
	usualIn string // that of a design in inches; "": as usual
	active  bool   // stands uncommented in a starter file
	sought  bool   // stands in a short one behind #: to be looked up
	doc     string
	mm      string // example in metric units, without its quotes
	inch    string // example in imperial units
	also    []string
	was     string // name in the same table that it had before, "": none; read as before

	put func(*Design, any)
	get func(*Design) any // nil: not to be written
}

// length makes a row for a length, mm, that is stored in the place at.
func length(key Key, lo, hi float64, at func(*Design) *float64) row {
	return number(key, measured, lo, hi, at).of(quantity.Length)
}

// measure makes a row for a quantity, of the dimension that its type has, that is stored
// in the place at.
func measure[T quantity.Stored](key Key, lo, hi T, at func(*Design) *T) row {
	return number(key, measured, lo, hi, at).of(lo.Dimension())
}

// number makes a row for a number that is stored in the place at.
func number[T ~float64](key Key, f form, lo, hi T, at func(*Design) *T) row {
	return row{key: key, form: f, lo: float64(lo), hi: float64(hi),
		put: func(d *Design, v any) { *at(d) = T(v.(float64)) },
		get: func(d *Design) any { return float64(*at(d)) }}
}

// count makes a row for a whole number.
func count(key Key, lo, hi int, at func(*Design) *int) row {
	return row{key: key, form: whole, lo: float64(lo), hi: float64(hi),
		put: func(d *Design, v any) { *at(d) = v.(int) },
		get: func(d *Design) any { return *at(d) }}
}

// text makes a row for text of at most limit characters.
func text(key Key, limit int, at func(*Design) *string) row {
	return row{key: key, form: words, hi: float64(limit),
		put: func(d *Design, v any) { *at(d) = v.(string) },
		get: func(d *Design) any { return *at(d) }}
}

// option makes a row for a value out of a list of words, in the order of the
// constants of T.
func option[T ~int](key Key, at func(*Design) *T, choices ...string) row {
	return row{key: key, form: choice, choices: choices,
		put: func(d *Design, v any) { *at(d) = T(index(choices, v.(string))) },
		get: func(d *Design) any { return choices[*at(d)] }}
}

// named makes a row for one of some values, which go by their names.
func named[T fmt.Stringer](key Key, at func(*Design) *T, values []T) row {
	choices := make([]string, len(values))
	for i, v := range values {
		choices[i] = v.String()
	}
	return row{key: key, form: choice, choices: choices,
		put: func(d *Design, v any) { *at(d) = values[index(choices, v.(string))] },
		get: func(d *Design) any { return (*at(d)).String() }}
}

// toggle makes a row for true or false.
func toggle(key Key, at func(*Design) *bool) row {
	return row{key: key, form: flag,
		put: func(d *Design, v any) { *at(d) = v.(bool) },
		get: func(d *Design) any { return *at(d) }}
}

// negated makes a row for true or false store the opposite.
func (r row) negated() row {
	put, get := r.put, r.get
	r.put = func(d *Design, v any) { put(d, !v.(bool)) }
	r.get = func(d *Design) any { return !get(d).(bool) }
	return r
}

// list makes a row for a list of at most limit words.
func list(key Key, limit int, at func(*Design) *[]string) row {
	return row{key: key, form: names, hi: float64(limit),
		put: func(d *Design, v any) { *at(d) = v.([]string) },
		get: func(d *Design) any { return *at(d) }}
}

// index returns the place of word in words, which holds it.
func index(words []string, word string) int {
	for i, w := range words {
		if w == word {
			return i
		}
	}
	return 0
}

func (r row) of(d quantity.Dimension) row { r.dim = d; return r }

// says sets the row's documentation and its examples.
func (r row) says(doc, mm, inch string) row { r.doc, r.mm, r.inch = doc, mm, inch; return r }

// needed marks a key that has to be given.
func (r row) needed() row { r.must, r.active = true, true; return r }

// shown marks a key that may be left out but stands in a starter file.
func (r row) shown() row { r.active = true; return r }

// lookedUp marks a key that a maker has to look up, in a data sheet.
func (r row) lookedUp() row { r.sought = true; return r }

// or sets the value that holds where the key is left out.
func (r row) or(usual string) row { r.usual = usual; return r }

// Greatest returns the greatest value that a design may have for a key that is a
// number, in the unit that it is kept in; 0 where there is no such key.
func Greatest(key Key) float64 { return allKeys().byKey[key].hi }

// orIn sets the value that holds where the key is left out of a design in inches: a
// round one near the metric one.
func (r row) orIn(usual string) row { r.usualIn = usual; return r }

// leftAt returns the value that holds where the key is left out, "" for none.
func (r row) leftAt(inches bool) string {
	if inches && r.usualIn != "" {
		return r.usualIn
	}
	return r.usual
}

// known adds names under which people may look for the key.
func (r row) known(as ...string) row { r.also = as; return r }

// formerly says what the key was called before: files that call it so are read as before.
func (r row) formerly(name string) row { r.was = name; return r }

// when makes the row one of several keys that set the same thing: put runs the
// setter after storing, and the key is written only where chosen holds.
func (r row) when(set func(*Design), chosen func(*Design) bool) row {
	put, get := r.put, r.get
	r.put = func(d *Design, v any) { put(d, v); set(d) }
	r.get = func(d *Design) any {
		if !chosen(d) {
			return nil
		}
		return get(d)
	}
	return r
}

// table returns the name of the row's table, empty at the top.
func (r row) table() Key { return r.key.Table() }

// name returns the last part of the key.
func (r row) name() string { return r.key.Name() }

// example returns the example in TOML.
func (r row) example(inches bool) string {
	if inches && r.inch != "" {
		return r.quoted(r.inch)
	}
	return r.quoted(r.mm)
}

// quoted returns a value as it is written in TOML.
func (r row) quoted(value string) string {
	switch r.form {
	case measured, words, choice:
		return strconv.Quote(value)
	case ratio:
		if strings.HasSuffix(value, "%") {
			return strconv.Quote(value)
		}
	}
	return value
}

// limits returns the range of a row, in the given system of units, as a part of a
// message: a [Phrase] or a text that needs no words.
func (r row) limits(imperial bool) any {
	switch r.form {
	case measured:
		u := r.dim.Unit(imperial)
		return Say(Range, u.Format(r.lo, quantity.Up), u.Format(r.hi, quantity.Down))
	case ratio, amount, whole:
		u := quantity.Ratio.Unit(false)
		return Say(Range, u.Format(r.lo, quantity.Up), u.Format(r.hi, quantity.Down))
	case words:
		return Say(CharactersAtMost, int(r.hi))
	case names:
		return Say(NamesAtMost, int(r.hi))
	case choice:
		return `"` + strings.Join(r.choices, `", "`) + `"`
	case flag:
		if r.only {
			return "true"
		}
	}
	return Say(TrueOrFalse)
}

// holds reports whether v lies in the row's range; the ends belong to it.
func (r row) holds(v float64) bool {
	const slack = 1e-9 // of the end, for limits that are written in other units
	return v >= r.lo-slack*math.Abs(r.lo) && v <= r.hi+slack*math.Abs(r.hi)
}

// repeated is an array of tables.
type repeated struct {
	key   Key
	limit int
	doc   string
	grow  func(*Design)            // adds an empty element
	count func(*Design) int        // elements there are
	pick  func(Design, int) Design // the design with element i alone
}

// ways are keys that exclude each other: of the alternatives, each a set of keys
// that belong together, exactly one is given, or at most one.
type ways struct {
	what         PhraseKind // what the keys say
	alternatives [][]Key
	must         bool
}
