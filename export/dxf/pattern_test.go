package dxf

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"testing"

	"slingloft/export"
	"slingloft/export/readertest"
	"slingloft/outline/piece"
)

func writePattern(b *bytes.Buffer, d export.Drawing, o export.Options) error {
	return WritePattern(b, d, o)
}

// ezdxf audits the file and finds one block for the piece, everything on its
// numbered layer, and the boundary as long as it is.
func TestPatternByEzdxf(t *testing.T) {
	const script = `
import sys, json, math, ezdxf
d = ezdxf.readfile(sys.argv[1])
a = d.audit()
out = {"errors": [e.message for e in a.errors], "inserts": [e.dxf.name for e in d.modelspace().query("INSERT")], "layers": {}, "text": []}
for name in out["inserts"]:
    for e in d.blocks[name]:
        n, k = out["layers"].get(e.dxf.layer, [0, 0])
        if e.dxftype() == "POLYLINE":
            p = [v.dxf.location for v in e.vertices]
            n += sum(p[i-1].distance(p[i]) for i in range(0 if e.is_closed else 1, len(p)))
        if e.dxftype() == "LINE":
            n += e.dxf.start.distance(e.dxf.end)
        if e.dxftype() == "TEXT":
            out["text"].append(e.dxf.text)
        out["layers"][e.dxf.layer] = [n, k + 1]
print(json.dumps(out))`
	d := readertest.Drawing(t, 1)
	data := readertest.Bytes(t, writePattern, d, export.Options{})
	for i, c := range data {
		if c > '~' || (c < ' ' && c != '\n') {
			t.Fatalf("byte %d is %#x, not plain ASCII", i, c)
		}
	}
	var got struct {
		Errors, Inserts, Text []string
		Layers                map[string][2]float64
	}
	if err := json.Unmarshal([]byte(readertest.Script(t, "ezdxf", script, readertest.File(t, "a.dxf", data))), &got); err != nil {
		t.Fatal(err)
	}
	if len(got.Errors) > 0 || len(got.Inserts) != 1 || got.Inserts[0] != "SLING" {
		t.Fatalf("errors %v, blocks %v", got.Errors, got.Inserts)
	}
	sling := readertest.Sling()
	want := map[string][2]float64{
		"1":  {sling.Cut.Perimeter(), 3}, // with two texts
		"2":  {0, 4},                     // the corners
		"3":  {0, float64(len(sling.Cut) - 4)},
		"4":  {12, 2},
		"8":  {320, 1},
		"11": {sling.Holes[0].Perimeter(), 1},
		"14": {320, 1},
		"15": {0, 1},
	}
	for layer, w := range want {
		if g := got.Layers[layer]; math.Abs(g[0]-w[0]) > 0.01 || g[1] != w[1] {
			t.Errorf("layer %s has %g mm in %g entities, want %g in %g", layer, g[0], g[1], w[0], w[1])
		}
	}
	for layer := range got.Layers {
		if _, ok := want[layer]; !ok {
			t.Errorf("layer %s is not looked for", layer)
		}
	}
	if texts := "[Piece Name: sling Quantity: 2 Sling - 7 3/16 in]"; texts != fmt.Sprint(got.Text) {
		t.Errorf("texts %v, want %s", got.Text, texts)
	}
}

func TestPatternReadsBack(t *testing.T) {
	d := readertest.Drawing(t, 1, readertest.Hostile()...)
	read, err := Read(bytes.NewReader(readertest.Bytes(t, writePattern, d, export.Options{})))
	if err != nil {
		t.Fatal(err)
	}
	sling := readertest.Sling()
	for w, want := range map[piece.Work]float64{
		piece.CutOut: sling.Cut.Perimeter(), piece.CutInside: sling.Holes[0].Perimeter(), piece.Stitch: 320, piece.Score: 320, piece.Mark: 12,
	} {
		if got := readertest.Total(read.Lines, w); math.Abs(got-want) > 0.01 {
			t.Errorf("%s read as %g mm, want %g", w, got, want)
		}
	}
}

func TestASCII(t *testing.T) {
	rows := []struct{ text, want string }{
		{"Ärmel – 7 3⁄16 × ½", "Armel - 7 3/16 x 1/2"}, {"a\nb\x00", "a b"}, {"%%d ^J \\U+0041", "__d _J _U+0041"}, {"漢😀", "??"},
	}
	for _, r := range rows {
		if got := ascii(r.text); got != r.want {
			t.Errorf("ascii(%q) = %q, want %q", r.text, got, r.want)
		}
	}
}
