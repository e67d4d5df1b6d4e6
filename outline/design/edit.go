package design

import (
	"bytes"
	"strings"
)

// With returns the text of the file that s was read from with a value, in TOML, for
// a key in place of the one that is given, or added where none is. It reports false
// where that cannot be done by changing one place: for a key of a list's table that
// is not given, or of an inline table.
func (s Source) With(data []byte, key Key, value string) ([]byte, bool) {
	data = bytes.TrimPrefix(data, []byte(byteOrderMark))
	l := newLines(data)
	table, name := key.Table(), key.Name()
	switch {
	case s.Given(key) && s.from[key] == "":
		from := l.offset(s.at[key])
		to := from + valueLength(data[from:])
		return spliced(data, from, to, value), to > from
	case table == "":
		return spliced(data, 0, 0, name+" = "+value+"\n"), true
	case s.Given(table):
		at := s.at[table].Line
		if !strings.HasPrefix(strings.TrimSpace(l.text(at)), "[") {
			return nil, false
		}
		after := l.after(at)
		line := name + " = " + value + "\n"
		if after == len(data) {
			line = "\n" + line
		}
		return spliced(data, after, after, line), true
	}
	return spliced(data, len(data), len(data), "\n["+string(table)+"]\n"+name+" = "+value+"\n"), true
}

// spliced returns data with what lies between two offsets replaced.
func spliced(data []byte, from, to int, text string) []byte {
	out := append([]byte{}, data[:from]...)
	return append(append(out, text...), data[to:]...)
}

// valueLength returns the length of the value at the start of text, on one line; 0
// for a list or table.
func valueLength(text []byte) int {
	if len(text) == 0 || strings.IndexByte("[{", text[0]) >= 0 {
		return 0
	}
	if q := text[0]; q == '"' || q == '\'' {
		for i := 1; i < len(text); i++ {
			switch {
			case text[i] == q:
				return i + 1
			case text[i] == '\\' && q == '"':
				i++
			}
		}
		return 0
	}
	if end := bytes.IndexAny(text, " \t\r\n#,]}"); end >= 0 {
		return end
	}
	return len(text)
}
