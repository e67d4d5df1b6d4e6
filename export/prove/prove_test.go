package prove

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/format"
	"slingloft/export/gcode"
	"slingloft/export/readertest"
	"slingloft/export/tile"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// formats are all formats, and those with settings of their own.
func formats() []format.Format {
	knife := gcode.Defaults(gcode.Knife)
	router := gcode.Defaults(gcode.Router)
	router.Kerf, router.Lead, router.Tabs, router.TabWidth, router.TabHeight = 2, 3, 2, 3, 1
	return append(format.All(), format.Machine(knife), format.Machine(router), format.Tiled(tile.Papers()[0]), format.Arcs(0.02), format.Pattern())
}

// sample is the common sheet without its lettering, which is slow to order for
// short travel.
func sample(t *testing.T, scale float64) export.Drawing {
	d := readertest.Drawing(t, scale)
	d.Labels = d.Labels[:1]
	return d
}

func written(t *testing.T, f format.Format, d export.Drawing, o export.Options) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := f.Write(&b, d, o); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func proved(t *testing.T, data []byte, s Sheet) Report {
	t.Helper()
	r, err := File(data, s)
	if err != nil {
		t.Fatalf("%s: %v", s.Format.About, err)
	}
	if n := strings.Count(r.String(), "\n"); n > 0 {
		t.Errorf("%s: report of %d lines", s.Format.About, n+1)
	}
	return r
}

func TestUntouchedFilesAgree(t *testing.T) {
	for _, scale := range []float64{1, 0.2} {
		for _, f := range formats() {
			d := sample(t, scale)
			if f.Keeps == format.Names {
				d = readertest.Drawing(t, scale, readertest.Hostile()...)
			}
			o := export.Options{Scale: scale, Correct: [2]float64{1.004, 0.998}}
			r := proved(t, written(t, f, d, o), Sheet{d, o, f})
			if !r.Agrees() || r.Worst > f.Tolerance || (r.Lines < 6) != (f.Keeps == format.Size) {
				t.Errorf("%s at %g: %v; %d lines, worst %g", f.About, scale, r, r.Lines, r.Worst)
			}
		}
	}
}

// Whatever is changed by hand in a file is found where the format keeps it; a
// file that was changed is what is written of a changed drawing.
func TestChangedFilesDoNot(t *testing.T) {
	d := sample(t, 1)
	cut := func(d export.Drawing) *piece.Line {
		for i, l := range d.Lines {
			if l.Name == "sling-1/cut line" {
				return &d.Lines[i]
			}
		}
		t.Fatal("no cut line")
		return nil
	}
	rows := []struct {
		what  string
		keeps format.Keeping
		piece bool // it concerns the pieces, which are all that a pattern holds
		edit  func(d *export.Drawing, o *export.Options)
		tell  string
	}{
		{"rescaled by 0.5 %", format.Size, true, func(_ *export.Drawing, o *export.Options) { o.Scale = 1.005 }, "sheet of"},
		{"rescaled along y", format.Lines, true, func(_ *export.Drawing, o *export.Options) { o.Correct[1] = 1.005 }, ""},
		{"a vertex moved by 0.3 mm", format.Lines, true, func(d *export.Drawing, _ *export.Options) {
			cut(*d).Points[20].Y += 0.3
		}, "by 0.3"},
		{"a notch deleted", format.Lines, true, func(d *export.Drawing, _ *export.Options) {
			for i, l := range d.Lines {
				if l.Name == "sling-1/notch" {
					d.Lines = append(d.Lines[:i:i], d.Lines[i+1:]...)
					return
				}
			}
			t.Fatal("no notch")
		}, "missing"},
		{"a line added", format.Lines, false, func(d *export.Drawing, _ *export.Options) {
			d.Lines = append(d.Lines, piece.Line{Name: "doodle", Work: piece.Mark, Points: geom.Polyline{{X: 300, Y: 300}, {X: 310, Y: 300}}})
		}, "not due"},
		{"a fold made a cut", format.Lines, true, func(d *export.Drawing, _ *export.Options) {
			for i, l := range d.Lines {
				if l.Name == "sling-1/fold" {
					d.Lines[i].Work = piece.CutInside
				}
			}
		}, ""},
		{"an outline opened", format.Lines, true, func(d *export.Drawing, _ *export.Options) { cut(*d).Closed = false }, ""},
		{"an outline left out", format.Size, false, func(d *export.Drawing, _ *export.Options) {
			d.Lines = d.Lines[:len(d.Lines)-1]
		}, ""},
	}
	for _, f := range formats() {
		for _, row := range rows {
			if f.Keeps < row.keeps || f.Name == "pattern" && !row.piece {
				continue
			}
			changed := d
			changed.Lines = nil
			for _, l := range d.Lines {
				l.Points = append(geom.Polyline(nil), l.Points...)
				changed.Lines = append(changed.Lines, l)
			}
			var o export.Options
			row.edit(&changed, &o)
			r := proved(t, written(t, f, changed, o), Sheet{d, export.Options{}, f})
			if r.Agrees() || (f.Keeps == format.Names && f.Name != "pdf" && !strings.Contains(r.String(), row.tell)) {
				t.Errorf("%s, %s: %v, want it told of %q", f.About, row.what, r, row.tell)
			}
		}
	}
}

