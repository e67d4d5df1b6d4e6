package export

import (
	"strings"
	"unicode"
)

// maxName is the longest name or title that goes into a file, in runes.
const maxName = 200

// OneLine returns text fit for the text fields of any format: valid UTF-8 on one
// line, white space as single spaces, without control, format, private-use and
// unassigned characters, and not longer than 200 runes. Runes beyond U+FFFF, for
// which some formats have no form, become "□", as the lettering draws them. What a
// format's own syntax forbids on top is for its writer to escape.
func OneLine(text string) string {
	var b strings.Builder
	runes, gap := 0, false
	for _, r := range text {
		if unicode.IsSpace(r) {
			gap = runes > 0
			continue
		}
		if !unicode.IsGraphic(r) {
			continue
		}
		if r > 0xffff {
			r = '□'
		}
		if runes >= maxName-2 {
			b.WriteRune('…')
			break
		}
		if gap {
			b.WriteByte(' ')
			runes++
			gap = false
		}
		b.WriteRune(r)
		runes++
	}
	return b.String()
}

// ID returns text as an identifier that is safe in every format: ASCII letters,
// digits, "-", "_" and ".", beginning with a letter.
func ID(text string) string {
	var b strings.Builder
	dash := false
	for _, r := range OneLine(text) {
		ok := r == '_' || r == '.' || (r < unicode.MaxASCII && (unicode.IsLetter(r) || unicode.IsDigit(r)))
		if !ok {
			dash = b.Len() > 0
			continue
		}
		if b.Len() == 0 && !unicode.IsLetter(r) {
			b.WriteString("n")
		}
		if dash {
			b.WriteByte('-')
			dash = false
		}
		b.WriteRune(r)
	}
	if b.Len() == 0 {
		return "n"
	}
	return b.String()
}
