package preview

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"math"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/readertest"
	"slingloft/export/style"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

func write(b *bytes.Buffer, d export.Drawing, o export.Options) error { return Write(b, d, o) }

func TestSizeAndResolution(t *testing.T) {
	for _, scale := range []float64{1, 0.2} {
		d := readertest.Drawing(t, scale)
		data := readertest.Bytes(t, write, d, export.Options{Scale: scale})
		img, err := png.Decode(bytes.NewReader(data))
		if err != nil {
			t.Fatal(err)
		}
		if b := img.Bounds(); max(b.Dx(), b.Dy()) > maxPixels || max(b.Dx(), b.Dy()) < 1000 {
			t.Errorf("picture of %v pixels", b.Size())
		}
		read, err := Read(bytes.NewReader(data))
		if err != nil {
			t.Fatal(err)
		}
		pixel := read.Width / float64(img.Bounds().Dx())
		if math.Abs(read.Width-d.Width*scale) > pixel || math.Abs(read.Height-d.Height*scale) > pixel {
			t.Errorf("picture of %g × %g mm, want %g × %g", read.Width, read.Height, d.Width*scale, d.Height*scale)
		}
	}
}

// The lines are where they belong, in the colour of their work.
func TestLinesInPlace(t *testing.T) {
	d := readertest.Square()
	img, err := png.Decode(bytes.NewReader(readertest.Bytes(t, write, d, export.Options{})))
	if err != nil {
		t.Fatal(err)
	}
	perMM := float64(img.Bounds().Dx()) / d.Width
	at := func(p geom.Point) color.Color {
		return img.At(int(p.X*perMM), img.Bounds().Dy()-1-int(p.Y*perMM))
	}
	rows := []struct {
		what string
		at   geom.Point
		work piece.Work
	}{
		{"outline", geom.Pt(20, 5), piece.CutOut},
		{"outline", geom.Pt(30, 12), piece.CutOut},
		{"closing edge of the outline", geom.Pt(10, 12), piece.CutOut},
		{"hole", geom.Pt(14, 7), piece.CutInside},
		{"fold", geom.Pt(11, 15), piece.Score},
		{"lettering", geom.Pt(20, 20), piece.Lettering},
	}
	for _, r := range rows {
		c := style.Default().Of(r.work).Colour
		if got, want := at(r.at), (color.RGBA{c.R, c.G, c.B, 255}); !near(got, want) {
			t.Errorf("%s at %v is %v, want %v", r.what, r.at, got, want)
		}
	}
	if got := at(geom.Pt(25, 10)); !near(got, color.RGBA{255, 255, 255, 255}) {
		t.Errorf("inside of the square is %v, want white", got)
	}
}

func near(a, b color.Color) bool {
	ar, ag, ab, _ := a.RGBA()
	br, bg, bb, _ := b.RGBA()
	far := func(x, y uint32) bool { return math.Abs(float64(x)-float64(y)) > 0x1800 }
	return !far(ar, br) && !far(ag, bg) && !far(ab, bb)
}

// ring returns a drawing of a ring of n points.
func ring(n int) export.Drawing {
	return export.Drawing{Name: "ring", Width: 1000, Height: 1000, Lines: []piece.Line{{
		Name: "ring", Work: piece.CutOut, Closed: true,
		Points: geom.Polyline(readertest.Circle(geom.Pt(500, 500), 480, n)),
	}}}
}

func TestManyPoints(t *testing.T) {
	img, _, err := image.Decode(bytes.NewReader(readertest.Bytes(t, write, ring(20000), export.Options{})))
	if err != nil || img.Bounds().Dx() != maxPixels {
		t.Errorf("picture %v, %v", img.Bounds(), err)
	}
}

// A ring of many points does not slow the drawing down to a crawl.
func BenchmarkManyPoints(b *testing.B) {
	for _, n := range []int{200, 20000} {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			for b.Loop() {
				readertest.Bytes(b, write, ring(n), export.Options{})
			}
		})
	}
}

func TestReadRefuses(t *testing.T) {
	var b bytes.Buffer
	if err := png.Encode(&b, image.NewGray(image.Rect(0, 0, 9, 9))); err != nil {
		t.Fatal(err)
	}
	for _, text := range []string{"", "slingloft", b.String(), strings.Repeat("\x00", 100)} {
		if d, err := Read(strings.NewReader(text)); err == nil {
			t.Errorf("%.20q read as %g × %g mm", text, d.Width, d.Height)
		}
	}
}

// FuzzRead reads anything: what is taken for a picture has a size.
func FuzzRead(f *testing.F) {
	f.Add(readertest.Bytes(f, write, readertest.Square(), export.Options{}))
	f.Fuzz(func(t *testing.T, data []byte) {
		d, err := Read(bytes.NewReader(data))
		if err == nil && !(d.Width > 0 && d.Height > 0 && d.Width < 1e13 && d.Height < 1e13) {
			t.Errorf("size %g × %g mm", d.Width, d.Height)
		}
	})
}
