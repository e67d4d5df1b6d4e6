package picture_test

import (
	"encoding/xml"
	"io"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	_ "slingloft/outline/rapidtest"
)

// TestWidth checks widths against the font's own figures: in the hmtx table of
// Liberation Sans 2.1, as in Arial's published metrics, a digit is 1139, a capital
// A 1366 and a space 569 of 2048 units wide; a bold a is 1139.
func TestWidth(t *testing.T) {
	for _, row := range []struct {
		text string
		bold bool
		want float64 // parts of the size
	}{{"0", false, 1139.0 / 2048}, {"A", false, 1366.0 / 2048}, {" ", false, 569.0 / 2048}, {"a", true, 1139.0 / 2048},
		{"10", false, 2278.0 / 2048}, {"", false, 0}} {
		if got := picture.Width(row.text, 1, row.bold); math.Abs(got-row.want) > 1e-3 {
			t.Errorf("Width(%q, bold %v) = %.5f, want %.5f", row.text, row.bold, got, row.want)
		}
	}
}

// TestSpread checks that places keep their order and gap, stay within their room
// and do not move where nothing presses.
func TestSpread(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 20).Draw(t, "n")
		want := make([]float64, n)
		at := 0.0
		for i := range want {
			at += rapid.Float64Range(0, 12).Draw(t, "step")
			want[i] = at
		}
		const gap = 3.4
		lo, hi := -5.0, math.Max(at, float64(n)*gap)+5
		got := picture.Spread(want, gap, lo, hi)
		free := true
		for i := range got {
			if got[i] < lo-1e-9 || got[i] > hi+1e-9 {
				t.Fatalf("place %d of %v lies outside: %v", i, want, got)
			}
			if i > 0 {
				free = free && want[i]-want[i-1] >= gap
				if got[i]-got[i-1] < gap-1e-9 {
					t.Fatalf("places %d and %d of %v are %g apart: %v", i-1, i, want, got[i]-got[i-1], got)
				}
			}
		}
		for i := range got {
			if free && math.Abs(got[i]-want[i]) > 1e-9 {
				t.Fatalf("place %d of %v moves without need: %v", i, want, got)
			}
		}
	})
}

// TestDimensions crowds dimension lines: their lettering must not meet.
func TestDimensions(t *testing.T) {
	p := picture.Picture{ID: "p", Title: "dimensions", Desc: "three in a row", Width: 90, Height: 30}
	at := []geom.Point{geom.Pt(20, 20), geom.Pt(26, 20), geom.Pt(70, 20), geom.Pt(76, 20)}
	p.Level(at[1], at[0], 10, "120 mm")
	p.Level(at[1], at[2], 10, "1500 mm")
	p.Level(at[2], at[3], 10, "180 mm")
	if c := p.Clashes(); len(c) > 0 {
		t.Errorf("clashes: %q", c)
	}
	texts := 0
	for _, it := range p.Items {
		if _, ok := it.(picture.Text); ok {
			texts++
		}
	}
	if texts != 3 {
		t.Errorf("%d of 3 dimensions are lettered", texts)
	}
}

// TestClashes finds lettering over lettering and off the picture.
func TestClashes(t *testing.T) {
	p := picture.Picture{Width: 40, Height: 20}
	p.Write(picture.Text{Text: "one", At: geom.Pt(5, 5), Size: picture.Letter})
	p.Write(picture.Text{Text: "two", At: geom.Pt(6, 5), Size: picture.Letter})
	p.Write(picture.Text{Text: "three", At: geom.Pt(38, 15), Size: picture.Letter})
	if c := p.Clashes(); len(c) != 2 {
		t.Errorf("clashes %q, want one of two texts and one with the edge", c)
	}
	if p.WriteFree(picture.Text{Text: "four", Size: picture.Letter, Anchor: piece.Centre}, geom.Pt(7, 6), geom.Pt(38, 16)) {
		t.Error("a place that is taken counts as free")
	}
}

