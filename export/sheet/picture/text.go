package picture

import (
	"math"
	"sync"

	"codeberg.org/go-fonts/liberation/liberationsansbold"
	"codeberg.org/go-fonts/liberation/liberationsansregular"
	"golang.org/x/image/font"
	"golang.org/x/image/font/opentype"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Lettering is set in a sans serif of the widths that Liberation Sans, Arimo,
// Arial and Helvetica share, so that its room is known whichever is there.

// perEm is the size at which widths are read, pixels per em.
const perEm = 1000

// widths returns the two weights' fonts. Both ship with the program, so parsing
// them cannot fail; were it to, every letter would count as one em wide.
var widths = sync.OnceValue(func() [2]*sfnt.Font {
	var out [2]*sfnt.Font
	for i, data := range [2][]byte{liberationsansregular.TTF, liberationsansbold.TTF} {
		if f, err := opentype.Parse(data); err == nil {
			out[i] = f
		}
	}
	return out
})

// Width returns how wide text of a font size is, in the size's unit.
func Width(text string, size float64, bold bool) float64 {
	f := widths()[0]
	if bold {
		f = widths()[1]
	}
	var buf sfnt.Buffer
	var sum fixed.Int26_6
	for _, r := range text {
		adv := fixed.I(perEm)
		if f != nil {
			if g, err := f.GlyphIndex(&buf, r); err == nil {
				if a, err := f.GlyphAdvance(&buf, g, fixed.I(perEm), font.HintingNone); err == nil {
					adv = a
				}
			}
		}
		sum += adv
	}
	return float64(sum) / 64 / perEm * size
}

// Parts of the font size: capitals above the base line, tails below it and the
// whole line of text as a browser counts it.
const (
	capHeight = 0.72
	ascent    = 0.91
	descent   = 0.22
)

// Start returns where the base line of a text begins, and the direction in which
// it runs.
func (t Text) Start() (at, along geom.Point) {
	along = geom.Pt(1, 0).Turned(t.Turn)
	at = t.At
	wide := Width(t.Text, t.Size, t.Bold)
	switch t.Anchor {
	case piece.Centre:
		at = at.Minus(along.Times(wide / 2)).Minus(along.Left().Times(capHeight / 2 * t.Size))
	case piece.End:
		at = at.Minus(along.Times(wide))
	}
	return at, along
}

// Box returns the upright box around a text.
func (t Text) Box() geom.Box {
	at, along := t.Start()
	up := along.Left()
	end := at.Plus(along.Times(Width(t.Text, t.Size, t.Bold)))
	b := geom.EmptyBox()
	for _, p := range []geom.Point{at, end} {
		b = b.With(p.Plus(up.Times(ascent * t.Size))).With(p.Minus(up.Times(descent * t.Size)))
	}
	return b
}

// Spread moves wanted places along a line apart until neighbours keep the gap,
// as little as that takes, within lo and hi where there is room. The places have
// to rise.
func Spread(want []float64, gap, lo, hi float64) []float64 {
	type group struct {
		sum   float64 // of wanted place less the place in the group
		n     int
		first int
	}
	var groups []group
	for i, w := range want {
		groups = append(groups, group{w, 1, i})
		for len(groups) > 1 {
			a, b := groups[len(groups)-2], groups[len(groups)-1]
			if a.sum/float64(a.n)+float64(a.n)*gap <= b.sum/float64(b.n) {
				break
			}
			groups = groups[:len(groups)-1]
			groups[len(groups)-1] = group{a.sum + b.sum - float64(b.n*a.n)*gap, a.n + b.n, a.first}
		}
	}
	out := make([]float64, len(want))
	for _, g := range groups {
		for k := range g.n {
			out[g.first+k] = g.sum/float64(g.n) + float64(k)*gap
		}
	}
	for i := range out {
		out[i] = math.Max(out[i], lo+float64(i)*gap)
	}
	for i := len(out) - 1; i >= 0; i-- {
		out[i] = math.Min(out[i], hi-float64(len(out)-1-i)*gap)
	}
	return out
}
