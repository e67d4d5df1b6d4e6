package picture

import (
	"fmt"
	"strings"
	"sync"
)

// Ink says what a line, an area or a letter stands for.
type Ink int

// The inks. The kinds of work have the colours that cut files have; the palette is
// that of Okabe and Ito, darker on white where it would be too faint.
const (
	Main   Ink = iota // outlines and lettering
	Quiet             // dimension lines, axes and lettering of second rank
	Ghost             // grids and helping lines
	Cut               // cut lines
	Inside            // cuts inside a piece
	Fold              // fold and press lines
	Stitch            // stitch lines
	Mark              // notches, pin points, bar lines
	Cord              // side cords and legs
	Bar               // spreader bars
	Cloth             // cloth as an area
	Body              // the sleeper as an area
	Buried            // the part of a cord that ends inside another
	First             // series of a chart
	Second
	Third
	Fourth
	shade // the first of the shades
)

// Shades is how many shades a lit surface has, dark to light.
const Shades = 48

// Shade returns the ink for a surface lit by light, 0 to 1.
func Shade(light float64) Ink {
	i := int(light * Shades)
	return shade + Ink(min(max(i, 0), Shades-1))
}

// RGB is a colour of the sRGB space.
type RGB [3]uint8

func (c RGB) String() string { return fmt.Sprintf("#%02x%02x%02x", c[0], c[1], c[2]) }

// tone is an ink's name with its colours on white and on a dark page.
type tone struct {
	name        string
	light, dark RGB
}

// tones lists the inks' tones in their order. It is made once: every line of a
// picture asks for one.
var tones = sync.OnceValue(func() []tone {
	out := []tone{
		{"main", RGB{28, 32, 36}, RGB{230, 232, 234}},
		{"quiet", RGB{88, 96, 104}, RGB{160, 170, 178}},
		{"ghost", RGB{205, 210, 214}, RGB{70, 77, 84}},
		{"cut", RGB{190, 76, 0}, RGB{240, 130, 60}},
		{"inside", RGB{158, 105, 0}, RGB{230, 159, 0}},
		{"fold", RGB{46, 134, 184}, RGB{86, 180, 233}},
		{"stitch", RGB{0, 126, 92}, RGB{40, 185, 140}},
		{"mark", RGB{0, 98, 158}, RGB{90, 165, 225}},
		{"cord", RGB{0, 98, 158}, RGB{100, 175, 230}},
		{"bar", RGB{120, 84, 40}, RGB{214, 176, 120}},
		{"cloth", RGB{232, 239, 236}, RGB{38, 50, 48}},
		{"body", RGB{226, 221, 213}, RGB{62, 58, 52}},
		{"buried", RGB{150, 186, 210}, RGB{58, 96, 126}},
		{"first", RGB{0, 98, 158}, RGB{90, 165, 225}},
		{"second", RGB{190, 76, 0}, RGB{240, 130, 60}},
		{"third", RGB{0, 126, 92}, RGB{40, 185, 140}},
		{"fourth", RGB{158, 75, 126}, RGB{220, 145, 190}},
	}
	for i := range Shades {
		t := float64(i) / (Shades - 1)
		out = append(out, tone{
			fmt.Sprintf("s%d", i),
			mix(RGB{74, 106, 100}, RGB{233, 242, 237}, t),
			mix(RGB{40, 62, 58}, RGB{176, 206, 196}, t),
		})
	}
	return out
})

// mix returns the colour a part t of the way from a to b.
func mix(a, b RGB, t float64) RGB {
	var out RGB
	for i := range out {
		out[i] = uint8(float64(a[i]) + t*(float64(b[i])-float64(a[i])) + 0.5)
	}
	return out
}

// Name returns the ink's name, safe as a CSS class.
func (k Ink) Name() string { return k.tone().name }

// OnPaper returns the ink's colour on white.
func (k Ink) OnPaper() RGB { return k.tone().light }

func (k Ink) tone() tone {
	all := tones()
	if k < 0 || int(k) >= len(all) {
		return all[0]
	}
	return all[k]
}

// Colours returns the CSS declarations of the inks' colours, as custom properties.
func Colours(dark bool) string {
	var b strings.Builder
	for _, t := range tones() {
		c := t.light
		if dark {
			c = t.dark
		}
		fmt.Fprintf(&b, "--%s:%s;", t.name, c)
	}
	return b.String()
}

// Rules returns the CSS rules by which the classes of an SVG take those colours.
func Rules() string {
	var b strings.Builder
	b.WriteString("svg .p{fill:none;stroke-linecap:round;stroke-linejoin:round}")
	b.WriteString(`svg text{font-family:"Liberation Sans",Arimo,Arial,Helvetica,sans-serif;stroke:none;white-space:pre}`)
	b.WriteString("svg .b{font-weight:bold}")
	for _, t := range tones() {
		fmt.Fprintf(&b, "svg .k-%s{stroke:var(--%s)}svg .f-%s{fill:var(--%s)}", t.name, t.name, t.name, t.name)
	}
	return b.String()
}
