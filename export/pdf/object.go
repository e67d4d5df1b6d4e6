package pdf

import (
	"slingloft/export"

	"bytes"
	"math"
	"strconv"
)

// The objects of a PDF file are float64, name, []byte for a string, array, dict,
// ref, and keyword for anything else that stands bare.
type (
	name    string
	keyword string
	array   []any
	dict    map[name]any
	ref     int
)

// errEnd says that the text ended where an object was to begin.
var errEnd = export.Refuse(export.EndUnexpected)

// maxNesting bounds arrays and dictionaries within each other.
const maxNesting = 32

// lexer reads objects from text.
type lexer struct {
	text  []byte
	pos   int
	depth int
}

func isSpace(c byte) bool { return bytes.IndexByte([]byte(" \t\r\n\f\x00"), c) >= 0 }
func isMark(c byte) bool  { return bytes.IndexByte([]byte("()<>[]{}/%"), c) >= 0 }

// skip passes over white space and comments.
func (l *lexer) skip() {
	for l.pos < len(l.text) {
		switch c := l.text[l.pos]; {
		case isSpace(c):
			l.pos++
		case c == '%':
			for l.pos < len(l.text) && l.text[l.pos] != '\n' && l.text[l.pos] != '\r' {
				l.pos++
			}
		default:
			return
		}
	}
}

// word returns the characters up to the next space or mark.
func (l *lexer) word() string {
	start := l.pos
	for l.pos < len(l.text) && !isSpace(l.text[l.pos]) && !isMark(l.text[l.pos]) {
		l.pos++
	}
	return string(l.text[start:l.pos])
}

// next returns the next object; errEnd after the last.
func (l *lexer) next() (any, error) {
	l.skip()
	if l.pos >= len(l.text) {
		return nil, errEnd
	}
	rest := l.text[l.pos:]
	switch c := rest[0]; {
	case c == '/':
		l.pos++
		return name(l.word()), nil
	case bytes.HasPrefix(rest, []byte("<<")):
		l.pos += 2
		return l.dict()
	case c == '<':
		return l.hexString()
	case c == '(':
		return l.literalString()
	case c == '[':
		l.pos++
		return l.array()
	case isMark(c):
		l.pos++
		if bytes.HasPrefix(rest, []byte(">>")) {
			l.pos++
			return keyword(">>"), nil
		}
		return keyword(string(c)), nil
	}
	w := l.word()
	if v, err := strconv.ParseFloat(w, 64); err == nil && !math.IsNaN(v) && math.Abs(v) < 1e9 {
		return v, nil
	}
	return keyword(w), nil
}

// list returns the objects up to the closing keyword; three of them that make a
// reference become one.
func (l *lexer) list(end keyword) (array, error) {
	if l.depth++; l.depth > maxNesting {
		return nil, export.Refuse(export.ObjectsTooDeep)
	}
	defer func() { l.depth-- }()
	var out array
	for {
		v, err := l.next()
		if err != nil {
			return nil, err
		}
		switch v {
		case any(end):
			return out, nil
		case any(keyword("R")):
			n := len(out)
			if n < 2 {
				return nil, export.Refuse(export.ReferenceBroken)
			}
			number, ok := out[n-2].(float64)
			if !ok || number < 0 || number > 1e7 {
				return nil, export.Refuse(export.ReferenceBroken)
			}
			out = append(out[:n-2], ref(number))
		default:
			out = append(out, v)
		}
	}
}

func (l *lexer) array() (any, error) {
	a, err := l.list("]")
	return a, err
}

func (l *lexer) dict() (any, error) {
	items, err := l.list(">>")
	if err != nil {
		return nil, err
	}
	d := dict{}
	for i := 0; i+1 < len(items); i += 2 {
		key, ok := items[i].(name)
		if !ok {
			return nil, export.Refuse(export.KeyNoName)
		}
		d[key] = items[i+1]
	}
	return d, nil
}

func (l *lexer) hexString() (any, error) {
	end := bytes.IndexByte(l.text[l.pos:], '>')
	if end < 0 {
		return nil, errEnd
	}
	var digits []byte
	for _, c := range l.text[l.pos+1 : l.pos+end] {
		if !isSpace(c) {
			digits = append(digits, c)
		}
	}
	l.pos += end + 1
	if len(digits)%2 == 1 {
		digits = append(digits, '0')
	}
	out := make([]byte, len(digits)/2)
	for i := range out {
		v, err := strconv.ParseUint(string(digits[2*i:2*i+2]), 16, 8)
		if err != nil {
			return nil, export.Refuse(export.HexUnread, digits)
		}
		out[i] = byte(v)
	}
	return out, nil
}

// literalString reads a string in parentheses. Escapes for signs are undone,
// those for octal numbers left as they are: no name of ours has them.
func (l *lexer) literalString() (any, error) {
	var out []byte
	open := 0
	for ; l.pos < len(l.text); l.pos++ {
		c := l.text[l.pos]
		switch {
		case c == '\\' && l.pos+1 < len(l.text):
			l.pos++
			out = append(out, l.text[l.pos])
			continue
		case c == '(':
			open++
		case c == ')':
			open--
		}
		if open == 0 {
			l.pos++
			return out[1:], nil
		}
		out = append(out, c)
	}
	return nil, errEnd
}
