package dxf

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"testing"

	"slingloft/export"
	"slingloft/export/readertest"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

func writePattern(b *bytes.Buffer, d export.Drawing, o export.Options) error {
	return WritePattern(b, d, o, export.Material{Name: "ripstop 64 g/m²", Stock: piece.Cloth})
}

// exchanged is what ezdxf says of a pattern file.
type exchanged struct {
	Errors, Inserts, Text []string
	Unit                  int
	Layers                map[string][2]float64 // length in the file's unit, number of entities
	Dots, Vertices        int                   // points on layers 2 and 3; vertices that they are for
	Grain                 []float64             // lengths of the lines on layer 7
	Open                  int                   // polylines on layer 11 that are not closed
	Notches               [][2]float64
}

func exchange(t *testing.T, data []byte) exchanged {
	t.Helper()
	const script = `
import sys, json, math, ezdxf
d = ezdxf.readfile(sys.argv[1])
a = d.audit()
out = {"errors": [e.message for e in a.errors], "inserts": [e.dxf.name for e in d.modelspace().query("INSERT")], "layers": {}, "text": [],
  "unit": d.header["$INSUNITS"], "dots": 0, "vertices": 0, "grain": [], "open": 0, "notches": []}
for name in out["inserts"]:
    for e in d.blocks[name]:
        n, k = out["layers"].get(e.dxf.layer, [0, 0])
        if e.dxftype() == "POLYLINE":
            p = [v.dxf.location for v in e.vertices]
            n += sum(p[i-1].distance(p[i]) for i in range(0 if e.is_closed else 1, len(p)))
            if e.dxf.layer in ("1", "11", "14"): out["vertices"] += len(p)
            if e.dxf.layer == "11" and not e.is_closed: out["open"] += 1
        if e.dxftype() == "LINE":
            n += e.dxf.start.distance(e.dxf.end)
            if e.dxf.layer == "7": out["grain"].append(e.dxf.start.distance(e.dxf.end))
        if e.dxftype() == "TEXT":
            out["text"].append(e.dxf.text)
        if e.dxftype() == "POINT" and e.dxf.layer in ("2", "3"): out["dots"] += 1
        if e.dxftype() == "POINT" and e.dxf.layer == "4": out["notches"].append([e.dxf.location.x, e.dxf.location.y])
        out["layers"][e.dxf.layer] = [n, k + 1]
print(json.dumps(out))`
	for i, c := range data {
		if c > '~' || (c < ' ' && c != '\n') {
			t.Fatalf("byte %d is %#x, not plain ASCII", i, c)
		}
	}
	var got exchanged
	if err := json.Unmarshal([]byte(readertest.Script(t, "ezdxf", script, readertest.File(t, "a.dxf", data))), &got); err != nil {
		t.Fatal(err)
	}
	return got
}

// ezdxf audits the file and finds one block for the piece, everything on its
// numbered layer, and the boundary as long as it is, in mm and in inches.
func TestPatternByEzdxf(t *testing.T) {
	d := readertest.Drawing(t, 1)
	for _, inches := range []bool{false, true} {
		unit := map[bool]float64{false: 1, true: 25.4}[inches]
		got := exchange(t, readertest.Bytes(t, writePattern, d, export.Options{Inches: inches}))
		if len(got.Errors) > 0 || len(got.Inserts) != 1 || got.Inserts[0] != "SLING" || got.Unit != map[bool]int{false: 4, true: 1}[inches] {
			t.Fatalf("errors %v, blocks %v, unit %d", got.Errors, got.Inserts, got.Unit)
		}
		sling := readertest.Sling()
		for layer, w := range map[string][2]float64{
			"1":  {sling.Cut.Perimeter(), 5}, // with four texts
			"4":  {0, 2},
			"7":  {0, 1},
			"8":  {320, 1},
			"11": {sling.Holes[0].Perimeter(), 1},
			"14": {320, 1},
			"15": {0, 2},
		} {
			// What is left out of the curves shortens them by less than this.
			if g := got.Layers[layer]; layer != "7" && math.Abs(g[0]*unit-w[0]) > 0.05 || g[1] != w[1] {
				t.Errorf("layer %s has %g mm in %g entities, want %g in %g", layer, g[0]*unit, g[1], w[0], w[1])
			}
		}
		if len(got.Layers) != 9 {
			t.Errorf("layers %v", got.Layers)
		}
		// Of the boundary and the hole; the seam is a straight line.
		if got.Dots != got.Vertices || got.Vertices > len(sling.Cut)+len(sling.Holes[0]) || len(got.Grain) != 1 || got.Open > 0 {
			t.Errorf("%d points for %d vertices, grain lines %v, %d open cutouts", got.Dots, got.Vertices, got.Grain, got.Open)
		}
		for i, want := range [2]float64{25, 425} { // the first sling lies 25 mm in, the band and 5 mm
			if at := got.Notches[i]; math.Abs(at[0]*unit-want) > 1e-3 {
				t.Errorf("notch %d at %v, want on the outline at x = %g", i+1, at, want/unit)
			}
		}
		depth := map[bool]string{false: "6.0 mm", true: "0.24 in"}[inches]
		texts := "[Piece Name: sling Size: ONE Quantity: 2 Material: ripstop 64 g/m2 Notches: " + depth + " deep, square to the edge, inwards Sling - 7 3/16 in]"
		if texts != fmt.Sprint(got.Text) {
			t.Errorf("texts %v, want %s", got.Text, texts)
		}
	}
}

