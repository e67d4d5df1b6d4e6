package lettering

import (
	"math"
	"strings"
	"testing"

	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// The tables of ISO 3098 type B give the proportions with h the capital height.
func TestProportionsOfTypeB(t *testing.T) {
	const h = 10.0
	bounds := func(text string) geom.Box {
		b := geom.EmptyBox()
		for _, s := range Polylines(text, h) {
			b = b.Union(s.Bounds())
		}
		return b
	}
	rows := []struct {
		what      string
		got, want float64
	}{
		{"capital height", bounds("H").Height(), h},
		{"small letter height", bounds("x").Max.Y, 0.7 * h},
		{"descender", bounds("p").Min.Y, -0.3 * h},
		{"gap between letters", Width("HH", h) - 2*Width("H", h), 0.2 * h},
		{"gap between words", Width("H H", h) - 2*Width("H", h), 0.6 * h},
	}
	for _, r := range rows {
		if math.Abs(r.got-r.want) > 1e-12 {
			t.Errorf("%s = %g, want %g", r.what, r.got, r.want)
		}
	}
	for r := '!'; r <= '~'; r++ {
		b := bounds(string(r))
		if b.Empty() || b.Min.X < 0 || b.Min.Y < -0.3*h || b.Max.Y > 1.2*h {
			t.Errorf("%q has ink in %v", r, b)
		}
		if w := Width(string(r), h); math.Abs(w-b.Max.X) > 1e-9 {
			t.Errorf("%q: width %g, ink to %g", r, w, b.Max.X)
		}
	}
}

// Every sign that a label can need has a drawing of its own, and no two signs
// that must be told apart share one.
func TestEverySignIsDrawnAndDistinct(t *testing.T) {
	const all = "!\"#$%&'()*+,-./0123456789:;<=>?@ABCDEFGHIJKLMNOPQRSTUVWXYZ[\\]^_`abcdefghijklmnopqrstuvwxyz{|}~" +
		"¡¢£¤¥¦§¨©ª«¬®¯°±²³´¶·¸¹º»¼½¾¿ÀÁÂÃÄÅÆÇÈÉÊËÌÍÎÏÐÑÒÓÔÕÖ×ØÙÚÛÜÝÞßàáâãäåæçèéêëìíîïðñòóôõö÷øùúûüýþÿ" +
		"ĀāĂăĄąĆćĈĉĊċČčĎďĒēĔĕĖėĘęĚěĜĝĞğĠġĢģĤĥĦħĨĩĪīĬĭĮįİıĴĵĶķĸĹĺĻļĽľĿŀŁłŃńŅņŇňŉŊŋŌōŎŏŐőŒœŔŕŖŗŘřŚśŜŝŞşŠšŢţŤťŦŧŨũŪūŬŭŮůŰűŲųŴŵŶŷŸŹźŻżŽžſ" +
		"⅛⅜⅝⅞−—…“”‘’µΩαβθ≤≥⌀→←↑↓"
	unknown := signature("漢")
	seen := map[string]rune{}
	for _, r := range all {
		s := signature(string(r))
		if s == "" || s == unknown {
			t.Errorf("%q has no drawing", r)
		}
		if other, ok := seen[s]; ok {
			t.Errorf("%q and %q look the same", r, other)
		}
		seen[s] = r
	}
}

func signature(text string) string {
	var b strings.Builder
	for _, s := range Polylines(text, 10) {
		for _, p := range s {
			b.WriteString(p.String())
		}
		b.WriteByte(';')
	}
	return b.String()
}

func TestOddTexts(t *testing.T) {
	rows := []struct{ what, text, same string }{
		{"composed and decomposed letters", "e\u0301u\u0308", "éü"},
		{"control characters drop", "a\x00\x07\x1b\x03b", "ab"},
		{"format characters drop", "a\u200b\u202e\ufeffb", "ab"},
		{"white space is a space", "a\tb\nc", "a b c"},
		{"broken UTF-8 is a box", "a\xffb", "a漢b"},
		{"emoji is a box", "😀", "漢"},
		{"vulgar fraction", "½", "1⁄2"},
		{"a slash is a slash", "1:5 3/16", "1:5 3/16"},
		{"unknown mark drops", "a\u20d2", "a"},
		{"nothing", "", ""},
	}
	for _, r := range rows {
		if got, want := signature(r.text), signature(r.same); got != want {
			t.Errorf("%s: %q is not drawn as %q", r.what, r.text, r.same)
		}
	}
	for _, h := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		if got := Polylines("a", h); got != nil {
			t.Errorf("height %g draws %d strokes, want none", h, len(got))
		}
	}
}

func TestAnchors(t *testing.T) {
	l := piece.Label{Text: "HIH", At: geom.Pt(100, 50), Height: 5, Turn: math.Pi / 2}
	rows := []struct {
		anchor   piece.Anchor
		min, max geom.Point
	}{
		// Turned a quarter to the left, capitals reach from the base line to the left.
		{piece.Start, geom.Pt(95, 50), geom.Pt(100, 50+Width("HIH", 5))},
		{piece.End, geom.Pt(95, 50-Width("HIH", 5)), geom.Pt(100, 50)},
		{piece.Centre, geom.Pt(97.5, 50-Width("HIH", 5)/2), geom.Pt(102.5, 50+Width("HIH", 5)/2)},
	}
	for _, r := range rows {
		l.Anchor = r.anchor
		b := geom.EmptyBox()
		for _, s := range Strokes(l) {
			b = b.Union(s.Bounds())
		}
		if b.Min.Dist(r.min) > 1e-9 || b.Max.Dist(r.max) > 1e-9 {
			t.Errorf("anchor %d: ink in %v, want %v %v", r.anchor, b, r.min, r.max)
		}
	}
}

func TestFit(t *testing.T) {
	long := strings.Repeat("side template ", 500)
	got := Fit(long, 3.5, 60)
	if w := Width(got, 3.5); w > 60 || w < 50 || !strings.HasSuffix(got, "…") {
		t.Errorf("Fit gives %q, %g mm wide, want just under 60 and an ellipsis", got, w)
	}
	if got := Fit("short", 3.5, 60); got != "short" {
		t.Errorf("Fit shortens %q although it fits", got)
	}
	if got := Fit("word", 3.5, 0.1); got != "" {
		t.Errorf("Fit(0.1 mm) = %q, want nothing", got)
	}
}

// A quarter ellipse between equal legs is a circle's: every vertex on the circle.
func TestCornerIsQuarterEllipse(t *testing.T) {
	g, err := parse("0,5 *0,10 5,10")
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range g.strokes[0] {
		if d := p.Dist(geom.Pt(5, 5)); math.Abs(d-5) > 1e-12 {
			t.Errorf("vertex %v is %g from the centre, want 5", p, d)
		}
	}
	for _, bad := range []string{"*0,0 1,1", "0,0 *1,1", "0,0 *1,1 *2,2 3,3", "0 1"} {
		if _, err := parse(bad); err == nil {
			t.Errorf("drawing %q is taken", bad)
		}
	}
}

func FuzzStrokes(f *testing.F) {
	for _, s := range []string{"Side 7 3⁄16", "é\u0300\u0300", "⁄⁄1⁄", "\xff\xfe", "²½"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		width := Width(text, 10)
		for _, s := range Polylines(text, 10) {
			if len(s) < 2 {
				t.Fatalf("%q: stroke of %d points", text, len(s))
			}
			for _, p := range s {
				if !p.Finite() || p.X < -20 || p.X > width+20 {
					t.Fatalf("%q: ink at %v, width %g", text, p, width)
				}
			}
		}
	})
}
