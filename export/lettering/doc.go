// Package lettering writes text as single strokes that a pen, a laser or a
// knife can draw: one set of letters for every format.
//
// The letters are our own drawings. Their proportions are those of ISO 3098
// type B (NF and DIN EN ISO 3098-0, tables): with h the height of a capital,
// small letters are 7h/10 high, letters stand 2h/10 apart and words 6h/10. Tails
// go 3h/10 below the base line and accents of capitals 4h/10 above h, both from
// memory.
//
// Letters with accents are put together from the letter and its marks as Unicode
// decomposes them. A rune without a drawing becomes an upright box; control and
// format characters never draw: white space counts as a space, the rest is
// dropped. Digits around a fraction slash (U+2044, as in "7 3⁄16") are set as a
// small fraction, and ½ ¼ ¾ ⅛ … likewise.
package lettering
