package outside

import (
	"bytes"
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"slingloft/export"
	"slingloft/export/dxf"
	"slingloft/export/readertest"
	"slingloft/export/svg"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	_ "slingloft/outline/rapidtest"
	"slingloft/outline/wordstest"
)

func drawn(attributes, body string) string {
	return `<svg xmlns="http://www.w3.org/2000/svg" ` + attributes + `>` + body + `</svg>`
}

const mm = `width="300mm" height="200mm" viewBox="0 0 300 200" stroke="black"`

// Units, view boxes, transforms and shapes: areas in mm² that one can work out.
func TestSVG(t *testing.T) {
	for _, row := range []struct {
		what, text string
		areas      []float64
		holes      int
	}{
		{"mm", drawn(mm, `<rect x="10" y="20" width="50" height="30"/>`), []float64{1500}, 0},
		{"inches", drawn(`width="4in" height="4in" viewBox="0 0 4 4"`, `<rect x="1" y="1" width="2" height="1"/>`), []float64{2 * 25.4 * 25.4}, 0},
		{"pixels, no view box", drawn(`width="960" height="480"`, `<rect width="96" height="192"/>`), []float64{25.4 * 50.8}, 0},
		{"view box off zero and scaled", drawn(`width="100mm" height="100mm" viewBox="-50 -50 200 200"`, `<rect x="-40" y="-40" width="100" height="100"/>`), []float64{2500}, 0},
		{"transforms", drawn(mm, `<g transform="translate(50 50) rotate(30)"><rect transform="scale(2 -0.5)" width="20" height="40"/></g>`), []float64{800}, 0},
		{"circle", drawn(mm, `<circle cx="100" cy="100" r="40"/>`), []float64{math.Pi * 1600}, 0},
		{"ellipse", drawn(mm, `<ellipse cx="100" cy="100" rx="60" ry="20"/>`), []float64{math.Pi * 1200}, 0},
		{"cubics", drawn(mm, `<path d="M0 100C0 0 100 0 100 100Z"/>`), []float64{6000}, 0}, // 3/5 of the rectangle, by integration
		{"quadratic", drawn(mm, `<path d="M0 100Q50 0 100 100Z"/>`), []float64{10000.0 / 3}, 0},
		{"drawn as four lines", drawn(mm, `<path d="M10 10h80"/><line x1="90" y1="60" x2="90" y2="10"/><path d="M10 60l80 0"/><path d="M10 10v50"/>`), []float64{4000}, 0},
		{"back to its start but not closed", drawn(mm, `<path d="M10 10h80v50h-80v-50"/>`), []float64{4000}, 0},
		{"hole", drawn(mm, `<path d="M10 10h80v50h-80z M20 20h10v10h-10z"/><circle cx="60" cy="40" r="8"/>`), []float64{4000}, 2},
		{"a piece in a hole", drawn(mm, `<rect width="100" height="100"/><rect x="10" y="10" width="80" height="80"/><rect x="30" y="30" width="20" height="20"/>`), []float64{10000, 400}, 1},
		{"marks", drawn(mm, `<g id="mark"><path d="M30 10v10"/></g><g id="register"><path d="M200 10v10"/></g><rect width="100" height="100"/>`), []float64{10000}, 0},
	} {
		drawn, err := Read("a.SVG", strings.NewReader(row.text), 0)
		got := drawn.Shapes
		if err != nil {
			t.Errorf("%s: %v", row.what, err)
			continue
		}
		holes := 0
		for i, s := range got {
			holes += len(s.Holes)
			// Within a twentieth of a millimetre all along the edge.
			if i >= len(row.areas) || math.Abs(s.Outline.Area()-row.areas[i]) > 0.05*s.Outline.Perimeter()+1e-6 || (len(s.Outline) == 4 && math.Abs(s.Outline.Area()-row.areas[i]) > 1e-3) {
				t.Errorf("%s: outline %d of %.3f mm², want %v", row.what, i+1, s.Outline.Area(), row.areas)
			}
		}
		if len(got) != len(row.areas) || holes != row.holes {
			t.Errorf("%s: %d outlines, %d holes; want %d, %d", row.what, len(got), holes, len(row.areas), row.holes)
		}
	}
}

func entities(unit int, groups string) string {
	return strings.Join(strings.Fields(fmt.Sprintf("0 SECTION 2 HEADER 9 $INSUNITS 70 %d 0 ENDSEC 0 SECTION 2 ENTITIES %s 0 ENDSEC 0 EOF", unit, groups)), "\n") + "\n"
}

