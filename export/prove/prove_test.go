package prove

import (
	"bytes"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/format"
	"slingloft/export/readertest"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// way is a format as it is set up for a machine.
type way struct {
	export.Format
	export.Codec
	machine string // what is set, for messages
}

func (w way) String() string { return w.Name + " " + w.machine }

// sheet is what a file should hold that is written in this way.
func (w way) sheet(d export.Drawing, o export.Options) Sheet { return Sheet{d, o, w.Format, w.Codec} }

// set returns the format of a name for a machine.
func set(t testing.TB, name, machine string) way {
	t.Helper()
	f, err := format.Named(name)
	if err != nil {
		t.Fatal(err)
	}
	m, _, err := design.ReadMachine("m.toml", []byte("[machine]\n"+machine))
	if err != nil {
		t.Fatal(err)
	}
	c, err := f.SetUp(readertest.WithJobs(m, "card"), export.Material{Name: "card", Stock: piece.Board, Thickness: 3})
	if err != nil {
		t.Fatal(err)
	}
	return way{f, c, machine}
}

// ways are all formats, and those for machines of their own.
func ways(t testing.TB) []way {
	var out []way
	for _, name := range format.Names() {
		out = append(out, set(t, name, ""))
	}
	const router = `tool = "router"
kerf = "2 mm"
lead = "3 mm"
tabs = 2
tab_width = "3 mm"
tab_height = "1 mm"`
	return append(out, set(t, "gcode", `tool = "knife"`), set(t, "gcode", router),
		set(t, "pdf", `paper = "A4"`), set(t, "dxf", `arcs = "0.02 mm"`))
}

// sample is the common sheet without its lettering, which is slow to order for
// short travel.
func sample(t *testing.T, scale float64) export.Drawing {
	d := readertest.Drawing(t, scale)
	d.Labels = d.Labels[:1]
	return d
}

func written(t *testing.T, f way, d export.Drawing, o export.Options) []byte {
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
		t.Fatalf("%s: %v", s.Format.Name, err)
	}
	if n := strings.Count(r.Text(export.English()), "\n"); n > 0 {
		t.Errorf("%s: report of %d lines", s.Format.Name, n+1)
	}
	return r
}

