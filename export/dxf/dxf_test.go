package dxf

import (
	"bytes"
	"encoding/json"
	"fmt"
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

// ezdxf audits the file and measures every named line.
func TestAuditAndLengthsByEzdxf(t *testing.T) {
	const script = `
import sys, json, math, ezdxf
from ezdxf import bbox
d = ezdxf.readfile(sys.argv[1])
a = d.audit()
out = {"errors": [e.message for e in a.errors], "fixes": [e.message for e in a.fixes], "version": d.dxfversion,
  "units": d.header["$INSUNITS"], "measurement": d.header["$MEASUREMENT"],
  "limits": list(d.header["$LIMMAX"]), "layers": {}, "lines": {}}
b = bbox.extents(d.modelspace())
out["extents"] = [b.extmin.x, b.extmin.y, b.extmax.x, b.extmax.y]
out["header"] = [*d.header["$EXTMIN"][:2], *d.header["$EXTMAX"][:2]]
for l in d.layers:
    out["layers"][l.dxf.name] = [l.dxf.color, l.dxf.get("true_color", -1), l.dxf.linetype, l.dxf.get("lineweight", -1)]
out["types"] = {l.dxf.name: [t.value for t in l.pattern_tags.tags if t.code == 49] for l in d.linetypes}
for e in d.modelspace():
    p = [(x, y) for x, y in e.get_points("xy")]
    n = sum(math.dist(p[i-1], p[i]) for i in range(0 if e.closed else 1, len(p)))
    name = "".join(v for c, v in e.get_xdata("SLINGLOFT") if c == 1000)
    out["lines"][name] = [n, e.dxf.layer, bool(e.closed), e.dxftype()]
print(json.dumps(out))`
	for _, scale := range scales {
		d := readertest.Drawing(t, scale, readertest.Hostile()[:len(readertest.Hostile())-1]...)
		o := export.Options{Scale: scale}
		file := readertest.File(t, "a.dxf", readertest.Bytes(t, write, d, o))
		var got struct {
			Errors, Fixes           []string
			Version                 string
			Units, Measurement      int
			Limits, Extents, Header []float64
			Layers                  map[string][]any
			Types                   map[string][]float64
			Lines                   map[string][]any
		}
		if err := json.Unmarshal([]byte(readertest.Script(t, "ezdxf", script, file)), &got); err != nil {
			t.Fatal(err)
		}
		if len(got.Errors)+len(got.Fixes) > 0 {
			t.Errorf("audit: errors %v, fixes %v", got.Errors, got.Fixes)
		}
		if got.Version != "AC1018" || got.Units != 4 || got.Measurement != 1 {
			t.Errorf("version %s, units %d, measurement %d", got.Version, got.Units, got.Measurement)
		}
		plain, err := d.Plain(o)
		if err != nil {
			t.Fatal(err)
		}
		box := geom.EmptyBox()
		for _, l := range plain.Lines {
			box = box.Union(l.Points.Bounds())
		}
		for i, want := range []float64{box.Min.X, box.Min.Y, box.Max.X, box.Max.Y} {
			if math.Abs(got.Extents[i]-want) > 0.01 || math.Abs(got.Header[i]-want) > 0.01 {
				t.Errorf("extents %v, header %v, want %v", got.Extents, got.Header, box)
			}
		}
		if math.Abs(got.Limits[0]-plain.Width) > 0.01 || math.Abs(got.Limits[1]-plain.Height) > 0.01 {
			t.Errorf("limits %v, want %g × %g", got.Limits, plain.Width, plain.Height)
		}
		for _, l := range plain.Lines[:len(d.Lines)] {
			row := got.Lines[l.Name]
			if row == nil {
				t.Errorf("line %q not found", l.Name)
			} else if math.Abs(row[0].(float64)-readertest.Length(l)) > 0.01 || row[1] != l.Work.String() || row[2] != l.Closed {
				t.Errorf("line %q read as %v, want %g mm, %s, closed %v", l.Name, row, readertest.Length(l), l.Work, l.Closed)
			}
		}
		for _, bar := range export.Bars() {
			if row := got.Lines[bar.Name]; row == nil || math.Abs(row[0].(float64)-bar.Length*scale) > 0.01 {
				t.Errorf("%s read as %v, want %g mm", bar.Name, row, bar.Length*scale)
			}
		}
		checkLayers(t, got.Layers, got.Types)
	}
}

func checkLayers(t *testing.T, layers map[string][]any, types map[string][]float64) {
	t.Helper()
	for _, w := range piece.Works() {
		s := style.Default().Of(w)
		rgb := float64(int(s.Colour.R)<<16 | int(s.Colour.G)<<8 | int(s.Colour.B))
		row := layers[w.String()]
		if row == nil || row[1] != rgb || row[3] != math.Round(s.Width*100) {
			t.Errorf("layer %s: %v, want true colour %g and width %g mm", w, row, rgb, s.Width)
			continue
		}
		pattern := types[row[2].(string)]
		if len(pattern) != len(s.Dash) {
			t.Errorf("layer %s: line type %v of %v, want %v", w, row[2], pattern, s.Dash)
		}
		for i := range pattern {
			if math.Abs(math.Abs(pattern[i])-s.Dash[i]) > 1e-9 {
				t.Errorf("layer %s: line type %v of %v, want %v", w, row[2], pattern, s.Dash)
			}
		}
	}
}

// GDAL, a second reader, adds up the lines of each layer.
func TestLengthsByGDAL(t *testing.T) {
	d := readertest.Drawing(t, 1)
	file := readertest.File(t, "a.dxf", readertest.Bytes(t, write, d, export.Options{}))
	out := readertest.Run(t, "ogrinfo", "-dialect", "SQLite",
		"-sql", "select Layer, sum(st_length(geometry)) as total from entities group by Layer", file)
	plain, err := d.Plain(export.Options{})
	if err != nil {
		t.Fatal(err)
	}
	for _, w := range piece.Works() {
		want := 0.0
		for _, l := range plain.Lines {
			if l.Work == w {
				want += readertest.Length(l)
			}
		}
		_, rest, ok := strings.Cut(out, "Layer (String) = "+w.String()+"\n")
		var got float64
		if n, _ := fmt.Sscanf(strings.TrimSpace(rest), "total (Real) = %f", &got); !ok || n != 1 {
			t.Fatalf("no layer %s in\n%s", w, out)
		}
		if math.Abs(got-want) > 0.01 {
			t.Errorf("layer %s: lines of %g mm, want %g", w, got, want)
		}
	}
}

func TestLibreCADOpensIt(t *testing.T) {
	folder := t.TempDir()
	file := filepath.Join(folder, "a.dxf")
	data := readertest.Bytes(t, write, readertest.Drawing(t, 1, readertest.Hostile()...), export.Options{})
	if err := os.WriteFile(file, data, 0o644); err != nil {
		t.Fatal(err)
	}
	t.Chdir(folder)
	t.Setenv("QT_QPA_PLATFORM", "offscreen")
	t.Setenv("HOME", folder)
	readertest.Run(t, "librecad", "dxf2pdf", "-a", file)
	pdf, err := os.ReadFile(filepath.Join(folder, "a.pdf"))
	if err != nil || len(pdf) < 5000 {
		t.Errorf("LibreCAD drew %d bytes: %v", len(pdf), err)
	}
}

// With arcs the file is a fraction as long, ezdxf finds nothing amiss, and the
// lines, read back as chords, lie within the tolerance.
func TestArcs(t *testing.T) {
	const tolerance = 0.02
	d := readertest.Drawing(t, 1)
	arcs := func(b *bytes.Buffer, d export.Drawing, o export.Options) error { return WriteArcs(b, d, o, tolerance) }
	data := readertest.Bytes(t, arcs, d, export.Options{})
	const script = `
import sys, ezdxf
d = ezdxf.readfile(sys.argv[1])
a = d.audit()
n = [len(e) for e in d.modelspace() if e.dxf.layer == "cut-outline"]
b = sum(1 for e in d.modelspace() for p in e.get_points("b") if p[0] != 0)
print(len(a.errors), len(a.fixes), max(n), b)`
	var errors, fixes, vertices, bulges int
	if n, _ := fmt.Sscan(readertest.Script(t, "ezdxf", script, readertest.File(t, "a.dxf", data)), &errors, &fixes, &vertices, &bulges); n != 4 {
		t.Fatal("ezdxf says nothing")
	}
	if errors+fixes > 0 || vertices > 30 || bulges < 20 {
		t.Errorf("%d errors, %d fixes, outlines of %d vertices (98 before), %d bulges", errors, fixes, vertices, bulges)
	}
	read, err := Read(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	for i, l := range d.Lines {
		pts := read.Lines[i].Points
		if l.Closed {
			pts = geom.Ring(pts).Closed()
		}
		arc := geom.NewArc(pts)
		for _, p := range l.Points {
			if _, dist := arc.Nearest(p); dist > tolerance+curveTolerance {
				t.Fatalf("line %q: point %v is %g mm from the arcs", l.Name, p, dist)
			}
		}
		if math.Abs(readertest.Length(l)-readertest.Length(read.Lines[i])) > 0.1 {
			t.Errorf("line %q: %g mm, want %g", l.Name, readertest.Length(read.Lines[i]), readertest.Length(l))
		}
	}
	if err := WriteArcs(&bytes.Buffer{}, d, export.Options{}, math.NaN()); err == nil {
		t.Error("a tolerance that is no number was taken")
	}
}

func TestEscapes(t *testing.T) {
	for _, text := range append(readertest.Hostile(), `\U+0041`, `\`, "^", "plain", "é", "\\U+", "\\U+00") {
		e := escaped(text)
		for _, c := range e {
			if c < ' ' || c > '~' {
				t.Errorf("escaped(%q) = %q, not a line of ASCII", text, e)
			}
		}
		if got := unescaped(e); got != export.OneLine(text) {
			t.Errorf("unescaped(escaped(%q)) = %q", text, got)
		}
		for _, part := range inParts(e) {
			if len(part) > 255 || strings.HasSuffix(part, `\U`) || strings.HasSuffix(part, `\`) {
				t.Errorf("part %q", part)
			}
		}
	}
}

// entities wraps entities as a file in the given unit.
func entities(unit int, body string) string {
	words := strings.Fields(fmt.Sprintf("0 SECTION 2 HEADER 9 $INSUNITS 70 %d 0 ENDSEC 0 SECTION %s 0 ENDSEC 0 EOF", unit, body))
	return strings.Join(words, "\n") + "\n"
}

func TestReadForeign(t *testing.T) {
	const e = "2 ENTITIES "
	rows := []struct {
		what   string
		unit   int
		body   string
		length float64
	}{
		{"line in inches", 1, e + "0 LINE 8 0 10 0 20 0 11 3 21 4", 5 * 25.4},
		{"line in cm", 5, e + "0 LINE 10 0 20 0 11 3 21 4", 50},
		{"circle", 4, e + "0 CIRCLE 10 5 20 5 40 20", 2 * math.Pi * 20},
		{"arc across 0°", 4, e + "0 ARC 10 0 20 0 40 20 50 270 51 90", math.Pi * 20},
		{"half circle by bulge 1", 4, e + "0 LWPOLYLINE 90 2 70 0 10 0 20 0 42 1 10 40 20 0", math.Pi * 20},
		{"quarter circle by bulge tan(π/8)", 4, e + "0 LWPOLYLINE 90 2 70 0 10 20 20 0 42 0.414213562373 10 0 20 20", math.Pi / 2 * 20},
		{"closed by bulges", 4, e + "0 LWPOLYLINE 90 2 70 1 10 0 20 0 42 1 10 40 20 0 42 1", 2 * math.Pi * 20},
		{"old polyline", 4, e + "0 POLYLINE 66 1 70 1 0 VERTEX 10 0 20 0 0 VERTEX 10 30 20 0 0 VERTEX 10 30 20 40 0 SEQEND", 120},
		{"text is left out", 4, e + "0 TEXT 10 0 20 0 40 5 1 hello 0 POINT 10 1 20 1", 0},
		{"block, twice as wide and turned", 4, "2 BLOCKS 0 BLOCK 2 a 10 1 20 1 0 LINE 10 1 20 1 11 11 21 1 0 ENDBLK 0 ENDSEC 0 SECTION " + e +
			"0 INSERT 2 a 10 100 20 100 41 2 42 1 50 90", 20},
	}
	for _, r := range rows {
		d, err := Read(strings.NewReader(entities(r.unit, r.body)))
		if err != nil {
			t.Errorf("%s: %v", r.what, err)
			continue
		}
		sum := 0.0
		for _, l := range d.Lines {
			sum += readertest.Length(l)
		}
		if math.Abs(sum-r.length) > 0.03 { // chords within 0.005 mm at these radii
			t.Errorf("%s: lines of %g mm, want %g", r.what, sum, r.length)
		}
	}
	d, err := Read(strings.NewReader(entities(4, rows[len(rows)-1].body)))
	if err != nil || d.Lines[0].Points[0].Dist(geom.Pt(100, 100)) > 1e-9 || d.Lines[0].Points[1].Dist(geom.Pt(100, 120)) > 1e-9 {
		t.Errorf("inserted line at %v, %v", d.Lines, err)
	}
	// A bulge of +1 from left to right turns left, so its arc runs below the chord.
	d, err = Read(strings.NewReader(entities(4, rows[4].body)))
	if err != nil || math.Abs(d.Lines[0].Points.Bounds().Min.Y+20) > 0.01 {
		t.Errorf("half circle reaches %v, %v", d.Lines[0].Points.Bounds(), err)
	}
}

func TestReadRefuses(t *testing.T) {
	loop := "2 BLOCKS 0 BLOCK 2 a 10 0 20 0 0 INSERT 2 a 10 0 20 0 0 INSERT 2 a 10 0 20 0 0 ENDBLK 0 ENDSEC 0 SECTION 2 ENTITIES 0 INSERT 2 a 10 0 20 0"
	rows := []struct{ what, text string }{
		{"nothing", ""},
		{"no pairs", "slingloft\n"},
		{"cut off", "0\nSECTION\n2\nENTITIES\n0\nLINE\n10\n"},
		{"no unit", entities(0, "2 ENTITIES 0 LINE 10 0 20 0 11 1 21 1")},
		{"light years", entities(19, "2 ENTITIES 0 LINE 10 0 20 0 11 1 21 1")},
		{"NaN", entities(4, "2 ENTITIES 0 LINE 10 NaN 20 0 11 1 21 1")},
		{"spline", entities(4, "2 ENTITIES 0 SPLINE 10 0 20 0")},
		{"missing block", entities(4, "2 ENTITIES 0 INSERT 2 a 10 0 20 0")},
		{"block in itself", entities(4, loop)},
		{"vertex chain broken", entities(4, "2 ENTITIES 0 POLYLINE 70 0 0 LINE 10 0 20 0 11 1 21 1")},
	}
	for _, r := range rows {
		if d, err := Read(strings.NewReader(r.text)); err == nil {
			t.Errorf("%s: read as %d lines, want an error", r.what, len(d.Lines))
		}
	}
	if d, err := ReadOutlines(strings.NewReader(rows[3].text), 25.4); err != nil || math.Abs(d.Width-25.4) > 1e-9 {
		t.Errorf("unit given: %g mm wide, %v", d.Width, err)
	}
}

// In inches ezdxf finds the unit and every line at its place; we read it back.
func TestInchesByEzdxf(t *testing.T) {
	const script = `
import sys, ezdxf, ezdxf.bbox
d = ezdxf.readfile(sys.argv[1])
b = ezdxf.bbox.extents(d.modelspace(), flatten=0)
print(len(d.audit().errors), d.header["$INSUNITS"], d.header["$MEASUREMENT"], b.extmin.x, b.extmin.y, b.extmax.x, b.extmax.y)`
	d := readertest.Drawing(t, 1)
	o := export.Options{Inches: true}
	read, plain := readertest.Read(t, write, Read, d, o)
	readertest.Same(t, read, plain, 1e-4)
	var errors, unit, measurement int
	var v [4]float64
	out := readertest.Script(t, "ezdxf", script, readertest.File(t, "a.dxf", readertest.Bytes(t, write, d, o)))
	if _, err := fmt.Sscan(out, &errors, &unit, &measurement, &v[0], &v[1], &v[2], &v[3]); err != nil {
		t.Fatal(err)
	}
	box := geom.EmptyBox()
	for _, l := range plain.Lines {
		box = box.Union(l.Points.Bounds())
	}
	low, high := geom.Pt(v[0], v[1]).Times(25.4), geom.Pt(v[2], v[3]).Times(25.4)
	if errors != 0 || unit != 1 || measurement != 0 || low.Dist(box.Min) > 1e-3 || high.Dist(box.Max) > 1e-3 {
		t.Errorf("%d errors, unit %d, system %d, from %v to %v mm, want %v", errors, unit, measurement, low, high, box)
	}
}

func FuzzRead(f *testing.F) {
	var b bytes.Buffer
	if err := Write(&b, readertest.Square(), export.Options{}); err != nil {
		f.Fatal(err)
	}
	f.Add(b.Bytes())
	f.Add([]byte(entities(4, "2 ENTITIES 0 LWPOLYLINE 90 2 70 1 10 0 20 0 42 1 10 40 20 0 42 -1e5")))
	f.Add([]byte(entities(4, "2 BLOCKS 0 BLOCK 2 a 10 1 20 1 0 ARC 10 1 20 1 40 5 50 1 51 2 0 ENDBLK 0 ENDSEC 0 SECTION 2 ENTITIES 0 INSERT 2 a 10 1 20 1")))
	f.Fuzz(func(t *testing.T, data []byte) {
		d, err := Read(bytes.NewReader(data))
		if err != nil {
			return
		}
		readertest.CheckRead(t, d)
	})
}

// The golden file is small enough to read beside the drawing.
func TestGolden(t *testing.T) {
	readertest.Golden(t, "square.dxf", readertest.Bytes(t, write, readertest.Square(), export.Options{}))
}
