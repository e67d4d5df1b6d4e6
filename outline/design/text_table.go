package design

import (
	"bytes"
	"cmp"
	"maps"
	"slices"
	"strings"
)

// setTable returns the text with another header for a table or a list, as "[bar]" or
// "[[guest]]", or without it and all that is in it, where the header is "". The error is
// [ErrByHand].
func (t Text) setTable(name Key, header string) (Text, error) {
	if header == "" {
		return t.withoutTable(name)
	}
	to := Key(strings.Trim(header, "[]"))
	if t.entry(to) != nil {
		return Text{}, ErrByHand // two of one name
	}
	e, meant := t.entry(name), map[Key]string{}
	for key, value := range t.all() {
		if rest, in := strings.CutPrefix(string(key), string(name)); in && (rest[0] == '.' || rest[0] == '[') {
			key = to + Key(rest)
		}
		meant[key] = value
	}
	headed := e.list
	if e.table != nil {
		headed = []*table{e.table}
	}
	data := t.data
	for i := len(headed) - 1; i >= 0; i-- { // from the end, so that places stay
		from, end, ok := t.header(headed[i])
		if !ok {
			return Text{}, ErrByHand
		}
		data = spliced(data, from, end, header)
	}
	return t.changed(0, len(t.data), string(data), meant)
}

// header returns where the header of a table stands, with its brackets; false for a table
// that has none.
func (t Text) header(in *table) (from, to int, ok bool) {
	if in.at.Line < 1 || in.closed {
		return 0, 0, false
	}
	line := t.data[t.lines.starts[in.at.Line-1]:]
	if n := bytes.IndexByte(line, '\n'); n >= 0 {
		line = line[:n]
	}
	open, shut := bytes.IndexByte(line, '['), bytes.IndexByte(line, ']')
	if open < 0 || shut < open || len(bytes.TrimSpace(line[:open])) > 0 {
		return 0, 0, false
	}
	for shut+1 < len(line) && line[shut+1] == ']' {
		shut++
	}
	start := t.lines.starts[in.at.Line-1]
	return start + open, start + shut + 1, true
}

// withoutTable returns the text without a table or a list, those within it and the comments
// among their keys.
func (t Text) withoutTable(name Key) (Text, error) {
	meant := t.allBut(name)
	out, err := t.withoutHeaders(name)
	if err != nil {
		return Text{}, err
	}
	switch e := out.entry(name); {
	case e == nil:
	case e.value != nil:
		out, err = out.Strike(name)
	case e.table.closed:
		from, to := out.spanOf(name, e)
		out, err = out.changed(from, to, "", meant)
	default: // dotted keys
		for _, one := range e.table.entries {
			if out, err = out.withoutTable(name.In(one.name)); err != nil {
				break
			}
		}
	}
	if err != nil || out.entry(name) != nil || !maps.Equal(out.all(), meant) {
		return Text{}, ErrByHand
	}
	return out, nil
}

// withoutHeaders returns the text without a table and those within it, as far as they
// stand under headers of their own.
func (t Text) withoutHeaders(name Key) (Text, error) {
	type span struct{ from, to int }
	var spans []span
	var gather func(in *table)
	gather = func(in *table) {
		if in == nil {
			return
		}
		if in.header {
			n := in.at.Line
			if n > 1 && strings.TrimSpace(t.lines.text(n-1)) == "" {
				n--
			}
			spans = append(spans, span{t.lines.starts[n-1], t.endOf(in)})
		}
		for _, e := range in.entries {
			if e.table != nil {
				gather(e.table)
			}
			for _, one := range e.list {
				gather(one)
			}
		}
	}
	if e := t.entry(name); e != nil {
		for _, in := range slices.Concat(e.list, []*table{e.table}) {
			gather(in)
		}
	}
	slices.SortFunc(spans, func(a, b span) int { return cmp.Compare(b.from, a.from) })
	data := t.data
	for _, s := range spans {
		data = spliced(data, s.from, s.to, "")
	}
	out, err := OpenText("", data)
	if err != nil {
		return Text{}, ErrByHand
	}
	out.mark = t.mark
	return out, nil
}
