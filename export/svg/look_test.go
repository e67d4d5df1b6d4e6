package svg

import (
	"fmt"
	"image"
	"image/png"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/readertest"
	"slingloft/outline/geom"
)

// looks are bodies of drawings of 100 × 50 mm, of 1000 × 500 units, with the number of
// lines that can be seen and what is left out. Strokes are black unless they are set.
var looks = [...]struct {
	what, body string
	lines      int
	left       export.Left
}{
	{"hidden by attributes", `<g display="none"><path d="M0 0H9V9"/></g><path visibility="hidden" d="M0 0H9V9"/><rect x="100" y="100" width="300" height="90"/>`, 1, export.Left{export.Hidden: 2}},
	{"seen in a hidden group", `<g visibility="hidden"><path d="M0 0H9V9"/><rect visibility="visible" x="100" y="50" width="300" height="90"/></g>`, 1, export.Left{export.Hidden: 1}},
	{"hidden by a class", `<style>.off{display:none} .b .off{display:inline}</style><path class="off" d="M0 0H9V9"/><g class="b"><rect class="off" x="200" y="50" width="300" height="190"/></g>`, 1, export.Left{export.Hidden: 1}},
	{"the stronger rule", `<style>#a{display:inline} rect{display:none} g>rect.k{display:none !important}</style><rect id="a" x="200" y="50" width="300" height="190"/><g><rect class="k" style="display:inline" width="9" height="9"/></g>`, 1, export.Left{export.Hidden: 1}},
	{"style over attribute", `<path style="display:none" display="inline" d="M0 0H9V9"/><rect style="stroke:#000" stroke="none" x="20" y="50" width="300" height="190"/>`, 1, export.Left{export.Hidden: 1}},
	{"no opacity", `<g opacity="0"><path d="M0 0H9V9"/></g><path style="stroke:rgba(0, 0, 0, 0);fill:#fff0" d="M0 0H9V9"/><path stroke-opacity="0%" fill="none" d="M0 0H9V9"/><rect x="20" y="70" width="300" height="190"/>`, 1, export.Left{export.Transparent: 3}},
	{"no paint", `<path stroke="none" fill="none" d="M0 0H9V9"/><line stroke="none" x2="99"/><path stroke-width="0" fill="none" d="M0 0H9V9"/><rect stroke="none" x="20" y="70" width="300" height="190"/>`, 1, export.Left{export.Unpainted: 3}},
	{"transform in a style", `<style>.t{transform:translate(10px,5mm) rotate(0.25turn)}</style><rect class="t" transform="scale(9)" width="200" height="100" x="50" y="-400"/>`, 1, export.Left{}},
	{"clone", `<defs><rect id="a" width="200" height="100"/></defs><use href="#a" x="100" y="50" transform="scale(1.5)"/>`, 1, export.Left{}},
	{"clone of a symbol, with what it inherits", `<symbol id="a"><rect width="200" height="100"/><path stroke="none" fill="none" d="M0 0H9V9"/></symbol><g transform="translate(100 50)"><use xlink:href="#a" xmlns:xlink="http://www.w3.org/1999/xlink"/></g>`, 1, export.Left{export.Unpainted: 1}},
	{"hidden clone", `<rect id="a" x="30" y="30" width="200" height="100"/><use href="#a" x="500" display="none"/>`, 1, export.Left{export.Hidden: 1}},
	{"switch", `<switch><g requiredExtensions="a:b"><rect width="900" height="400"/></g><rect x="30" y="30" width="200" height="100"/><rect width="9" height="9"/></switch>`, 1, export.Left{export.Hidden: 1}},
	{"other vocabularies", `<x:shape xmlns:x="urn:x" d="M0 0"/><rect xmlns:y="urn:y" y:x="700" x="30" y="30" width="200" height="100"/>`, 1, export.Left{}},
}

const looksHead = `<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="50mm" viewBox="0 0 1000 500" stroke="black">`

func TestLooks(t *testing.T) {
	for _, row := range looks {
		d, left, err := ReadOutlines(strings.NewReader(looksHead+row.body+"</svg>"), 0)
		if err != nil || len(d.Lines) != row.lines || left != row.left {
			t.Errorf("%s: %d lines, left out %v, %v; want %d, %v", row.what, len(d.Lines), left, err, row.lines, row.left)
		}
	}
	d, left, err := ReadOutlines(strings.NewReader(looksHead+`<text>a</text><image/><path d="M5 5"/></svg>`), 0)
	if want := (export.Left{export.Text: 1, export.Picture: 1, export.Lengthless: 1}); err != nil || left != want || len(d.Lines) > 0 {
		t.Errorf("%d lines, left out %v, %v", len(d.Lines), left, err)
	}
}

