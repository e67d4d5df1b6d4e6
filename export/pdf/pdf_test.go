package pdf

import (
	"bytes"
	"fmt"
	"image/png"
	"math"
	"os"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/readertest"
	"slingloft/export/style"
	"slingloft/export/tile"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

func write(b *bytes.Buffer, d export.Drawing, o export.Options) error { return Write(b, d, o) }

// tolerance of half a hundredth of a point for the page, far less for lines.
const tolerance = 0.002

func TestReadBack(t *testing.T) { readertest.ReadBack(t, write, Read, tolerance) }

// MuPDF, a reader that is not ours, draws every line where it belongs, on the
// layer of its work; qpdf finds nothing amiss.
func TestLinesByMuPDF(t *testing.T) {
	for _, width := range []float64{0, 12_000} { // the second needs a user unit
		d := readertest.Drawing(t, 1, readertest.Hostile()...)
		d.Width = max(d.Width, width)
		plain, err := d.Plain(export.Options{})
		if err != nil {
			t.Fatal(err)
		}
		file := readertest.File(t, "a.pdf", readertest.Bytes(t, write, d, export.Options{}))
		if out := readertest.Run(t, "qpdf", "--check", file); strings.Contains(out, "WARNING") {
			t.Errorf("qpdf: %s", out)
		}
		pages := readertest.Trace(t, file)
		if len(pages) != 1 {
			t.Fatalf("%d pages", len(pages))
		}
		got := pages[0]
		if math.Abs(got.Width-d.Width) > 0.01 || math.Abs(got.Height-d.Height) > 0.01 {
			t.Errorf("page of %g × %g mm, want %g × %g", got.Width, got.Height, d.Width, d.Height)
		}
		checkOrdered(t, got.Lines, plain)
	}
}

// checkOrdered compares lines without names, which are drawn work by work.
func checkOrdered(t *testing.T, got []piece.Line, plain export.Drawing) {
	t.Helper()
	var want []piece.Line
	for _, w := range piece.Works() {
		for _, l := range plain.Lines {
			if l.Work == w {
				want = append(want, l)
			}
		}
	}
	if len(got) != len(want) {
		t.Fatalf("%d lines, want %d", len(got), len(want))
	}
	for i, l := range want {
		if got[i].Work != l.Work || got[i].Closed != l.Closed || len(got[i].Points) != len(l.Points) {
			t.Fatalf("line %q: %s, closed %v, %d points", l.Name, got[i].Work, got[i].Closed, len(got[i].Points))
		}
		for k, p := range l.Points {
			if p.Dist(got[i].Points[k]) > 0.01 {
				t.Fatalf("line %q: point %d at %v, want %v", l.Name, k+1, got[i].Points[k], p)
			}
		}
	}
}

// Poppler agrees on page sizes, one page for each sheet.
func TestPagesByPoppler(t *testing.T) {
	ds := []export.Drawing{readertest.Drawing(t, 1), readertest.Square(), readertest.Drawing(t, 1)}
	ds[2].Width = 4000
	var b bytes.Buffer
	if err := WritePages(&b, ds, export.Options{}); err != nil {
		t.Fatal(err)
	}
	info := readertest.Run(t, "pdfinfo", "-l", "9", readertest.File(t, "a.pdf", b.Bytes()))
	for i, d := range ds {
		var w, h float64
		for _, row := range strings.Split(info, "\n") {
			fmt.Sscanf(row, fmt.Sprintf("Page %4d size: %%f x %%f", i+1), &w, &h)
		}
		const mm = 25.4 / 72
		if math.Abs(w*mm-d.Width) > 0.01*max(1, w/1000) || math.Abs(h*mm-d.Height) > 0.01 { // pdfinfo prints 6 digits
			t.Errorf("page %d is %g × %g mm, want %g × %g\n%s", i+1, w*mm, h*mm, d.Width, d.Height, info)
		}
	}
}

// Poppler draws the outline in its colour: at 254 dots an inch, ten to the
// millimetre, the square's left edge stands 100 dots from the left.
func TestPictureByPoppler(t *testing.T) {
	file := readertest.File(t, "a.pdf", readertest.Bytes(t, write, readertest.Square(), export.Options{}))
	stem := strings.TrimSuffix(file, ".pdf")
	readertest.Run(t, "pdftocairo", "-png", "-r", "254", "-singlefile", file, stem)
	f, err := os.Open(stem + ".png")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	img, err := png.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	if b := img.Bounds(); b.Dx()-400 > 1 || b.Dx() < 400 || b.Dy()-300 > 1 || b.Dy() < 300 { // a dot more by rounding
		t.Errorf("picture of %v dots, want 400 × 300", b.Size())
	}
	want := style.Default().Of(piece.CutOut).Colour
	r, g, b, _ := img.At(100, 200).RGBA()
	if got := (style.Colour{R: uint8(r >> 8), G: uint8(g >> 8), B: uint8(b >> 8)}); got != want {
		t.Errorf("edge is %v, want %v", got, want)
	}
}

func TestTiledReadsBack(t *testing.T) {
	ds := []export.Drawing{readertest.Drawing(t, 1), readertest.Drawing(t, 1)}
	paper := tile.Papers()[1]
	var b bytes.Buffer
	if err := WriteTiled(&b, ds, export.Options{}, paper); err != nil {
		t.Fatal(err)
	}
	read, err := ReadPages(bytes.NewReader(b.Bytes()))
	if err != nil {
		t.Fatal(err)
	}
	var want []export.Drawing
	for _, d := range ds {
		pages, err := tile.Split(d, export.Options{}, paper)
		if err != nil {
			t.Fatal(err)
		}
		want = append(want, pages...)
	}
	if len(read) != len(want) {
		t.Fatalf("%d pages read, want %d", len(read), len(want))
	}
	for i := range want {
		readertest.Same(t, read[i], want[i], tolerance)
	}
}

func TestReadRefuses(t *testing.T) {
	good := string(readertest.Bytes(t, write, readertest.Square(), export.Options{}))
	rows := []struct{ what, text string }{
		{"nothing", ""},
		{"no PDF", "slingloft"},
		{"cut off", good[:len(good)/2]},
		{"table gone", strings.Replace(good, "\nxref\n", "\nxxxx\n", 1)},
		{"object moved", strings.Replace(good, "%PDF-1.5", "%PDF-1.5\n%shifted", 1)},
		{"changed", strings.Replace(good, "/Root", "/Prev 1 /Root", 1)},
		{"loop", "%PDF-1.5\n1 0 obj\n<</Pages 1 0 R /Kids [1 0 R] /Length 1 0 R>>\nendobj\nxref\n0 2\n0 65535 f \n9 0 n \ntrailer\n<</Root 1 0 R>>\nstartxref\n65\n%%EOF"},
		{"deep", "%PDF-1.5\nxref\n0 0\ntrailer\n" + strings.Repeat("[", 100) + "\nstartxref\n9\n%%EOF"},
	}
	for _, r := range rows {
		if d, err := Read(strings.NewReader(r.text)); err == nil {
			t.Errorf("%s: read as %d lines, want an error", r.what, len(d.Lines))
		}
	}
	if err := WritePages(&bytes.Buffer{}, nil, export.Options{}); err == nil {
		t.Error("a PDF without pages was written")
	}
}

// A change of the page's content is seen, here a scale in front of it.
func TestReadFollowsTransforms(t *testing.T) {
	var d export.Drawing
	f := follower{drawing: &d, budget: 100, maps: []geom.Affine{geom.Identity()}}
	if err := f.run([]byte("q 2 0 0 3 10 20 cm 0 1 1 0 0 0 cm 1 2 m 3 4 l h S Q 1 2 m 3 4 l S")); err != nil {
		t.Fatal(err)
	}
	want := []geom.Polyline{{{X: 14, Y: 23}, {X: 18, Y: 29}}, {{X: 1, Y: 2}, {X: 3, Y: 4}}}
	for i, l := range d.Lines {
		for k, p := range l.Points {
			if p.Dist(want[i][k]) > 1e-12 {
				t.Errorf("line %d: %v, want %v", i+1, l.Points, want[i])
			}
		}
	}
	if len(d.Lines) != 2 || !d.Lines[0].Closed || d.Lines[1].Closed {
		t.Errorf("lines %+v", d.Lines)
	}
}

func FuzzRead(f *testing.F) {
	var b bytes.Buffer
	if err := Write(&b, readertest.Square(), export.Options{}); err != nil {
		f.Fatal(err)
	}
	f.Add(b.Bytes())
	f.Fuzz(func(t *testing.T, data []byte) {
		d, err := Read(bytes.NewReader(data))
		if err == nil && !(d.Width > 0 && d.Height > 0) {
			t.Fatalf("sheet of %g × %g mm", d.Width, d.Height)
		}
	})
}

func FuzzContent(f *testing.F) {
	f.Add([]byte("q 2 0 0 3 10 20 cm /Line <</N <FEFF0041>>> BDC 1 2 m 3 4 l s EMC Q (a\\)(b)) [1 2] 0 d"))
	f.Fuzz(func(t *testing.T, data []byte) {
		var d export.Drawing
		c := follower{drawing: &d, budget: 1000, maps: []geom.Affine{geom.Identity()}}
		if c.run(data) != nil {
			return
		}
		readertest.CheckRead(t, d)
	})
}

// A page that is longer than plain units can say is told of, at the scale it is drawn at.
func TestLargePageTold(t *testing.T) {
	d := readertest.Square()
	for _, r := range []struct {
		long float64
		o    export.Options
		told bool
	}{{5080, export.Options{}, false}, {5081, export.Options{}, true}, {9000, export.Options{Scale: 0.5}, false}, {11000, export.Options{Scale: 0.5}, true}} {
		d.Width = r.long
		if got := notes(d, r.o); (len(got) == 1 && got[0].Kind == export.LargePage) != r.told {
			t.Errorf("%v mm, scale %v: %v", r.long, r.o.Scale, got)
		}
	}
}
