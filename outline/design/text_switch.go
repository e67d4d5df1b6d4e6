package design

import (
	"regexp"
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
	return t.withoutTable(table)
}