func TestDXF(t *testing.T) {
	square := "0 LWPOLYLINE 8 0 90 4 70 1 10 0 20 0 10 40 20 0 10 40 20 30 10 0 20 30"
	slot := "0 LINE 8 0 10 10 20 0 11 60 21 0 0 ARC 8 0 10 60 20 10 40 10 50 270 51 90 0 LINE 8 0 10 60 20 20.02 11 10 21 20 0 ARC 8 0 10 10 20 10 40 10 50 90 51 270"
	for _, row := range []struct {
		what, text string
		unit       float64
		area       float64
	}{
		{"mm", entities(4, square), 0, 1200},
		{"inches", entities(1, square), 0, 1200 * 25.4 * 25.4},
		{"cm", entities(5, square), 0, 120000},
		{"the file's unit before the one given", entities(4, square), 25.4, 1200},
		{"unit given", entities(0, square), 25.4, 1200 * 25.4 * 25.4},
		{"half circle by bulge", entities(4, "0 LWPOLYLINE 8 0 90 2 70 1 10 0 20 0 42 1 10 40 20 0 42 0"), 0, math.Pi * 200},
		{"old polyline", entities(4, "0 POLYLINE 8 0 66 1 70 1 0 VERTEX 8 0 10 0 20 0 0 VERTEX 8 0 10 30 20 0 0 VERTEX 8 0 10 0 20 30 0 SEQEND"), 0, 450},
		{"circle", entities(4, "0 CIRCLE 8 0 10 5 20 5 40 25"), 0, math.Pi * 625},
		{"ellipse", entities(4, "0 ELLIPSE 8 0 10 0 20 0 11 30 21 40 40 0.5 41 0 42 6.283185307179586"), 0, math.Pi * 50 * 25},
		{"lines and arcs, not quite in order or touching", entities(4, slot), 0, 50*20 + math.Pi*100},
	} {
		drawn, err := Read("a.dxf", strings.NewReader(row.text), row.unit)
		got := drawn.Shapes
		if err != nil || len(got) != 1 {
			t.Errorf("%s: %d outlines, %v", row.what, len(got), err)
			continue
		}
		if a := got[0].Outline; math.Abs(a.Area()-row.area) > 0.05*a.Perimeter() {
			t.Errorf("%s: %.3f mm², want %.3f", row.what, a.Area(), row.area)
		}
	}
}

