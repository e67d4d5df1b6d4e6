package format_test

import (
	"bytes"
	"math"
	"os"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/format"
	"slingloft/export/readertest"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Every format writes hostile labels and reads back what it says it keeps.
func TestEveryFormatReadsBack(t *testing.T) {
	for _, scale := range []float64{1, 0.2} {
		d := readertest.Drawing(t, scale, readertest.Hostile()...)
		o := export.Options{Scale: scale}
		plain, err := d.Plain(o)
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range usual(t) {
			write := func(b *bytes.Buffer, d export.Drawing, o export.Options) error { return f.Write(b, d, o) }
			read, err := f.Read(bytes.NewReader(readertest.Bytes(t, write, d, o)))
			if err != nil {
				t.Errorf("%s: %v", f.Name, err)
				continue
			}
			if math.Abs(read.Width-plain.Width) > f.Tolerance || math.Abs(read.Height-plain.Height) > f.Tolerance {
				t.Errorf("%s: sheet read as %g × %g, want %g × %g", f.Name, read.Width, read.Height, plain.Width, plain.Height)
			}
			if f.Keeps == export.Size {
				continue
			}
			for _, w := range piece.Works() {
				got, want := lengthOf(read, w), lengthOf(plain, w)
				// Every segment may be off by the tolerance at both ends; by plotter
				// units letters half a millimetre high gain a hundredth.
				if slack := min(2*f.Tolerance*float64(points(plain)), 0.02*want); math.Abs(got-want) > slack {
					t.Errorf("%s: %s read as %g mm, want %g", f.Name, w, got, want)
				}
			}
			if f.Keeps == export.Names {
				readertest.Same(t, read, plain, f.Tolerance)
			}
		}
	}
}

// A machine's program and a divided PDF read back as themselves, written anew, and
// differ from those of another scale.
func TestOwnSettingsReadBack(t *testing.T) {
	d := readertest.Drawing(t, 1)
	for _, row := range []struct{ name, machine string }{
		{"gcode", `tool = "knife"`}, {"pdf", `paper = "A4"`}, {"pattern", ""}, {"dxf", `arcs = "0.05 mm"`},
	} {
		f := codec(t, row.name, readertest.Machine(t, row.machine), "")
		read := func(o export.Options) export.Drawing {
			var b bytes.Buffer
			if err := f.Write(&b, d, o); err != nil {
				t.Fatal(err)
			}
			got, err := f.Read(&b)
			if err != nil {
				t.Fatal(err)
			}
			return got
		}
		first, again, other := read(export.Options{}), read(export.Options{}), read(export.Options{Scale: 0.99})
		cuts := lengthOf(first, piece.CutOut)
		if len(first.Lines) < 4 || cuts < 1260 || lengthOf(again, piece.CutOut) != cuts {
			t.Errorf("%s: %d lines, %g mm of outlines, then %g", row.name, len(first.Lines), cuts, lengthOf(again, piece.CutOut))
		}
		if got := lengthOf(other, piece.CutOut); math.Abs(got-cuts) < 1 {
			t.Errorf("%s: %g mm of outlines at 1:1, %g at 0.99", row.name, cuts, got)
		}
	}
}

func lengthOf(d export.Drawing, w piece.Work) float64 {
	sum := 0.0
	for _, l := range d.Lines {
		if l.Work == w && l.Closed {
			sum += geom.Ring(l.Points).Perimeter()
		} else if l.Work == w {
			sum += l.Points.Length()
		}
	}
	return sum
}

func points(d export.Drawing) int {
	n := 0
	for _, l := range d.Lines {
		n += len(l.Points)
	}
	return n
}

// Whatever cannot be drawn is refused by every format before it writes anything.
func TestEveryFormatRefuses(t *testing.T) {
	line := func(pts ...geom.Point) piece.Line {
		return piece.Line{Name: "x", Work: piece.Mark, Points: pts}
	}
	nan := math.NaN()
	rows := []struct {
		what string
		edit func(d *export.Drawing, o *export.Options)
	}{
		{"NaN point", func(d *export.Drawing, _ *export.Options) {
			d.Lines = append(d.Lines, line(geom.Pt(1, 1), geom.Pt(nan, 1)))
		}},
		{"infinite point", func(d *export.Drawing, _ *export.Options) {
			d.Lines = append(d.Lines, line(geom.Pt(1, 1), geom.Pt(math.Inf(1), 1)))
		}},
		{"point off the sheet", func(d *export.Drawing, _ *export.Options) {
			d.Lines = append(d.Lines, line(geom.Pt(1, 1), geom.Pt(-1, 1)))
		}},
		{"line of one point", func(d *export.Drawing, _ *export.Options) { d.Lines = append(d.Lines, line(geom.Pt(1, 1))) }},
		{"unknown work", func(d *export.Drawing, _ *export.Options) { d.Lines[0].Work = 99 }},
		{"no size", func(d *export.Drawing, _ *export.Options) { d.Width = 0 }},
		{"NaN size", func(d *export.Drawing, _ *export.Options) { d.Height = nan }},
		{"label NaN high", func(d *export.Drawing, _ *export.Options) { d.Labels[0].Height = nan }},
		{"label off the sheet", func(d *export.Drawing, _ *export.Options) { d.Labels[0].At.X = d.Width + 1 }},
		{"scale NaN", func(_ *export.Drawing, o *export.Options) { o.Scale = nan }},
		{"scale negative", func(_ *export.Drawing, o *export.Options) { o.Scale = -1 }},
		{"correction by a half", func(_ *export.Drawing, o *export.Options) { o.Correct[1] = 0.5 }},
	}
	for _, f := range usual(t) {
		for _, r := range rows {
			d, o := readertest.Square(), export.Options{}
			r.edit(&d, &o)
			var b bytes.Buffer
			if err := f.Write(&b, d, o); err == nil || b.Len() > 0 {
				t.Errorf("%s, %s: %d bytes written, error %v", f.Name, r.what, b.Len(), err)
			}
		}
	}
}

// A disk that is full is reported by every format.
func TestEveryFormatReportsAFullDisk(t *testing.T) {
	f, err := os.OpenFile("/dev/full", os.O_WRONLY, 0)
	if err != nil {
		t.Skip("no /dev/full here")
	}
	defer f.Close()
	for _, c := range usual(t) {
		if err := c.Write(f, readertest.Square(), export.Options{}); err == nil {
			t.Errorf("%s: no error from a full disk", c.Name)
		}
	}
}

// Lines thinned to 0.05 mm make smaller files that read back as what was to be
// written.
func TestThinned(t *testing.T) {
	d := readertest.Drawing(t, 1)
	for _, f := range usual(t) {
		var full, thin bytes.Buffer
		o := export.Options{Thin: 0.05}
		if err := f.Write(&full, d, export.Options{}); err != nil {
			t.Fatal(err)
		}
		if err := f.Write(&thin, d, o); err != nil {
			t.Fatal(err)
		}
		if f.Keeps > export.Size && thin.Len() >= full.Len() {
			t.Errorf("%s: %d bytes thinned, %d before", f.Name, thin.Len(), full.Len())
		}
		if f.Keeps < export.Names {
			continue
		}
		plain, err := d.Plain(o)
		if err != nil {
			t.Fatal(err)
		}
		read, err := f.Read(&thin)
		if err != nil {
			t.Fatal(err)
		}
		readertest.Same(t, read, plain, f.Tolerance)
	}
}

func TestNamed(t *testing.T) {
	endings := map[string]bool{}
	for _, f := range format.All() {
		got, err := format.Named(f.Name)
		if err != nil || got.Ending != f.Ending || endings[f.Ending] {
			t.Errorf("Named(%q) = %q, %v", f.Name, got.Ending, err)
		}
		endings[f.Ending] = true
	}
	if _, err := format.Named("bmp"); err == nil || !strings.Contains(err.Error(), "svg") {
		t.Errorf("Named(bmp): %v", err)
	}
}

func TestOfFile(t *testing.T) {
	for _, row := range []struct{ file, stem, format string }{
		{"cloth-lay.svg", "cloth-lay", "svg"},
		{"cloth-lay.dxf", "cloth-lay", "dxf"},
		{"cloth-lay.pattern.dxf", "cloth-lay", "pattern"},
		{"a.svg.ngc", "a.svg", "gcode"},
		{".svg", "", "svg"},
		{"cloth-lay.bmp", "cloth-lay.bmp", ""},
		{"svg", "svg", ""},
		{"", "", ""},
	} {
		stem, f, ok := format.OfFile(row.file)
		if stem != row.stem || f.Name != row.format || ok != (row.format != "") {
			t.Errorf("OfFile(%q) = %q, %q, %v; want %q, %q", row.file, stem, f.Name, ok, row.stem, row.format)
		}
	}
}
