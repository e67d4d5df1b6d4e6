package design

import (
	"bytes"
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

// withoutTable returns the text without a table: its keys, whose comments stay, and its
// header.
func (t Text) withoutTable(name Key) (Text, error) {
	e := t.entry(name)
	if len(e.list) > 0 {
		var err error
		for i := len(e.list); i > 0 && err == nil; i-- {
			t, err = t.Drop(name, i)
		}
		return t, err
	}
	out, err := t, error(nil)
	for _, one := range e.table.entries {
		key := name.In(one.name)
		if one.table != nil || len(one.list) > 0 {
			out, err = out.withoutTable(key)
		} else {
			out, err = out.Set(key, "")
		}
		if err != nil {
			return Text{}, err
		}
	}
	e = out.entry(name)
	if e == nil || e.table == nil {
		return out, nil
	}
	if _, _, headed := out.header(e.table); !headed {
		return Text{}, ErrByHand
	}
	return out.changed(out.lines.starts[e.table.at.Line-1], out.endOf(e.table), "", out.all())
}
