package design

import (
	"errors"
	"regexp"
	"slices"
	"strings"

	"slingloft/outline/quantity"
)

// Change is another value for a key, as a form shows it; "" takes the key out.
type Change struct {
	Key   Key
	Value string
}

// Fix is a way out of a fault that can be taken at once: all of its changes together.
type Fix []Change

// maxFixes is how many ways out of a fault are shown: own choice, so that they are read.
const maxFixes = 4

// Fixes returns ways out of a fault of the text, each tried: with it the reader no longer
// finds that fault of the key. A shelf may be nil.
func (t Text) Fixes(f Fault, shelf *Shelf) []Fix {
	var out []Fix
	for _, fix := range t.ways(f) {
		known := slices.ContainsFunc(out, func(o Fix) bool { return slices.Equal(o, fix) })
		if len(out) < maxFixes && !known && t.helps(fix, f, shelf) {
			out = append(out, fix)
		}
	}
	return out
}

// Apply returns the text with the changes of a fix. The error is [ErrByHand].
func (t Text) Apply(fix Fix) (Text, error) {
	var err error
	for _, c := range fix {
		if t, err = t.Set(c.Key, c.Value); err != nil {
			return Text{}, err
		}
	}
	return t, nil
}

// helps reports whether the reader no longer finds a fault of the same key.
func (t Text) helps(fix Fix, f Fault, shelf *Shelf) bool {
	after, err := t.Apply(fix)
	if err != nil {
		return false
	}
	_, _, err = ReadWith(f.File, after.data, shelf)
	var left Faults
	return !errors.As(err, &left) || !slices.ContainsFunc(left, func(l Fault) bool { return l.Key == f.Key })
}

// ways returns what may be a way out of a fault, the likeliest first.
func (t Text) ways(f Fault) []Fix {
	var out []Fix
	one := func(key Key, value string) { out = append(out, Fix{{key, value}}) }
	for _, b := range []Bound{f.Hint.Bound, f.Hint.Instead} {
		if b.Given() {
			one(b.Key, b.Written)
		}
	}
	value, given := t.Value(f.Key)
	row, known := allKeys().byKey[f.Key.Unnumbered()]
	switch {
	case f.Found.Rule == UnknownKey:
		return t.renamings(f.Key, value)
	case f.Found.Rule == UnknownTable:
		k := allKeys()
		if _, meant := k.suggestTable(f.Key); meant != "" {
			_, list := k.list(meant)
			one(f.Key, header(meant, list))
		}
		one(f.Key, "")
		return out
	case f.Found.Rule == GivenBeside:
		one(f.Key, "")
		one(f.Found.Data[0].(Key), "")
	case f.Found.Rule == GivenUnderBoth:
		one(f.Key.Table().In(row.was), "")
		one(f.Key, "")
	case f.Found.Rule == TableMissing || f.Found.Rule == KeyMissing && !known:
		return append(out, t.needed(f.Key))
	case given && known:
		for _, v := range row.likely(value) {
			one(f.Key, v)
		}
	case known:
		one(f.Key, row.shownExample(t.inches()))
	}
	if given && !row.must {
		one(f.Key, "")
	}
	if given && known {
		one(f.Key, row.shownExample(t.inches()))
	}
	return out
}

// header returns the header of a table or of an element of a list.
func header(table Key, list bool) string {
	if list {
		return "[[" + string(table) + "]]"
	}
	return "[" + string(table) + "]"
}

// renamings returns the names that an unknown key may be meant for, with its value, and
// taking it out.
func (t Text) renamings(key Key, value string) []Fix {
	k, list := allKeys(), key.Table()
	_, meant := k.suggest(list.Unnumbered(), key.Name())
	var out []Fix
	for _, m := range meant {
		if list != list.Unnumbered() {
			m = list.In(m.Name())
		}
		if _, given := t.Value(m); !given {
			out = append(out, Fix{{key, ""}, {m, value}})
		}
	}
	return append(out, Fix{{key, ""}})
}

// needed gives every key that a table must have and has not its example.
func (t Text) needed(table Key) Fix {
	var out Fix
	for _, r := range allKeys().in(table) {
		if _, given := t.Value(r.key); r.must && !given {
			out = append(out, Change{r.key, r.shownExample(t.inches())})
		}
	}
	return out
}

// inches reports whether most of the text is in inches and pounds.
func (t Text) inches() bool { return t.root.balance() > 0 }

// shownExample returns the row's example as a form shows it.
func (r row) shownExample(inches bool) string {
	shown, _ := r.typed(strings.Trim(r.mm, "[]"))
	if inches && r.inch != "" {
		shown, _ = r.typed(strings.Trim(r.inch, "[]"))
	}
	return strings.ReplaceAll(shown, `"`, "")
}

// leadingNumber is a number, perhaps with a fraction, at the start of a value.
var leadingNumber = regexp.MustCompile(`^[+-]?\d+(?:[.,]\d+)?(?:[ -]\d+/\d+)?`)

// likely returns what may have been meant by a value at fault, and the ends of the range.
func (r row) likely(value string) []string {
	var out []string
	number := strings.ReplaceAll(leadingNumber.FindString(strings.TrimSpace(value)), ",", ".")
	switch r.form {
	case measured:
		for _, u := range r.dim.Units() {
			if number != "" {
				out = append(out, number+" "+u.Symbol)
			}
		}
		q, err := quantity.As(value, r.dim)
		if err == nil {
			out = append([]string{r.nearEnd(q.Value, r.dim.Unit(q.Unit.Imperial))}, out...)
		}
	case ratio, amount, whole:
		if v, ok := plain(number); ok {
			whole, _, _ := strings.Cut(number, ".")
			out = append(out, number, whole, r.nearEnd(v, quantity.Ratio.Unit(false)))
		}
	case choice, flag:
		if near := Nearest(value, r.choices); near != "" {
			out = append(out, near)
		}
		out = append(append(out, r.choices...), "true", "false")
	case words:
		if text := []rune(strings.TrimSpace(value)); len(text) > int(r.hi) {
			out = append(out, strings.TrimSpace(string(text[:int(r.hi)])))
		}
	}
	return out
}

// nearEnd returns the end of the range that lies next to a value.
func (r row) nearEnd(v float64, u quantity.Unit) string {
	if v < r.lo {
		return u.Format(r.lo, quantity.Up)
	}
	return u.Format(r.hi, quantity.Down)
}
