package hpgl

import (
	"bytes"
	"fmt"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/readertest"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

func write(b *bytes.Buffer, d export.Drawing, o export.Options) error {
	return WriteFor(b, d, o, Plot{})
}

// tolerance is half a plotter unit along both axes.
const tolerance = 0.0125 * math.Sqrt2

// Every line comes back, in the same kind of work and within half a unit, and
// the kinds come in their order.
func TestReadBack(t *testing.T) {
	for _, scale := range []float64{1, 0.2} {
		d := readertest.Drawing(t, scale, readertest.Hostile()...)
		o := export.Options{Scale: scale, Correct: [2]float64{1.004, 0.998}}
		read, plain := readertest.Read(t, write, Read, d, o)
		if geom.Pt(read.Width, read.Height).Dist(geom.Pt(plain.Width, plain.Height)) > tolerance {
			t.Errorf("sheet of %g × %g mm, want %g × %g", read.Width, read.Height, plain.Width, plain.Height)
		}
		for i := 1; i < len(read.Lines); i++ {
			if read.Lines[i].Work < read.Lines[i-1].Work {
				t.Fatalf("%s after %s", read.Lines[i].Work, read.Lines[i-1].Work)
			}
		}
		if len(read.Lines) != len(plain.Lines) {
			t.Fatalf("%d lines read, want %d", len(read.Lines), len(plain.Lines))
		}
		checkCovered(t, plain.Lines, read.Lines)
		checkCovered(t, read.Lines, plain.Lines)
	}
}

// checkCovered fails where a point of the lines is not on any of the others of
// the same work.
func checkCovered(t *testing.T, lines, others []piece.Line) {
	t.Helper()
	type curve struct {
		arc geom.Arc
		box geom.Box
	}
	curves := map[piece.Work][]curve{}
	for _, l := range others {
		pts := l.Points
		if l.Closed {
			pts = geom.Ring(pts).Closed()
		}
		curves[l.Work] = append(curves[l.Work], curve{geom.NewArc(pts), pts.Bounds().Expanded(2 * tolerance)})
	}
	for _, l := range lines {
		for _, p := range l.Points {
			best := math.Inf(1)
			for _, c := range curves[l.Work] {
				if c.box.Contains(p) {
					_, d := c.arc.Nearest(p)
					best = math.Min(best, d)
				}
			}
			if best > tolerance+1e-9 {
				t.Fatalf("%s: point %v of %q is %g mm from the nearest line", l.Work, p, l.Name, best)
			}
		}
	}
}

// hp2xx, a reader that is not ours, follows every instruction and draws the
// outlines where they belong.
func TestOutlinesByHP2XX(t *testing.T) {
	for _, scale := range []float64{1, 0.2} {
		d := readertest.Drawing(t, scale, readertest.Hostile()[:4]...)
		o := export.Options{Scale: scale}
		plain, err := d.Plain(o)
		if err != nil {
			t.Fatal(err)
		}
		file := readertest.File(t, "a.plt", readertest.Bytes(t, write, d, o))
		out := readertest.RunBoth(t, "hp2xx", "-t", "-m", "svg", "-f", file+".svg", file)
		_, rest, _ := strings.Cut(out, "height:")
		var w, h float64
		fmt.Sscanf(strings.TrimSpace(rest), "%f x %f mm", &w, &h)
		if math.Abs(w-plain.Width) > 0.025 || math.Abs(h-plain.Height) > 0.025 || !strings.Contains(out, "ignored: 0") {
			t.Errorf("hp2xx measures %g × %g mm, want %g × %g:\n%s", w, h, plain.Width, plain.Height, out)
		}
		drawn := drawnBy(t, file+".svg", plain.Height)
		for _, l := range plain.Lines {
			if l.Work != piece.CutOut && l.Work != piece.CutInside && !strings.HasPrefix(l.Name, "bar-") {
				continue
			}
			if !found(drawn, l) {
				t.Errorf("hp2xx does not draw %q of %g mm at %v", l.Name, readertest.Length(l), l.Points.Bounds())
			}
		}
	}
}

// drawnBy reads the lines that hp2xx has drawn: in points, y downwards, and cut
// into pieces of ten segments, which are joined here.
func drawnBy(t *testing.T, file string, height float64) []geom.Polyline {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	const mm = 25.4 / 72
	var out []geom.Polyline
	for _, path := range strings.Split(string(data), "<path d=\"")[1:] {
		text, _, _ := strings.Cut(path, `"`)
		words := strings.Fields(strings.NewReplacer("M", " ", "L", " ", ",", " ").Replace(text))
		var l geom.Polyline
		for i := 0; i+1 < len(words); i += 2 {
			x, errX := strconv.ParseFloat(words[i], 64)
			y, errY := strconv.ParseFloat(words[i+1], 64)
			if errX != nil || errY != nil {
				t.Fatalf("path %q", text)
			}
			l = append(l, geom.Pt(x*mm, height-y*mm))
		}
		if n := len(out); n > 0 && out[n-1][len(out[n-1])-1] == l[0] {
			out[n-1] = append(out[n-1], l[1:]...)
		} else {
			out = append(out, l)
		}
	}
	return out
}

// found reports whether one of the drawn lines has the extent and the length of l.
func found(drawn []geom.Polyline, l piece.Line) bool {
	box := l.Points.Bounds()
	for _, p := range drawn {
		b := p.Bounds()
		if b.Min.Dist(box.Min) < 0.025 && b.Max.Dist(box.Max) < 0.025 && math.Abs(p.Length()-readertest.Length(l)) < 0.05 {
			return true
		}
	}
	return false
}

// Nothing of a label's text gets into the file.
func TestOnlyOurInstructions(t *testing.T) {
	data := string(readertest.Bytes(t, write, readertest.Drawing(t, 1, readertest.Hostile()...), export.Options{}))
	for _, line := range strings.Split(strings.TrimSpace(data), "\n") {
		bare := strings.TrimRight(line, ";")
		if len(bare) < 2 || !strings.Contains("IN PS PA SP PU PD", bare[:2]) || strings.Trim(bare[2:], "0123456789,") != "" {
			t.Fatalf("line %q", line)
		}
	}
}

// A plotter that counts from the upper right corner, with its axes called the other
// way round, gets other numbers for the same picture.
func TestAxes(t *testing.T) {
	d := readertest.Drawing(t, 1)
	o := export.Options{Axes: export.Axes{Origin: design.UpperRight, XLeft: true, Swap: true}}
	read, plain := readertest.Read(t, write, Read, d, o)
	if math.Abs(read.Width-d.Height) > 0.025 || math.Abs(read.Height-d.Width) > 0.025 {
		t.Errorf("plot of %g × %g mm, want %g × %g", read.Width, read.Height, d.Height, d.Width)
	}
	for i, l := range read.Lines {
		for k, p := range l.Points { // y is what was x, to the left; x is what was y, from the top
			read.Lines[i].Points[k] = geom.Pt(d.Width-p.Y, p.X+d.Height)
		}
	}
	checkCovered(t, plain.Lines, read.Lines)
}

func TestBeyond16Bits(t *testing.T) {
	d := readertest.Square()
	for _, r := range []struct {
		width, scale float64
		want         bool
	}{{819, 1, false}, {819.3, 1, true}, {4000, 0.2, false}} {
		d.Width = r.width
		if got := Beyond16Bits(d, export.Options{Scale: r.scale}); got != r.want {
			t.Errorf("%g mm at %g: %v, want %v", r.width, r.scale, got, r.want)
		}
	}
}

func TestReadRefuses(t *testing.T) {
	for _, text := range []string{"", "slingloft", "IN;PS100", "IN;PS100,100;AA0,0,90;", "IN;PS100,100;PU1;", "IN;PS100,100;PD1e9,1;",
		"IN;PS9999999999,100;", "IN;PS0,0;", "IN;PS100,100;PR1,1;", "IN;PS100,100;SC0,1,0,1;", "IN;PS1-2,4;"} {
		if d, err := Read(strings.NewReader(text)); err == nil {
			t.Errorf("%q read as %d lines on %g × %g mm", text, len(d.Lines), d.Width, d.Height)
		}
	}
	d, err := Read(strings.NewReader("IN;PS400,400;SP3;LBPD1,1;\x03PU0,0;PD40,0,40,40,0,0;PU;"))
	if err != nil || len(d.Lines) != 1 || !d.Lines[0].Closed || d.Lines[0].Work != piece.Mark || d.Width != 10 {
		t.Errorf("file with a label read as %+v, %v", d, err)
	}
}

func FuzzRead(f *testing.F) {
	f.Add("IN;PS400,400;SP3;LBPD1,1;\x03PU0,0;PD40,0,40,40,0,0;PU;")
	f.Fuzz(func(t *testing.T, text string) {
		d, err := Read(strings.NewReader(text))
		if err != nil {
			return
		}
		readertest.CheckRead(t, d)
	})
}

func TestGolden(t *testing.T) {
	readertest.Golden(t, "square.plt", readertest.Bytes(t, write, readertest.Square(), export.Options{}))
}