// Points that are not needed are left out, within a fiftieth of a millimetre.
func TestPatternIsThinned(t *testing.T) {
	circle := readertest.Circle(geom.Pt(60, 60), 50, 2000)
	d := export.Drawing{Name: "a", Width: 120, Height: 120, Lines: []piece.Line{
		{Name: "round-1/cut line", Role: piece.CutLine, Owner: piece.Owner{Piece: "round", Copy: 1}, Work: piece.CutOut, Points: geom.Polyline(circle), Closed: true}}}
	read, err := Read(bytes.NewReader(readertest.Bytes(t, writePattern, d, export.Options{})))
	if err != nil {
		t.Fatal(err)
	}
	line := read.Lines[0]
	arc := geom.NewArc(geom.Ring(line.Points).Closed())
	for _, p := range circle {
		if _, off := arc.Nearest(p); off > patternThin+1e-4 {
			t.Fatalf("%v lies %g mm off", p, off)
		}
	}
	// Chords of a circle of this radius within that may be 2.8 mm long.
	if n := len(line.Points); n > 200 {
		t.Errorf("%d points", n)
	}
}

// A slit is no cutout, and an arrow is one line.
func TestPatternLines(t *testing.T) {
	d := readertest.Square()
	own := piece.Owner{Piece: "square", Copy: 1}
	for i := range d.Lines {
		if d.Lines[i].Work != piece.Register {
			d.Lines[i].Owner = own
		}
		if d.Lines[i].Work == piece.CutOut {
			d.Lines[i].Role = piece.CutLine
		}
	}
	for _, l := range append(piece.Arrow(geom.Pt(12, 20), geom.Pt(28, 20)), piece.Line{Name: "slit", Work: piece.CutInside, Points: geom.Polyline{{X: 20, Y: 8}, {X: 24, Y: 8}}}) {
		l.Owner, l.Name = own, "square-1/"+l.Name
		if l.Points.Bounds().Min.X < 10 || l.Points.Bounds().Max.X > 30 {
			continue // barbs of the arrow are longer than the square
		}
		d.Lines = append(d.Lines, l)
	}
	got := exchange(t, readertest.Bytes(t, writePattern, d, export.Options{}))
	if len(got.Grain) != 1 || got.Grain[0] != 16 || got.Layers["11"] != [2]float64{20, 1} || got.Layers["8"] != [2]float64{24, 2} {
		t.Errorf("grain %v, layers %v", got.Grain, got.Layers)
	}
}

func TestPatternReadsBack(t *testing.T) {
	d := readertest.Drawing(t, 1, readertest.Hostile()...)
	read, err := Read(bytes.NewReader(readertest.Bytes(t, writePattern, d, export.Options{})))
	if err != nil {
		t.Fatal(err)
	}
	sling := readertest.Sling()
	for w, want := range map[piece.Work]float64{ // points are left out by the reader
		piece.CutOut: sling.Cut.Perimeter(), piece.CutInside: sling.Holes[0].Perimeter(), piece.Stitch: 320, piece.Score: 320,
	} {
		if got := readertest.Total(read.Lines, w); math.Abs(got-want) > 0.05 {
			t.Errorf("%s read as %g mm, want %g", w, got, want)
		}
	}
}

func TestASCII(t *testing.T) {
	rows := []struct{ text, want string }{
		{"Ärmel – 7 3⁄16 × ½", "Aermel - 7 3/16 x 1/2"}, {"a\nb\x00", "a b"}, {"%%d ^J \\U+0041", "__d _J _U+0041"},
		{"Łódź, naïve œuvre, smørrebrød, Straße", "Lodz, naive oeuvre, smoerrebroed, Strasse"}, {"Щука, Ελλάς, Київ", "Shchuka, Ellas, Kiyiv"},
		{"„64 g/m²“ · 20 °C", "\"64 g/m2\" - 20  degC"}, {"漢😀", "U+6F22_"},
	}
	for _, r := range rows {
		if got := ascii(r.text); got != r.want {
			t.Errorf("ascii(%q) = %q, want %q", r.text, got, r.want)
		}
	}
}
