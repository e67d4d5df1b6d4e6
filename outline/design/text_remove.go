package design

import (
	"bytes"
	"maps"
	"regexp"
	"strings"
)

// without returns the text without a key that it gives.
func (t Text) without(key Key, meant map[Key]string) (Text, error) {
	e := t.entry(key)
	if e == nil || e.value == nil {
		return Text{}, ErrByHand
	}
	from, to := t.spanOf(key, e)
	_, end := t.valueOf(e)
	if comment := bytes.TrimLeft(t.data[end:max(end, to)], " \t"); bytes.HasPrefix(comment, []byte("#")) {
		to -= len(comment)
	}
	return t.changed(from, to, "", meant)
}

// spanOf returns the offsets of an entry that goes with all of its line, or of a pair of
// an inline table.
func (t Text) spanOf(key Key, e *entry) (from, to int) {
	_, to = t.valueOf(e)
	if in := t.inside(key.Table()); in.closed {
		return t.pair(t.lines.offset(e.at), to)
	}
	return t.lines.starts[e.at.Line-1], t.end(e)
}

// Strike returns the text without a key and what is said of it: the comment behind it and
// those directly above it, but for one that begins the file, or the key where it is left
// out behind #. The error is [ErrByHand].
func (t Text) Strike(key Key) (Text, error) {
	e := t.entry(key)
	if e == nil {
		in := t.inside(key.Table())
		if in == nil || in.closed {
			return t, nil
		}
		from, to := t.region(in)
		if at := t.commented(from, to, regexp.QuoteMeta(key.Name())+`\s*=`); at >= 0 {
			return t.changed(t.lines.starts[t.lines.position(at-1).Line-1], at, "", t.all())
		}
		return t, nil
	}
	if e.value == nil {
		return Text{}, ErrByHand
	}
	from, to := t.spanOf(key, e)
	if n := e.at.Line; from == t.lines.starts[n-1] {
		for n > 1 && strings.HasPrefix(strings.TrimSpace(t.lines.text(n-1)), "#") {
			n--
		}
		if n > 1 {
			from = t.lines.starts[n-1]
		}
	}
	return t.changed(from, to, "", t.allBut(key))
}

// allBut returns every value of the file but those of a key, a table or a list.
func (t Text) allBut(name Key) map[Key]string {
	out := t.all()
	maps.DeleteFunc(out, func(key Key, _ string) bool {
		rest, in := strings.CutPrefix(string(key), string(name))
		return in && (rest == "" || rest[0] == '.' || rest[0] == '[')
	})
	return out
}

// pair returns the offsets of a key and value of an inline table, or of an element of a
// list, with the comma that has to go with it.
func (t Text) pair(from, to int) (int, int) {
	for from > 0 && strings.IndexByte("{[,", t.data[from-1]) < 0 {
		from--
	}
	after := to + len(t.data[to:]) - len(bytes.TrimLeft(t.data[to:], " \t\r\n"))
	switch {
	case after < len(t.data) && t.data[after] == ',':
		return from, after + 1
	case t.data[from-1] == ',':
		return from - 1, to
	}
	return from, to
}

// Grow returns the text with one more element of a list at its end, with no keys yet.
// The error is [ErrByHand].
func (t Text) Grow(list Key) (Text, error) {
	many := t.Count(list)
	out, err := t.grown(list)
	if err != nil || out.Count(list) != many+1 {
		return Text{}, ErrByHand
	}
	return out, nil
}

func (t Text) grown(list Key) (Text, error) {
	nl := t.newline()
	head := nl + "[[" + string(list) + "]]"
	e := t.entry(list)
	switch {
	case e != nil && e.value != nil:
		from, to := t.valueOf(e)
		at := from + len(bytes.TrimRight(t.data[from:to-1], " \t\r\n,"))
		text := ", {}"
		if at == from+1 {
			text = "{}"
		}
		return t.changed(at, at, text, t.all())
	case e != nil && len(e.list) > 0:
		p := t.line(t.endOf(e.list[len(e.list)-1]), head)
		return t.changed(p.at, p.at, p.text, t.all())
	}
	if len(t.data) == 0 {
		head = strings.TrimPrefix(head, nl)
	}
	p := t.line(len(t.data), head)
	return t.changed(p.at, p.at, p.text, t.all())
}

// endOf returns the offset after the last line of a table under a header.
func (t Text) endOf(in *table) int {
	from, to := t.region(in)
	if last, ok := t.last(in, from, to); ok {
		return t.end(last)
	}
	return from
}

// Drop returns the text without the element number i of a list, from 1, with the
// comments within it. The error is [ErrByHand].
func (t Text) Drop(list Key, i int) (Text, error) {
	e, many := t.entry(list), t.Count(list)
	if e == nil || i < 1 || i > many {
		return Text{}, ErrByHand
	}
	meant := map[Key]string{}
	for key, value := range t.all() {
		if key, ok := renumbered(key, list, i); ok {
			meant[key] = value
		}
	}
	if many == 1 && e.value != nil {
		return t.without(list, meant) // with none a list is not there
	}
	from, to := t.elementSpan(e, i-1)
	out, err := t.changed(from, to, "", meant)
	if err != nil || out.Count(list) != many-1 {
		return Text{}, ErrByHand
	}
	return out, nil
}

// renumbered returns the key that a key has once element i of a list is gone; false for
// those that go with it.
func renumbered(key, list Key, i int) (Key, bool) {
	rest, in := strings.CutPrefix(string(key), string(list)+"[")
	if !in {
		return key, true
	}
	_, name, _ := strings.Cut(rest, "].")
	_, n := numbered("[" + strings.TrimSuffix(rest, "]."+name) + "]")
	switch {
	case n < i:
		return key, true
	case n == i:
		return "", false
	}
	return list.Item(n - 1).In(name), true
}

// elementSpan returns the offsets of an element of a list, from 0, with the blank line
// above its header or the comma that goes with it.
func (t Text) elementSpan(e *entry, i int) (from, to int) {
	if e.value != nil {
		start, _ := t.valueOf(e)
		at := start + 1
		for n := 0; ; n++ {
			for at < len(t.data) && strings.IndexByte(" \t\r\n,", t.data[at]) >= 0 {
				at++
			}
			end := at + span(t.data[at:])
			if n == i || end == at {
				return t.pair(at, end)
			}
			at = end
		}
	}
	in := e.list[i]
	n := in.at.Line
	if n > 1 && strings.TrimSpace(t.lines.text(n-1)) == "" {
		n--
	}
	return t.lines.starts[n-1], t.endOf(in)
}