// A layer, pen or kind of work renamed in the file itself, even to one that the
// readers take for the same, is found.
func TestLayersRenamed(t *testing.T) {
	d := sample(t, 1)
	for _, row := range []struct{ format, from, to string }{
		{"svg", `id="cut-outline"`, `id="layer-1"`},
		{"svg", `id="mark"`, `id="notches"`},
		{"dxf", "(?m)^cut-outline$", "0"},
		{"dxf", "(?m)^score$", "CREASE"},
		{"hpgl", "SP7;", "SP8;"},
		{"gcode", "work cut-outline", "work cut"},
	} {
		f, err := format.Named(row.format)
		if err != nil {
			t.Fatal(err)
		}
		data := written(t, f, d, export.Options{})
		edited := regexp.MustCompile(row.from).ReplaceAll(data, []byte(row.to))
		if bytes.Equal(data, edited) {
			t.Errorf("%s: %s does not occur", row.format, row.from)
		}
		if r := proved(t, edited, Sheet{d, export.Options{}, f}); r.Agrees() || !strings.Contains(r.String(), "layer") && row.from != "work mark" {
			t.Errorf("%s, %s renamed: %v", row.format, row.from, r)
		}
	}
	f, _ := format.Named("pdf")
	data := written(t, f, d, export.Options{})
	edited := bytes.Replace(data, []byte("\x00s\x00c\x00o\x00r\x00e"), []byte("\x00f\x00o\x00l\x00d\x00s"), 1)
	if r := proved(t, edited, Sheet{d, export.Options{}, f}); bytes.Equal(data, edited) || r.Agrees() {
		t.Errorf("pdf, layer renamed: %v", r)
	}
}

// A file that another program has saved with points in another order, or with more
// points on the same lines, agrees.
func TestSavedAgain(t *testing.T) {
	d := sample(t, 1)
	again := d
	again.Lines = nil
	for i, l := range d.Lines {
		pts := geom.Polyline{}
		for k, p := range l.Points {
			pts = append(pts, p)
			if k+1 < len(l.Points) {
				pts = append(pts, p.Towards(l.Points[k+1], 0.3))
			}
		}
		if l.Closed && i%2 == 0 {
			pts = append(pts[3:], pts[:3]...)
		} else {
			pts = pts.Reversed()
		}
		l.Points = pts
		again.Lines = append(again.Lines, l)
	}
	for _, name := range []string{"svg", "dxf", "pdf"} {
		f, err := format.Named(name)
		if err != nil {
			t.Fatal(err)
		}
		if r := proved(t, written(t, f, again, export.Options{}), Sheet{d, export.Options{}, f}); !r.Agrees() {
			t.Errorf("%s: %v", name, r)
		}
	}
}

// What cannot be read is an error, whatever the bytes.
func TestUnreadable(t *testing.T) {
	d := readertest.Square()
	for _, f := range formats() {
		whole := written(t, f, d, export.Options{})
		for _, data := range [][]byte{nil, []byte("not a drawing"), []byte("\x00\xff\x00")} {
			if r, err := File(data, Sheet{d, export.Options{}, f}); err == nil {
				t.Errorf("%s, %q: %v", f.About, data, r)
			}
		}
		for n := range 40 {
			cut := whole[:len(whole)*n/40]
			if r, err := File(cut, Sheet{d, export.Options{}, f}); err == nil && r.Agrees() {
				t.Errorf("%s, %d of %d bytes: %v", f.About, len(cut), len(whole), r)
			}
		}
	}
}

func TestReportIsShort(t *testing.T) {
	var r Report
	for i := range 50 {
		r.fault("fault %d", i)
	}
	if got, want := r.String(), fmt.Sprintf("does not agree: %s; 45 more", strings.Join(r.Faults[:5], "; ")); got != want {
		t.Errorf("got %q", got)
	}
}

// A DXF file that ezdxf has read and saved agrees; one that it has scaled does not.
func TestSavedByAnotherProgram(t *testing.T) {
	const script = `
import sys, ezdxf
doc = ezdxf.readfile(sys.argv[1])
k = float(sys.argv[3])
for e in doc.modelspace():
    if k != 1: e.scale(k, k, k)
doc.saveas(sys.argv[2])
`
	d := readertest.Drawing(t, 1)
	f, err := format.Named("dxf")
	if err != nil {
		t.Fatal(err)
	}
	in := readertest.File(t, "a.dxf", written(t, f, d, export.Options{}))
	for _, row := range []struct{ factor, want string }{{"1", "agrees: "}, {"1.005", "rescaled to 100.500 % along x and 100.500 % along y"}} {
		out := filepath.Join(t.TempDir(), "b.dxf")
		readertest.Script(t, "ezdxf", script, in, out, row.factor)
		data, err := os.ReadFile(out)
		if err != nil {
			t.Fatal(err)
		}
		if r := proved(t, data, Sheet{d, export.Options{}, f}); !strings.Contains(r.String(), row.want) {
			t.Errorf("scaled by %s: %v", row.factor, r)
		}
	}
}
