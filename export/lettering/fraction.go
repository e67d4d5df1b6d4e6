package lettering

import "slingloft/outline/geom"

// fractionSlash joins numerator and denominator, U+2044.
const fractionSlash = '⁄'

// fraction finds digits, a fraction slash and digits at the start of runes; n is
// the number of runes it takes, 0 where there is no fraction.
func fraction(runes []rune) (num, den []rune, n int) {
	a := digits(runes)
	if len(a) == 0 || len(a) == len(runes) || runes[len(a)] != fractionSlash {
		return nil, nil, 0
	}
	b := digits(runes[len(a)+1:])
	if len(b) == 0 {
		return nil, nil, 0
	}
	return a, b, len(a) + 1 + len(b)
}

// digits returns the ASCII digits at the start of runes.
func digits(runes []rune) []rune {
	n := 0
	for n < len(runes) && runes[n] >= '0' && runes[n] <= '9' {
		n++
	}
	return runes[:n]
}

// How far along its run the slash is where the numerator ends and where the
// denominator begins, as fractions: the feet of the one at 4, the tops of the
// other at 6 tenths of h.
const (
	numeratorFoot  = (4 + 0.8) / 11.6
	denominatorTop = (6 + 0.8) / 11.6
)

// fractionGlyph draws a fraction with a slanted slash: numerator up at the
// left, denominator down at the right.
func fractionGlyph(num, den []rune) glyph {
	out := smallRow(num, unit-smallSize*unit)
	const slashRun, slashLow, slashHigh = 3.6, -0.8, 10.8
	x := out.width + slashReach - slashRun*numeratorFoot
	out.strokes = append(out.strokes, geom.Polyline{geom.Pt(x, slashLow), geom.Pt(x+slashRun, slashHigh)})
	start := x + slashRun*denominatorTop + slashReach
	below := smallRow(den, 0)
	for _, s := range below.strokes {
		out.strokes = append(out.strokes, scaled(s, 1, geom.Pt(start, 0)))
	}
	out.width = start + below.width
	return out
}

// smallRow sets digits in the small size, raised by rise.
func smallRow(row []rune, rise float64) glyph {
	table := glyphs()
	var out glyph
	for i, r := range row {
		x := 0.0
		if i > 0 {
			x = out.width + gap*smallSize
		}
		g := small(table[r], rise)
		for _, s := range g.strokes {
			out.strokes = append(out.strokes, scaled(s, 1, geom.Pt(x, 0)))
		}
		out.width = x + g.width
	}
	return out
}

// small returns g in the small size, raised by rise.
func small(g glyph, rise float64) glyph {
	out := glyph{width: g.width * smallSize}
	for _, s := range g.strokes {
		out.strokes = append(out.strokes, scaled(scaled(s, smallSize, geom.Point{}), 1, geom.Pt(0, rise)))
	}
	return out
}
