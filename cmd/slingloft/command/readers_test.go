package command_test

import (
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"slingloft/export"
	"slingloft/export/dxf"
	"slingloft/export/svg"
	"slingloft/outline/geom"
)

// reading is what a reader found in a file, in mm from the lower left corner.
type reading struct {
	width, height float64
	layers        []string // nil where the reader does not list them
	lines         map[string]line
}

// line is one named line of a file.
type line struct {
	length float64
	closed bool
	layer  string
	box    geom.Box
}

// readOwn reads files by the program's own readers.
func readOwn(t testing.TB, names []string) map[string]reading {
	t.Helper()
	out := map[string]reading{}
	for _, name := range names {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		read := svg.Read
		if filepath.Ext(name) == ".dxf" {
			read = dxf.Read
		}
		d, err := read(bytes.NewReader(data))
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		out[name] = readingOf(d)
	}
	return out
}

func readingOf(d export.Drawing) reading {
	r := reading{width: d.Width, height: d.Height, lines: map[string]line{}}
	for _, l := range d.Lines {
		n := line{l.Points.Length(), l.Closed, l.Work.String(), l.Points.Bounds()}
		if l.Closed {
			n.length = geom.Ring(l.Points).Perimeter()
		}
		r.lines[l.Name] = n
	}
	return r
}

// python belongs to Debian, as do the modules.
const python = "/usr/bin/python3"

// script reads SVG by Python's XML parser with svg.path and DXF by ezdxf, which
// also has to find nothing to mend in it.
const script = `
import sys, json, math, xml.etree.ElementTree as X
import ezdxf
from svg.path import parse_path

def read_svg(name):
    n = "{http://www.w3.org/2000/svg}"
    r = X.parse(name).getroot()
    w, h = (float(r.get(k).removesuffix("mm")) for k in ("width", "height"))
    assert [float(v) for v in r.get("viewBox").split()] == [0, 0, w, h], "user unit is not 1 mm"
    out = {"size": [w, h], "layers": [g.get("id") for g in r.findall(n + "g")], "lines": {}}
    for g in r.findall(n + "g"):
        for p in g.findall(n + "path"):
            path = parse_path(p.get("d"))
            pts = [s.end for s in path]
            out["lines"][p.findtext(n + "title")] = [path.length(), p.get("d").rstrip().endswith("Z"), g.get("id"),
                min(q.real for q in pts), h - max(q.imag for q in pts), max(q.real for q in pts), h - min(q.imag for q in pts)]
    return out

def read_dxf(name):
    d = ezdxf.readfile(name)
    a = d.audit()
    assert not a.errors and not a.fixes, [e.message for e in a.errors + a.fixes]
    units = (d.header["$INSUNITS"], d.header["$MEASUREMENT"])
    assert units in ((4, 1), (1, 0)), "neither in mm nor in inches"
    k = 1 if units[0] == 4 else 25.4
    out = {"size": [k * v for v in d.header["$LIMMAX"][:2]], "layers": [l.dxf.name for l in d.layers], "lines": {}}
    for e in d.modelspace():
        p = [(k * x, k * y) for x, y in e.get_points("xy")]
        n = sum(math.dist(p[i-1], p[i]) for i in range(0 if e.closed else 1, len(p)))
        title = "".join(v for c, v in e.get_xdata("SLINGLOFT") if c == 1000)
        xs, ys = [q[0] for q in p], [q[1] for q in p]
        out["lines"][title] = [n, bool(e.closed), e.dxf.layer, min(xs), min(ys), max(xs), max(ys)]
    return out

print(json.dumps({f: read_dxf(f) if f.endswith(".dxf") else read_svg(f) for f in sys.argv[1:]}))
`

// readForeign reads files by readers that are not ours; nil where they are not
// installed.
func readForeign(t testing.TB, names []string) map[string]reading {
	t.Helper()
	if exec.Command(python, "-c", "import ezdxf, svg.path").Run() != nil {
		return nil
	}
	cmd := exec.Command(python, append([]string{"-c", script}, names...)...)
	var stderr bytes.Buffer
	cmd.Stderr = &stderr
	text, err := cmd.Output()
	if err != nil {
		t.Fatalf("%v\n%s", err, stderr.String())
	}
	var files map[string]struct {
		Size   [2]float64
		Layers []string
		Lines  map[string][7]any
	}
	if err := json.Unmarshal(text, &files); err != nil {
		t.Fatal(err)
	}
	out := map[string]reading{}
	for name, f := range files {
		r := reading{f.Size[0], f.Size[1], f.Layers, map[string]line{}}
		for title, v := range f.Lines {
			at := func(i int) float64 { return v[i].(float64) }
			r.lines[title] = line{at(0), v[1].(bool), v[2].(string), geom.Box{Min: geom.Pt(at(3), at(4)), Max: geom.Pt(at(5), at(6))}}
		}
		out[name] = r
	}
	return out
}
