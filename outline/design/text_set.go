package design

import (
	"bytes"
	"cmp"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode"
)

// Set returns the text with another value for a key, written as a form shows it: without
// quotes, a list's names with commas between them; "" takes the key out. A value that
// the key may not have is set all the same, so that it can be told where it stands. The
// error is [ErrByHand].
//
// A table or a list takes another header, as "[bar]" or "[[guest]]"; "" takes it out with
// all that is in it.
func (t Text) Set(key Key, value string) (Text, error) {
	if e := t.entry(key); e != nil && e.value == nil {
		return t.setTable(key, value)
	}
	meant := t.all()
	n, given := t.values[key]
	shown, toml := allKeys().byKey[key.Unnumbered()].typed(value)
	if shown == "" {
		if !given {
			return t, nil
		}
		delete(meant, key)
		return t.without(key, meant)
	}
	meant[key] = shown
	if !given {
		return t.added(key, toml, meant)
	}
	from := t.lines.offset(n.at)
	to := from + span(t.data[from:])
	if t.data[from] == '\'' && toml[0] == '"' && !strings.ContainsAny(shown, `'\`) {
		toml = "'" + shown + "'" // as its maker quotes
	}
	return t.changed(from, to, toml, meant)
}

// decimalComma is a comma that stands between digits.
var decimalComma = regexp.MustCompile(`(\d),(\d)`)

// typed returns a value as somebody has typed it, tidied, and in TOML.
func (r row) typed(value string) (shown, toml string) {
	value = strings.TrimSpace(strings.Map(func(c rune) rune {
		if unicode.IsControl(c) {
			return ' '
		}
		return c
	}, value))
	switch r.form {
	case measured, ratio, amount:
		value = decimalComma.ReplaceAllString(value, "$1.$2")
	case names:
		return namesTyped(value)
	}
	quote := strconv.Quote(value)
	switch r.form {
	case ratio, amount, whole:
		if _, ok := plain(value); ok && bareNumber.MatchString(value) {
			return value, value
		}
	case flag:
		if value == "true" || value == "false" {
			return value, value
		}
	}
	return value, quote
}

// Tidied returns the value of a key as somebody has typed it, as [Text.Set] would have it:
// without blanks around it, and with a point for a decimal comma.
func Tidied(key Key, typed string) string {
	shown, _ := allKeys().byKey[key.Unnumbered()].typed(typed)
	return shown
}

// bareNumber is a decimal number as TOML has it.
var bareNumber = regexp.MustCompile(`^[+-]?(0|[1-9]\d*)(\.\d+)?$`)

// namesTyped is [row.typed] of a list of names.
func namesTyped(value string) (shown, toml string) {
	var items, quoted []string
	for item := range strings.SplitSeq(value, ",") {
		if item = strings.TrimSpace(item); item != "" {
			items, quoted = append(items, item), append(quoted, strconv.Quote(item))
		}
	}
	return strings.Join(items, ", "), "[" + strings.Join(quoted, ", ") + "]"
}

// place is a place in the text at which something is put in.
type place struct {
	at   int
	text string
}

// added returns the text with a key that it does not give, at the first place that does.
func (t Text) added(key Key, toml string, meant map[Key]string) (Text, error) {
	for _, p := range t.places(key, toml) {
		if out, err := t.changed(p.at, p.at, p.text, meant); err == nil {
			return out, nil
		}
	}
	return Text{}, ErrByHand
}

// places returns where a key can be put, the likeliest first.
func (t Text) places(key Key, toml string) []place {
	in, statement := t.inside(key.Table()), key.Name()+" = "+toml
	if in == nil {
		return t.placesOfTable(key, statement)
	}
	if in.closed {
		return []place{t.within(in, statement)}
	}
	from, to := t.region(in)
	var out []place
	behind := func(at int, statement string) { out = append(out, t.line(at, statement)) }
	if at := t.commented(from, to, regexp.QuoteMeta(key.Name())+`\s*=`); at >= 0 {
		behind(at, statement)
	}
	if last, ok := t.last(in, from, to); ok {
		behind(t.end(last), t.prefix(last)+statement)
	}
	if in == t.root {
		behind(0, statement)
	} else if in.header {
		behind(t.lines.after(in.at.Line), statement)
	}
	if last, ok := t.last(in, 0, len(t.data)); ok { // a table of dotted keys alone
		behind(t.end(last), t.prefix(last)+statement)
	}
	if in != t.root && !in.header { // one that only holds others
		out = append(out, t.placesOfTable(key, statement)...)
	}
	return out
}

// placesOfTable is [Text.places] of a key whose table the text does not have.
func (t Text) placesOfTable(key Key, statement string) []place {
	for above := key.Table(); above != ""; above = above.Table() {
		if in := t.inside(above); in != nil && in.closed {
			return []place{t.within(in, string(key[len(above)+1:])+strings.TrimPrefix(statement, key.Name()))}
		}
	}
	table := "[" + string(key.Table()) + "]"
	nl := t.newline()
	out := []place{t.line(len(t.data), nl+table+nl+statement)}
	if len(t.data) == 0 {
		out[0].text = strings.TrimPrefix(out[0].text, nl)
	}
	if at := t.commented(0, len(t.data), regexp.QuoteMeta(table)+`\s*$`); at >= 0 {
		out = append([]place{t.line(at, table+nl+statement)}, out...)
	}
	return out
}

// line is the place of a statement on a line of its own, at the start of a line or at
// the end of the text.
func (t Text) line(at int, statement string) place {
	nl := t.newline()
	if at > 0 && t.data[at-1] != '\n' {
		return place{at, nl + statement + nl}
	}
	return place{at, statement + nl}
}

// within is the place of a statement at the end of an inline table.
func (t Text) within(in *table, statement string) place {
	from := t.lines.offset(in.at)
	brace := max(from+span(t.data[from:])-1, from)
	at := len(bytes.TrimRight(t.data[:brace], " \t"))
	if t.data[at-1] == '{' {
		return place{at, " " + statement + " "}
	}
	return place{at, ", " + statement}
}

// region returns the offsets between which the keys of a table under a header stand, or
// those of the top.
func (t Text) region(in *table) (from, to int) {
	n := 1
	if in != t.root {
		from, n = t.lines.after(in.at.Line), in.at.Line+1
	}
	for ; n <= len(t.lines.starts); n++ {
		if strings.HasPrefix(strings.TrimSpace(t.lines.text(n)), "[") && t.lines.starts[n-1] >= from {
			break
		}
	}
	return from, t.lines.after(n - 1)
}

// commented returns the offset after the last line of a comment, between two offsets,
// that goes on with a pattern; −1 for none.
func (t Text) commented(from, to int, pattern string) int {
	p := regexp.MustCompile(`^\s*#[#:]*\s*` + pattern)
	for n := t.lines.position(to).Line; n >= 1 && t.lines.after(n) > from; n-- {
		if t.lines.after(n) <= to && p.MatchString(t.lines.text(n)) {
			return t.lines.after(n)
		}
	}
	return -1
}

// last returns the last key of a table, or of those that its dotted keys make, which
// stands between two offsets.
func (t Text) last(in *table, from, to int) (*entry, bool) {
	var all []*entry
	for _, e := range in.entries {
		if at := t.lines.offset(e.at); at >= from && at < to && len(e.list) == 0 && (e.value != nil || e.table.closed) {
			all = append(all, e)
		}
	}
	if len(all) == 0 {
		return nil, false
	}
	return slices.MaxFunc(all, func(a, b *entry) int {
		return cmp.Or(cmp.Compare(a.at.Line, b.at.Line), cmp.Compare(a.at.Column, b.at.Column))
	}), true
}

// prefix returns what stands before a key on its line: indentation and the tables of a
// dotted key.
func (t Text) prefix(e *entry) string {
	return string(t.data[t.lines.starts[e.at.Line-1]:t.lines.offset(e.at)])
}

// valueOf returns the offsets of an entry's value.
func (t Text) valueOf(e *entry) (from, to int) {
	if e.value != nil {
		from = t.lines.offset(e.value.at)
	} else {
		from = t.lines.offset(e.table.at)
	}
	return from, from + span(t.data[from:])
}

// end returns the offset after the line on which an entry's value ends.
func (t Text) end(e *entry) int {
	_, to := t.valueOf(e)
	return t.lines.after(t.lines.position(to).Line)
}