func TestUntouchedFilesAgree(t *testing.T) {
	for _, scale := range []float64{1, 0.2} {
		for _, f := range ways(t) {
			d := sample(t, scale)
			if f.Keeps == export.Names {
				d = readertest.Drawing(t, scale, readertest.Hostile()...)
			}
			o := export.Options{Scale: scale, Correct: [2]float64{1.004, 0.998}}
			r := proved(t, written(t, f, d, o), f.sheet(d, o))
			least := 6
			if f.PiecesOnly {
				least = 4 // notches are points there
			}
			if !r.Agrees() || r.Worst > f.Tolerance || (r.Lines < least) != (f.Keeps == export.Size) {
				t.Errorf("%s at %g: %v; %d lines, worst %g", f, scale, r, r.Lines, r.Worst)
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
		keeps export.Keeping
		piece bool // it concerns the pieces, which are all that a pattern holds
		edit  func(d *export.Drawing, o *export.Options)
		tell  string
	}{
		{"rescaled by 0.5 %", export.Size, true, func(_ *export.Drawing, o *export.Options) { o.Scale = 1.005 }, "sheet of"},
		{"rescaled along y", export.Lines, true, func(_ *export.Drawing, o *export.Options) { o.Correct[1] = 1.005 }, ""},
		{"a vertex moved by 0.3 mm", export.Lines, true, func(d *export.Drawing, _ *export.Options) {
			cut(*d).Points[20].Y += 0.3
		}, "by 0.3"},
		{"a notch deleted", export.Lines, true, func(d *export.Drawing, _ *export.Options) {
			for i, l := range d.Lines {
				if l.Name == "sling-1/notch" {
					d.Lines = append(d.Lines[:i:i], d.Lines[i+1:]...)
					return
				}
			}
			t.Fatal("no notch")
		}, "missing"},
		{"a line added", export.Lines, false, func(d *export.Drawing, _ *export.Options) {
			d.Lines = append(d.Lines, piece.Line{Name: "doodle", Work: piece.Mark, Points: geom.Polyline{{X: 300, Y: 300}, {X: 310, Y: 300}}})
		}, "not due"},
		// In a pattern for exchange an open cut is an internal line, as a fold is.
		{"a fold made a cut", export.Lines, false, func(d *export.Drawing, _ *export.Options) {
			for i, l := range d.Lines {
				if l.Name == "sling-1/fold" {
					d.Lines[i].Work = piece.CutInside
				}
			}
		}, ""},
		{"an outline opened", export.Lines, true, func(d *export.Drawing, _ *export.Options) { cut(*d).Closed = false }, ""},
		{"an outline left out", export.Size, false, func(d *export.Drawing, _ *export.Options) {
			d.Lines = d.Lines[:len(d.Lines)-1]
		}, ""},
	}
	for _, f := range ways(t) {
		for _, row := range rows {
			if f.Keeps < row.keeps || f.PiecesOnly && !row.piece {
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
			r := proved(t, written(t, f, changed, o), f.sheet(d, export.Options{}))
			if r.Agrees() || (f.Keeps == export.Names && f.Name != "pdf" && !strings.Contains(r.Text(export.English()), row.tell)) {
				t.Errorf("%s, %s: %v, want it told of %q", f, row.what, r, row.tell)
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
		f := set(t, row.format, "")
		data := written(t, f, d, export.Options{})
		edited := regexp.MustCompile(row.from).ReplaceAll(data, []byte(row.to))
		if bytes.Equal(data, edited) {
			t.Errorf("%s: %s does not occur", row.format, row.from)
		}
		if r := proved(t, edited, f.sheet(d, export.Options{})); r.Agrees() || !strings.Contains(r.Text(export.English()), "layer") && row.from != "work mark" {
			t.Errorf("%s, %s renamed: %v", row.format, row.from, r)
		}
	}
	f := set(t, "pdf", "")
	data := written(t, f, d, export.Options{})
	edited := bytes.Replace(data, []byte("\x00s\x00c\x00o\x00r\x00e"), []byte("\x00f\x00o\x00l\x00d\x00s"), 1)
	if r := proved(t, edited, f.sheet(d, export.Options{})); bytes.Equal(data, edited) || r.Agrees() {
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
		f := set(t, name, "")
		if r := proved(t, written(t, f, again, export.Options{}), f.sheet(d, export.Options{})); !r.Agrees() {
			t.Errorf("%s: %v", name, r)
		}
	}
}

// What cannot be read is an error, whatever the bytes.
func TestUnreadable(t *testing.T) {
	d := readertest.Square()
	for _, f := range ways(t) {
		whole := written(t, f, d, export.Options{})
		for _, data := range [][]byte{nil, []byte("not a drawing"), []byte("\x00\xff\x00")} {
			if r, err := File(data, f.sheet(d, export.Options{})); err == nil {
				t.Errorf("%s, %q: %v", f, data, r)
			}
		}
		for n := range 40 {
			cut := whole[:len(whole)*n/40]
			if r, err := File(cut, f.sheet(d, export.Options{})); err == nil && r.Agrees() {
				t.Errorf("%s, %d of %d bytes: %v", f, len(cut), len(whole), r)
			}
		}
	}
}

func TestReportIsShort(t *testing.T) {
	var r Report
	for i := range 50 {
		r.fault(export.LinesCounted, i)
	}
	if got, want := r.Text(export.English()), "does not agree: 0 lines; 1 lines; 2 lines; 3 lines; 4 lines; 45 more"; got != want {
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
	f := set(t, "dxf", "")
	in := readertest.File(t, "a.dxf", written(t, f, d, export.Options{}))
	for _, row := range []struct{ factor, want string }{{"1", "agrees: "}, {"1.005", "rescaled to 100.500 % along x and 100.500 % along y"}} {
		out := filepath.Join(t.TempDir(), "b.dxf")
		readertest.Script(t, "ezdxf", script, in, out, row.factor)
		data, err := os.ReadFile(out)
		if err != nil {
			t.Fatal(err)
		}
		if r := proved(t, data, f.sheet(d, export.Options{})); !strings.Contains(r.Text(export.English()), row.want) {
			t.Errorf("scaled by %s: %v", row.factor, r)
		}
	}
}
