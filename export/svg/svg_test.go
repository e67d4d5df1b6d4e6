package svg

import (
	"bytes"
	"encoding/json"
	"fmt"
	"image/png"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/readertest"
	"slingloft/export/style"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

func write(b *bytes.Buffer, d export.Drawing, o export.Options) error { return Write(b, d, o) }

// scales are what every file is tried at.
var scales = []float64{1, 0.2}

func TestReadBack(t *testing.T) { readertest.ReadBack(t, write, Read, 0.0001) }

// svg.path, a reader of path data that is not ours, measures every named line;
// the XML is read by Python's own parser.
func TestLengthsByAnotherReader(t *testing.T) {
	const script = `
import sys, json, xml.etree.ElementTree as X
from svg.path import parse_path
n = "{http://www.w3.org/2000/svg}"
r = X.parse(sys.argv[1]).getroot()
out = {"size": [r.get("width"), r.get("height"), r.get("viewBox")], "groups": [g.get("id") for g in r.findall(n+"g")], "lines": {}}
for g in r.findall(n+"g"):
    for p in g.findall(n+"path"):
        out["lines"][p.findtext(n+"title")] = [parse_path(p.get("d")).length(), g.get("id"), p.get("d").rstrip().endswith("Z")]
print(json.dumps(out))`
	for _, scale := range scales {
		d := readertest.Drawing(t, scale)
		o := export.Options{Scale: scale}
		file := readertest.File(t, "a.svg", readertest.Bytes(t, write, d, o))
		var got struct {
			Size   []string
			Groups []string
			Lines  map[string][]any
		}
		if err := json.Unmarshal([]byte(readertest.Script(t, "svg", script, file)), &got); err != nil {
			t.Fatal(err)
		}
		w, h := d.Width*scale, d.Height*scale
		want := []string{fmt.Sprintf("%.4fmm", w), fmt.Sprintf("%.4fmm", h), fmt.Sprintf("0 0 %.4f %.4f", w, h)}
		if fmt.Sprint(got.Size) != fmt.Sprint(want) {
			t.Errorf("size %q, want %q", got.Size, want)
		}
		for i, work := range piece.Works() {
			if i >= len(got.Groups) || got.Groups[i] != work.String() {
				t.Fatalf("groups %v, want %v", got.Groups, piece.Works())
			}
		}
		for _, l := range d.Lines {
			length := l.Points.Length()
			if l.Closed {
				length = geom.Ring(l.Points).Perimeter()
			}
			row := got.Lines[l.Name]
			if row == nil {
				t.Errorf("line %q not found", l.Name)
				continue
			}
			if math.Abs(row[0].(float64)-length*scale) > 0.01 || row[1] != l.Work.String() || row[2] != l.Closed {
				t.Errorf("line %q read as %v, want %g mm, %s, closed %v", l.Name, row, length*scale, l.Work, l.Closed)
			}
		}
		for _, bar := range export.Bars() {
			if row := got.Lines[bar.Name]; row == nil || math.Abs(row[0].(float64)-bar.Length*scale) > 0.01 {
				t.Errorf("%s read as %v, want %g mm", bar.Name, row, bar.Length*scale)
			}
		}
	}
}

// librsvg draws the page at its size, Inkscape finds the cut line where it is.
func TestSizeByRenderers(t *testing.T) {
	for _, scale := range scales {
		d := readertest.Drawing(t, scale)
		file := readertest.File(t, "a.svg", readertest.Bytes(t, write, d, export.Options{Scale: scale}))
		pdf := readertest.File(t, "a.pdf", nil)
		readertest.Run(t, "rsvg-convert", "-f", "pdf", "-o", pdf, file)
		info := readertest.Run(t, "pdfinfo", pdf)
		var w, h float64
		for _, row := range strings.Split(info, "\n") {
			fmt.Sscanf(row, "Page size: %f x %f pts", &w, &h)
		}
		const mm = 25.4 / 72
		if math.Abs(w*mm-d.Width*scale) > 0.01 || math.Abs(h*mm-d.Height*scale) > 0.01 {
			t.Errorf("page of %g × %g mm, want %g × %g", w*mm, h*mm, d.Width*scale, d.Height*scale)
		}
		checkInkscape(t, d, scale, file)
	}
}

func checkInkscape(t *testing.T, d export.Drawing, scale float64, file string) {
	t.Helper()
	const px = 25.4 / 96
	out := readertest.Run(t, "inkscape", "--query-all", file)
	for _, row := range strings.Split(out, "\n") {
		rest, ok := strings.CutPrefix(row, "sling-1-cut-line,")
		if !ok {
			continue
		}
		var x, y, w, h float64
		if _, err := fmt.Sscanf(rest, "%f,%f,%f,%f", &x, &y, &w, &h); err != nil {
			t.Fatal(err)
		}
		var want geom.Box
		for _, l := range d.Lines {
			if l.Name == "sling-1/cut line" {
				want = l.Points.Bounds()
			}
		}
		stroke := export.Options{}.Scheme.Of(piece.CutOut).Width // Inkscape's box includes it
		got := [4]float64{x * px, y * px, w * px, h * px}
		exp := [4]float64{
			want.Min.X*scale - stroke/2, (d.Height-want.Max.Y)*scale - stroke/2,
			want.Width()*scale + stroke, want.Height()*scale + stroke,
		}
		for i := range got {
			if math.Abs(got[i]-exp[i]) > 0.01 {
				t.Errorf("box of the cut line %v, want %v", got, exp)
			}
		}
		return
	}
	t.Errorf("no sling-1-cut-line in:\n%s", out)
}

// Chromium draws the outline in its colour.
func TestPictureByChromium(t *testing.T) {
	folder := t.TempDir()
	file := filepath.Join(folder, "a.svg")
	if err := os.WriteFile(file, readertest.Bytes(t, write, readertest.Square(), export.Options{}), 0o644); err != nil {
		t.Fatal(err)
	}
	shot := filepath.Join(folder, "a.png")
	readertest.Run(t, "chromium", "--headless", "--no-sandbox", "--disable-gpu", "--disable-background-networking",
		"--force-device-scale-factor=4", "--user-data-dir="+folder, "--window-size=200,150", "--screenshot="+shot, "file://"+file)
	f, err := os.Open(shot)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	img, err := png.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	const perMM = 4 * 96 / 25.4
	x, y := 10*perMM, 15*perMM // on the left edge of the square
	want := style.Default().Of(piece.CutOut).Colour
	r, g, b, _ := img.At(int(x), int(y)).RGBA()
	if got := (style.Colour{R: uint8(r >> 8), G: uint8(g >> 8), B: uint8(b >> 8)}); got != want {
		t.Errorf("edge is %v, want %v", got, want)
	}
}

func TestNumbersAreFixed(t *testing.T) {
	d := readertest.Drawing(t, 1)
	d.Lines[0].Points[0] = geom.Pt(-1e-9, 1e-9)
	data := string(readertest.Bytes(t, write, d, export.Options{}))
	for _, line := range strings.Split(data, " d=\"")[1:] {
		path, _, _ := strings.Cut(line, `"`)
		if strings.ContainsAny(path, "eE+") || strings.Contains(path, "-0.0000") {
			t.Errorf("path with exponent or negative zero: %.80s", path)
		}
	}
}

func TestReadForeign(t *testing.T) {
	const head = `<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="50mm" viewBox="0 0 1000 500" stroke="black">`
	circle := 2 * math.Pi * 10
	rows := []struct {
		what, body string
		length     float64 // of all lines in mm
	}{
		{"relative lines", `<path d="m100,100 100,0 0,100z"/>`, 20 + 10*math.Sqrt2},
		{"horizontal and vertical", `<path d="M0 0H100V100h-100v-100"/>`, 40},
		{"touching numbers", `<path d="M0 0L100-0.5.5e2.5"/>`, math.Hypot(10, 0.05) + math.Hypot(5, 0.1)},
		{"circle", `<circle cx="500" cy="250" r="100"/>`, circle},
		{"circle of arcs", `<path d="M400 250a100 100 0 11200 0 100 100 0 01-200 0z"/>`, circle},
		// |B'| = 300 (1 − 2t(1 − t)), so each half is 200 units long.
		{"smooth cubic", `<path d="M0 0C0 100 100 100 100 0S200 -100 200 0"/>`, 40},
		{"quadratic, a parabola of span 100 sag 25", `<path d="M0 0Q500 500 1000 0"/>`, parabolaLength(100, 25)},
		{"smooth quadratic", `<path d="M0 0Q250 250 500 0T1000 0"/>`, 2 * parabolaLength(50, 12.5)},
		{"rectangle in a turned and scaled group", `<g transform="translate(5 5) rotate(30) scale(.5)"><rect width="100" height="60"/></g>`, 16},
		{"rectangle with round corners", `<rect width="300" height="200" rx="50"/>`, 2*(20+10) + 2*math.Pi*5},
		{"skew", `<path transform="skewX(45)" d="M0 0V100"/>`, 10 * math.Sqrt2},
		{"matrix", `<path transform="matrix(0 1 -1 0 0 0)" d="M0 0V100"/>`, 10},
		{"line and polygon", `<line x2="100"/><polygon points="0,0 30,0 30,40"/>`, 10 + 12},
		{"hidden", `<g style="fill:none;display:none"><path d="M0 0H100"/></g>`, 0},
		{"line after a close", `<path d="M0 0H100Zv100"/>`, 20 + 10},
	}
	for _, r := range rows {
		d, err := Read(strings.NewReader(head + r.body + "</svg>"))
		if err != nil {
			t.Errorf("%s: %v", r.what, err)
			continue
		}
		sum := 0.0
		for _, l := range d.Lines {
			if l.Closed {
				sum += geom.Ring(l.Points).Perimeter()
			} else {
				sum += l.Points.Length()
			}
		}
		// Chords within 0.005 mm of a curve of this size are short by less than
		// 0.02 mm.
		if math.Abs(sum-r.length) > 0.02 {
			t.Errorf("%s: lines of %g mm, want %g", r.what, sum, r.length)
		}
	}
}

// parabolaLength is the closed form of the arc length of a parabola.
func parabolaLength(span, sag float64) float64 {
	m := 4 * sag / span
	return span / 2 * (math.Sqrt(1+m*m) + math.Asinh(m)/m)
}

func TestReadRefuses(t *testing.T) {
	const head = `<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="50mm" viewBox="0 0 100 50">`
	rows := []struct{ what, text string }{
		{"nothing", ""},
		{"no XML", "slingloft"},
		{"other root", "<html/>"},
		{"no size", `<svg/>`},
		{"size NaN", `<svg width="NaNmm" height="1mm"/>`},
		{"size negative", `<svg width="-1mm" height="1mm"/>`},
		{"empty viewBox", `<svg width="1mm" height="1mm" viewBox="0 0 0 1"/>`},
		{"short viewBox", `<svg width="1mm" height="1mm" viewBox="0 0 1"/>`},
		{"path without a move", head + `<path d="L1 1"/></svg>`},
		{"unknown command", head + `<path d="M0 0X1"/></svg>`},
		{"cut off", head + `<path d="M0 0C1 1"/></svg>`},
		{"huge number", head + `<path d="M0 1e300"/></svg>`},
		{"transform", head + `<path transform="warp(1)" d="M0 0H1"/></svg>`},
		{"clone of nothing", head + `<use href="#a"/></svg>`},
		{"clone of itself", head + `<g id="a"><use href="#a"/></g></svg>`},
		{"clone from another file", head + `<use href="b.svg#a"/></svg>`},
		{"deep", head + strings.Repeat("<g>", 100) + strings.Repeat("</g>", 100) + "</svg>"},
		{"more elements than memory takes", head + strings.Repeat("<g/>", maxObjects+1) + "</svg>"},
		{"white space path", head + `<path d="  ,"/><path d=" x"/></svg>`},
	}
	for _, r := range rows {
		if d, err := Read(strings.NewReader(r.text)); err == nil {
			t.Errorf("%s: read as %d lines, want an error", r.what, len(d.Lines))
		}
	}
}

func FuzzRead(f *testing.F) {
	var b bytes.Buffer
	if err := Write(&b, readertest.Drawing(f, 1), export.Options{}); err != nil {
		f.Fatal(err)
	}
	f.Add(b.Bytes()[:4000])
	const head = `<svg width="100mm" height="50mm" viewBox="0 0 100 50">`
	for _, s := range []string{`<path d="M0 0a1 1 0 11200 0 1 1 0 01-2 0zl1 1"/>`, `<rect width="3" height="2" rx="1" transform="rotate(3)"/>`,
		`<polygon points="0,0 30,0 30,40"/>`, `<path d="M0 0Q5 5 1 0T1 0C1 1 2 2 3 3S1 1 1 1"/>`} {
		f.Add([]byte(head + s + "</svg>"))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		d, err := Read(bytes.NewReader(data))
		if err != nil {
			return
		}
		readertest.CheckRead(t, d)
	})
}

// The golden file is small enough to read and check in the head.
func TestGolden(t *testing.T) {
	readertest.Golden(t, "square.svg", readertest.Bytes(t, write, readertest.Square(), export.Options{}))
}
