package lettering

import (
	"math"
	"unicode"

	"golang.org/x/text/unicode/norm"

	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Distances in drawing units, see the package comment for their source. A space
// is as wide as makes the gap between two words 6: gap + space + gap.
const (
	gap        = 2.0
	spaceWidth = 2.0
	raise      = 3.2 // by how much a mark over a capital or a tall letter goes up
)

// Small digits of fractions, powers and indices: their size and where they stand.
const (
	smallSize  = 0.6
	powerRise  = 4.6
	slashReach = 1.2 // numerator and denominator keep this from the slash, along x
)

// box stands for a rune without a drawing.
const box = "0,0 0,8 5,8 5,0 0,0"

// Polylines returns text as strokes with capitals of the given height in mm: the
// base line on y = 0, the ink beginning at x = 0. It returns nothing for a height
// that is not positive and finite.
func Polylines(text string, height float64) []geom.Polyline {
	if !(height > 0) || math.IsInf(height, 0) {
		return nil
	}
	strokes, _ := set(text)
	for i := range strokes {
		strokes[i] = scaled(strokes[i], height/unit, geom.Point{})
	}
	return strokes
}

// Width returns the extent of text along its base line in mm, for capitals of
// the given height in mm.
func Width(text string, height float64) float64 {
	_, width := set(text)
	return width * height / unit
}

// Strokes returns the label's text as strokes in the label's place.
func Strokes(l piece.Label) []geom.Polyline {
	strokes := Polylines(l.Text, l.Height)
	width := Width(l.Text, l.Height)
	var shift geom.Point
	switch l.Anchor {
	case piece.Centre:
		shift = geom.Pt(-width/2, -l.Height/2)
	case piece.End:
		shift = geom.Pt(-width, 0)
	}
	place := geom.Motion{Turn: l.Turn, Shift: l.At}
	for i, s := range strokes {
		strokes[i] = scaled(s, 1, shift).Moved(place)
	}
	return strokes
}

// Fit returns text, shortened with an ellipsis where it is wider than width mm.
// Where not even the ellipsis fits it returns "".
func Fit(text string, height, width float64) string {
	if Width(text, height) <= width {
		return text
	}
	runes := []rune(text)
	low, high := 0, len(runes) // low runes fit (or none do), high do not
	for low < high {
		mid := (low + high + 1) / 2
		if Width(string(runes[:mid])+"…", height) <= width {
			low = mid
		} else {
			high = mid - 1
		}
	}
	if Width("…", height) > width {
		return ""
	}
	return string(runes[:low]) + "…"
}

// scaled returns p shifted by d and then scaled by k.
func scaled(p geom.Polyline, k float64, d geom.Point) geom.Polyline {
	out := make(geom.Polyline, len(p))
	for i, q := range p {
		out[i] = q.Plus(d).Times(k)
	}
	return out
}

// set lays out text in drawing units and returns its strokes and its width.
func set(text string) (strokes []geom.Polyline, width float64) {
	pen, ink := 0.0, 0.0
	for _, s := range signs(text) {
		for _, p := range s.strokes {
			strokes = append(strokes, scaled(p, 1, geom.Pt(pen, 0)))
		}
		ink = pen + s.width
		pen = ink + gap
	}
	return strokes, ink
}

// signs turns text into the drawings to set side by side.
func signs(text string) []glyph {
	runes := apart(text)
	var out []glyph
	for i := 0; i < len(runes); {
		if num, den, n := fraction(runes[i:]); n > 0 {
			out = append(out, fractionGlyph(num, den))
			i += n
			continue
		}
		r := runes[i]
		marks := marksAfter(runes[i+1:])
		i += 1 + len(marks)
		if g, ok := sign(r, marks); ok {
			out = append(out, g)
		}
	}
	return out
}

// apart returns the runes of text, those without a drawing of their own taken
// apart into a letter and its marks.
func apart(text string) []rune {
	table := glyphs()
	var out []rune
	for _, r := range norm.NFC.String(text) {
		if _, ok := table[r]; ok {
			out = append(out, r)
		} else {
			out = append(out, []rune(norm.NFD.String(string(r)))...)
		}
	}
	return out
}

// marksAfter returns the combining marks at the start of runes.
func marksAfter(runes []rune) []rune {
	n := 0
	for n < len(runes) && unicode.Is(unicode.Mn, runes[n]) {
		n++
	}
	return runes[:n]
}

// sign returns the drawing of one rune with its marks, and whether it has one.
func sign(r rune, marks []rune) (glyph, bool) {
	switch {
	case unicode.IsSpace(r):
		return glyph{width: spaceWidth}, true
	case unicode.In(r, unicode.Cc, unicode.Cf, unicode.Mn):
		return glyph{}, false
	}
	table := glyphs()
	if len(marks) > 0 && isAbove(marks[0]) {
		switch r {
		case 'i':
			r = 'ı'
		case 'j':
			r = 'ȷ'
		}
	}
	g, ok := table[r]
	if !ok {
		return plainOrBox(r), true
	}
	for _, m := range marks {
		if mark, ok := table[m]; ok {
			g = marked(g, mark, isAbove(m))
		}
	}
	return g, true
}

// plainOrBox draws a rune that Unicode calls another form of plain signs, such
// as ² or ¾ or ﬁ, by those, and any other as a box.
func plainOrBox(r rune) glyph {
	plain := []rune(norm.NFKD.String(string(r)))
	if num, den, n := fraction(plain); n > 0 && n == len(plain) {
		return fractionGlyph(num, den)
	}
	table := glyphs()
	if len(plain) == 1 && plain[0] != r {
		if g, ok := table[plain[0]]; ok && isPower(r) {
			return small(g, powerRise)
		} else if ok {
			return g
		}
	}
	g, err := parse(box)
	if err != nil {
		panic("lettering: drawing of the box: " + err.Error())
	}
	return g
}

func isPower(r rune) bool {
	return r == '¹' || r == '²' || r == '³' || (r >= '⁰' && r <= '⁾')
}

// isAbove reports whether a combining mark stands over its letter.
func isAbove(m rune) bool { return m < '\u0316' || (m >= '\u033d' && m <= '\u0344') }

// marked returns g with a mark over or under the middle of its ink; a mark goes
// over everything that g already has there.
func marked(g, mark glyph, above bool) glyph {
	shift := geom.Pt(g.width/2, 0)
	if above && g.top() > 7.5 {
		shift.Y = math.Max(raise, g.top()-10+raise)
	}
	out := glyph{strokes: append([]geom.Polyline(nil), g.strokes...), width: g.width}
	bounds := geom.EmptyBox()
	for _, s := range mark.strokes {
		s = scaled(s, 1, shift)
		bounds = bounds.Union(s.Bounds())
		out.strokes = append(out.strokes, s)
	}
	// A mark wider than its letter (î, ï) pushes the letter to the right.
	if left := -bounds.Min.X; left > 0 {
		for i, s := range out.strokes {
			out.strokes[i] = scaled(s, 1, geom.Pt(left, 0))
		}
		bounds.Max.X += left
		out.width += left
	}
	out.width = math.Max(out.width, bounds.Max.X)
	return out
}

// top returns the height of the ink over the base line.
func (g glyph) top() float64 {
	top := 0.0
	for _, s := range g.strokes {
		top = math.Max(top, s.Bounds().Max.Y)
	}
	return top
}