func TestFaultsAreNamed(t *testing.T) {
	swapped := wordstest.Reversed(export.English())
	for _, row := range []struct{ name, text, want string }{
		{"a.svg", drawn(mm, `<rect width="9" height="9"/><rect x="20" width="9" height="9"/><path id="flap" d="M100 100h50v40h-50v-37.9"/>`), "path 3 (flap) is open by 2.10 mm at 100.0, 97.9"},
		{"a.svg", drawn(mm, `<path d="M100 100h50v40"/><path d="M149 140h-49v-40"/>`), "path 1 ends 1.00 mm from path 2, at 150.0, 60.0"},
		{"a.svg", drawn(mm, `<path d="M0 0L50 50L50 0L0 40Z"/>`), "path 1 crosses itself at 22.2, 177.8, as a figure of eight does"},
		{"a.svg", drawn(mm, `<rect width="50" height="50"/><rect x="40" width="50" height="50"/>`), "path 2 and path 1 cross or touch at"},
		{"a.svg", drawn(mm, `<rect width="50" height="50"/><rect width="50" height="50"/>`), "cross or touch at"},
		{"a.svg", drawn(mm, `<rect width="0.5" height="0.5"/>`), "less than a square millimetre"},
		{"a.svg", drawn(mm, `<text>hello</text>`), "no closed path"},
		{"a.svg", drawn(`width="90000mm" height="90000mm" viewBox="0 0 90000 90000"`, `<rect width="50000" height="50"/>`), "is the unit right"},
		{"a.svg", drawn(mm, `<use href="#a"/>`), "there is no"},
		// As much to the left as to the right.
		{"a.svg", drawn(mm, `<path d="M0 0L50 50L50 0L0 50Z"/>`), "path 1 crosses itself at 25.0, 175.0, as a figure of eight does"},
		{"a.svg", drawn(mm, `<path d="M0 0h80v40h-40v-20h-10v-20h-10v60h-20z"/>`), "path 1 touches itself at"},
		{"a.svg", "\x1f\x8b\x08\x00\x00", "compressed"},
		{"a.svgz", "", "compressed"},
		{"a.svg", drawn(`viewBox="0 0 960 480"`, `<rect width="96" height="96"/>`), "does not say how wide it is"},
		{"a.svg", drawn(`width="100%" height="100%" viewBox="0 0 960 480"`, `<rect width="96" height="96"/>`), "does not say how wide it is"},
		{"a.svg", drawn(`width="90mm" height="90mm" viewBox="0 0 180 90" preserveAspectRatio="xMidYMid slice"`, `<rect width="96" height="96"/>`), "slice"},
		{"a.svg", drawn(mm, `<g display="none"><rect width="9" height="9"/></g><rect width="8" height="8" fill="none" stroke="none"/>`), "no closed path (left out: 1 hidden, 1 without stroke or filling)"},
		{"a.svg", drawn(mm, `<rect width="9" height="9" clip-path="url(#a)"/>`), "clip-path hides a part of it"},
		{"a.svg", drawn(mm, `<g style="mask:url(#a)"><rect width="9" height="9"/></g>`), "mask hides a part of it"},
		{"a.svg", drawn(mm, `<rect width="9" height="9" style="transform:rotate(9deg);transform-origin:center"/>`), "transform-origin"},
		{"a.svg", drawn(mm, `<rect width="9" height="9" style="rotate:9deg"/>`), "rotate in a style"},
		{"a.svg", drawn(mm, `<style>rect{width:20px}</style><rect width="9" height="9"/>`), "width in a style"},
		{"a.svg", drawn(mm, `<style>rect:hover{fill:red}</style><rect width="9" height="9"/>`), "selector"},
		{"a.svg", drawn(mm, `<style>@media print{rect{display:none}}</style><rect width="9" height="9"/>`), "style sheet"},
		{"a.svg", drawn(mm, `<style>@import url(a.css);</style><rect width="9" height="9"/>`), "style sheet"},
		{"a.svg", `<?xml-stylesheet href="a.css"?>` + drawn(mm, `<rect width="9" height="9"/>`), "style sheet"},
		{"a.svg", drawn(mm, `<rect width="9" height="9"><animateTransform/></rect>`), "animateTransform moves it"},
		{"a.svg", drawn(mm, `<script>1</script><rect width="9" height="9"/>`), "script"},
		{"a.svg", drawn(mm, `<rect width="9" height="9" style="transform:translate(10%)"/>`), "transform"},
		{"a.dxf", entities(4, "0 SPLINE 8 0 71 3 70 1 11 0 21 0 11 9 21 0 11 9 21 9"), "closed spline"},
		{"a.svg", drawn(mm, `<g id="mark"><path d="M200 10v10"/></g><rect width="100" height="100"/>`), "lies in no outline"},
		{"a.svg", "", "no svg element"},
		{"a.dxf", entities(0, "0 CIRCLE 8 0 10 5 20 5 40 25"), "names no unit"},
		{"a.dxf", entities(4, "0 HELIX 8 0 10 5 20 5"), "not read"},
		{"a.png", "", ".svg or .dxf"},
		{"svg", "", ".svg or .dxf"},
	} {
		_, err := Read(row.name, strings.NewReader(row.text), 0)
		if err == nil || !strings.Contains(err.Error(), row.want) {
			t.Errorf("%s: %v, want it told of %q", row.text, err, row.want)
			continue
		}
		// It is data: with other words it is another text of the same.
		if other := swapped.Failure(err); other == err.Error() {
			t.Errorf("%s: %s in other words too", row.text, other)
		}
	}
}

// What we write ourselves is brought in as it was: two slings with their holes and
// their marks.
func TestOwnSheets(t *testing.T) {
	d := readertest.Drawing(t, 1)
	d.Labels = nil
	for _, f := range []struct {
		name  string
		write func(*bytes.Buffer) error
	}{
		{"a.svg", func(b *bytes.Buffer) error { return svg.Write(b, d, export.Options{}) }},
		{"a.dxf", func(b *bytes.Buffer) error { return dxf.Write(b, d, export.Options{}) }},
	} {
		var b bytes.Buffer
		if err := f.write(&b); err != nil {
			t.Fatal(err)
		}
		drawn, err := Read(f.name, &b, 0)
		got := drawn.Shapes
		if err != nil || len(got) != 2 {
			t.Fatalf("%s: %d outlines, %v", f.name, len(got), err)
		}
		for _, s := range got {
			if len(s.Holes) != 1 || len(s.Lines) != 4 || math.Abs(s.Outline.Area()-readertest.Sling().Cut.Area()) > Thin*s.Outline.Perimeter() {
				t.Errorf("%s: %s with %d holes, %d lines and %.1f mm²", f.name, s.Name, len(s.Holes), len(s.Lines), s.Outline.Area())
			}
		}
	}
}