// Chromium paints where we read, and nowhere else: all drawings below each other.
func TestLooksByChromium(t *testing.T) {
	const dots, height = 96 / 25.4, 50.0 // pixels for a mm; of a drawing
	folder := t.TempDir()
	var page strings.Builder
	for i, row := range looks {
		name := fmt.Sprintf("%d.svg", i)
		if err := os.WriteFile(filepath.Join(folder, name), []byte(looksHead+row.body+"</svg>"), 0o644); err != nil {
			t.Fatal(err)
		}
		fmt.Fprintf(&page, `<img src="%s" style="position:absolute;left:0;top:%dpx">`, name, 200*i)
	}
	file, shot := filepath.Join(folder, "a.html"), filepath.Join(folder, "a.png")
	if err := os.WriteFile(file, []byte("<body>"+page.String()), 0o644); err != nil {
		t.Fatal(err)
	}
	readertest.Run(t, "chromium", "--headless", "--no-sandbox", "--disable-gpu", "--disable-background-networking", "--hide-scrollbars",
		"--allow-file-access-from-files", "--user-data-dir="+folder, fmt.Sprintf("--window-size=400,%d", 200*len(looks)), "--screenshot="+shot, "file://"+file)
	for i, row := range looks {
		d, err := Read(strings.NewReader(looksHead + row.body + "</svg>"))
		if err != nil {
			t.Fatal(err)
		}
		want := geom.EmptyBox()
		for _, l := range d.Lines {
			want = want.Union(l.Points.Bounds())
		}
		got := inked(t, shot, image.Rect(0, 200*i, 400, 200*i+189))
		// A unit of stroke reaches half of it past the outline; then some pixels.
		const slack = 0.05 + 2/dots
		low := geom.Pt(got.Min.X/dots, height-got.Max.Y/dots)
		high := geom.Pt(got.Max.X/dots, height-got.Min.Y/dots)
		if math.Abs(low.X-want.Min.X) > slack || math.Abs(high.X-want.Max.X) > slack ||
			math.Abs(low.Y-want.Min.Y) > slack || math.Abs(high.Y-want.Max.Y) > slack {
			t.Errorf("%s: painted from %v to %v, read %v", row.what, low, high, want)
		}
	}
}

// inked returns the box around the dark pixels in a part of a picture, from its upper
// left corner, y downwards.
func inked(t *testing.T, path string, in image.Rectangle) geom.Box {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	img, err := png.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	box := geom.EmptyBox()
	for y := in.Min.Y; y < in.Max.Y; y++ {
		for x := in.Min.X; x < in.Max.X; x++ {
			if r, _, _, a := img.At(x, y).RGBA(); a > 0x8000 && r < 0x6000 {
				p := geom.Pt(float64(x-in.Min.X), float64(y-in.Min.Y))
				box = box.With(p).With(p.Plus(geom.Pt(1, 1)))
			}
		}
	}
	return box
}

// The room that is left where shapes differ goes where preserveAspectRatio says.
func TestAspectRatio(t *testing.T) {
	for _, row := range []struct {
		ratio string
		at    geom.Point // of the viewBox's upper left corner, mm from the sheet's lower left
		right geom.Point // of its lower right corner
	}{
		{"", geom.Pt(25, 50), geom.Pt(75, 0)}, // in the middle
		{"xMidYMid meet", geom.Pt(25, 50), geom.Pt(75, 0)},
		{"xMinYMin", geom.Pt(0, 50), geom.Pt(50, 0)},
		{"xMaxYMid meet", geom.Pt(50, 50), geom.Pt(100, 0)},
		{"none", geom.Pt(0, 50), geom.Pt(100, 0)},
	} {
		d, err := Read(strings.NewReader(`<svg width="100mm" height="50mm" viewBox="0 0 10 10" stroke="black" preserveAspectRatio="` +
			row.ratio + `"><path d="M0 0L10 10"/></svg>`))
		if err != nil || d.Lines[0].Points[0].Dist(row.at) > 1e-9 || d.Lines[0].Points[1].Dist(row.right) > 1e-9 {
			t.Errorf("%q: %v, %v; want %v, %v", row.ratio, d.Lines, err, row.at, row.right)
		}
	}
	// A length of the user unit serves where the file has none.
	d, _, err := ReadOutlines(strings.NewReader(`<svg width="100%" viewBox="0 0 10 20" stroke="black"><path d="M0 0L10 10"/></svg>`), 25.4)
	if err != nil || d.Width != 254 || d.Height != 508 || d.Lines[0].Points[1].Dist(geom.Pt(254, 254)) > 1e-9 {
		t.Errorf("%g × %g, %v", d.Width, d.Height, err)
	}
}
