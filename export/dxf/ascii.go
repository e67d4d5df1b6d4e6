package dxf

import (
	"fmt"
	"strings"

	"golang.org/x/text/unicode/norm"

	"slingloft/export"
)

// ascii returns text in 7-bit ASCII: letters without their marks, letters of other
// scripts and signs by what is usually written for them, and what has no such form by
// its number, as in "U+6F22". The signs by which texts in DXF are escaped become "_".
func ascii(text string) string {
	plain := transliterations()
	var b strings.Builder
	put := func(s string) {
		for _, r := range s {
			if r == '^' || r == '%' || r == '\\' {
				r = '_'
			}
			b.WriteRune(r)
		}
	}
	for _, whole := range norm.NFC.String(export.OneLine(text)) {
		if s, ok := plain[whole]; ok {
			put(s)
			continue
		}
		for _, r := range norm.NFKD.String(string(whole)) {
			s, ok := plain[r]
			switch {
			case ok:
				put(s)
			case r >= ' ' && r <= '~':
				put(string(r))
			case r >= 0x300 && r < 0x370: // marks
			default:
				put(fmt.Sprintf("U+%04X", r))
			}
		}
	}
	return b.String()
}

// transliterations returns what is written in ASCII for letters and signs that do not
// decompose into ASCII. Greek and Cyrillic follow common practice of plain text, without
// source; German letters are written with an e, as where there is no other way.
func transliterations() map[rune]string {
	out := map[rune]string{
		'⁄': "/", '–': "-", '—': "-", '−': "-", '‐': "-", '‑': "-", '·': "-", '•': "-", '×': "x", '÷': "/", '…': "...",
		'“': "\"", '”': "\"", '„': "\"", '«': "\"", '»': "\"", '‘': "'", '’': "'", '‚': "'", '′': "'", '″': "\"",
		'°': " deg", '⌀': "dia ", '∅': "dia ", '±': "+-", '€': "EUR", '£': "GBP", '§': "Sect. ", '©': "(c)", '®': "(R)", '™': "(TM)",
		'→': "->", '←': "<-", '≤': "<=", '≥': ">=", '≈': "~", '√': "sqrt", 'µ': "u", '□': "_", '¿': "_", '¡': "!", '¹': "1", '²': "2", '³': "3",
		'ß': "ss", 'ẞ': "SS", 'ä': "ae", 'ö': "oe", 'ü': "ue", 'Ä': "Ae", 'Ö': "Oe", 'Ü': "Ue",
		'æ': "ae", 'Æ': "AE", 'œ': "oe", 'Œ': "OE", 'ø': "oe", 'Ø': "OE", 'å': "aa", 'Å': "AA",
		'ð': "d", 'Ð': "D", 'đ': "d", 'Đ': "D", 'þ': "th", 'Þ': "Th", 'ł': "l", 'Ł': "L", 'ħ': "h", 'Ħ': "H", 'ı': "i", 'ȷ': "j",
		'ĸ': "k", 'ŋ': "ng", 'Ŋ': "NG", 'ŧ': "t", 'Ŧ': "T", 'ſ': "s",
		'ς': "s", 'щ': "shch", 'Щ': "Shch", 'ъ': "", 'Ъ': "", 'ь': "", 'Ь': "", 'й': "y", 'Й': "Y", 'ё': "yo", 'Ё': "Yo",
		'ґ': "g", 'Ґ': "G", 'є': "ye", 'Є': "Ye", 'і': "i", 'І': "I", 'ї': "yi", 'Ї': "Yi", 'ў': "u", 'Ў': "U",
	}
	for _, pair := range [...]struct{ letters, ascii string }{
		{"αβγδεζηθικλμνξοπρστυφχψω", "a v g d e z i th i k l m n x o p r s t y f ch ps o"},
		{"ΑΒΓΔΕΖΗΘΙΚΛΜΝΞΟΠΡΣΤΥΦΧΨΩ", "A V G D E Z I Th I K L M N X O P R S T Y F Ch Ps O"},
		{"абвгдежзиклмнопрстуфхцчшыэюя", "a b v g d e zh z i k l m n o p r s t u f kh ts ch sh y e yu ya"},
		{"АБВГДЕЖЗИКЛМНОПРСТУФХЦЧШЫЭЮЯ", "A B V G D E Zh Z I K L M N O P R S T U F Kh Ts Ch Sh Y E Yu Ya"},
	} {
		words := strings.Fields(pair.ascii)
		for i, r := range []rune(pair.letters) {
			out[r] = words[i]
		}
	}
	return out
}