// The outline stays within a twentieth of a millimetre of a circle of any size.
func TestCurvesStayTrue(t *testing.T) {
	for _, r := range []float64{1, 30, 400, 4000} {
		text := drawn(fmt.Sprintf(`width="%gmm" height="%gmm" viewBox="0 0 %g %g"`, 2*r, 2*r, 2*r, 2*r), fmt.Sprintf(`<circle cx="%g" cy="%g" r="%g"/>`, r, r, r))
		got, err := Read("a.svg", strings.NewReader(text), 0)
		if err != nil {
			t.Fatal(err)
		}
		ring, centre := got.Shapes[0].Outline, geom.Pt(r, r)
		for i, p := range ring {
			middle := p.Towards(ring[(i+1)%len(ring)], 0.5)
			if math.Abs(p.Dist(centre)-r) > 0.05 || math.Abs(middle.Dist(centre)-r) > 0.05 {
				t.Errorf("radius %g: off by %g and %g", r, p.Dist(centre)-r, middle.Dist(centre)-r)
				break
			}
		}
	}
}

func TestPiece(t *testing.T) {
	got, err := Read("a.svg", strings.NewReader(drawn(mm, `<path d="M10 10h20v80h60v20h-80z"/>`)), 0)
	if err != nil {
		t.Fatal(err)
	}
	p := got.Shapes[0].Piece("extra-1", "A pocket with a rather long name", piece.Cloth, 3)
	if p.Count != 3 || len(p.Labels) != 1 || !p.Cut.Contains(p.Labels[0].At) {
		t.Errorf("piece %+v", p)
	}
	if p.Labels[0].At.Y > 110 {
		t.Errorf("lettered at %v, not where it is widest", p.Labels[0].At)
	}
}

// Boxes cover a keep-out, and no more than its width in each slice.
func TestKeepOut(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var ring geom.Ring
		n := rapid.IntRange(3, 24).Draw(t, "corners")
		for i := range n {
			s, c := math.Sincos(2 * math.Pi * float64(i) / float64(n))
			ring = append(ring, geom.Pt(c, s).Times(rapid.Float64Range(5, 300).Draw(t, "radius")))
		}
		at := geom.Pt(500, 400)
		boxes := Shape{Outline: ring}.KeepOut(at)
		for range 200 {
			p := geom.Pt(rapid.Float64Range(-300, 300).Draw(t, "x"), rapid.Float64Range(-300, 300).Draw(t, "y"))
			covered := false
			for _, b := range boxes {
				covered = covered || b.Contains(p.Plus(at))
			}
			if ring.Contains(p) && !covered {
				t.Fatalf("%v lies in the keep-out but in no box", p)
			}
		}
		all := geom.EmptyBox()
		for _, b := range boxes {
			all = all.Union(b)
		}
		if want := ring.Bounds(); math.Abs(all.Width()-want.Width()) > 1e-9 || math.Abs(all.Height()-want.Height()) > 1e-9 {
			t.Fatalf("boxes over %v, want %v", all, want)
		}
	})
}

func FuzzRead(f *testing.F) {
	f.Add("a.svg", []byte(drawn(mm, `<path d="M10 10h80v50h-80z M20 20h10v10h-10z"/><circle cx="60" cy="40" r="8"/>`)), 0.0)
	f.Add("a.svg", []byte(drawn(mm, `<path d="M100 100h50v40"/><path d="M149 140h-49v-40"/>`)), 0.0)
	f.Add("a.dxf", []byte(entities(4, "0 CIRCLE 8 0 10 5 20 5 40 25")), 0.0)
	f.Add("a.dxf", []byte(entities(0, "0 ELLIPSE 8 0 10 0 20 0 11 30 21 40 40 0.5 41 0 42 6.28")), 25.4)
	f.Add("a.dxf", []byte(entities(4, "0 SPLINE 8 0 71 1 70 1 40 0 40 0 40 1 40 2 40 3 40 3 10 0 20 0 10 9 20 0 10 9 20 9 10 0 20 0")), 1.0)
	f.Fuzz(func(t *testing.T, name string, data []byte, unit float64) {
		drawn, err := Read(name, bytes.NewReader(data), unit)
		shapes := drawn.Shapes
		if err != nil {
			if text := err.Error(); strings.ContainsAny(text, "\n\x00") || len(text) > 600 {
				t.Errorf("error of %d bytes: %.500q", len(text), text)
			}
			return
		}
		if len(shapes) == 0 || len(shapes) > maxShapes {
			t.Errorf("%d outlines", len(shapes))
		}
		for _, s := range shapes {
			box := s.Outline.Bounds()
			if s.Outline.Area() < 0.99 || len(s.Outline) > maxPoints || box.Width() > maxSize || box.Height() > maxSize {
				t.Errorf("outline of %d points, %g mm²", len(s.Outline), s.Outline.Area())
			}
			for _, p := range s.Outline {
				if !p.Finite() {
					t.Error("a point is not finite")
				}
			}
			s.Piece("x", "x", piece.Cloth, 1)
			if len(s.KeepOut(geom.Point{})) == 0 {
				t.Error("no keep-out")
			}
		}
	})
}
