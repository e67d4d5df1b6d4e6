package picture

import (
	"encoding/xml"
	"fmt"
	"math"
	"strconv"
	"strings"
)

// SVG returns the picture as an svg element for a page that has [Rules]. It is
// announced as one image with its title and description.
func (p *Picture) SVG() string {
	var b strings.Builder
	fmt.Fprintf(&b, `<svg id="%s" class="pic" role="img" aria-labelledby="%s-t %s-d"`, p.ID, p.ID, p.ID)
	fmt.Fprintf(&b, ` viewBox="0 0 %s %s" width="%smm" height="%smm" font-size="%s">`,
		num(p.Width), num(p.Height), num(p.Width), num(p.Height), num(Letter))
	fmt.Fprintf(&b, `<title id="%s-t">%s</title><desc id="%s-d">%s</desc>`, p.ID, Escaped(p.Title), p.ID, Escaped(p.Desc))
	for _, it := range p.Items {
		switch it := it.(type) {
		case Path:
			p.svgPath(&b, it)
		case Text:
			p.svgText(&b, it)
		}
	}
	b.WriteString("</svg>")
	return b.String()
}

func (p *Picture) svgPath(b *strings.Builder, it Path) {
	b.WriteString(`<path class="p`)
	if it.Width > 0 {
		b.WriteString(" k-" + it.Stroke.Name())
	}
	if it.Filled {
		b.WriteString(" f-" + it.Fill.Name())
	}
	b.WriteByte('"')
	if it.Width > 0 {
		fmt.Fprintf(b, ` stroke-width="%s"`, num(it.Width))
	}
	if len(it.Dash) > 0 {
		parts := make([]string, len(it.Dash))
		for i, d := range it.Dash {
			parts[i] = num(d)
		}
		fmt.Fprintf(b, ` stroke-dasharray="%s"`, strings.Join(parts, " "))
	}
	b.WriteString(` d="`)
	for _, l := range it.Lines {
		for i, q := range l {
			cmd := "L"
			if i == 0 {
				cmd = "M"
			}
			b.WriteString(cmd + num(q.X) + " " + num(p.Height-q.Y))
		}
		if it.Closed {
			b.WriteString("Z")
		}
	}
	b.WriteString(`"/>`)
}

func (p *Picture) svgText(b *strings.Builder, t Text) {
	at, _ := t.Start()
	x, y := num(at.X), num(p.Height-at.Y)
	class := "f-" + t.Ink.Name()
	if t.Bold {
		class += " b"
	}
	fmt.Fprintf(b, `<text class="%s" x="%s" y="%s"`, class, x, y)
	if t.Size != Letter {
		fmt.Fprintf(b, ` font-size="%s"`, num(t.Size))
	}
	if t.Turn != 0 {
		fmt.Fprintf(b, ` transform="rotate(%s %s %s)"`, num(-t.Turn*180/math.Pi), x, y)
	}
	// The length holds the lettering in its room whatever font the reader has.
	fmt.Fprintf(b, ` textLength="%s" lengthAdjust="spacingAndGlyphs">%s</text>`, num(Width(t.Text, t.Size, t.Bold)), Escaped(t.Text))
}

// num writes a coordinate in hundredths, no negative zero.
func num(v float64) string {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return "0"
	}
	v = math.Round(v*100) / 100
	if v == 0 {
		return "0"
	}
	return strconv.FormatFloat(v, 'f', -1, 64)
}

// Escaped returns text safe in HTML and SVG, element or attribute.
func Escaped(s string) string {
	var b strings.Builder
	_ = xml.EscapeText(&b, []byte(s)) // a Builder takes everything
	return b.String()
}
