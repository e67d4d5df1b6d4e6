package design

import (
	"cmp"
	"maps"
	"regexp"
	"slices"
	"strings"
)

// On reports whether a table of [Switches] stands in the text.
func (t Text) On(table Key) bool { return t.entry(table) != nil }

// SwitchOn returns the text with a table of [Switches] in it, with no keys yet. The error
// is [ErrByHand].
func (t Text) SwitchOn(table Key) (Text, error) {
	if t.On(table) {
		return t, nil
	}
	if _, ok := switchOf(table); !ok {
		return Text{}, ErrByHand
	}
	nl, head := t.newline(), "["+string(table)+"]"
	p := t.line(len(t.data), nl+head)
	if len(t.data) == 0 {
		p.text = strings.TrimPrefix(p.text, nl)
	}
	if at := t.commented(0, len(t.data), regexp.QuoteMeta(head)+`\s*$`); at >= 0 {
		p = t.line(at, head)
	}
	out, err := t.changed(p.at, p.at, p.text, t.all())
	if err != nil || !out.On(table) {
		return Text{}, ErrByHand
	}
	return out, nil
}

// SwitchOff returns the text without a table of [Switches], those within it and the
// comments among their keys. The error is [ErrByHand].
func (t Text) SwitchOff(table Key) (Text, error) {
	if !t.On(table) {
		return t, nil
	}
	if _, ok := switchOf(table); !ok {
		return Text{}, ErrByHand
	}
	within := func(key Key) bool { return strings.HasPrefix(string(key), string(table)+".") }
	meant := t.all()
	maps.DeleteFunc(meant, func(key Key, _ string) bool { return within(key) })
	out, err := t.withoutHeaders(table)
	if err != nil {
		return Text{}, err
	}
	for _, key := range out.Keys() { // dotted keys, and those of an inline table
		if within(key) {
			if out, err = out.Set(key, ""); err != nil {
				return Text{}, err
			}
		}
	}
	if e := out.entry(table); e != nil && e.table != nil && e.table.closed {
		from, to := out.lines.starts[e.at.Line-1], out.end(e)
		if out, err = out.changed(from, to, "", out.all()); err != nil {
			return Text{}, err
		}
	}
	if out.On(table) || !maps.Equal(out.all(), meant) {
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
		}
	}
	if in := t.inside(name); in != nil {
		gather(in)
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
