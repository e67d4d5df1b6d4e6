package design

import (
	"bytes"
	"strconv"
	"strings"
)

// numbered takes a part of a key apart into its name and the number of an element, 0 for
// none.
func numbered(part string) (string, int) {
	name, rest, ok := strings.Cut(part, "[")
	if !ok {
		return part, 0
	}
	n, _ := strconv.Atoi(strings.TrimSuffix(rest, "]"))
	return name, n
}

// span returns the length of the TOML value at the start of text; 0 where it has no end.
func span(text []byte) int {
	if len(text) == 0 {
		return 0
	}
	switch text[0] {
	case '"', '\'':
		return quotedSpan(text)
	case '[', '{':
		return nestedSpan(text)
	}
	if end := bytes.IndexAny(text, " \t\r\n#,]}"); end >= 0 {
		return end
	}
	return len(text)
}

// quotedSpan is [span] of a text of either quotes, of one line or several.
func quotedSpan(text []byte) int {
	quote := text[:1]
	if triple := bytes.Repeat(quote, 3); bytes.HasPrefix(text, triple) {
		quote = triple
	}
	for i := len(quote); i < len(text); i++ {
		switch {
		case text[i] == '\\' && quote[0] == '"':
			i++
		case bytes.HasPrefix(text[i:], quote):
			end := i + len(quote)
			// Quotes that belong to the text may stand before the closing three.
			for len(quote) == 3 && end < len(text) && text[end] == quote[0] {
				end++
			}
			return end
		}
	}
	return 0
}

// nestedSpan is [span] of a list or an inline table.
func nestedSpan(text []byte) int {
	depth := 0
	for i := 0; i < len(text); i++ {
		switch text[i] {
		case '[', '{':
			depth++
		case ']', '}':
			if depth--; depth == 0 {
				return i + 1
			}
		case '#':
			n := bytes.IndexByte(text[i:], '\n')
			if n < 0 {
				return 0
			}
			i += n
		case '"', '\'':
			n := quotedSpan(text[i:])
			if n == 0 {
				return 0
			}
			i += n - 1
		}
	}
	return 0
}

// spliced returns data with what lies between two offsets replaced.
func spliced(data []byte, from, to int, text string) []byte {
	out := append([]byte{}, data[:from]...)
	return append(append(out, text...), data[to:]...)
}