// Lettering is kept off lines where there is a place, and out of other lettering
// always.
func TestWriteFree(t *testing.T) {
	at := func(x, y float64) geom.Point { return geom.Pt(x, y) }
	word := picture.Text{Text: "word", Size: 3, Anchor: piece.Centre}
	for _, row := range []struct {
		what   string
		draw   func(*picture.Picture)
		places []geom.Point
		want   int // place that is taken; -1: none
	}{
		{"nothing there", func(*picture.Picture) {}, []geom.Point{at(50, 50), at(20, 20)}, 0},
		{"a line through the first", func(p *picture.Picture) { p.Line(picture.Main, picture.Thin, at(0, 50), at(100, 50)) },
			[]geom.Point{at(50, 50), at(20, 20)}, 1},
		{"a line beside the first", func(p *picture.Picture) { p.Line(picture.Main, picture.Thin, at(0, 60), at(100, 60)) },
			[]geom.Point{at(50, 50), at(20, 20)}, 0},
		{"the side that closes an outline", func(p *picture.Picture) {
			p.Items = append(p.Items, picture.Path{Lines: []geom.Polyline{{at(0, 50), at(50, 90), at(100, 50)}}, Closed: true, Width: picture.Thin})
		}, []geom.Point{at(50, 50), at(20, 20)}, 1},
		{"lines through both", func(p *picture.Picture) {
			p.Line(picture.Main, picture.Thin, at(0, 50), at(100, 50))
			p.Line(picture.Main, picture.Thin, at(50, 0), at(50, 100))
			p.Line(picture.Main, picture.Thin, at(0, 20), at(100, 20))
		}, []geom.Point{at(50, 50), at(20, 20)}, 1},
		{"an area is no line", func(p *picture.Picture) { p.Area(picture.Cloth, at(0, 0), at(100, 0), at(50, 90)) }, []geom.Point{at(50, 50)}, 0},
		{"other lettering", func(p *picture.Picture) {
			p.Write(picture.Text{Text: "other", At: at(50, 50), Size: 3, Anchor: piece.Centre})
		}, []geom.Point{at(50, 50), at(20, 20)}, 1},
		{"off the picture", func(*picture.Picture) {}, []geom.Point{at(99, 50)}, -1},
	} {
		p := picture.Picture{Width: 100, Height: 100}
		row.draw(&p)
		n := len(p.Items)
		got := -1
		if p.WriteFree(word, row.places...) {
			for i, q := range row.places {
				if p.Items[n].(picture.Text).At == q {
					got = i
				}
			}
		}
		if got != row.want {
			t.Errorf("%s: place %d is taken, want %d", row.what, got, row.want)
		}
	}
}

// TestSVG reads a picture back as XML: texts that are markup stay texts, and
// what is not finite does not get in.
func TestSVG(t *testing.T) {
	p := picture.Picture{ID: "x", Title: `a <b> & "c"`, Desc: "d", Width: 10, Height: 10}
	p.Line(picture.Cut, picture.Thin, geom.Pt(math.NaN(), 1), geom.Pt(2, math.Inf(1)))
	p.Write(picture.Text{Text: "</text><script>", At: geom.Pt(1, 1), Size: picture.Letter, Turn: 1})
	svg := p.SVG()
	d := xml.NewDecoder(strings.NewReader(svg))
	text := ""
	for {
		tok, err := d.Token()
		if err == io.EOF {
			break
		}
		if err != nil {
			t.Fatal(err)
		}
		switch tok := tok.(type) {
		case xml.StartElement:
			if tok.Name.Local == "script" {
				t.Error("a text became an element")
			}
		case xml.CharData:
			text += string(tok)
		}
	}
	if !strings.Contains(text, `a <b> & "c"`) || !strings.Contains(text, "</text><script>") {
		t.Errorf("texts read back as %q", text)
	}
	if strings.Contains(svg, "NaN") || strings.Contains(svg, "Inf") {
		t.Error("a coordinate is not finite")
	}
}

// TestInks checks contrast: every ink that letters or thin lines are drawn in has
// at least 4.5:1 on its page, by the formula of WCAG 2.1.
func TestInks(t *testing.T) {
	luminance := func(c picture.RGB) float64 {
		l := 0.0
		for i, k := range []float64{0.2126, 0.7152, 0.0722} {
			v := float64(c[i]) / 255
			if v <= 0.04045 {
				v /= 12.92
			} else {
				v = math.Pow((v+0.055)/1.055, 2.4)
			}
			l += k * v
		}
		return l
	}
	for _, k := range []picture.Ink{picture.Main, picture.Quiet, picture.Cut, picture.Mark, picture.Bar, picture.Stitch,
		picture.First, picture.Second, picture.Third, picture.Fourth} {
		if ratio := 1.05 / (luminance(k.OnPaper()) + 0.05); ratio < 4.5 {
			t.Errorf("ink %s has contrast %.2f on white, want 4.5", k.Name(), ratio)
		}
	}
}
