package design

import (
	"bytes"
	"errors"
	"maps"
	"slices"
	"strings"

	"github.com/pelletier/go-toml/v2/unstable"
)

// Text is a design file as its maker wrote it, in which single values are changed while
// comments, order, line ends and every other byte stay as they are. A Text does not
// change: what changes it returns another. It may be at fault as a design, but it is
// TOML.
type Text struct {
	data   []byte // without byte order mark
	mark   bool   // it began with one
	lines  *lines
	root   *table
	values map[Key]node // of single keys, those of lists numbered from 1
}

// ErrByHand says that a change cannot be made in one place of the text, however it is
// written there: the maker has to make it by hand.
var ErrByHand = errors.New("this value is written in a way that has to be changed by hand")

// OpenText takes the text of a design file. It refuses, with [Faults], what cannot be
// read as TOML.
func OpenText(name string, data []byte) (Text, error) {
	plain, refused := plainText(name, data)
	if refused != nil {
		return Text{}, refused
	}
	b := build(name, plain, allKeys().example)
	if len(b.faults) > 0 {
		return Text{}, b.faults.sorted()
	}
	t := Text{data: plain, mark: len(plain) < len(data), lines: b.lines, root: b.root, values: map[Key]node{}}
	t.gather("", b.root)
	return t, nil
}

// Bytes returns the file.
func (t Text) Bytes() []byte {
	if t.mark {
		return append([]byte(byteOrderMark), t.data...)
	}
	return bytes.Clone(t.data)
}

// gather notes the values of a table and of those within it.
func (t Text) gather(name Key, in *table) {
	for _, e := range in.entries {
		full := in.now(name, e)
		switch {
		case e.table != nil:
			t.gather(full, e.table)
		case e.value != nil && len(elements(e)) == 0:
			t.values[full] = *e.value
		}
		for i, one := range elements(e) {
			t.gather(full.Item(i+1), one)
		}
	}
}

// now returns the key of an entry: the present one where the file has it by a former name
// and not by both.
func (in *table) now(table Key, e *entry) Key {
	if r, ok := allKeys().former[table.Unnumbered().In(e.name)]; ok && in.find(r.name()) == nil {
		return table.In(r.name())
	}
	return table.In(e.name)
}

// elements returns the tables of a list, written with headers or as a list of inline
// tables; nil for anything else.
func elements(e *entry) []*table {
	if e.value == nil {
		return e.list
	}
	var out []*table
	for _, item := range e.value.items {
		if item.table == nil {
			return nil
		}
		out = append(out, item.table)
	}
	return out
}

// Value returns the value of a key as a form shows it: text and quantities without
// quotes, the names of a list with commas between them. It reports false where the file
// does not give the key. Elements of lists are numbered from 1.
func (t Text) Value(key Key) (string, bool) {
	n, ok := t.values[key]
	if n.kind != unstable.Array {
		return n.text, ok
	}
	items := make([]string, len(n.items))
	for i, item := range n.items {
		items[i] = item.text
	}
	return strings.Join(items, ", "), ok
}

// Keys returns every key that the file gives, in alphabetical order.
func (t Text) Keys() []Key { return slices.Sorted(maps.Keys(t.values)) }

// Count returns how many elements a list has.
func (t Text) Count(list Key) int {
	if e := t.entry(list); e != nil {
		return len(elements(e))
	}
	return 0
}

// entry returns what the file has for a key or table, nil for nothing.
func (t Text) entry(key Key) *entry {
	in, name := t.root, string(key)
	for in != nil {
		first, rest, more := strings.Cut(name, ".")
		first, number := numbered(first)
		e := in.find(first)
		if was := allKeys().byKey[key.Unnumbered()].was; e == nil && !more && was != "" {
			e = in.find(was)
		}
		if e == nil || !more {
			return e
		}
		if in, name = e.table, rest; number > 0 && number <= len(elements(e)) {
			in = elements(e)[number-1]
		}
	}
	return nil
}

// inside returns the table of that name, nil where there is none. Elements of lists are
// numbered from 1.
func (t Text) inside(name Key) *table {
	if name == "" {
		return t.root
	}
	e := t.entry(name)
	if e == nil {
		return nil
	}
	_, number := numbered(string(name.Name()))
	if many := elements(e); number > 0 {
		if number > len(many) {
			return nil
		}
		return many[number-1]
	}
	return e.table
}

// changed returns the text with what lies between two offsets replaced, if that changes
// the values as meant and no other.
func (t Text) changed(from, to int, by string, meant map[Key]string) (Text, error) {
	out, err := OpenText("", spliced(t.data, from, to, by))
	if err != nil || len(out.data) > MaxSize {
		return Text{}, ErrByHand
	}
	out.mark = t.mark
	if !maps.Equal(out.all(), meant) {
		return Text{}, ErrByHand
	}
	return out, nil
}

// all returns every value of the file.
func (t Text) all() map[Key]string {
	out := map[Key]string{}
	for key := range t.values {
		out[key], _ = t.Value(key)
	}
	return out
}

// newline returns how the file ends its lines.
func (t Text) newline() string {
	if bytes.Contains(t.data, []byte("\r\n")) {
		return "\r\n"
	}
	return "\n"
}
