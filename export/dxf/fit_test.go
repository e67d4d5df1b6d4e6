package dxf

import (
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/readertest"
	"slingloft/outline/geom"
)

// A spline that is given by points on it and its directions at the ends runs where ezdxf
// has CAD programs draw it.
func TestFitPointsOfAnotherReader(t *testing.T) {
	const script = `
import sys, json, ezdxf
from ezdxf.math import fit_points_to_cad_cv, Vec3
doc = ezdxf.new("R2000"); doc.units = 4
m = doc.modelspace()
pts = [(0,0),(40,90),(85,-60),(120,70),(200,10)]
b = m.add_spline(fit_points=pts)
tan = [Vec3(1,2).normalize(), Vec3(3,-1).normalize()]
b.dxf.start_tangent, b.dxf.end_tangent = tan
doc.saveas(sys.argv[1])
out = []
for c in (fit_points_to_cad_cv(pts, tangents=tan),):
    out.append([[p.x, p.y] for p in c.approximate(400)])
json.dump(out, sys.stdout)
`
	path := filepath.Join(t.TempDir(), "fit.dxf")
	var want [][][2]float64
	if err := json.Unmarshal([]byte(readertest.Script(t, "ezdxf", script, path)), &want); err != nil {
		t.Fatal(err)
	}
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	d, err := Read(f)
	if err != nil || len(d.Lines) != 1 {
		t.Fatalf("%d lines, %v", len(d.Lines), err)
	}
	for i, l := range d.Lines {
		arc := geom.NewArc(l.Points)
		worst := 0.0
		for _, q := range want[i] {
			_, off := arc.Nearest(geom.Pt(q[0], q[1]))
			worst = math.Max(worst, off)
		}
		if worst > 1.5*curveTolerance {
			t.Errorf("curve %d lies up to %g mm off", i+1, worst)
		}
	}
}

// Points on a circle, with its directions at the ends, give it back: a cubic spline is
// off by 5 h⁴/384 of the fourth derivative at most (Hall and Meyer 1976), 1/r³ here.
func TestFitPointsOnACircle(t *testing.T) {
	const r, n = 100.0, 36
	pts := make(geom.Polyline, n+1)
	for i := range pts {
		pts[i] = geom.Direction(2 * math.Pi * float64(i) / n).Times(r)
	}
	h := 2 * math.Pi * r / n
	limit := 5*math.Pow(h, 4)/(384*math.Pow(r, 3)) + curveTolerance
	for _, s := range []struct {
		spline
		closed bool
	}{{spline{fit: pts, ends: [2]geom.Point{geom.Pt(0, 5), geom.Pt(0, 1)}}, false}, {spline{fit: pts}, true}} {
		got, err := s.fitted(curveTolerance, s.closed)
		if err != nil {
			t.Fatal(err)
		}
		for i, p := range got[1:] {
			if off := math.Max(math.Abs(p.Len()-r), math.Abs(p.Towards(got[i], 0.5).Len()-r)); off > limit {
				t.Fatalf("closed %v: point %d lies %g mm off, want at most %g", s.closed, i+1, off, limit)
			}
		}
	}
}

// Without directions the ends are not bent: of three points as far apart the slope at
// the middle one is the mean m of those of the chords, d, at the first (3 d − m)/2, so
// that half-way the curve lies h (3 d − 3 m)/16 from the chord. It is said.
func TestFitPointsAlone(t *testing.T) {
	d, err := ReadOutlines(strings.NewReader(groups("4", "0 SPLINE 5 AB 8 0 71 3 70 0 11 0 21 0 11 30 21 40 11 60 21 0")), 0)
	if err != nil {
		t.Fatal(err)
	}
	chord, mean := geom.Pt(0.6, 0.8), geom.Pt(0.6, 0)
	want := geom.Pt(15, 20).Plus(chord.Minus(mean).Times(50 * 3.0 / 16))
	if _, off := geom.NewArc(d.Lines[0].Points).Nearest(want); off > curveTolerance {
		t.Errorf("the curve passes %g mm from %v", off, want)
	}
	if len(d.Doubts) != 1 || d.Doubts[0].Rule != export.SplineLoose || d.Doubts[0].Data[0] != "spline AB" {
		t.Errorf("doubts %q", d.Doubts)
	}
}

// What cannot be seen is left out and counted, by layers, by the object itself and
// through blocks.
func TestLeftOut(t *testing.T) {
	const text = "0 SECTION 2 HEADER 9 $INSUNITS 70 4 0 ENDSEC 0 SECTION 2 TABLES 0 TABLE 2 LAYER " +
		"0 LAYER 2 Ice 70 1 62 7 0 LAYER 2 dark 70 0 62 -7 0 LAYER 2 seen 70 4 62 7 0 ENDTAB 0 ENDSEC " +
		"0 SECTION 2 BLOCKS 0 BLOCK 2 both 10 0 20 0 0 LINE 8 0 10 0 20 0 11 1 21 0 0 LINE 8 seen 10 0 20 0 11 2 21 0 0 ENDBLK " +
		"0 BLOCK 2 *Paper_Space 10 0 20 0 0 LINE 8 seen 10 0 20 0 11 1 21 0 0 ENDBLK 0 ENDSEC 0 SECTION 2 ENTITIES " +
		"0 LINE 8 ICE 10 0 20 0 11 1 21 0 0 LINE 8 Dark 10 0 20 0 11 1 21 0 " + // names count whatever their case
		"0 LINE 8 seen 60 1 10 0 20 0 11 1 21 0 0 LINE 8 seen 67 1 10 0 20 0 11 1 21 0 " +
		"0 LINE 8 seen 440 33554432 10 0 20 0 11 1 21 0 0 LINE 8 seen 440 33554687 10 0 20 0 11 4 21 0 " + // 0x020000FF is opaque
		"0 HELIX 8 ice 10 0 20 0 0 TEXT 8 seen 10 0 20 0 40 1 1 x 0 HATCH 8 seen 10 0 20 0 " +
		"0 INSERT 8 dark 2 both 10 0 20 0 0 INSERT 8 ice 2 both 10 0 20 0 0 INSERT 8 seen 2 both 10 0 20 0 0 ENDSEC 0 EOF"
	d, err := ReadOutlines(strings.NewReader(strings.Join(strings.Fields(text), "\n")+"\n"), 0)
	if err != nil {
		t.Fatal(err)
	}
	want := export.Left{export.Frozen: 3, export.Off: 2, export.Hidden: 1, export.PaperSpace: 2, export.Transparent: 1, export.Text: 1, export.Picture: 1}
	if d.Left != want {
		t.Errorf("left out %v, want %v", d.Left, want)
	}
	sum := 0.0
	for _, l := range d.Lines {
		sum += l.Points.Length()
	}
	if len(d.Lines) != 4 || sum != 4+2+1+2 {
		t.Errorf("%d lines of %g mm, want 4 of 9", len(d.Lines), sum)
	}
}
